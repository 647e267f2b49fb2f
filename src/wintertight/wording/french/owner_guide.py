"""French: the guide for an owner who does the whole job alone."""

from collections.abc import Mapping
from types import MappingProxyType

GUIDE: Mapping[str, str] = MappingProxyType(
    {
        "title": "Guide du propriétaire {id}",
        "heading": "Guide du propriétaire",
        "how": "Méthode : {method}",
        "buy": "À acheter et à préparer",
        "check": "Vérifier d'abord",
        "off": "Ne pas mettre en marche",
        "never": "Si la couleur ne vient jamais",
        "never: blow": "Si une sortie donne toujours de l'eau",
        "never: drain": "Si l'eau ne s'écoule pas jusqu'au bout",
        "never: thaw": "Si une section ne tient pas",
        "open": "Sans preuve, et ce qui trancherait",
        "shop": "Arrêter et appeler un atelier",
        "void": "Quand ce guide est sans valeur",
        "spring": "Au printemps, avant tout chauffage",
        "spring: hold": "Le froid passé, avant tout chauffage",
        "spring: thaw": "Ensuite",
        "mind": "Attention",
        "tap": "Robinet ou sortie",
        "colour": "1re couleur",
        "count": "Puis compter",
        "blow": "Souffler",
        "first": "Commencer par : {tap}.",
        "first: blow": "Commencer par : {tap}.",
        "rounds": (
            "Une sortie à la fois, dans cet ordre : ouvrir, attendre la couleur qui reste, compter"
            " en plus le temps de la dernière colonne, fermer. Jamais deux à la fois."
        ),
        "rounds: blow": (
            "Une sortie à la fois, dans cet ordre : ouvrir, souffler jusqu'à ce qu'il ne vienne que"
            " de la brume et pendant le temps de la dernière colonne, fermer. Jamais deux à la"
            " fois."
        ),
        "not cleared": (
            "ce compresseur ne peut pas en chasser l'eau : à compter comme non soufflé"
        ),
        "no colour": "couleur pas attendue : fermer après {volume}, compter comme non rempli",
        "weak here": "d'après le calcul, jamais à pleine force : voir ce qui est sans preuve",
        "handle": "{name} :",
        "set to": "mettre sur {position}",
        "antifreeze": "produit antigel",
        "limits": (
            "Calculé d'après la fiche du véhicule par {engine} ; ne vaut que pour ce véhicule et"
            " pour ce qui a vraiment été fait. Le manuel du véhicule et la règle locale passent"
            " avant ce guide."
        ),
        "bypass picture": "Le bypass tel qu'il doit rester pour l'hiver",
        "way in picture": "Par où entre l'antigel",
    }
)
"""Headings, columns, and what is said once."""

STEPS: Mapping[str, str] = MappingProxyType(
    {
        "open handles": "Régler ces poignées, pour que rien ne reste isolé :",
        "open shut-off": "Ouvrir cette vanne d'arrêt, pour atteindre ce qui est derrière :",
        "set bypass": "Mettre le chauffe-eau en bypass. Régler ces poignées :",
        "draw from jug": "Régler ces poignées :",
        "hand pump on": "Régler ces poignées :",
        "air on": "Régler ces poignées :",
        "test trunk": "Régler ces poignées :",
        "test branch": "Régler ces poignées :",
        "hose": "Laisser pendre librement le bout du tuyau d'antigel.",
    }
)
"""What stands above handles that are set in a step."""

GROUPS: Mapping[str, str] = MappingProxyType(
    {
        "pour a cup": "Verser de l'antigel : {items}.",
        "pour a cup item": "{part}, {cups}",
        "hold open": (
            "Une sortie après l'autre, chaque fois jusqu'à ce que plus rien ne coule : {items}."
        ),
        "hold open item": "{part} ({how})",
        "loosen bowl": "Desserrer ces bols d'un quart de tour : {items}.",
        "loosen bowl item": "{part}",
        "empty bowl": "Dévisser ces bols, les vider et les revisser sans serrer : {items}.",
        "empty bowl item": "{part}",
        "take out": "Enlever du véhicule, vider et ranger au chaud : {items}.",
        "take out item": "{part}",
        "then hot": "puis côté chaud",
        "then cold": "puis côté froid",
        "numbers": "{first}\u2013{last}",
        "between": " ; ",
    }
)
"""Steps of one kind put together where there is no room for each, and one item of them."""

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "heat stays off": (
            "Ne jamais rallumer le chauffage de l'eau, ni brûleur ni résistance, tant que"
            " l'appareil est vide ou en bypass : il serait perdu. Pas avant les dernières étapes de"
            " ce guide."
        ),
        "not into": "L'antigel ne doit pas aller là : {places}.",
        "tank": "réservoir d'eau propre",
        "bypassed": "chauffe-eau en bypass ({parts})",
        "cartridge": "cartouche ({parts})",
        "taken out": "ce qui est enlevé du véhicule ({parts})",
        "drinking": "tout ce qui se boit, glaçons aussi",
        "ground": "sol, égout pluvial",
    }
)
"""What an owner must mind besides what the job sheet says, at the step where it matters."""

