"""Spanish: methods, what a hand sets, and how it can stand."""

from collections.abc import Mapping
from types import MappingProxyType

METHODS: Mapping[str, str] = MappingProxyType(
    {
        "pump": "anticongelante con la bomba propia",
        "hand-pump": "anticongelante con bomba manual",
        "air": "soplado",
        "air-then-pump": "soplado y después anticongelante",
        "drain": "solo vaciado",
        "hold": "resguardo temporal contra la helada",
        "thaw": "descongelar y probar primero",
    }
)

THINGS: Mapping[str, str] = MappingProxyType(
    {
        "handle": "manija",
        "cartridge": "cartucho",
        "bowl": "vaso",
        "switch": "interruptor",
        "hose": "manguera",
        "drain": "desagüe",
        "tank": "tanque",
        "tap": "llave",
        "valve": "válvula",
        "check": "válvula de retención",
        "relief lever": "palanca de alivio",
        "plug": "tapón",
        "gate": "válvula de compuerta",
        "burner": "quemador",
        "element": "resistencia eléctrica",
        "coolant": "refrigerante del motor",
        "head": "cabezal",
        "body": "pieza completa",
        "filter": "filtro",
        "line end": "extremo de la línea",
        "lever": "palanca",
        "mould": "molde",
        "cap": "tapa",
        "named handle": "manija",
        "diverter": "desviador",
        "rinse inlet": "entrada",
        "valve of a machine": "válvula de llenado",
        "maker's steps": "pasos del fabricante",
    }
)
"""What a hand sets."""

SETTINGS: Mapping[str, str] = MappingProxyType(
    {
        "along": "a lo largo del tubo (abierta)",
        "across": "atravesada al tubo (cerrada)",
        "half": "a medias",
        "open": "abrir",
        "shut": "cerrar",
        "in": "dentro",
        "out": "fuera",
        "on": "encender",
        "off": "apagar",
        "tight": "apretar",
        "loose": "aflojar",
        "free": "sin oprimir",
        "pressed": "oprimir",
        "in use": "en uso",
        "stowed": "bajo techo",
        "in the jug": "en la garrafa",
        "hand pump": "con la bomba manual",
        "air line": "con la línea de aire",
        "open to the air": "abierto al aire",
        "tank line": "en la línea del tanque",
        "relief lever open": "palanca de alivio abierta",
        "plug out": "tapón fuera",
        "cartridge out, bowl emptied and back on": "cartucho fuera, vaso vaciado y de nuevo puesto",
        "on, then off": "encender y luego apagar",
        "emptied": "vaciar",
        "open, then shut": "abrir y luego cerrar",
        "worked once": "accionar una vez",
        "a quarter turn loose": "aflojar un cuarto de vuelta",
        "poured in": "verter",
        "in place": "en su lugar",
        "removed": "desmontar",
        "joined": "unir",
        "cartridge in": "cartucho dentro",
        "bypass plug in": "tapón de bypass puesto",
        "full": "lleno",
        "to do": "por hacer",
        "done": "hecho",
        "recirculate": "recircular",
        "plug in, relief shut": "tapón puesto, palanca de alivio abajo",
        "reading": "lectura",
        "warm": "en calor",
        "looked at": "mirar",
        "tested": "probar",
        "tag at the main tap": "etiqueta en la llave principal",
    }
)
