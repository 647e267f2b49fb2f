"""Write a network down by names, one node or link at a time."""

from typing import Self, TypedDict, Unpack

import numpy as np

from wintertight.errors import InputError
from wintertight.flow.steady.network import LinkKind, PipeNetwork


class _Sizes(TypedDict, total=False):
    length_m: float
    bore_m: float
    roughness_m: float
    minor_loss: float
    loss_coefficient: float
    one_way: bool
    pump_shutoff_m: float
    pump_coefficient: float
    pump_exponent: float


_NOTHING: _Sizes = {
    "length_m": 0.0,
    "bore_m": 0.0,
    "roughness_m": 0.0,
    "minor_loss": 0.0,
    "loss_coefficient": 0.0,
    "one_way": False,
    "pump_shutoff_m": 0.0,
    "pump_coefficient": 0.0,
    "pump_exponent": 0.0,
}


class NetworkBuilder:
    """Collects nodes and links by name; ``build`` gives the checked network.

    Example:
        >>> network = (
        ...     NetworkBuilder()
        ...     .node("high", fixed_head_m=10.0)
        ...     .node("low", fixed_head_m=0.0)
        ...     .pipe("line", "high", "low", length_m=5.0, bore_m=0.012)
        ...     .build()
        ... )
        >>> network.link_ids
        ('line',)
    """

    def __init__(self) -> None:
        """Start with nothing."""
        self._nodes: dict[str, tuple[float, float, float]] = {}
        self._links: dict[str, tuple[str, str, LinkKind, _Sizes]] = {}

    def node(
        self,
        name: str,
        elevation_m: float = 0.0,
        *,
        fixed_head_m: float | None = None,
        demand_m3_s: float = 0.0,
    ) -> Self:
        """Add a node at an elevation [m]; its head [m] is free unless given."""
        if name in self._nodes:
            message = f"the node {name!r} is named twice"
            raise InputError(message)
        held = np.nan if fixed_head_m is None else fixed_head_m
        self._nodes[name] = (elevation_m, held, demand_m3_s)
        return self

    def pipe(  # noqa: PLR0913 - a pipe has these sizes
        self,
        name: str,
        start: str,
        end: str,
        *,
        length_m: float,
        bore_m: float,
        roughness_m: float = 1.5e-6,
        minor_loss: float = 0.0,
        one_way: bool = False,
    ) -> Self:
        """Add a pipe: length, bore and roughness [m], loss K on its velocity head [1]."""
        return self._link(
            name,
            (start, end, LinkKind.PIPE),
            length_m=length_m,
            bore_m=bore_m,
            roughness_m=roughness_m,
            minor_loss=minor_loss,
            one_way=one_way,
        )

    def pump(  # noqa: PLR0913 - a pump has these figures
        self,
        name: str,
        start: str,
        end: str,
        *,
        shutoff_m: float,
        coefficient: float,
        exponent: float,
    ) -> Self:
        """Add a pump that gains ``shutoff - coefficient q^exponent`` [m] from start to end."""
        return self._link(
            name,
            (start, end, LinkKind.PUMP),
            one_way=True,
            pump_shutoff_m=shutoff_m,
            pump_coefficient=coefficient,
            pump_exponent=exponent,
        )

    def loss(
        self, name: str, start: str, end: str, *, coefficient: float, one_way: bool = False
    ) -> Self:
        """Add a valve, fixture or outlet that loses ``coefficient q |q|`` [m]."""
        return self._link(
            name, (start, end, LinkKind.LOSS), loss_coefficient=coefficient, one_way=one_way
        )

    def build(self) -> PipeNetwork:
        """Give the network; raises InputError where something is wrong."""
        index = {name: i for i, name in enumerate(self._nodes)}
        for name, (start, end, _, _) in self._links.items():
            for side in (start, end):
                if side not in index:
                    message = f"link {name!r}: the node {side!r} is not known"
                    raise InputError(message)
        links = list(self._links.values())
        nodes = np.array(list(self._nodes.values()), dtype=np.float64).reshape(-1, 3)
        sizes = {key: np.array([link[3][key] for link in links]) for key in _NOTHING}  # type: ignore[literal-required]
        return PipeNetwork(
            node_ids=tuple(self._nodes),
            elevation_m=nodes[:, 0],
            fixed_head_m=nodes[:, 1],
            demand_m3_s=nodes[:, 2],
            link_ids=tuple(self._links),
            start=np.array([index[link[0]] for link in links], dtype=np.int64),
            end=np.array([index[link[1]] for link in links], dtype=np.int64),
            kind=np.array([link[2] for link in links], dtype=np.int64),
            **sizes,
        )

    def _link(self, name: str, ends: tuple[str, str, LinkKind], **sizes: Unpack[_Sizes]) -> Self:
        if name in self._links:
            message = f"the link {name!r} is named twice"
            raise InputError(message)
        self._links[name] = (*ends, {**_NOTHING, **sizes})
        return self
