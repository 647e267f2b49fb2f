"""Spanish: what is different between two cards of a coach."""

from collections.abc import Mapping
from types import MappingProxyType

CHANGES: Mapping[str, str] = MappingProxyType(
    {
        "added: compartment": "{part}: nuevo en la ficha, un compartimiento.",
        "added: fitting": "{part}: nuevo en la ficha ({kind}).",
        "added: line": "{part}: nuevo en la ficha, una línea.",
        "added: looked for": "{part}: se buscó, y esta casa rodante no tiene.",
        "removed: compartment": "{part}: ya no está en la ficha, un compartimiento.",
        "removed: fitting": "{part}: ya no está en la ficha ({kind}).",
        "removed: line": "{part}: ya no está en la ficha, una línea.",
        "removed: looked for": "{part}: ya no se dice que falte.",
        "given": "{part}, {field}: {after}; no estaba indicado.",
        "changed": "{part}, {field}: antes {before}, ahora {after}.",
        "no longer given": "{part}, {field}: antes {before}, ya no está indicado.",
        "heading": "{coach}, después {other}: {count}.",
        "heading with earlier": (
            "{coach}: {count} respecto a la ficha reemplazada el {day} ({why})."
        ),
        "amended": "{file}: {count}. La ficha como estaba se queda en su historial.",
        "amended anew": (
            "{file}: {count}. La ficha se escribió de nuevo, sin sus comentarios; como estaba, se"
            " queda en su historial."
        ),
        "amended nothing": "{file}: la ficha ya dice esto; no se escribió nada.",
        "none": "ninguna diferencia",
        "one": "1 diferencia",
        "many": "{count} diferencias",
    }
)

SUBJECTS: Mapping[str, str] = MappingProxyType(
    {
        "card": "ficha",
        "coach": "casa rodante",
        "site": "sitio",
        "antifreeze": "anticongelante",
    }
)
"""What a field belongs to that is of no part."""

FIELDS: Mapping[str, str] = MappingProxyType(
    {
        "id": "número",
        "name": "nombre",
        "kind": "tipo",
        "length": "longitud",
        "height": "altura",
        "year": "año del modelo",
        "floor_above_ground": "altura del piso",
        "vin": "número de vehículo",
        "note": "nota",
        "design_low_degC": "mínima de diseño",
        "power": "corriente de la red",
        "water": "suministro de agua",
        "dump": "lugar para vaciar los tanques de aguas residuales",
        "product": "producto",
        "heated": "con calefacción",
        "closed": "cerrado por todos lados",
        "role": "para qué es",
        "seen": "visto",
        "at": "lugar",
        "at_within_m": "qué tan bien se conoce su lugar",
        "compartment": "compartimiento",
        "access": "acceso",
        "panel": "panel que lo tapa",
        "screws": "tornillos del panel",
        "photo": "foto",
        "opening_s": "tiempo para llegar a la parte",
        "volume": "volumen",
        "flow": "caudal",
        "cut_off": "presión de corte",
        "tank": "tanque",
        "heat": "fuente de calor",
        "only": "su único lado",
        "drains_to": "a dónde desagua",
        "positions": "posiciones de su manija",
        "makers_steps": "pasos de su fabricante",
        "start": "un extremo",
        "end": "otro extremo",
        "size": "tamaño",
        "material": "material",
        "bore": "diámetro interior",
        "bends": "codos",
        "start_height_m": "altura de un extremo",
        "end_height_m": "altura del otro extremo",
        "lowest_m": "altura más baja",
        "highest_m": "altura más alta",
    }
)

WAYS: Mapping[str, str] = MappingProxyType(
    {
        "quantity": "{value} ({how}, margen {spread})",
        "measured": "medido",
        "told": "dicho",
        "guessed": "estimado",
        "yes": "sí",
        "no": "no",
        "text": "«{text}»",
    }
)
"""How a value of a card is said."""
