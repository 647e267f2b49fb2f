"""Spanish: methods side by side, and why each stands where it does."""

from collections.abc import Mapping
from types import MappingProxyType

COMPARISON: Mapping[str, str] = MappingProxyType(
    {
        "method": "Método",
        "verdict": "Veredicto",
        "antifreeze": "Anticongelante",
        "work": "Trabajo",
        "price": "Precio",
        "safe": "protegida",
        "gap": "brecha",
        "unproven": "sin comprobar",
        "not possible": "no es posible",
        "no price": "sin precio",
        "why best": "No queda nada que reviente, y en el menor tiempo.",
        "why longer": "Tampoco queda nada que reviente, pero tarda {more} más.",
        "why gap": "El hielo reventaría {gaps}: {parts}.",
        "why gap and more": "El hielo reventaría {gaps}, entre ellas: {parts}.",
        "why unproven": "Nadie puede responder por {unproven}: {parts}.",
        "why unproven and more": "Nadie puede responder por {unproven}, entre ellas: {parts}.",
        "why holds": (
            "Da {time} con este frío desde el primer minuto, y no más; después de eso el hielo"
            " reventaría {gaps}."
        ),
        "also unproven": "Además, nadie puede responder por {unproven}.",
        "antifreeze heading": (
            "{coach}, hasta {low}, llenada con su propia bomba. El mejor primero."
        ),
        "heading": "{coach}, hasta {low}, con {product}. El mejor primero.",
        "in words": (
            "El trabajo es manos y fluido juntos; el precio es el del anticongelante, en envases"
            " completos."
        ),
    }
)
