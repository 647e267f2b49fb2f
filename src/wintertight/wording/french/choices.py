"""French: which antifreeze, in which order, and when to shut a tap."""

from collections.abc import Mapping
from types import MappingProxyType

ANTIFREEZE: Mapping[str, str] = MappingProxyType(
    {
        "strong enough": (
            "{product} convient : au moins {share} de ce qui sort de chaque sortie doit être du"
            " produit."
        ),
        "only its rating": (
            "{product} est sans preuve : on ne connaît que la température de son étiquette, et elle"
            " vaut non dilué ; faire couler chaque sortie jusqu'à ce que rien d'autre ne vienne, et"
            " faire un relevé."
        ),
        "nothing to go by": (
            "{product} est sans preuve : rien sur son étiquette ne tranche. Ne pas l'utiliser sans"
            " relevé."
        ),
        "too weak": "{product} ne convient pas : même non dilué, trop faible pour {low}.",
        "rating too warm": (
            "{product} ne convient pas : son étiquette ne promet pas assez de froid pour {low}."
        ),
        "poison": (
            "{product} est refusé : l'éthylène glycol est un poison et ne va jamais dans une"
            " conduite d'eau."
        ),
    }
)
"""What is said of a product, by the key of the reason."""

BUYING: Mapping[str, str] = MappingProxyType(
    {
        "take": "Prendre {jugs} de {size}",
        "cost": ", {cost} {currency}",
        "no price": ", prix non indiqué",
        "enough": " ; en rayon : {stock}.",
        "short": " ; en rayon, seulement {stock}.",
        "not counted": " ; personne n'a compté le rayon.",
        "burns": "Il peut prendre feu : ni flamme ni veilleuse pendant qu'on l'utilise.",
        "may burn": (
            "Sa composition n'est pas indiquée, il peut donc prendre feu : ni flamme ni veilleuse"
            " pendant qu'on l'utilise."
        ),
        "none suits": "Rien ne montre qu'un antigel de la liste convienne à {low}.",
    }
)
"""How much to take, what it costs, and whether it is there."""

ORDERS: Mapping[str, str] = MappingProxyType(
    {
        "nearest first will do": (
            "La sortie la plus proche d'abord : {nearest_m3} du côté prudent ; sur {tried} ordres"
            " essayés, le meilleur prend {best_m3}, le pire {worst_m3}{worst_short}."
        ),
        "another order saves": (
            "La sortie la plus proche d'abord : {nearest_m3} du côté prudent ; sur {tried} ordres"
            " essayés, le meilleur épargnerait {saving_m3}, le pire prend {worst_m3}{worst_short}."
        ),
        "another order clears more": (
            "La sortie la plus proche d'abord : nombre de sorties où la couleur n'arrive jamais :"
            " {nearest_short} ; avec le meilleur de {tried} ordres essayés : {best_short}."
        ),
        "one outlet": "Il n'y a qu'une sortie à faire couler.",
        "worst short": " et n'amène jamais la couleur à {short} d'entre elles",
    }
)
"""Nearest first against the other orders that were tried."""

STOP_RULES: Mapping[str, str] = MappingProxyType(
    {
        "as planned": "Le temps en plus comme prévu prend {volume_m3} en {running_s} de coulée.",
        "first colour: bursts": (
            "S'arrêter à la première couleur laisserait le gel faire éclater"
            " {bursting}{doubtful_too}."
        ),
        "first colour: doubtful": (
            "En s'arrêtant à la première couleur, personne ne pourrait répondre de {doubtful}."
        ),
        "first colour: holds": (
            "S'arrêter à la première couleur suffirait ici, et personne ne peut le voir à l'œil."
        ),
        "ten seconds: bursts": (
            "Compter dix secondes après la couleur partout prend {volume_m3} et laisserait encore"
            " le gel faire éclater {bursting}{doubtful_too}."
        ),
        "ten seconds: doubtful": (
            "Compter dix secondes après la couleur partout prend {volume_m3}, et personne ne"
            " pourrait répondre de {doubtful}."
        ),
        "ten seconds: holds": (
            "Compter dix secondes après la couleur partout suffirait ; cela prend {volume_m3}."
        ),
        "doubtful too": ", et personne ne pourrait répondre de {doubtful}",
    }
)
"""What each rule for shutting a tap comes to."""
