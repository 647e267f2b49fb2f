"""What an owner who works alone is told around the steps: to buy, to check, to leave off."""

from collections.abc import Iterator

from wintertight.procedure.antifreeze import choose_antifreeze
from wintertight.procedure.never_clears import ToCheck, patience_s, to_check
from wintertight.procedure.plan import Plan
from wintertight.procedure.put_back import PutBack, put_back
from wintertight.procedure.stays_off import StaysOff, stays_off
from wintertight.units import System, in_words
from wintertight.wording.catalogue import catalogue, say, say_best
from wintertight.wording.names import part_name
from wintertight.wording.owner_steps import handle_set, handles_of
from wintertight.wording.places import place_text, precondition_text
from wintertight.wording.spoken import begun, counted, listed, share_in_words, spoken

LEAST_SPARE = 1
"""Whoever works alone cannot fetch another jug while the pump runs [1]; common practice."""


def buy_lines(plan: Plan, language: str = "en", system: System = "us") -> Iterator[str]:
    """Give what antifreeze to buy: how much, and what its label must say."""
    if not plan.buy.count:
        yield say("guide buy", "none", language)
        return
    yield say(
        "guide buy",
        "jugs",
        language,
        jugs=counted(plan.buy.count, "jugs", language),
        size=in_words(plan.buy.container_m3, "volume", system),
        spare=str(max(LEAST_SPARE, plan.buy.spare)),
    )
    yield _label(plan, language, system)
    for caution in flame_cautions(plan):
        yield say("buying", caution, language)
    yield say("guide buy", "poison", language)


def flame_cautions(plan: Plan) -> tuple[str, ...]:
    """Give the keys of what a flame nearby has to do with the antifreeze."""
    (choice,) = choose_antifreeze((plan.product,), plan.low_degC, ("open",), 1.0)
    return choice.cautions


def _label(plan: Plan, language: str, system: System) -> str:
    product = plan.product
    ratings = listed(
        [
            say("guide buy", key, language, rating=in_words(rating, "temperature", system))
            for key, rating in (
                ("burst rating", product.burst_rating_degC),
                ("freeze rating", product.freeze_rating_degC),
            )
            if rating is not None
        ],
        language,
    )
    glycol, ethanol = product.glycol, product.ethanol
    if glycol is None and ethanol is None:
        return say("guide buy", "rating" if ratings else "no rating", language, ratings=ratings)
    key = "both" if glycol and ethanol else "ethanol" if ethanol else "glycol"
    share = ethanol if key == "ethanol" else glycol
    said = say(
        "guide buy",
        key,
        language,
        share=share_in_words(share or 0.0, language),
        ethanol=share_in_words(ethanol or 0.0, language),
    )
    if not ratings:
        return said
    return f"{said} {say('guide buy', 'printed', language, ratings=ratings)}"


def check_lines(plan: Plan, language: str = "en", system: System = "us") -> Iterator[str]:
    """Give what is looked at before anything is opened."""
    if plan.method != "thaw":
        yield say("guide check", "frozen", language)
    yield say("guide check", "same coach", language)
    keys = {s.step.key for s in plan.steps}
    if plan.method != "thaw":
        low = in_words(plan.low_degC, "temperature", system)
        yield say("guide check", "cold", language, low=low)
    if plan.place is None:
        yield say("guide check", "level", language)
    if keys & {"pump on", "run pump dry"}:
        yield say("guide check", "battery", language)
    if "empty waste tanks" in keys:
        yield say("guide check", "waste", language)
    for found in plan.preconditions:
        yield precondition_text(found, plan.card, language, system)
    if plan.place is not None:
        yield place_text(plan.place, plan.hindrances, language, system)
    yield say("guide check", "manual", language)


def off_lines(plan: Plan, language: str = "en") -> Iterator[str]:
    """Give what must not be switched on, and why."""
    for found in stays_off(plan):
        yield begun(_off(plan, found, language))


def _off(plan: Plan, found: StaysOff, language: str) -> str:
    return say(
        "guide off",
        found.why,
        language,
        part=part_name(plan.card, found.part, language),
        heat=listed((say("heat", source, language) for source in found.heat), language),
        n=str(found.step),
    )


# ---- a tap that never clears ---------------------------------------------------------------


def never_kind(plan: Plan) -> str:
    """Give what an outlet does at this job: fill, hand pump, blow, drain, or thaw."""
    if plan.method == "thaw":
        return "thaw"
    if any(s.run for s in plan.steps):
        return "hand pump" if any(s.step.key == "hand pump on" for s in plan.steps) else "fill"
    return "blow" if any(s.blow for s in plan.steps) else "drain"


