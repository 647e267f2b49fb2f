"""French: the choices that are offered about a coach, and what is said between the questions."""

from collections.abc import Mapping
from types import MappingProxyType

CHOICES: Mapping[str, str] = MappingProxyType(
    {
        "shape: tent trailer": "tente-caravane",
        "shape: teardrop": "mini-caravane goutte",
        "shape: truck camper": "cellule sur camionnette",
        "shape: short travel trailer": "caravane courte",
        "shape: long bunkhouse trailer": "caravane longue à lits superposés",
        "shape: rear-kitchen trailer": "caravane à cuisine arrière",
        "shape: fifth wheel, one bath": "caravane à sellette, une salle de bain",
        "shape: fifth wheel, two baths": "caravane à sellette, deux salles de bain",
        "shape: camper van": "fourgon aménagé",
        "shape: cab-over motorhome": "autocaravane à capucine",
        "shape: rear-engine motorhome": "autocaravane à moteur arrière",
        "shape: toy hauler": "caravane porte-engins",
        "shape: park model": "maison de parc sur roues",
        "heater: tank of 6 gal": "réservoir de 6 gal",
        "heater: tank of 10 gal": "réservoir de 10 gal",
        "heater: tank of 16 gal": "réservoir de 16 gal",
        "heater: on-demand heater": "chauffe-eau instantané, sans réservoir",
        "heater: hydronic coil": "serpentin hydronique, sur le chauffage ou le moteur",
        "heater: no heater": "aucun chauffe-eau",
        "bypass: three valves": "trois vannes",
        "bypass: one valve and checks": "une vanne, et des clapets anti-retour font le reste",
        "bypass: no bypass": "aucun bypass",
        "baths: one bath": "une salle de bain",
        "baths: two baths": "deux salles de bain",
        "baths: one and a half": "une et demie",
        "baths: no bath": "aucune salle de bain",
        "appliances: ice maker": "machine à glaçons",
        "appliances: door dispenser": "distributeur dans la porte du réfrigérateur",
        "appliances: dishwasher": "lave-vaisselle",
        "appliances: washer": "machine à laver le linge",
        "outside: outside shower": "douche extérieure",
        "outside: outside kitchen": "cuisine extérieure",
        "outside: spray port": "prise de douchette",
        "antifreeze inlet: hose with a valve": "un tuyau avec sa propre vanne",
        "antifreeze inlet: three-way valve": "une vanne à trois voies",
        "antifreeze inlet: service panel": "un panneau de service dans le compartiment",
        "antifreeze inlet: no inlet": "aucune entrée",
        "water treatment: filter housing": "boîtier de filtre (une cuve)",
        "water treatment: membrane filter": "filtre à membrane (osmose inverse)",
        "water treatment: softener": "adoucisseur",
        "water treatment: UV sleeve": "lampe UV",
        "toilet: gravity toilet": "WC à gravité, avec une pédale",
        "toilet: vacuum toilet": "WC à dépression",
        "toilet: macerating toilet": "WC à broyeur, avec un bouton",
        "toilet: cassette toilet": "WC à cassette",
        "tub: tub": "baignoire",
        "tub: whirlpool": "baignoire à remous, avec des buses",
        "dead ends: capped tee": "té bouché : une branche avec un bouchon",
        "dead ends: prepared stub": "attente : raccords pour une machine à laver qui n'est pas là",
        "mixing: tempering valve": "mitigeur thermostatique au chauffe-eau",
        "mixing: recirculating diverter": (
            "inverseur de recirculation : un bouton qui épargne l'eau"
        ),
        "waste side: tank rinse": (
            "rinçage de réservoir : une entrée de tuyau au réservoir d'eaux noires"
        ),
        "waste side: macerator": "pompe broyeuse",
        "branches: tees": "une conduite avec des tés",
        "branches: manifold": "un collecteur : une conduite pour chaque robinet",
        "low points: cold only": "un, du côté froid seulement",
        "low points: two": "deux, chaud et froid",
        "low points: none": "aucun",
        "belly: closed and heated": "fermé, et chauffé par le chauffage",
        "belly: closed": "fermé, pas chauffé",
        "belly: open": "ouvert, tuyaux visibles",
        "pipe: PEX": "PEX, plie et reprend sa forme",
        "pipe: polybutylene": "polybutylène, gris, marqué PB",
        "pipe: copper L": "cuivre, type L (marquage bleu, le plus courant)",
        "pipe: copper M": "cuivre, type M (marquage rouge, plus mince)",
        "heater tank: steel with anode": "acier, avec une anode",
        "heater tank: aluminum": "aluminium",
        "heater tank: stainless steel": "acier inoxydable",
        "on the hose: pressure regulator": "régulateur de pression",
        "on the hose: supply hose": "le tuyau d'alimentation",
        "on the hose: outside filter": "filtre extérieur",
    }
)
"""What each choice is called, by its question."""

