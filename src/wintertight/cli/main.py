"""The entry of the command line; it loads nothing itself, so that Ctrl-C is quiet at once."""

import sys

STOPPED = 130
"""Exit status after Ctrl-C, as a shell counts a signal."""


def main(arguments: list[str] | None = None) -> int:
    """Carry out one command.

    Args:
        arguments: what was written behind the name of the program; None takes it from the system.

    Returns:
        The exit status. Whatever goes wrong has become one line on standard error.
    """
    try:
        from wintertight.cli.outcome import outcome  # noqa: PLC0415 - loading is stopped quietly

        return outcome(sys.argv[1:] if arguments is None else arguments)
    except KeyboardInterrupt:
        return STOPPED


if __name__ == "__main__":
    sys.exit(main())