BUY: Mapping[str, str] = MappingProxyType(
    {
        "jugs": "Pour ce véhicule : {jugs} d'antigel ({size} par bidon), et {spare} en réserve.",
        "glycol": (
            "Son étiquette doit dire : fait pour les conduites d'eau potable ; propylène glycol,"
            " {share} en volume. L'utiliser non dilué. Un antigel plus faible ne suffit pas."
        ),
        "ethanol": (
            "Son étiquette doit dire : fait pour les conduites d'eau potable ; éthanol, {share} en"
            " volume. L'utiliser non dilué. Un antigel plus faible ne suffit pas."
        ),
        "both": (
            "Son étiquette doit dire : fait pour les conduites d'eau potable ; propylène glycol,"
            " {share}, et éthanol, {ethanol}, en volume. L'utiliser non dilué. Un antigel plus"
            " faible ne suffit pas."
        ),
        "rating": (
            "Son étiquette doit dire : fait pour les conduites d'eau potable ; {ratings}, ou plus"
            " froid. L'utiliser non dilué. Sa composition n'est pas indiquée : un élément qui garde"
            " un peu d'eau reste donc sans preuve."
        ),
        "no rating": (
            "Son étiquette doit dire : fait pour les conduites d'eau potable. Elle n'indique ni sa"
            " composition ni une température : rien de ce qu'il remplit n'a de preuve."
        ),
        "burst rating": "protection contre l'éclatement jusqu'à {rating}",
        "freeze rating": "protection contre le gel jusqu'à {rating}",
        "printed": (
            "L'étiquette de l'antigel pris pour le calcul indique aussi : {ratings} ; c'est sa"
            " composition qui compte, pas cela."
        ),
        "poison": "Jamais d'antigel de moteur : l'éthylène glycol est un poison.",
        "none": "Pas besoin d'antigel.",
    }
)
"""What antifreeze to buy: by what its label prints, never by a brand."""

CHECKS: Mapping[str, str] = MappingProxyType(
    {
        "frozen": (
            "Le véhicule a-t-il été au gel avec de l'eau dedans ? Alors arrêter ici : ni pompe, ni"
            " air, ni chauffage de l'eau avant que tout soit dégelé et que tout ait été regardé."
        ),
        "same coach": (
            "Faire le tour du véhicule avec ce guide et trouver chaque poignée et chaque sortie"
            " qu'il nomme. S'il en manque une, ou s'il y en a une de plus, par exemple une machine"
            " à glaçons ou un robinet extérieur : arrêter et demander."
        ),
        "cold": "Ce guide vaut jusqu'à {low}. Là où il fait plus froid, il ne tient pas.",
        "level": "Mettre le véhicule de niveau : ce qui s'écoule tout seul est calculé ainsi.",
        "battery": (
            "Batterie chargée, ou véhicule branché au courant : la pompe ne doit pas s'arrêter en"
            " chemin."
        ),
        "waste": (
            "Savoir où se vident les réservoirs d'eaux usées, et où l'eau propre a le droit de"
            " s'écouler."
        ),
        "manual": "Lire ce que le manuel du véhicule dit de l'hiver ; il passe avant ce guide.",
    }
)
"""What is looked at before anything is opened; common practice."""

