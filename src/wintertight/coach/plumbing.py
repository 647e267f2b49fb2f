"""Do the fittings and lines of a card make plumbing? Rules across fields, one function each.

Every rule gives its faults as data, so that one reading of a card finds all of them. What is only
worth a word, and no reason to refuse the card, is in `wintertight.coach.findings`.
"""

import math
from collections import Counter
from collections.abc import Callable, Iterator

from wintertight.coach.card import Card, End, Fitting, Line, nearest
from wintertight.coach.faults import Fault, card_fault, gathered, tangle
from wintertight.coach.joints import ALIKE, joined_ends
from wintertight.coach.kinds import KINDS, ROLES
from wintertight.coach.tubing import BORES, MATERIALS

MOST_FITTINGS = 2000
MOST_LINES = 4000

SOURCES_OF_WATER = frozenset({"fresh tank", "city inlet"})


def check_plumbing(card: Card) -> None:
    """Refuse a card whose parts make no plumbing.

    Raises:
        CardError: a field names a role, compartment or thing that does not exist.
        CardTangled: the fields are right, but do not go together.
    """
    faults = plumbing_faults(card)
    if faults:
        raise gathered(faults, None, {}, None)


def plumbing_faults(card: Card) -> tuple[Fault, ...]:
    """Give everything that is wrong with the plumbing of a card."""
    too_many = tuple(_too_many(card))
    if too_many:
        return too_many
    faults = [fault for rule in _RULES for fault in rule(card)]
    for stage in _STAGES:
        # A wrong name leaves some other fitting without its line: only the wrong name is told.
        found = [fault for rule in stage for fault in rule(card)]
        if found:
            return (*found, *faults)
    return tuple(faults)


def _too_many(card: Card) -> Iterator[Fault]:
    if len(card.fittings) > MOST_FITTINGS:
        yield tangle(
            f"{len(card.fittings)} fittings; expected at most {MOST_FITTINGS}",
            "fitting",
            MOST_FITTINGS,
        )
    if len(card.lines) > MOST_LINES:
        yield tangle(f"{len(card.lines)} lines; expected at most {MOST_LINES}", "line", MOST_LINES)


def _ids_are_unique(card: Card) -> Iterator[Fault]:
    groups = {
        "fitting": [fitting.id for fitting in card.fittings],
        "line": [line.id for line in card.lines],
        "compartment": [room.id for room in card.compartments],
    }
    for key, ids in groups.items():
        seen: set[str] = set()
        for place, name in enumerate(ids):
            if name in seen:
                yield tangle(f"a second {key} has the id '{name}'", key, place, "id")
            seen.add(name)


def _roles_are_known(card: Card) -> Iterator[Fault]:
    for place, fitting in enumerate(card.fittings):
        roles = ROLES.get(fitting.kind, ())
        if fitting.role is not None and fitting.role not in roles:
            yield card_fault(
                f"'{fitting.role}' is no role of a {fitting.kind}; expected {_or(roles)}",
                "fitting",
                place,
                "role",
            )


def _compartments_are_known(card: Card) -> Iterator[Fault]:
    parts = {
        "fitting": [fitting.compartment for fitting in card.fittings],
        "line": [line.compartment for line in card.lines],
    }
    for key, rooms in parts.items():
        for place, room in enumerate(rooms):
            if room is not None and room not in card.compartment:
                hint = nearest(room, card.compartment)
                message = f"no compartment has the id '{room}'{hint}"
                yield card_fault(message, key, place, "compartment")


def _ends_exist(card: Card) -> Iterator[Fault]:
    for place, line in enumerate(card.lines):
        for key, end in (("from", line.start), ("to", line.end)):
            message = _why_no_end(card, end)
            if message:
                yield tangle(message, "line", place, key)
        if line.start.fitting == line.end.fitting:
            message = f"this line runs from {line.start.fitting} to itself"
            yield tangle(message, "line", place, "to")


