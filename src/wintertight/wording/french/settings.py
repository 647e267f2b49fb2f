"""French: methods, what a hand sets, and how it can stand."""

from collections.abc import Mapping
from types import MappingProxyType

METHODS: Mapping[str, str] = MappingProxyType(
    {
        "pump": "antigel par la pompe du véhicule",
        "hand-pump": "antigel par pompe à main",
        "air": "soufflage",
        "air-then-pump": "soufflage, puis antigel",
        "drain": "vidange seule",
        "hold": "sursis au gel",
        "thaw": "dégel et essai d'abord",
    }
)

THINGS: Mapping[str, str] = MappingProxyType(
    {
        "handle": "poignée",
        "cartridge": "cartouche",
        "bowl": "bol",
        "switch": "interrupteur",
        "hose": "tuyau",
        "drain": "vidange",
        "tank": "réservoir",
        "tap": "robinet",
        "valve": "vanne",
        "check": "clapet",
        "relief lever": "levier de la soupape",
        "plug": "bouchon",
        "gate": "vanne à guillotine",
        "burner": "brûleur",
        "element": "résistance électrique",
        "coolant": "circuit du moteur",
        "head": "pomme",
        "body": "appareil entier",
        "filter": "filtre",
        "line end": "bout de la conduite",
        "lever": "levier",
        "mould": "moule",
        "cap": "bouchon",
        "named handle": "poignée",
        "diverter": "inverseur",
        "rinse inlet": "entrée",
        "valve of a machine": "vanne de remplissage",
        "maker's steps": "étapes du fabricant",
    }
)
"""What a hand sets."""

SETTINGS: Mapping[str, str] = MappingProxyType(
    {
        "along": "dans l'axe du tuyau (ouvert)",
        "across": "en travers du tuyau (fermé)",
        "half": "à mi-course",
        "open": "en position ouverte",
        "shut": "en position fermée",
        "in": "dedans",
        "out": "dehors",
        "on": "en marche",
        "off": "à l'arrêt",
        "tight": "à bloc",
        "loose": "lâche",
        "free": "libre",
        "pressed": "enfoncé",
        "in use": "en service",
        "stowed": "rangé",
        "in the jug": "dans le bidon",
        "hand pump": "avec la pompe à main",
        "air line": "avec le tuyau d'air",
        "open to the air": "à l'air libre",
        "tank line": "sur la conduite du réservoir",
        "relief lever open": "levier de la soupape ouvert",
        "plug out": "bouchon enlevé",
        "cartridge out, bowl emptied and back on": "cartouche sortie, bol vidé et remis",
        "on, then off": "en marche, puis à l'arrêt",
        "emptied": "vide",
        "open, then shut": "ouvrir, puis fermer",
        "worked once": "une fois",
        "a quarter turn loose": "lâche d'un quart de tour",
        "poured in": "versé",
        "in place": "en place",
        "removed": "hors du véhicule",
        "joined": "bout à bout",
        "cartridge in": "cartouche en place",
        "bypass plug in": "bouchon de bypass en place",
        "full": "plein",
        "to do": "à faire",
        "done": "fait",
        "recirculate": "en recirculation",
        "plug in, relief shut": "bouchon en place, levier de la soupape rabaissé",
        "reading": "relevé",
        "warm": "au chaud",
        "looked at": "vu",
        "tested": "essai fait",
        "tag at the main tap": "étiquette au robinet principal",
    }
)
