"""English: what to mind at a step, and why an order is refused."""

from collections.abc import Mapping
from types import MappingProxyType

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "hot water": "Scalding: let the heater cool before it is opened.",
        "plug under pressure": (
            "Let the heater cool and open a tap before the plug comes out: scalding water under"
            " pressure. The coach's manual has the last word."
        ),
        "low pressure by hand": "Pump gently: an arm can pass the pressure that fittings stand.",
        "air pressure": (
            "Never more than 50 psi of air, whatever the lines are rated for: fittings give first."
        ),
        "clean air": "Oil-free or filtered air only: oil does not belong in drinking water lines.",
        "eyes": "Eye protection; nobody before an open outlet.",
        "no engine indoors": "No engine runs in a closed bay.",
        "no flame": (
            "No flame, no heat gun, no steam: warm air only. LP gas and 120 V: licensed practice."
        ),
        "stop at a leak": (
            "Somebody watches each fitting. At the first drop: pressure off, mark it, stop."
        ),
        "sewer hose apart": (
            "Sewer hose and its gloves touch nothing that carries drinking water. Wash hands."
        ),
        "right product": (
            "Read the label: made for drinking water lines, undiluted. Never engine antifreeze:"
            " ethylene glycol is a poison."
        ),
        "face clear of the inlet": "Face clear of the inlet: it spurts while the check is in.",
        "waste antifreeze": (
            "Antifreeze goes to the waste tank or a dump, never on the ground; local code decides."
            " Keep jugs from children and pets."
        ),
        "pink proves little": "Colour proves little: weak antifreeze has it too.",
    }
)

HAZARDS: Mapping[str, str] = MappingProxyType(
    {
        "plug under pressure": (
            "The plug would come out under pressure: shut off the water, switch the pump off and"
            " open a tap first."
        ),
        "plug while hot": (
            "The plug would come out of a heater that is on: turn the heat off and let it cool"
            " first."
        ),
        "heat without water": (
            "The heater would be heated empty or bypassed: fill it, and let a hot tap run solid,"
            " before the heat goes on."
        ),
        "heater drained while heated": "The heater would be drained with its heat on: turn it off.",
        "spirit by a flame": (
            "This product can catch fire, and a burner is on: put out every flame first."
        ),
        "pressure on ice": (
            "Ice may stand in the lines: neither pump nor air nor water pressure before it has"
            " thawed."
        ),
        "heat on ice": (
            "Ice may stand in the heater: no burner and no element before it has thawed, is full"
            " and runs."
        ),
        "bowl under pressure": (
            "The bowl would be opened under pressure: switch the pump off and open a tap first."
        ),
    }
)
