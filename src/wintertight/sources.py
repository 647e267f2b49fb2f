"""The bibliography as data, by subject: every number that is not ours has a key here.

A mark says how far a number can be trusted:

  published         seen in print
  reproduced        remembered from the named publication and confirmed by calculation
  memory            remembered, not confirmed
  common practice   what the trade does, without a source
  calculated        computed from a stated formula, or by another engine
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

Mark = Literal["published", "reproduced", "memory", "common practice", "calculated"]


@dataclass(frozen=True, slots=True)
class Source:
    """One work, or one kind of knowledge.

    Attributes:
        key: the word by which docstrings and tests name it.
        author: people or body.
        title: title of the work.
        edition_or_year: edition and year; empty where there is none.
        mark: how far its numbers can be trusted here.
    """

    key: str
    author: str
    title: str
    edition_or_year: str
    mark: Mark


_ALL = (
    Source(
        "ashrae-fundamentals",
        "ASHRAE",
        "Handbook - Fundamentals, chapter Physical Properties of Secondary Coolants (Brines)",
        "2009 and later",
        "reproduced",
    ),
    Source(
        "lange", "N. A. Lange, J. A. Dean", "Handbook of Chemistry", "15th ed., 1999", "published"
    ),
    Source("math-for-hvacr", "Goodheart-Willcox", "Math for HVACR", "2018", "published"),
    Source(
        "melinder",
        "A. Melinder",
        "Properties of Secondary Working Fluids for Indirect Systems",
        "IIR, 2nd ed., 2010",
        "published",
    ),
    Source(
        "coolprop",
        "I. H. Bell, J. Wronski, S. Quoilin, V. Lemort",
        "Pure and Pseudo-pure Fluid Thermophysical Property Evaluation and the Open-Source "
        "Thermophysical Property Library CoolProp, Ind. Eng. Chem. Res. 53, 2498-2508",
        "2014",
        "calculated",
    ),
    Source(
        "iapws-r14-08",
        "IAPWS",
        "R14-08(2011), Revised Release on the Pressure along the Melting and Sublimation Curves "
        "of Ordinary Water Substance",
        "2011",
        "reproduced",
    ),
    Source(
        "iapws-sr6-08",
        "IAPWS",
        "SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa",
        "2011",
        "reproduced",
    ),
    Source(
        "kell",
        "G. S. Kell",
        "Density, thermal expansivity, and compressibility of liquid water from 0 to 150 degC, "
        "J. Chem. Eng. Data 20, 97-105",
        "1975",
        "reproduced",
    ),
    Source(
        "fritsch-carlson",
        "F. N. Fritsch, R. E. Carlson",
        "Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17, 238-246",
        "1980",
        "published",
    ),
    Source("crc", "CRC Press", "Handbook of Chemistry and Physics", "", "published"),
    Source(
        "astm-f876",
        "ASTM International",
        "F876, Standard Specification for Crosslinked Polyethylene (PEX) Tubing",
        "",
        "published",
    ),
    Source(
        "astm-b88-type-l",
        "ASTM International",
        "B88, Standard Specification for Seamless Copper Water Tube, type L, as reprinted in "
        "piping tables",
        "",
        "published",
    ),
    Source(
        "astm-b88-type-m",
        "ASTM International",
        "B88, Standard Specification for Seamless Copper Water Tube, type M",
        "",
        "memory",
    ),
    Source(
        "astm-d3309",
        "ASTM International",
        "D3309, Standard Specification for Polybutylene (PB) Plastic Hot- and Cold-Water "
        "Distribution Systems",
        "1996, withdrawn 2010",
        "memory",
    ),
    Source(
        "ppi-tr-52",
        "Plastics Pipe Institute",
        "TR-52, Resistance of PEX Pipe and Tubing to Breakage When Frozen",
        "2020",
        "published",
    ),
    Source(
        "pex-loss-table",
        "tubing makers' design guides",
        "Friction loss and listed volume of PEX tubing SDR-9",
        "",
        "published",
    ),
    Source(
        "todini-pilati",
        "E. Todini, S. Pilati",
        "A gradient algorithm for the analysis of pipe networks, in Computer Applications in "
        "Water Supply vol. 1",
        "1988",
        "published",
    ),
    Source(
        "epanet-manual",
        "L. A. Rossman, H. Woo, M. Tryby, F. Shang, R. Janke, T. Haxton",
        "EPANET 2.2 User Manual, EPA/600/R-20/133",
        "2020",
        "published",
    ),
    Source(
        "epanet",
        "Open Water Analytics community",
        "EPANET 2.3, the hydraulic engine",
        "2.3",
        "calculated",
    ),
    Source(
        "us-standard-atmosphere",
        "NOAA, NASA, United States Air Force",
        "U.S. Standard Atmosphere, NOAA-S/T 76-1562",
        "1976",
        "memory",
    ),
    Source(
        "fluids",
        "C. Bell and contributors",
        "fluids: fluid dynamics component of the Chemical Engineering Design Library",
        "1.x",
        "calculated",
    ),
    Source("white", "F. M. White", "Fluid Mechanics, ch. 6", "7th ed., 2011", "published"),
    Source(
        "churchill",
        "S. W. Churchill",
        "Friction-factor equation spans all fluid-flow regimes, Chem. Eng. 84(24), 91-92",
        "1977",
        "published",
    ),
    Source(
        "swamee-jain",
        "P. K. Swamee, A. K. Jain",
        "Explicit equations for pipe-flow problems, J. Hydraulics Div. ASCE 102, 657-664",
        "1976",
        "published",
    ),
    Source(
        "colebrook",
        "C. F. Colebrook",
        "Turbulent flow in pipes, with particular reference to the transition region between "
        "the smooth and rough pipe laws, J. Inst. Civ. Eng. 11, 133-156",
        "1939",
        "published",
    ),
    Source(
        "levenspiel",
        "O. Levenspiel",
        "Chemical Reaction Engineering",
        "3rd ed., 1999",
        "published",
    ),
    Source(
        "burgers-1998",
        "G. Burgers, P. J. van Leeuwen, G. Evensen",
        "Analysis scheme in the ensemble Kalman filter",
        "Monthly Weather Review 126, 1998",
        "reproduced",
    ),
    Source(
        "taylor-1953",
        "G. I. Taylor",
        "Dispersion of soluble matter in solvent flowing slowly through a tube, "
        "Proc. R. Soc. Lond. A 219, 186-203",
        "1953",
        "published",
    ),
    Source(
        "taylor-1954",
        "G. I. Taylor",
        "The dispersion of matter in turbulent flow through a pipe, "
        "Proc. R. Soc. Lond. A 223, 446-468",
        "1954",
        "memory",
    ),
    Source(
        "aris",
        "R. Aris",
        "On the dispersion of a solute in a fluid flowing through a tube, "
        "Proc. R. Soc. Lond. A 235, 67-77",
        "1956",
        "published",
    ),
    Source(
        "extrand",
        "C. W. Extrand",
        "Spontaneous Draining of Liquids from Vertically Oriented Tubes, Langmuir 33, 12903-12907",
        "2017",
        "published",
    ),
    Source(
        "bretherton",
        "F. P. Bretherton",
        "The motion of long bubbles in tubes, J. Fluid Mech. 10, 166-188",
        "1961",
        "published",
    ),
    Source(
        "benjamin",
        "T. B. Benjamin",
        "Gravity currents and related phenomena, J. Fluid Mech. 31, 209-248",
        "1968",
        "memory",
    ),
    Source("wallis", "G. B. Wallis", "One-dimensional Two-phase Flow", "1969", "memory"),
    Source(
        "wallis-dobson",
        "G. B. Wallis, J. E. Dobson",
        "The onset of slugging in horizontal stratified air-water flow, "
        "Int. J. Multiphase Flow 1, 173-193",
        "1973",
        "memory",
    ),
    Source(
        "zukoski",
        "E. E. Zukoski",
        "Influence of viscosity, surface tension, and inclination angle on motion of long bubbles "
        "in closed tubes, J. Fluid Mech. 25, 821-837",
        "1966",
        "memory",
    ),
    Source(
        "aussillous-quere",
        "P. Aussillous, D. Quere",
        "Quick deposition of a fluid on the wall of a tube, Phys. Fluids 12, 2367-2371",
        "2000",
        "memory",
    ),
    Source(
        "carslaw-jaeger",
        "H. S. Carslaw, J. C. Jaeger",
        "Conduction of Heat in Solids",
        "2nd ed., 1959",
        "published",
    ),
    Source(
        "churchill-bernstein",
        "S. W. Churchill, M. Bernstein",
        "A correlating equation for forced convection from gases and liquids to a circular"
        " cylinder in crossflow, J. Heat Transfer 99, 300-306",
        "1977",
        "memory",
    ),
    Source(
        "ashrae-insulation",
        "ASHRAE",
        "Handbook - Fundamentals, chapter Insulation for Mechanical Systems, time to freezing",
        "2009 and later",
        "reproduced",
    ),
    Source(
        "london-seban",
        "A. L. London, R. A. Seban",
        "Rate of ice formation, Trans. ASME 65, 771-778",
        "1943",
        "memory",
    ),
    Source(
        "gordon",
        "J. R. Gordon",
        "An investigation into freezing and bursting water pipes in residential construction, "
        "Building Research Council, University of Illinois",
        "1996",
        "published",
    ),
    Source(
        "cdc-vsp-2018",
        "Centers for Disease Control and Prevention",
        "Vessel Sanitation Program 2018 Operations Manual",
        "2018",
        "published",
    ),
    Source(
        "california-title-25",
        "State of California",
        "Code of Regulations, Title 25, section 1362",
        "",
        "published",
    ),
    Source(
        "29-cfr-1910.242",
        "United States",
        "29 CFR 1910.242(b), compressed air used for cleaning",
        "",
        "published",
    ),
    Source(
        "21-cfr-184.1666",
        "United States",
        "21 CFR 184.1666, propylene glycol affirmed as safe in food",
        "",
        "published",
    ),
    Source(
        "21-cfr-582.1666",
        "United States",
        "21 CFR 582.1666, propylene glycol, not for cat food",
        "",
        "published",
    ),
    Source(
        "49-cfr-565.15",
        "United States",
        "49 CFR 565.15, content of the vehicle identification number",
        "",
        "published",
    ),
    Source(
        "health-canada-ethylene-glycol",
        "Health Canada",
        "Ethylene glycol: human lethal dose",
        "",
        "published",
    ),
    Source("nist-sp-811", "NIST", "SP 811, Guide for the Use of the SI", "2008", "published"),
    Source("common-practice", "the trade", "Common practice", "", "common practice"),
    Source("memory", "the authors", "From memory, not confirmed", "", "memory"),
    Source("calculated", "the authors", "Computed from a stated formula", "", "calculated"),
)

SOURCES: Mapping[str, Source] = MappingProxyType({source.key: source for source in _ALL})
"""Every source by its key."""


def cite(key: str) -> str:
    """Give one line for a source by its key in `SOURCES`: what it is, and its mark.

    Example:
        >>> cite("math-for-hvacr")
        'Goodheart-Willcox: Math for HVACR (2018) [published]'
    """
    return f"{named(key)} [{SOURCES[key].mark}]"


def named(key: str) -> str:
    """Give author, title, edition or year of a source, without its mark."""
    source = SOURCES[key]
    when = f" ({source.edition_or_year})" if source.edition_or_year else ""
    return f"{source.author}: {source.title}{when}"
