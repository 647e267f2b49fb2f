"""Friction factors against another library."""

import numpy as np
import pytest
from fluids import friction as theirs

from wintertight.flow.steady import friction_factor_churchill, friction_factor_colebrook


@pytest.mark.parametrize("roughness", [0.0, 1e-5, 1e-3, 0.02])
def test_friction_factors_agree(roughness: float) -> None:
    """Guards Churchill's and Colebrook's formulas, typed in here from memory."""
    for reynolds in np.geomspace(100.0, 1e7, 30):
        ours = friction_factor_churchill(reynolds, roughness)
        assert ours == pytest.approx(theirs.Churchill_1977(reynolds, roughness), rel=1e-12)
        if reynolds > 4000.0:
            ours = friction_factor_colebrook(reynolds, roughness)
            assert ours == pytest.approx(theirs.Colebrook(reynolds, roughness, 1e-14), rel=1e-12)