NOT_UNDERSTOOD: Mapping[str, str] = MappingProxyType(
    {
        "nothing typed": "Rien n'a été tapé. Si personne n'a regardé, tapez -",
        "no such number": "Il n'y a pas de {typed}. Tapez un numéro de 1 à {most}.",
        "no such choice": (
            "« {typed} » n'en fait pas partie. Tapez un numéro de 1 à {most}, ou un nom."
        ),
        "several fit": "« {typed} » pourrait être {choices}. Tapez le numéro.",
        "number or size": "« {typed} » pourrait être {choices}. Tapez un mot du nom.",
        "one only": "Un seul, s'il vous plaît. Tapez un numéro.",
        "none or some": (
            "« {typed} » dit aucun, et quelque chose aussi. Tapez aucun, ou les numéros."
        ),
        "yes or no": "« {typed} » n'est ni oui ni non. Tapez o ou n.",
        "unit missing": "{typed} quoi ? Tapez-le avec son unité, comme {example}.",
        "no quantity": (
            "« {typed} » ne se lit pas. Tapez un nombre, avec un point et non une virgule, et son"
            " unité, comme {example}."
        ),
        "outside": (
            "{typed} est difficile à croire : attendu {least} à {most_size}. Regardez de nouveau."
        ),
        "no way back": "C'est la première question ; il n'y a rien avant.",
        "cannot stay open": "Ici, il faut un oui ou un non. Tapez o ou n.",
    }
)
"""Why an answer was not understood, and what to type."""

TALK: Mapping[str, str] = MappingProxyType(
    {
        "keys": "?  pourquoi   -  personne n'a regardé   <  retour   !  ce qu'on sait déjà",
        "resumed": "On reprend {file}.",
        "heading": "Question {number} sur {of}, {stage}",
        "stage phone": "au téléphone",
        "stage walk-around": "autour du véhicule",
        "choice": "  {number}  {choice}",
        "prompt one": "Numéro : ",
        "prompt several": "Numéros, ou aucun : ",
        "prompt yes or no": "o ou n : ",
        "prompt quantity": "Avec son unité : ",
        "noted": "Noté : {subject} : {answer}.",
        "noted open": "Laissé ouvert : {subject}.",
        "none": "aucun",
        "yes": "oui",
        "no": "non",
        "known": "Connu :",
        "nothing known": "On ne sait encore rien.",
        "known line": "  {subject} : {answer}",
        "nothing open": "Rien ne reste ouvert.",
        "open": "Laissé ouvert : {subjects}.",
        "open kinds": (
            "Personne n'a cherché : {kinds}. Chaque plan les dit sans preuve tant que personne ne"
            " le fait ; rien n'est tenu pour absent."
        ),
        "guessed": (
            "Au jugé, comme d'habitude pour cette sorte de véhicule : {subjects}. La fiche le dit,"
            " et les fourchettes en sont plus larges."
        ),
        "no low": (
            "On ne connaît pas la nuit la plus froide : il faut la dire à chaque plan, comme :"
            " wintertight plan {file} --low=-20F"
        ),
        "written": "Écrit : {file}. Ensuite : wintertight plan {path}{product}{low}",
        "which product": " --product NOM",
        "which low": " --low=-20F",
        "not written": (
            "Aucune fiche n'a été écrite. Les réponses sont dans {file} ; la même commande reprend."
        ),
        "name": "{shape}, {length}",
        "anew": "on en sait plus sur le véhicule",
        "head": (
            "Faite d'après les réponses de {file} ; les conduites vont comme d'habitude pour cette"
            " sorte de véhicule."
        ),
        "head 2": "Ce qui n'est qu'au jugé est marqué ainsi, et ce que personne n'a regardé aussi.",
    }
)
"""What is said between the questions."""

TYPED: Mapping[str, str] = MappingProxyType(
    {
        "yes": "oui, o",
        "no": "non, n",
        "none": "aucun, aucune, rien, non, n, 0",
        "unseen": "-, pas regardé, pas vu, personne n'a regardé",
        "between": "et",
    }
)
"""What people type, parted by commas: accents and capitals do not count."""
