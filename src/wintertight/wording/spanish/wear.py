"""Spanish: what is said of the anode rods of heaters."""

from collections.abc import Mapping
from types import MappingProxyType

ANODES: Mapping[str, str] = MappingProxyType(
    {
        "at half": (
            "{part}: la varilla de ánodo está gastada en {share} ({share_low} a {share_high}). Una"
            " varilla se cambia a la mitad: cámbiela ahora."
        ),
        "half before autumn": (
            "{part}: la varilla de ánodo está gastada en {share} ({share_low} a {share_high})."
            " Llega a la mitad en {left} temporadas ({left_low} a {left_high}), y es tan probable"
            " como no que sea antes del próximo otoño: cámbiela ahora."
        ),
        "half after autumn": (
            "{part}: la varilla de ánodo está gastada en {share} ({share_low} a {share_high})."
            " Llega a la mitad en {left} temporadas ({left_low} a {left_high}): cámbiela el"
            " próximo otoño."
        ),
        "lasts": (
            "{part}: la varilla de ánodo está gastada en {share} ({share_low} a {share_high})."
            " Llega a la mitad en {left} temporadas ({left_low} a {left_high}): mírela de nuevo"
            " el próximo otoño."
        ),
        "no reading": (
            "{part}: no se sabe nada de su varilla de ánodo. Mírela cuando el tapón esté fuera y"
            " anote cuánto está gastada."
        ),
        "no reading: tank not said": (
            "{part}: la ficha no dice si tiene ánodo. Mire cuando el tapón esté fuera y anote en"
            " la ficha de qué es su tanque."
        ),
        "goes down": (
            "{part}: una lectura posterior dice que la varilla de ánodo está menos gastada que en"
            " una anterior. O una de las dos está mal, o nadie anotó que se cambió la varilla:"
            " mírela de nuevo."
        ),
    }
)
"""What is said of one anode, by key."""

NO_ANODES: Mapping[str, str] = MappingProxyType(
    {
        "aluminum": "{part}: su tanque es de aluminio y no tiene ánodo.",
        "stainless steel": "{part}: su tanque es de acero inoxidable y no tiene ánodo.",
        "on-demand heater": "{part}: no tiene tanque, y por eso tampoco ánodo.",
        "hydronic coil": "{part}: no tiene tanque, y por eso tampoco ánodo.",
        "not looked at": "{part}: nadie ha mirado, así que de un ánodo no se sabe nada.",
        "no heater": (
            "Según la ficha esta casa rodante no tiene calentador, y por eso tampoco ánodo."
        ),
    }
)
"""Why a heater has no anode that could be looked at."""

WEAR_PHRASES: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Varillas de ánodo de {coach}, al {day}",
        "heading without day": "Varillas de ánodo de {coach}",
        "assumed": (
            "Antes de toda lectura se supone que una varilla dura de una a cinco temporadas (una"
            " temporada es un año de uso); práctica común. Una temporada gasta de {rate_low} a"
            " {rate_high}."
        ),
        "looks": "Se miró: {looks}.",
        "look": "{day} {share}",
        "new rod": "{day} nueva",
        "nothing known": "nadie ha anotado una lectura",
        "no day": "ningún registro da una fecha",
        "contradiction": "las lecturas se contradicen",
    }
)
"""Headings and pieces."""