def _why_no_end(card: Card, end: End) -> str:
    fitting = card.fitting.get(end.fitting)
    if fitting is None:
        return f"no fitting has the id '{end.fitting}'{nearest(end.fitting, card.fitting)}"
    if fitting.seen == "absent":
        return f"{fitting.id} is said to be absent, yet a line joins it"
    if not KINDS[fitting.kind].wetted:
        return f"a {fitting.kind} is on the waste side; say drains_to instead of a line"
    return _why_no_port(fitting, end)


def _why_no_port(fitting: Fitting, end: End) -> str:
    ports = fitting.ports
    if end.port in ports or (not end.port and ports == ALIKE):
        return ""
    if ports == ("",):
        return f"a {fitting.kind} has no named ports; write '{fitting.id}' alone"
    named = _or(tuple(f"{fitting.id}.{port}" for port in ports))
    if end.port:
        return f"{fitting.id} has no port '{end.port}'; expected {named}"
    return f"say which port of {fitting.id}: expected {named}"


def _ports_take_one_line(card: Card) -> Iterator[Fault]:
    ends = joined_ends(card)
    seen: set[End] = set()
    for place, line in enumerate(card.lines):
        for key, end in zip(("from", "to"), ends[line.id], strict=True):
            if end.port and end in seen:
                message = f"a second line joins {end}; a tee is missing, or a port is wrong"
                yield tangle(message, "line", place, key)
            seen.add(end)


def _ports_are_joined(card: Card) -> Iterator[Fault]:
    joined = {end for pair in joined_ends(card).values() for end in pair}
    for place, fitting in enumerate(card.fittings):
        if fitting.seen != "present" or not KINDS[fitting.kind].wetted:
            continue
        open_ports = [port for port in fitting.ports if End(fitting.id, port) not in joined]
        if open_ports == [""]:
            yield tangle(f"no line joins {fitting.id}", "fitting", place)
        elif open_ports:
            which = " or ".join(f"{fitting.id}.{port}" for port in open_ports)
            only = "; if it has one side only, say only = ..." if fitting.ports[0] == "hot" else ""
            yield tangle(f"no line joins {which}{only}", "fitting", place)


def _tubes_are_known(card: Card) -> Iterator[Fault]:
    defaults = (card.line_defaults.size, card.line_defaults.material)
    told: set[tuple[str | int, ...]] = set()
    for place, line in enumerate(card.lines):
        message, key = _why_no_tube(line)
        same = (line.size, line.material) == defaults
        path: tuple[str | int, ...] = ("line_defaults", key) if same else ("line", place, key)
        if message and path not in told:
            told.add(path)
            yield card_fault(message, *path)


def _why_no_tube(line: Line) -> tuple[str, str]:
    if line.bore is not None or (line.size, line.material) in BORES:
        return "", ""
    if line.material not in MATERIALS:
        message = f"no tube of '{line.material}' is known; expected {_or(MATERIALS)}, or a bore"
        return message, "material"
    sizes = tuple(f"{size} in" for size, material in BORES if material == line.material)
    message = f"no {line.material} of '{line.size}' is known; expected {_or(sizes)}, or a bore"
    return message, "size"


def _lines_are_long_enough(card: Card) -> Iterator[Fault]:
    for place, line in enumerate(card.lines):
        distance = _least_distance_m(card, line)
        if distance is not None and line.length.high < distance:
            yield tangle(
                f"at most {line.length.high:.2f} m long, but its ends are at least "
                f"{distance:.2f} m apart",
                "line",
                place,
                "length",
            )


def _least_distance_m(card: Card, line: Line) -> float | None:
    """Give the straight distance between the ends less what their spreads allow [m]."""
    start, end = card.fitting.get(line.start.fitting), card.fitting.get(line.end.fitting)
    if start is None or end is None or start.at is None or end.at is None:
        return None
    start_height = _or_else(line.start_height_m, start.at.height_m)
    end_height = _or_else(line.end_height_m, end.at.height_m)
    distance = math.hypot(
        end.at.along_m - start.at.along_m,
        end.at.across_m - start.at.across_m,
        end_height - start_height,
    )
    return distance - math.hypot(start.at_within_m, end.at_within_m)


