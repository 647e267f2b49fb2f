"""Spanish: the choices that are offered about a coach, and what is said between the questions."""

from collections.abc import Mapping
from types import MappingProxyType

CHOICES: Mapping[str, str] = MappingProxyType(
    {
        "shape: tent trailer": "remolque de lona plegable",
        "shape: teardrop": "remolque gota",
        "shape: truck camper": "camper sobre camioneta",
        "shape: short travel trailer": "remolque de viaje corto",
        "shape: long bunkhouse trailer": "remolque largo con literas",
        "shape: rear-kitchen trailer": "remolque con cocina trasera",
        "shape: fifth wheel, one bath": "quinta rueda, un baño",
        "shape: fifth wheel, two baths": "quinta rueda, dos baños",
        "shape: camper van": "van camper",
        "shape: cab-over motorhome": "motorhome con cama sobre la cabina",
        "shape: rear-engine motorhome": "motorhome con motor trasero",
        "shape: toy hauler": "remolque con garaje (toy hauler)",
        "shape: park model": "casa de parque (park model)",
        "heater: tank of 6 gal": "tanque de 6 gal",
        "heater: tank of 10 gal": "tanque de 10 gal",
        "heater: tank of 16 gal": "tanque de 16 gal",
        "heater: on-demand heater": "calentador de paso, sin tanque",
        "heater: hydronic coil": "serpentín hidrónico, con calefacción o motor",
        "heater: no heater": "ninguno, sin calentador",
        "bypass: three valves": "tres válvulas",
        "bypass: one valve and checks": "una válvula, y válvulas de retención que hacen el resto",
        "bypass: no bypass": "sin bypass",
        "baths: one bath": "un baño",
        "baths: two baths": "dos baños",
        "baths: one and a half": "uno y medio",
        "baths: no bath": "ninguno, sin baño",
        "appliances: ice maker": "máquina de hielo",
        "appliances: door dispenser": "despachador en la puerta del refrigerador",
        "appliances: dishwasher": "lavavajillas",
        "appliances: washer": "lavadora de ropa",
        "outside: outside shower": "ducha exterior",
        "outside: outside kitchen": "cocina exterior",
        "outside: spray port": "toma para rociador",
        "antifreeze inlet: hose with a valve": "manguera con su propia válvula",
        "antifreeze inlet: three-way valve": "válvula de tres vías",
        "antifreeze inlet: service panel": "panel de servicio en su compartimiento",
        "antifreeze inlet: no inlet": "ninguna entrada",
        "water treatment: filter housing": "portafiltro (con vaso)",
        "water treatment: membrane filter": "filtro de membrana (ósmosis inversa)",
        "water treatment: softener": "suavizador",
        "water treatment: UV sleeve": "lámpara UV",
        "toilet: gravity toilet": "inodoro de gravedad, con pedal",
        "toilet: vacuum toilet": "inodoro de vacío",
        "toilet: macerating toilet": "inodoro triturador, con botón",
        "toilet: cassette toilet": "inodoro de casete",
        "tub: tub": "tina",
        "tub: whirlpool": "hidromasaje, con boquillas",
        "dead ends: capped tee": "T con tapa: un ramal tapado",
        "dead ends: prepared stub": "salida preparada: conexiones para una lavadora que no está",
        "mixing: tempering valve": "válvula termostática en el calentador",
        "mixing: recirculating diverter": "desviador de recirculación: un botón que ahorra agua",
        "waste side: tank rinse": (
            "enjuague del tanque: una entrada de manguera en el tanque negro"
        ),
        "waste side: macerator": "bomba trituradora",
        "branches: tees": "una línea con conexiones en T",
        "branches: manifold": "un colector: una línea para cada llave",
        "low points: cold only": "uno, solo en el lado frío",
        "low points: two": "dos, caliente y frío",
        "low points: none": "ninguno",
        "belly: closed and heated": "cerrado, y caliente por la calefacción",
        "belly: closed": "cerrado, sin calefacción",
        "belly: open": "abierto, tubos a la vista",
        "pipe: PEX": "PEX, se dobla y regresa",
        "pipe: polybutylene": "polibutileno, gris, marcado PB",
        "pipe: copper L": "cobre, tipo L (letra azul, el usual)",
        "pipe: copper M": "cobre, tipo M (letra roja, más delgado)",
        "heater tank: steel with anode": "acero, con varilla de ánodo",
        "heater tank: aluminum": "aluminio",
        "heater tank: stainless steel": "acero inoxidable",
        "on the hose: pressure regulator": "regulador de presión",
        "on the hose: supply hose": "la manguera de suministro",
        "on the hose: outside filter": "filtro exterior",
    }
)
"""What each choice is called, by its question."""

