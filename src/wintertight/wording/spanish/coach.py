"""Spanish: what the parts of a coach are called, and what about its card deserves a word."""

from collections.abc import Mapping
from types import MappingProxyType

KINDS: Mapping[str, str] = MappingProxyType(
    {
        "line": "línea",
        "tee": "conexión en T",
        "manifold": "colector",
        "capped tee": "T con tapa",
        "prepared stub": "salida preparada para más tarde",
        "fresh tank": "tanque de agua potable",
        "antifreeze hose": "manguera de anticongelante",
        "strainer": "colador de la bomba",
        "demand pump": "bomba de agua",
        "filter housing": "portafiltro",
        "accumulator": "tanque acumulador",
        "pressure regulator": "regulador de presión",
        "supply hose": "manguera de suministro",
        "outside filter": "filtro de agua exterior",
        "softener": "suavizador de agua",
        "UV sleeve": "funda de lámpara UV",
        "membrane filter": "filtro de membrana",
        "city inlet": "toma de agua de red",
        "ball valve": "válvula",
        "check valve": "válvula de retención",
        "three-way valve": "válvula de tres vías",
        "service panel": "panel de servicio",
        "tempering valve": "válvula termostática",
        "low point": "punto bajo",
        "tank heater": "calentador de agua",
        "on-demand heater": "calentador de agua de paso",
        "hydronic coil": "serpentín hidrónico",
        "kitchen tap": "llave de cocina",
        "lavatory tap": "llave de lavabo",
        "shower": "ducha",
        "tub": "tina",
        "outside shower": "ducha exterior",
        "outside kitchen": "cocina exterior",
        "spray port": "toma para rociador",
        "whirlpool": "tina de hidromasaje",
        "recirculating diverter": "desviador de recirculación",
        "bidet sprayer": "rociador de bidé",
        "gravity toilet": "inodoro",
        "vacuum toilet": "inodoro de vacío",
        "macerating toilet": "inodoro triturador",
        "cassette toilet": "inodoro de casete",
        "ice maker": "máquina de hielo",
        "door dispenser": "despachador de agua en la puerta del refrigerador",
        "fridge filter": "filtro de agua del refrigerador",
        "washer": "lavadora",
        "dishwasher": "lavavajillas",
        "trap": "trampa",
        "gray tank": "tanque gris",
        "black tank": "tanque negro",
        "tank rinse": "enjuague del tanque",
        "macerator": "bomba trituradora",
    }
)

ROLES: Mapping[str, str] = MappingProxyType(
    {
        "tank suction": "válvula del tanque de agua potable",
        "antifreeze inlet": "válvula de la manguera de anticongelante",
        "heater cold": "válvula de entrada al calentador",
        "heater hot": "válvula de salida del calentador",
        "heater bypass": "válvula de bypass",
        "branch shut-off": "válvula de cierre",
        "pump suction": "válvula a la entrada de la bomba",
    }
)
"""What a valve is called that has no name of its own."""

NAMES: Mapping[str, str] = MappingProxyType(
    {
        "hot": "{part}, caliente",
        "cold": "{part}, fría",
        "sump": "{part}, sumidero",
        "jets": "{part}, boquillas",
        "mould": "{part}, molde",
        "inside": "{part}, tanque",
        "one of several": "{part} ({id})",
        "jug": "garrafa recién abierta",
        "line": "línea {id}",
        "any": "cualquier {part}",
    }
)
"""How a part is pointed out."""

SOURCES_OF_HEAT: Mapping[str, str] = MappingProxyType(
    {
        "burner": "quemador",
        "element": "resistencia eléctrica",
        "coolant": "refrigerante del motor",
        "heat": "toda fuente de calor",
    }
)

FINDINGS: Mapping[str, str] = MappingProxyType(
    {
        "nobody has looked": "{kind}: nadie ha mirado si esta casa rodante tiene.",
        "not looked at": "{part}: está en la ficha, pero nadie lo ha mirado.",
        "no trap": (
            "{part}: no hay ninguna trampa anotada debajo. Una trampa de la que nadie sabe no"
            " recibe anticongelante."
        ),
        "no way to waste": "{part}: la ficha no dice a qué tanque desagua.",
        "no shut-off": (
            "{part}: sin válvula de cierre en su ramal. Se olvida a menudo: deje correr sus dos"
            " lados."
        ),
        "several heaters": ("Hay {count} calentadores de agua; mire si cada uno tiene su bypass."),
        "no bypass": "{part}: sin bypass. Para llenarlo se va todo su volumen en anticongelante.",
        "heater not isolated": (
            "{part}: hay bypass, pero falta: {missing}. Todavía puede entrar anticongelante."
        ),
        "no low point": ("No hay ningún punto bajo anotado. Sin él queda mucha agua por empujar."),
        "no antifreeze inlet": (
            "No hay manguera ni válvula de entrada de anticongelante anotada: la manguera se"
            " conecta a la succión de la bomba."
        ),
        "no tank suction": (
            "No hay ninguna válvula anotada entre el tanque de agua potable y la bomba: la bomba"
            " puede succionar también del tanque."
        ),
        "valve without role": "{part}: la ficha no dice para qué es esta válvula.",
        "no site": "La ficha no nombra el sitio de almacenamiento.",
        "design low missing": (
            "La ficha no da mínima de diseño: ¿hasta cuánto baja la temperatura en su sitio?"
        ),
        "design low implausible": (
            "Una mínima de diseño de {design_low_degC}: ¿es un error de escritura?"
        ),
        "design low above freezing": (
            "Una mínima de diseño de {design_low_degC} está por encima del punto de congelación."
        ),
        "no product": "La ficha no nombra ningún anticongelante.",
        "heights inconsistent": (
            "{part}: su altura más baja ({lowest_m}) y la más alta ({highest_m}) no concuerdan con"
            " sus extremos."
        ),
        "sag longer than line": (
            "{part}: mide {length_m}, pero sus alturas piden {needed_m}. Uno de los dos datos está"
            " mal."
        ),
        "outside the coach": ("{part}: a {along_m} del frente, y la casa rodante mide {length_m}."),
        "vin has a wrong shape": "El número de vehículo {vin} no tiene la forma correcta.",
        "vin check digit": (
            "El número de vehículo {vin} tiene un error: su dígito verificador debería ser"
            " {expected}."
        ),
    }
)
