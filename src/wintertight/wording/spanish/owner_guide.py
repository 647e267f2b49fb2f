"""Spanish: the guide for an owner who does the whole job alone."""

from collections.abc import Mapping
from types import MappingProxyType

GUIDE: Mapping[str, str] = MappingProxyType(
    {
        "title": "Guía del propietario {id}",
        "heading": "Guía del propietario",
        "how": "Método: {method}",
        "buy": "Compre y tenga a la mano",
        "check": "Revise primero",
        "off": "No encender",
        "never": "Si una llave nunca da color que se mantenga",
        "never: blow": "Si una salida nunca deja de echar agua",
        "never: drain": "Si no se vacía por completo",
        "never: thaw": "Si un tramo no aguanta",
        "open": "Sin comprobar, y qué lo decide",
        "shop": "Deténgase y llame a un taller",
        "void": "Cuándo queda sin validez",
        "spring": "En primavera, antes de encender cualquier calor",
        "spring: hold": "Cuando pase el frío, antes de encender cualquier calor",
        "spring: thaw": "Después",
        "mind": "Cuidado",
        "tap": "Llave o salida",
        "colour": "Sale color",
        "count": "Luego cuente",
        "blow": "Sople",
        "first": "Primera llave: {tap}.",
        "first: blow": "Primera salida: {tap}.",
        "rounds": (
            "Una a la vez, en este orden: abra, espere un color que se mantenga, siga contando el"
            " tiempo de la última columna, cierre. Nunca dos a la vez."
        ),
        "rounds: blow": (
            "Una a la vez, en este orden: abra, sople hasta que salga solo un rocío fino y durante"
            " el tiempo de la última columna, cierre. Nunca dos a la vez."
        ),
        "not cleared": ("este compresor no alcanza a vaciar esta salida: cuéntela como no soplada"),
        "no colour": (
            "no se espera color: cierre después de {volume} y cuente esta salida como no llenada"
        ),
        "weak here": (
            "según el cálculo nunca llega a la concentración plena: vea lo que está sin comprobar"
        ),
        "handle": "{name}:",
        "set to": "posición {position}",
        "antifreeze": "anticongelante",
        "limits": (
            "Calculada por {engine} con la ficha de esta casa rodante; vale solo para ella y para"
            " lo que de verdad se hizo. Su manual y el reglamento local están por encima de esta"
            " guía."
        ),
        "bypass picture": "El bypass, como debe quedar para el invierno",
        "way in picture": "Por donde entra el anticongelante",
    }
)
"""Headings, columns, and what is said once."""

STEPS: Mapping[str, str] = MappingProxyType(
    {
        "open handles": "Ponga así estas manijas, para que nada quede cortado:",
        "open shut-off": (
            "Abra esta válvula de cierre, para que se alcance lo que hay detrás de ella:"
        ),
        "set bypass": "Deje el calentador en bypass. Ponga así estas manijas:",
        "draw from jug": "Ponga así estas manijas:",
        "hand pump on": "Ponga así estas manijas:",
        "air on": "Ponga así estas manijas:",
        "test trunk": "Ponga así estas manijas:",
        "test branch": "Ponga así estas manijas:",
        "hose": "Deje colgar libre el extremo de la manguera de anticongelante.",
    }
)
"""What stands above handles that are set in a step."""