NOT_UNDERSTOOD: Mapping[str, str] = MappingProxyType(
    {
        "nothing typed": "No escribió nada. Si nadie ha mirado, escriba -",
        "no such number": "No hay {typed}. Escriba un número del 1 al {most}.",
        "no such choice": (
            "'{typed}' no está en la lista. Escriba un número del 1 al {most}, o un nombre."
        ),
        "several fit": "'{typed}' podría ser {choices}. Escriba el número.",
        "number or size": "'{typed}' podría ser {choices}. Escriba una palabra del nombre.",
        "one only": "Solo una opción, por favor. Escriba un solo número.",
        "none or some": ("'{typed}' dice ninguno y también algo. Escriba ninguno, o los números."),
        "yes or no": "'{typed}' no es ni sí ni no. Escriba s o n.",
        "unit missing": "¿{typed} de qué? Escríbalo con su unidad, como {example}.",
        "no quantity": (
            "'{typed}' no se puede leer. Escriba un número y su unidad, como {example}."
        ),
        "outside": (
            "{typed} es difícil de creer: se esperaba de {least} a {most_size}. Mire de nuevo."
        ),
        "no way back": "Esta es la primera pregunta; no hay a dónde regresar.",
        "cannot stay open": "Aquí hace falta un sí o un no. Escriba s o n.",
    }
)
"""Why an answer was not understood, and what to type."""

TALK: Mapping[str, str] = MappingProxyType(
    {
        "keys": "?  por qué importa   -  nadie ha mirado   <  atrás   !  lo que ya se sabe",
        "resumed": "Se sigue con {file}.",
        "heading": "Pregunta {number} de {of}, {stage}",
        "stage phone": "por teléfono",
        "stage walk-around": "en el recorrido",
        "choice": "  {number}  {choice}",
        "prompt one": "Número: ",
        "prompt several": "Números, o ninguno: ",
        "prompt yes or no": "s o n: ",
        "prompt quantity": "Con su unidad: ",
        "noted": "Anotado: {subject}: {answer}.",
        "noted open": "Queda abierto: {subject}.",
        "none": "ninguno",
        "yes": "sí",
        "no": "no",
        "known": "Se sabe:",
        "nothing known": "Todavía no se sabe nada.",
        "known line": "  {subject}: {answer}",
        "nothing open": "No queda nada abierto.",
        "open": "Queda abierto: {subjects}.",
        "open kinds": (
            "Nadie ha mirado si hay: {kinds}. Todo plan los da por sin comprobar hasta que alguien"
            " mire; nada de esto se da por ausente."
        ),
        "guessed": (
            "Estimado, como es usual en este tipo de casa rodante: {subjects}. La ficha lo dice, y"
            " por eso los márgenes son más anchos."
        ),
        "no low": (
            "No se sabe cuál es la noche más fría: hay que dársela a cada plan, así: wintertight"
            " plan {file} --low=-20F"
        ),
        "written": "Escrita: {file}. Lo siguiente: wintertight plan {path}{product}{low}",
        "which product": " --product NOMBRE",
        "which low": " --low=-20F",
        "not written": (
            "No se escribió ninguna ficha. Las respuestas están en {file}; el mismo comando sigue."
        ),
        "name": "{shape}, {length}",
        "anew": "se respondió más sobre la casa rodante",
        "head": (
            "Hecha a partir de las respuestas en {file}; las líneas van como es usual en su tipo."
        ),
        "head 2": ("Lo que solo es estimado está marcado así, y lo que nadie ha mirado también."),
    }
)
"""What is said between the questions."""

TYPED: Mapping[str, str] = MappingProxyType(
    {
        "yes": "sí, s",
        "no": "no, n",
        "none": "ninguno, ninguna, ningún, nada, no, n, 0",
        "unseen": "-, nadie ha mirado, no se ha mirado, sin mirar",
        "between": "y, e",
    }
)
"""What people type, parted by commas: accents and capitals do not count."""
