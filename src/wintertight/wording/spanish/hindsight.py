"""Spanish: what a record tells beyond what it says, and how sure that is.

Pieces of sentences do not begin with a capital letter or end in a stop; ``PIECES`` puts them
together.
"""

from collections.abc import Mapping
from types import MappingProxyType

CAUSES: Mapping[str, str] = MappingProxyType(
    {
        "as recorded": "lo cronometrado, contado y leído concuerda con el trabajo registrado",
        "forgotten outlet": ("una salida marcada que probablemente nunca se dejó correr ({part})"),
        "longer line": (
            "una línea ({part}) con más volumen que el de la ficha: la mitad más, o hasta más del"
            " doble"
        ),
        "water run since": "agua que corrió por una salida ({part}) después del llenado",
        "something else": "algo que aquí no se conoce: ninguna causa de la lista concuerda",
    }
)
"""What probably happened, where no wrong setting has words for it."""

SHORT: Mapping[str, str] = MappingProxyType(
    {
        "as recorded": "el trabajo registrado",
        "wrong bypass": "un calentador que no está en bypass",
        "inlet half open": "agua succionada junto con el anticongelante",
        "crossover": "caliente y fría que corren juntas",
        "low point open": "un punto bajo que quedó abierto",
        "suction leak": "aire succionado por la bomba",
        "jug dry": "una garrafa que se vació",
        "weak product": "anticongelante débil o equivocado",
        "filter left in": "un cartucho que quedó dentro",
        "branch shut": "un ramal que quedó cerrado",
        "failed check": "una válvula de retención que deja volver el agua",
        "forgotten outlet": "una salida marcada que no se dejó correr",
        "longer line": "una línea más larga de lo que dice la ficha",
        "water run since": "agua que corrió después",
        "something else": "algo que aquí no se conoce",
    }
)
"""What each cause is called in passing."""

SIGHTS: Mapping[str, str] = MappingProxyType(
    {
        "colour": "color {value} en {outlet}",
        "run on": "tiempo extra de {value} en {outlet}",
        "jugs": "{value} gastados de las garrafas",
        "strength": ("{value} de lo que dice la etiqueta en una muestra ({outlet})"),
        "beside the jug": ("{value} de la concentración de la garrafa en una muestra ({outlet})"),
        "strength: jug": "{value} de lo que dice la etiqueta en la garrafa misma",
        "none": "ningún color en {outlet}",
        "untimed": "ningún tiempo anotado en {outlet}, donde se pedía",
        "as recorded": "{seen}; según lo registrado {expected}",
        "and if so": "{seen}; según lo registrado {expected}, y de ser así {if_so}",
        "nothing expected": "{seen}; según lo registrado, nada",
        "after": "a los {time}",
        "at once": "enseguida",
        "none expected": "ninguno",
    }
)
"""What was observed, and what was to be expected."""

PIECES: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Lo que dicen cronómetro, garrafas y muestras",
        "fits": "Concuerda: {cause} ({fits}).",
        "speaks for": "Apuntan a {cause} ({fits}).",
        "then": "Lo siguiente más probable: {cause} ({fits}).",
        "strange": "Extraño: {sights}.",
        "cup": (
            "Para saberlo: tome una muestra ({outlet}). Si tiene {here} de la concentración de la"
            " garrafa, es lo primero; si tiene {there}, lo segundo."
        ),
        "look": "Para saberlo, mire: {part}.",
        "eyes": (
            "Para saberlo: nada que todavía se pueda leer; recorra la casa rodante paso por paso."
        ),
        "cure": "De ser así: {settle}.",
        "cure: weak product": (
            "De ser así: deje correr de nuevo cada salida, con producto del que se haya leído una"
            " muestra de la garrafa."
        ),
        "cure: forgotten outlet": (
            "De ser así: déjela correr como dice la hoja, y otra vez las que le siguen."
        ),
        "cure: longer line": (
            "De ser así: deje correr más tiempo sus salidas y anote su longitud en la ficha."
        ),
        "cure: water run since": "De ser así: deje correr anticongelante por ella otra vez.",
        "cure: something else": "Entonces tome una muestra de cada llave y congélela.",
        "learned heading": "Lo que ha enseñado esta casa rodante",
        "learned heading many": "Lo que ha enseñado esta casa rodante en {count} visitas",
        "next time": (
            "La próxima vez lleva de {low} a {high} de anticongelante; la ficha sola decía {was}."
        ),
        "taught": (
            "Según visitas anteriores lleva de {low} a {high} de anticongelante; la ficha sola"
            " decía {was}."
        ),
        "not taught": (
            "Las visitas anteriores no enseñan nada aquí: no concuerdan con ningún trabajo hecho"
            " como se registró."
        ),
        "habit": ("Aquí el tiempo extra suele ser {percent} de lo que pide la hoja."),
        "line": "La línea {part}: de {low} a {high}; la ficha sola decía {was}.",
        "range": "de {low} a {high}",
        "not here": (
            "No está en esta casa rodante, según lo registrado: {parts}. Se quitó de la ficha para"
            " esta comprobación; anótelo en ella."
        ),
        "still here": (
            "El registro dice que no está en esta casa rodante: {parts}. En la ficha alimenta a"
            " otras partes, así que se queda y cuenta como no hecho. Anote lo que de verdad hay."
        ),
        "given less weight": "Con menos peso, porque no concuerda con nada más: {sights}.",
    }
)
"""How the pieces are put together."""

WHY_NONE: Mapping[str, str] = MappingProxyType(
    {
        "nothing observed": (
            "no se cronometró, contó ni leyó nada, así que el registro no dice más que lo que dice"
        ),
        "left out": "se omitió, como se pidió",
        "not as recorded": ("no parece haberse hecho como se registró, así que no enseña nada"),
    }
)
"""Why nothing can be said."""
