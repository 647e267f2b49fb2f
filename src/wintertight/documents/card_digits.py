"""The digits by which a paper names the card it was made from."""

from wintertight.coach.card import Card

HASH_DIGITS = 10
"""So many digits of a card's hash tell it from every other card of a shop."""


def card_digits(card: Card) -> str:
    """Give the first digits of a card's hash, without the name of the hash."""
    return card.card_hash.partition(":")[2][:HASH_DIGITS]
