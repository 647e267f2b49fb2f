"""A folder of cards as one object for programs: schema ``wintertight/fleet/1``.

What a coach has in common with the object of its plan has the same key and the same unit there.
"""

from typing import Any

import wintertight
from wintertight.documents.fleet_content import Fleet, PlannedCoach, Supply, totals_of
from wintertight.documents.plan_json import band_object, purchase_object

SCHEMA = "wintertight/fleet/1"

Plain = dict[str, Any]


def fleet_object(fleet: Fleet) -> Plain:
    """Give a folder of cards as plain data, ready for `json.dumps`.

    Args:
        fleet: its rows.

    Returns:
        The object; dictionaries, lists, str, int, float and bool only.
    """
    return {
        "schema": SCHEMA,
        "engine": wintertight.__version__,
        "folder": fleet.folder,
        "workers": fleet.workers,
        "compiled": fleet.compiled,
        "coaches": [_coach(coach) for coach in fleet.planned],
        "failed": [
            {"file": row.file, "code": row.code, "message": row.message} for row in fleet.failed
        ],
        "totals": _totals(fleet),
    }


def _coach(coach: PlannedCoach) -> Plain:
    return {
        "file": coach.file,
        "card_hash": coach.card_hash,
        "coach": {"id": coach.id, "name": coach.name},
        "design_low_degC": float(coach.low_degC),
        "verdict": coach.verdict,
        "antifreeze_m3": band_object(coach.antifreeze),
        "antifreeze_buy": purchase_object(coach.buy),
        "duration_s": band_object(coach.duration),
        "gaps": list(coach.gaps),
        "unproven": list(coach.unproven),
    }


def _totals(fleet: Fleet) -> Plain:
    """Give what all planned coaches come to; without one, nothing is used and nothing bought."""
    totals = totals_of(fleet.planned)
    return {
        "coaches": len(fleet.planned),
        "failed": len(fleet.failed),
        **{str(verdict): count for verdict, count in totals.verdicts.items()},
        "antifreeze_m3": band_object(totals.antifreeze),
        "antifreeze_buy": [_supply(supply) for supply in totals.supplies],
        "duration_s": band_object(totals.duration),
    }


def _supply(supply: Supply) -> Plain:
    return {**purchase_object(supply.buy), "count_separately": int(supply.separately)}
