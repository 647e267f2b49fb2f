"""English: headings and labels of papers and of the screen."""

from collections.abc import Mapping
from types import MappingProxyType

LABELS: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Job sheet",
        "coach": "Coach",
        "site": "Site",
        "design low": "Design low",
        "method": "Method",
        "product": "Antifreeze",
        "technician": "Technician",
        "date": "Date",
        "no site": "no site on the card",
        "page": "page {page} of {pages}",
        "qr": "QR code of the coach's page: {link}",
        "step": "Step",
        "outlet": "Outlet",
        "first colour": "First colour",
        "run on": "Run on",
        "seen": "Seen at",
        "time this one": "time it",
        "how to fill": (
            "Open, watch for colour that stays, count the run-on, shut. Write down both times where"
            " asked (0: at once); much later than shown: stop and ask."
        ),
        "how to count": "Open, watch for colour that stays, count the run-on, shut.",
        "cup from jug": "Read: cup from the jug",
        "cup from tap": "from the tap",
        "jugs emptied": "Jugs emptied",
        "left in the last": "left in the last",
        "began": "Began",
        "ended": "Ended",
        "not proven": "Not proven: look here",
        "nothing open": "No part is left open by this plan.",
        "done": "Done",
        "not done": "Not done",
        "not proven as recorded": "Not proven: what to do now",
        "notes": "Worth knowing",
        "never skip": "never skip",
        "limits": "What this sheet is not",
        "limits text": (
            "Worked out from the coach's card; it holds only for what was really done. Void once"
            " water runs. The coach's manual and local code come before this sheet."
        ),
        "why": "Why",
        "caution": "Mind",
        "parts": "Parts",
        "part": "part",
        "how": "how it is protected",
        "how many": "how many",
        "settle": "settles it",
        "no wrong settings": (
            "Wrong settings are worked out for jobs in which the coach's own pump draws antifreeze;"
            " this is none."
        ),
        "gap": "would burst",
        "unproven": "not proven",
        "handled": "{count} in all",
        "card": "card",
        "engine": "Wintertight {version}",
        "all parts": "All parts",
        "colon": ":",
    }
)