GROUPS: Mapping[str, str] = MappingProxyType(
    {
        "pour a cup": "Vierta anticongelante: {items}.",
        "pour a cup item": "{cups} en {part}",
        "hold open": "Una salida tras otra, cada una hasta que no salga nada: {items}.",
        "hold open item": "{part} ({how})",
        "loosen bowl": "Afloje estos vasos un cuarto de vuelta: {items}.",
        "loosen bowl item": "{part}",
        "empty bowl": "Quite estos vasos, vacíelos y enrósquelos flojos: {items}.",
        "empty bowl item": "{part}",
        "take out": (
            "Desmonte de la casa rodante, vacíe y guarde en un lugar cálido lo siguiente: {items}."
        ),
        "take out item": "{part}",
        "then hot": "después su lado caliente",
        "then cold": "después su lado frío",
        "numbers": "{first}\u2013{last}",
        "between": "; ",
    }
)
"""Steps of one kind put together where there is no room for each, and one item of them."""

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "heat stays off": (
            "Nunca encienda de nuevo este calor, ni quemador ni resistencia, mientras no tenga agua"
            " dentro o esté en bypass: eso arruina el calentador. No antes de los últimos pasos de"
            " esta guía."
        ),
        "not into": "El anticongelante no debe llegar a: {places}.",
        "tank": "el tanque de agua potable",
        "bypassed": "el calentador en bypass ({parts})",
        "cartridge": "un cartucho ({parts})",
        "taken out": "lo que se desmontó ({parts})",
        "drinking": "lo que se bebe, incluido el hielo",
        "ground": "el suelo o un drenaje pluvial",
    }
)
"""What an owner must mind besides what the job sheet says, at the step where it matters."""

BUY: Mapping[str, str] = MappingProxyType(
    {
        "jugs": (
            "{jugs} de anticongelante (de {size}) para esta casa rodante, y {spare} de reserva."
        ),
        "glycol": (
            "Su etiqueta debe decir: para líneas de agua potable; propilenglicol, {share} en"
            " volumen. Úselo sin diluir. Uno más débil no sirve."
        ),
        "ethanol": (
            "Su etiqueta debe decir: para líneas de agua potable; etanol, {share} en volumen. Úselo"
            " sin diluir. Uno más débil no sirve."
        ),
        "both": (
            "Su etiqueta debe decir: para líneas de agua potable; propilenglicol, {share}, y"
            " etanol, {ethanol}, en volumen. Úselo sin diluir. Uno más débil no sirve."
        ),
        "rating": (
            "Su etiqueta debe decir: para líneas de agua potable; {ratings}, o más frío. Úselo sin"
            " diluir. No dice qué contiene, así que una parte que todavía tenga algo de agua está"
            " sin comprobar."
        ),
        "no rating": (
            "Su etiqueta debe decir: para líneas de agua potable. No dice qué contiene ni da"
            " ninguna temperatura: todo lo que llena está sin comprobar."
        ),
        "burst rating": "protección contra reventones hasta {rating}",
        "freeze rating": "protección contra congelación hasta {rating}",
        "printed": (
            "La etiqueta del que se usó en el cálculo da además {ratings}; cuenta lo que contiene,"
            " no eso."
        ),
        "poison": "Nunca anticongelante de motor: el etilenglicol es veneno.",
        "none": "No hace falta anticongelante.",
    }
)
"""What antifreeze to buy: by what its label prints, never by a brand."""

CHECKS: Mapping[str, str] = MappingProxyType(
    {
        "frozen": (
            "¿Estuvo por debajo del punto de congelación con agua dentro? Entonces deténgase aquí:"
            " ni bomba, ni aire, ni calor antes de que se haya descongelado y alguien la haya"
            " revisado."
        ),
        "same coach": (
            "Recorra la casa rodante con esta guía y encuentre cada manija y cada salida que"
            " nombra. Si falta una, o hay una de más, como una máquina de hielo o una llave"
            " exterior: deténgase y pregunte."
        ),
        "cold": "Esta guía es para {low}. Donde hace más frío no vale.",
        "level": "Ponga la casa rodante a nivel: así se calculó lo que sale por sí solo.",
        "battery": (
            "Batería cargada, o la casa rodante conectada a la corriente: la bomba no debe pararse"
            " a medio trabajo."
        ),
        "waste": (
            "Sepa dónde se vacían los tanques de aguas residuales, y dónde se puede dejar correr el"
            " agua limpia."
        ),
        "manual": (
            "Lea lo que dice del invierno el manual de la casa rodante; está por encima de esta"
            " guía."
        ),
    }
)
"""What is looked at before anything is opened; common practice."""

