"""The files that ``plan`` writes: checked before any work is done, written when it is."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from wintertight.cli.written import PDF, SVG, can_be_written, write_whole
from wintertight.errors import InputError, Place

if TYPE_CHECKING:
    from wintertight.documents.typeset import Paper
    from wintertight.procedure.plan import Plan
    from wintertight.units import System


@dataclass(frozen=True, slots=True)
class PlanFiles:
    """Where each file that was asked for is to be.

    Attributes:
        pdf: the job sheet.
        guide: the guide for an owner who does it alone.
        drawing: how the plan ends, as SVG.
    """

    pdf: str | None = None
    guide: str | None = None
    drawing: str | None = None

    def check(self) -> None:
        """Refuse files that could not be written, and two in one place.

        Raises:
            InputError: one of them could not.
        """
        asked = (
            (self.pdf, "--pdf", PDF),
            (self.guide, "--guide", PDF),
            (self.drawing, "--drawing", SVG),
        )
        taken: dict[Path, str] = {}
        for file, option, kind in asked:
            if file is None:
                continue
            can_be_written(file, option, kind)
            if (other := taken.setdefault(Path(file).resolve(), option)) != option:
                message = f"{other} is to stand there; expected another file; nothing was written"
                raise InputError(message, Place(file, field=option))

    def write(self, plan: "Plan", language: str, paper: "Paper", system: "System") -> Iterator[str]:
        """Write each file and name it.

        Args:
            plan: the plan.
            language: two letters.
            paper: of what is printed.
            system: units of what is printed.

        Yields:
            One line a file.

        Raises:
            InputError: one of them cannot be written.
        """
        from wintertight.wording.catalogue import say

        if self.pdf is not None:
            from wintertight.documents.job_sheet import job_sheet_pdf

            write_whole(self.pdf, "--pdf", job_sheet_pdf(plan, language, paper, system))
            yield say("written", "job sheet", language, file=self.pdf)
        if self.guide is not None:
            from wintertight.documents.drawing.of_plan import handle_pictures
            from wintertight.documents.guide_pictures import guide_pictures
            from wintertight.documents.owner_guide import owner_guide_pdf

            shown = guide_pictures(plan, handle_pictures(plan, language))
            guide = owner_guide_pdf(plan, language, paper, system, shown)
            write_whole(self.guide, "--guide", guide)
            yield say("written", "guide", language, file=self.guide)
        if self.drawing is not None:
            from wintertight.documents.drawing.of_plan import end_picture
            from wintertight.documents.drawing.svg_text import svg_text

            text = svg_text(end_picture(plan, language))
            write_whole(self.drawing, "--drawing", text.encode("utf-8"), SVG)
            yield say("written", "drawing", language, file=self.drawing)
