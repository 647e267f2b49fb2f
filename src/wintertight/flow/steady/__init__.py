"""Steady flow in a network of pipes, pumps and losses; it knows nothing about coaches."""

from wintertight.flow.steady.books import continuity_error
from wintertight.flow.steady.builder import NetworkBuilder
from wintertight.flow.steady.carrying import carrying_links
from wintertight.flow.steady.friction import (
    FrictionLaw,
    friction_factor_churchill,
    friction_factor_colebrook,
    friction_factor_epanet,
)
from wintertight.flow.steady.gradient import Steady, solve_steady
from wintertight.flow.steady.network import LinkKind, PipeNetwork

__all__ = [
    "FrictionLaw",
    "LinkKind",
    "NetworkBuilder",
    "PipeNetwork",
    "Steady",
    "carrying_links",
    "continuity_error",
    "friction_factor_churchill",
    "friction_factor_colebrook",
    "friction_factor_epanet",
    "solve_steady",
]
