"""Spanish: the tag that hangs at the main tap."""

from collections.abc import Mapping
from types import MappingProxyType

TAG: Mapping[str, str] = MappingProxyType(
    {
        "title": "Etiqueta {id}",
        "protected to": "Protegida según lo registrado hasta",
        "void": (
            "SIN VALIDEZ SI CORRE AGUA: basta una llave, una descarga, una manguera conectada."
        ),
        "not finished": "SIN TERMINAR",
        "do not count on it": "No cuente con que aguante una helada antes de resolver esto:",
        "and more": "Y {count} más: vea el registro de invierno.",
        "speaks for": "Cronómetro, garrafas o muestras apuntan a {cause}.",
        "hold": "Un resguardo temporal es para una noche fría, no para un invierno.",
        "refused": "Según lo registrado: {hazard}",
        "not on coach": (
            "Según el registro no está en esta casa rodante, según la ficha sí: {parts}. Corrija la"
            " ficha."
        ),
        "heater": "Calentador, según lo registrado",
        "heater line": "{part}: {facts}.",
        "heat off": "calor apagado",
        "heat not off": "calor NO registrado como apagado",
        "bypassed": "en bypass",
        "empty": "contenido vaciado",
        "antifreeze": "contenido: anticongelante",
        "plug in": "tapón PUESTO",
        "plug out": "tapón FUERA",
        "content unknown": "contenido SIN COMPROBAR",
        "before water": "Antes de que corra agua",
        "thawed": "Todo por encima del punto de congelación, y nada agrietado.",
        "plug in again": "Ponga de nuevo el tapón: {parts}.",
        "lever down": "Baje la palanca de alivio: {parts}.",
        "back in place": "Ponga de nuevo en su lugar: {parts}.",
        "cartridge in": "Ponga de nuevo el cartucho: {parts}.",
        "bowl tight": "Apriete el vaso: {parts}.",
        "set back": "Regrese a su posición de uso: {parts}.",
        "set back: bypassed": (
            "Regrese a su posición de uso: {parts}; lo del calentador, solo con las líneas ya"
            " enjuagadas."
        ),
        "shut": "Cierre todas las llaves, puntos bajos y desagües que estén abiertos.",
        "rinse": "Enjuague cada salida hasta que el agua salga clara, antes de que alguien beba.",
        "before heat": "Antes de encender el calor",
        "full": (
            "{parts}: llene de agua, y que salga por una llave caliente un chorro parejo. Nunca sin"
            " agua ni en bypass."
        ),
        "day": "Día",
        "method": "Método",
        "product": "Anticongelante",
        "no product": "ninguno",
        "card": "Ficha",
        "technician": "Técnico",
        "manual": (
            "Solo según lo registrado. El manual de la casa rodante y el reglamento local están por"
            " encima de esta etiqueta."
        ),
    }
)
"""Everything that is printed on it."""
