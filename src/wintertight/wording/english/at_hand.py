"""English: what has to be at hand for a job: tools, and small parts that wear out."""

from collections.abc import Mapping
from types import MappingProxyType

AT_HAND: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Tools and small parts",
        "tools": "Tools: {tools}.",
        "tool": "Tools",
        "spare": "Small parts that may be due",
    }
)
"""The sentences that list them."""

TOOLS: Mapping[str, str] = MappingProxyType(
    {
        "watch": "a watch that shows seconds",
        "bucket": "a bucket",
        "screwdriver": "a screwdriver for the panels",
        "plug wrench": "a wrench for the plug of the {parts}",
        "bowl wrench": "a wrench for the bowl of the {parts}",
        "blunt tool": "a blunt tool to press the inlet's check",
        "bridge hose": "a short hose to bridge the {parts}",
        "jug hose": "a short hose from the {parts} into the jug",
        "hand pump": "a hand pump with a hose, and what joins it to the {parts}",
        "compressor": (
            "a compressor with clean, oil-free air, a regulator set to {regulator_Pa} and never to"
            " 50 psi or more, and what joins it to the {parts}"
        ),
        "eyes": "eye protection",
        "test hose": "a hose with a gauge and a regulator set to {pressure_Pa}",
        "cup": "a measuring cup (one cup is 250 mL)",
        "reading": "an instrument that reads the strength of this antifreeze, and two clean cups",
        "sewer gloves": "sewer hose and gloves, kept apart",
        "tag": "a tag for the main tap, and a pen",
    }
)
"""By key of the tool."""

SPARES: Mapping[str, str] = MappingProxyType(
    {
        "thread tape": "thread seal tape for the plug of the {parts}",
        "anode rod": "an anode rod for the {parts}, if little is left of the old one",
        "bowl seal": "a seal ring for the bowl of the {parts}",
        "cap": "a cap with its washer for the {parts}",
        "screen washer": "a washer with a screen for the {parts}",
    }
)
"""By key of the part."""