OFF: Mapping[str, str] = MappingProxyType(
    {
        "bypassed": "{part} ({heat}), dès l'étape {n} : vide et en bypass.",
        "empty": "{part} ({heat}), dès l'étape {n} : vide.",
        "filled": "{part} ({heat}), dès l'étape {n} : il y a de l'antigel dedans, pas de l'eau.",
        "frozen": (
            "{part} ({heat}) : pas avant que l'appareil soit dégelé, plein d'eau, et que l'eau y"
            " coule."
        ),
        "pump": "{part}, dès l'étape {n} : à l'arrêt jusqu'à la remise en eau.",
        "pump frozen": "{part} : pas avant que tout soit dégelé et que l'essai soit fait.",
        "ice": "{part}, dès l'étape {n} : cela ne doit pas faire de glaçons de ce qui est dedans.",
        "lamp": "{part}, dès l'étape {n} : hors du véhicule.",
        "machine": "{part} : ni programme ni chauffage ; seulement ce que dit une étape.",
        "city": "Eau de ville ({part}), dès l'étape {n} : ne pas rebrancher le tuyau.",
    }
)
"""What must not be switched on, and why."""

NEVER: Mapping[str, str] = MappingProxyType(
    {
        "means": (
            "Une couleur qui ne vient jamais, ou qui vient et repart, veut dire que de l'eau entre"
            " encore de quelque part ou que l'antigel s'en va ailleurs : cette conduite n'est pas"
            " protégée."
        ),
        "means: blow": (
            "De l'eau qui vient toujours veut dire qu'elle entre encore de quelque part, ou que"
            " l'air s'en va ailleurs : l'eau n'est pas chassée de cette conduite."
        ),
        "means: drain": (
            "De l'eau qui coule toujours arrive de quelque part ; une conduite qui n'en donne pas"
            " peut encore en être pleine : elle n'est pas vidée."
        ),
        "means: thaw": (
            "Une goutte, un sifflement ou un manomètre qui baisse, c'est une fissure : couper la"
            " pression tout de suite, et marquer l'endroit."
        ),
        "wait": (
            "Pas de couleur {patience} après le temps indiqué : fermer le robinet, arrêter la"
            " pompe, et regarder ceci, dans cet ordre :"
        ),
        "wait: hand pump": (
            "Pas de couleur {patience} après le temps indiqué : fermer le robinet, arrêter de"
            " pomper, et regarder ceci, dans cet ordre :"
        ),
        "wait: blow": (
            "Pas de brume après deux fois le temps indiqué : couper l'air, et regarder ceci :"
        ),
        "wait: drain": "Regarder ceci, dans cet ordre :",
        "wait: thaw": "Le manomètre baisse et rien ne goutte ? Regarder ceci :",
        "jug": (
            "Bidon vide, ou bulles dans son tuyau : bidon plein, raccords serrés ; refaire couler"
            " ce robinet."
        ),
        "hand pump": (
            "Bidon vide, ou la pompe aspire de l'air : bidon plein, raccords serrés ; refaire"
            " couler ce robinet."
        ),
        "tank": (
            "La pompe aspire l'eau du réservoir, une mauvaise vanne est ouverte (étape {n}). Il"
            " faut : {handles}. Si c'était autrement : vider le réservoir, recommencer au premier"
            " robinet."
        ),
        "bypass": (
            "Eau chaude seulement : le passage par le chauffe-eau est ouvert (étape {n}). Il faut :"
            " {handles}. Si c'était autrement : vider le chauffe-eau, refaire couler chaque robinet"
            " d'eau chaude. Cela coule par le trou du bouchon du chauffe-eau : de même."
        ),
        "fills first": (
            "Eau chaude seulement : ceci se remplit d'abord : {parts} ; la première sortie ({tap})"
            " prend donc {time}. Toujours rien alors : le bouchon de vidange ou le levier de la"
            " soupape y est ouvert."
        ),
        "crossover": (
            "Chaud et froid se mêlent dans un autre appareil ({parts}) : y fermer les deux"
            " poignées, n'y laisser aucun bouton de pause enfoncé. Puis refaire couler chaque"
            " robinet ouvert depuis."
        ),
        "low point": "Cela s'écoule ailleurs ; fermer : {parts}.",
        "shut-off": "Une vanne d'arrêt est fermée en chemin ; la mettre {along} : {parts}.",
        "regulator": (
            "Compresseur à sa pression, tuyau d'air branché, régulateur réglé à {regulator_Pa}, pas"
            " plus."
        ),
        "two open": "Une autre sortie est ouverte : la fermer.",
        "still runs": (
            "Cela ne s'arrête pas : eau de ville débranchée, pompe arrêtée, vidange du réservoir"
            " d'eau propre ouverte."
        ),
        "no air in": (
            "Rien ne vient : l'air n'entre pas. Ouvrir tous les robinets, chaud et froid, et"
            " attendre."
        ),
        "ice left": (
            "Il reste de la glace quelque part : réchauffer plus longtemps, puis refaire l'essai."
        ),
        "still not": (
            "Toujours pas : compter cette conduite comme non protégée, ne pas continuer seul,"
            " appeler un atelier."
        ),
        "still not: thaw": "Toujours pas : laisser l'eau coupée et appeler un atelier.",
    }
)
"""What it means when an outlet never clears, and what is looked at."""

