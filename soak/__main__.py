"""Run every sweep and print what it found; exit status 1 if one of them found a fault."""

import sys

from soak.mutated_cards import sweep


def main() -> int:
    """Run the sweeps."""
    return sweep(int(sys.argv[1]) if len(sys.argv) > 1 else 10_000)


if __name__ == "__main__":
    sys.exit(main())
