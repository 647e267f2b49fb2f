"""French: methods side by side, and why each stands where it does."""

from collections.abc import Mapping
from types import MappingProxyType

COMPARISON: Mapping[str, str] = MappingProxyType(
    {
        "method": "Méthode",
        "verdict": "Verdict",
        "antifreeze": "Antigel",
        "work": "Travail",
        "price": "Prix",
        "safe": "protégé",
        "gap": "lacune",
        "unproven": "sans preuve",
        "not possible": "impossible",
        "no price": "pas de prix",
        "why best": "Il ne reste rien qui éclate, en un minimum de temps.",
        "why longer": "Il ne reste rien qui éclate non plus, mais cela prend {more} de plus.",
        "why gap": "Le gel ferait éclater {gaps} : {parts}.",
        "why gap and more": "Le gel ferait éclater {gaps}, dont {parts}.",
        "why unproven": "Personne ne peut répondre de {unproven} : {parts}.",
        "why unproven and more": "Personne ne peut répondre de {unproven}, dont {parts}.",
        "why holds": (
            "Donne {time} à ce froid dès sa première minute, et pas plus ; après cela, le gel"
            " ferait éclater {gaps}."
        ),
        "also unproven": "De plus, personne ne peut répondre de {unproven}.",
        "antifreeze heading": (
            "{coach}, jusqu'à {low}, rempli par sa propre pompe. Le meilleur en premier."
        ),
        "heading": "{coach}, jusqu'à {low}, avec {product}. La meilleure en premier.",
        "in words": (
            "Travail : mains et coulée ensemble ; prix : celui de l'antigel, en bidons entiers."
        ),
    }
)
