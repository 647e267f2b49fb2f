"""Spanish: what can stand wrongly at a coach, what is seen of it, and what settles it.

Pieces of one sentence: none begins with a capital letter or ends in a stop.
"""

from collections.abc import Mapping
from types import MappingProxyType

MISTAKES: Mapping[str, str] = MappingProxyType(
    {
        "heater left open: full": (
            "válvulas de {heater} abiertas además del bypass, y el calentador todavía lleno: parte"
            " del flujo pasa por él y empuja su agua al lado caliente"
        ),
        "heater left open: drained": (
            "válvulas de {heater} abiertas además del bypass, con el tapón puesto otra vez: parte"
            " del flujo entra al calentador vacío y empuja su aire al lado caliente"
        ),
        "heater left open: plug out": (
            "válvulas de {heater} abiertas y el tapón fuera: el anticongelante se va por ahí al"
            " suelo en vez de llegar a las llaves"
        ),
        "bypass shut: full": (
            "posición de verano ({part}), y el calentador todavía lleno: todo lo del lado caliente"
            " pasa por el calentador y sale como su agua"
        ),
        "bypass shut: drained": (
            "posición de verano ({part}), con el tapón del calentador puesto otra vez: el"
            " calentador se llena antes de que salga algo por una llave caliente"
        ),
        "bypass shut: plug out": (
            "posición de verano ({part}) y el tapón del calentador fuera: el anticongelante se va"
            " por ahí al suelo en vez de llegar al lado caliente"
        ),
        "inlet half open: alone": (
            "manija solo a medias a lo largo del tubo ({part}): la bomba jala más fuerte y aun así"
            " no succiona más que anticongelante"
        ),
        "inlet half open: tank valve too": (
            "manijas a medias ({part} y la válvula del tanque), y el tanque todavía lleno: la"
            " bomba succiona anticongelante y agua a la vez"
        ),
        "tank valve half open: full": (
            "cierre incompleto ({part}), y el tanque todavía lleno: la bomba succiona agua junto"
            " con el anticongelante"
        ),
        "tank valve half open: empty": (
            "cierre incompleto ({part}), y el tanque vacío: por ahí entra aire tan fácilmente que"
            " la bomba no levanta anticongelante"
        ),
        "shower crossing": (
            "las dos manijas abiertas y el cabezal cerrado ({part}): por ahí corren juntas la"
            " caliente y la fría mientras otra llave está abierta"
        ),
        "pause button": (
            "las dos manijas abiertas y el botón de pausa oprimido ({part}): por ahí corren juntas"
            " la caliente y la fría mientras otra llave está abierta"
        ),
        "tempering valve one-sided": (
            "entrada sin nada tibio ({part}): se queda en todo caliente, y por su lado frío no"
            " pasa anticongelante"
        ),
        "diverter left off": (
            "recirculación sin poner ({part}): las líneas que llegan y las que salen conservan su"
            " agua"
        ),
        "low point left open": (
            "desagüe que quedó abierto ({part}): parte de lo que da la bomba se sale por ahí, y a"
            " cada llave le llega menos en los mismos segundos"
        ),
        "suction leak: some air": (
            "conexión floja entre garrafa y bomba: {share} de lo que succiona la bomba es aire, y"
            " a cada llave le llega menos anticongelante en los mismos segundos"
        ),
        "suction leak: too much air": (
            "conexión suelta entre garrafa y bomba: más de la mitad de lo que succiona la bomba es"
            " aire, y no levanta anticongelante"
        ),
        "jug ran dry: run on": (
            "garrafa vacía a mitad de la corrida ({part}): la bomba succiona aire {seconds} hasta"
            " que llega la siguiente garrafa, y luego la salida se deja correr como dice la hoja"
        ),
        "jug ran dry: left so": (
            "garrafa vacía al final de la corrida ({part}): la bomba succiona aire {seconds} hasta"
            " que llega la siguiente garrafa, y nadie deja correr de nuevo esa salida"
        ),
        "weak product": (
            "garrafa rebajada hasta que {share} es agua: cada parte recibe la mezcla más débil"
        ),
        "wrong product": (
            "otro anticongelante con la misma temperatura en su etiqueta: nadie sabe qué contiene,"
            " así que no se puede calcular ninguna parte que todavía tenga algo de agua"
        ),
        "cartridge left in": "cartucho sin sacar ({part}): lo que absorbió no se enjuaga",
        "branch left shut": (
            "ramal que quedó cerrado ({part}): nada de lo que hay detrás se vacía ni se llena"
        ),
        "failed check": ("retención que ya no cierra ({part}): lo que hay detrás puede volver"),
        "failed check: hole": (
            "retención que ya no cierra ({part}): el anticongelante vuelve por ahí al calentador y"
            " se sale por el hueco del tapón"
        ),
    }
)
"""What stands wrongly, and what that does inside the walls."""

