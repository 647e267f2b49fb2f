"""Spanish: what the technician is told to do, why, and what to mind."""

from collections.abc import Mapping
from types import MappingProxyType

STEPS: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "Apague el calor ({part}): {sources}. Deje enfriar.",
        "pressure off": "Quite la manguera ({part}) y apague la bomba.",
        "pressure off: demand pump": "Apague: {part}.",
        "open shut-off": "Abra: {part}; manija a lo largo del tubo.",
        "open bypass to drain": "Abra mientras se vacía: {part}; manija a lo largo del tubo.",
        "open taps": "Abra todas las llaves, caliente y fría: {parts}.",
        "open tank drain": "Abra el desagüe: {part}.",
        "open handles": "Ponga estas manijas a lo largo del tubo (abiertas): {parts}.",
        "open handles: hose": (
            "Ponga estas manijas a lo largo del tubo (abiertas) y deje colgar libre el extremo de"
            " la manguera de anticongelante: {parts}."
        ),
        "caps off": "Quite tapas y extremos de línea, con cubetas debajo: {parts}.",
        "caps on": "Ponga de nuevo las tapas y los extremos de línea: {parts}.",
        "hold open": "{part} ({how}): hasta que no salga nada.",
        "hold open: city inlet": (
            "{part}: quite la malla, oprima la válvula de retención con una punta roma hasta que no"
            " salga nada, ponga de nuevo la malla."
        ),
        "work positions": (
            "{part}: gire a cada una de sus posiciones ({positions}), espere en cada una hasta que"
            " no salga nada y regrese a {back}."
        ),
        "work positions: pressed": (
            "{part}: gire a cada una de sus posiciones ({positions}), espere en cada una hasta que"
            " no salga nada, mientras oprime con una punta roma la válvula de retención de la toma"
            " de agua de red, y regrese a {back}."
        ),
        "empty bowl": "{part}: quite el vaso, vacíelo y enrósquelo flojo.",
        "open low points": "Abra los puntos bajos: {parts}.",
        "open relief": "{part}: deje levantada la palanca de alivio.",
        "plug out": "{part}: saque el tapón de drenaje y déjelo fuera.",
        "plug out: anode": (
            "{part}: saque el tapón con la varilla de ánodo y déjelo fuera. Mire cuánto queda de"
            " ella."
        ),
        "let it drain": "Deje escurrir hasta que no gotee nada, cerca de {handling}.",
        "drain panel": (
            "{part}: ponga en {position}, oprima con una punta roma la válvula de retención de su"
            " toma de agua de red hasta que no salga nada, y regrese a {back}."
        ),
        "cartridge out": (
            "{part}: saque el cartucho, vacíe el vaso y enrósquelo de nuevo sin el cartucho."
        ),
        "open rinse inlet": "{part}: abra la entrada y deje que escurra.",
        "take out": "Desmonte de la casa rodante, vacíe y guarde en un lugar cálido: {part}.",
        "take out: bridged": ("Desmonte y vacíe: {part}. Puentee su lugar con una manguera corta."),
        "take out: membrane filter": (
            "Desmonte: {part}. Vacíe su tanque y guarde los dos en un lugar cálido."
        ),
        "carry in": "Vacíe y lleve a un lugar cálido: {parts}.",
        "fridge filter out": "{part}: saque el cartucho y ponga su tapón de bypass.",
        "clear ice maker": (
            "{part}: quite su línea, deje escurrir su válvula y su tubo de llenado, y vacíe el"
            " molde a mano. No debe hacer hielo con anticongelante."
        ),
        "maker's steps": "{part}, según los pasos de su fabricante: {steps}.",
        "run pump dry": (
            "Abra: {outlet}. Haga funcionar {seconds} con el tanque vacío y apague: {part}."
        ),
        "empty waste tanks": (
            "En estación de descarga, vacíe, enjuague y cierre de nuevo: {parts}."
        ),
        "shut everything": "Cierre todo: {parts}.",
        "set bypass": "Deje el calentador en bypass. {handles}",
        "close heater": (
            "{part}: ponga de nuevo el tapón y baje la palanca de alivio. No hay bypass: se queda"
            " sin llenar."
        ),
        "close heater: filled": (
            "{part}: ponga de nuevo el tapón y baje la palanca de alivio. No hay bypass: se va a"
            " llenar."
        ),
        "air on": (
            "{handles} Conecte la línea de aire: {part}. Regulador a {regulator_Pa}, no más."
        ),
        "blow outlet": ("{part}: abra, sople {blow_s} hasta que salga solo un rocío fino, cierre."),
        "blow outlet: its own way": (
            "{part} ({how}): sople {blow_s} hasta que salga solo un rocío fino, termine."
        ),
        "blow outlet: never done": (
            "{part}: abra. Según el cálculo, este compresor no alcanza a vaciar esta salida;"
            " cuéntela como no soplada."
        ),
        "air off": (
            "Cierre el aire, abra una llave hasta que ya no sople y quite la línea de aire: {part}."
        ),
        "draw from jug": (
            "{handles} Meta la manguera de anticongelante en una garrafa llena de {product}."
        ),
        "draw from jug: city inlet": (
            "{handles} Conecte una manguera corta ({part}) y meta su extremo en una garrafa llena"
            " de {product}."
        ),
        "draw from jug: demand pump": (
            "{handles} Quite la línea del tanque de la entrada ({part}), conecte ahí una manguera"
            " corta y meta su extremo en una garrafa llena de {product}."
        ),
        "draw from jug: strainer": (
            "{handles} Quite la línea del tanque de la entrada ({part}), antes de la bomba; conecte"
            " ahí una manguera corta y meta su extremo en una garrafa llena de {product}."
        ),
        "open diverter": "{part}: ponga para que el agua recircule, no para que salga.",
        "close diverter": "{part}: regrese a su posición normal.",
        "pump on": "Encienda: {part}. Nunca agote una garrafa.",
        "hand pump on": (
            "{handles} Conecte la bomba manual: {part}. Meta su manguera en una garrafa llena de"
            " {product}."
        ),
        "run outlet": (
            "{part}: abra, deje correr hasta que el color se mantenga ({colour}), tiempo extra"
            " {run_on}, cierre."
        ),
        "run outlet: its own way": (
            "{part} ({how}): deje correr hasta que el color se mantenga ({colour}), tiempo extra"
            " {run_on}, termine."
        ),
        "run outlet: gravity toilet": (
            "{part}: mantenga pisado el pedal hasta que el color se mantenga ({colour}), tiempo"
            " extra {run_on}, suelte."
        ),
        "run outlet: city inlet": (
            "{part}: quite la malla, oprima la válvula de retención con una punta roma hasta que el"
            " color se mantenga ({colour}), tiempo extra {run_on}, suelte, ponga de nuevo la malla."
        ),
        "run outlet: low point": (
            "{part}: cubeta debajo, abra, deje correr hasta que el color se mantenga ({colour}),"
            " tiempo extra {run_on}, cierre."
        ),
        "run outlet: no colour": (
            "{part}: abra. Según el cálculo no sale color en {volume}. Si no sale, cierre y cuente"
            " esta salida como no llenada."
        ),
        "pump off": "Apague: {part}.",
        "hand pump off": "Quite la bomba manual: {part}.",
        "leave taps open": "Abra de nuevo las llaves y déjelas abiertas: {parts}.",
        "work pedal": "{part}: accione el pedal una vez.",
        "work pedal: macerating toilet": "{part}: descargue una vez.",
        "work pedal: cassette toilet": "{part}: descargue una vez.",
        "loosen bowl": "{part}: afloje el vaso un cuarto de vuelta.",
        "pour a cup": "{part}: vierta {cups} de anticongelante.",
        "warm it": (
            "Ponga la casa rodante en un lugar cálido, o caliéntela con aire, con gabinetes y"
            " compuertas abiertos, uno o dos días: hasta que el rincón más frío haya estado horas"
            " muy por encima del punto de congelación."
        ),
        "let it thaw out": "Deje salir lo que se descongele, cerca de {handling}.",
        "look for cracks": (
            "Mire cada accesorio, válvula, llave, vaso y tanque, la bomba y el calentador: grietas,"
            " abultamientos, gotas. Marque lo agrietado; no debe recibir ninguna presión."
        ),
        "test trunk": (
            "Cierre todas las llaves y todas las válvulas de cierre. Agua a {pressure_Pa}, no más,"
            " durante {seconds} ({part}); mire cada accesorio; quite de nuevo la presión."
        ),
        "test branch": (
            "Abra: {part}. Agua a {pressure_Pa} durante {seconds}; mire todo lo que hay detrás;"
            " quite de nuevo la presión."
        ),
        "plan anew": (
            "Repare lo agrietado y haga después un plan nuevo de la casa rodante. Hasta entonces no"
            " se sabe cuánto hará falta."
        ),
        "take reading": (
            "Lea una muestra de la garrafa y una de la llave caliente más lejana con un solo"
            " instrumento para este producto."
        ),
        "hang tag for the night": (
            "Cuelgue la etiqueta en la llave principal: solo para esta noche fría."
        ),
        "hang tag": ("Cuelgue la etiqueta en la llave principal: sin validez si corre agua."),
        "added setting": "{part}: otra posición, además de lo que pide la hoja.",
        "added run": "{part}: se dejó correr una vez más, además de lo que pide la hoja.",
        "added pour": "{part}: se vertió más anticongelante.",
    }
)
"""By key of the step; "key: word" is said where the word fits: a kind, a circumstance."""

