"""Spanish: what to ask and where to look, once a card was read."""

from collections.abc import Mapping
from types import MappingProxyType

QUESTIONS: Mapping[str, str] = MappingProxyType(
    {
        "nobody has looked": "{kind}: ¿tiene? {where}",
        "not looked at": "{part}: ¿de verdad está, y dónde? {where}",
        "no trap": "{part}: no hay ninguna trampa anotada debajo. ¿Hay una? {where}",
        "no way to waste": "{part}: ¿a qué tanque desagua? Siga el tubo de abajo.",
        "trap without a sink": "{part}: ¿qué desagua ahí? Mire justo encima.",
        "toilet without a tank": "{part}: ¿a qué tanque descarga? Mire justo debajo.",
        "no shut-off": (
            "{part}: sin válvula de cierre en su ramal. ¿Hay una? Mire detrás de su puertecita y"
            " donde el ramal sale de la línea principal. Si no hay, deje correr sus dos lados."
        ),
        "no ice maker shut-off": (
            "{part}: sin válvula de cierre en su línea. ¿Hay una? Mire detrás del refrigerador y"
            " debajo del fregadero."
        ),
        "no strainer": (
            "{part}: no hay ningún colador anotado antes. ¿Hay uno? Mire en la entrada de la bomba:"
            " su vaso retiene agua."
        ),
        "tank not known": (
            "{part}: ¿de qué es su tanque, y tiene varilla de ánodo? Lea su etiqueta, o mire su"
            " tapón de drenaje: el hexágono de una varilla es más grande."
        ),
        "several heaters": (
            "Hay {count} calentadores de agua. ¿Tiene cada uno su bypass? Mire los tubos detrás de"
            " cada uno."
        ),
        "no bypass": (
            "{part}: sin bypass anotado. ¿Hay uno? Mire detrás si un tubo va de su lado frío a su"
            " lado caliente. Si no hay, para llenarlo se va todo su volumen en anticongelante."
        ),
        "heater not isolated": (
            "{part}: hay bypass, pero falta: {missing}. ¿La hay? Mire sus tubos. Si no la hay,"
            " todavía puede entrar anticongelante."
        ),
        "no low point": (
            "No hay ningún punto bajo anotado. ¿Hay uno? Mire debajo del piso si hay dos tubos"
            " cortos con tapa, y junto al calentador de agua."
        ),
        "no antifreeze inlet": (
            "No hay manguera ni válvula de entrada de anticongelante anotada. ¿Hay una? Mire en la"
            " entrada de la bomba. Si no hay, la manguera se conecta a la succión de la bomba."
        ),
        "no tank suction": (
            "No hay ninguna válvula anotada entre el tanque de agua potable y la bomba. ¿Hay una?"
            " Siga la entrada de la bomba hasta el tanque. Si no hay, la bomba puede succionar"
            " también del tanque."
        ),
        "valve without role": "{part}: ¿para qué es esta válvula? Siga sus dos tubos.",
        "no site": "¿Dónde pasa el invierno? La ficha no nombra el sitio de almacenamiento.",
        "design low missing": (
            "¿Hasta cuánto baja la temperatura en su sitio? La ficha no da mínima de diseño."
        ),
        "design low implausible": (
            "Una mínima de diseño de {design_low_degC}: ¿es un error de escritura?"
        ),
        "design low above freezing": (
            "Una mínima de diseño de {design_low_degC} está por encima del punto de congelación:"
            " ¿es así?"
        ),
        "no product": "¿Con qué anticongelante se llena? La ficha no nombra ninguno.",
        "heights inconsistent": (
            "{part}: su altura más baja ({lowest_m}) y la más alta ({highest_m}) no concuerdan con"
            " sus extremos. ¿Cuál está mal? Mídalas desde el piso."
        ),
        "sag longer than line": (
            "{part}: mide {length_m}, pero sus alturas piden {needed_m}. ¿Qué dato está mal?"
        ),
        "outside the coach": (
            "{part}: a {along_m} del frente, y la casa rodante mide {length_m}. ¿Qué dato está mal?"
        ),
        "vin has a wrong shape": (
            "El número de vehículo {vin} no tiene la forma correcta. Léalo de nuevo en su placa."
        ),
        "vin check digit": (
            "El número de vehículo {vin} tiene un error: su dígito verificador debería ser"
            " {expected}. Léalo de nuevo en su placa."
        ),
    }
)
"""What ``coach check`` asks; a plan says the same as a statement, in ``FINDINGS``."""

