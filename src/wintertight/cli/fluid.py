"""``wintertight fluid``: what one mixture does in the cold."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import TYPE_CHECKING, Annotated, Any

import typer

from wintertight.cli.answer import Answer, columns, json_text
from wintertight.cli.asked import one_of, quantity
from wintertight.cli.options import AsJson
from wintertight.errors import ChoiceError, OutOfRange
from wintertight.units import celsius_to_fahrenheit

if TYPE_CHECKING:
    from wintertight.fluids.contents import Contents

SCHEMA = "wintertight/fluid/1"
USUAL = "20 degC"


def fluid(
    *,
    glycol_mass: Annotated[
        str | None,
        typer.Option("--glycol-mass", metavar="X", help="propylene glycol by mass: 0.30, 30%"),
    ] = None,
    glycol_volume: Annotated[
        str | None,
        typer.Option("--glycol-volume", metavar="X", help="propylene glycol by volume"),
    ] = None,
    ethanol_mass: Annotated[
        str | None, typer.Option("--ethanol-mass", metavar="X", help="ethanol by mass")
    ] = None,
    at: Annotated[
        str, typer.Option("--at", metavar="T", help="temperature, such as -20F or -29degC")
    ] = USUAL,
    as_json: AsJson = False,
) -> Answer:
    """Say when a mixture freezes, when its slush bursts, and how it flows; water if none given."""
    given = {
        "--glycol-mass": glycol_mass,
        "--glycol-volume": glycol_volume,
        "--ethanol-mass": ethanol_mass,
    }
    contents = _contents({option: text for option, text in given.items() if text is not None})
    found = properties(contents, quantity(at, "--at", "temperature"))
    return Answer(json_text(SCHEMA, found) if as_json else _table(found))


def _contents(given: dict[str, str]) -> "Contents":
    from wintertight.fluids.contents import Contents
    from wintertight.fluids.ethanol import volume_share_ethanol
    from wintertight.fluids.glycol import volume_share_glycol

    if len(given) > 1:
        message = f"expected only one of {one_of(given)}: a blend has no published values"
        raise ChoiceError(message)
    for option, text in given.items():
        share = quantity(text, option, "share")
        if option == "--glycol-mass":
            return Contents(glycol=volume_share_glycol(share))
        if option == "--glycol-volume":
            return Contents(glycol=share)
        return Contents(ethanol=volume_share_ethanol(share))
    return Contents()


def properties(contents: "Contents", at_degC: float) -> dict[str, Any]:
    """Give everything the command says, by the keys of its JSON.

    Args:
        contents: one liquid.
        at_degC: temperature of ice, density and viscosity [degC].

    Returns:
        Numbers in SI units and degC, None where one cannot be said; ``why_null`` holds the reason
        for each None.
    """
    from wintertight.cold.burst import VERDICT_MARGIN_K, burst_limit_degC
    from wintertight.fluids.slush import freezing_point, ice_fraction

    freezing = freezing_point(contents)
    limit, why_no_limit = burst_limit_degC(contents)
    ice = ice_fraction(contents, at_degC)
    density, viscosity, why_not_moving = _transport(contents, at_degC)
    why = {
        "freezing_point_degC": freezing.why_null,
        "burst_limit_degC": why_no_limit,
        "ice_fraction": ice.why_null,
        "density_kg_m3": why_not_moving,
        "viscosity_Pa_s": why_not_moving,
    }
    return {
        "volume_shares": dict(contents.as_mapping()),
        "at_degC": at_degC,
        "freezing_point_degC": freezing.point_degC,
        "freezing_point_at_most_degC": freezing.at_most_degC,
        "verdict_margin_K": VERDICT_MARGIN_K,
        "burst_limit_degC": limit,
        "ice_fraction": ice.fraction,
        "ice_fraction_at_least": ice.at_least,
        "density_kg_m3": density,
        "viscosity_Pa_s": viscosity,
        "why_null": {key: reason for key, reason in why.items() if reason is not None},
    }


def _transport(
    contents: "Contents", at_degC: float
) -> tuple[float | None, float | None, str | None]:
    """Give density [kg/m3] and viscosity [Pa s], or the reason why neither can be said."""
    from wintertight.fluids.transport import transport

    try:
        found = transport(contents, at_degC)
    except OutOfRange:
        return None, None, "beyond the table"
    return found.density_kg_m3, found.viscosity_Pa_s, found.why_null


def _table(found: dict[str, Any]) -> str:
    why = found["why_null"]
    freezes = _degrees(found["freezing_point_degC"], why.get("freezing_point_degC"))
    if found["freezing_point_degC"] is None and found["freezing_point_at_most_degC"] is not None:
        freezes = f"below {_degrees(found['freezing_point_at_most_degC'], None)}"
    ice = _number(found["ice_fraction"], 100.0, ".0f", "% of the mass", why.get("ice_fraction"))
    rho = _number(found["density_kg_m3"], 1.0, ".1f", "kg/m3", why.get("density_kg_m3"))
    mu = _number(found["viscosity_Pa_s"], 1e3, ".3g", "mPa s", why.get("viscosity_Pa_s"))
    bursts = _degrees(found["burst_limit_degC"], why.get("burst_limit_degC"))
    at = _degrees(found["at_degC"], None)
    shares = ", ".join(
        f"{100 * share:.3g} % {part}" for part, share in found["volume_shares"].items() if share
    )
    margin = found["verdict_margin_K"]
    return "\n".join(
        (
            f"By volume: {shares}",
            columns(
                [
                    ("first ice", freezes),
                    ("slush bursts nothing down to", bursts),
                    (f"ice at {at}", ice),
                    (f"density at {at}", rho),
                    (f"viscosity at {at}", mu),
                ]
            ),
            f"A verdict is taken {margin:g} K colder than the design low.",
        )
    )


def _degrees(value: float | None, why: str | None) -> str:
    if value is None:
        return f"not known: {why}"
    # Adding nothing takes the sign off a zero that rounding left negative.
    celsius, fahrenheit = round(value, 1) + 0.0, round(celsius_to_fahrenheit(value), 1) + 0.0
    return f"{celsius:.1f} °C ({fahrenheit:.1f} °F)"


def _number(value: float | None, factor: float, form: str, unit: str, why: str | None) -> str:
    return f"not known: {why}" if value is None else f"{value * factor:{form}} {unit}"
