"""One drawn coach built anew: its lengths, bores, hollows, runs and pump, its count and product."""

from dataclasses import replace
from types import MappingProxyType

from tests.unit.procedure.demo_coach import rebuilt
from wintertight.coach.card import Card, Fitting, Line
from wintertight.coach.kinds import KINDS
from wintertight.coach.quantity import Quantity
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.fittings.supply import USUAL_PUMP_OPEN
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.flow.until import Until
from wintertight.procedure.drawn import Drawn
from wintertight.procedure.plan import Plan

TANKS = {"fresh tank", "gray tank", "black tank"}


def scaled(quantity: Quantity, factor: float) -> Quantity:
    """Give a quantity times a factor."""
    return Quantity(quantity.value * float(factor), quantity.how, quantity.spread)


def drawn_card(plain: Card, drawn: Drawn, i: int) -> Card:
    """Give the card of one drawn coach."""

    def line(one: Line) -> Line:
        bore_m = float(drawn.bores_m[one.id][i])
        longer = drawn.lines[one.id][i] * (one.largest_bore_m / bore_m) ** 2
        bore = Quantity(bore_m, "measured", 0.0)
        return one.model_copy(update={"length": scaled(one.length, longer), "bore": bore})

    def fitting(one: Fitting) -> Fitting:
        changes = {}
        usual = one.volume or Quantity.known(KINDS[one.kind].hollow_m3, "guessed")
        if usual.value and one.kind not in TANKS:
            changes["volume"] = scaled(usual, drawn.lines[one.id][i])
        if one.kind == "demand pump":
            changes["flow"] = scaled(one.flow or USUAL_PUMP_OPEN, drawn.pump[i])
        return one.model_copy(update=changes)

    lines = tuple(line(one) for one in plain.lines)
    fittings = tuple(fitting(one) for one in plain.fittings)
    return rebuilt(plain, lines=lines, fittings=fittings)


def drawn_network(plan: Plan, drawn: Drawn, i: int, *, trusts_drains: bool) -> CoachNetwork:
    """Give the network of one drawn coach, its runs between half of the bends and all."""
    card = drawn_card(plan.card, drawn, i)
    built = build_network(card, replace(BEST, trusts_drains=trusts_drains))
    best, half = plan.best.network.links, plan.careful.network.links
    mixing = drawn.mixing[i]
    links = {
        name: replace(link, runs=round(half[name].runs * (1 - mixing) + best[name].runs * mixing))
        for name, link in built.links.items()
    }
    return replace(built, links=MappingProxyType(links))


def drawn_strength(plan: Plan, drawn: Drawn, i: int) -> float:
    """Give the share of antifreeze in the product of one draw [1]."""
    return 1.0 - plan.product.contents().water + float(drawn.product[i])


def drawn_replay(plan: Plan, drawn: Drawn, i: int, *, trusts_drains: bool) -> Trace:
    """Do the job as one technician counts it, on one drawn coach, with one drawn product."""
    stronger = drawn_strength(plan, drawn, i) / (1.0 - plan.product.contents().water)

    def as_drawn(action: Action) -> Action:
        if action.until is not None and action.until.run_on_s is not None:
            counted = action.until.run_on_s * drawn.counting[i] + drawn.seeing_s[i]
            return replace(action, until=Until(run_on_s=float(counted)))
        if action.contents is not None and action.contents.glycol:
            glycol = action.contents.glycol * stronger
            return replace(action, contents=replace(action.contents, glycol=glycol))
        return action

    network = drawn_network(plan, drawn, i, trusts_drains=trusts_drains)
    actions = [as_drawn(action) for s in plan.steps for action in s.step.actions]
    return replay(network, arriving_state(network), actions)
