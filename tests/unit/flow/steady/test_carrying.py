import numpy as np

from wintertight.flow.steady import NetworkBuilder, carrying_links
from wintertight.flow.steady.network import PipeNetwork


def laid(held: str, pipes: str, demand: str = "", pumps: str = "") -> PipeNetwork:
    """Lay pipes named by their two ends, one letter each."""
    builder = NetworkBuilder()
    for name in sorted(set(held + pipes.replace(" ", "") + demand + pumps.replace(" ", ""))):
        builder.node(
            name,
            fixed_head_m=1.0 if name in held else None,
            demand_m3_s=1e-4 if name in demand else 0.0,
        )
    for i, way in enumerate(pipes.split()):
        builder.pipe(f"{i}{way}", way[0], way[1], length_m=1.0, bore_m=0.01)
    for way in pumps.split():
        builder.pump(f"p{way}", way[0], way[1], shutoff_m=1.0, coefficient=1.0, exponent=1.0)
    return builder.build()


def carried(network: PipeNetwork, shut: str = "") -> set[str]:
    """Give the two ends of each link that carries."""
    is_open = np.array([name[1:] not in shut.split() for name in network.link_ids])
    carrying = carrying_links(network, is_open)
    return {name[1:] for name, yes in zip(network.link_ids, carrying, strict=True) if yes}


def test_a_dead_end_carries_nothing() -> None:
    """Guards a branch to a plug: only the way from held head to held head carries."""
    assert carried(laid("ad", "ab bc cd be ef")) == {"ab", "bc", "cd"}


def test_a_ring_behind_one_tee_carries_nothing() -> None:
    """Guards a ring that hangs on one node, alone or between two parallel pipes."""
    assert carried(laid("ac", "ab bc bd de ef fd")) == {"ab", "bc"}
    assert carried(laid("ac", "ab bc bd bd")) == {"ab", "bc"}


def test_both_sides_of_a_loop_carry() -> None:
    """Guards a loop within the way, which carries on both its sides."""
    assert carried(laid("af", "ab bc ce bd de ef")) == {"ab", "bc", "ce", "bd", "de", "ef"}


def test_a_closed_link_cuts_its_way() -> None:
    """Guards that what only a closed link would feed carries nothing."""
    assert carried(laid("ad", "ab bc cd bd"), shut="bc") == {"ab", "bd"}


def test_one_held_head_alone_moves_nothing() -> None:
    """Guards a network with one held head, and one with none."""
    assert carried(laid("a", "ab bc ca")) == set()
    assert carried(laid("", "ab bc ca")) == set()


def test_a_demand_draws_through_its_way() -> None:
    """Guards that a demand counts as a place where water leaves."""
    assert carried(laid("a", "ab bc cd", demand="c")) == {"ab", "bc"}


def test_a_pump_moves_its_ring() -> None:
    """Guards a circulating pump: its ring carries, a dead end with a pump does not."""
    assert carried(laid("a", "ab bc cd", pumps="db")) == {"bc", "cd", "db"}
    assert carried(laid("a", "ab", pumps="bc")) == set()


def test_a_long_line_needs_no_recursion() -> None:
    """Guards lines of many parts against the interpreter's recursion limit."""
    builder = NetworkBuilder().node("n0", fixed_head_m=1.0)
    for i in range(3000):
        builder.node(f"n{i + 1}", fixed_head_m=0.0 if i == 2999 else None)
        builder.loss(f"l{i}", f"n{i}", f"n{i + 1}", coefficient=1.0)
    network = builder.build()
    assert carrying_links(network, np.ones(3000, bool)).all()