def never_heading(plan: Plan, language: str = "en") -> str:
    """Give the heading of what to do when an outlet never clears."""
    return say_best("guide", "never", (never_kind(plan),), language)


def never_means(plan: Plan, language: str = "en") -> str:
    """Give what it means, and when to stop."""
    kind = (never_kind(plan),)
    patience = in_words(patience_s(plan), "time", "metric")
    means = say_best("guide never", "means", kind, language)
    return f"{means} {say_best('guide never', 'wait', kind, language, patience=patience)}"


def never_lines(plan: Plan, language: str = "en", system: System = "us") -> Iterator[str]:
    """Give what to look at, in order, and what to do when all of it is right."""
    for check in to_check(plan):
        yield begun(_to_look_at(plan, check, language, system))
    yield say_best("guide never", "still not", (never_kind(plan),), language)


def _to_look_at(plan: Plan, check: ToCheck, language: str, system: System) -> str:
    card, step = plan.card, check.step
    params = spoken(step.step.params, language, system) if step else {}
    handles = [h.said(language) for h in handles_of(step, card, language)] if step else []
    return say(
        "guide never",
        check.key,
        language,
        parts=listed((part_name(card, part, language) for part in check.parts), language),
        n=str(step.n) if step else "",
        handles=say("guide group", "between", language).join(handles),
        tap=part_name(card, step.step.part, language) if step and step.step.part else "",
        time="" if check.seconds is None else in_words(check.seconds, "time", system),
        along=say("setting", "along", language),
        regulator_Pa=params.get("regulator_Pa", ""),
    )


# ---- shop, end of the claim, spring --------------------------------------------------------


def shop_lines(plan: Plan, language: str = "en") -> Iterator[str]:
    """Give when to stop and call a shop."""
    keys = {s.step.key for s in plan.steps}
    asked = {
        "ice": plan.method != "thaw",
        "plug": "plug out" in keys,
        "never": any(s.run or s.blow for s in plan.steps),
        "gap": any(p.safe is False for p in plan.parts),
        "open": any(p.safe is None for p in plan.parts),
    }
    for key in catalogue(language)["guide shop"]:
        if asked.get(key, True):
            yield say("guide shop", key, language)


def void_lines(plan: Plan, language: str = "en", system: System = "us") -> Iterator[str]:
    """Give when the claim of the guide ends."""
    if plan.method == "thaw":
        yield say("guide void", "thaw", language)
        return
    yield say("guide void", "water", language)
    low = in_words(plan.low_degC, "temperature", system)
    yield say("guide void", "colder", language, low=low)


def spring_heading(plan: Plan, language: str = "en") -> str:
    """Give the heading of what is done when the cold is over."""
    return say_best("guide", "spring", (plan.method,), language)


def spring_lines(plan: Plan, language: str = "en") -> Iterator[str]:
    """Give what is done in spring, in order, up to the heat."""
    if plan.method == "thaw":
        yield say("guide spring", "thaw", language)
        return
    yield say("guide spring", "wait", language)
    by_sort: dict[str, list[PutBack]] = {}
    for back in put_back(plan):
        by_sort.setdefault(back.sort, []).append(back)
    bypassed = any(s.step.key == "set bypass" for s in plan.steps)
    heat = by_sort.pop("heat", [])
    late = by_sort.pop("heater handle", []) if bypassed else []
    for planned in plan.steps:
        if planned.step.key == "close heater" and planned.step.params.get("filled") == "yes":
            part = part_name(plan.card, planned.step.part, language)
            yield say("guide spring", "drain heater", language, parts=part)
    for sort, some in by_sort.items():
        yield from _back(plan, sort, some, language)
    if not any(s.run for s in plan.steps):
        yield say("guide spring", "fill", language)
    else:
        yield say_best("guide spring", "rinse", ("bypassed",) if late else (), language)
    yield from _back(plan, "heater handle", late, language) if late else ()
    if heat:
        yield say("guide spring", "solid", language)
        yield say("guide spring", "heat", language, parts=_names(plan, heat, language))
    yield say("guide spring", "drink", language)


def _back(plan: Plan, sort: str, some: list[PutBack], language: str) -> Iterator[str]:
    if sort == "hose back":
        for back in some:
            yield say_best(
                "guide spring",
                sort,
                (back.setting,),
                language,
                parts=part_name(plan.card, back.part, language),
            )
        return
    handles = [
        handle_set(plan.card, b.control, b.setting, language).said(language)
        for b in some
        if b.control in plan.card.fitting
    ]
    yield say(
        "guide spring",
        sort,
        language,
        parts=_names(plan, some, language),
        handles=say("guide group", "between", language).join(handles),
    )


def _names(plan: Plan, some: list[PutBack], language: str) -> str:
    return listed((part_name(plan.card, back.part, language) for back in some), language)
