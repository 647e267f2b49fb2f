"""Many coaches in words: bands short enough for a row, and what all of them come to."""

from collections.abc import Iterator

from wintertight.procedure.bands import Band
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.plans import five_minutes_s, to_five_minutes
from wintertight.wording.spoken import counted


def volume_band(
    band: Band, language: str = "en", system: System = "us", *, in_a_row: bool = False
) -> str:
    """Give a volume with its band; the unit once where it is the same throughout.

    Args:
        band: volumes [m3].
        language: two letters.
        system: "us" or "metric".
        in_a_row: as short as a table needs it.

    Returns:
        The words.

    Example:
        >>> volume_band(Band(0.0053, 0.0068, 0.0084))
        '1.8 gal (1.4 to 2.2)'
        >>> volume_band(Band(0.0008, 0.0009, 0.0011), in_a_row=True)
        '30 fl oz (27 fl oz-0.3 gal)'
    """
    key = "band in a row" if in_a_row else "band"
    low, middle, high = (
        in_words(volume, "volume", system) for volume in (band.p05, band.p50, band.p95)
    )
    units = {said.partition(" ")[2] for said in (low, middle, high)}
    if len(units) == 1:
        low, high = low.partition(" ")[0], high.partition(" ")[0]
    return say("fleet", key, language, low=low, middle=middle, high=high)


def minutes_band(band: Band, language: str = "en") -> str:
    """Give the time of one job with its band, to five minutes, as short as a table needs it.

    Example:
        >>> minutes_band(Band(3500.0, 4221.0, 5300.0))
        '70 min (60-90)'
    """
    low, middle, high = (
        f"{five_minutes_s(seconds) / 60.0:.0f}" for seconds in (band.p05, band.p50, band.p95)
    )
    return say("fleet", "minutes in a row", language, low=low, middle=middle, high=high)


def time_band(band: Band, language: str = "en") -> str:
    """Give a time with its band, to five minutes.

    Example:
        >>> time_band(Band(17000.0, 18900.0, 20900.0))
        '5 h 15 min (4 h 45 min to 5 h 50 min)'
    """
    low, middle, high = (to_five_minutes(s) for s in (band.p05, band.p50, band.p95))
    return say("fleet", "band", language, low=low, middle=middle, high=high)


def jugs_in_a_row(count: int, spare: int, language: str = "en") -> str:
    """Give the jugs to bring, and to have besides.

    Example:
        >>> jugs_in_a_row(2, 0), jugs_in_a_row(2, 1)
        ('2', '2 + 1')
    """
    key = "jugs and spare in a row" if spare else "jugs in a row"
    return say("fleet", key, language, count=str(count), spare=str(spare))


def verdict_in_a_row(
    gaps: int, unproven: int, low_degC: float, language: str = "en", system: System = "us"
) -> str:
    """Give a verdict with the number of parts on which it stands; never a bare "safe".

    Args:
        gaps: how many parts would burst [1].
        unproven: how many are not proven [1].
        low_degC: design low [degC].
        language: two letters.
        system: "us" or "metric".

    Returns:
        The words.

    Example:
        >>> verdict_in_a_row(2, 11, -28.9), verdict_in_a_row(0, 0, -28.9)
        ('2 would burst, 11 not proven', 'protected to -20 °F')
    """
    open_parts = {"gap": gaps, "unproven": unproven}
    told = [
        say("fleet", "some", language, count=str(count), what=say("label", what, language))
        for what, count in open_parts.items()
        if count
    ]
    if told:
        return say("phrase", "comma", language).join(told)
    return say("fleet", "safe", language, low=in_words(low_degC, "temperature", system))


def all_jugs(count: int, separately: int, language: str = "en") -> Iterator[str]:
    """Say what bringing each coach its own jugs would take, where it takes more."""
    if separately > count:
        yield say("fleet", "separately", language, jugs=counted(separately, "jugs", language))
