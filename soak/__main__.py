"""Run every sweep and print what it found; exit status 1 if one of them found a fault."""

import sys
from collections.abc import Callable

from soak.coach_pictures import coach_pictures
from soak.described_coaches import described_coaches
from soak.found_mistakes import found_mistakes
from soak.mutated_cards import sweep
from soak.which_answers import which_answers

SWEEPS: dict[str, Callable[[], int]] = {
    "mutated-cards": lambda: sweep(10_000),
    "found-mistakes": found_mistakes,
    "described-coaches": described_coaches,
    "coach-pictures": coach_pictures,
    "which-answers": which_answers,
}
"""Every sweep by its name."""


def main() -> int:
    """Run the sweeps, or the one that is named."""
    names = sys.argv[1:] or list(SWEEPS)
    unknown = [name for name in names if name not in SWEEPS]
    if unknown:
        known = ", ".join(SWEEPS)
        sys.stderr.write(f"no sweep is called {', '.join(unknown)}; there are {known}\n")
        return 2
    return max(SWEEPS[name]() for name in names)


if __name__ == "__main__":
    sys.exit(main())