SHOP: Mapping[str, str] = MappingProxyType(
    {
        "ice": "Le véhicule a peut-être gelé, ou il y a de la glace quelque part.",
        "leak": "Quelque chose goutte, fait une bosse ou a une fissure.",
        "plug": "Le bouchon du chauffe-eau ne tourne pas, ou il vient de l'eau chaude.",
        "never": (
            "Une sortie échoue deux fois : la couleur ne vient pas ou ne reste pas, ou il vient"
            " toujours de l'eau."
        ),
        "gap": (
            "Ce que le gel ferait éclater d'après ce plan ne peut pas être vidé comme il est dit"
            " ici."
        ),
        "open": "Impossible de trancher ce qui est sans preuve.",
        "other": "Le véhicule n'est pas comme le dit ce guide.",
        "gas": (
            "Il faut travailler sur le gaz (GPL) ou le 120 V : travail réservé aux professionnels"
            " agréés."
        ),
    }
)
"""When to stop."""

VOID: Mapping[str, str] = MappingProxyType(
    {
        "water": (
            "Sans valeur dès que l'eau coule : un robinet, une chasse, un tuyau branché. Tout ce"
            " que l'eau a traversé est dès lors sans protection."
        ),
        "colder": "Tient jusqu'à {low}, et pas plus froid.",
        "thaw": "Ceci ne protège rien : cela montre seulement si le véhicule est intact.",
    }
)
"""When the guide's claim ends."""

SPRING: Mapping[str, str] = MappingProxyType(
    {
        "wait": (
            "Attendre qu'à l'intérieur il ait fait plus chaud que le point de congélation pendant"
            " un jour. Chercher fissures et gouttes."
        ),
        "plug in": "Remettre le bouchon : {parts}.",
        "lever down": "Rabaisser le levier de la soupape : {parts}.",
        "back in place": "Remettre en place : {parts}.",
        "cartridge in": "Mettre une cartouche neuve : {parts}.",
        "bowl tight": "Serrer le bol : {parts}.",
        "by its maker": "Défaire les étapes du fabricant : {parts}.",
        "hose back: stowed": "Ranger le tuyau d'antigel.",
        "hose back: tank line": "Rebrancher la conduite du réservoir à l'entrée de la pompe.",
        "hose back: off": "Débrancher ce qui a été branché ici : {parts}.",
        "shut": "Fermer tous les robinets, points bas et vidanges.",
        "handle": "Remettre ainsi : {handles}.",
        "drain heater": (
            "Laisser sortir l'antigel par le bouchon de vidange, puis remettre le bouchon :"
            " {parts}."
        ),
        "fill": (
            "Puis remettre l'eau, et ouvrir chaque sortie jusqu'à ce qu'il ne vienne plus d'air."
        ),
        "rinse": (
            "Puis remettre l'eau, et ouvrir chaque sortie jusqu'à ce que l'eau soit claire et ne"
            " mousse plus."
        ),
        "rinse: bypassed": (
            "Puis remettre l'eau, le chauffe-eau encore en bypass, et ouvrir chaque sortie jusqu'à"
            " ce que l'eau soit claire et ne mousse plus."
        ),
        "heater handle": "Au chauffe-eau, remettre ainsi : {handles}.",
        "solid": (
            "Remplir le chauffe-eau : un robinet d'eau chaude coule à plein jet, sans cracher"
            " d'air."
        ),
        "heat": (
            "Alors seulement, rallumer le chauffage de l'eau : {parts}. Jamais tant que c'est vide"
            " ou en bypass."
        ),
        "drink": (
            "Désinfecter les conduites avant que quiconque n'en boive, comme le dit le manuel du"
            " véhicule."
        ),
        "thaw": (
            "Ce travail ne finit pas par un repos d'hiver : réparer, puis refaire le plan du"
            " véhicule."
        ),
    }
)
"""What is done in spring, in order."""
