"""Spanish: what is said of each part, on what it stands, and what would settle it."""

from collections.abc import Mapping
from types import MappingProxyType

CLAIMS: Mapping[str, str] = MappingProxyType(
    {
        "filled": "con anticongelante",
        "drained": "por vaciado",
        "swept": "por barrido con aire",
        "kept warm": "con calor",
        "removed": "por desmontaje",
        "unproven": "sin comprobar",
    }
)

REASONS: Mapping[str, str] = MappingProxyType(
    {
        "nothing there": "No queda nada dentro.",
        "room in the air": (
            "{full} de líquido, el resto es aire: lo que queda tiene lugar para crecer."
        ),
        "does not freeze": "Se mantiene líquido hasta {freezing_point_degC}.",
        "freezes": "Se congela a {freezing_point_degC}, y ahí dentro nada cede.",
        "slush is harmless": (
            "Puede volverse hielo pastoso; no revienta nada hasta {burst_limit_degC}."
        ),
        "slush bursts": (
            "Su hielo pastoso revienta lo que lo contiene por debajo de {burst_limit_degC}."
        ),
        "slush bursts: plain water": "Contiene agua sola, y esta revienta lo que la contiene.",
        "slush bursts: ice": (
            "Más de {ice} se vuelve hielo, y el hielo revienta lo que lo contiene."
        ),
        "rating holds": "Sin diluir, y su etiqueta promete {rating_degC}.",
        "rating is too warm": "Su etiqueta no promete más que {rating_degC}.",
        "no rating": "La etiqueta del producto no da ninguna temperatura para esto.",
        "diluted product": (
            "Solo {product} de lo que hay es producto, y nadie sabe qué contiene ese producto."
        ),
        "blend": (
            "Hay dos tipos de anticongelante mezclados; para eso no hay ninguna tabla impresa."
        ),
        "no burst curve": (
            "Se vuelve hielo pastoso, y ninguna tabla impresa dice qué revienta ese hielo."
        ),
        "beyond the table": (
            "Las tablas impresas terminan antes de esta mezcla, o antes de este frío."
        ),
        "air from the pump": (
            "El aire detrás de una bomba pequeña pasa por encima del agua que hay ahí."
        ),
        "maker's steps": "Se siguieron los pasos de su propio fabricante.",
        "may not have drained": (
            "Puede tener agua: que se vacíe depende de una pulgada de altura."
        ),
        "may not have been swept": "Puede tener agua: al aire le falta poco para ser suficiente.",
        "may be cracked": "Puede haberse congelado, y nadie sabe todavía si aguantó.",
        "water has run since": (
            "Después corrió agua por ahí: nadie puede decir qué contiene ahora."
        ),
        "kept warm": "Contiene agua, y aguanta solo mientras su espacio siga caliente.",
        "no model": "Todavía no hay un cálculo para una parte así.",
        "not looked at": "Está en la ficha, pero nadie ha mirado.",
        "nobody has looked": "Nadie ha mirado si esta casa rodante tiene algo así.",
        "too few draws": (
            "Aguanta calculado con prudencia, pero solo en {held_in} de las casas rodantes que esta"
            " ficha podría describir."
        ),
        "product may be weaker": (
            "Aguanta si el producto es tan fuerte como dice su etiqueta, pero solo en {held_in} de"
            " los casos si eso es exacto al 2 %."
        ),
        "reading is too weak": (
            "Una lectura dice {share} de glicol, {weakest} como mínimo: demasiado débil para este"
            " frío."
        ),
        "weaker than the jug": (
            "Una lectura dice {share} de la concentración de la garrafa recién abierta, {weakest}"
            " como mínimo: demasiado débil para este frío."
        ),
        "freezes too warm": (
            "Una lectura dice que se congela a {frozen_at_degC}: no alcanza para este frío."
        ),
        "sample turned to slush": (
            "Una muestra era hielo pastoso a {frozen_at_degC}: demasiado débil para este frío."
        ),
        "sample froze solid": (
            "Una muestra se congeló por completo a {frozen_at_degC}: demasiado débil para este"
            " frío."
        ),
        "not pink": "No se veía rosado: nadie sabe si el producto llegó hasta ahí.",
        "observed otherwise": (
            "Cronómetro, garrafas o muestras apuntan a {cause}: entonces no aguantaría."
        ),
    }
)
"""By key of the reason; "key: word" is said instead where a parameter of that name is there."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "not reached": (
            "Ningún paso mueve lo que contiene: vacíe a mano, o deje correr desde su salida."
        ),
        "freezes": "Vacíe, o abra para que algo ceda, o llene con más concentración.",
        "freezes: too weak": "Vacíe, o abra para que algo ceda.",
        "slush bursts: too weak": "Tome un producto más fuerte, o vacíe.",
        "slush bursts: plain water": "Deje correr desde su salida, o vacíe a mano.",
        "slush bursts": "Deje correr más tiempo, o tome un producto más fuerte.",
        "rating is too warm": "Tome un producto con una temperatura más fría, o vacíe.",
        "no rating": ("Tome un producto cuya etiqueta dé una temperatura, o su parte de glicol."),
        "diluted product": (
            "Tome un producto cuya etiqueta dé su parte de glicol, o deje correr hasta que salga"
            " sin diluir."
        ),
        "blend": "Enjuague con un solo producto.",
        "no burst curve": "Tome un producto de propilenglicol, o vacíe.",
        "beyond the table": "Vacíe, o mantenga con calor.",
        "air from the pump": "Llene, o sople con aire suficiente.",
        "may not have drained": "Abra en su punto más bajo y vea que no salga nada.",
        "may not have been swept": "Sople con más aire, o deje correr anticongelante.",
        "may be cracked": (
            "Descongele, mire y pruebe con poca presión; después haga un plan nuevo."
        ),
        "water has run since": "Deje correr anticongelante otra vez.",
        "kept warm": "Lea ahí un termómetro todo el invierno, o vacíe.",
        "no model": ("Siga los pasos de su fabricante, y que una persona firme que se hicieron."),
        "not looked at": "Mire, y anote en la ficha lo que hay ahí.",
        "nobody has looked": "Mire; anote en la ficha lo que hay, y lo que no hay.",
        "too few draws": (
            "Mida las líneas de su recorrido y anote sus longitudes, o deje correr más tiempo del"
            " que pide la hoja."
        ),
        "product may be weaker": "Tome un producto más fuerte, o vacíe.",
        "reading is too weak": "Deje correr más producto nuevo, y lea de nuevo.",
        "weaker than the jug": (
            "Deje correr más producto nuevo, y lea de nuevo contra la garrafa."
        ),
        "freezes too warm": "Deje correr más producto nuevo, y congele de nuevo una muestra.",
        "sample turned to slush": (
            "Deje correr más producto nuevo, y congele de nuevo una muestra."
        ),
        "sample froze solid": ("Deje correr más producto nuevo, y congele de nuevo una muestra."),
        "observed otherwise": "Vea arriba cómo saberlo; si es así, corríjalo.",
        "not pink": (
            "Vea qué hay en la garrafa, deje correr hasta que el color se mantenga, y haga una"
            " lectura."
        ),
    }
)
"""What to do about a part that is not proven, by key of the reason."""

EVIDENCE: Mapping[str, str] = MappingProxyType(
    {
        "observed otherwise": "Cronómetro, garrafas o muestras apuntan a {cause}.",
        "content as found": "Ningún paso del plan mueve lo que había dentro al llegar.",
        "content flowed": (
            "Calculado a partir de lo que corre por dentro; cuenta su tramo más débil."
        ),
        "content drained": "Calculado a partir de alturas y aberturas: se vacía por sí mismo.",
        "content swept": "Calculado a partir del aire que se empuja por dentro.",
        "content emptied": "Se abrió y se vació a mano.",
        "content sweep doubtful": (
            "Dentro, el aire va casi tan rápido como piden los criterios impresos."
        ),
        "content drain uncertain": "Las alturas de la ficha no deciden si se vacía.",
        "length guessed": (
            "Su longitud es una estimación, {spread} más o menos; se tomó el peor extremo."
        ),
        "heights as on the card": "Las alturas se toman como las da la ficha.",
        "no model": "Se supone lleno de agua: no hay un cálculo para esto.",
        "not looked at": "Se supone lleno de agua: nadie ha mirado.",
        "nobody has looked": "Se supone que está y lleno de agua: nadie ha mirado.",
        "content removed": "Se desmontó de la casa rodante.",
        "may be cracked": "Se supone que puede estar agrietado hasta que se pruebe.",
        "water has run since": "Se supone lleno de agua: después corrió agua.",
        "heat stays on": "Se supone calentado todo el invierno.",
        "maker's steps": "Una persona marcó como hechos los pasos de su propio fabricante.",
        "done as recorded": "Una persona lo marcó como hecho.",
        "reading glycol share": "Una lectura dio {share} de glicol; {weakest} como mínimo.",
        "glycol scale misreads": (
            "Una escala de glicol lee mal este producto, así que {share} en ella no dice nada de su"
            " concentración: compare con una muestra de la garrafa recién abierta, o congele una"
            " muestra."
        ),
        "reading freezing point": "Se leyó un punto de congelación de {freezing_point_degC}.",
        "reading against jug": (
            "Contra una muestra de la garrafa recién abierta tiene {share} de su concentración;"
            " {weakest} como mínimo."
        ),
        "reading freeze sample": (
            "Una muestra siguió líquida a {read_degC}: se congela a {freezing_point_degC} o más"
            " frío."
        ),
        "sample slush": "Una muestra era hielo pastoso a {frozen_at_degC}.",
        "sample solid": "Una muestra se congeló por completo a {frozen_at_degC}.",
        "reading pressure": "Se leyó una presión de {read_Pa}.",
        "reading temperature": "Se leyó una temperatura de {read_degC}.",
        "reading looks pink": (
            "Se veía rosado; eso comprueba poco: a un décimo de la concentración plena, {share}"
            " todavía se ven así."
        ),
        "reading share eaten": "Se miró la varilla de ánodo; eso no dice nada del hielo.",
        "reading not pink": "No se veía rosado.",
        "jug as printed": (
            "La garrafa misma da {share} de glicol, {weakest} como mínimo: se mantiene el {full} de"
            " su etiqueta."
        ),
        "jug weaker": (
            "La garrafa misma da {share} de glicol, menos que el {full} de su etiqueta: lo que"
            " cuenta es {weakest}."
        ),
        "jug freezes": ("La garrafa misma se congela a {freezing_point_degC}, según una lectura."),
        "jug liquid": (
            "Una muestra de la garrafa siguió líquida a {read_degC}: se congela a"
            " {freezing_point_degC} o más frío."
        ),
        "jug slush": "Una muestra de la garrafa era hielo pastoso a {frozen_at_degC}.",
        "jug solid": "Una muestra de la garrafa se congeló por completo a {frozen_at_degC}.",
        "jug not pink": "La garrafa misma no se veía rosada.",
    }
)

KINDS_OF_EVIDENCE: Mapping[str, str] = MappingProxyType(
    {
        "computed": "calculado",
        "measured": "medido",
        "attested": "declarado",
        "assumed": "supuesto",
    }
)

POCKETS: Mapping[str, str] = MappingProxyType(
    {
        "open": "el hielo pastoso tiene a dónde crecer",
        "relieved": "rígido, pero un paso lo abre",
        "sealed": "rígido y cerrado: no debe congelarse, o debe estar vacío",
    }
)

VERDICTS: Mapping[str, str] = MappingProxyType(
    {
        "safe": (
            "Protegida según el plan hasta {low}, hechos todos los pasos; sin validez si corre"
            " agua."
        ),
        "safe as recorded": (
            "Protegida según lo registrado hasta {low}; sin validez si corre agua."
        ),
        "gap": "NO protegida hasta {low}: el hielo reventaría {count}: {parts}.",
        "gap and more": (
            "NO protegida hasta {low}: el hielo reventaría {count}, entre ellas: {parts}."
        ),
        "unproven": "Sin comprobar hasta {low}: nadie puede responder por {count}: {parts}.",
        "unproven and more": (
            "Sin comprobar hasta {low}: nadie puede responder por {count}, entre ellas: {parts}."
        ),
        "refused": "El paso {step} se rechaza como está. {hazard}",
        "refused as recorded": "Fuera de orden, según lo registrado: «{step}» {hazard}",
        "too weak": "No se ha mostrado que {product}, ni sin diluir, proteja hasta {low}.",
        "never clear": "Aquí se desistió de llegar a la concentración plena: {parts}.",
    }
)

OUTCOMES: Mapping[str, str] = MappingProxyType(
    {
        "same": "Si se omite, no cambia nada.",
        "gap": "Si se omite, el hielo reventaría: {parts}; agua que queda ahí: {water_m3}.",
        "unproven": "Si se omite, nadie podría responder por: {parts}.",
        "hazard": "Nunca omita esto: {hazard}",
    }
)
"""What comes of leaving a step out."""

NULLS: Mapping[str, str] = MappingProxyType(
    {
        "no liquid": "no contiene líquido",
        "product unknown": "la etiqueta no dice qué contiene el producto",
        "blend": "hay dos tipos de anticongelante mezclados",
        "beyond the table": "las tablas impresas terminan antes",
        "not known": "nadie sabe qué contiene",
        "several parts": "este paso se hace en varias partes; vea 'parts'",
        "no part": "este paso no se hace en ninguna parte de la casa rodante",
        "no setting": "en este paso no se ajusta nada",
        "nothing runs": "en este paso no se deja correr ni se vierte ningún fluido",
        "no outlet": "en este paso no se deja correr ninguna salida hasta el color",
        "no colour": "según el cálculo aquí no sale color",
        "not to be used": "este producto no se debe usar aquí",
        "nothing freezes": "con este frío no queda nada que se congele y dañe",
        "nothing holds": "de ninguna parte se ha mostrado que aguante",
        "nothing drawn": "lo que aguanta no depende de lo que se sortea",
        "not asked": "no se calculó qué pasa si se omite este paso",
    }
)
"""Why a value is null in a plan for programs."""
