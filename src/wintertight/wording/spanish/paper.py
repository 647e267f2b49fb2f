"""Spanish: headings and labels of papers and of the screen."""

from collections.abc import Mapping
from types import MappingProxyType

LABELS: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Hoja de trabajo",
        "coach": "Casa rodante",
        "site": "Sitio",
        "design low": "Mínima de diseño",
        "method": "Método",
        "product": "Anticongelante",
        "technician": "Técnico",
        "date": "Fecha",
        "no site": "sin sitio en la ficha",
        "page": "página {page} de {pages}",
        "qr": "Código QR de la página de la casa rodante: {link}",
        "step": "Paso",
        "outlet": "Salida",
        "first colour": "Primer color",
        "run on": "Extra",
        "seen": "Visto a",
        "time this one": "cronometre",
        "how to fill": (
            "Abra, espere un color que se mantenga, cuente el tiempo extra, cierre. Anote los dos"
            " tiempos donde se pide (0: enseguida); si tarda mucho más de lo indicado: pare y"
            " pregunte."
        ),
        "how to count": ("Abra, espere un color que se mantenga, cuente el tiempo extra, cierre."),
        "cup from jug": "Lectura: muestra de la garrafa",
        "cup from tap": "de la llave",
        "jugs emptied": "Garrafas vaciadas",
        "left in the last": "queda en la última",
        "began": "Inicio",
        "ended": "Fin",
        "not proven": "Sin comprobar: mire aquí",
        "nothing open": "Este plan no deja ninguna parte abierta.",
        "done": "Hecho",
        "not done": "No hecho",
        "not proven as recorded": "Sin comprobar: qué hacer ahora",
        "notes": "Conviene saber",
        "never skip": "nunca omitir",
        "limits": "Lo que esta hoja no es",
        "limits text": (
            "Calculada a partir de la ficha de la casa rodante; vale solo para lo que de verdad se"
            " hizo. Sin validez si corre agua. El manual de la casa rodante y el reglamento local"
            " están por encima de esta hoja."
        ),
        "why": "Por qué",
        "colon": ":",
        "caution": "Cuidado",
        "parts": "Partes",
        "part": "parte",
        "how": "cómo está protegida",
        "how many": "cuántas",
        "settle": "qué lo decide",
        "no wrong settings": (
            "Los ajustes equivocados se calculan para trabajos en que la bomba de la propia casa"
            " rodante succiona anticongelante; este no lo es."
        ),
        "gap": "por reventar",
        "unproven": "sin comprobar",
        "handled": "{count} en total",
        "card": "ficha",
        "engine": "Wintertight {version}",
        "all parts": "Todas las partes",
    }
)
