"""All commands in one place, and how typer's complaints become ours."""

from typing import Annotated, cast

import typer

from wintertight import __version__
from wintertight.cli import (
    antifreeze,
    coach,
    digest,
    estimate,
    fleet,
    flow,
    fluid,
    incident,
    methods,
    papers,
    plan,
    prove,
    signature,
    wear,
)
from wintertight.cli.answer import Answer
from wintertight.errors import ChoiceError, InputError

# typer does not export the parent of its complaints about a command line.
_UsageError = cast("type[Exception]", typer.BadParameter.__base__)

app = typer.Typer(
    name="wintertight",
    help="Is this coach wintertight to this temperature, and how do you know?",
    epilog='Quantities carry their unit: "-20F", "-29 degC". See docs/manual.md.',
    add_completion=False,
    rich_markup_mode=None,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100},
)
app.command("plan", short_help="steps, gallons, minutes, and the proof of what is left")(plan.plan)
app.command("papers", short_help="all papers and drawings of one coach into a folder")(
    papers.papers
)
app.command("methods", short_help="every method on one coach, side by side, best first")(
    methods.methods
)
app.command("antifreeze", short_help="which antifreeze of the list suits one coach")(
    antifreeze.antifreeze
)
app.command("estimate", short_help="what winterizing one coach costs, by the shop's price table")(
    estimate.estimate
)
app.command("fleet", short_help="every card of a folder: gallons, minutes, jugs, verdicts")(
    fleet.fleet
)
app.command("prove", short_help="the proof of what was really done, from its record")(prove.prove)
app.command("digest", short_help="is this record the one on the winter record?")(digest.digest)
app.command("signature", short_help="does the signature on a winter record hold?")(
    signature.signature
)
app.command("incident", short_help="what burst in spring, and what the record says of it")(
    incident.incident
)
app.command("wear", short_help="how much of an anode rod is eaten, and when to replace it")(
    wear.wear
)
app.command("fluid", short_help="when a mixture freezes and when its slush bursts")(fluid.fluid)
app.command("flow", short_help="which way water goes, and how fast")(flow.flow)
app.add_typer(coach.app, name="coach")


def carry_out(arguments: list[str]) -> Answer:
    """Carry out one command.

    Args:
        arguments: what was written behind the name of the program.

    Returns:
        What it has to say. Help and version have then been printed, and the answer is empty.

    Raises:
        InputError: the command line cannot be read, or what it names cannot be used.
        WintertightError: as the command raises.
    """
    command = typer.main.get_command(app)
    try:
        with command.make_context("wintertight", arguments or ["--help"]) as context:
            return cast("Answer", command.invoke(context))
    except typer.Exit as ended:
        return Answer("", ended.exit_code)
    except _UsageError as error:
        raise _in_one_line(error) from None


def _in_one_line(error: Exception) -> InputError:
    message = cast("typer.BadParameter", error).format_message().strip().rstrip(".")
    context = cast("typer.BadParameter", error).ctx
    where = context.command_path if context else "wintertight"
    kind = ChoiceError if message.startswith("No such") else InputError
    return kind(f"{message[:1].lower()}{message[1:]}; see {where} --help")


def _print_version(wanted: bool) -> None:  # noqa: FBT001 - typer calls it so
    if wanted:
        typer.echo(f"wintertight {__version__}")
        raise typer.Exit


@app.callback()
def _program(
    *,
    version: Annotated[
        bool,
        typer.Option("--version", callback=_print_version, is_eager=True, help="print the version"),
    ] = False,
) -> None:
    """Take the options that stand before any command."""
