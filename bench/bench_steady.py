"""Steady flow of a coach-like tree of 58 nodes: a warm solve against EPANET's, in one run."""

import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np

from tests.engines.epanet_twin import opened_for_timing
from wintertight.flow.steady import NetworkBuilder, PipeNetwork, solve_steady

ROUNDS = 7
SOLVES = 100


def coach_like_tree() -> PipeNetwork:
    """Lay a pump, a check valve and two trunks with nine taps each."""
    builder = NetworkBuilder().node("tank", fixed_head_m=0.3).node("pumped").node("main")
    builder.node("air", fixed_head_m=0.0)
    builder.pump("pump", "tank", "pumped", shutoff_m=35.0, coefficient=35.0 / 2e-4, exponent=1.0)
    builder.pipe("check", "pumped", "main", length_m=0.1, bore_m=0.0123, one_way=True)
    for side in ("cold", "hot"):
        last = "main"
        for i in range(9):
            tee, elbow, tap = (f"{side} {what} {i}" for what in ("tee", "elbow", "tap"))
            builder.node(tee).node(elbow).node(tap, 0.8)
            builder.pipe(f"to {tee}", last, tee, length_m=0.7, bore_m=0.0123, minor_loss=1.5)
            builder.pipe(f"to {elbow}", tee, elbow, length_m=0.4, bore_m=0.0123, minor_loss=0.5)
            builder.pipe(f"to {tap}", tee, tap, length_m=0.9, bore_m=0.0091, minor_loss=2.0)
            builder.loss(tap, tap, "air", coefficient=3e8)
            last = elbow
    return builder.build()


def best_ms(solve: Callable[[], object]) -> float:
    """Give the shortest mean time of a solve over some rounds [ms]."""
    times = []
    for _ in range(ROUNDS):
        begin = time.perf_counter()
        for _ in range(SOLVES):
            solve()
        times.append((time.perf_counter() - begin) / SOLVES)
    return 1e3 * min(times)


def measure() -> Iterator[str]:
    """Give a line for each number of open taps."""
    network = coach_like_tree()
    for taps in (["cold tap 5"], ["cold tap 5", "hot tap 8"]):
        is_open = np.array(
            [" tap" not in n or n[:2] == "to" or n in taps for n in network.link_ids]
        )
        flow = solve_steady(network, is_open, 1.0e-6).flow_m3_s
        lot = np.random.default_rng(1)
        fluids = iter(lot.uniform(1.0e-6, 1.1e-6, (ROUNDS * SOLVES, flow.size)))

        def warm(
            is_open: np.ndarray = is_open,
            flow: np.ndarray = flow,
            fluids: Iterator[np.ndarray] = fluids,
        ) -> object:
            return solve_steady(network, is_open, next(fluids), start_flows=flow)

        ours = best_ms(warm)
        with (
            tempfile.TemporaryDirectory() as folder,
            opened_for_timing(network, is_open, 1.0e-6, Path(folder)) as solve_there,
        ):
            theirs = best_ms(solve_there)
        yield (
            f"steady flow, {len(network.node_ids)} nodes, {flow.size} links, {len(taps)} open: "
            f"{ours:.3f} ms warm, EPANET {theirs:.3f} ms, ratio {ours / theirs:.2f}"
        )
