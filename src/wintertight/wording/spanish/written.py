"""Spanish: what a command adds to its screen: files written, and where its list is from."""

from collections.abc import Mapping
from types import MappingProxyType

WRITTEN: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Hoja de trabajo: {file}",
        "guide": "Guía del propietario: {file}",
        "drawing": "Dibujo: {file}",
        "record": "Registro de invierno: {file}",
        "tag": "Etiqueta: {file}",
        "estimate": "Presupuesto: {file}",
        "card holds": "{coach}: piezas {fittings}, líneas {lines}, y todo encaja.",
        "bundled list": (
            "Anticongelante de la lista de ejemplo incluida; dé la suya con --shop FILE."
        ),
        "bundled prices": (
            "Los precios de la lista de ejemplo incluida son inventados;"
            " dé los suyos con --shop FILE."
        ),
        "no prices": "Sin presupuesto: la lista del taller no tiene tabla de precios.",
        "not recorded": "El registro no habla de: {steps}.",
        "no time": "en un momento que no indica",
        "signed, believed": (
            "Firmado por {by}, {at} según el reloj de quien firmó; desde entonces nada se"
            " cambió ni se añadió."
        ),
        "signed, by somebody": (
            "Firmado por {by}, {at} según el reloj de quien firmó; desde entonces nada se"
            " cambió ni se añadió. Quién es, no está comprobado: dé su certificado con"
            " --trust."
        ),
    }
)
"""By what was written, or noted."""
