"""Read a coach's card from a file or a text: a `Card`, or one line that says what is wrong."""

from os import PathLike

from pydantic import ValidationError

from wintertight.coach.card import Card, LineDefaults
from wintertight.coach.faults import Fault, faults_of, gathered
from wintertight.coach.plumbing import plumbing_faults
from wintertight.coach.read_toml import read_file, read_toml


def load_card(path: str | PathLike[str]) -> Card:
    """Read a card from a file.

    Args:
        path: the TOML file, UTF-8, at most 4 MB.

    Returns:
        The card; its plumbing holds together.

    Raises:
        UnreadableFile: missing, a folder, not UTF-8, too large or nested too deep.
        SyntaxFault: not TOML.
        QuantityError: a quantity lacks its unit or has a wrong one.
        CardError: a field is missing, unknown or wrong.
        CardTangled: the fields are right, the plumbing is not.
    """
    return read_card(read_file(path), str(path))


def read_card(text: str, name: str = "card") -> Card:
    """Read a card from its text.

    Args:
        text: TOML text.
        name: what to call it in messages.

    Returns:
        The card; its plumbing holds together.

    Raises:
        InputError: as in `load_card`. All faults of one stage (TOML, fields, plumbing) are found
            together: the message is the first one's, its `others` gives the
            rest.
    """
    document = read_toml(text, name)
    try:
        card = Card.model_validate(document.data)
    except ValidationError as error:
        faults = _once_each(faults_of(error, Card))
        raise gathered(faults, name, document.lines, document.data) from None
    tangles = plumbing_faults(card)
    if tangles:
        raise gathered(tangles, name, document.lines, document.data)
    return card


def _once_each(faults: list[Fault]) -> list[Fault]:
    """Leave out what is only the echo of a wrong default in every line."""
    wrong = {
        fault.path[1] for fault in faults if fault.path[:1] == ("line_defaults",) and fault.path[1:]
    }
    wrong &= set(LineDefaults.model_fields)
    return [f for f in faults if not (f.path[:1] == ("line",) and f.path[-1] in wrong)]
