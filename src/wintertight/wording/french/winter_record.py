"""French: the winter record, a paper that says what was done to a coach and what that proves."""

from collections.abc import Mapping
from types import MappingProxyType

RECORD: Mapping[str, str] = MappingProxyType(
    {
        "title": "Compte rendu d'hivernage {id}",
        "heading": "Compte rendu d'hivernage",
        "as recorded": "Ce qui a été fait, tel que cela a été noté, et ce que cela prouve.",
        "proven but open": (
            "NON TERMINÉ. D'après ce qui a été noté, chaque partie est prouvée jusqu'à {low}, mais"
            " quelque chose ci-dessous dit le contraire."
        ),
        "site": "Lieu d'hivernage",
        "page": "Page du véhicule",
        "written on": "Noté sur",
        "used": "Antigel",
        "used text": "environ {volume} de {product}, d'après le calcul ({low} à {high})",
        "used just": "environ {volume} de {product}, d'après le calcul",
        "used none": "aucun qui ait été pompé ou versé",
        "counted": "{volume} d'après les bidons comptés",
        "time": "Travail",
        "about": "environ {time}, d'après le calcul",
        "day": "Jour",
        "from to": "de {first} à {last}",
        "no day": "le compte rendu n'en donne aucun",
        "open": "Non terminé : ce qui reste ouvert, et ce qui trancherait",
        "look": "Regarder d'abord ici",
        "looking": "{names}.",
        "done": "Ce qui a été fait",
        "number": "N°",
        "when": "Heure",
        "what": "Quoi",
        "result": "Résultat",
        "noted": "Noté",
        "not recorded": "non noté",
        "not in record": (
            "Le compte rendu ne parle pas de ceci ; ce dont il ne parle pas compte comme non fait."
        ),
        "parts": "Preuve de chaque élément ({count} en tout)",
        "group": "{claim} ({count})",
        "of part": "Élément",
        "evidence": "Repose sur",
        "why": "Pourquoi",
        "freezes at": "Gèle à",
        "is left": "Contenu",
        "as above": "comme ci-dessus",
        "freezing note": (
            "Gèle à : le point de congélation de son tronçon le plus faible ; au-dessous, ce qui"
            " est rempli d'antigel devient de la bouillie glacée, qui d'après les tables"
            " publiées n'y fait rien éclater jusqu'au froid à tenir."
        ),
        "evidence note": (
            "Repose sur : calculé, par le programme ; relevé, par un instrument ou à l'œil ; coché,"
            " par quelqu'un ; supposé, pris tel que la fiche le donne."
        ),
        "settles": "Pour trancher : {how}",
        "other numbers": (
            "Les numéros d'étape sont ceux d'une feuille de travail sans ce qui n'est pas sur ce"
            " véhicule."
        ),
        "sources": "D'où viennent les chiffres",
        "sources note": "Entre crochets : jusqu'où on peut s'y fier ici.",
        "limits": "Ce que ce compte rendu n'est pas",
        "limits text": (
            "Il dit ce qui découle de ce qui a été noté, pour cette fiche et ce froid. Ce qui n'a"
            " pas été noté compte comme non fait, et ce qui a été noté n'a pas été vérifié par ce"
            " programme. Sans valeur dès que l'eau coule où que ce soit dans le véhicule. Le manuel"
            " du véhicule et la règle locale passent avant ce compte rendu."
        ),
        "same record": "De quel compte rendu il s'agit",
        "same record text": (
            "Empreinte SHA-256 du compte rendu, en JSON canonique (RFC 8785). Qui a le compte rendu"
            " peut la recalculer : wintertight digest COMPTE-RENDU.json --printed EMPREINTE"
        ),
        "card": "Fiche",
        "engine": "Programme",
        "signatures": "Signatures",
        "technician": "Technicien : fait comme noté",
        "owner": "Propriétaire : lu, et averti que c'est sans valeur dès que l'eau coule",
        "name and signature": "Nom et signature",
        "date": "Date",
    }
)
"""Headings, columns, and what is said once."""

EVIDENCE: Mapping[str, str] = MappingProxyType(
    {"computed": "calculé", "measured": "relevé", "attested": "coché", "assumed": "supposé"}
)
"""On what a claim stands, in a word."""

NOTED: Mapping[str, str] = MappingProxyType(
    {
        "colour": "couleur après {time}",
        "colour at once": "couleur tout de suite",
        "run on": "temps en plus : {time}",
        "volume": "{volume}",
        "jugs one": "reste 1 bidon",
        "jugs many": "bidons restants : {count}",
        "set": "réglage : {setting}",
        "why": "« {why} »",
        "device": "{device}",
        "between": " ; ",
    }
)
"""What was written down beside a step."""

RESULTS: Mapping[str, str] = MappingProxyType(
    {
        "done": "fait",
        "skipped": "OMIS",
        "failed": "ÉCHEC",
        "not on this coach": "PAS SUR CE VÉHICULE",
    }
)
"""How a step ended; what was not done must not be overlooked."""

LEFT: Mapping[str, str] = MappingProxyType(
    {
        "nothing there": "vide",
        "room in the air": "plein à {full}",
        "rating holds": "étiquette : {rating_degC}",
        "maker's steps": "étapes du fabricant",
    }
)
"""By key of the reason: why a part is proven, where no freezing point says it, in a word or two."""

READINGS: Mapping[str, str] = MappingProxyType(
    {
        "glycol share": "{value} de glycol",
        "freezing point": "gèle à {value}",
        "freeze sample": "échantillon à {value}",
        "freeze sample: liquid": "échantillon liquide à {value}",
        "freeze sample: slush": "échantillon en bouillie glacée à {value}",
        "freeze sample: solid": "échantillon gelé en bloc à {value}",
        "pressure": "{value}",
        "temperature": "{value}",
        "looks pink": "couleur regardée",
        "looks pink: yes": "a l'air rose",
        "looks pink: no": "n'a pas l'air rose",
        "share eaten": "{value} de l'anode mangé",
        "no value": "[valeur non notée]",
        "of jug": "bidon : {reading}",
        "how": "{reading} ({how})",
        "within": "à {sd} près",
        "zeroed": "zéro fait à l'eau",
        "not zeroed": "zéro non fait",
    }
)
"""What was read, as it was read."""

INSTRUMENTS: Mapping[str, str] = MappingProxyType(
    {
        "refractometer": "réfractomètre",
        "hydrometer": "densimètre",
        "test strip": "bandelette d'essai",
        "freezer": "congélateur",
        "gauge": "manomètre",
        "thermometer": "thermomètre",
        "eye": "à l'œil",
    }
)
"""What it was read with."""

MARKS: Mapping[str, str] = MappingProxyType(
    {
        "published": "publié",
        "reproduced": "reproduit",
        "memory": "de mémoire",
        "common practice": "usage du métier",
        "calculated": "calculé",
    }
)
"""How far a source can be trusted, by its mark."""
