"""The earlier selves of a card, kept beside it in a file that only ever grows.

``NAME.history.jsonl`` stands beside ``NAME.toml``. Each of its lines is one earlier card, oldest
first: when it was replaced and why, its hash, and its whole text. A card is replaced in this order:
the new text is read and found good, the old self is written to the history and has reached the
disk, and only then the new one takes its place in one move. Whatever is cut off in between, no card
is lost.
"""

import json
import os
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from os import PathLike
from pathlib import Path
from typing import BinaryIO

from wintertight.coach.card import Card
from wintertight.coach.load import read_card
from wintertight.coach.read_toml import LARGEST, read_file
from wintertight.coach.write_file import reason_of, swap_in
from wintertight.errors import InputError, Place, UnreadableFile

SCHEMA = "wintertight/card-history/1"

ENDING = ".history.jsonl"

_LONGEST_LINE = 8 * LARGEST
"""Most bytes of one entry: a card of the largest size with every sign escaped."""


@dataclass(frozen=True, slots=True)
class EarlierCard:
    """What a card once was.

    Attributes:
        at: when it was replaced, with its offset from UTC.
        why: why it was replaced.
        card_hash: hash of its meaning; None where it could not be read as a card.
        text: its whole TOML text.
    """

    at: datetime
    why: str
    card_hash: str | None
    text: str


@dataclass(frozen=True, slots=True)
class History:
    """All earlier selves of a card.

    Attributes:
        entries: the earlier cards, oldest first.
        damaged: lines of the file that cannot be read, counted from one; a write that was cut off
            leaves one, and the others stay whole.
    """

    entries: tuple[EarlierCard, ...] = ()
    damaged: tuple[int, ...] = ()


def history_file(path: str | PathLike[str]) -> Path:
    """Give the file that keeps the earlier selves of a card; a link is followed to the card."""
    card = Path(os.path.realpath(path))
    return card.with_name(card.name.removesuffix(".toml") + ENDING)


def history(path: str | PathLike[str]) -> History:
    """Read the earlier selves of a card.

    Args:
        path: file of the card; it need not exist any more.

    Returns:
        The history; an empty one where the card was never replaced.

    Raises:
        UnreadableFile: its history is there and cannot be opened.
    """
    file = history_file(path)
    entries: list[EarlierCard] = []
    damaged: list[int] = []
    try:
        with file.open("rb") as stream:
            for number, line in enumerate(_lines(stream), start=1):
                entry = _entry(line)
                if entry is not None:
                    entries.append(entry)
                elif line.strip():
                    damaged.append(number)
    except FileNotFoundError:
        return History()
    except (OSError, ValueError) as error:
        message = f"the card's history cannot be read: {reason_of(error)}"
        raise UnreadableFile(message, Place(str(file))) from error
    return History(tuple(entries), tuple(damaged))


def earlier(path: str | PathLike[str]) -> tuple[EarlierCard, ...]:
    """Give the earlier selves of a card that can be read, oldest first; errors as in `history`."""
    return history(path).entries


def _lines(stream: BinaryIO) -> Iterator[bytes]:
    while line := stream.readline(_LONGEST_LINE):
        yield line


def _entry(line: bytes) -> EarlierCard | None:
    """Read one line; None where it is no entry."""
    try:
        raw = json.loads(line.decode("utf-8"))
        at = datetime.fromisoformat(raw["at"])
        why, card_hash, text = raw["why"], raw["card_hash"], raw["text"]
    except (ValueError, TypeError, KeyError, RecursionError):
        return None
    texts = isinstance(why, str) and isinstance(text, str)
    if raw.get("schema") != SCHEMA or not texts or not isinstance(card_hash, str | None):
        return None
    return EarlierCard(at.astimezone() if at.tzinfo is None else at, why, card_hash, text)


def keep(path: str | PathLike[str], why: str, at: datetime) -> EarlierCard:
    """Write what a card is now to the end of its history.

    Args:
        path: file of the card.
        why: why it is about to be replaced.
        at: when; without an offset it is taken for local time.

    Returns:
        The entry. What already stands last in the history, with the same reason, is not written a
        second time.

    Raises:
        UnreadableFile: the card, or its history, cannot be opened.
        InputError: the history cannot be written.
    """
    text = read_file(path)
    entry = EarlierCard(at.astimezone() if at.tzinfo is None else at, why, _hash_of(text), text)
    last = earlier(path)[-1:]
    if last and (last[0].text, last[0].why) == (text, why):
        return last[0]
    written = {
        "schema": SCHEMA,
        "at": entry.at.isoformat(timespec="seconds"),
        "why": why,
        "card_hash": entry.card_hash,
        "text": text,
    }
    file = history_file(path)
    try:
        _append(file, json.dumps(written).encode("ascii") + b"\n")
    except OSError as error:
        message = f"the earlier card cannot be kept: {reason_of(error)}; the card stands as it was"
        raise InputError(message, Place(str(file))) from error
    return entry


def _append(file: Path, line: bytes) -> None:
    with file.open("a+b") as stream:
        # What a cut write left behind stays a line of its own.
        if stream.seek(0, os.SEEK_END):
            stream.seek(-1, os.SEEK_END)
            line = line if stream.read(1) == b"\n" else b"\n" + line
        stream.write(line)
        stream.flush()
        os.fsync(stream.fileno())


def _hash_of(text: str) -> str | None:
    try:
        return read_card(text).card_hash
    except InputError:
        return None


def replace_card(path: str | PathLike[str], new_text: str, why: str, at: datetime) -> Card:
    """Put a new card in the place of one, which stays in its history.

    Args:
        path: file of the card that is there now, good or not.
        new_text: TOML text of the new one.
        why: why it is replaced.
        at: when.

    Returns:
        The new card.

    Raises:
        InputError: the new text is no card (as in `read_card`), the old one cannot be opened, or
            one of the two files cannot be written. The card then stands as it was.
    """
    card = read_card(new_text, str(path))
    keep(path, why, at)
    try:
        swap_in(path, new_text.encode("utf-8"))
    except OSError as error:
        message = f"the new card cannot be written: {reason_of(error)}; the card stands as it was"
        raise InputError(message, Place(str(path))) from error
    return card
