"""Planted faults of tape, drips, poured coats and steps, and what can't be read."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

from studio_planner.craft.log import EntryKind
from studio_planner.craft.plans import StepKind
from studio_planner.planning.checker import Rule
from studio_planner.science.stages import Stage
from tests.planning.checker.faults import (
    NAIVE,
    Fault,
    person_away,
    steps,
)
from tests.planning.checker.hand_made import (
    PLAN,
    RESIN,
    STUDIO,
    at,
    logged,
    moved,
    silent,
    step,
    step_moved,
    with_coat,
    with_piece,
    with_product,
    with_step,
    without_coat,
    without_step,
)

FAULTS = (
    # Tape and trim
    Fault(
        name="tape stays on",
        rule=Rule.TAPE,
        piece="tray",
        coat="flood",
        words="its tape comes off 0 times instead of once",
        plan=without_step(PLAN, StepKind.TAPE, "tray"),
    ),
    Fault(
        name="tape comes off a coat that has none",
        rule=Rule.TAPE,
        piece="tray",
        coat="lock",
        words="instead of never",
        plan=with_step(PLAN, StepKind.TAPE, "tray", coat="lock"),
    ),
    Fault(
        name="tape comes off too early",
        rule=Rule.TAPE,
        piece="tray",
        coat="flood",
        words="opens Mon 2 Mar 09:51 at the latest",
        plan=step_moved(PLAN, StepKind.TAPE, "tray", at(0, "09:50")),
    ),
    Fault(
        name="tape comes off too late",
        rule=Rule.TAPE,
        piece="tray",
        coat="flood",
        words="closes Mon 2 Mar 12:32 at the earliest",
        plan=step_moved(PLAN, StepKind.TAPE, "tray", at(0, "12:25")),
    ),
    Fault(
        name="drips are trimmed in sleep",
        rule=Rule.TRIM,
        piece="board",
        coat="flood",
        words="when Ben sleeps or is away",
        plan=step_moved(PLAN, StepKind.TRIM, "board", at(0, "23:30")),
    ),
    Fault(
        name="drips are trimmed by somebody away",
        rule=Rule.TRIM,
        piece="board",
        coat="flood",
        words="when Ada sleeps or is away",
        plan=with_step(PLAN, StepKind.TRIM, "board", person="ada"),
        studio=person_away(at(0, "19:28"), at(0, "20:00")),
    ),
    Fault(
        name="drips are trimmed by nobody",
        rule=Rule.TRIM,
        piece="board",
        coat="flood",
        words="nobody of that key",
        plan=with_step(PLAN, StepKind.TRIM, "board", person="eve"),
    ),
    Fault(
        name="the sheet has no times for trimming",
        rule=Rule.TRIM,
        piece="board",
        coat="flood",
        words="Resin has no time for it on its sheet",
        studio=with_product(
            STUDIO, "resin", sheet=silent(RESIN, Stage.TRIM_OPENS, Stage.TRIM_CLOSES)
        ),
    ),
    Fault(
        name="the plan opens the tape too early",
        rule=Rule.TAPE,
        piece="tray",
        coat="flood",
        words="but the plan says between Mon 2 Mar 09:49 and ",
        plan=with_step(PLAN, StepKind.TAPE, "tray", opens=at(0, "09:49")),
    ),
    Fault(
        name="the plan does not say when the tape closes",
        rule=Rule.TAPE,
        piece="tray",
        coat="flood",
        words=" and never",
        plan=with_step(PLAN, StepKind.TAPE, "tray", closes=None),
    ),
    Fault(
        name="the tape of a poured coat is forgotten",
        rule=Rule.TAPE,
        piece="dish",
        coat="flood",
        words="0 times instead of once",
        studio=with_product(
            with_piece(STUDIO, "dish", "flood", taped=True),
            "resin",
            sheet=tuple(
                replace(p, from_hours=30.0) if p.stage is Stage.TAPE_CLOSES else p
                for p in RESIN.sheet
            ),
        ),
    ),
    Fault(
        name="tape that was pulled comes off again",
        rule=Rule.TAPE,
        piece="dish",
        coat="flood",
        words="its tape comes off 1 times instead of never",
        plan=steps(step(StepKind.TAPE, "dish", 0, "08:10", 10, "ada", "flood")),
        studio=logged(
            EntryKind.TAPED,
            "flood",
            at(-1, "20:00"),
            with_piece(STUDIO, "dish", "flood", taped=True),
        ),
    ),
    # What is poured stays
    Fault(
        name="a poured coat is left out",
        rule=Rule.POURED,
        piece="dish",
        coat="flood",
        words="was poured Sun 1 Mar 18:00 on F, but the plan differs",
        plan=without_coat(PLAN, "dish", "flood"),
    ),
    Fault(
        name="a poured coat is moved",
        rule=Rule.POURED,
        piece="dish",
        coat="flood",
        words="marked as poured",
        plan=with_coat(PLAN, "dish", "flood", spot="H"),
    ),
    Fault(
        name="a coat is marked as poured that is not",
        rule=Rule.POURED,
        piece="tray",
        coat="flood",
        words="nothing of the kind was poured",
        plan=with_coat(PLAN, "tray", "flood", poured=True),
    ),
    Fault(
        name="a poured coat is of no known piece",
        rule=Rule.POURED,
        piece="cloud",
        coat="flood",
        plan=with_coat(PLAN, "dish", "flood", piece="cloud"),
    ),
    Fault(
        name="a coat starts before the plan",
        rule=Rule.POURED,
        piece="tray",
        coat="flood",
        words="before the plan does",
        plan=moved(PLAN, "tray", "flood", at(0, "07:55")),
    ),
    Fault(
        name="a step starts before the plan",
        rule=Rule.POURED,
        piece="tray",
        words="before the plan does",
        plan=step_moved(PLAN, StepKind.PACK, "tray", at(0, "07:00")),
    ),
    # Steps
    Fault(
        name="a sanding of a set is too short",
        rule=Rule.STEP,
        piece="coasters",
        coat="top",
        words="20 min long, but the work takes 40 min",
        plan=with_step(PLAN, StepKind.SAND, "coasters", end=at(1, "08:20")),
    ),
    Fault(
        name="packing is too short",
        rule=Rule.STEP,
        piece="tray",
        plan=with_step(PLAN, StepKind.PACK, "tray", end=at(3, "08:10")),
    ),
    Fault(
        name="a step belongs to no coat",
        rule=Rule.STEP,
        piece="board",
        words="belongs to no coat of the plan",
        plan=with_step(PLAN, StepKind.TURN, "board", coat=None),
    ),
    Fault(
        name="a step belongs to a piece that is not in the plan",
        rule=Rule.STEP,
        piece="ghost",
        coat="seal",
        words="belongs to no coat of the plan",
        plan=steps(step(StepKind.TAPE, "ghost", 0, "12:00", 10, "ada", "seal")),
    ),
    Fault(
        name="a piece is sanded without being scuffed",
        rule=Rule.STEP,
        piece="dish",
        coat="lock",
        words="in the window, not scuffed",
        plan=steps(step(StepKind.SAND, "dish", 0, "11:00", 20, "ada", "lock")),
    ),
    Fault(
        name="a step is during a pour of its piece",
        rule=Rule.STEP,
        piece="tray",
        coat="flood",
        words="is during a pour",
        plan=step_moved(PLAN, StepKind.TAPE, "tray", at(0, "08:40")),
    ),
    Fault(
        name="a step runs backwards",
        rule=Rule.BLOCK,
        piece="tray",
        coat="flood",
        plan=with_step(PLAN, StepKind.TAPE, "tray", end=at(0, "09:55")),
    ),
    # What can't be read
    Fault(
        name="a piece is not known",
        rule=Rule.UNKNOWN,
        piece="cloud",
        coat="lock",
        words="no such piece",
        plan=with_coat(PLAN, "tray", "lock", piece="cloud"),
    ),
    Fault(
        name="a coat is not known",
        rule=Rule.UNKNOWN,
        piece="tray",
        coat="varnish",
        words="no such coat “varnish” on it",
        plan=with_coat(PLAN, "tray", "lock", coat="varnish"),
    ),
    Fault(
        name="a spot is not known",
        rule=Rule.UNKNOWN,
        piece="tray",
        coat="lock",
        words="no such spot",
        plan=with_coat(PLAN, "tray", "lock", spot="Z"),
    ),
    Fault(
        name="the piece of a step is not known",
        rule=Rule.UNKNOWN,
        piece="cloud",
        coat="flood",
        plan=with_step(PLAN, StepKind.TAPE, "tray", piece="cloud"),
    ),
    Fault(
        name="the coat of a step is not known",
        rule=Rule.UNKNOWN,
        piece="tray",
        coat="varnish",
        plan=with_step(PLAN, StepKind.TAPE, "tray", coat="varnish"),
    ),
    Fault(
        name="a coat has no zone",
        rule=Rule.RECORD,
        piece="tray",
        coat="lock",
        plan=with_coat(PLAN, "tray", "lock", start=NAIVE),
    ),
    Fault(
        name="a coat is in another century",
        rule=Rule.RECORD,
        piece="tray",
        coat="lock",
        plan=with_coat(PLAN, "tray", "lock", end=datetime(2150, 1, 1, tzinfo=UTC)),
    ),
    Fault(
        name="a coat was long before everything",
        rule=Rule.RECORD,
        piece="tray",
        coat="lock",
        plan=with_coat(PLAN, "tray", "lock", start=datetime.min.replace(tzinfo=UTC)),
    ),
    Fault(
        name="a step has no zone",
        rule=Rule.RECORD,
        piece="tray",
        coat="flood",
        plan=with_step(PLAN, StepKind.TAPE, "tray", end=NAIVE),
    ),
    Fault(
        name="the plan itself has no zone",
        rule=Rule.RECORD,
        piece=None,
        plan=replace(PLAN, start=NAIVE),
    ),
)