WHERE: Mapping[str, str] = MappingProxyType(
    {
        "any": "Mire a dónde llevan sus líneas.",
        "accumulator": "Busque junto a la bomba de agua un tanque pequeño.",
        "bidet sprayer": "Mire junto al inodoro.",
        "capped tee": "Busque a lo largo de las líneas un ramal tapado.",
        "city inlet": ("Mire en la pared exterior y en el compartimiento de servicios."),
        "dishwasher": "Busque en la cocina una puerta frontal o un cajón.",
        "door dispenser": "Mire en la puerta del refrigerador.",
        "fridge filter": "Mire en el refrigerador, detrás de su rejilla y en su línea.",
        "hydronic coil": (
            "Busque en el compartimiento de calefacción un calentador de refrigerante."
        ),
        "ice maker": "Mire en el congelador, y detrás del refrigerador si hay una línea delgada.",
        "macerator": (
            "Busque en la salida de los tanques de aguas residuales una bomba con manguera."
        ),
        "manifold": "Busque detrás de paneles un bloque con muchas líneas y manijas pequeñas.",
        "membrane filter": "Busque debajo del fregadero filtros con un tanque pequeño.",
        "on-demand heater": (
            "Busque en la pared exterior la puerta de un calentador sin tapón de drenaje."
        ),
        "outside kitchen": "Mire detrás de las puertas grandes de la pared exterior.",
        "outside shower": "Mire detrás de las puertas pequeñas de la pared exterior.",
        "prepared stub": "Busque en el clóset y detrás del refrigerador líneas con tapa.",
        "recirculating diverter": (
            "Busque en la ducha un botón que regresa el agua que aún está fría."
        ),
        "service panel": (
            "Busque en el compartimiento de servicios un panel con manijas y conexiones de"
            " manguera."
        ),
        "softener": (
            "Busque en el compartimiento de servicios un tanque alto en la línea de suministro."
        ),
        "spray port": "Busque en la pared exterior y junto al inodoro una conexión rápida.",
        "tank rinse": (
            "Busque en la pared exterior una segunda conexión de manguera, junto al tanque de aguas"
            " negras."
        ),
        "tempering valve": "Mire en la salida caliente del calentador de agua.",
        "three-way valve": "Mire en la entrada de la bomba y detrás del calentador de agua.",
        "tub": "Mire en cada baño.",
        "UV sleeve": "Busque junto a los filtros un tubo de acero con un cable.",
        "washer": "Busque en los clósets una lavadora, o sus dos válvulas.",
        "whirlpool": "Busque boquillas en la tina.",
        "trap below kitchen tap": "Mire en el gabinete de abajo.",
        "trap below lavatory tap": "Mire en el gabinete de abajo.",
        "trap below shower": "Mire debajo del piso, y detrás de un panel al lado.",
        "trap below tub": "Mire detrás de un panel en su extremo, y debajo del piso.",
    }
)
"""Where a kind of fitting is found, as coaches are usually built; common practice."""

SISTER: Mapping[str, str] = MappingProxyType(
    {
        "written": "{file}: la ficha de {coach}, hecha a partir de la ficha de {sister}.",
        "ask": "Pregunte o mire antes de confiar en ella:",
        "head": (
            "Hecha a partir de la ficha de {sister}, una casa rodante con la misma distribución."
        ),
        "head next": (
            "Lo que allí se midió cuenta aquí como menos cierto. Pregunte antes de confiar en ella:"
        ),
        "number": "Su número y su nombre: ¿están bien en la ficha?",
        "vin": "Su número de vehículo: léalo en la placa.",
        "year": (
            "Su año de modelo: ¿es el mismo? Los fabricantes cambian las líneas de un año a otro."
        ),
        "site": "Su sitio: ¿dónde pasa el invierno?",
        "design low": "Su mínima de diseño: ¿hasta cuánto baja la temperatura en ese sitio?",
        "product": "Su anticongelante: ¿se llena con el mismo?",
        "outside shower shut-off": (
            "Su ducha exterior: ¿hay una válvula de cierre? Mire detrás de su puertecita."
        ),
        "filters": "Filtros: ¿alguien agregó uno, o quitó uno?",
        "heater": ("Su calentador de agua: ¿es de la misma marca y tamaño, y tiene su bypass?"),
        "toilet": "Su inodoro: ¿es del mismo tipo?",
        "appliances": ("Máquina de hielo, lavadora, lavavajillas: ¿están instalados los mismos?"),
        "absent": "Lo que la otra casa rodante no tiene: ¿a esta también le falta?",
    }
)
"""What is said of a sister coach's card."""

HISTORY: Mapping[str, str] = MappingProxyType(
    {
        "none": "{coach}: esta ficha nunca se ha reemplazado.",
        "none readable": "{coach}: no se puede leer ninguna ficha anterior.",
        "heading one": "{coach}: 1 ficha anterior, la más antigua primero.",
        "heading many": "{coach}: {count} fichas anteriores, la más antigua primero.",
        "entry": "{day}  {why}: {count} hasta la siguiente.",
        "unreadable": ("{day}  {why}: esta, o la siguiente, no es una ficha que se pueda leer."),
        "damaged": (
            "Renglón {lines} de {file}: no se puede leer, se cortó la escritura. Los demás están"
            " enteros."
        ),
    }
)
"""What is said of the earlier selves of a card."""
