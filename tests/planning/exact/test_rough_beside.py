"""Rough plans beside the one that stands: few chains on other days, within each day's hands."""

from __future__ import annotations

from collections import defaultdict
from random import Random
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning.exact.lanes import Lane
from studio_planner.planning.exact.rough_beside import RoughBeside
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_start
from tests.planning.benchmark_studios import START, late_studio

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.part import Standing

_LATE = 0
"""The seed of a studio of twenty pieces of which much is late."""

_MANY = 8
"""How often it is asked with other numbers."""


@pytest.fixture(scope="module")
def search() -> PlanSearch:
    return PlanSearch(quick_start(late_studio(_LATE), START))


def _rough(search: PlanSearch) -> RoughBeside:
    foreseen = search._foreseen()
    placer, days = foreseen._in_days()
    until = round(max(one.score[4] for one in search.best.standing.placed))
    return RoughBeside(placer, days, until, foreseen._blocks())


def _drawn(number: int) -> Random:
    return Random(number)  # noqa: S311 - to be repeated, not to be secret


def _changed(standing: Standing, lanes: Sequence[Lane]) -> list[tuple[Lane, Lane]]:
    pairs = zip(standing.lanes, lanes, strict=True)
    return [(own, other) for own, other in pairs if own.placed is not other.placed]


def _hands(lanes: Sequence[Lane], rough: RoughBeside) -> dict[int, int]:
    """The seconds of hands that lanes take in each day."""
    found: dict[int, int] = defaultdict(int)
    for lane in lanes:
        assert lane.placed is not None
        for task, start in zip(lane.placed.chain.tasks, lane.placed.starts, strict=True):
            found[rough.days.of(start)] += rough._blocks.paid(task) + task.lead
        for pack in lane.placed.packed:
            found[rough.days.of(pack.start)] += pack.end - pack.start
    return found


def test_few_lanes_take_other_days_within_what_hands_there_are(search: PlanSearch) -> None:
    standing, rough = search.best.standing, _rough(search)
    stands, gained = _hands(standing.lanes, rough), 0
    for number in range(_MANY):
        lanes = rough.lanes(standing, _drawn(number))
        if lanes is None:
            continue
        gained += 1
        assert search.best.parts.standing(lanes).worth.late <= standing.worth.late - 0.24
        changed = _changed(standing, lanes)
        assert 0 < len(changed) <= 6
        for own, other in changed:
            assert own.placed is not None
            assert other.placed is not None
            assert own.chain is other.chain
            assert rough._days(own.placed) != rough._days(other.placed)
        for day, seconds in _hands(lanes, rough).items():
            most = max(1.05 * rough.days.hands[day], stands[day])
            assert seconds <= most + 60 * len(lanes)
    assert gained > _MANY / 2


def test_asked_again_it_leaves_out_what_was_in_vain_until_the_plan_is_another(
    search: PlanSearch,
) -> None:
    standing, rough = search.best.standing, _rough(search)
    answers = []
    for _ in range(3):
        lanes = rough.lanes(standing, _drawn(1))
        assert lanes is not None
        starts = {
            (other.key, other.placed.starts)
            for _, other in _changed(standing, lanes)
            if other.placed is not None
        }
        assert not starts & rough._in_vain
        answers.append(starts)
    assert answers[0] != answers[1] != answers[2]
    assert len(rough._in_vain) == 2
    rough.lanes(search.best.parts.standing(list(standing.lanes)), _drawn(1))
    assert not rough._in_vain


def test_where_nothing_gains_all_may_be_asked_for_again(search: PlanSearch) -> None:
    standing, rough = search.best.standing, _rough(search)
    assert rough.lanes(standing, _drawn(1)) is not None
    placer, days = search._foreseen()._in_days()
    now = int(START.timestamp())
    none = RoughBeside(placer, days, now - 86_400, rough._blocks)
    none._in_vain.add(("none", ()))
    none._last = standing.lanes
    assert none.lanes(standing, _drawn(1)) is None
    assert not none._in_vain


def test_a_lane_without_a_place_stays_without(search: PlanSearch) -> None:
    standing, rough = search.best.standing, _rough(search)
    first, *others = standing.lanes
    without = search.best.parts.standing([Lane(first.chain, None), *others])
    found = [rough.lanes(without, _drawn(number)) for number in range(_MANY)]
    assert any(lanes is not None for lanes in found)
    assert all(lanes is None or lanes[0].placed is None for lanes in found)
