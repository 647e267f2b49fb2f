"""``wintertight coach``: what concerns a card and nothing else."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import json

import typer

from wintertight.cli.answer import Answer

app = typer.Typer(help="Check a card, or print what a card may hold.")


@app.command("schema")
def schema() -> Answer:
    """Print the JSON Schema of a card, for editors that check while somebody writes."""
    from wintertight.coach.schema import card_schema

    return Answer(json.dumps(card_schema(), indent=2, allow_nan=False))
