"""Spanish: titles, legends and labels of drawings."""

from collections.abc import Mapping
from types import MappingProxyType

DRAWING: Mapping[str, str] = MappingProxyType(
    {
        "whole coach": "Dibujo de la tubería: {coach}",
        "whole coach words": (
            "Líneas y piezas vistas desde el lado de la acera, el frente a la izquierda, con estos"
            " nombres: {parts}."
        ),
        "pattern cold": "fría",
        "pattern hot": "caliente",
        "pattern neither": "caliente y fría, o ninguna",
        "pattern antifreeze": "anticongelante",
        "pattern mixed": "diluido",
        "pattern water": "agua",
        "pattern air": "vacío",
        "pattern unproven": "sin comprobar",
        "pattern gap": "reventaría",
        "stands": "{part}:\n{setting}",
        "then back": "{setting}, luego {back}",
        "stands along": "A LO LARGO del tubo",
        "stands across": "ATRAVESADA al tubo",
        "seen isometric": "Visto desde el lado de la acera, el frente a la izquierda.",
        "seen plan": "Visto desde arriba, el frente a la izquierda.",
        "seen side": "Visto desde el lado de la acera, a nivel, el frente a la izquierda.",
        "pictures": "Dibujos",
        "step": "Paso {n}: {text}",
        "front at": "Paso {n}: dónde está el anticongelante cuando se ve color en: {part}",
        "colour here": "color aquí",
        "end": "Cómo termina: {coach}",
        "claimed": "{part}: {claim}",
        "claim filled": "con anticongelante",
        "claim drained": "por vaciado",
        "claim swept": "por barrido con aire",
        "claim kept warm": "con calor",
        "claim removed": "por desmontaje",
        "front": "frente",
        "rear": "atrás",
    }
)
