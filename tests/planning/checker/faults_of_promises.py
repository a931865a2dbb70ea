"""Planted faults of packing, promises and ready times."""

from __future__ import annotations

from dataclasses import replace

from studio_planner.craft.plans import StepKind
from studio_planner.planning.checker import Rule
from studio_planner.science.stages import Stage
from tests.planning.checker.faults import (
    NAIVE,
    Fault,
    steps,
)
from tests.planning.checker.hand_made import (
    OUTCOMES,
    PLAN,
    PRIMER,
    READY,
    RESIN,
    SIZE,
    STUDIO,
    at,
    silent,
    step,
    step_moved,
    with_product,
    without_coat,
    without_step,
)

FAULTS = (
    # Packing and promises
    Fault(
        name="a piece of an order is not packed",
        rule=Rule.PACK,
        piece="tray",
        words="is packed 0 times for Shop, not 1",
        plan=without_step(PLAN, StepKind.PACK, "tray"),
    ),
    Fault(
        name="a piece is packed twice",
        rule=Rule.PACK,
        piece="tray",
        words="is packed 2 times",
        plan=steps(step(StepKind.PACK, "tray", 3, "12:00", 15, "ada", None)),
    ),
    Fault(
        name="a piece is packed before it is print-free",
        rule=Rule.PACK,
        piece="tray",
        coat="lock",
        words="the lock coat may go from Thu 5 Mar 00:13",
        plan=step_moved(PLAN, StepKind.PACK, "tray", at(2, "21:00")),
    ),
    Fault(
        name="a piece is packed that can't be ready by its sheet",
        rule=Rule.PACK,
        piece="gilded",
        coat="lock",
        words="may go from never",
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.FULL_CURE)),
    ),
    Fault(
        name="full cure counts where the sheet has no print-free",
        rule=Rule.PACK,
        piece="tray",
        coat="lock",
        words="may go from Sat 7 Mar 05:01",
        # 96 h x 1.1 after 19:25.
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.PRINT_FREE)),
    ),
    Fault(
        name="size that tells its full cure is waited for",
        rule=Rule.PACK,
        piece="gilded",
        coat="size",
        studio=with_product(
            STUDIO,
            "size",
            sheet=(
                *SIZE.sheet,
                replace(SIZE.sheet[0], stage=Stage.FULL_CURE, from_hours=200.0),
            ),
        ),
    ),
    Fault(
        name="a primer without late stages can't be packed",
        rule=Rule.PACK,
        piece="board",
        coat="seal",
        words="may go from never",
        studio=with_product(
            STUDIO,
            "primer",
            sheet=silent(PRIMER, Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE),
        ),
    ),
    Fault(
        name="a piece is packed without its last coat",
        rule=Rule.PACK,
        piece="tray",
        words="not all of its coats are planned",
        plan=without_coat(PLAN, "tray", "lock"),
    ),
    Fault(
        name="a piece that can't be planned is packed",
        rule=Rule.PACK,
        piece="ghost",
        words="not 0",
        plan=steps(step(StepKind.PACK, "ghost", 3, "12:00", 15, "ada", None)),
    ),
    Fault(
        name="the plan gives the wrong due time",
        rule=Rule.PROMISE,
        piece=None,
        words="Shop is due Fri 6 Mar 16:00, but the plan says Fri 6 Mar 17:00",
        plan=replace(PLAN, outcomes=(replace(OUTCOMES[0], due=at(4, "17:00")), *OUTCOMES[1:])),
    ),
    Fault(
        name="the plan gives the wrong time of leaving",
        rule=Rule.PROMISE,
        piece=None,
        words="Shop leaves Thu 5 Mar 16:00, but the plan says Thu 5 Mar 15:00",
        plan=replace(
            PLAN, outcomes=(replace(OUTCOMES[0], leaves=at(3, "15:00")), *OUTCOMES[1:])
        ),
    ),
    Fault(
        name="an order leaves without a piece",
        rule=Rule.PROMISE,
        piece=None,
        words="Lost leaves never, but the plan says Thu 5 Mar 16:00",
        plan=replace(
            PLAN, outcomes=(*OUTCOMES[:3], replace(OUTCOMES[3], leaves=at(3, "16:00")))
        ),
    ),
    Fault(
        name="an order has no outcome",
        rule=Rule.PROMISE,
        piece=None,
        words="0 times what becomes of Lost",
        plan=replace(PLAN, outcomes=OUTCOMES[:3]),
    ),
    Fault(
        name="an outcome is of no known order",
        rule=Rule.UNKNOWN,
        piece=None,
        words="“none”",
        plan=replace(PLAN, outcomes=(*OUTCOMES, replace(OUTCOMES[3], order="none"))),
    ),
    # Ready times
    Fault(
        name="a ready time is missing",
        rule=Rule.READY,
        piece="tray",
        words="0 times when it reaches handle",
        plan=replace(PLAN, ready=READY[1:]),
    ),
    Fault(
        name="a safe ready time is too early",
        rule=Rule.READY,
        piece="tray",
        words="reaches handle safely Tue 3 Mar 17:25, but the plan says Tue 3 Mar 17:23",
        plan=replace(PLAN, ready=(replace(READY[0], safe=at(1, "17:23")), *READY[1:])),
    ),
    Fault(
        name="a likely ready time is too late",
        rule=Rule.READY,
        piece="tray",
        words="reaches handle likely Tue 3 Mar 15:25",
        plan=replace(PLAN, ready=(replace(READY[0], likely=at(1, "15:27")), *READY[1:])),
    ),
    Fault(
        name="a stage is said never to be reached",
        rule=Rule.READY,
        piece="tray",
        words="but the plan says never",
        plan=replace(PLAN, ready=(replace(READY[0], safe=None), *READY[1:])),
    ),
    Fault(
        name="a ready time has no zone",
        rule=Rule.READY,
        piece="tray",
        words="but the plan says a time without a zone",
        plan=replace(PLAN, ready=(replace(READY[0], safe=NAIVE), *READY[1:])),
    ),
    Fault(
        name="a stage that is never reached is given a time",
        rule=Rule.READY,
        piece="tray",
        words="reaches full cure safely never",
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.FULL_CURE)),
    ),
    Fault(
        name="a ready time is of no known piece",
        rule=Rule.UNKNOWN,
        piece="cloud",
        plan=replace(PLAN, ready=(*READY, replace(READY[0], piece="cloud"))),
    ),
)
