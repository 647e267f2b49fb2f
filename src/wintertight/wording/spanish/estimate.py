"""Spanish: the estimate, its options, and what declined work leaves open."""

from collections.abc import Mapping
from types import MappingProxyType

ESTIMATE: Mapping[str, str] = MappingProxyType(
    {
        "title": "Presupuesto {id}",
        "heading": "Presupuesto",
        "method": "Método",
        "dated": "Fecha",
        "valid": "Válido hasta",
        "work": "Trabajo",
        "count": "Cantidad",
        "each": "Por unidad",
        "amount": "Importe",
        "labour": "mano de obra",
        "material": "material",
        "further gallon": "Anticongelante por encima de {included}, por galón",
        "further container": "Anticongelante por encima de {included}, por envase de {size}",
        "further gallon: all": "Anticongelante, por galón",
        "further container: all": "Anticongelante, por envase de {size}",
        "included": "{tier} (incluye {included} de anticongelante)",
        "net": "Antes de impuestos",
        "tax": "{name}, {rate} sobre {base}",
        "compound": "{name}, {rate} sobre {base}, con los impuestos anteriores incluidos",
        "total": "Total",
        "rounding: half-even": (
            "Los impuestos se redondean a la moneda más pequeña; la mitad exacta, a la cifra par."
        ),
        "rounding: half-up": (
            "Los impuestos se redondean a la moneda más pequeña; la mitad exacta, hacia arriba."
        ),
        "at most": (
            "Se calcula que la casa rodante lleva {volume} de anticongelante, y puede llevar hasta"
            " {most}: entonces el total es de {amount}."
        ),
        "steady": "Se calcula que la casa rodante lleva {volume} de anticongelante.",
        "limit": "El taller llama antes de que la cuenta pase de {amount}.",
        "above limit": ("Esto pasa de {amount}: el taller llama y espera un sí antes de empezar."),
        "open-ended": (
            "Este presupuesto es abierto: la casa rodante puede haberse congelado. Es solo para"
            " descongelar, mirar y probar; reparar y preparar para el invierno se presupuestan de"
            " nuevo cuando se sepa qué aguantó."
        ),
        "options": "Opciones sin decidir, fuera del total",
        "accept": "acepto",
        "decline": "rechazo",
        "declined": "Trabajo rechazado",
        "i decline": "Rechazo: {option} ({amount} antes de impuestos).",
        "signature": "Firma",
        "date": "Fecha",
        "agreed": "He leído esto y pido el trabajo como está escrito aquí.",
        "no claim": ("Con ese trabajo rechazado, lo que el plan dice de la casa rodante no vale."),
        "claim": "Lo que dice el plan: {verdict}",
        "claim with options": "Lo que dice el plan, con todas las opciones hechas: {verdict}",
        "without it": "Sin esto: {left}",
        "from": "Presupuesto de {shop}",
        "one option": "{option}: {amount} antes de impuestos.",
        "names": (
            "Se quedaría sin protección: {names}. Lo que hay dentro puede congelarse y reventar."
        ),
        "doubtful": "Nadie podría responder por: {names}.",
        "nothing known": (
            "Si se omite uno solo de sus pasos, no cambia nada de lo que muestra el plan; qué pasa"
            " si se omiten juntos, nadie lo ha calculado."
        ),
        "not asked": "No se calculó qué queda abierto con eso.",
        "no step": "El plan no hace nada ahí, así que no muestra nada de lo que queda abierto.",
        "no fitting": "Ninguna parte de la casa rodante depende de esto.",
    }
)
"""An estimate in words: its lines, its taxes, and what declined work leaves open."""
