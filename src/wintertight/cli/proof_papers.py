"""The papers that ``wintertight prove`` writes: the winter record and the hang tag."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import os
import sys
from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated

import typer

from wintertight.cli.asked import paper_named
from wintertight.cli.written import can_be_written, write_whole
from wintertight.errors import ChoiceError, Place

if TYPE_CHECKING:
    from collections.abc import Iterator

    from pyhanko.sign.signers import SimpleSigner

    from wintertight.documents.recorded_job import RecordedJob
    from wintertight.documents.typeset import Paper
    from wintertight.units import System

RecordPaper = Annotated[
    str | None, typer.Option("--pdf", metavar="FILE", help="write the winter record there")
]
TagPaper = Annotated[
    str | None, typer.Option("--tag", metavar="FILE", help="write the tag for the main tap there")
]
PaperSize = Annotated[
    str, typer.Option("--paper", metavar="us-letter|a4", help="paper; a tag is 4x6 in or A6")
]
SignKey = Annotated[
    str | None,
    typer.Option("--sign", metavar="KEY.p12", help="sign the winter record with this key"),
]
PASSPHRASE = "WINTERTIGHT_PASSPHRASE"  # noqa: S105 - a name, no secret
"""The variable of the environment that holds what opens the key; else it is asked for."""

Link = Annotated[
    str | None, typer.Option("--link", metavar="URL", help="the coach's page, as a QR code")
]


@dataclass(frozen=True, slots=True)
class AskedPapers:
    """Which papers are wanted, and how.

    Attributes:
        record, tag: files to write; None where that paper is not wanted.
        paper: "us-letter" or "a4".
        link: address of the coach's page; "" where there is none.
        signer: what signs the record; None where nobody does.
    """

    record: str | None
    tag: str | None
    paper: "Paper"
    link: str
    signer: "SimpleSigner | None" = None

    @property
    def are_wanted(self) -> bool:
        """Is any paper wanted?"""
        return self.record is not None or self.tag is not None


def asked_papers(  # noqa: PLR0913 - one parameter for each option
    record: str | None,
    tag: str | None,
    paper: str,
    link: str | None,
    sign: str | None,
    *,
    quick: bool,
) -> AskedPapers:
    """Refuse papers that could not be written, before any work is done for them.

    Args:
        record: ``--pdf``.
        tag: ``--tag``.
        paper: ``--paper``.
        link: ``--link``.
        sign: ``--sign``.
        quick: whether nobody asked what stopwatch, jugs and cups tell.

    Returns:
        What is wanted.

    Raises:
        InputError: a file cannot be written.
        ChoiceError: there is no such paper, nothing is to be signed, the link is no address or has
            no paper to stand on, both papers are to be one file, or ``--quick`` leaves out what a
            paper must say.
    """
    size = paper_named(paper)
    files = {"--pdf": record, "--tag": tag}
    wanted = {option: file for option, file in files.items() if file is not None}
    for option, file in wanted.items():
        if quick:
            message = f"{option} writes what stopwatch, jugs and cups tell; leave --quick out"
            raise ChoiceError(message, Place(field="--quick"))
        can_be_written(file, option)
    if record is not None and tag is not None and _same_file(record, tag):
        message = "expected another file than that of --pdf; nothing was written"
        raise ChoiceError(message, Place(tag, field="--tag"))
    if link is not None and not wanted:
        message = "expected --pdf or --tag beside it: a link stands on a paper"
        raise ChoiceError(message, Place(field="--link"))
    if sign is not None and record is None:
        message = "expected --pdf beside it: what is signed is the winter record"
        raise ChoiceError(message, Place(field="--sign"))
    return AskedPapers(record, tag, size, link_named(link), signer_named(sign))


def signer_named(key: str | None) -> "SimpleSigner | None":
    """Open the key that signs; None where none is given.

    Raises:
        InputError: it cannot be read, or the passphrase does not open it.
        ChoiceError: the optional part is not installed.
    """
    if key is None:
        return None
    from wintertight.documents.signed_paper import read_signer

    passphrase = os.environ.get(PASSPHRASE)
    if passphrase is None and sys.stdin.isatty():
        passphrase = typer.prompt(f"Passphrase of {key}", hide_input=True, err=True)
    return read_signer(key, passphrase or None)


def link_named(link: str | None) -> str:
    """Read the address of a coach's page; "" where none is given."""
    if link is None:
        return ""
    from wintertight.documents.coach_link import checked_link

    return checked_link(link)


def write_papers(
    asked: AskedPapers, job: "RecordedJob", language: str, system: "System"
) -> list[str]:
    """Write the papers that are wanted; each is made before any is written.

    Args:
        asked: which are wanted.
        job: the record and what follows from it.
        language: two letters.
        system: "us" or "metric".

    Returns:
        A line for each paper that was written.

    Raises:
        InputError: a file cannot be written.
    """
    from wintertight.wording.catalogue import say

    made = list(_made(asked, job, language, system))
    for file, option, _, content in made:
        write_whole(file, option, content)
    return [say("written", paper, language, file=file) for file, _, paper, _ in made]


def _made(
    asked: AskedPapers, job: "RecordedJob", language: str, system: "System"
) -> "Iterator[tuple[str, str, str, bytes]]":
    if asked.record is not None:
        from wintertight.documents.winter_record import winter_record_pdf

        content = winter_record_pdf(job, language, asked.paper, system, asked.signer)
        yield asked.record, "--pdf", "record", content
    if asked.tag is not None:
        from wintertight.documents.hang_tag import hang_tag_pdf

        yield asked.tag, "--tag", "tag", hang_tag_pdf(job, language, asked.paper, system)


def _same_file(one: str, other: str) -> bool:
    return os.path.realpath(one) == os.path.realpath(other)
