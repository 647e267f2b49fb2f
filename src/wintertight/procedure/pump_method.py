"""Antifreeze by the coach's own pump: the steps, without their numbers.

Drawn in through the antifreeze inlet, or through the hose put on the pump's suction; the heater is
drained and bypassed. What the coach does not have makes no step.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from wintertight.coach.card import Card, Fitting
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.running import Until
from wintertight.fluids.product import Product
from wintertight.procedure.roles import Roles
from wintertight.procedure.steps import Phase, Step

CUP_M3 = 0.25e-3
"""What is poured into a trap or a tank at the end [m3]; about one cup; common practice."""

DRY_RUN_S = 12.0
"""How long the pump runs on an empty tank, to clear the tank's own line [s]; common practice."""


@dataclass(frozen=True, slots=True)
class PumpMethod:
    """The steps of this method for one coach.

    Attributes:
        card, network: the coach.
        product: what it is filled with.
        pump, hose: ids of the pump and of the antifreeze hose.
    """

    card: Card
    network: CoachNetwork
    product: Product
    pump: str
    hose: str

    @property
    def roles(self) -> Roles:
        """The coach's fittings by role."""
        return Roles(self.card, self.network)

    def steps_before_filling(self) -> tuple[Step, ...]:
        """Give the steps up to the running pump."""
        return (*self._make_safe(), *self._drain(), *self._set())

    def fill_step(self, outlet: str, until: Until) -> Step:
        """Give the step that runs one outlet until its rule says stop."""
        control = self.network.controls[outlet]
        cautions = {"city inlet": ("face clear of the inlet",)}
        kind = self.card.fitting[control.part].kind
        return _step(
            "run outlet",
            "fill",
            Action("run", outlet, until=until),
            part=outlet,
            setting="open, then shut",
            cautions=cautions.get(kind, ()),
            kind=kind,
        )

    def steps_after_filling(self, *, cups: Mapping[str, int]) -> tuple[Step, ...]:
        """Give the steps after the last outlet; ``cups`` says how many each trap needs."""
        return tuple(self._finish(cups))

    # -- make safe ---------------------------------------------------------------------------

    def _make_safe(self) -> Iterator[Step]:
        for heater in self.roles.of_kind("tank heater"):
            yield _step(
                "heat off",
                "make safe",
                *(Action("set", f"{heater.id}/{source}", "off") for source in heater.heat),
                part=heater.id,
                setting="off",
                cautions=("hot water",),
                sources=" and ".join(heater.heat) or "heat",
            )
        cities = [f.id for f in self.roles.of_kind("city inlet")]
        yield _step(
            "pressure off",
            "make safe",
            *(Action("set", f"{city}/hose", "off") for city in cities),
            Action("set", f"{self.pump}/switch", "off"),
            part=cities[0] if cities else self.pump,
            setting="off",
        )

    # -- drain -------------------------------------------------------------------------------

    def _drain(self) -> Iterator[Step]:
        yield _step(
            "open taps",
            "drain",
            *(Action("set", tap, "open") for tap in self.roles.taps),
            setting="open",
        )
        for tank in self.roles.of_kind("fresh tank"):
            yield _step(
                "open tank drain",
                "drain",
                Action("set", f"{tank.id}/drain", "open"),
                part=tank.id,
                setting="open",
            )
        if self.roles.low_points:
            yield _step(
                "open low points",
                "drain",
                *(Action("set", low, "open") for low in self.roles.low_points),
                setting="open",
                count=float(len(self.roles.low_points)),
            )
        for heater in self.roles.of_kind("tank heater"):
            yield from self._drain_heater(heater)
        yield _step("let it drain", "drain", Action("drain"))
        for bowl in self.roles.of_kind("filter housing"):
            yield _step(
                "cartridge out",
                "drain",
                Action("set", f"{bowl.id}/cartridge", "out"),
                Action("set", f"{bowl.id}/bowl", "off"),
                Action("set", f"{bowl.id}/bowl", "tight"),
                part=bowl.id,
                setting="cartridge out, bowl emptied and back on",
            )
        outlet = next(iter((*self.roles.low_points, *self.network.outlets)), None)
        if outlet and self.roles.of_kind("fresh tank"):
            yield self._run_dry(outlet)
        wastes = self.roles.of_kind("gray tank", "black tank")
        if wastes:
            gates = [f"{tank.id}/gate" for tank in wastes]
            yield _step(
                "empty waste tanks",
                "drain",
                *(Action("set", gate, "open") for gate in gates),
                Action("drain"),
                *(Action("set", gate, "shut") for gate in gates),
                setting="emptied",
                cautions=("sewer hose apart",),
            )

    def _drain_heater(self, heater: Fitting) -> Iterator[Step]:
        yield _step(
            "open relief",
            "drain",
            Action("set", f"{heater.id}/relief", "open"),
            part=heater.id,
            setting="relief lever open",
            cautions=("hot water",),
        )
        anode = heater.tank == "steel with anode"
        yield _step(
            "plug out",
            "drain",
            Action("set", f"{heater.id}/plug", "out"),
            part=heater.id,
            setting="plug out",
            cautions=("plug under pressure", "hot water"),
            anode="yes" if anode else "no",
        )

    def _run_dry(self, outlet: str) -> Step:
        """Clear the line from the fresh tank: the pump draws air through it."""
        return _step(
            "run pump dry",
            "drain",
            Action("set", f"{self.pump}/switch", "on"),
            Action("run", outlet, until=Until(seconds=DRY_RUN_S)),
            Action("set", f"{self.pump}/switch", "off"),
            Action("drain"),
            part=self.pump,
            setting="on, then off",
            seconds=DRY_RUN_S,
        )

    # -- set ---------------------------------------------------------------------------------

    def _set(self) -> Iterator[Step]:
        yield _step(
            "shut everything",
            "set",
            *(Action("set", tap, "shut") for tap in (*self.roles.taps, *self.roles.low_points)),
            setting="shut",
        )
        for bypass in self.roles.valves("heater bypass"):
            into, out = self.roles.valves("heater cold"), self.roles.valves("heater hot")
            yield _step(
                "set bypass",
                "set",
                *(Action("set", valve.id, "across") for valve in (*into, *out)),
                Action("set", bypass.id, "along"),
                part=bypass.id,
                setting="along",
                valves=", ".join(v.name or v.id for v in (*into, *out)),
            )
        tank_valves = self.roles.valves("tank suction")
        jug_valves = self.roles.valves("antifreeze inlet")
        yield _step(
            "draw from jug",
            "set",
            *(Action("set", valve.id, "across") for valve in tank_valves),
            *(Action("set", valve.id, "along") for valve in jug_valves),
            Action("set", self.hose, "in the jug"),
            Action("feed", self.hose, contents=self.product.contents()),
            part=jug_valves[0].id if jug_valves else self.hose,
            setting="along" if jug_valves else "in the jug",
            cautions=("right product",),
            product=self.product.name,
        )
        yield _step(
            "pump on",
            "set",
            Action("set", f"{self.pump}/switch", "on"),
            part=self.pump,
            setting="on",
        )

    # -- finish ------------------------------------------------------------------------------

    def _finish(self, cups: Mapping[str, int]) -> Iterator[Step]:
        yield _step(
            "pump off",
            "finish",
            Action("set", f"{self.pump}/switch", "off"),
            part=self.pump,
            setting="off",
        )
        yield _step(
            "leave taps open",
            "finish",
            *(Action("set", tap, "open") for tap in self.roles.taps),
            setting="open",
        )
        for toilet in self.roles.of_kind("gravity toilet"):
            yield _step(
                "work pedal",
                "finish",
                Action("relieve", toilet.id),
                part=toilet.id,
                setting="worked once",
            )
        for bowl in self.roles.of_kind("filter housing", "strainer"):
            yield _step(
                "loosen bowl",
                "finish",
                Action("set", f"{bowl.id}/bowl", "loose"),
                part=bowl.id,
                setting="a quarter turn loose",
            )
        contents = self.product.contents()
        for pool, count in cups.items():
            cup = _step(
                "pour a cup",
                "finish",
                Action("pour", pool, contents=contents, volume_m3=CUP_M3),
                part=pool,
                setting="one cup",
                cautions=("waste antifreeze",),
            )
            yield cup
            yield from (replace(cup, id=f"{cup.id}-{n}") for n in range(2, count + 1))
        yield _step(
            "take reading",
            "finish",
            setting="reading",
            cautions=("pink proves little",),
        )
        yield _step("hang tag", "finish", setting="tag at the main tap")


def _step(
    key: str,
    phase: Phase,
    *actions: Action,
    part: str = "",
    setting: str = "",
    cautions: tuple[str, ...] = (),
    **params: float | str,
) -> Step:
    """Make a step whose id is its key and its part."""
    name = key.replace(" ", "-") + (f":{part}" if part else "")
    return Step(name, key, phase, actions, part, setting, params, cautions)
