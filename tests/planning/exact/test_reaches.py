"""Lines say of every slot what the clocks say, across cold nights and clock changes too."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.planning.exact.beginnings import AllBeginnings
from studio_planner.planning.exact.reaches import not_after, not_before
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_start
from studio_planner.science.stages import Edge, Stage
from tests.planning.benchmark_studios import make_studio
from tests.planning.exact.frames import examples, search_of
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.reaches import Reach

_DAY = 86_400
_STAGES = (
    not_before(Stage.RECOAT_OPENS),
    not_before(Stage.RECOAT_OPENS, Edge.LIKELY),
    not_before(Stage.HANDLE),
    not_before(Stage.HANDLE, extra=600),
    not_before(Stage.FULL_CURE),
    not_after(Stage.RECOAT_CLOSES, extra=2700),
    not_after(Stage.WORKING_TIME, extra=2700),
)
_BLOCK = 47 * 60


def _judge(search: PlanSearch, days: int) -> None:
    """Compare lines and clocks at every slot of some days."""
    frame = search.best.parts.frame
    reaches, grid = frame.reaches, frame.grid
    stretch = (0, days * _DAY // grid.step)
    minutes = grid.step // 60
    for product in frame.studio.products:
        for place in frame.studio.places:
            asked = [(place.key, reach) for reach in _STAGES]
            for part in reaches.parts(product, asked, [_BLOCK], stretch):
                for slot in range(part.first, part.last + 1):
                    for (key, reach), line in part.lines.items():
                        said = (
                            line.up(slot * minutes + _BLOCK // 60)
                            if reach.opens
                            else line.down(slot * minutes)
                        )
                        start = grid.second(slot)
                        known = reaches.slot(product, key, reach, (start, _BLOCK))
                        assert _mean_the_same(frame, reach, said, known)


def _mean_the_same(frame: Frame, reach: Reach, one: int, other: int) -> bool:
    """Whether all that waits may begin after both or neither, or be over before."""
    if len(frame.studio.places) > 1:
        return one == other
    found = AllBeginnings(frame.means, frame.grid).of(reach.stage)
    if reach.opens:
        return found.not_before(one)[1] == found.not_before(other)[1] or one == other
    return found.not_after(one)[0] == found.not_after(other)[0] or one == other


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(6))
@given(studios(most_pieces=1))
def test_lines_are_the_clocks_at_every_slot_of_two_days(situation: Situation) -> None:
    search = search_of(situation.studio, situation.start)
    if search is not None:
        _judge(search, 2)


@pytest.mark.parametrize(
    "day", [datetime(2026, 3, 27, 7, tzinfo=UTC), datetime(2026, 10, 23, 7, tzinfo=UTC)]
)
def test_lines_are_the_clocks_across_a_clock_change(day: datetime) -> None:
    studio = make_studio(1, 1, 2, 1)
    _judge(PlanSearch(quick_start(studio, day)), 4)


def test_what_never_happens_happens_beyond_everything() -> None:
    search = PlanSearch(
        quick_start(make_studio(1, 1, 2, 1), datetime(2026, 3, 2, 7, tzinfo=UTC))
    )
    frame = search.best.parts.frame
    product, place = frame.studio.products[0], frame.studio.places[0].key
    last = frame.means.end - 3600
    reach = not_before(Stage.FULL_CURE)
    assert frame.reaches.slot(product, place, reach, (last, _BLOCK)) == frame.reaches.far
