"""Spanish: what has to be at hand for a job: tools, and small parts that wear out."""

from collections.abc import Mapping
from types import MappingProxyType

AT_HAND: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Herramientas y piezas pequeñas",
        "tools": "Herramientas: {tools}.",
        "tool": "Herramientas",
        "spare": "Piezas pequeñas que quizá toque cambiar",
    }
)
"""The sentences that list them."""

TOOLS: Mapping[str, str] = MappingProxyType(
    {
        "watch": "un reloj que muestre los segundos",
        "bucket": "una cubeta",
        "screwdriver": "un destornillador para los paneles",
        "plug wrench": "una llave de tuercas para el tapón ({parts})",
        "bowl wrench": "una llave de filtro para el vaso ({parts})",
        "blunt tool": "una punta roma para oprimir la válvula de retención de la toma",
        "bridge hose": "una manguera corta para puentear ({parts})",
        "jug hose": "una manguera corta hasta dentro de la garrafa (desde: {parts})",
        "hand pump": "una bomba manual con manguera, y lo necesario para conectarla ({parts})",
        "compressor": (
            "un compresor con aire limpio y sin aceite, un regulador a {regulator_Pa} y nunca a 50"
            " psi o más, y lo necesario para conectarlo ({parts})"
        ),
        "eyes": "protección para los ojos",
        "test hose": "una manguera con manómetro y un regulador a {pressure_Pa}",
        "cup": "una taza de medir (una taza es 250 mL)",
        "reading": (
            "un instrumento que lea la concentración de este anticongelante, y dos recipientes"
            " limpios para las muestras"
        ),
        "sewer gloves": "manguera de drenaje y guantes, guardados aparte",
        "tag": "una etiqueta para la llave principal y con qué escribirla",
    }
)
"""By key of the tool."""

SPARES: Mapping[str, str] = MappingProxyType(
    {
        "thread tape": "cinta selladora de rosca para el tapón ({parts})",
        "anode rod": "una varilla de ánodo por si queda poco de la vieja ({parts})",
        "bowl seal": "un anillo de sello para el vaso ({parts})",
        "cap": "una tapa con su empaque ({parts})",
        "screen washer": "un empaque con malla ({parts})",
    }
)
"""By key of the part."""
