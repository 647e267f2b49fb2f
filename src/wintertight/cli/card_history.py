"""``wintertight coach history``: the earlier selves of a card."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from itertools import pairwise
from pathlib import Path

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named
from wintertight.cli.options import AsJson, CardFile, Language
from wintertight.errors import InputError

SCHEMA = "wintertight/card-history-list/1"


def history(*, card: CardFile, language: Language = "en", as_json: AsJson = False) -> Answer:
    """List the earlier selves of a card: when it was replaced, why, and how much changed."""
    from wintertight.coach.card import Card
    from wintertight.coach.compare import differences
    from wintertight.coach.history import history as history_of
    from wintertight.coach.history import history_file
    from wintertight.coach.load import load_card, read_card
    from wintertight.wording.card_changes import damaged_text, entry_text, history_heading

    def readable(text: str) -> Card | None:
        try:
            return read_card(text)
        except InputError:
            return None

    spoken, kept = language_named(language), history_of(card)
    now: Card | None = None
    try:
        now = load_card(card)
    except InputError:
        # Where the card itself is spoilt, its earlier selves are what is wanted.
        if not kept.entries:
            raise
    selves = [*(readable(entry.text) for entry in kept.entries), now]
    counts = [len(differences(a, b)) if a and b else None for a, b in pairwise(selves)]
    rows = list(zip(kept.entries, counts, strict=True))
    if as_json:
        entries = [
            {
                "at": entry.at.isoformat(),
                "why": entry.why,
                "card_hash": entry.card_hash,
                "differences": count,
                **({"why_null": "no card"} if count is None else {}),
            }
            for entry, count in rows
        ]
        content = {"earlier": entries, "damaged_lines": list(kept.damaged)}
        return Answer(json_text(SCHEMA, content))
    name = now.name if now is not None else Path(card).name
    lines = [history_heading(name, len(rows), spoken, damaged=bool(kept.damaged))]
    lines += [f"- {entry_text(entry, count, spoken)}" for entry, count in rows]
    if kept.damaged:
        lines.append(damaged_text(kept.damaged, str(history_file(card)), spoken))
    return Answer("\n".join(lines))
