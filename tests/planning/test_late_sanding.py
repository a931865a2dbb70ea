"""What is washed and sanded is so as late before its coat as hands and dust leave room."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.hands import Absence
from studio_planner.craft.log import Poured
from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.pins import Pin
from studio_planner.craft.places import Spot
from studio_planner.craft.plans import StepKind
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from tests.planning.impossible_studios import START, board, coat, person, room, small_studio
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedStep
    from studio_planner.craft.studio import Studio

_SEALED = START + timedelta(minutes=45)
_FIVE = timedelta(minutes=5)
_SPOTS = tuple(
    Spot(key=f"S{number}", name=f"Spot {number}", length_mm=600, width_mm=400, height_mm=200)
    for number in range(3)
)


def _at(day: int, hour: int, minute: int = 0) -> datetime:
    """A time in the studio, so many days after the start."""
    return START + timedelta(days=day, hours=hour - 8, minutes=minute)


def _pinned(*floods: datetime) -> Studio:
    """Boards sealed on the first morning, whose floods are to be poured at certain times.

    By then the seal can no longer be coated without washing and sanding.
    """
    boards = tuple(
        board(key=f"b{number}", name=f"Board {number}") for number in range(len(floods))
    )
    return small_studio(
        place=replace(room(), spots=_SPOTS),
        hands=person(8, 13),
        pieces=boards,
        orders=(),
        pins=tuple(
            Pin(piece=piece.key, coat="flood", start=start)
            for piece, start in zip(boards, floods, strict=True)
        ),
        poured=tuple(
            Poured(piece=piece.key, coat="seal", start=START, end=_SEALED, spot=spot.key)
            for piece, spot in zip(boards, _SPOTS, strict=False)
        ),
    )


def _sandings(plan: Plan) -> list[PlannedStep]:
    return [step for step in plan.steps if step.kind is StepKind.SAND]


def test_a_joint_is_sanded_on_the_day_of_its_pour_as_soon_before_as_dust_settles() -> None:
    studio = _pinned(_at(4, 11))
    plan = quick_plan(studio, _SEALED)
    (sanding,) = _sandings(plan)
    assert sanding.end == _at(4, 9)
    assert not check_plan(studio, plan).broken


def test_what_is_wet_or_poured_on_that_morning_sends_it_to_the_day_before() -> None:
    studio = _pinned(_at(4, 11))
    other = board((coat("top", CoatKind.TOP_COAT),), key="other", name="Other")
    studio = replace(
        studio,
        pieces=(*studio.pieces, other),
        pins=(*studio.pins, Pin(piece="other", coat="top", start=_at(4, 8, 15))),
    )
    plan = quick_plan(studio, _SEALED)
    (sanding,) = _sandings(plan)
    assert sanding.end == _at(3, 13)
    assert not check_plan(studio, plan).broken


def test_two_joints_are_sanded_one_after_the_other_before_the_first_pour() -> None:
    studio = _pinned(_at(4, 11), _at(4, 11, 45))
    plan = quick_plan(studio, _SEALED)
    length = timedelta(minutes=studio.settings.sand_minutes)
    assert [step.end for step in _sandings(plan)] == [_at(4, 9) - length, _at(4, 9)]
    assert not check_plan(studio, plan).broken


def test_somebody_else_sands_where_who_did_has_no_time_then() -> None:
    studio = _pinned(_at(4, 11))
    away = Absence(start=_at(3, 18), end=_at(9, 0)), Absence(start=START, end=_at(3, 18))
    ada, bo = person(8, 13), person(8, 13, key="bo", name="Bo")
    people = (replace(ada, absences=away[:1]), replace(bo, absences=away[1:]))
    plan = quick_plan(replace(studio, people=people), _SEALED)
    (sanding,) = _sandings(plan)
    assert (sanding.person, sanding.end) == ("bo", _at(4, 9))


def test_no_sanding_by_itself_could_lie_later() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck))
    @given(studios(), st.integers(0, 5), st.integers(1, 600))
    def judge(situation: Situation, which: int, fives: int) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            return
        alone = _sanded_alone(plan)
        assume(alone)
        sanding = alone[which % len(alone)]
        seen["sanded"] += 1
        assert not check_plan(situation.studio, plan).broken
        for somebody in situation.studio.people:
            moved = replace(
                sanding,
                start=sanding.start + fives * _FIVE,
                end=sanding.end + fives * _FIVE,
                person=somebody.key,
            )
            steps = tuple(moved if step is sanding else step for step in plan.steps)
            assert check_plan(situation.studio, replace(plan, steps=steps)).broken

    judge()
    assert seen["sanded"] > 0


def _sanded_alone(plan: Plan) -> list[PlannedStep]:
    """The sandings of pieces that are sanded neither with a twin nor after turning."""
    turned = {(step.piece, step.coat) for step in plan.steps if step.kind is StepKind.TURN}
    sandings = _sandings(plan)
    times = Counter(time for step in sandings for time in (step.start, step.end))
    return [
        step
        for step in sandings
        if (step.piece, step.coat) not in turned and times[step.start] == times[step.end] == 1
    ]
