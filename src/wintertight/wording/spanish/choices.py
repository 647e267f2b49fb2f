"""Spanish: which antifreeze, in which order, and when to shut a tap."""

from collections.abc import Mapping
from types import MappingProxyType

ANTIFREEZE: Mapping[str, str] = MappingProxyType(
    {
        "strong enough": (
            "{product} sirve: de lo que sale por cada salida, al menos {share} debe ser producto."
        ),
        "only its rating": (
            "{product} está sin comprobar: solo se conoce la temperatura de su etiqueta, y vale sin"
            " diluir; deje correr cada salida hasta que no salga otra cosa, y mídalo."
        ),
        "nothing to go by": (
            "{product} está sin comprobar: nada en su etiqueta lo decide. No lo use sin medirlo."
        ),
        "too weak": "{product} no sirve: ni sin diluir alcanza para {low}.",
        "rating too warm": ("{product} no sirve: la temperatura de su etiqueta no llega a {low}."),
        "poison": (
            "{product} se rechaza: el etilenglicol es veneno y nunca entra en una línea de agua."
        ),
    }
)
"""What is said of a product, by the key of the reason."""

BUYING: Mapping[str, str] = MappingProxyType(
    {
        "take": "Tome {jugs} de {size}",
        "cost": ", {cost} {currency}",
        "no price": ", sin precio en la lista",
        "enough": "; en el estante hay {stock}.",
        "short": "; en el estante hay solo {stock}.",
        "not counted": "; nadie ha contado el estante.",
        "burns": "Puede prender fuego: ninguna llama y ningún piloto mientras se usa.",
        "may burn": (
            "La etiqueta no dice qué contiene, así que puede prender fuego: ninguna llama y ningún"
            " piloto mientras se usa."
        ),
        "none suits": "De ningún anticongelante de la lista se ha mostrado que sirva para {low}.",
    }
)
"""How much to take, what it costs, and whether it is there."""

ORDERS: Mapping[str, str] = MappingProxyType(
    {
        "nearest first will do": (
            "Empezar por la salida más cercana lleva {nearest_m3}, calculado con prudencia; de"
            " {tried} órdenes probados, el mejor lleva {best_m3} y el peor {worst_m3}{worst_short}."
        ),
        "another order saves": (
            "Empezar por la salida más cercana lleva {nearest_m3}, calculado con prudencia; de"
            " {tried} órdenes probados, el mejor ahorraría {saving_m3} y el peor lleva"
            " {worst_m3}{worst_short}."
        ),
        "another order clears more": (
            "Empezar por la salida más cercana deja salidas que nunca llegan a color pleno"
            " ({nearest_short}); el mejor de {tried} órdenes probados deja menos ({best_short})."
        ),
        "one outlet": "Hay una sola salida que dejar correr.",
        "worst short": " y aun así deja salidas que nunca llegan a color pleno ({short})",
    }
)
"""Nearest first against the other orders that were tried."""

STOP_RULES: Mapping[str, str] = MappingProxyType(
    {
        "as planned": (
            "Con el tiempo extra del plan se gastan {volume_m3} en {running_s} de correr."
        ),
        "first colour: bursts": "Cerrar al primer color haría reventar {bursting}{doubtful_too}.",
        "first colour: doubtful": (
            "Si se cierra al primer color, nadie podría responder por {doubtful}."
        ),
        "first colour: holds": (
            "Cerrar al primer color bastaría aquí, y nadie puede saberlo con solo mirar."
        ),
        "ten seconds: bursts": (
            "Contar diez después del color en todas partes lleva {volume_m3} y aun así haría"
            " reventar {bursting}{doubtful_too}."
        ),
        "ten seconds: doubtful": (
            "Contar diez después del color en todas partes lleva {volume_m3}, y nadie podría"
            " responder por {doubtful}."
        ),
        "ten seconds: holds": (
            "Contar diez después del color en todas partes bastaría; lleva {volume_m3}."
        ),
        "doubtful too": ", y nadie podría responder por {doubtful}",
    }
)
"""What each rule for shutting a tap comes to."""
