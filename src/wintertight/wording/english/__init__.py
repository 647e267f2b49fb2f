"""The English catalogue: every sentence by subject and key."""

from wintertight.wording.subjects import assembled

ENGLISH = assembled(__name__)
"""Sentences by subject and key, as `wintertight.wording.catalogue` asks for them."""