WHY: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "Un calentador vacío con el calor encendido se arruina.",
        "pressure off": "Nada debe empujar agua a líneas que se están vaciando.",
        "open shut-off": "Lo que está cerrado no se llena.",
        "open bypass to drain": (
            "El lado caliente no tiene punto bajo propio: se vacía por el bypass."
        ),
        "open taps": "El agua solo sale donde puede entrar aire.",
        "open tank drain": "El agua que queda en el tanque encuentra el camino a la bomba.",
        "open handles": (
            "Una manija atravesada al tubo retiene agua detrás, y dentro de su propia bola."
        ),
        "caps off": "Detrás de una tapa hay agua que ninguna llave deja salir.",
        "caps on": "Nada debe meterse durante el invierno.",
        "hold open": "Nada más abre el extremo de su línea.",
        "work positions": "Cada posición cierra otra línea, con su agua dentro.",
        "empty bowl": "Corra o sople lo que sea, el vaso se queda con su agua.",
        "open low points": "Lo que sale solo por aquí no hay que empujarlo después.",
        "open relief": "El aire entra por arriba, así el calentador se vacía por abajo.",
        "open relief: finish": "Una palanca abierta da lugar para crecer a lo que se congele.",
        "plug out": "El calentador queda vacío y en bypass: no se gasta anticongelante en él.",
        "plug out: filled": "Se va a llenar: si antes se vacía, no lleva más de lo que le cabe.",
        "let it drain": "El agua que se queda diluye el anticongelante.",
        "drain panel": "Cualquier otra posición cierra la línea de la toma, con su agua dentro.",
        "cartridge out": "Un cartucho retiene agua, y el anticongelante lo echa a perder.",
        "open rinse inlet": "Se vacía sola en cuanto se abre su entrada.",
        "take out": "No se puede llenar, y lo que queda dentro se congela.",
        "carry in": "Lo que cuelga afuera se congela primero.",
        "fridge filter out": "Un cartucho retiene agua, y el anticongelante lo echa a perder.",
        "clear ice maker": "Lo que hay en una máquina de hielo termina en un vaso.",
        "maker's steps": "Su fabricante sabe lo que hay dentro.",
        "run pump dry": "La línea que viene del tanque no tiene otra manera de vaciarse.",
        "empty waste tanks": "Lo que queda en un tanque se congela contra su válvula.",
        "shut everything": "La bomba llena una salida a la vez.",
        "set bypass": "Si no, el calentador se traga el anticongelante del lado caliente.",
        "close heater": "Si no, todo sale por su tapón abierto.",
        "close heater: filled": "Si no, el anticongelante se sale.",
        "air on": "El aire saca lo que la gravedad deja.",
        "blow outlet": (
            "Solo el camino a la única salida abierta recibe aire tan rápido que arrastre agua."
        ),
        "air off": "Nada debe estar a presión cuando se abren los vasos.",
        "draw from jug": "La bomba debe succionar de la garrafa y de ningún otro lado.",
        "open diverter": "Sus dos líneas cortas solo se llenan mientras está en recirculación.",
        "close diverter": "Es su posición de uso.",
        "pump on": "Llena las líneas y mantiene la presión de una salida a la siguiente.",
        "hand pump on": (
            "Empuja anticongelante a cada salida, donde la bomba de la casa rodante no puede"
            " funcionar."
        ),
        "run outlet": (
            "El primer color todavía es débil; el tiempo extra deja la línea lo bastante fuerte."
        ),
        "pump off": "Después se abren las llaves; nada debe seguir saliendo.",
        "hand pump off": "Después se abren las llaves; nada debe seguir saliendo.",
        "leave taps open": "Una llave abierta da lugar para crecer al hielo pastoso.",
        "work pedal": "Quita la presión de la válvula, que se cierra sola por su resorte.",
        "loosen bowl": "Un vaso flojo da lugar para crecer a lo que contiene.",
        "pour a cup": "Lo que entró desde las llaves está demasiado diluido para confiar en ello.",
        "warm it": "La presión sobre el hielo revienta lo que el hielo no reventó.",
        "let it thaw out": "Lo descongelado no debe congelarse otra vez.",
        "look for cracks": "Una grieta muestra en seco lo que con agua muestra demasiado tarde.",
        "test trunk": (
            "Con poca presión se descubre una grieta; con toda la presión es una inundación."
        ),
        "test branch": "Un tramo a la vez indica dónde está la fuga.",
        "plan anew": (
            "Nadie puede responder por una casa rodante que se congeló, antes de que haya aguantado"
            " la prueba."
        ),
        "take reading": "Un número dice más que un color.",
        "hang tag for the night": "Un resguardo vence; quien venga después debe saber cuándo.",
        "hang tag": "Quien abra una llave en invierno debe saber lo que deshace.",
        "added setting": "Se hizo en el taller; la comprobación lo cuenta.",
        "added run": "Se hizo en el taller; la comprobación lo cuenta.",
        "added pour": "Se hizo en el taller; la comprobación lo cuenta.",
    }
)
"""By key of the step: one short sentence."""

