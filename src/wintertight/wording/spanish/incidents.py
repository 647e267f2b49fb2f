"""Spanish: what burst in spring, and what the record of the fall has to say of it."""

from collections.abc import Mapping
from types import MappingProxyType

CAUSES: Mapping[str, str] = MappingProxyType(
    {
        "missed: skipped": (
            "Sin comprobar hasta {low_degC} según el registro, y ahí no se hizo: {steps}."
        ),
        "missed: not recorded": (
            "Sin comprobar hasta {low_degC} según el registro, que no habla de: {steps}. Lo que no"
            " está registrado cuenta como no hecho."
        ),
        "missed: elsewhere": (
            "Según el registro quedó por reventar a {low_degC}. {reason} En la parte misma no falta"
            " ningún paso; en otro lugar no se hizo: {steps}."
        ),
        "missed: gap": (
            "Según el registro quedó por reventar a {low_degC}, aunque no falta ningún paso."
            " {reason}"
        ),
        "missed: as planned": (
            "Según el registro, y según el plan mismo, quedó por reventar a {low_degC}. {reason}"
        ),
        "missed: proven": "Según el registro estaba comprobada hasta {low_degC}.",
        "missed: unproven": (
            "Nadie podía responder por ella a {low_degC}, y ahí no falta ningún paso en el"
            " registro. {reason}"
        ),
        "missed: observed": (
            "Tiempos, garrafas o muestras de ese día apuntan a {cause}: entonces no estaba"
            " comprobada hasta {low_degC}."
        ),
        "missed: mild": (
            "Sin comprobar hasta {low_degC} según el registro, pero {lowest_degC}, lo más frío a"
            " que estuvo la casa rodante, no habría reventado nada en ella."
        ),
        "missed: nothing recorded": "El registro no habla de ningún paso.",
        "missed: no proof": "No hay un cálculo para una parte así.",
        "used: touched": (
            "Corrió agua por {outlets} después de la preparación para el invierno, y pasó por aquí."
        ),
        "used: none": (
            "Alguien preguntó, y no ha corrido agua desde la preparación para el invierno."
        ),
        "used: untouched": (
            "Corrió agua por {outlets} después de la preparación para el invierno, y no llegó aquí."
        ),
        "used: pumped": (
            "Corrió agua por {outlets}. Desde la toma de agua de red no llegó aquí; desde el tanque"
            " de agua potable habría llegado."
        ),
        "used: below": "El agua que corrió por {outlets} desaguó aquí; cuánta, no se sabe.",
        "used: shut": (
            "Corrió agua por {outlets} y no llegó aquí, pero con las llaves cerradas después, esta"
            " parte ya no aguanta."
        ),
        "used: no frost": (
            "Corrió agua por {outlets} y pasó por aquí, pero a {lowest_degC}, lo más frío a que"
            " estuvo la casa rodante, ni siquiera el agua se congela."
        ),
        "used: not known": (
            "Nadie ha dicho si corrió agua después de la preparación para el invierno."
        ),
        "older: limed": (
            "Hay sarro o manchas dentro de la grieta: ya estaba antes de este invierno."
        ),
        "older: fresh": "La grieta es reciente.",
        "older: not known": "Nadie ha dicho cómo se ve la grieta por dentro.",
        "colder: burst": (
            "Comprobada hasta {low_degC}; la casa rodante estuvo a {lowest_degC}, y calculada para"
            " eso revienta."
        ),
        "colder: not colder": (
            "La casa rodante no estuvo a menos de {lowest_degC}; debía aguantar hasta {low_degC}."
        ),
        "colder: held": (
            "La casa rodante estuvo a {lowest_degC}, y también hasta ahí está comprobada."
        ),
        "colder: margin": (
            "La casa rodante estuvo a {lowest_degC}; con ese frío reventaría solo dentro del margen"
            " que todo veredicto guarda."
        ),
        "colder: unproven": (
            "Comprobada hasta {low_degC}; la casa rodante estuvo a {lowest_degC}: con ese frío"
            " nadie puede responder por ella, y no se ha mostrado que reviente."
        ),
        "colder: already open": (
            "Hizo más frío que la mínima de diseño, hasta {lowest_degC}, pero de entrada la parte"
            " no estaba comprobada hasta {low_degC}."
        ),
        "colder: heated": (
            "La casa rodante estuvo a {lowest_degC}, pero la parte está en un espacio que, según se"
            " dice, siguió con calefacción."
        ),
        "colder: not known": "Nadie ha dicho cuánto frío hizo.",
        "colder: no proof": (
            "Hizo más frío que {low_degC}, hasta {lowest_degC}; no hay un cálculo para una parte"
            " así."
        ),
        "wear: worn": "Se encontró quebradiza, corroída o desgastada hasta romperse.",
        "wear: sound": "Se miró y no está desgastada.",
        "wear: not known": "Nadie ha dicho si estaba desgastada.",
    }
)
"""What is found on each cause, by key."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "missed: unproven": ("Quien hizo el trabajo quizá sepa lo que no está en el registro."),
        "missed: mild": "Averigüe cuánto frío hizo en la parte misma.",
        "missed: nothing recorded": (
            "Busque el registro del trabajo, o la hoja de trabajo ya llenada."
        ),
        "missed: no proof": "Averigüe a mano qué quedó dentro.",
        "used: pumped": ("Pregunte si el agua vino del tanque de agua potable o de la manguera."),
        "used: shut": "Pregunte si las llaves se dejaron cerradas o abiertas.",
        "used: below": "Pregunte cuánta agua corrió, y vea qué tan llena estaba la parte.",
        "used: no frost": "Averigüe cuánto frío hizo en la parte misma.",
        "used: not known": "Pregunte a quien tuvo la casa rodante qué llaves se abrieron.",
        "older: not known": ("Córtela y mire dentro de la grieta: ¿limpia, o con sarro y manchas?"),
        "colder: margin": (
            "Busque una lectura de la temperatura más baja tomada más cerca de la casa rodante."
        ),
        "colder: unproven": "Mida lo que todavía hay en las partes de al lado.",
        "colder: already open": "Aclare primero qué se omitió.",
        "colder: heated": ("Averigüe cuánto frío hizo en ese espacio, o si falló su calefacción."),
        "colder: not known": (
            "Tome la más baja del invierno en la estación meteorológica más cercana."
        ),
        "colder: no proof": "Averigüe a mano qué quedó dentro.",
        "wear: not known": "Mire la parte: ¿quebradiza, corroída, delgada?",
    }
)
"""What would settle a cause that is open."""

LOOK: Mapping[str, str] = MappingProxyType(
    {
        "not relieved": ("Es rígida, y nada la había abierto: lo que se congeló no tenía lugar."),
        "sealed": "Es rígida y cerrada: lo que se congeló dentro no tenía lugar.",
        "assumed": "Lo que se afirma de ella se apoya en supuestos. {assumed}",
        "attested": "Que se hizo se apoya en una marca en el registro.",
        "no reading": "No se hizo ninguna lectura de lo que contenía.",
        "computed": (
            "Lo que contenía se calculó a partir de la ficha: compare longitudes, alturas y"
            " accesorios con la casa rodante."
        ),
        "worn": "Nadie ha dicho si estaba desgastada: mire.",
    }
)
"""What a claim rests on that somebody can still look at."""

INCIDENT: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Reventó en {coach}, hallado el {day}",
        "fall": "El otoño, según lo registrado: {verdict}",
        "cause missed": "omisión en el otoño",
        "cause used": "uso posterior",
        "cause older": "grieta más antigua",
        "cause colder": "más frío que la mínima de diseño",
        "cause wear": "desgaste",
        "weight supported": "con respaldo",
        "weight against": "en contra",
        "weight open": "sin decidir",
        "line": "{cause}, {weight}: {text}",
        "supported one": "{part}: una causa tiene respaldo: {causes}.",
        "supported many": "{part}: tienen respaldo {causes}; cuál de ellas fue, no se dice.",
        "open": "{part}: ninguna causa tiene respaldo; sin decidir: {causes}.",
        "not explained": "{part}: el registro no lo explica. Qué mirar:",
        "step said": "paso {n} ({step}), {result} en el renglón {event}",
        "step unsaid": "paso {n} ({step})",
        "result skipped": "omitido",
        "result failed": "fallido",
        "result not on this coach": "dado por ausente en esta casa rodante",
        "limits": (
            "Lo que tiene respaldo no está comprobado, y ninguna causa es una persona. El registro"
            " dice lo que se hizo, y el cálculo lo que eso deja."
        ),
        "no proof": "no hay un cálculo para una parte así",
        "not said": "nadie lo ha dicho, ni lo contrario",
        "lowest not known": "nadie ha dicho cuánto frío hizo",
        "water not known": "nadie ha dicho si después corrió agua",
    }
)
"""Headings and pieces."""
