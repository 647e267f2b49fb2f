"""French: what is said of each part, on what it stands, and what would settle it.

No verb or adjective here agrees with the name of a part: sentences have no subject, or their own.
"""

from collections.abc import Mapping
from types import MappingProxyType

CLAIMS: Mapping[str, str] = MappingProxyType(
    {
        "filled": "remplissage à l'antigel",
        "drained": "vidange",
        "swept": "soufflage à vide",
        "kept warm": "maintien au chaud",
        "removed": "hors du véhicule",
        "unproven": "sans preuve",
    }
)

REASONS: Mapping[str, str] = MappingProxyType(
    {
        "nothing there": "Il n'y reste rien.",
        "room in the air": "Plein à {full}, le reste est de l'air : ce qui reste peut gonfler.",
        "does not freeze": "Reste liquide jusqu'à {freezing_point_degC}.",
        "freezes": "Gèle à {freezing_point_degC}, et rien n'y cède.",
        "slush is harmless": (
            "Peut devenir de la bouillie glacée ; elle ne fait rien éclater jusqu'à"
            " {burst_limit_degC}."
        ),
        "slush bursts": (
            "Sa bouillie glacée fait éclater ce qui la contient au-dessous de {burst_limit_degC}."
        ),
        "slush bursts: plain water": (
            "Contient de l'eau pure, et elle fait éclater ce qui la contient."
        ),
        "slush bursts: ice": (
            "Plus de {ice} du contenu devient de la glace, et elle fait éclater ce qui la contient."
        ),
        "rating holds": "Non dilué, et son étiquette promet {rating_degC}.",
        "rating is too warm": "Son étiquette ne promet pas plus froid que {rating_degC}.",
        "no rating": "L'étiquette du produit n'indique aucune température pour cela.",
        "diluted product": (
            "Le produit n'en fait que {product}, et personne ne sait ce qu'il y a dans ce produit."
        ),
        "blend": "Deux sortes d'antigel y sont mélangées ; aucune table n'est publiée pour cela.",
        "no burst curve": (
            "Devient de la bouillie glacée, et aucune table publiée ne dit ce qu'elle fait éclater."
        ),
        "beyond the table": (
            "Les tables publiées s'arrêtent avant ce mélange, ou avant un tel froid."
        ),
        "air from the pump": (
            "Derrière une petite pompe, l'air passe au-dessus de l'eau qui y repose."
        ),
        "maker's steps": "Les étapes du fabricant ont été suivies.",
        "may not have drained": (
            "Contient peut-être de l'eau : l'écoulement se joue à 25 mm de hauteur."
        ),
        "may not have been swept": (
            "Contient peut-être de l'eau : l'air n'est que presque assez rapide."
        ),
        "may be cracked": "A peut-être gelé, et personne ne sait encore si cela a tenu.",
        "water has run since": (
            "De l'eau y a coulé depuis : personne ne peut dire ce qu'il y a dedans maintenant."
        ),
        "kept warm": "Contient de l'eau, et ne tient que tant que le local reste chaud.",
        "no model": "Il n'y a pas encore de calcul pour un tel élément.",
        "not looked at": "Sur la fiche, mais personne n'a regardé.",
        "nobody has looked": "Personne n'a regardé si ce véhicule en a.",
        "too few draws": (
            "Tient du côté prudent, mais dans {held_in} seulement des véhicules que cette fiche"
            " pourrait décrire."
        ),
        "product may be weaker": (
            "Tient si le produit est aussi fort que le dit son étiquette, mais dans {held_in}"
            " seulement des cas si elle est exacte à 2 % près."
        ),
        "reading is too weak": (
            "Un relevé indique {share} de glycol, {weakest} au moins : trop faible pour ce froid."
        ),
        "weaker than the jug": (
            "Un relevé indique {share} de la force du bidon neuf, {weakest} au moins : trop faible"
            " pour ce froid."
        ),
        "freezes too warm": (
            "D'après un relevé, cela gèle à {frozen_at_degC} : pas assez bas pour ce froid."
        ),
        "sample turned to slush": (
            "Un échantillon était en bouillie glacée à {frozen_at_degC} : trop faible pour ce"
            " froid."
        ),
        "sample froze solid": (
            "Un échantillon a gelé en bloc à {frozen_at_degC} : trop faible pour ce froid."
        ),
        "not pink": "N'avait pas l'air rose : personne ne sait si le produit est arrivé là.",
        "observed otherwise": (
            "Chronomètre, bidons ou gobelets penchent pour ceci : {cause}. Alors cela ne tiendrait"
            " pas."
        ),
    }
)
"""By key of the reason; "key: word" is said instead where a parameter of that name is there."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "not reached": (
            "Aucune étape ne déplace ce qu'il y a dedans : vidanger à la main, ou faire couler à sa"
            " sortie."
        ),
        "freezes": "Vider, ou ouvrir pour que quelque chose cède, ou remplir plus concentré.",
        "freezes: too weak": "Vider, ou ouvrir pour que quelque chose cède.",
        "slush bursts: too weak": "Prendre un produit plus fort, ou vider.",
        "slush bursts: plain water": "Faire couler à sa sortie, ou vidanger à la main.",
        "slush bursts": "Faire couler plus longtemps, ou prendre un produit plus fort.",
        "rating is too warm": "Prendre un produit dont l'étiquette promet plus de froid, ou vider.",
        "no rating": (
            "Prendre un produit dont l'étiquette indique une température, ou sa part de glycol."
        ),
        "diluted product": (
            "Prendre un produit dont l'étiquette indique la part de glycol, ou faire couler jusqu'à"
            " ce qu'il vienne non dilué."
        ),
        "blend": "Rincer avec un seul produit.",
        "no burst curve": "Prendre un produit au propylène glycol, ou vider.",
        "beyond the table": "Vider, ou maintenir au chaud.",
        "air from the pump": "Remplir, ou souffler avec assez d'air.",
        "may not have drained": "Ouvrir au point le plus bas et vérifier que rien ne coule.",
        "may not have been swept": "Souffler avec plus d'air, ou faire couler de l'antigel dedans.",
        "may be cracked": "Dégeler, regarder, et essayer à basse pression ; puis refaire le plan.",
        "water has run since": "Refaire couler de l'antigel dedans.",
        "kept warm": "Y lire un thermomètre tout l'hiver, ou vider.",
        "no model": "Suivre les étapes du fabricant, et faire signer à quelqu'un que c'est fait.",
        "not looked at": "Regarder, et inscrire sur la fiche ce qu'il y a.",
        "nobody has looked": (
            "Regarder ; inscrire sur la fiche ce qu'il y a, et ce qu'il n'y a pas."
        ),
        "too few draws": (
            "Mesurer les conduites sur son chemin et inscrire leurs longueurs, ou faire couler plus"
            " longtemps que la feuille ne le demande."
        ),
        "product may be weaker": "Prendre un produit plus fort, ou vider.",
        "reading is too weak": "Faire couler encore du produit neuf, et refaire le relevé.",
        "weaker than the jug": (
            "Faire couler encore du produit neuf, et refaire le relevé à côté du bidon."
        ),
        "freezes too warm": "Faire couler encore du produit neuf, et regeler un échantillon.",
        "sample turned to slush": "Faire couler encore du produit neuf, et regeler un échantillon.",
        "sample froze solid": "Faire couler encore du produit neuf, et regeler un échantillon.",
        "observed otherwise": "Voir plus haut ce qui trancherait ; si c'est le cas, y remédier.",
        "not pink": (
            "Regarder ce qu'il y a dans le bidon, faire couler jusqu'à ce que la couleur reste, et"
            " faire un relevé."
        ),
    }
)
"""What to do about a part that is not proven, by key of the reason."""

EVIDENCE: Mapping[str, str] = MappingProxyType(
    {
        "observed otherwise": "Chronomètre, bidons ou gobelets penchent pour ceci : {cause}.",
        "content as found": "Aucune étape du plan ne déplace ce qu'il y avait dedans à l'arrivée.",
        "content flowed": (
            "Calculé d'après ce qui y coule ; c'est le tronçon le plus faible qui compte."
        ),
        "content drained": (
            "Calculé d'après les hauteurs et les ouvertures : cela s'écoule tout seul."
        ),
        "content swept": "Calculé d'après l'air qu'on y pousse.",
        "content emptied": "Ouverture et vidange à la main.",
        "content sweep doubtful": (
            "L'air y est presque aussi rapide que le demandent les critères publiés."
        ),
        "content drain uncertain": (
            "Les hauteurs de la fiche ne permettent pas de dire si cela s'écoule."
        ),
        "length guessed": (
            "La longueur est au jugé, à {spread} près ; le cas le plus défavorable a été pris."
        ),
        "heights as on the card": "Les hauteurs sont prises telles que la fiche les donne.",
        "no model": "Compté comme plein d'eau : il n'y a pas de calcul pour cela.",
        "not looked at": "Compté comme plein d'eau : personne n'a regardé.",
        "nobody has looked": "Compté comme présent et plein d'eau : personne n'a regardé.",
        "content removed": "N'est plus dans le véhicule.",
        "may be cracked": "Compté comme peut-être fissuré jusqu'à l'essai.",
        "water has run since": "Compté comme plein d'eau : de l'eau a coulé depuis.",
        "heat stays on": "Compté comme chauffé tout l'hiver.",
        "maker's steps": "Quelqu'un a coché les étapes du fabricant.",
        "done as recorded": "Quelqu'un l'a coché.",
        "reading glycol share": "Un relevé a donné {share} de glycol, {weakest} au moins.",
        "glycol scale misreads": (
            "Une échelle de glycol lit mal ce produit, et {share} n'y dit rien de sa force :"
            " comparer avec un gobelet du bidon neuf, ou geler un échantillon."
        ),
        "reading freezing point": "Un point de congélation de {freezing_point_degC} a été relevé.",
        "reading against jug": (
            "À côté d'un gobelet du bidon neuf, il y a {share} de sa force, {weakest} au moins."
        ),
        "reading freeze sample": (
            "Un échantillon est resté liquide à {read_degC} : il ne gèle pas au-dessus de"
            " {freezing_point_degC}."
        ),
        "sample slush": "Un échantillon était en bouillie glacée à {frozen_at_degC}.",
        "sample solid": "Un échantillon a gelé en bloc à {frozen_at_degC}.",
        "reading pressure": "Une pression de {read_Pa} a été relevée.",
        "reading temperature": "Une température de {read_degC} a été relevée.",
        "reading looks pink": (
            "Avait l'air rose ; cela prouve peu : au dixième de la pleine force, {share} en ont"
            " encore l'air."
        ),
        "reading share eaten": "L'anode a été regardée ; cela ne dit rien du gel.",
        "reading not pink": "N'avait pas l'air rose.",
        "jug as printed": (
            "Le bidon lui-même donne {share} de glycol, {weakest} au moins : les {full} de son"
            " étiquette sont confirmés."
        ),
        "jug weaker": (
            "Le bidon lui-même donne {share} de glycol, moins que les {full} de son étiquette :"
            " c'est {weakest} qui compte."
        ),
        "jug freezes": "D'après un relevé, le bidon lui-même gèle à {freezing_point_degC}.",
        "jug liquid": (
            "Un échantillon du bidon est resté liquide à {read_degC} : il ne gèle pas au-dessus de"
            " {freezing_point_degC}."
        ),
        "jug slush": "Un échantillon du bidon était en bouillie glacée à {frozen_at_degC}.",
        "jug solid": "Un échantillon du bidon a gelé en bloc à {frozen_at_degC}.",
        "jug not pink": "Le bidon lui-même n'avait pas l'air rose.",
    }
)

KINDS_OF_EVIDENCE: Mapping[str, str] = MappingProxyType(
    {
        "computed": "calculé",
        "measured": "mesuré",
        "attested": "attesté",
        "assumed": "supposé",
    }
)

POCKETS: Mapping[str, str] = MappingProxyType(
    {
        "open": "la bouillie glacée a la place de gonfler",
        "relieved": "rigide, mais une étape l'ouvre",
        "sealed": "rigide et fermé : cela ne doit pas geler, ou doit être vide",
    }
)

VERDICTS: Mapping[str, str] = MappingProxyType(
    {
        "safe": (
            "Protégé comme prévu jusqu'à {low}, toutes étapes faites ; sans valeur dès que l'eau"
            " coule."
        ),
        "safe as recorded": (
            "Protégé d'après le compte rendu jusqu'à {low} ; sans valeur dès que l'eau coule."
        ),
        "gap": "PAS protégé jusqu'à {low}. Le gel ferait éclater {count} : {parts}.",
        "gap and more": "PAS protégé jusqu'à {low}. Le gel ferait éclater {count}, dont {parts}.",
        "unproven": "Sans preuve jusqu'à {low}. Personne ne peut répondre de {count} : {parts}.",
        "unproven and more": (
            "Sans preuve jusqu'à {low}. Personne ne peut répondre de {count}, dont {parts}."
        ),
        "refused": "L'étape {step} est refusée telle quelle. {hazard}",
        "refused as recorded": (
            "Dans le mauvais ordre, d'après le compte rendu : « {step} » {hazard}"
        ),
        "too weak": "{product}, même non dilué : rien ne montre qu'il protège jusqu'à {low}.",
        "never clear": "La coulée à pleine force a été abandonnée ici : {parts}.",
    }
)

OUTCOMES: Mapping[str, str] = MappingProxyType(
    {
        "same": "Si on l'omet, rien ne change.",
        "gap": "Si on l'omet, le gel ferait éclater : {parts} ; eau laissée là : {water_m3}.",
        "unproven": "Si on l'omet, personne ne pourrait répondre de ceci : {parts}.",
        "hazard": "Ne jamais l'omettre : {hazard}",
    }
)
"""What comes of leaving a step out."""

NULLS: Mapping[str, str] = MappingProxyType(
    {
        "no liquid": "il n'y a pas de liquide dedans",
        "product unknown": "l'étiquette ne dit pas ce qu'il y a dans le produit",
        "blend": "deux sortes d'antigel sont mélangées",
        "beyond the table": "les tables publiées s'arrêtent avant",
        "not known": "personne ne sait ce qu'il y a dedans",
        "several parts": "cette étape porte sur plusieurs éléments ; voir « parts »",
        "no part": "cette étape ne porte sur aucun élément du véhicule",
        "no setting": "rien n'est réglé à cette étape",
        "nothing runs": "rien n'est versé et rien ne coule à cette étape",
        "no outlet": "à cette étape, aucune sortie ne coule jusqu'à la couleur",
        "no colour": "d'après le calcul, la couleur ne vient pas ici",
        "not to be used": "ce produit n'est pas à utiliser ici",
        "nothing freezes": "plus rien ne gèle avec dommage à ce froid",
        "nothing holds": "pour aucun élément il n'est montré qu'il tient",
        "nothing drawn": "ce qui tient ne dépend pas de ce qui est tiré au sort",
        "not asked": "il n'a pas été calculé ce que donne l'omission de cette étape",
    }
)
"""Why a value is null in a plan for programs."""
