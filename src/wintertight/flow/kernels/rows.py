"""What a run or a course is made of, as rows of numbers (``letting_run``, ``filling``)."""

from typing import NamedTuple

from wintertight.flow.kernels.carrying import Bools, Ints
from wintertight.flow.kernels.parcels import Array


class Ways(NamedTuple):
    """The legs of all outlets, outlet after outlet, each after all that feed it.

    Attributes:
        leg_from: where the legs of each outlet begin in the next rows; shape (outlets + 1,).
        place: place of each leg among the carrying links of its outlet.
        up, down: nodes it comes from and goes to, numbered for each outlet.
        hollow: what it holds, or ``NO_HOLLOW``.
        sign: 1 where it flows from start to end, else -1.
        spout: for each outlet, the place of its last leg among its legs.
        nodes: for each outlet, how many nodes its legs touch.
        source: for each outlet, the node that is fed.
    """

    leg_from: Ints
    place: Ints
    up: Ints
    down: Ints
    hollow: Ints
    sign: Array
    spout: Ints
    nodes: Ints
    source: Ints


class Laws(NamedTuple):
    """The head-loss laws and loops of all outlets, outlet after outlet.

    Attributes:
        link_from: where the carrying links of each outlet begin; shape (outlets + 1,), like all
            that say where something begins.
        loop_from: where its loops begin.
        loop_head: head that drives each loop [m].
        mesh_from: where its loops begin in the next row.
        mesh: +1 or -1 where a link runs with or against a loop, loop after loop.
        begin_flow: flow of each carrying link to begin from [m3/s].
        quadratic: loss per flow squared of each carrying link [s2/m5].
        one_way: which are one-way.
        pump_from: where its pumps begin.
        pump_rows: see ``newton.head_losses``.
        pipe_from: where its pipes begin.
        pipe_rows: loss per flow, ``f Re`` and viscosity; Reynolds number times viscosity per flow;
            relative roughness; shape (3, pipes of all outlets).
        pipe_hollow: what each pipe holds.
        friction: law of friction.
    """

    link_from: Ints
    loop_from: Ints
    loop_head: Array
    mesh_from: Ints
    mesh: Array
    begin_flow: Array
    quadratic: Array
    one_way: Bools
    pump_from: Ints
    pump_rows: Array
    pipe_from: Ints
    pipe_rows: Array
    pipe_hollow: Ints
    friction: int


class Hollows(NamedTuple):
    """Everything on the way that holds anything.

    Attributes:
        way: how each holds.
        size: volume of each [m3].
        parcel_m3: parcel of each [m3].
        response: row of each in the next two.
        padded: responses, one row each (see ``runs.push_runs``).
        kept: shares kept, one row each (see ``runs.mean_runs``).
        first: what each is full of [1], shape (hollows, 4).
    """

    way: Ints
    size: Array
    parcel_m3: Array
    response: Ints
    padded: Array
    kept: Array
    first: Array


class Rules(NamedTuple):
    """What is drawn, and when an outlet is shut.

    Attributes:
        feed: what is drawn [1], shape (4,).
        ladder_top: share of glycol at the last rung of an even ladder that begins at 0 [1], and ...
        ladder_logs: ... the logarithm of the viscosity at each rung [m2/s].
        chunk_m3: volume moved between two looks at the flow [m3].
        run_on_s: for each outlet, seconds after first colour [s]; nan for none.
        limit_s: for each outlet, seconds in all [s].
        limit_m3: volume after which it is given up, beyond what its way holds [m3].
        shows: share of the supply's strength at which colour shows [1].
        each_s: seconds between two samples [s].
    """

    feed: Array
    ladder_top: float
    ladder_logs: Array
    chunk_m3: float
    run_on_s: Array
    limit_s: Array
    limit_m3: float
    shows: float
    each_s: float