OFF: Mapping[str, str] = MappingProxyType(
    {
        "bypassed": "{part} ({heat}), desde el paso {n}: sin agua dentro y en bypass.",
        "empty": "{part} ({heat}), desde el paso {n}: sin agua dentro.",
        "filled": "{part} ({heat}), desde el paso {n}: contiene anticongelante, no agua.",
        "frozen": (
            "{part} ({heat}): no antes de que se haya descongelado, tenga toda su agua y esta"
            " corra."
        ),
        "pump": "{part}, desde el paso {n}: no antes de que se abra de nuevo el agua.",
        "pump frozen": "{part}: no antes de que todo se haya descongelado y probado.",
        "ice": "{part}, desde el paso {n}: no debe hacer hielo con lo que contiene.",
        "lamp": "{part}, desde el paso {n}: se desmontó.",
        "machine": "{part}: ningún programa y ningún calor; solo lo que dice un paso.",
        "city": "Agua de red ({part}), desde el paso {n}.",
    }
)
"""What must not be switched on, and why."""

NEVER: Mapping[str, str] = MappingProxyType(
    {
        "means": (
            "Si el color nunca sale, o sale y se va, es que todavía entra agua de algún lado o que"
            " el anticongelante se va por otro: esa línea no está protegida."
        ),
        "means: blow": (
            "Si sigue saliendo agua, es que todavía entra de algún lado, o que el aire se va por"
            " otro: esa línea no está soplada."
        ),
        "means: drain": (
            "El agua que no deja de salir entra de algún lado; una línea que no da agua puede"
            " seguir llena de ella: no está vaciada."
        ),
        "means: thaw": (
            "Una gota, un silbido o un manómetro que baja es una grieta: quite la presión enseguida"
            " y márquela."
        ),
        "wait": (
            "Si no hay color {patience} después del tiempo indicado: cierre la llave, apague la"
            " bomba y mire esto, en este orden:"
        ),
        "wait: hand pump": (
            "Si no hay color {patience} después del tiempo indicado: cierre la llave, deje de"
            " bombear y mire esto, en este orden:"
        ),
        "wait: blow": (
            "Si no sale rocío fino tras el doble del tiempo indicado: cierre el aire y mire esto:"
        ),
        "wait: drain": "Mire esto, en este orden:",
        "wait: thaw": "¿El manómetro baja y no gotea nada? Mire esto:",
        "jug": (
            "Garrafa agotada, o burbujas en su manguera: garrafa llena, uniones apretadas; deje"
            " correr otra vez esta llave."
        ),
        "hand pump": (
            "Garrafa agotada, o la bomba toma aire: garrafa llena, uniones apretadas; deje correr"
            " otra vez."
        ),
        "tank": (
            "La bomba succiona agua del tanque, está abierta una válvula que no debe (paso {n})."
            " Así deben estar las manijas: {handles}. Si no estaban así: vacíe el tanque y empiece"
            " de nuevo por la primera llave."
        ),
        "bypass": (
            "Si solo falla en llaves calientes, está abierto el paso por el calentador (paso {n})."
            " Así deben estar las manijas: {handles}. Si no estaban así: vacíe el calentador y"
            " repita todas las llaves calientes. Si sale por el orificio del tapón del"
            " calentador: lo mismo."
        ),
        "fills first": (
            "Si solo falla en llaves calientes: primero se llena el calentador ({parts}), por eso"
            " la primera llave ({tap}) tarda {time}. Si tampoco entonces: está abierto su tapón de"
            " drenaje o su palanca de alivio."
        ),
        "crossover": (
            "Caliente y fría corren juntas por otro accesorio: las dos manijas cerradas, ningún"
            " botón de pausa oprimido ({parts}). Después repita todas las llaves abiertas desde"
            " entonces."
        ),
        "low point": "Se sale por otro lado; cierre: {parts}.",
        "shut-off": "Hay una válvula de cierre cerrada en su camino: {parts}; manija {along}.",
        "regulator": "Compresor con presión, su línea abierta, regulador a {regulator_Pa}, no más.",
        "two open": "Hay otra llave o salida abierta: ciérrela.",
        "still runs": (
            "No deja de salir: agua de red cerrada, bomba apagada, desagüe del tanque de agua"
            " potable abierto."
        ),
        "no air in": (
            "No sale nada: no entra aire. Abra todas las llaves, caliente y fría, y espere."
        ),
        "ice left": "Todavía hay hielo en algún lado: caliente más tiempo y pruebe de nuevo.",
        "still not": (
            "Si aun así no: cuente esa línea como no protegida, no siga sin ayuda, llame a un"
            " taller."
        ),
        "still not: thaw": "Si aun así no: deje cerrada el agua y llame a un taller.",
    }
)
"""What it means when an outlet never clears, and what is looked at."""

