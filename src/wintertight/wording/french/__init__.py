"""The French catalogue: every sentence by subject and key.

Work sheets speak in infinitives, the talk that describes a coach says "vous". The tables hold
plain blanks and apostrophes; the signs of French print are set here, once for all of them.
"""

from types import MappingProxyType

from wintertight.wording.french.typography import typeset
from wintertight.wording.subjects import assembled

FRENCH = MappingProxyType(
    {subject: typeset(table) for subject, table in assembled(__name__).items()}
)
"""Sentences by subject and key, as `wintertight.wording.catalogue` asks for them."""
