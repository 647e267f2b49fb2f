"""Spanish: the winter record, a paper that says what was done to a coach and what that proves."""

from collections.abc import Mapping
from types import MappingProxyType

RECORD: Mapping[str, str] = MappingProxyType(
    {
        "title": "Registro de invierno {id}",
        "heading": "Registro de invierno",
        "as recorded": "Lo que se hizo, como quedó anotado, y lo que eso comprueba.",
        "proven but open": (
            "SIN TERMINAR. Por lo anotado cada parte queda comprobada hasta {low}, pero algo de lo"
            " que sigue habla en contra."
        ),
        "site": "Sitio",
        "page": "Página de la casa rodante",
        "written on": "Anotado en",
        "used": "Anticongelante",
        "used text": "cerca de {volume} de {product}, según el cálculo (de {low} a {high})",
        "used just": "cerca de {volume} de {product}, según el cálculo",
        "used none": "ninguno bombeado ni vertido",
        "counted": "{volume} según las garrafas que se contaron",
        "time": "Trabajo",
        "about": "cerca de {time}, según el cálculo",
        "day": "Día",
        "from to": "de {first} a {last}",
        "no day": "el registro no dice ninguno",
        "open": "Sin terminar: qué queda abierto, y qué lo decidiría",
        "look": "Mire aquí primero",
        "looking": "{names}.",
        "done": "Lo que se hizo",
        "number": "N.º",
        "when": "Hora",
        "what": "Qué",
        "result": "Resultado",
        "noted": "Anotado",
        "not recorded": "sin registrar",
        "not in record": (
            "El registro no habla de estos pasos; lo que no nombra cuenta como no hecho."
        ),
        "parts": "Comprobación de cada parte ({count} en total)",
        "group": "{claim} ({count})",
        "of part": "Parte",
        "evidence": "Se basa en",
        "why": "Por qué",
        "freezes at": "Se congela a",
        "is left": "Queda dentro",
        "as above": "como arriba",
        "freezing note": (
            "Se congela a: el punto de congelación de su tramo más débil; por debajo de él, una"
            " parte con anticongelante se vuelve hielo pastoso, que según tablas impresas no"
            " revienta nada ahí hasta la mínima de diseño."
        ),
        "evidence note": (
            "Se basa en: cálc., calculado por el programa; leído, con un instrumento o a la vista;"
            " marcado, por una persona; supuesto, tomado como lo da la ficha."
        ),
        "settles": "Qué lo decidiría: {how}",
        "other numbers": (
            "Los números de los pasos son los de una hoja de trabajo sin lo que no está en esta"
            " casa rodante."
        ),
        "sources": "De dónde vienen los números",
        "sources note": "Entre corchetes, cuánto se puede confiar aquí en cada fuente.",
        "limits": "Lo que este registro no es",
        "limits text": (
            "Dice lo que se deduce de lo anotado, para esta ficha y este frío. Lo que no se anotó"
            " cuenta como no hecho, y este programa no verificó lo que se anotó. Sin validez si"
            " corre agua en cualquier punto de la casa rodante. El manual de la casa rodante y el"
            " reglamento local están por encima de este registro."
        ),
        "same record": "Qué registro es este",
        "same record text": (
            "Resumen SHA-256 del registro, como JSON canónico (RFC 8785). Quien tenga el registro"
            " puede calcularlo de nuevo: wintertight digest RECORD.json --printed DIGEST"
        ),
        "card": "Ficha",
        "engine": "Programa",
        "signatures": "Firmas",
        "technician": "Técnico: hecho como está anotado",
        "owner": "Propietario: lo leyó, y se le dijo que queda sin validez si corre agua",
        "name and signature": "Nombre y firma",
        "date": "Fecha",
    }
)
"""Headings, columns, and what is said once."""

EVIDENCE: Mapping[str, str] = MappingProxyType(
    {"computed": "cálc.", "measured": "leído", "attested": "marcado", "assumed": "supuesto"}
)
"""On what a claim stands, in a word."""

NOTED: Mapping[str, str] = MappingProxyType(
    {
        "colour": "color a los {time}",
        "colour at once": "color enseguida",
        "run on": "tiempo extra {time}",
        "volume": "{volume}",
        "jugs one": "queda 1 garrafa",
        "jugs many": "quedan {count} garrafas",
        "set": "ajuste: {setting}",
        "why": "«{why}»",
        "device": "{device}",
        "between": "; ",
    }
)
"""What was written down beside a step."""

RESULTS: Mapping[str, str] = MappingProxyType(
    {
        "done": "hecho",
        "skipped": "OMITIDO",
        "failed": "FALLÓ",
        "not on this coach": "NO ESTÁ EN ESTA CASA RODANTE",
    }
)
"""How a step ended; what was not done must not be overlooked."""

LEFT: Mapping[str, str] = MappingProxyType(
    {
        "nothing there": "nada",
        "room in the air": "{full} de líquido",
        "rating holds": "etiqueta: {rating_degC}",
        "maker's steps": "pasos del fabricante",
    }
)
"""By key of the reason: why a part is proven, where no freezing point says it, in a word or two."""

READINGS: Mapping[str, str] = MappingProxyType(
    {
        "glycol share": "{value} de glicol",
        "freezing point": "se congela a {value}",
        "freeze sample": "muestra a {value}",
        "freeze sample: liquid": "muestra líquida a {value}",
        "freeze sample: slush": "muestra hecha hielo pastoso a {value}",
        "freeze sample: solid": "muestra congelada por completo a {value}",
        "pressure": "{value}",
        "temperature": "{value}",
        "looks pink": "se miró el color",
        "looks pink: yes": "se ve rosado",
        "looks pink: no": "no se ve rosado",
        "share eaten": "varilla de ánodo gastada en {value}",
        "no value": "sin valor",
        "of jug": "garrafa: {reading}",
        "how": "{reading} ({how})",
        "within": "{sd} más o menos",
        "zeroed": "cero ajustado con agua",
        "not zeroed": "cero sin ajustar",
    }
)
"""What was read, as it was read."""

INSTRUMENTS: Mapping[str, str] = MappingProxyType(
    {
        "refractometer": "refractómetro",
        "hydrometer": "hidrómetro",
        "test strip": "tira reactiva",
        "freezer": "congelador",
        "gauge": "manómetro",
        "thermometer": "termómetro",
        "eye": "a simple vista",
    }
)
"""What it was read with."""

MARKS: Mapping[str, str] = MappingProxyType(
    {
        "published": "publicado",
        "reproduced": "reproducido",
        "memory": "de memoria",
        "common practice": "práctica común",
        "calculated": "calculado",
    }
)
"""How far a source can be trusted, by its mark."""
