"""Planted faults of the stack's order and of joints."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

from studio_planner.craft.log import EntryKind
from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import StepKind
from studio_planner.planning.checker import Rule
from studio_planner.science.stages import Stage
from tests.planning.checker.faults import (
    NAIVE,
    SCUFFED_DISH,
    SCUFFED_GLITTER,
    TEST_FIRST_LOCK,
    Fault,
)
from tests.planning.checker.hand_made import (
    PLAN,
    PRIMER,
    RESIN,
    SIZE,
    STUDIO,
    at,
    hours,
    logged,
    moved,
    safe,
    silent,
    step,
    step_moved,
    with_coat,
    with_pattern,
    with_piece,
    with_product,
    without_coat,
    without_step,
)

FAULTS = (
    # The order of the stack
    Fault(
        name="a coat starts before the one below is done",
        rule=Rule.ORDER,
        piece="gilded",
        coat="lock",
        words="before the leaf is done at Mon 2 Mar 16:45",
        plan=moved(PLAN, "gilded", "lock", at(0, "16:40")),
    ),
    # Joints
    Fault(
        name="a joint on a bare face is not bare",
        rule=Rule.JOINT,
        piece="tray",
        coat="flood",
        words="bare face",
        plan=with_coat(PLAN, "tray", "flood", joint=Joint.IN_WINDOW),
    ),
    Fault(
        name="a joint on a coat is bare",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="coat below",
        plan=with_coat(PLAN, "tray", "lock", joint=Joint.BARE, window=None),
    ),
    Fault(
        name="a bare joint has a window",
        rule=Rule.WINDOW,
        piece="tray",
        coat="flood",
        plan=with_coat(PLAN, "tray", "flood", window=safe(at(0, "08:00"), None)),
    ),
    Fault(
        name="a scuffed joint has a window",
        rule=Rule.WINDOW,
        piece="coasters",
        coat="top",
        plan=with_coat(PLAN, "coasters", "top", window=safe(at(1, "08:00"), None)),
    ),
    Fault(
        name="a joint has no window",
        rule=Rule.WINDOW,
        piece="tray",
        coat="lock",
        plan=with_coat(PLAN, "tray", "lock", window=None),
    ),
    Fault(
        name="wet in wet was not asked for",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="is planned wet in wet, but is meant in the window",
        plan=with_coat(PLAN, "tray", "lock", joint=Joint.WET_IN_WET),
    ),
    Fault(
        name="in the window was not asked for",
        rule=Rule.JOINT,
        piece="east",
        coat="veil",
        plan=with_coat(PLAN, "east", "veil", joint=Joint.IN_WINDOW),
    ),
    Fault(
        name="on dry was not asked for",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        plan=with_coat(PLAN, "tray", "lock", joint=Joint.ON_DRY),
    ),
    Fault(
        name="leaf on what was sanded",
        rule=Rule.JOINT,
        piece="gilded",
        coat="leaf",
        words="is scuffed, but leaf finds no tack on that",
        plan=with_coat(PLAN, "gilded", "leaf", joint=Joint.SCUFFED, window=None),
    ),
    Fault(
        name="leaf on a primer",
        rule=Rule.JOINT,
        piece="gilded",
        coat="leaf",
        words="is meant on dry on the size, which cannot be",
        studio=with_piece(STUDIO, "gilded", "size", product="primer"),
    ),
    Fault(
        name="leaf on what has cured",
        rule=Rule.JOINT,
        piece="gilded",
        coat="leaf",
        words="which cannot be",
        studio=with_piece(STUDIO, "gilded", "size", product="resin"),
    ),
    Fault(
        name="wet in wet on a primer",
        rule=Rule.JOINT,
        piece="east",
        coat="veil",
        words="is meant wet in wet on the colour pour 1, which cannot be",
        studio=with_piece(STUDIO, "east", "colour", product="primer"),
    ),
    Fault(
        name="on dry on a mix",
        rule=Rule.JOINT,
        piece="board",
        coat="flood",
        words="is meant on dry on the seal, which cannot be",
        studio=with_piece(STUDIO, "board", "seal", product="resin"),
    ),
    Fault(
        name="scuffed is not for what is meant wet in wet",
        rule=Rule.JOINT,
        piece="east",
        coat="veil",
        plan=with_coat(PLAN, "east", "veil", joint=Joint.SCUFFED, window=None),
    ),
    Fault(
        name="wet in wet ends after the working time",
        rule=Rule.JOINT,
        piece="east",
        coat="veil",
        words="closes Mon 2 Mar 12:49 at the earliest (room 20 °C)",
        # 3.3 h at its early edge is 3.0 h from 11:00; with 2 h at 20 °C it is 1.82 h.
        studio=with_product(
            STUDIO,
            "resin",
            sheet=tuple(
                replace(p, from_hours=2.0) if p.stage is Stage.WORKING_TIME else p
                for p in RESIN.sheet
            ),
        ),
    ),
    Fault(
        name="wet in wet needs a working time on the sheet",
        rule=Rule.JOINT,
        piece="east",
        coat="veil",
        words="no working time on its sheet",
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.WORKING_TIME)),
    ),
    Fault(
        name="a coat starts before the window opens",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="starts Mon 2 Mar 18:35, but the glitter below opens Mon 2 Mar 18:39 at the "
        "latest (room 20 °C)",
        plan=moved(PLAN, "tray", "lock", at(0, "18:35")),
    ),
    Fault(
        name="a coat ends after the window closes",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="ends Tue 3 Mar 11:20, but the glitter below closes Tue 3 Mar 11:19 at the "
        "earliest",
        plan=moved(PLAN, "tray", "lock", at(1, "10:35")),
    ),
    Fault(
        name="the sheet has no recoat opens",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="no recoat opens on its sheet",
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.RECOAT_OPENS)),
    ),
    Fault(
        name="a two-part mix has no recoat closes",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="no recoat closes on its sheet",
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.RECOAT_CLOSES)),
    ),
    Fault(
        name="the window never opens in a room that is too cold to cure",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="never opens within this record",
        studio=with_pattern(STUDIO, PatternPoint(at=time(0), celsius=10.0, humidity_pct=45.0)),
    ),
    Fault(
        name="a touch test on what can't be sanded was not allowed",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="relies on a touch test",
        plan=TEST_FIRST_LOCK,
    ),
    Fault(
        name="a coat starts before the likely window opens",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="opens Mon 2 Mar 18:15",
        plan=moved(TEST_FIRST_LOCK, "tray", "lock", at(0, "18:10")),
    ),
    Fault(
        name="on dry starts before the primer can be coated",
        rule=Rule.JOINT,
        piece="board",
        coat="flood",
        words="opens Mon 2 Mar 11:57",
        plan=moved(PLAN, "board", "flood", at(0, "11:55")),
    ),
    Fault(
        name="on dry starts before the primer is tack-free where there is no recoat opens",
        rule=Rule.JOINT,
        piece="board",
        coat="flood",
        words="opens Mon 2 Mar 10:51",
        plan=moved(PLAN, "board", "flood", at(0, "10:50")),
        studio=with_product(STUDIO, "primer", sheet=silent(PRIMER, Stage.RECOAT_OPENS)),
    ),
    Fault(
        name="on dry needs a time on the sheet",
        rule=Rule.JOINT,
        piece="board",
        coat="flood",
        words="no recoat opens or tack-free on its sheet",
        studio=with_product(
            STUDIO, "primer", sheet=silent(PRIMER, Stage.RECOAT_OPENS, Stage.TACK_FREE)
        ),
    ),
    Fault(
        name="leaf is laid when the size has dried",
        rule=Rule.JOINT,
        piece="gilded",
        coat="leaf",
        words="closes Mon 2 Mar 16:13",
        # 3 h at the early edge is 2 h 44 min from 13:30.
        studio=with_product(
            STUDIO,
            "size",
            sheet=tuple(
                replace(p, from_hours=3.0) if p.stage is Stage.RECOAT_CLOSES else p
                for p in SIZE.sheet
            ),
        ),
    ),
    Fault(
        name="the coat below is not in the plan",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="not in the plan",
        plan=without_coat(PLAN, "tray", "glitter"),
    ),
    Fault(
        name="glitter is scuffed",
        rule=Rule.JOINT,
        piece="tray",
        coat="lock",
        words="can't be sanded",
        plan=SCUFFED_GLITTER,
    ),
    Fault(
        name="a scuffed joint is not sanded",
        rule=Rule.JOINT,
        piece="coasters",
        coat="top",
        words="needs one sanding before it, not 0",
        plan=without_step(PLAN, StepKind.SAND, "coasters"),
    ),
    Fault(
        name="a coat is sanded before it can be",
        rule=Rule.JOINT,
        piece="coasters",
        coat="top",
        words="can be sanded from Tue 3 Mar 03:46",
        plan=step_moved(PLAN, StepKind.SAND, "coasters", at(1, "03:40")),
    ),
    Fault(
        name="a coat can't be sanded by its sheet",
        rule=Rule.JOINT,
        piece="coasters",
        coat="top",
        words="can be sanded from never",
        studio=with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.SANDABLE)),
    ),
    Fault(
        name="dust has not settled before the scuffed joint",
        rule=Rule.JOINT,
        piece="coasters",
        coat="top",
        words="settles till Tue 3 Mar 10:40",
        plan=moved(PLAN, "coasters", "top", at(1, "10:35")),
    ),
    # What was sanded already
    Fault(
        name="a joint that was sanded already is planned in its window",
        rule=Rule.JOINT,
        piece="dish",
        coat="lock",
        words="was sanded for Mon 2 Mar 06:00, but is planned in the window",
        studio=logged(EntryKind.SANDED, "lock", at(0, "06:00")),
    ),
    Fault(
        name="a joint that was sanded already is to be sanded again",
        rule=Rule.JOINT,
        piece="dish",
        coat="lock",
        words="is sanded again, but was Mon 2 Mar 06:00",
        plan=replace(
            SCUFFED_DISH,
            steps=(*PLAN.steps, step(StepKind.SAND, "dish", 0, "10:50", 20, "ada", "lock")),
        ),
        studio=logged(EntryKind.SANDED, "lock", at(0, "06:00")),
    ),
    Fault(
        name="a coat goes into the dust of what was sanded for it",
        rule=Rule.JOINT,
        piece="dish",
        coat="lock",
        words="starts Mon 2 Mar 14:30, but dust from sanding settles till Mon 2 Mar 15:00",
        plan=SCUFFED_DISH,
        studio=logged(EntryKind.SANDED, "lock", at(0, "13:00")),
    ),
    Fault(
        name="a pour is in the dust of what was sanded already",
        rule=Rule.DUST,
        piece="tray",
        coat="flood",
        words="starts Mon 2 Mar 08:00, but dust from sanding settles till Mon 2 Mar 09:00",
        plan=SCUFFED_DISH,
        studio=logged(EntryKind.SANDED, "lock", at(0, "07:00")),
    ),
    Fault(
        name="the plan opens a window too early",
        rule=Rule.WINDOW,
        piece="tray",
        coat="lock",
        words="the plan opens its window",
        plan=with_coat(
            PLAN, "tray", "lock", window=safe(at(0, "18:37"), hours(at(0, "13:30"), 24 / 1.1))
        ),
    ),
    Fault(
        name="the plan closes a window too late",
        rule=Rule.WINDOW,
        piece="tray",
        coat="lock",
        words="the plan closes its window",
        plan=with_coat(PLAN, "tray", "lock", window=safe(at(0, "18:39"), at(1, "11:21"))),
    ),
    Fault(
        name="the plan never closes a window that closes",
        rule=Rule.WINDOW,
        piece="tray",
        coat="lock",
        words="the plan closes its window never",
        plan=with_coat(PLAN, "tray", "lock", window=safe(at(0, "18:39"), None)),
    ),
    Fault(
        name="a window has times without a zone",
        rule=Rule.WINDOW,
        piece="tray",
        coat="lock",
        plan=with_coat(PLAN, "tray", "lock", window=safe(NAIVE, None)),
    ),
)
