"""The subjects of a catalogue, and in which table of a language's package each stands.

Every language is a package of modules of the same names, with tables of the same names: what is
told here is told once for all of them.
"""

from collections.abc import Mapping
from importlib import import_module
from types import MappingProxyType

Table = Mapping[str, str]

SUBJECTS: Mapping[str, tuple[str, str]] = MappingProxyType(
    {
        "step": ("steps", "STEPS"),
        "why": ("steps", "WHY"),
        "caution": ("cautions", "CAUTIONS"),
        "how to open": ("steps", "HOW_TO_OPEN"),
        "hazard": ("cautions", "HAZARDS"),
        "phase": ("steps", "PHASES"),
        "method": ("settings", "METHODS"),
        "thing": ("settings", "THINGS"),
        "setting": ("settings", "SETTINGS"),
        "phrase": ("steps", "PHRASES"),
        "claim": ("proofs", "CLAIMS"),
        "reason": ("proofs", "REASONS"),
        "settle": ("proofs", "SETTLE"),
        "evidence": ("proofs", "EVIDENCE"),
        "kind of evidence": ("proofs", "KINDS_OF_EVIDENCE"),
        "pocket": ("proofs", "POCKETS"),
        "verdict": ("proofs", "VERDICTS"),
        "outcome": ("proofs", "OUTCOMES"),
        "null": ("proofs", "NULLS"),
        "kind": ("coach", "KINDS"),
        "role": ("coach", "ROLES"),
        "name": ("coach", "NAMES"),
        "heat": ("coach", "SOURCES_OF_HEAT"),
        "card change": ("card_changes", "CHANGES"),
        "card subject": ("card_changes", "SUBJECTS"),
        "card field": ("card_changes", "FIELDS"),
        "known": ("card_changes", "WAYS"),
        "finding": ("coach", "FINDINGS"),
        "finding question": ("coach_questions", "QUESTIONS"),
        "where to look": ("coach_questions", "WHERE"),
        "sister coach": ("coach_questions", "SISTER"),
        "card history": ("coach_questions", "HISTORY"),
        "label": ("paper", "LABELS"),
        "drawing": ("drawing", "DRAWING"),
        "fleet": ("fleet", "FLEET"),
        "mistake": ("mistakes", "MISTAKES"),
        "mistake outcome": ("mistakes", "OUTCOMES"),
        "mistake settle": ("mistakes", "SETTLE"),
        "mistake piece": ("mistakes", "PIECES"),
        "sign": ("mistakes", "SIGNS"),
        "cause": ("hindsight", "CAUSES"),
        "cause in passing": ("hindsight", "SHORT"),
        "sight": ("hindsight", "SIGHTS"),
        "hindsight": ("hindsight", "PIECES"),
        "no hindsight": ("hindsight", "WHY_NONE"),
        "comparison": ("comparing", "COMPARISON"),
        "hindrance": ("places", "HINDRANCES"),
        "precondition": ("places", "PRECONDITIONS"),
        "place": ("places", "PLACES"),
        "antifreeze": ("choices", "ANTIFREEZE"),
        "buying": ("choices", "BUYING"),
        "order": ("choices", "ORDERS"),
        "stop rule": ("choices", "STOP_RULES"),
        "burst cause": ("incidents", "CAUSES"),
        "burst settle": ("incidents", "SETTLE"),
        "burst look": ("incidents", "LOOK"),
        "incident": ("incidents", "INCIDENT"),
        "anode": ("wear", "ANODES"),
        "no anode": ("wear", "NO_ANODES"),
        "wear": ("wear", "WEAR_PHRASES"),
        "question": ("intake", "QUESTIONS"),
        "where": ("intake", "WHERE"),
        "why asked": ("intake", "WHY"),
        "asked about": ("intake", "SUBJECTS"),
        "choice": ("intake_talk", "CHOICES"),
        "not understood": ("intake_talk", "NOT_UNDERSTOOD"),
        "talk": ("intake_talk", "TALK"),
        "typed": ("intake_talk", "TYPED"),
        "written": ("written", "WRITTEN"),
        "at hand": ("at_hand", "AT_HAND"),
        "tool": ("at_hand", "TOOLS"),
        "spare": ("at_hand", "SPARES"),
        "estimate": ("estimate", "ESTIMATE"),
        "guide": ("owner_guide", "GUIDE"),
        "guide step": ("owner_guide", "STEPS"),
        "guide group": ("owner_guide", "GROUPS"),
        "guide caution": ("owner_guide", "CAUTIONS"),
        "guide buy": ("owner_guide", "BUY"),
        "guide check": ("owner_guide", "CHECKS"),
        "guide off": ("owner_guide", "OFF"),
        "guide never": ("owner_guide", "NEVER"),
        "guide shop": ("owner_guide", "SHOP"),
        "guide void": ("owner_guide", "VOID"),
        "guide spring": ("owner_guide", "SPRING"),
        "deed": ("deeds", "DEEDS"),
        "winter record": ("winter_record", "RECORD"),
        "mark": ("winter_record", "MARKS"),
        "noted": ("winter_record", "NOTED"),
        "result": ("winter_record", "RESULTS"),
        "left": ("winter_record", "LEFT"),
        "evidence in a word": ("winter_record", "EVIDENCE"),
        "reading": ("winter_record", "READINGS"),
        "instrument": ("winter_record", "INSTRUMENTS"),
        "hang tag": ("hang_tag", "TAG"),
    }
)
"""Module of the package, and table in it, by subject."""


def assembled(package: str) -> Mapping[str, Table]:
    """Gather the tables of a language.

    Args:
        package: full name of its package.

    Returns:
        Sentences by key, by subject.

    Raises:
        ImportError: the package lacks a module.
        AttributeError: a module lacks a table.
    """
    return MappingProxyType(
        {
            subject: getattr(import_module(f"{package}.{module}"), table)
            for subject, (module, table) in SUBJECTS.items()
        }
    )