class Legs(NamedTuple):
    """The links that flow, each after all that feed it.

    Attributes:
        up, down: node each comes from and goes to, numbered among those they touch.
        hollow: what each holds, or ``NO_HOLLOW``.
        place: place of each among the carrying links.
        sign: 1 where it flows from start to end, else -1.
        outs: those that end in the open air.
        nodes: how many nodes they touch [1].
        is_fed: whether a node is that of a source, shape (nodes,).
        feeds: what each source gives [1], shape (nodes, 4).
        pipe_hollow: what each pipe holds, in the order of the circuit's pipes.
        pipe_glycol: share of glycol in a pipe that does not flow [1].
    """

    up: Ints
    down: Ints
    hollow: Ints
    place: Ints
    sign: Array
    outs: Ints
    nodes: int
    is_fed: Bools
    feeds: Array
    pipe_hollow: Ints
    pipe_glycol: Array


class Filled(NamedTuple):
    """What the hollows on the way are, and what they hold, one behind another.

    Attributes:
        way: how each holds (see ``holding``).
        size: volume of each [m3].
        parcel_m3: parcel of each [m3].
        response: which of the responses is that of each.
        padded: responses (see ``runs.push_runs``).
        padded_from: where each response begins, and the end.
        volumes, shares, part: what each holds (see ``holding``).
        volumes_from, shares_from, part_from: where that of each begins, and the end.
    """

    way: Ints
    size: Array
    parcel_m3: Array
    response: Ints
    padded: Array
    padded_from: Ints
    volumes: Array
    volumes_from: Ints
    shares: Array
    shares_from: Ints
    part: Array
    part_from: Ints


class Packed(NamedTuple):
    """What hollows hold, one behind another (see ``Filled``)."""

    volumes: Array
    volumes_from: Ints
    shares: Array
    shares_from: Ints
    part: Array
    part_from: Ints


class Fallen(NamedTuple):
    """What fell out, outlet after outlet.

    Attributes:
        volumes, shares: of its parcels [m3] [1].
        edges: where that of each outlet begins, and the end.
    """

    volumes: Array
    shares: Array
    edges: Ints


class Underway(NamedTuple):
    """A run that is under way; all of it but the responses is changed in place.

    Attributes:
        volumes, shares, part: what each hollow holds (see ``holding``).
        padded: response of each (see ``runs.push_runs``).
        at: how far it is, shape (``striding.PROGRESS``,).
        rows: what was seen at each outlet, shape (outlets + 1, ``watching.SEEN``).
        came_m3: what each source gave [m3], by node.
        fell_volumes, fell_shares: what fell out of each outlet, one entry an outlet for each move.
    """

    volumes: list[Array]
    shares: list[Array]
    part: list[Array]
    padded: list[Array]
    at: Array
    rows: Array
    came_m3: Array
    fell_volumes: list[Array]
    fell_shares: list[Array]


class Pace(NamedTuple):
    """How often the flow is looked at, and what it hangs on.

    Attributes:
        chunk_m3: volume moved between two looks [m3].
        longest_m3: what that may grow to [m3]; 0 where it stays.
        looks: whether what lines hold changes the flow.
        ease: whether parcels nearly alike are joined where they are many.
        still_m3_s: a flow below this moves nothing [m3/s].
        friction: law of friction.
        ladder_top, ladder_logs: see ``Rules``.
    """

    chunk_m3: float
    longest_m3: float
    looks: bool
    ease: bool
    still_m3_s: float
    friction: int
    ladder_top: float
    ladder_logs: Array


class Stop(NamedTuple):
    """When a run stops.

    Attributes:
        watched: row of the outlet that is watched.
        colour: share of antifreeze in the liquid at which colour shows [1].
        limit_s: seconds in all [s].
        limit_m3: volume in all [m3].
        run_on_s: seconds after first colour [s]; nan for none.
        drawn_m3: volume drawn at which it is given up [m3].
        expect_m3: volume at which colour may show [m3]; below 0 where nothing is expected.
        at_once: whether there is nothing to look at on the way.
        closes_in: whether long strides end where colour shows.
        spares_look: whether the flow need not be found once more when a rule was met.
        asks: whether to come back after each stride once colour shows.
    """

    watched: int
    colour: float
    limit_s: float
    limit_m3: float
    run_on_s: float
    drawn_m3: float
    expect_m3: float
    at_once: bool
    closes_in: bool
    spares_look: bool
    asks: bool
