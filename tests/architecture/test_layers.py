"""A layer imports only from lower layers, and every layer is in the contract."""

import subprocess
import sys
import tomllib
from pathlib import Path

from tests.architecture.tree import PACKAGE, ROOT

LINT_IMPORTS = Path(sys.executable).with_name("lint-imports")
# The entry of `python -m wintertight`: it starts the top layer and is no layer itself.
NOT_LAYERS = {"__init__", "__main__"}


def contract() -> list[str]:
    """Give the layers of the contract, highest first."""
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    (only,) = settings["tool"]["importlinter"]["contracts"]
    assert only["exhaustive"] is True
    layers: list[str] = only["layers"]
    return layers


def lint(folder: Path) -> subprocess.CompletedProcess[str]:
    """Check the contract that stands in a folder's pyproject.toml."""
    return subprocess.run(  # noqa: S603 - our own tool on our own tree
        [LINT_IMPORTS, "--no-cache", "--no-logo"],
        cwd=folder,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


def test_layers_hold() -> None:
    """Guards that no module imports from its own height or above."""
    done = lint(ROOT)
    assert done.returncode == 0, done.stdout + done.stderr


def test_every_part_of_the_package_is_a_layer() -> None:
    """Guards that the contract names the modules of the package, all of them and no others."""
    parts = {f.stem for f in PACKAGE.glob("*.py")} - NOT_LAYERS
    parts |= {f.parent.name for f in PACKAGE.glob("*/__init__.py")}
    assert parts == set(contract())


def test_data_folders_hold_no_code() -> None:
    """Guards that a folder which is no layer holds data only, so that no code escapes the order."""
    stray = [
        f.relative_to(PACKAGE).as_posix()
        for f in PACKAGE.rglob("*.py")
        if len(f.relative_to(PACKAGE).parts) > 1
        and f.relative_to(PACKAGE).parts[0] not in contract()
    ]
    assert stray == []


def test_an_upward_import_is_found(tmp_path: Path) -> None:
    """Guards the check itself: a lower layer that imports a higher one breaks the contract."""
    package = tmp_path / "invented"
    package.mkdir()
    (package / "__init__.py").write_text("")
    (package / "upper.py").write_text("")
    (package / "lower.py").write_text("import invented.upper\n")
    (tmp_path / "pyproject.toml").write_text(
        '[tool.importlinter]\nroot_packages = ["invented"]\n[[tool.importlinter.contracts]]\n'
        'name = "order"\ntype = "layers"\ncontainers = ["invented"]\nexhaustive = true\n'
        'layers = ["upper", "lower"]\n'
    )
    done = lint(tmp_path)
    assert done.returncode == 1
    assert "invented.lower -> invented.upper" in done.stdout
