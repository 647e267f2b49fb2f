"""French: the estimate, its options, and what declined work leaves open."""

from collections.abc import Mapping
from types import MappingProxyType

ESTIMATE: Mapping[str, str] = MappingProxyType(
    {
        "title": "Devis {id}",
        "heading": "Devis",
        "method": "Méthode",
        "dated": "Date",
        "valid": "Valable jusqu'au",
        "work": "Travail",
        "count": "Nombre",
        "each": "Prix unitaire",
        "amount": "Montant",
        "labour": "main-d'œuvre",
        "material": "fournitures",
        "further gallon": "Antigel au-delà de {included}, par gallon",
        "further container": "Antigel au-delà de {included}, par bidon de {size}",
        "further gallon: all": "Antigel, par gallon",
        "further container: all": "Antigel, par bidon de {size}",
        "included": "{tier} ({included} d'antigel compris)",
        "net": "Avant taxes",
        "tax": "{name}, {rate} sur {base}",
        "compound": "{name}, {rate} sur {base}, taxes précédentes comprises",
        "total": "Total",
        "rounding: half-even": (
            "Les taxes sont arrondies à la plus petite unité de la monnaie, une moitié juste vers"
            " le chiffre pair."
        ),
        "rounding: half-up": (
            "Les taxes sont arrondies à la plus petite unité de la monnaie, une moitié juste vers"
            " le haut."
        ),
        "at most": (
            "D'après le calcul, le véhicule prend {volume} d'antigel, et peut en prendre jusqu'à"
            " {most} : le total est alors de {amount}."
        ),
        "steady": "D'après le calcul, le véhicule prend {volume} d'antigel.",
        "limit": "L'atelier appelle avant que la facture dépasse {amount}.",
        "above limit": (
            "C'est plus que {amount} : l'atelier appelle et attend un oui avant de commencer."
        ),
        "open-ended": (
            "Ce devis reste ouvert : le véhicule a peut-être gelé. Il ne porte que sur le dégel,"
            " l'examen et l'essai ; la réparation et l'hivernage feront l'objet d'un nouveau devis"
            " quand on saura ce qui a tenu."
        ),
        "options": "Options ouvertes, non comprises dans le total",
        "accept": "accepter",
        "decline": "refuser",
        "declined": "Travaux refusés",
        "i decline": "Je refuse : {option} ({amount} avant taxes).",
        "signature": "Signature",
        "date": "Date",
        "agreed": "J'ai lu ce devis et je demande le travail tel qu'il y figure.",
        "no claim": (
            "Avec ces travaux refusés, ce que le plan dit du véhicule n'est plus valable."
        ),
        "claim": "Ce que dit le plan : {verdict}",
        "claim with options": "Ce que dit le plan, toutes options faites : {verdict}",
        "without it": "Sans cela : {left}",
        "from": "Devis : {shop}",
        "one option": "{option} : {amount} avant taxes.",
        "names": (
            "Sans protection : {names}. Ce qu'il y a dedans peut geler, et faire éclater ce qui le"
            " contient."
        ),
        "doubtful": "Personne ne pourrait répondre de ceci : {names}.",
        "nothing known": (
            "Omise seule, aucune de ses étapes ne change ce que montre le plan ; omises ensemble,"
            " personne ne l'a calculé."
        ),
        "not asked": "Ce que cela laisse ouvert n'a pas été calculé.",
        "no step": "Le plan ne fait rien là ; il ne montre donc rien de ce qui reste ouvert.",
        "no fitting": "Aucun élément du véhicule n'en dépend.",
    }
)
"""An estimate in words: its lines, its taxes, and what declined work leaves open."""
