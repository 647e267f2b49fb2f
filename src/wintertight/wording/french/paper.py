"""French: headings and labels of papers and of the screen."""

from collections.abc import Mapping
from types import MappingProxyType

LABELS: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Feuille de travail",
        "coach": "Véhicule",
        "site": "Lieu d'hivernage",
        "design low": "Froid à tenir",
        "method": "Méthode",
        "product": "Antigel",
        "technician": "Technicien",
        "date": "Date",
        "no site": "aucun lieu d'hivernage sur la fiche",
        "page": "page {page} sur {pages}",
        "qr": "Code QR de la page du véhicule : {link}",
        "step": "Étape",
        "outlet": "Sortie",
        "first colour": "1re couleur",
        "run on": "En plus",
        "seen": "Vue à",
        "time this one": "chrono",
        "how to fill": (
            "Ouvrir, guetter la couleur qui reste, compter le temps en plus, fermer. Noter les deux"
            " temps où c'est demandé (0 : tout de suite) ; bien plus tard qu'indiqué : arrêter et"
            " demander."
        ),
        "how to count": "Ouvrir, guetter la couleur qui reste, compter le temps en plus, fermer.",
        "cup from jug": "Relevé : gobelet du bidon",
        "cup from tap": "du robinet",
        "jugs emptied": "Bidons vidés",
        "left in the last": "reste dans le dernier",
        "began": "Début",
        "ended": "Fin",
        "not proven": "Sans preuve : regarder ici",
        "nothing open": "Ce plan ne laisse aucun élément ouvert.",
        "done": "Fait",
        "not done": "Non fait",
        "not proven as recorded": "Sans preuve : à faire maintenant",
        "notes": "Bon à savoir",
        "never skip": "impératif",
        "limits": "Ce que cette feuille n'est pas",
        "limits text": (
            "Calculée d'après la fiche du véhicule ; elle ne vaut que pour ce qui a vraiment été"
            " fait. Sans valeur dès que l'eau coule. Le manuel du véhicule et la règle locale"
            " passent avant cette feuille."
        ),
        "why": "Pourquoi",
        "caution": "Attention",
        "parts": "Éléments",
        "part": "élément",
        "how": "protection",
        "how many": "combien",
        "settle": "ce qui tranche",
        "no wrong settings": (
            "Les mauvais réglages se calculent pour un travail où la pompe du véhicule aspire de"
            " l'antigel ; celui-ci n'en est pas un."
        ),
        "gap": "éclatement",
        "unproven": "sans preuve",
        "handled": "{count} en tout",
        "card": "fiche",
        "engine": "Wintertight {version}",
        "all parts": "Tous les éléments",
        "colon": " :",
    }
)