OUTCOMES: Mapping[str, str] = MappingProxyType(
    {
        "same": "ninguna parte queda peor",
        "gap": "el hielo reventaría: {parts}",
        "unproven": "nadie podría responder por: {parts}",
        "hazard": "de ahí resulta una orden que se rechaza ({hazard})",
        "doubtful": "nadie podría responder por {parts} más",
        "water": "se quedan {volume} de agua",
        "more": "se gastan {volume} más de anticongelante que lo planeado",
        "less": "salen de las garrafas {volume} menos de anticongelante que lo planeado",
    }
)
"""What comes of it, and what it costs."""

SIGNS: Mapping[str, str] = MappingProxyType(
    {
        "nothing comes": "no sale nada en {outlets}",
        "never clears": "no sale color en {outlets}",
        "stays pale": "sale solo {share} de la concentración plena en {outlets}",
        "late": "el color sale {seconds} tarde en {outlets}",
        "early": "el color sale {seconds} antes en {outlets}",
        "sputters": "escupe aire en {outlets}",
        "trickles": "sale solo un hilo en {outlets}",
        "runs elsewhere": "se sale anticongelante en {outlets}",
        "seen": "se ve: {signs}",
        "cup": "las llaves no muestran nada, una muestra junto a la garrafa sí: {signs}",
        "none": "ninguna llave lo muestra",
    }
)
"""What would be seen; "seen", "cup" and "none" begin what is said of it."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "heater left open: full": (
            "ciérrelas, vacíe el calentador y deje correr de nuevo cada llave caliente"
        ),
        "heater left open: drained": (
            "ciérrelas, saque el tapón y deje correr de nuevo cada llave caliente"
        ),
        "heater left open: plug out": "ciérrelas y empiece de nuevo por la primera llave",
        "bypass shut": (
            "ponga el bypass, vacíe el calentador y deje correr de nuevo cada llave caliente"
        ),
        "bypass shut: plug out": "ponga el bypass y empiece de nuevo por la primera llave",
        "inlet half open: alone": "gírela hasta el tope",
        "inlet half open": (
            "cierre la del tanque, abra la de la garrafa, vacíe el tanque y empiece de nuevo"
        ),
        "tank valve half open": (
            "ciérrela, vacíe el tanque y empiece de nuevo por la primera llave"
        ),
        "tank valve half open: empty": (
            "ciérrela hasta el tope y empiece de nuevo por la primera llave"
        ),
        "shower crossing": "cierre las dos manijas y deje correr de nuevo esa ducha al final",
        "pause button": (
            "suelte el botón, cierre las dos manijas y deje correr más tiempo todas las llaves"
        ),
        "tempering valve one-sided": (
            "afloje la unión de su lado frío sobre una cubeta hasta que salga color"
        ),
        "diverter left off": ("ponga para que el agua recircule y deje correr de nuevo esa ducha"),
        "low point left open": (
            "ciérrelo, deje correr más tiempo todas las llaves y vierta una taza en cada trampa"
        ),
        "suction leak": (
            "apriete la manguera hasta que no succione burbujas y deje correr de nuevo todas las"
            " llaves"
        ),
        "jug ran dry: run on": (
            "siga dejando correr esa llave hasta que el color se mantenga, como dice la hoja"
        ),
        "jug ran dry: left so": (
            "deje correr de nuevo esa llave hasta que el color se mantenga, y las que le siguen"
        ),
        "weak product": (
            "lea la concentración de la garrafa antes de usarla, y la de la llave más lejana al"
            " final"
        ),
        "wrong product": (
            "lea las etiquetas de las garrafas vacías, y haga una lectura que sirva para ese"
            " producto"
        ),
        "cartridge left in": "sáquelo, vacíe el vaso y deje el vaso flojo",
        "branch left shut": "abra y deje correr cada salida que hay detrás",
        "failed check": "cierre una válvula que esté al lado, o cámbiela",
        "failed check: hole": (
            "cierre la válvula del calentador que está al lado, o ponga de nuevo el tapón"
        ),
    }
)
"""What settles it, by key; "key: circumstance" is said where that has words of its own."""

PIECES: Mapping[str, str] = MappingProxyType(
    {
        "sentence": "{wrong}; {comes}; {seen}; para resolverlo, {settle}.",
        "and more": "{outlet} (y {count} más)",
        "hazard: no tap shows it": "Ajustes equivocados: se rechaza",
        "hazard: seen": "Ajustes equivocados: se rechaza",
        "gap: no tap shows it": (
            "Ajustes equivocados: algo reventaría, y ninguna llave lo muestra"
        ),
        "gap: seen": "Ajustes equivocados: algo reventaría, y se puede ver",
        "unproven: no tap shows it": (
            "Ajustes equivocados: nadie podría responder, y ninguna llave lo muestra"
        ),
        "unproven: seen": "Ajustes equivocados: nadie podría responder, y se puede ver",
        "same: no tap shows it": (
            "Ajustes equivocados: ninguna parte queda peor, y ninguna llave lo muestra"
        ),
        "same: seen": "Ajustes equivocados: ninguna parte queda peor, y se puede ver",
    }
)
"""How the pieces are put together."""
