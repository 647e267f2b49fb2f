"""Every exception the package raises on purpose, in one tree.

    WintertightError                       WT-000
      InputError (ValueError)              WT-100   unusable input: exit status 2
        UnreadableFile (OSError)           WT-101   missing, a folder, not text, over 4 MB, too deep
        QuantityError                      WT-110   a number without its unit, or of the wrong kind
        SyntaxFault                        WT-111   not TOML, or not JSON
        CardError                          WT-120   a field of a card, answer or list is wrong
        CardTangled                        WT-121   the fields are right, the plumbing is not
        RecordError                        WT-130   a field of a record is wrong
        ChoiceError                        WT-140   an option names what does not exist
      OutOfRange (ValueError)              WT-200   a quantity outside its published table
      NoSteadyFlow (ArithmeticError)       WT-300   the flow solver did not converge
      BooksDoNotClose (ArithmeticError)    WT-310   a replay lost or made fluid
      ProgramFault (RuntimeError)          WT-900   something went wrong that nobody thought of

An unsafe part of a coach is a finding, never an exception. Each code has its paragraph in
``docs/errors.md``: what happened and what to do.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Place:
    """Where in the input something is wrong; what is not known stays None."""

    file: str | None = None
    line: int | None = None
    field: str | None = None

    def __str__(self) -> str:
        """Give ``file:line field``, leaving out what is not known."""
        where = self.file or ""
        if self.line is not None:
            where += f":{self.line}" if where else f"line {self.line}"
        return f"{where} {self.field or ''}".strip()


class WintertightError(Exception):
    """Root of the tree; prints as one line: code, place, what is wrong."""

    code = "WT-000"

    def __init__(self, message: str, place: Place | None = None) -> None:
        """Keep the message, and the place in the input if there is one."""
        super().__init__(message)
        self.message = message
        self.place = place or Place()

    def __str__(self) -> str:
        """Give the one line a user sees."""
        where = str(self.place)
        text = " ".join(self.message.split())
        return f"{self.code} {where}: {text}" if where else f"{self.code} {text}"


class InputError(WintertightError, ValueError):
    """Unusable input of any kind; ``others`` holds what else is wrong with the same file."""

    code = "WT-100"
    others: tuple["InputError", ...] = ()


class UnreadableFile(InputError, OSError):  # noqa: N818 - the tree reads as plain words
    """A file is missing, a folder, not UTF-8 text, over 4 MB, or nested too deep."""

    code = "WT-101"


class QuantityError(InputError):
    """A quantity lacks its unit, has one of another kind, or is no number."""

    code = "WT-110"


class SyntaxFault(InputError):  # noqa: N818
    """The file is not TOML, or not JSON."""

    code = "WT-111"


class CardError(InputError):
    """A field of a coach's card, of the answers it is made from, or of a shop's list, is wrong."""

    code = "WT-120"


class CardTangled(InputError):  # noqa: N818
    """Each field of the card can be read, but together they are no plumbing."""

    code = "WT-121"


class RecordError(InputError):
    """A field of a record is wrong."""

    code = "WT-130"


class ChoiceError(InputError):
    """An option names a thing that does not exist."""

    code = "WT-140"


class OutOfRange(WintertightError, ValueError):  # noqa: N818
    """A quantity lies outside the published table that would give its property."""

    code = "WT-200"


class NoSteadyFlow(WintertightError, ArithmeticError):  # noqa: N818
    """The flow solver did not converge."""

    code = "WT-300"

    def __init__(self, message: str, iterations: int, residual: float) -> None:
        """Carry the iterations made and the residual left [m3/s]."""
        super().__init__(f"{message} (after {iterations} iterations, residual {residual:.3g} m3/s)")
        self.iterations = iterations
        self.residual = residual


class BooksDoNotClose(WintertightError, ArithmeticError):  # noqa: N818
    """In is not out plus held: the replay lost or made fluid."""

    code = "WT-310"

    def __init__(self, message: str, relative_error: float) -> None:
        """Carry the relative error [1]."""
        super().__init__(f"{message} (relative error {relative_error:.3g})")
        self.relative_error = relative_error


class ProgramFault(WintertightError, RuntimeError):  # noqa: N818
    """Something went wrong that nobody thought of; the command line makes it one line."""

    code = "WT-900"
