"""The bundled records, each proven and looked back on once."""

from dataclasses import dataclass
from functools import cache

from tests.unit.procedure.demo_coach import DEMO, PRODUCTS
from wintertight.coach.load import load_card
from wintertight.procedure.as_done import AsDone, prove_record
from wintertight.procedure.hindsight.look_back import Hindsight, look_back
from wintertight.procedure.record import load_record

COACHES = (
    "small-trailer",
    "middle-travel-trailer",
    "full-fifth-wheel",
    "large-motorhome",
    "no-bypass-trailer",
    "on-demand-van",
)

NAMES = tuple(f"{coach}-{how}" for coach in COACHES for how in ("good", "bad"))


@dataclass(frozen=True)
class Proved:
    """What a record proves, and what it tells beyond."""

    done: AsDone
    told: Hindsight | None


@cache
def proved(name: str) -> Proved:
    """Prove one bundled record."""
    card = load_card(DEMO / "cards" / f"{name.rpartition('-')[0]}.toml")
    record = load_record(DEMO / "records" / f"{name}.json")
    assert card.site is not None
    assert card.site.design_low_degC is not None
    product = next(p for p in PRODUCTS.values() if p.name == record.product)
    done = prove_record(card, record, product, card.site.design_low_degC, name)
    return Proved(*look_back(done, product))
