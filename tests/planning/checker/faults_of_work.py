"""Planted faults of blocks, mixes, hands, numbers and completeness."""

from __future__ import annotations

from dataclasses import replace

from studio_planner.craft.pieces import Colour
from studio_planner.craft.pins import Pin
from studio_planner.craft.plans import StepKind, Unplanned
from studio_planner.craft.saying import Saying
from studio_planner.planning.checker import Rule
from tests.planning.checker.faults import (
    Fault,
    person_away,
)
from tests.planning.checker.hand_made import (
    COATS,
    PLAN,
    STUDIO,
    at,
    moved,
    step_moved,
    with_coat,
    with_piece,
    with_product,
    with_step,
    without_coat,
)

FAULTS = (
    # Blocks and mixes
    Fault(
        name="a block is too short",
        rule=Rule.BLOCK,
        piece="tray",
        coat="lock",
        words="40 min long, but the work takes 45 min",
        plan=with_coat(PLAN, "tray", "lock", end=at(0, "19:20")),
    ),
    Fault(
        name="a set is counted as one piece",
        rule=Rule.BLOCK,
        piece="coasters",
        coat="flood",
        plan=with_coat(PLAN, "coasters", "flood", end=at(0, "09:45")),
    ),
    Fault(
        name="a block needs set-up twice when the coat takes two mixes",
        rule=Rule.BLOCK,
        piece="tray",
        coat="flood",
        words="the work takes",
        studio=with_product(STUDIO, "resin", mix_limit_g=15.0),
    ),
    Fault(
        name="a block needs set-up twice when the coat takes more than one cup holds",
        rule=Rule.BLOCK,
        piece="tray",
        coat="flood",
        words="the work takes",
        studio=with_product(STUDIO, "resin", cup_limit_g=18.0),
    ),
    Fault(
        name="a pour is not where the maker has pinned it",
        rule=Rule.PINNED,
        piece="tray",
        coat="lock",
        words="does not start where it is pinned",
        studio=replace(STUDIO, pins=(Pin(piece="tray", coat="lock", start=at(0, "18:00")),)),
    ),
    Fault(
        name="a shared mix is more than can be spread",
        rule=Rule.MIX,
        piece="east",
        coat="colour",
        words="can be mixed at once",
        studio=with_product(STUDIO, "resin", mix_limit_g=35.0),
    ),
    Fault(
        name="a shared mix is more than one cup holds",
        rule=Rule.MIX,
        piece="east",
        coat="colour",
        words="can be mixed at once",
        studio=with_product(STUDIO, "resin", cup_limit_g=40.0),
    ),
    Fault(
        name="coats of one mix start apart",
        rule=Rule.MIX,
        piece="west",
        coat="colour",
        words="not its start",
        plan=moved(PLAN, "west", "colour", at(0, "10:55")),
    ),
    Fault(
        name="coats of one mix end apart",
        rule=Rule.MIX,
        piece="west",
        coat="colour",
        words="not its end",
        plan=with_coat(PLAN, "west", "colour", end=at(0, "12:05")),
    ),
    Fault(
        name="coats of one mix have two people",
        rule=Rule.MIX,
        piece="west",
        coat="colour",
        words="not its pair of hands",
        plan=with_coat(PLAN, "west", "colour", person="ada"),
    ),
    Fault(
        name="coats of one mix are of two products",
        rule=Rule.MIX,
        piece="west",
        coat="colour",
        words="not its product",
        studio=with_piece(STUDIO, "west", "colour", product="primer"),
    ),
    Fault(
        name="coats of one mix have other colours",
        rule=Rule.MIX,
        piece="west",
        coat="colour",
        words="not its colours",
        studio=with_piece(STUDIO, "west", "colour", colours=(Colour(name="Red"),)),
    ),
    Fault(
        name="a coat shares the mix of one that is poured",
        rule=Rule.MIX,
        piece="tray",
        coat="flood",
        words="poured already",
        plan=with_coat(PLAN, "tray", "flood", mix=1),
    ),
    Fault(
        name="a start is off the grid",
        rule=Rule.BLOCK,
        piece="dish",
        coat="lock",
        words="14:31:00",
        plan=moved(PLAN, "dish", "lock", at(0, "14:31")),
    ),
    Fault(
        name="a block runs backwards",
        rule=Rule.BLOCK,
        piece="dish",
        coat="lock",
        words="starts Mon 2 Mar 14:30, but ends Mon 2 Mar 14:00",
        plan=with_coat(PLAN, "dish", "lock", end=at(0, "14:00")),
    ),
    # Hands and absences
    Fault(
        name="a block is outside working hours",
        rule=Rule.HANDS,
        piece="tray",
        coat="lock",
        words="outside Ada's working hours",
        plan=moved(PLAN, "tray", "lock", at(0, "21:20")),
    ),
    Fault(
        name="a block is in an absence",
        rule=Rule.HANDS,
        piece="tray",
        coat="lock",
        studio=person_away(at(0, "19:00"), at(0, "20:00")),
    ),
    Fault(
        name="two blocks of one person overlap",
        rule=Rule.HANDS,
        piece="dish",
        coat="lock",
        words="finds Ada busy till Mon 2 Mar 14:15",
        plan=moved(PLAN, "dish", "lock", at(0, "14:10")),
    ),
    Fault(
        name="a turn is during a block of the same person",
        rule=Rule.HANDS,
        piece="board",
        coat="under",
        plan=with_step(PLAN, StepKind.TURN, "board", person="ben"),
    ),
    Fault(
        name="packing is outside working hours",
        rule=Rule.HANDS,
        piece="tray",
        plan=step_moved(PLAN, StepKind.PACK, "tray", at(3, "07:00")),
    ),
    Fault(
        name="a sanding is in an absence",
        rule=Rule.HANDS,
        piece="coasters",
        coat="top",
        plan=with_step(PLAN, StepKind.SAND, "coasters", person="ada"),
        studio=person_away(at(1, "08:30"), at(1, "09:00")),
    ),
    Fault(
        name="nobody of that key works here",
        rule=Rule.HANDS,
        piece="dish",
        coat="lock",
        words="nobody of that key",
        plan=with_coat(PLAN, "dish", "lock", person="eve"),
    ),
    # Completeness and numbers
    Fault(
        name="a coat is missing",
        rule=Rule.COMPLETE,
        piece="tray",
        coat="lock",
        words="0 times instead of once",
        plan=without_coat(PLAN, "tray", "lock"),
    ),
    Fault(
        name="a coat is planned twice",
        rule=Rule.COMPLETE,
        piece="tray",
        coat="flood",
        words="2 times instead of once",
        plan=replace(PLAN, coats=(*COATS, replace(COATS[1], number=18))),
    ),
    Fault(
        name="a piece goes on after it is said to stop",
        rule=Rule.COMPLETE,
        piece="tray",
        coat="glitter",
        words="said to stop before it",
        plan=replace(
            PLAN,
            unplanned=(
                *PLAN.unplanned,
                Unplanned(piece="tray", coat="glitter", reason=Saying("cold")),
            ),
        ),
    ),
    Fault(
        name="a piece that can't be planned at all is planned",
        rule=Rule.COMPLETE,
        piece="tray",
        coat="flood",
        plan=replace(
            PLAN,
            unplanned=(
                *PLAN.unplanned,
                Unplanned(piece="tray", coat=None, reason=Saying("cold")),
            ),
        ),
    ),
    Fault(
        name="a piece that can't be planned is not known",
        rule=Rule.UNKNOWN,
        piece="cloud",
        plan=replace(
            PLAN,
            unplanned=(
                *PLAN.unplanned,
                Unplanned(piece="cloud", coat=None, reason=Saying("?")),
            ),
        ),
    ),
    Fault(
        name="a number is used twice",
        rule=Rule.NUMBER,
        piece=None,
        words="not numbered 1 to 17",
        plan=with_coat(PLAN, "tray", "lock", number=14),
    ),
    Fault(
        name="numbers do not follow the starts",
        rule=Rule.NUMBER,
        piece="tray",
        coat="lock",
        words="is number 16, but starts before number 15",
        plan=with_coat(
            with_coat(PLAN, "tray", "lock", number=16), "coasters", "top", number=15
        ),
    ),
)
