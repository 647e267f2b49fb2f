"""Spanish: what is asked about a coach, where to look, and why it matters."""

from collections.abc import Mapping
from types import MappingProxyType

QUESTIONS: Mapping[str, str] = MappingProxyType(
    {
        "shape": "¿Qué tipo de casa rodante es?",
        "length": "¿Cuánto mide de largo, de la defensa al enganche?",
        "design low": "¿Hasta cuánto baja la temperatura donde está?",
        "heater": "¿Qué calienta el agua?",
        "bypass": "¿Qué válvulas hay en el calentador de agua?",
        "baths": "¿Cuántos baños hay?",
        "appliances": "¿Cuáles de estos aparatos llevan agua?",
        "outside": "¿Qué lleva agua por fuera?",
        "antifreeze inlet": "¿Por dónde llega el anticongelante a la bomba?",
        "water treatment": "¿Qué filtra o trata el agua?",
        "toilet": "¿Qué tipo de inodoro hay?",
        "tub": "¿Hay tina?",
        "sprayer": "¿Hay un rociador de mano junto al inodoro?",
        "dead ends": "¿Hay líneas que no llevan a nada?",
        "mixing": "¿Algo mezcla caliente y fría antes de las llaves?",
        "waste side": "¿Qué hay en los tanques de aguas residuales?",
        "fridge filter": "¿Hay un filtro para el agua del refrigerador?",
        "accumulator": "¿Hay un tanque acumulador junto a la bomba?",
        "branches": "¿Cómo se reparten las líneas?",
        "low points": "¿Qué desagües de punto bajo hay?",
        "city inlet": "¿Hay una toma de agua de red?",
        "outside shut-off": "¿Tiene la ducha exterior su propia válvula de cierre?",
        "fridge shut-off": "¿Tiene la línea del refrigerador su propia válvula de cierre?",
        "galley slide": "¿Va la cocina en una sección extensible?",
        "belly": "¿Qué hay debajo del piso?",
        "pipe": "¿De qué son las líneas de agua?",
        "heater tank": "¿De qué es el tanque del calentador?",
        "on the hose": "¿Qué se queda en la manguera de suministro?",
        "fresh tank": "¿Cuánto le cabe al tanque de agua potable?",
        "go on": "Eso es todo por teléfono. ¿Seguir ahora con el recorrido por la casa rodante?",
        "write": "¿Escribir la ficha así?",
        "write: again": (
            "¿Escribir {file} de nuevo? Lo que ahí se midió, y cada nota, se conserva."
        ),
    }
)
"""What is asked, and what is asked at the two crossroads."""

WHERE: Mapping[str, str] = MappingProxyType(
    {
        "shape": "Pregunte por la que más se le parece; el nombre del folleto no importa.",
        "length": "Lo dice el título o la placa junto a la puerta. Basta con aproximar: 27 ft.",
        "design low": "La noche más fría que debe aguantar, no la de costumbre: -20F.",
        "heater": "La puerta con rejilla por fuera: adentro, una placa dice los galones.",
        "bypass": "Abra el panel detrás del calentador, a menudo bajo una cama o un cajón.",
        "baths": "Cuente cuartos con lavabo. Un inodoro con lavabo y sin ducha es medio baño.",
        "appliances": "Abra el congelador: ¿hay una charola con manguera? Mire junto al fregadero.",
        "outside": "Puertas pequeñas en la pared exterior, tras las ruedas traseras o en el toldo.",
        "antifreeze inlet": "En la bomba: siga la línea del lado del tanque de agua potable.",
        "water treatment": "Bajo el fregadero, en la bomba y donde entra la manguera.",
        "toilet": "Pise el pedal: ¿cae, succiona o zumba? Uno de casete tiene su propia compuerta.",
        "tub": "Mire en la ducha. La de hidromasaje tiene boquillas y una bomba tras un panel.",
        "sprayer": "En la pared junto al inodoro: una manguera corta con gatillo.",
        "dead ends": "Tras los gabinetes, donde cabría una lavadora, y debajo de cada lavabo.",
        "mixing": "Bajo la ducha y tras el calentador: una perilla con escala, o un botón.",
        "waste side": "Junto a las válvulas de descarga: una entrada para enjuagar, o una bomba.",
        "fridge filter": "Un cartucho en el refrigerador, tras su rejilla, o en la línea de atrás.",
        "accumulator": "Un tanque pequeño de acero o plástico en la bomba, como un pan de caja.",
        "branches": "En la bomba: ¿muchas líneas en un bloque, o una línea que se divide?",
        "low points": "Bajo el chasis: tubos cortos con tapa o válvula, a menudo rojo y azul.",
        "city inlet": "Por fuera, casi siempre del lado del camino: donde se enrosca la manguera.",
        "outside shut-off": "Siga las líneas tras la caja de la ducha, adentro: cama o asiento.",
        "fridge shut-off": "Una válvula pequeña tras la rejilla del refrigerador o el fregadero.",
        "galley slide": "¿Se mueve el fregadero cuando sale la sección extensible?",
        "belly": "Acuéstese y mire: ¿una lámina completa, o tubos a la vista? ¿Hay aire tibio?",
        "pipe": "Bajo el fregadero: ¿qué dice el tubo? El gris puede ser PB, y también PEX.",
        "heater tank": "El tapón de abajo: en un tanque de acero cuelga de él una varilla larga.",
        "on the hose": "En el compartimiento de la manguera y en la toma.",
        "fresh tank": "En el tanque o en los papeles: 40 gal.",
        "go on": "Puede parar: lo que nadie ha mirado se queda abierto.",
        "write": "< regresa a la última pregunta.",
    }
)
"""Where to look, in one line."""

