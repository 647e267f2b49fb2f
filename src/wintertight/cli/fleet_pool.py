"""Plans many cards at once, in processes of their own that end with this one, however it ends.

Nothing heavy is imported up here: a worker reads this file before it is told whether the
arithmetic is to be compiled, and importing the flow settles that.
"""

# ruff: noqa: PLC0415 - see above

import os
import signal
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Future, ProcessPoolExecutor, as_completed
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager
from dataclasses import dataclass
from multiprocessing import active_children, get_context, parent_process
from pathlib import Path
from threading import Thread
from typing import TYPE_CHECKING

from wintertight.errors import InputError, ProgramFault, WintertightError

if TYPE_CHECKING:
    from wintertight.documents.fleet_content import PlannedCoach, Row

Watch = Callable[[Iterable["Future[Row]"], int], Iterable["Future[Row]"]]
"""Takes what comes in and how much is to come, and gives it on; a bar may follow it."""


@dataclass(frozen=True, slots=True)
class Job:
    """One card to plan, and what of the command line concerns it.

    Attributes:
        card: the card's file.
        low, product, shop: as the options were written; None where they were not.
    """

    card: str
    low: str | None
    product: str | None
    shop: str | None


def planned_rows(
    jobs: Sequence[Job], workers: int, *, compiled: bool, watch: Watch
) -> tuple["Row", ...]:
    """Plan cards.

    Args:
        jobs: the cards.
        workers: how many processes work on them.
        compiled: whether compiled arithmetic is asked for.
        watch: follows what comes in.

    Returns:
        Their rows, in the order of the jobs; what is wrong with one card is its row.

    Raises:
        ProgramFault: a worker was ended from outside.
    """
    from wintertight.flow.kernels.compiled import ASKED_BY

    others = frozenset(active_children())
    # Started afresh on every system: a fork would copy this process with its arithmetic settled.
    pool = ProcessPoolExecutor(
        workers,
        get_context("spawn"),
        initializer=prepare_worker,
        initargs=(ASKED_BY, "1" if compiled else "0"),
    )
    try:
        with _ctrl_c_held_back():
            futures = [pool.submit(row_of, job) for job in jobs]
        for _ in watch(as_completed(futures), len(futures)):
            pass
        return tuple(future.result() for future in futures)
    except BrokenProcessPool:
        message = (
            "a process that planned cards was ended from outside, perhaps for want of memory;"
            " try again with fewer --workers"
        )
        raise ProgramFault(message) from None
    except BaseException:
        for worker in frozenset(active_children()) - others:
            worker.terminate()
        raise
    finally:
        pool.shutdown(cancel_futures=True)


@contextmanager
def _ctrl_c_held_back() -> Iterator[None]:
    """Let Ctrl-C wait while workers start; they inherit that, and are stopped by us alone."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


# ---- in a worker ---------------------------------------------------------------------------


def prepare_worker(asked_by: str, asked: str) -> None:
    """Settle the arithmetic before it is imported, leave Ctrl-C to the parent, and end with it."""
    os.environ[asked_by] = asked
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    Thread(target=_end_with_parent, daemon=True).start()


def _end_with_parent() -> None:
    parent = parent_process()
    if parent is not None:
        parent.join()
        os._exit(1)


def row_of(job: Job) -> "Row":
    """Plan one card; whatever goes wrong with it is told in its row."""
    from wintertight.cli.outcome import place_and_message, program_fault
    from wintertight.documents.fleet_content import FailedCoach

    try:
        return _planned(job)
    except Exception as error:  # noqa: BLE001 - one card must not stop the others
        known = error if isinstance(error, WintertightError) else program_fault(error)
        return FailedCoach(
            file=Path(job.card).name,
            code=known.code,
            message=place_and_message(known),
            fault=not isinstance(known, InputError),
        )


def _planned(job: Job) -> "PlannedCoach":
    from wintertight.cli.plan import design_low_degC
    from wintertight.cli.stock import product_for, shop_list
    from wintertight.coach.load import load_card
    from wintertight.documents.fleet_content import PlannedCoach
    from wintertight.flow.kernels.compiled import COMPILED
    from wintertight.procedure.plan import plan_coach

    card = load_card(job.card)
    low_degC = design_low_degC(card, job.card, job.low)
    sold, _ = shop_list(job.shop, job.card)
    plan = plan_coach(card, product_for(card, job.card, job.product, sold), low_degC)
    return PlannedCoach(
        file=Path(job.card).name,
        card_hash=card.card_hash,
        id=card.id,
        name=card.name,
        low_degC=low_degC,
        verdict=plan.verdict,
        antifreeze=plan.antifreeze,
        duration=plan.duration,
        buy=plan.buy,
        gaps=tuple(part.id for part in plan.parts if part.safe is False),
        unproven=tuple(part.id for part in plan.parts if part.safe is None),
        compiled=COMPILED,
    )
