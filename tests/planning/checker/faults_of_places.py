"""Planted faults of turning, spots, air and dust."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import Air, StepKind
from studio_planner.planning.checker import Rule
from studio_planner.science.stages import Stage
from tests.planning.checker.faults import (
    Fault,
    cold_from,
    steps,
)
from tests.planning.checker.hand_made import (
    PLAN,
    RESIN,
    STUDIO,
    at,
    moved,
    silent,
    step,
    step_moved,
    with_coat,
    with_pattern,
    with_piece,
    with_product,
    without_step,
)

FAULTS = (
    # Turning
    Fault(
        name="a piece is not turned",
        rule=Rule.TURN,
        piece="board",
        coat="under",
        words="turned once before this coat, not 0 times",
        plan=without_step(PLAN, StepKind.TURN, "board"),
    ),
    Fault(
        name="a piece is turned without need",
        rule=Rule.TURN,
        piece="tray",
        coat="lock",
        words="turned never",
        plan=steps(step(StepKind.TURN, "tray", 0, "18:30", 5, "ada", "lock")),
    ),
    Fault(
        name="a piece is turned onto a soft face",
        rule=Rule.TURN,
        piece="board",
        coat="under",
        words="can be handled from Tue 3 Mar 10:45",
        plan=step_moved(PLAN, StepKind.TURN, "board", at(1, "10:40")),
    ),
    Fault(
        name="a coat is poured on a piece that lies on a soft face",
        rule=Rule.TURN,
        piece="board",
        coat="under",
        words="while the piece lies on the flood 1, which can be handled from",
        plan=moved(PLAN, "board", "under", at(1, "10:40")),
    ),
    Fault(
        name="a piece is turned while it is coated",
        rule=Rule.TURN,
        piece="board",
        coat="under",
        words="while a coat is being poured",
        plan=step_moved(PLAN, StepKind.TURN, "board", at(0, "12:40")),
    ),
    Fault(
        name="a piece is turned after the coat has begun",
        rule=Rule.TURN,
        piece="board",
        coat="under",
        words="the coat has begun by then",
        plan=step_moved(PLAN, StepKind.TURN, "board", at(1, "11:08")),
    ),
    # Spots and the warm box
    Fault(
        name="a piece is too long for its spot",
        rule=Rule.SPOT,
        piece="tray",
        coat="flood",
        words="needs 420 x 100 mm and 98 mm of height",
        studio=with_piece(STUDIO, "tray", footprint_mm=(420.0, 100.0)),
    ),
    Fault(
        name="a cover is too high for the spot",
        rule=Rule.SPOT,
        piece="tray",
        coat="flood",
        studio=with_piece(STUDIO, "tray", cover_mm=103.0),
    ),
    Fault(
        name="two pieces stand on one spot",
        rule=Rule.SPOT,
        piece="board",
        coat="seal",
        words="Spot A is taken by Tray till",
        plan=with_coat(PLAN, "board", "seal", spot="A"),
    ),
    Fault(
        name="a piece stands where a poured one lies",
        rule=Rule.SPOT,
        piece="coasters",
        coat="flood",
        words="Spot F is taken by Dish",
        plan=with_coat(PLAN, "coasters", "flood", spot="F"),
    ),
    Fault(
        name="a piece is moved before it can be handled",
        rule=Rule.SPOT,
        piece="tray",
        coat="lock",
        words="from Spot A to Spot H Mon 2 Mar 18:40, but the glitter can be handled from",
        plan=with_coat(PLAN, "tray", "lock", spot="H"),
    ),
    Fault(
        name="a piece is moved into the warm box before it can be handled",
        rule=Rule.SPOT,
        piece="tray",
        coat="lock",
        words="to Box shelf",
        plan=with_coat(PLAN, "tray", "lock", spot="X"),
    ),
    Fault(
        name="a coat can never be handled",
        rule=Rule.SPOT,
        piece="tray",
        coat="lock",
        words="can never be handled",
        studio=with_product(
            STUDIO,
            "resin",
            sheet=silent(RESIN, Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE),
        ),
    ),
    Fault(
        name="a coat that can never be handled keeps its spot for good",
        rule=Rule.SPOT,
        piece="coasters",
        coat="top",
        words="taken by East for good",
        plan=with_coat(PLAN, "coasters", "top", spot="D"),
        studio=with_product(
            STUDIO,
            "resin",
            sheet=silent(RESIN, Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE),
        ),
    ),
    # The air
    Fault(
        name="a pour is too cold",
        rule=Rule.AIR,
        piece="tray",
        coat="lock",
        words="is poured Mon 2 Mar 18:40 at 11 °C, but Resin needs 12 °C",
        studio=cold_from(19, 11.0),
    ),
    Fault(
        name="a pour is too warm",
        rule=Rule.AIR,
        piece="tray",
        coat="lock",
        words="at 31 °C, but Resin bears 30 °C",
        studio=cold_from(19, 31.0),
    ),
    Fault(
        name="leaf is laid too warm",
        rule=Rule.AIR,
        piece="gilded",
        coat="leaf",
        words="Leaf bears 35 °C",
        studio=cold_from(16, 36.0),
    ),
    Fault(
        name="a pour is too damp",
        rule=Rule.AIR,
        piece="tray",
        coat="flood",
        words="at 82 % humidity, but Resin bears 80 %",
        studio=with_pattern(STUDIO, PatternPoint(at=time(0), celsius=20.0, humidity_pct=82.0)),
    ),
    Fault(
        name="a surface comes close to the dew point in the night after",
        rule=Rule.AIR,
        piece="tray",
        coat="lock",
        words="above the dew point",
        # 14 °C air at 82 % has its dew point near 11 °C.
        studio=with_pattern(
            STUDIO,
            PatternPoint(at=time(8), celsius=20.0, humidity_pct=45.0),
            PatternPoint(at=time(22), celsius=20.0, humidity_pct=45.0),
            PatternPoint(at=time(23), celsius=14.0, humidity_pct=83.0),
            PatternPoint(at=time(7), celsius=14.0, humidity_pct=83.0),
        ),
    ),
    Fault(
        name="unknown humidity is marked as kept",
        rule=Rule.AIR,
        piece="tray",
        coat="flood",
        words="marked kept, but the humidity is not known",
        studio=with_pattern(STUDIO, PatternPoint(at=time(0), celsius=20.0)),
    ),
    Fault(
        name="known humidity is marked as unknown",
        rule=Rule.AIR,
        piece="tray",
        coat="flood",
        words="marked unknown, but the humidity is known",
        plan=with_coat(PLAN, "tray", "flood", air=Air.UNKNOWN),
    ),
    # Bare wood
    Fault(
        name="the room warms while bare wood is sealed",
        rule=Rule.STEADY,
        piece="board",
        coat="seal",
        words="warms by 0.5 °C during the pour, so the bare mdf blows bubbles",
        studio=with_pattern(
            STUDIO,
            PatternPoint(at=time(9), celsius=19.5, humidity_pct=45.0),
            PatternPoint(at=time(9, 45), celsius=20.0, humidity_pct=45.0),
        ),
    ),
    # Dust
    Fault(
        name="a piece is sanded beside wet work",
        rule=Rule.DUST,
        piece="coasters",
        coat="top",
        words="while the flood 2 of Board is wet",
        plan=step_moved(PLAN, StepKind.SAND, "coasters", at(1, "11:15")),
    ),
    Fault(
        name="a piece is sanded beside work that never dries",
        rule=Rule.DUST,
        piece="coasters",
        coat="top",
        words="is wet for good",
        studio=with_pattern(STUDIO, PatternPoint(at=time(0), celsius=10.0, humidity_pct=45.0)),
    ),
    Fault(
        name="tack-free counts as covered where the sheet has no cover",
        rule=Rule.DUST,
        piece="coasters",
        coat="top",
        words="wet till Mon 2 Mar 16:46",
        # 6 h x 1.1 after 10:10.
        plan=step_moved(PLAN, StepKind.SAND, "coasters", at(0, "16:00")),
        studio=with_product(
            STUDIO,
            "resin",
            sheet=(
                *silent(RESIN, Stage.COVER),
                replace(RESIN.sheet[0], stage=Stage.TACK_FREE, from_hours=6.0),
            ),
        ),
    ),
    Fault(
        name="a pour starts before dust has settled",
        rule=Rule.DUST,
        piece="board",
        coat="under",
        words="settles till Tue 3 Mar 11:20",
        plan=step_moved(PLAN, StepKind.SAND, "coasters", at(1, "08:40")),
    ),
)