HOW_TO_OPEN: Mapping[str, str] = MappingProxyType(
    {
        "gravity toilet": "mantenga pisado el pedal",
        "vacuum toilet": "mantenga pisado el pedal",
        "macerating toilet": "descargue una y otra vez",
        "cassette toilet": "mantenga oprimida la descarga",
        "bidet sprayer": "mantenga oprimido el gatillo, sobre la taza",
        "spray port": "manguera rociadora conectada, gatillo trabado",
        "washer: hot": "active su llenado, caliente",
        "washer: cold": "active su llenado, frío",
        "dishwasher": "active su llenado",
        "ice maker": "quite su línea y sosténgala dentro de un vaso",
        "door dispenser": "mantenga oprimida la palanca, con un vaso debajo",
        "membrane filter": "línea desconectada, a una cubeta",
        "capped tee": "quite la tapa, cubeta debajo",
        "prepared stub": "quite la tapa, cubeta debajo",
        "outside shower": "gatillo del cabezal trabado",
        "outside kitchen": "gatillo del cabezal trabado",
        "city inlet": "malla fuera; oprima la retención con punta roma",
        "low point": "cubeta debajo",
    }
)
"""How outlets are opened that have no handle to turn, as a note in a table.

By kind; "kind: side" is said where the side needs words of its own.
"""

