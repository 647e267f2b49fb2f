"""English: the choices that are offered about a coach, and what is said between the questions."""

from collections.abc import Mapping
from types import MappingProxyType

CHOICES: Mapping[str, str] = MappingProxyType(
    {
        "shape: tent trailer": "tent trailer",
        "shape: teardrop": "teardrop",
        "shape: truck camper": "truck camper",
        "shape: short travel trailer": "short travel trailer",
        "shape: long bunkhouse trailer": "long bunkhouse trailer",
        "shape: rear-kitchen trailer": "rear-kitchen trailer",
        "shape: fifth wheel, one bath": "fifth wheel, one bath",
        "shape: fifth wheel, two baths": "fifth wheel, two baths",
        "shape: camper van": "camper van",
        "shape: cab-over motorhome": "cab-over motorhome",
        "shape: rear-engine motorhome": "rear-engine motorhome",
        "shape: toy hauler": "toy hauler",
        "shape: park model": "park model",
        "heater: tank of 6 gal": "tank of 6 gal",
        "heater: tank of 10 gal": "tank of 10 gal",
        "heater: tank of 16 gal": "tank of 16 gal",
        "heater: on-demand heater": "on-demand heater, no tank",
        "heater: hydronic coil": "hydronic coil, off a furnace or the engine",
        "heater: no heater": "no heater",
        "bypass: three valves": "three valves",
        "bypass: one valve and checks": "one valve, and check valves that do the rest",
        "bypass: no bypass": "no bypass",
        "baths: one bath": "one bath",
        "baths: two baths": "two baths",
        "baths: one and a half": "one and a half",
        "baths: no bath": "no bath",
        "appliances: ice maker": "ice maker",
        "appliances: door dispenser": "dispenser in the fridge door",
        "appliances: dishwasher": "dishwasher",
        "appliances: washer": "washer for clothes",
        "outside: outside shower": "outside shower",
        "outside: outside kitchen": "outside kitchen",
        "outside: spray port": "spray port",
        "antifreeze inlet: hose with a valve": "a hose with a valve of its own",
        "antifreeze inlet: three-way valve": "a three-way valve",
        "antifreeze inlet: service panel": "a service panel in the bay",
        "antifreeze inlet: no inlet": "no inlet",
        "water treatment: filter housing": "filter housing (a canister)",
        "water treatment: membrane filter": "membrane filter (reverse osmosis)",
        "water treatment: softener": "softener",
        "water treatment: UV sleeve": "UV lamp",
        "toilet: gravity toilet": "gravity toilet, with a pedal",
        "toilet: vacuum toilet": "vacuum toilet",
        "toilet: macerating toilet": "macerating toilet, with a button",
        "toilet: cassette toilet": "cassette toilet",
        "tub: tub": "tub",
        "tub: whirlpool": "whirlpool, with jets",
        "dead ends: capped tee": "capped tee: a branch with a cap on it",
        "dead ends: prepared stub": "prepared stub: hookups for a washer that is not there",
        "mixing: tempering valve": "tempering valve at the heater",
        "mixing: recirculating diverter": "recirculating diverter: a button that saves water",
        "waste side: tank rinse": "tank rinse: a hose inlet on the black tank",
        "waste side: macerator": "macerator pump",
        "branches: tees": "one line with tees",
        "branches: manifold": "a manifold: one line for each tap",
        "low points: cold only": "one, on the cold side only",
        "low points: two": "two, hot and cold",
        "low points: none": "none",
        "belly: closed and heated": "closed, and heated by the furnace",
        "belly: closed": "closed, not heated",
        "belly: open": "open, pipes in sight",
        "pipe: PEX": "PEX, bends and springs back",
        "pipe: polybutylene": "polybutylene, gray, marked PB",
        "pipe: copper L": "copper, type L (blue print, the usual)",
        "pipe: copper M": "copper, type M (red print, thinner)",
        "heater tank: steel with anode": "steel, with an anode rod",
        "heater tank: aluminum": "aluminum",
        "heater tank: stainless steel": "stainless steel",
        "on the hose: pressure regulator": "pressure regulator",
        "on the hose: supply hose": "the supply hose",
        "on the hose: outside filter": "outside filter",
    }
)
"""What each choice is called, by its question."""

NOT_UNDERSTOOD: Mapping[str, str] = MappingProxyType(
    {
        "nothing typed": "Nothing was typed. If nobody has looked, type -",
        "no such number": "There is no {typed}. Type a number from 1 to {most}.",
        "no such choice": "'{typed}' is none of them. Type a number from 1 to {most}, or a name.",
        "several fit": "'{typed}' could be {choices}. Type the number.",
        "number or size": "'{typed}' could be {choices}. Type a word of it.",
        "one only": "Only one of them, please. Type one number.",
        "none or some": "'{typed}' says none and something as well. Type none, or their numbers.",
        "yes or no": "'{typed}' is neither yes nor no. Type y or n.",
        "unit missing": "{typed} of what? Type it with its unit, like {example}.",
        "no quantity": "'{typed}' cannot be read. Type a number and its unit, like {example}.",
        "outside": "{typed} is hard to believe: expected {least} to {most_size}. Look again.",
        "no way back": "This is the first question; there is nothing to go back to.",
        "cannot stay open": "This one needs a yes or a no. Type y or n.",
    }
)
"""Why an answer was not understood, and what to type."""

TALK: Mapping[str, str] = MappingProxyType(
    {
        "keys": "?  why it matters   -  nobody has looked   <  back   !  what is known so far",
        "resumed": "Going on with {file}.",
        "heading": "Question {number} of {of}, {stage}",
        "stage phone": "on the phone",
        "stage walk-around": "around the coach",
        "choice": "  {number}  {choice}",
        "prompt one": "Number: ",
        "prompt several": "Numbers, or none: ",
        "prompt yes or no": "y or n: ",
        "prompt quantity": "With its unit: ",
        "noted": "Noted: {subject}: {answer}.",
        "noted open": "Left open: {subject}.",
        "none": "none",
        "yes": "yes",
        "no": "no",
        "known": "Known:",
        "nothing known": "Nothing is known yet.",
        "known line": "  {subject}: {answer}",
        "nothing open": "Nothing is left open.",
        "open": "Left open: {subjects}.",
        "open kinds": (
            "Nobody has looked for: {kinds}. Every plan tells them unproven until somebody does;"
            " none is taken for absent."
        ),
        "guessed": (
            "Guessed, as is usual for this kind of coach: {subjects}. The card says so, and bands"
            " are wider for it."
        ),
        "no low": (
            "No coldest night is known: each plan must be told one, like: wintertight plan {file}"
            " --low=-20F"
        ),
        "written": "Written: {file}. Next: wintertight plan {path}{product}{low}",
        "which product": " --product NAME",
        "which low": " --low=-20F",
        "not written": "No card was written. The answers are in {file}; the same command goes on.",
        "name": "{shape}, {length}",
        "anew": "more was answered about the coach",
        "head": "Made from the answers in {file}; lines run as is usual for its kind of coach.",
        "head 2": "What is only guessed is marked so, and what nobody has looked at as well.",
    }
)
"""What is said between the questions."""

TYPED: Mapping[str, str] = MappingProxyType(
    {
        "yes": "yes, y",
        "no": "no, n",
        "none": "none, no, n, nothing, 0",
        "unseen": "-, not looked at",
        "between": "and",
    }
)
"""What people type, parted by commas: accents and capitals do not count."""
