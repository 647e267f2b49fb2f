"""French: what burst in spring, and what the record of the fall has to say of it."""

from collections.abc import Mapping
from types import MappingProxyType

CAUSES: Mapping[str, str] = MappingProxyType(
    {
        "missed: skipped": (
            "Sans preuve jusqu'à {low_degC} d'après le compte rendu, et ceci n'y a pas été fait :"
            " {steps}."
        ),
        "missed: not recorded": (
            "Sans preuve jusqu'à {low_degC} d'après le compte rendu, qui ne dit rien de ceci :"
            " {steps}. Ce qui n'est pas noté compte comme non fait."
        ),
        "missed: elsewhere": (
            "D'après le compte rendu, cela restait voué à éclater à {low_degC}. {reason} Aucune"
            " étape ne manque sur l'élément lui-même ; non fait ailleurs : {steps}."
        ),
        "missed: gap": (
            "D'après le compte rendu, cela restait voué à éclater à {low_degC}, sans qu'aucune"
            " étape ne manque. {reason}"
        ),
        "missed: as planned": (
            "D'après le compte rendu, et d'après le plan lui-même, cela restait voué à éclater à"
            " {low_degC}. {reason}"
        ),
        "missed: proven": "D'après le compte rendu, la preuve était faite jusqu'à {low_degC}.",
        "missed: unproven": (
            "Personne ne pouvait en répondre à {low_degC}, et aucune étape à cet endroit ne manque"
            " au compte rendu. {reason}"
        ),
        "missed: observed": (
            "Les temps, bidons ou gobelets de ce jour-là penchent pour ceci : {cause}. Alors la"
            " preuve n'était pas faite jusqu'à {low_degC}."
        ),
        "missed: mild": (
            "Sans preuve jusqu'à {low_degC} d'après le compte rendu, mais {lowest_degC}, le plus"
            " froid qu'ait connu le véhicule, n'y aurait rien fait éclater."
        ),
        "missed: nothing recorded": "Le compte rendu ne parle d'aucune étape.",
        "missed: no proof": "Il n'y a pas de calcul pour un tel élément.",
        "used: touched": (
            "De l'eau a coulé après l'hivernage ({outlets}), et elle est passée par là."
        ),
        "used: none": "Quelqu'un l'a demandé : aucune eau n'a coulé depuis l'hivernage.",
        "used: untouched": (
            "De l'eau a coulé après l'hivernage ({outlets}), et elle n'est pas venue ici."
        ),
        "used: pumped": (
            "De l'eau a coulé ({outlets}). Venant de la prise d'eau de ville, elle n'est pas"
            " arrivée ici ; venant du réservoir d'eau propre, elle y serait arrivée."
        ),
        "used: below": "L'eau qui a coulé ({outlets}) s'est vidée dedans ; on ne sait pas combien.",
        "used: shut": (
            "De l'eau a coulé ({outlets}) et n'est pas venue ici, mais si les robinets ont été"
            " refermés ensuite, cet élément ne tient plus."
        ),
        "used: no frost": (
            "De l'eau a coulé ({outlets}) et elle est passée par là, mais à {lowest_degC}, le plus"
            " froid qu'ait connu le véhicule, même l'eau ne gèle pas."
        ),
        "used: not known": "Personne n'a dit si de l'eau a coulé après l'hivernage.",
        "older: limed": (
            "Il y a du tartre ou des taches dans la fissure : elle existait avant cet hiver."
        ),
        "older: fresh": "La fissure est fraîche.",
        "older: not known": "Personne n'a dit comment est l'intérieur de la fissure.",
        "colder: burst": (
            "Preuve faite jusqu'à {low_degC} ; le véhicule a connu {lowest_degC}, et le calcul à"
            " cette température donne un éclatement."
        ),
        "colder: not colder": (
            "Le véhicule n'a pas connu moins de {lowest_degC} ; cela devait tenir jusqu'à"
            " {low_degC}."
        ),
        "colder: held": "Le véhicule a connu {lowest_degC}, et la preuve vaut jusque-là aussi.",
        "colder: margin": (
            "Le véhicule a connu {lowest_degC} ; à ce froid, l'éclatement n'est que dans la marge"
            " que garde tout verdict."
        ),
        "colder: unproven": (
            "Preuve faite jusqu'à {low_degC} ; à {lowest_degC}, que le véhicule a connu, personne"
            " ne peut en répondre, et l'éclatement n'est pas montré non plus."
        ),
        "colder: already open": (
            "Il a fait plus froid que le froid à tenir, jusqu'à {lowest_degC}, mais la preuve"
            " n'était déjà pas faite jusqu'à {low_degC}."
        ),
        "colder: heated": (
            "Le véhicule a connu {lowest_degC}, mais l'élément est dans un local que l'on dit resté"
            " chauffé."
        ),
        "colder: not known": "Personne n'a dit quel froid il a fait.",
        "colder: no proof": (
            "Il a fait plus froid que {low_degC}, jusqu'à {lowest_degC} ; il n'y a pas de calcul"
            " pour un tel élément."
        ),
        "wear: worn": "À l'examen : cassant, corrodé ou usé jusqu'au bout.",
        "wear: sound": "À l'examen : pas d'usure.",
        "wear: not known": "Personne n'a dit s'il y avait de l'usure.",
    }
)
"""What is found on each cause, by key."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "missed: unproven": (
            "Qui a fait le travail sait peut-être ce qui n'est pas dans le compte rendu."
        ),
        "missed: mild": "Relever quel froid il a fait à l'élément lui-même.",
        "missed: nothing recorded": (
            "Retrouver le compte rendu du travail, ou la feuille de travail remplie."
        ),
        "missed: no proof": "Chercher à la main ce qui y était resté.",
        "used: pumped": (
            "Demander si l'eau venait du réservoir d'eau propre ou du tuyau d'alimentation."
        ),
        "used: shut": "Demander si les robinets sont restés fermés ou ouverts.",
        "used: below": "Demander combien d'eau a coulé, et regarder combien il y en avait dedans.",
        "used: no frost": "Relever quel froid il a fait à l'élément lui-même.",
        "used: not known": "Demander à qui avait le véhicule quels robinets ont été ouverts.",
        "older: not known": (
            "Découper l'élément et regarder dans la fissure : à nu, ou entartrée et tachée ?"
        ),
        "colder: margin": (
            "Trouver un relevé de la température la plus basse plus près du véhicule."
        ),
        "colder: unproven": "Mesurer ce qu'il y a encore dans les éléments d'à côté.",
        "colder: already open": "Trancher d'abord ce qui a été omis.",
        "colder: heated": (
            "Relever quel froid il a fait dans ce local, ou si son chauffage a lâché."
        ),
        "colder: not known": "Prendre le plus froid de l'hiver à la station météo la plus proche.",
        "colder: no proof": "Chercher à la main ce qui y était resté.",
        "wear: not known": "Regarder l'élément : cassant, corrodé, aminci ?",
    }
)
"""What would settle a cause that is open."""

LOOK: Mapping[str, str] = MappingProxyType(
    {
        "not relieved": (
            "C'est rigide, et rien ne l'avait ouvert : ce qui gelait n'avait pas de place."
        ),
        "sealed": "C'est rigide et fermé : ce qui y gelait n'avait pas de place.",
        "assumed": "Ce qui en est affirmé repose sur ce qui a été supposé. {assumed}",
        "attested": "Que ce soit fait repose sur une case cochée au compte rendu.",
        "no reading": "Aucun relevé n'a été fait de ce qu'il y avait dedans.",
        "computed": (
            "Ce qu'il y avait dedans est calculé d'après la fiche : comparer longueurs, hauteurs et"
            " pièces avec le véhicule."
        ),
        "worn": "Personne n'a dit s'il y avait de l'usure : regarder.",
    }
)
"""What a claim rests on that somebody can still look at."""

INCIDENT: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Éclatement sur {coach}, trouvé le {day}",
        "fall": "L'automne, d'après le compte rendu : {verdict}",
        "cause missed": "oubli à l'automne",
        "cause used": "usage depuis",
        "cause older": "fissure plus ancienne",
        "cause colder": "froid au-delà du froid à tenir",
        "cause wear": "usure",
        "weight supported": "des faits pour",
        "weight against": "des faits contre",
        "weight open": "question ouverte",
        "line": "{cause}, {weight} : {text}",
        "supported one": "{part} : une seule cause a des faits pour elle : {causes}.",
        "supported many": (
            "{part} : plusieurs causes ont des faits pour elles : {causes} ; rien ne dit laquelle a"
            " joué."
        ),
        "open": "{part} : aucune cause n'a de faits pour elle ; ouvert : {causes}.",
        "not explained": "{part} : le compte rendu ne l'explique pas. À regarder :",
        "step said": "étape {n} ({step}), {result} à la ligne {event}",
        "step unsaid": "étape {n} ({step})",
        "result skipped": "sautée",
        "result failed": "en échec",
        "result not on this coach": "dite absente de ce véhicule",
        "limits": (
            "Des faits pour ne font pas une preuve, et aucune cause n'est une personne. Le compte"
            " rendu dit ce qui a été fait, et le calcul ce qu'il en reste."
        ),
        "no proof": "il n'y a pas de calcul pour un tel élément",
        "not said": "personne n'a dit oui, ni non",
        "lowest not known": "personne n'a dit quel froid il a fait",
        "water not known": "personne n'a dit si de l'eau a coulé depuis",
    }
)
"""Headings and pieces."""
