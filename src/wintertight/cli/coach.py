"""``wintertight coach``: what concerns a card and nothing else."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import json

import typer

from wintertight.cli import card_amend, card_compare, card_draw, card_history, card_sister, intake
from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import AsJson, CardFile, Language, ScreenUnits

SCHEMA = "wintertight/check/1"

app = typer.Typer(help="describe a coach, check, compare and copy cards")
app.command("new", short_help="describe a coach by answering questions, and write its card")(
    intake.new
)


@app.command("check")
def check(
    *,
    card: CardFile,
    language: Language = "en",
    units: ScreenUnits = "us",
    as_json: AsJson = False,
) -> Answer:
    """Read a card, and ask what is readable and yet deserves a word."""
    from wintertight.coach.left_open import asked
    from wintertight.coach.load import load_card
    from wintertight.wording.card_questions import finding_question
    from wintertight.wording.catalogue import say

    spoken, system = language_named(language), system_named(units)
    read = load_card(card)
    found = [
        {
            "key": finding.key,
            "part": finding.part or None,
            "params": dict(finding.params),
            "text": finding_question(finding, read, spoken, system),
        }
        for finding in asked(read)
    ]
    if as_json:
        about = {"card_hash": read.card_hash, "coach": {"id": read.id, "name": read.name}}
        return Answer(json_text(SCHEMA, {**about, "findings": found}))
    counted = {"fittings": str(len(read.fittings)), "lines": str(len(read.lines))}
    head = say("written", "card holds", spoken, coach=read.name or read.id, **counted)
    return Answer("\n".join([head, *(f"- {finding['text']}" for finding in found)]))


@app.command("schema")
def schema() -> Answer:
    """Print the JSON Schema of a card, for editors that check while somebody writes."""
    from wintertight.coach.schema import card_schema

    return Answer(json.dumps(card_schema(), indent=2, allow_nan=False))


app.command("amend")(card_amend.amend)
app.command("compare")(card_compare.compare)
app.command("draw")(card_draw.draw)
app.command("history")(card_history.history)
app.command("sister")(card_sister.sister)
