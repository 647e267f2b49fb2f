"""Two thousand coaches described by drawn answers, each planned: none crashes, all books close."""

import sys
from collections import Counter
from multiprocessing import get_context

from tests.intake.described import crowded, drawn
from tests.unit.procedure.demo_coach import PINK, celsius
from wintertight.coach.intake.made import made_card
from wintertight.procedure.plan import plan_coach

COACHES = 2000
LOW_DEGF = 0.0
BALANCED = 1e-9
EVERY = 100  # coaches between two lines of progress


def described_coaches(coaches: int = COACHES) -> int:
    """Plan all coaches; print the verdicts, what would burst, and every fault."""
    verdicts: Counter[str] = Counter()
    bursts: Counter[str] = Counter()
    faults: list[str] = []
    with get_context("fork").Pool(2) as pool:
        for seed, verdict, burst, fault in pool.imap_unordered(_planned, range(coaches)):
            verdicts[verdict] += 1
            if verdicts.total() % EVERY == 0:
                sys.stderr.write(f"{verdicts.total()} coaches: {dict(verdicts)}\n")
            bursts.update(burst)
            if fault:
                faults.append(f"coach {seed}: {fault}")
    say = sys.stdout.write
    say(f"{coaches} coaches: {dict(verdicts)}; {len(faults)} faults\n")
    say("".join(f"  {count} x {what}\n" for what, count in bursts.most_common(25)))
    say("".join(f"{fault}\n" for fault in faults))
    return int(bool(faults))


def _planned(seed: int) -> tuple[int, str, list[str], str]:
    try:
        card = made_card(drawn(seed), f"R-{seed}", "drawn")
        plan = plan_coach(card, PINK, celsius(LOW_DEGF))
    except Exception as error:  # noqa: BLE001 - whatever it is, it is a fault to be counted
        return seed, "none", [], f"{type(error).__name__}: {error}"
    burst = [f"{p.kind}: {p.reason}" for p in plan.parts if p.safe is False]
    fault = crowded(card)
    if len({s.step.id for s in plan.steps}) < len(plan.steps):
        fault = "two steps have one id"
    if abs(plan.balance.relative_error) > BALANCED:
        fault = f"books are off by {plan.balance.relative_error:.1e}"
    return seed, plan.verdict, burst, fault
