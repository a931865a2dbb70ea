"""What a plan may do: the rules' limits, and what is forgiven."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

import pytest

from studio_planner.craft.log import EntryKind, Poured
from studio_planner.craft.pieces import CoatKind, Joint, Material
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import Air, StepKind
from studio_planner.planning.checker import Rule, check_plan
from studio_planner.science.stages import Stage
from tests.planning.checker.faults import (
    NAIVE,
    SCUFFED_DISH,
    TEST_FIRST_LOCK,
    cold_from,
    settings,
    steps,
)
from tests.planning.checker.hand_made import (
    COATS,
    PLAN,
    PRIMER,
    READY,
    RESIN,
    STEPS,
    STUDIO,
    at,
    logged,
    moved,
    silent,
    step,
    step_moved,
    with_coat,
    with_pattern,
    with_piece,
    with_product,
    with_step,
    without_coat,
)


def test_a_touch_test_that_the_maker_allows_is_a_warning() -> None:
    studio = with_piece(STUDIO, "tray", "glitter", test_first=True)
    report = check_plan(studio, TEST_FIRST_LOCK)
    assert report.clean
    assert [(f.rule, f.piece, f.coat) for f in report.warnings] == [
        (Rule.TEST_FIRST, "tray", "lock")
    ]
    assert str(report.warnings[0]).startswith("Tray, lock coat: ")


def test_unknown_humidity_is_a_warning_where_it_is_marked() -> None:
    dry = PatternPoint(at=time(0), celsius=20.0)
    studio = with_pattern(STUDIO, dry)
    plan = replace(
        PLAN,
        coats=tuple(
            coat if coat.poured or coat.coat == "leaf" else replace(coat, air=Air.UNKNOWN)
            for coat in COATS
        ),
    )
    report = check_plan(studio, plan)
    assert report.clean
    assert {finding.rule for finding in report.warnings} == {Rule.AIR_UNKNOWN}


def test_a_one_part_window_that_the_sheet_does_not_close_never_closes() -> None:
    studio = with_piece(STUDIO, "board", "flood", joint=Joint.IN_WINDOW)
    plan = with_coat(PLAN, "board", "flood", joint=Joint.IN_WINDOW)
    assert check_plan(studio, plan).clean


def test_on_dry_over_leaf_waits_for_the_block_alone() -> None:
    plan = moved(PLAN, "gilded", "lock", at(0, "16:45"))
    broken = check_plan(STUDIO, plan).broken
    assert {finding.rule for finding in broken} == {Rule.READY}


def test_leaf_in_a_dust_cloud_is_no_fault() -> None:
    plan = step_moved(PLAN, StepKind.SAND, "coasters", at(0, "14:50"))
    broken = check_plan(STUDIO, plan).broken
    assert not [
        f for f in broken if f.rule is Rule.DUST and f.piece == "gilded" and f.coat == "leaf"
    ]


def test_recoat_opens_counts_as_covered_where_nothing_earlier_is_on_the_sheet() -> None:
    # Resin without cover and tack-free: wet until 4 h x 1.1 after 10:10, which is 14:34.
    studio = with_product(STUDIO, "resin", sheet=silent(RESIN, Stage.COVER, Stage.TACK_FREE))
    plan = step_moved(PLAN, StepKind.SAND, "coasters", at(0, "14:00"))
    assert any(
        "while the flood of Coasters is wet till Mon 2 Mar 14:34" in finding.words
        for finding in check_plan(studio, plan).broken
    )


def test_a_film_without_any_early_stage_is_wet_while_it_is_poured() -> None:
    stages = (Stage.TACK_FREE, Stage.RECOAT_OPENS)
    studio = with_product(STUDIO, "primer", sheet=silent(PRIMER, *stages))
    plan = step_moved(PLAN, StepKind.SAND, "coasters", at(0, "09:30"))
    assert any(
        "while the seal of Board is wet till Mon 2 Mar 09:45" in finding.words
        for finding in check_plan(studio, plan).broken
    )


def test_tape_of_a_poured_coat_is_forgiven_when_its_window_is_over() -> None:
    studio = with_piece(STUDIO, "dish", "flood", taped=True)
    assert check_plan(studio, PLAN).clean


def test_tape_of_a_poured_coat_is_asked_for_while_it_never_closes() -> None:
    studio = with_product(
        with_piece(STUDIO, "dish", "flood", taped=True),
        "resin",
        sheet=silent(RESIN, Stage.TAPE_CLOSES),
    )
    assert any(
        (finding.rule, finding.piece) == (Rule.TAPE, "dish")
        for finding in check_plan(studio, PLAN).broken
    )


def test_tape_that_was_pulled_already_is_not_asked_for() -> None:
    taped = with_product(
        with_piece(STUDIO, "dish", "flood", taped=True),
        "resin",
        sheet=silent(RESIN, Stage.TAPE_CLOSES),
    )
    studio = logged(EntryKind.TAPED, "flood", at(-1, "20:00"), taped)
    broken = check_plan(studio, PLAN).broken
    assert not [f for f in broken if (f.rule, f.piece) == (Rule.TAPE, "dish")]


def test_what_was_sanded_already_asks_for_no_step_and_no_window() -> None:
    studio = logged(EntryKind.SANDED, "lock", at(0, "06:00"))
    assert check_plan(studio, SCUFFED_DISH).clean


@pytest.mark.parametrize("why", ["before the pour", "cannot be sanded", "leaf", "wet in wet"])
def test_a_sanding_that_scuffs_no_joint_changes_nothing(why: str) -> None:
    studio, plan, when = STUDIO, PLAN, at(0, "05:00")
    if why == "before the pour":
        when = at(-1, "17:00")
    elif why == "cannot be sanded":
        studio = with_piece(STUDIO, "dish", "flood", sandable=False)
    elif why == "leaf":
        studio = with_piece(
            STUDIO, "dish", "lock", kind=CoatKind.LEAF, product="leaf", film_mm=0.0
        )
    else:
        studio = with_piece(STUDIO, "dish", "lock", joint=Joint.WET_IN_WET)
    told = logged(EntryKind.SANDED, "lock", when, studio)
    assert check_plan(told, plan) == check_plan(studio, plan)


def test_trimming_never_opens_in_a_room_too_cold_to_cure() -> None:
    studio = with_piece(STUDIO, "dish", "flood", trimmed=True)
    studio = with_pattern(studio, PatternPoint(at=time(0), celsius=10.0, humidity_pct=45.0))
    broken = check_plan(studio, PLAN).broken
    assert not [f for f in broken if f.rule is Rule.TRIM and f.piece == "dish"]
    assert any("that opens never at the latest" in f.words for f in broken)


def test_two_poured_pieces_on_one_spot_are_facts() -> None:
    poured = Poured(
        piece="ghost", coat="seal", start=at(-1, "18:00"), end=at(-1, "18:45"), spot="F"
    )
    studio = replace(STUDIO, poured=(*STUDIO.poured, poured))
    fact = replace(COATS[0], piece="ghost", coat="seal", mix=20)
    plan = replace(PLAN, coats=(fact, *COATS))
    spots = [f for f in check_plan(studio, plan).broken if f.rule is Rule.SPOT]
    assert all(finding.piece == "dish" for finding in spots)


def test_a_pour_noted_after_the_plan_began_keeps_its_spot() -> None:
    late = Poured(
        piece="ghost", coat="seal", start=at(0, "09:00"), end=at(0, "09:45"), spot="A"
    )
    studio = replace(STUDIO, poured=(*STUDIO.poured, late))
    fact = replace(
        COATS[0], piece="ghost", coat="seal", start=late.start, end=late.end, spot="A", mix=20
    )
    found = check_plan(studio, replace(PLAN, coats=(*COATS, fact))).broken
    assert any(
        finding.piece == "tray" and "Spot A is taken by Ghost" in finding.words
        for finding in found
    )


def test_a_poured_coat_can_lie_on_a_poured_coat() -> None:
    second = Poured(
        piece="dish",
        coat="lock",
        start=at(0, "00:00"),
        end=at(0, "00:45"),
        spot="F",
        joint=Joint.IN_WINDOW,
    )
    studio = replace(STUDIO, poured=(*STUDIO.poured, second))
    plan = with_coat(
        PLAN, "dish", "lock", start=second.start, end=second.end, poured=True, window=None
    )
    rules = {finding.rule for finding in check_plan(studio, plan).broken}
    assert rules <= {Rule.NUMBER, Rule.READY}


def test_a_studio_without_a_room_lets_pieces_rest_where_they_stand() -> None:
    only_box = replace(
        STUDIO,
        places=tuple(replace(p, kind=STUDIO.places[1].kind) for p in STUDIO.places),
    )
    assert check_plan(only_box, PLAN).clean


def test_size_on_the_outside_can_never_be_handled() -> None:
    studio = with_piece(STUDIO, "dish", "lock", product="size")
    assert any(
        (finding.rule, finding.piece, finding.coat) == (Rule.SPOT, "dish", "lock")
        for finding in check_plan(studio, PLAN).broken
    )


def test_wood_under_a_coat_and_stone_may_warm() -> None:
    studio = with_piece(cold_from(9, 21.0), "board", material=Material.SLATE)
    assert Rule.STEADY not in {f.rule for f in check_plan(studio, PLAN).broken}


def test_a_step_of_no_length_needs_no_hands() -> None:
    studio = settings(turn_minutes=0)
    plan = with_step(
        PLAN, StepKind.TURN, "board", start=at(1, "11:05"), end=at(1, "11:05"), person="ben"
    )
    assert check_plan(studio, plan).clean


def test_packing_what_nobody_ordered_is_no_fault() -> None:
    plan = steps(step(StepKind.PACK, "coasters", 4, "12:00", 33, "ada", None))
    assert check_plan(STUDIO, plan).clean


def test_a_stage_after_the_plans_record_may_be_given_as_never() -> None:
    studio = with_product(
        STUDIO,
        "resin",
        sheet=tuple(
            replace(p, from_hours=400.0) if p.stage is Stage.FULL_CURE else p
            for p in RESIN.sheet
        ),
    )
    plan = replace(
        PLAN,
        ready=tuple(
            replace(row, likely=None, safe=None) if row.stage is Stage.FULL_CURE else row
            for row in READY
        ),
    )
    assert not [f for f in check_plan(studio, plan).broken if f.rule is Rule.READY]


def test_the_other_stages_have_no_ready_time_to_check() -> None:
    row = replace(READY[0], stage=Stage.SANDABLE, likely=None, safe=None)
    assert check_plan(STUDIO, replace(PLAN, ready=(*READY, row))).clean


def test_an_empty_plan_of_a_full_studio_is_checked() -> None:
    bare = replace(PLAN, start=NAIVE, coats=(), steps=(), ready=(), outcomes=(), unplanned=())
    rules = {finding.rule for finding in check_plan(STUDIO, bare).broken}
    assert {Rule.RECORD, Rule.COMPLETE, Rule.PACK, Rule.PROMISE, Rule.POURED} == rules


def test_a_face_whose_coat_is_not_in_the_plan_is_not_waited_for() -> None:
    plan = without_coat(PLAN, "board", "seal")
    words = [f.words for f in check_plan(STUDIO, plan).broken if f.rule is Rule.TURN]
    assert words == []


def test_size_and_leaf_without_late_stages_are_not_waited_for_on_the_face_below() -> None:
    gilded = STUDIO.piece("gilded")
    under = STUDIO.piece("board").stack[2]
    studio = with_piece(STUDIO, "gilded", stack=(*gilded.stack, under))
    last = replace(
        COATS[-1],
        number=18,
        piece="gilded",
        spot="G",
        start=at(1, "16:00"),
        end=at(1, "16:45"),
        mix=18,
    )
    turn = replace(STEPS[3], piece="gilded", start=at(1, "15:50"), end=at(1, "15:55"))
    plan = replace(PLAN, coats=(*COATS, last), steps=(*STEPS, turn))
    rules = {finding.rule for finding in check_plan(studio, plan).broken}
    assert rules == {Rule.READY, Rule.PACK}