WHY: Mapping[str, str] = MappingProxyType(
    {
        "shape": (
            "Dice dónde están probablemente tanque, calentador, cocina y baño. Sin esto todo se"
            " supone como en un remolque largo con literas."
        ),
        "length": (
            "Las líneas más largas tienen más agua, llevan más anticongelante y tardan más en"
            " quedar sin agua."
        ),
        "design low": (
            "El anticongelante que aguanta a cero revienta tubos a treinta bajo cero. El plan se"
            " hace para esta noche."
        ),
        "heater": (
            "Un tanque se vacía y se deja en bypass. Un calentador de paso y un serpentín llevan"
            " poca agua y tienen los pasos de su propio fabricante."
        ),
        "bypass": (
            "Sin bypass también se llena el tanque, y se lleva todos sus galones en anticongelante"
            " antes de que la primera llave caliente muestre color."
        ),
        "baths": "Cada baño es un lavabo, una ducha, un inodoro, y trampas debajo.",
        "appliances": (
            "Cada uno tiene válvula y manguera propias, que ninguna llave puede vaciar."
        ),
        "outside": "Lo primero que se congela, y se olvida a menudo: nadie lo ve desde adentro.",
        "antifreeze inlet": (
            "Dice qué hay que girar. Si no hay entrada, se quita la línea de la bomba y en su lugar"
            " se pone una manguera."
        ),
        "water treatment": (
            "Un filtro retiene un cuarto de galón de agua, y absorbe anticongelante si se deja"
            " puesto."
        ),
        "toilet": "Su válvula es lo primero que se agrieta. Cada tipo se descarga de otra manera.",
        "tub": (
            "La de hidromasaje guarda agua en sus boquillas y en su bomba; una tina tiene su propia"
            " salida."
        ),
        "sprayer": "Su manguera guarda agua detrás de un gatillo en el que nadie piensa.",
        "dead ends": "Donde nada se abre, nada corre: lo que está ahí se queda, y revienta.",
        "mixing": (
            "Un mezclador o un desviador puede retener agua caliente mientras la llave fría ya da"
            " color pleno."
        ),
        "waste side": (
            "Una línea de enjuague y una bomba trituradora guardan agua que ninguna llave alcanza."
        ),
        "fridge filter": "Retiene agua, y el cartucho debe salir.",
        "accumulator": "Se traga anticongelante y después devuelve agua, cuando nadie mira.",
        "branches": (
            "En un colector cada llave tiene su propia línea, que se deja correr por separado."
        ),
        "low points": "Lo que se vacía ahí no hay que empujarlo: ahorra galones.",
        "city inlet": "Una válvula de retención guarda un trago de agua detrás de la malla.",
        "outside shut-off": (
            "Cerrada, no deja llegar anticongelante a la ducha, y deja el agua dentro."
        ),
        "fridge shut-off": (
            "Cerrada, no llega nada a la máquina de hielo por más que corran las otras llaves."
        ),
        "galley slide": "Sus líneas cuelgan en un bucle bajo el piso, y un bucle no se vacía.",
        "belly": "Decide cuánto tardan en congelarse las líneas de debajo del piso.",
        "pipe": "El material fija el diámetro interior, y con él los galones.",
        "heater tank": (
            "Un tanque de acero tiene una varilla que se gasta, y se mira mientras el tapón está"
            " fuera."
        ),
        "on the hose": (
            "Un regulador o un filtro que se queda afuera se agrieta en su primera noche fría."
        ),
        "fresh tank": (
            "Dice cuánto tarda en vaciarse, y lo que queda dentro debilita el anticongelante."
        ),
        "go on": (
            "En el recorrido se mira el resto. Hasta entonces un plan da esas partes por sin"
            " comprobar; nunca las da por ausentes."
        ),
        "write": (
            "De la ficha sale cada plan. Se puede hacer de nuevo cuando se sepa más: el mismo"
            " comando sigue desde aquí."
        ),
    }
)
"""Why it matters, in a sentence or two."""

SUBJECTS: Mapping[str, str] = MappingProxyType(
    {
        "shape": "tipo de casa rodante",
        "length": "longitud",
        "design low": "noche más fría",
        "heater": "calentador de agua",
        "bypass": "bypass del calentador",
        "baths": "baños",
        "appliances": "aparatos con agua",
        "outside": "agua por fuera",
        "antifreeze inlet": "entrada del anticongelante",
        "water treatment": "tratamiento del agua",
        "toilet": "inodoro",
        "tub": "tina",
        "sprayer": "rociador junto al inodoro",
        "dead ends": "líneas que no llevan a nada",
        "mixing": "mezcla de caliente y fría",
        "waste side": "en los tanques de aguas residuales",
        "fridge filter": "filtro del refrigerador",
        "accumulator": "tanque acumulador",
        "branches": "cómo se reparten las líneas",
        "low points": "desagües de punto bajo",
        "city inlet": "toma de agua de red",
        "outside shut-off": "válvula de cierre de la ducha exterior",
        "fridge shut-off": "válvula de cierre del refrigerador",
        "galley slide": "cocina en sección extensible",
        "belly": "debajo del piso",
        "pipe": "material de las líneas",
        "heater tank": "material del tanque del calentador",
        "on the hose": "lo que queda en la manguera",
        "fresh tank": "tamaño del tanque de agua potable",
    }
)
"""What a question is about, in a list."""