PHASES: Mapping[str, str] = MappingProxyType(
    {
        "make safe": "Poner en condición segura",
        "thaw": "Descongelar",
        "drain": "Vaciar",
        "test": "Probar, un tramo a la vez",
        "set": "Ajustar las manijas",
        "blow": "Soplar, una salida a la vez",
        "fill": "Llenar, una salida a la vez",
        "finish": "Terminar",
    }
)

PHRASES: Mapping[str, str] = MappingProxyType(
    {
        "handles across": "Manija atravesada al tubo (cerrada): {parts}.",
        "handles along": "Manija a lo largo del tubo (abierta): {parts}.",
        "left full": (
            "No hay bypass: si se deja lleno, llevaría cerca de {left_full_m3} de anticongelante y"
            " todavía tendría {share} de agua; si se vacía, lleva lo que le cabe, {own_m3}."
        ),
        "shared hose": "solo color que se mantiene",
        "note": "({note})",
        "reach": "{part}: {how}",
        "behind": "detrás de {panel}",
        "picture": "vea {photo}",
        "screws one": "1 tornillo",
        "screws many": "{count} tornillos",
        "notes": "{first}; {last}",
        "colour at once": "enseguida",
        "colour about": "aprox. {time}",
        "never": "no se espera",
        "share under": "menos de {share}",
        "per cent": "{number} %",
        "thousands": ",",
        "and": "{first} y {last}",
        "and: i": "{first} e {last}",
        "and: hi": "{first} e {last}",
        "and: hie": "{first} y {last}",
        "comma": ", ",
        "semicolon": "; ",
        "more": "{parts}, y {count} más",
        "cups one": "1 taza",
        "cups many": "{count} tazas",
        "handles named": "{part}: ponga en {position}.",
        "jugs one": "1 garrafa",
        "jugs many": "{count} garrafas",
        "parts one": "1 parte",
        "parts many": "{count} partes",
        "water ran at": "Después corrió agua por: {parts}.",
        "water stands in": "Después se vertió agua en: {parts}.",
        "void are": "Queda sin validez lo dicho de {count}.",
        "as it stands": "Como está ahora: {verdict} El plan de abajo lo corrige.",
        "holds": (
            "Aguanta {time} a {low} desde el primer minuto, si empieza a {start}, y no más. Lo"
            " primero en fallar: {part}."
        ),
        "holds on": "A {low} no queda nada que se congele y dañe: este resguardo no tiene fin.",
        "bring nothing": "No hace falta anticongelante.",
        "bring": "Lleve {jugs} de {product} (de {size}).",
        "bring and have one": "Lleve {jugs} de {product} (de {size}) y tenga una más.",
        "bring and have more": "Lleve {jugs} de {product} (de {size}) y tenga {spare} más.",
        "minutes": "Cerca de {time} de trabajo.",
        "minutes: thaw": (
            "Uno o dos días para descongelar y cerca de {time} de trabajo; lo que sigue después no"
            " se sabe aún."
        ),
        "held in": (
            "Se mantiene en {held} de {draws} sorteos de lo que la ficha deja abierto; lo más"
            " débil: {part}, en {share}."
        ),
        "used": "Cerca de {volume} de {product} y {time} de trabajo, calculados según el registro.",
        "not done one": "El paso {steps} no se hizo: hágalo ahora y compruebe de nuevo.",
        "not done many": "Los pasos {steps} no se hicieron: hágalos ahora y compruebe de nuevo.",
        "some done": "{done} de {all}",
    }
)
"""Pieces of sentences, and ways to count."""