def _or_else(height_m: float | None, usual_m: float) -> float:
    return usual_m if height_m is None else height_m


def _drains_lead_out(card: Card) -> Iterator[Fault]:
    for place, fitting in enumerate(card.fittings):
        if fitting.drains_to is None:
            continue
        path = ("fitting", place, "drains_to")
        below = card.fitting.get(fitting.drains_to)
        if below is None:
            hint = nearest(fitting.drains_to, card.fitting)
            yield tangle(f"no fitting has the id '{fitting.drains_to}'{hint}", *path)
        elif _drains_in_a_circle(card, fitting):
            yield tangle(f"{fitting.id} drains, by way of {below.id}, into itself", *path)
        elif KINDS[below.kind].wetted:
            yield tangle(f"{below.id} is a {below.kind}; expected a trap or a waste tank", *path)


def _drains_in_a_circle(card: Card, fitting: Fitting) -> bool:
    passed: set[str] = set()
    here: Fitting | None = fitting
    while here is not None and here.drains_to is not None and here.id not in passed:
        passed.add(here.id)
        here = card.fitting.get(here.drains_to)
    return here is not None and here.id == fitting.id and bool(passed)


def _absent_is_absent(card: Card) -> Iterator[Fault]:
    present = Counter(fitting.kind for fitting in card.fittings if fitting.seen != "absent")
    for place, kind in enumerate(card.looked_for.absent):
        if present[kind]:
            message = f"'{kind}' is said to be absent, yet the card has {present[kind]}"
            yield tangle(message, "looked_for", "absent", place)


def _water_comes_in(card: Card) -> Iterator[Fault]:
    if not any(f.kind in SOURCES_OF_WATER and f.seen == "present" for f in card.fittings):
        yield tangle("no water comes in: expected a fresh tank or a city inlet", "fitting")


def _all_hangs_together(card: Card) -> Iterator[Fault]:
    beside: dict[str, set[str]] = {}
    for line in card.lines:
        beside.setdefault(line.start.fitting, set()).add(line.end.fitting)
        beside.setdefault(line.end.fitting, set()).add(line.start.fitting)
    pieces = _pieces(beside)
    for piece in pieces[1:]:
        places = [place for place, fitting in enumerate(card.fittings) if fitting.id in piece]
        if places:
            names = ", ".join(card.fittings[place].id for place in places[:4])
            more = f" and {len(places) - 4} more" if len(places) > 4 else ""  # noqa: PLR2004 - above
            message = f"{names}{more}: no line leads from here to the rest of the coach"
            yield tangle(message, "fitting", places[0])


def _pieces(beside: dict[str, set[str]]) -> list[set[str]]:
    """Give the connected pieces, the largest first."""
    left, pieces = dict.fromkeys(beside), []
    while left:
        edge = [next(iter(left))]
        piece = set(edge)
        while edge:
            fresh = beside[edge.pop()] - piece
            piece |= fresh
            edge.extend(fresh)
        pieces.append(piece)
        left = dict.fromkeys(name for name in left if name not in piece)
    return sorted(pieces, key=len, reverse=True)


def _or(words: tuple[str, ...]) -> str:
    return " or ".join(words) or "none"


Rule = Callable[[Card], Iterator[Fault]]

_RULES: tuple[Rule, ...] = (
    _roles_are_known,
    _compartments_are_known,
    _tubes_are_known,
    _lines_are_long_enough,
    _drains_lead_out,
    _absent_is_absent,
    _water_comes_in,
)
_STAGES: tuple[tuple[Rule, ...], ...] = (
    (_ids_are_unique, _ends_exist),
    (_ports_take_one_line,),
    (_ports_are_joined, _all_hangs_together),
)
