"""Arguments and options that several commands have in common, said once."""

from typing import Annotated

import typer

CardFile = Annotated[str, typer.Argument(metavar="CARD.toml", help="the coach's card")]
Low = Annotated[
    str | None,
    typer.Option("--low", metavar="T", help="design low, such as -20F; else the card's"),
]
ProductName = Annotated[
    str | None,
    typer.Option("--product", metavar="NAME", help="antifreeze of the list; else the card's"),
]
ShopFile = Annotated[
    str | None,
    typer.Option("--shop", metavar="FILE", help="the shop's list; else shop.toml by the card"),
]
Language = Annotated[
    str, typer.Option("--language", metavar="en|es|fr", help="language of every sentence")
]
PlaceName = Annotated[
    str | None,
    typer.Option("--place", metavar="NAME", help="of the list, or bay, lot, yard, driveway"),
]
Regulator = Annotated[
    str | None,
    typer.Option("--regulator", metavar="P", help="air pressure, at most 50 psi"),
]
ScreenUnits = Annotated[
    str, typer.Option("--units", metavar="us|metric", help="units of the screen")
]
AsJson = Annotated[bool, typer.Option("--json", help="print one JSON object")]
Earlier = Annotated[
    list[str] | None,
    typer.Option("--earlier", metavar="RECORD.json", help="of an earlier visit; it teaches"),
]
