"""Steps that were done and are on no sheet: a handle turned, an outlet run again, a cup poured."""

from collections.abc import Callable, Mapping
from types import MappingProxyType

from wintertight.coach.card import nearest
from wintertight.coach.faults import printable
from wintertight.errors import Place, RecordError
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.until import Until
from wintertight.fluids.product import Product
from wintertight.procedure.job import step
from wintertight.procedure.record import Event
from wintertight.procedure.steps import Step


def added_step(event: Event, network: CoachNetwork, product: Product, name: str) -> Step | None:
    """Give the step that an event added to the job.

    Args:
        event: the event; it names an action and no step.
        network: the coach.
        product: what is poured.
        name: what to call the record in an error.

    Returns:
        The step: "set" a control, "run" an outlet for a time or a volume, "pour" a volume into a
        trap or sump; None where the event's action is none of these.

    Raises:
        RecordError: the part, the setting, or how much, is missing or cannot be.
    """
    make = _MADE.get(event.action or "")
    if event.step is not None or make is None:
        return None
    return make(event, network, product, name)


def _setting(event: Event, network: CoachNetwork, _product: Product, name: str) -> Step:
    part = _known(event, network.controls, "control", name)
    settings = network.controls[part].settings
    if event.setting not in settings:
        raise _fault(event, "setting", f"expected one of {', '.join(settings)}", name)
    action = Action("set", part, event.setting)
    return step("added setting", "finish", action, part=part, setting=event.setting)


def _run(event: Event, network: CoachNetwork, _product: Product, name: str) -> Step:
    part = _known(event, network.outlets, "outlet", name)
    if event.volume_m3 is None and event.run_on_s is None:
        message = "expected how much or how long: volume_m3 or run_on_s"
        raise _fault(event, "volume_m3", message, name)
    until = Until(volume_m3=event.volume_m3)
    if event.volume_m3 is None:
        until = Until(seconds=event.run_on_s)
    return step("added run", "fill", Action("run", part, until=until), part=part)


def _pour(event: Event, network: CoachNetwork, product: Product, name: str) -> Step:
    part = _known(event, network.pools, "trap or sump", name)
    if not event.volume_m3:
        raise _fault(event, "volume_m3", "expected how much was poured", name)
    action = Action("pour", part, contents=product.contents(), volume_m3=event.volume_m3)
    return step("added pour", "finish", action, part=part)


_MADE: Mapping[str, Callable[[Event, CoachNetwork, Product, str], Step]] = MappingProxyType(
    {"set": _setting, "run": _run, "pour": _pour}
)


def _known(event: Event, there: Mapping[str, object], what: str, name: str) -> str:
    part = event.part or ""
    if part not in there:
        message = f"no {what} is called '{part}'{nearest(part, there)}"
        raise _fault(event, "part", message, name)
    return part


def _fault(event: Event, field: str, message: str, name: str) -> RecordError:
    where = f"events[{printable(event.id)}].{field}"
    return RecordError(printable(message), Place(name, None, where))
