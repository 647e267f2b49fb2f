"""English: what is said of each part, on what it stands, and what would settle it."""

from collections.abc import Mapping
from types import MappingProxyType

CLAIMS: Mapping[str, str] = MappingProxyType(
    {
        "filled": "filled with antifreeze",
        "drained": "drained",
        "swept": "swept empty",
        "kept warm": "kept warm",
        "removed": "taken out",
        "unproven": "not proven",
    }
)

REASONS: Mapping[str, str] = MappingProxyType(
    {
        "nothing there": "Nothing is left in it.",
        "room in the air": "{full} full, the rest is air: what is left has room to grow.",
        "does not freeze": "Stays liquid down to {freezing_point_degC}.",
        "freezes": "Freezes at {freezing_point_degC}, and nothing gives in there.",
        "slush is harmless": "May turn to slush; it bursts nothing down to {burst_limit_degC}.",
        "slush bursts": "Its slush bursts what holds it below {burst_limit_degC}.",
        "slush bursts: plain water": "It holds plain water, and that bursts what holds it.",
        "slush bursts: ice": "More than {ice} of it turns to ice, and that bursts what holds it.",
        "rating holds": "Undiluted, and its label promises {rating_degC}.",
        "rating is too warm": "Its label promises no more than {rating_degC}.",
        "no rating": "The label of the product prints no rating for this.",
        "diluted product": (
            "Only {product} of it is the product, and nobody knows what is in that product."
        ),
        "blend": "Two kinds of antifreeze are mixed in it; no table is printed for that.",
        "no burst curve": "It turns to slush, and no printed table says what such slush bursts.",
        "beyond the table": "The printed tables end before this mixture, or before this cold.",
        "air from the pump": "Air behind a small pump runs over the water that lies in it.",
        "maker's steps": "Its maker's own steps were followed.",
        "may not have drained": "It may hold water: whether it drains hangs on an inch of height.",
        "may not have been swept": "It may hold water: the air is only nearly fast enough.",
        "may be cracked": "It may have frozen, and nobody knows yet whether it has held.",
        "water has run since": "Water has run through it since: nobody can say what is in it now.",
        "kept warm": "It holds water, and holds only while its room stays warm.",
        "no model": "There is no calculation for such a part yet.",
        "not looked at": "On the card, but nobody has looked.",
        "nobody has looked": "Nobody has looked whether this coach has such.",
        "too few draws": (
            "It holds on the careful side, but in only {held_in} of the coaches that this card"
            " could mean."
        ),
        "product may be weaker": (
            "It holds if the product is as strong as its label says, but in only {held_in} of the"
            " cases if that is right to 2 %."
        ),
        "reading is too weak": (
            "A reading says {share} glycol, {weakest} at the least: too weak for this cold."
        ),
        "weaker than the jug": (
            "A reading says {share} of the fresh jug's strength, {weakest} at the least: too weak"
            " for this cold."
        ),
        "freezes too warm": (
            "A reading says it freezes at {frozen_at_degC}: too warm for this cold."
        ),
        "sample turned to slush": (
            "A sample of it was slush at {frozen_at_degC}: too weak for this cold."
        ),
        "sample froze solid": (
            "A sample of it froze solid at {frozen_at_degC}: too weak for this cold."
        ),
        "not pink": "It did not look pink: nobody knows that the product has come to it.",
        "observed otherwise": "Stopwatch, jugs or cups speak for {cause}: then it would not hold.",
    }
)
"""By key of the reason; "key: word" is said instead where a parameter of that name is there."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "not reached": "No step moves what is in it: drain it by hand, or run it from its outlet.",
        "freezes": "Empty it, or open it so that something gives, or fill it stronger.",
        "freezes: too weak": "Empty it, or open it so that something gives.",
        "slush bursts: too weak": "Take a stronger product, or empty it.",
        "slush bursts: plain water": "Run it from its outlet, or drain it by hand.",
        "slush bursts": "Run it on longer, or take a stronger product.",
        "rating is too warm": "Take a product with a colder rating, or empty it.",
        "no rating": "Take a product whose label prints a rating, or its share of glycol.",
        "diluted product": (
            "Take a product whose label prints its share of glycol, or run it on until it is"
            " undiluted."
        ),
        "blend": "Flush it with one product only.",
        "no burst curve": "Take a product of propylene glycol, or empty it.",
        "beyond the table": "Empty it, or keep it warm.",
        "air from the pump": "Fill it, or blow it out with enough air.",
        "may not have drained": "Open it at its lowest place and see that nothing runs.",
        "may not have been swept": "Blow it out with more air, or run antifreeze through it.",
        "may be cracked": "Thaw it, look at it, and test it at low pressure; then plan it anew.",
        "water has run since": "Run antifreeze through it again.",
        "kept warm": "Read a thermometer there all winter, or empty it.",
        "no model": "Follow its maker's steps, and have a person sign that it was done.",
        "not looked at": "Look, and enter on the card what is there.",
        "nobody has looked": "Look; enter on the card what is there, and what is not.",
        "too few draws": (
            "Measure the lines on its way and enter their lengths, or run it on longer than the"
            " sheet asks."
        ),
        "product may be weaker": "Take a stronger product, or empty it.",
        "reading is too weak": "Run it on with fresh product, and read it again.",
        "weaker than the jug": "Run it on with fresh product, and read it against the jug again.",
        "freezes too warm": "Run it on with fresh product, and freeze a sample of it again.",
        "sample turned to slush": "Run it on with fresh product, and freeze a sample again.",
        "sample froze solid": "Run it on with fresh product, and freeze a sample again.",
        "observed otherwise": "See above what would tell; if it is so, put it right.",
        "not pink": "See what is in the jug, run it on until colour stays, and take a reading.",
    }
)
"""What to do about a part that is not proven, by key of the reason."""

EVIDENCE: Mapping[str, str] = MappingProxyType(
    {
        "observed otherwise": "Stopwatch, jugs or cups speak for {cause}.",
        "content as found": "No step of the plan moves what was in it on arrival.",
        "content flowed": "Worked out from what runs through it, its weakest stretch counted.",
        "content drained": "Worked out from heights and openings: it runs out by itself.",
        "content swept": "Worked out from the air that is driven through it.",
        "content emptied": "Opened and emptied by hand.",
        "content sweep doubtful": "Air moves in it nearly as fast as printed criteria ask.",
        "content drain uncertain": "The heights on the card do not settle whether it drains.",
        "length guessed": "Its length is a guess, give or take {spread}; the worse end was taken.",
        "heights as on the card": "The heights are taken as the card gives them.",
        "no model": "Taken as full of water: there is no calculation for it.",
        "not looked at": "Taken as full of water: nobody has looked.",
        "nobody has looked": "Taken as there and full of water: nobody has looked.",
        "content removed": "Taken out of the coach.",
        "may be cracked": "Taken as possibly cracked until it is tested.",
        "water has run since": "Taken as full of water: water has run since.",
        "heat stays on": "Taken as heated all winter.",
        "maker's steps": "A person ticked off its maker's own steps.",
        "done as recorded": "A person ticked it off.",
        "reading glycol share": "A reading gave {share} glycol, {weakest} at the least.",
        "glycol scale misreads": (
            "A glycol scale misreads this product, so that {share} on it says nothing of its"
            " strength: compare with a cup from the fresh jug, or freeze a sample."
        ),
        "reading freezing point": "A freezing point of {freezing_point_degC} was read.",
        "reading against jug": (
            "Against a cup from the fresh jug it has {share} of its strength, {weakest} at the"
            " least."
        ),
        "reading freeze sample": (
            "A sample of it stayed liquid at {read_degC}: it freezes no warmer than"
            " {freezing_point_degC}."
        ),
        "sample slush": "A sample of it was slush at {frozen_at_degC}.",
        "sample solid": "A sample of it froze solid at {frozen_at_degC}.",
        "reading pressure": "A pressure of {read_Pa} was read.",
        "reading temperature": "A temperature of {read_degC} was read.",
        "reading looks pink": (
            "It looked pink; that proves little: at a tenth of full strength {share} still do."
        ),
        "reading share eaten": "The anode rod was looked at; that says nothing of frost.",
        "reading not pink": "It did not look pink.",
        "jug as printed": (
            "The jug itself reads {share} glycol, {weakest} at the least: the {full} of its label"
            " stands."
        ),
        "jug weaker": (
            "The jug itself reads {share} glycol, less than the {full} of its label: {weakest}"
            " is what counts."
        ),
        "jug freezes": "The jug itself freezes at {freezing_point_degC}, by a reading.",
        "jug liquid": (
            "A sample from the jug stayed liquid at {read_degC}: it freezes no warmer than"
            " {freezing_point_degC}."
        ),
        "jug slush": "A sample from the jug was slush at {frozen_at_degC}.",
        "jug solid": "A sample from the jug froze solid at {frozen_at_degC}.",
        "jug not pink": "The jug itself did not look pink.",
    }
)

KINDS_OF_EVIDENCE: Mapping[str, str] = MappingProxyType(
    {
        "computed": "computed",
        "measured": "measured",
        "attested": "attested",
        "assumed": "assumed",
    }
)

POCKETS: Mapping[str, str] = MappingProxyType(
    {
        "open": "slush has somewhere to grow",
        "relieved": "rigid, but a step opens it",
        "sealed": "rigid and closed: it must not freeze, or must be empty",
    }
)

VERDICTS: Mapping[str, str] = MappingProxyType(
    {
        "safe": "Protected as planned to {low}, once every step is done; void once water runs.",
        "safe as recorded": "Protected as recorded to {low}; void once water runs.",
        "gap": "NOT protected to {low}: {count} would freeze and burst: {parts}.",
        "gap and more": (
            "NOT protected to {low}: {count} would freeze and burst, among them {parts}."
        ),
        "unproven": "Not proven to {low}: nobody can vouch for {count}: {parts}.",
        "unproven and more": (
            "Not proven to {low}: nobody can vouch for {count}, among them {parts}."
        ),
        "refused": "Step {step} is refused as it stands. {hazard}",
        "refused as recorded": 'Out of order, as recorded: "{step}" {hazard}',
        "too weak": "{product}, even undiluted, is not shown to protect to {low}.",
        "never clear": "The run to full strength was given up here: {parts}.",
    }
)

OUTCOMES: Mapping[str, str] = MappingProxyType(
    {
        "same": "Left out, nothing changes.",
        "gap": "Left out, {parts} would burst; water left there: {water_m3}.",
        "unproven": "Left out, nobody could vouch for {parts}.",
        "hazard": "Never leave this out: {hazard}",
    }
)
"""What comes of leaving a step out."""

NULLS: Mapping[str, str] = MappingProxyType(
    {
        "no liquid": "there is no liquid in it",
        "product unknown": "the label does not say what is in the product",
        "blend": "two kinds of antifreeze are mixed",
        "beyond the table": "the printed tables end before it",
        "not known": "nobody knows what is in it",
        "several parts": "this step is done to several parts; see 'parts'",
        "no part": "this step is done to no part of the coach",
        "no setting": "nothing is set in this step",
        "nothing runs": "no fluid is run or poured in this step",
        "no outlet": "no outlet is run to colour in this step",
        "no colour": "by the calculation no colour comes here",
        "not to be used": "this product is not to be used here",
        "nothing freezes": "nothing is left that freezes harmfully in this cold",
        "nothing holds": "no part is shown to hold",
        "nothing drawn": "what holds does not hang on what is drawn",
        "not asked": "leaving this step out was not worked out",
    }
)
"""Why a value is null in a plan for programs."""
