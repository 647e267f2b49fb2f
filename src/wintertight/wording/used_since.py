"""What the use of a winterized coach has undone, as sentences."""

from wintertight.procedure.winter_use import UsedSince
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.proofs import verdict_line
from wintertight.wording.spoken import begun, counted, listed


def used_text(since: UsedSince, language: str = "en", system: System = "us") -> str:
    """Give how a coach was used, what that has undone, and that the plan below makes it good."""
    card, plan = since.again.card, since.again
    network = plan.careful.network
    said = []
    if since.use.ran:
        names = dict.fromkeys(
            part_name(card, network.controls[o].part, language) for o in since.use.ran
        )
        said.append(say("phrase", "water ran at", language, parts=listed(names, language)))
    if since.use.flushed:
        names = dict.fromkeys(part_name(card, pool, language) for pool in since.use.flushed)
        said.append(say("phrase", "water stands in", language, parts=listed(names, language)))
    count = counted(len(since.voided), "parts", language)
    said.append(say("phrase", "void are", language, count=count))
    stands = verdict_line(card, since.parts, plan.low_degC, language, system)
    said.append(say("phrase", "as it stands", language, verdict=stands))
    return " ".join(begun(text) for text in said)
