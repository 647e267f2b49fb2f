"""Ten thousand cards with something wrong in them: one line each, and never another exception.

Lines of the demo's cards are dropped, doubled, swapped, cut and given other values; bytes are
changed. A card that still reads is planned now and then. What is asked of every error: it is an
`InputError`, it is one line, and a line number it prints is a line of the file.
"""

import random
import re
import sys
import time
from collections import Counter
from pathlib import Path

import wintertight
from wintertight.coach.card import Card
from wintertight.coach.load import read_card
from wintertight.coach.shop import load_shop
from wintertight.errors import InputError
from wintertight.procedure.plan import plan_coach

DEMO = Path(wintertight.__file__).parent / "demo"
SEED = 20_240_902
EACH_PLANNED = 100
ODD = (
    *("", '"', "0", "-1", "nan", "[]", "{}", "true", "1e400"),
    *('"9e999 ft"', '"12"', '"\\u0000"', '"12 ft" "13 ft"', '"pump"', '"kitchen.left"'),
    '{ guessed = "1 ft", told = "2 ft" }',
)


def mutated(text: str, rng: random.Random) -> str:
    """Give a card's text with one to three things wrong."""
    lines = text.splitlines()
    for _ in range(rng.randint(1, 3)):
        at = rng.randrange(len(lines))
        kind = rng.randrange(7)
        if kind == 0:
            del lines[at]
        elif kind == 1:
            lines.insert(at, lines[at])
        elif kind == 2:  # noqa: PLR2004 - a case of seven
            other = rng.randrange(len(lines))
            lines[at], lines[other] = lines[other], lines[at]
        elif kind == 3:  # noqa: PLR2004
            lines[at] = lines[at][: rng.randint(0, len(lines[at]))]
        elif kind == 4 and "=" in lines[at]:  # noqa: PLR2004
            lines[at] = lines[at].partition("=")[0] + "= " + rng.choice(ODD)
        elif kind == 5 and lines[at]:  # noqa: PLR2004
            place = rng.randrange(len(lines[at]))
            lines[at] = lines[at][:place] + chr(rng.randint(1, 0x2FF)) + lines[at][place + 1 :]
        else:
            word = re.sub(
                r"\d+", lambda m: str(int(m.group()) * rng.choice((0, 3, 100))), lines[at]
            )
            lines[at] = word
        if not lines:
            lines = ["#"]
    return "\n".join(lines) + "\n"


def faults_of(error: InputError, text: str) -> list[str]:
    """Say what is wrong with an error message."""
    said = str(error)
    found = []
    if "\n" in said or "Traceback" in said:
        found.append(f"more than one line: {said!r}")
    line = error.place.line
    if line is not None and not 1 <= line <= text.count("\n") + 1:
        found.append(f"line {line} of a card of {text.count(chr(10))} lines: {said}")
    return found


def planned(card: Card) -> str | None:
    """Plan a card that still reads; give what went wrong, if anything did."""
    product = load_shop(DEMO / "shop.toml").products[0]
    try:
        plan_coach(card, product, -23.0)
    except InputError:
        return None
    except Exception as error:  # noqa: BLE001 - this is what is looked for
        return f"{type(error).__name__}: {error}"
    return None


def sweep(count: int) -> int:
    """Mutate cards and read them; print a summary.

    Args:
        count: how many [1].

    Returns:
        0, or 1 if any card gave another exception or a bad message.
    """
    rng = random.Random(SEED)  # noqa: S311 - no secret
    texts = [p.read_text(encoding="utf-8") for p in sorted((DEMO / "cards").glob("*.toml"))]
    codes: Counter[str] = Counter()
    faults: list[str] = []
    started = time.perf_counter()
    for n in range(count):
        text = mutated(rng.choice(texts), rng)
        try:
            card = read_card(text, "card.toml")
        except InputError as error:
            codes[error.code] += 1
            faults += faults_of(error, text)
            continue
        except Exception as error:  # noqa: BLE001 - this is what is looked for
            faults.append(f"card {n}: {type(error).__name__}: {error}")
            continue
        codes["read"] += 1
        if codes["read"] % EACH_PLANNED == 0:
            wrong = planned(card)
            faults += [f"card {n}, planned: {wrong}"] if wrong else []
    took = time.perf_counter() - started
    sys.stdout.write(f"{count} mutated cards in {took:.0f} s: {dict(codes.most_common())}\n")
    for fault in faults[:20]:
        sys.stdout.write(f"  {fault}\n")
    sys.stdout.write(f"{len(faults)} faults\n")
    return 1 if faults else 0
