"""Spanish: what stands in the way of a method at a place, and what is looked at on the lot."""

from collections.abc import Mapping
from types import MappingProxyType

HINDRANCES: Mapping[str, str] = MappingProxyType(
    {
        "door too low": "La puerta mide {door_m} de alto y la casa rodante {coach_m}.",
        "door may be too low": "Mida la puerta y la casa rodante: quizá no quepa.",
        "water has nowhere to go": "Allí no se puede dejar correr el agua.",
        "no compressor": "No hay compresor.",
        "no power for the compressor": "No hay corriente para el compresor.",
        "no 12 volts": "La batería está descargada y no hay corriente: la bomba no funciona.",
        "pump cannot run dry": (
            "La bomba no puede funcionar en seco: quite su línea y deje que escurra."
        ),
        "plug in": "Conecte la casa rodante a la corriente.",
        "check battery": "Compruebe que la batería puede con la bomba.",
        "set up generator": "Instale el generador.",
        "generator outside": ("El generador se queda afuera: ningún motor funciona bajo techo."),
        "no warmth": "No hay corriente para calentarla.",
        "bring warm air": "Lleve calefactores y ventiladores.",
        "dump elsewhere": "Los tanques de aguas residuales se vacían en otro lugar.",
        "carry water": "Lleve agua para enjuagar o para probar.",
        "bring basins": "Lleve recipientes para el anticongelante que gotea.",
        "measure slope": "Ponga un nivel en el piso, en los dos sentidos.",
    }
)
"""By key of the hindrance."""

PRECONDITIONS: Mapping[str, str] = MappingProxyType(
    {
        "already frozen": "Mire si algo ya se congeló: entonces primero se descongela.",
        "already frozen: wrong": "Se congeló: primero descongele, sin bomba y sin aire.",
        "keys": "Vea que estén todas las llaves de cerraduras.",
        "keys: wrong": "Consiga las llaves de cerraduras que faltan.",
        "slides": (
            "Vea que las secciones extensibles estén afuera: hay paneles detrás. Las secciones y"
            " los escalones prensan."
        ),
        "slides: wrong": (
            "Saque las secciones extensibles: hay paneles detrás. Las secciones y los escalones"
            " prensan."
        ),
        "battery": "Vea que la batería mantenga su carga.",
        "battery: wrong": (
            "La batería está descargada: cárguela, o conecte la casa rodante a la corriente."
        ),
        "battery frozen": (
            "Una batería descargada con ácido líquido se congela cerca de {freezes_degC}: mírela"
            " antes de cargarla o de pasarle corriente."
        ),
        "waste tanks": "Vea que los tanques de aguas residuales estén vacíos.",
        "waste tanks: wrong": (
            "Vacíe los tanques de aguas residuales en una estación de descarga."
        ),
        "heater hot": "Apague ahora: {part}. Tarda horas en enfriarse antes de que se abra.",
        "heater hot: wrong": "Todavía caliente: {part}. No se abre antes de que se enfríe.",
        "fresh tank": "Vacíe ahora: {part}. {volume_m3} tardan un rato.",
        "fresh tank: wrong": "Todavía con agua: {part}. Vacíe ahora.",
        "appliance": "Vea que no quede nada guardado dentro: {part}.",
        "appliance: wrong": "Saque la ropa, los platos o el hielo: {part}.",
    }
)
"""By key of the precondition; "key: wrong" where it was looked at and found so."""

PLACES: Mapping[str, str] = MappingProxyType(
    {
        "at": "En {place}: {more} más que en un taller con todo. {told}",
        "at, no longer": "En {place}.",
        "not at": "No es posible en {place}. {told}",
        "bay": "nave",
        "lot": "patio del taller",
        "yard": "patio de almacenamiento",
        "driveway": "entrada de la casa",
        "before": "Antes de la cita, en el patio del taller",
        "waits": "Hasta {time} sin nadie.",
        "advised": "Solo se aconseja.",
        "assumed": "Lo que nadie ha anotado se toma como suele ser en un lugar así.",
    }
)
"""What is said of a place as a whole."""
