"""Spanish: what to mind at a step, and why an order is refused."""

from collections.abc import Mapping
from types import MappingProxyType

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "hot water": "Quemaduras: abra solo con el calentador frío.",
        "plug under pressure": (
            "Deje enfriar el calentador y abra una llave antes de sacar el tapón: agua hirviente a"
            " presión. El manual de la casa rodante tiene la última palabra."
        ),
        "low pressure by hand": (
            "Bombee con suavidad: un brazo puede pasar la presión que aguantan los accesorios."
        ),
        "air pressure": (
            "Nunca más de 50 psi de aire, diga lo que diga la presión nominal de las líneas: los"
            " accesorios ceden primero."
        ),
        "clean air": (
            "Solo aire sin aceite o filtrado: el aceite no debe entrar en líneas de agua potable."
        ),
        "eyes": "Protección para los ojos; nadie frente a una salida abierta.",
        "no engine indoors": "Ningún motor en marcha dentro de un taller cerrado.",
        "no flame": (
            "Sin llama, sin pistola de calor, sin vapor: solo aire tibio. Gas LP y 120 V: solo"
            " personal con licencia."
        ),
        "stop at a leak": (
            "Alguien vigila cada accesorio. A la primera gota: quite la presión, márquelo,"
            " deténgase."
        ),
        "sewer hose apart": (
            "La manguera de drenaje y sus guantes no tocan nada que lleve agua potable. Lávese las"
            " manos."
        ),
        "right product": (
            "Lea la etiqueta: para líneas de agua potable, sin diluir. Nunca anticongelante de"
            " motor: el etilenglicol es veneno."
        ),
        "face clear of the inlet": ("Aparte la cara de la toma: salpica al oprimir."),
        "waste antifreeze": (
            "El anticongelante va al tanque residual o a una estación de descarga, nunca al suelo;"
            " decide el reglamento local. Garrafas lejos de niños y mascotas."
        ),
        "pink proves little": ("El color dice poco: también lo da el débil."),
    }
)

HAZARDS: Mapping[str, str] = MappingProxyType(
    {
        "plug under pressure": (
            "El tapón saldría a presión: primero cierre el agua, apague la bomba y abra una llave."
        ),
        "plug while hot": (
            "El tapón saldría de un calentador encendido: primero apague el calor y deje que se"
            " enfríe."
        ),
        "heat without water": (
            "Se encendería el calentador vacío o en bypass: llénelo, y deje salir por una llave"
            " caliente un chorro parejo, antes de encender el calor."
        ),
        "heater drained while heated": (
            "Se vaciaría el calentador con el calor encendido: apáguelo."
        ),
        "spirit by a flame": (
            "Este producto puede prender fuego, y hay un quemador encendido: primero apague toda"
            " llama."
        ),
        "pressure on ice": (
            "Puede haber hielo en las líneas: ni bomba, ni aire, ni presión de agua antes de que se"
            " haya descongelado."
        ),
        "heat on ice": (
            "Puede haber hielo en el calentador: ni quemador ni resistencia antes de que esté"
            " descongelado, lleno y con agua corriendo."
        ),
        "bowl under pressure": (
            "Se abriría el vaso a presión: primero apague la bomba y abra una llave."
        ),
    }
)