SHOP: Mapping[str, str] = MappingProxyType(
    {
        "ice": "Puede haberse congelado, o hay hielo en algún lado.",
        "leak": "Algo gotea, está abultado o agrietado.",
        "plug": "El tapón del calentador no gira, o sale agua caliente.",
        "never": "Una salida no llega a lo indicado (color o rocío fino), dos veces.",
        "gap": "Lo que reventaría con este plan no se puede vaciar como se dice aquí.",
        "open": "Usted no puede resolver lo que está sin comprobar.",
        "other": "La casa rodante no es como dice esta guía.",
        "gas": "Hace falta trabajar en gas LP o 120 V: solo personal con licencia.",
    }
)
"""When to stop."""

VOID: Mapping[str, str] = MappingProxyType(
    {
        "water": (
            "Sin validez en cuanto corra agua: una llave, una descarga del inodoro, una manguera"
            " conectada. Todo lo que esa agua recorrió queda desde entonces sin protección."
        ),
        "colder": "Aguanta hasta {low}, y no con más frío.",
        "thaw": "Esto no protege nada: solo averigua si la casa rodante está intacta.",
    }
)
"""When the guide's claim ends."""

SPRING: Mapping[str, str] = MappingProxyType(
    {
        "wait": (
            "Espere a que adentro haya estado un día por encima del punto de congelación. Busque"
            " grietas y gotas."
        ),
        "plug in": "Ponga de nuevo el tapón: {parts}.",
        "lever down": "Baje la palanca de alivio: {parts}.",
        "back in place": "Ponga de nuevo en su lugar: {parts}.",
        "cartridge in": "Ponga un cartucho nuevo: {parts}.",
        "bowl tight": "Apriete el vaso: {parts}.",
        "by its maker": "Deshaga los pasos de su fabricante: {parts}.",
        "hose back: stowed": "Guarde la manguera de anticongelante.",
        "hose back: tank line": "Conecte de nuevo la línea del tanque a la entrada de la bomba.",
        "hose back: off": "Quite lo que se conectó: {parts}.",
        "shut": "Cierre cada llave, cada punto bajo y cada desagüe.",
        "handle": "Ponga de nuevo así las manijas: {handles}.",
        "drain heater": (
            "Deje salir el anticongelante por el tapón y ponga de nuevo el tapón: {parts}."
        ),
        "fill": "Después abra el agua, y cada salida hasta que ya no salga aire.",
        "rinse": (
            "Después abra el agua, y cada salida hasta que el agua salga limpia y ya sin espuma."
        ),
        "rinse: bypassed": (
            "Después abra el agua, con el calentador todavía en bypass, y cada salida hasta que el"
            " agua salga limpia y ya sin espuma."
        ),
        "heater handle": "Ponga de nuevo así las manijas del calentador: {handles}.",
        "solid": (
            "Llene el calentador: por una llave caliente sale un chorro parejo, sin escupir aire."
        ),
        "heat": "Solo entonces encienda el calor: {parts}. Nunca sin agua dentro ni en bypass.",
        "drink": (
            "Desinfecte las líneas antes de que alguien beba, como dice el manual de la casa"
            " rodante."
        ),
        "thaw": (
            "Este trabajo no termina en reposo de invierno: repare, y haga después un plan nuevo de"
            " la casa rodante."
        ),
    }
)
"""What is done in spring, in order."""
