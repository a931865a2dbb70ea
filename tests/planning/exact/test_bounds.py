"""No bound lies above a plan that is known: bounds of models that leave something out would.

In these two studios mixes of three coats and more make plans that are less late than any plan
of small mixes: a model that knew only those once gave bounds of 24 h and 24.5 h.
"""

from __future__ import annotations

from time import monotonic
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.plans import Goal
from studio_planner.craft.shapes import Rectangle
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.goals import quantity_of
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.exact.whole import Whole
from studio_planner.planning.quick import quick_start
from studio_planner.planning.solver import Answer, Search, Status
from tests.planning.benchmark_studios import START, benchmark_studio, late_studio
from tests.planning.impossible_studios import board, small_studio

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

_KNOWN: dict[int, tuple[float, Mapping[str, Sequence[int]]]] = {
    3: (
        0.0,
        {
            "P001": (120, 154, 417, 696),
            "P002": (120, 154, 436, 706),
            "P003": (145, 417, 735, 987),
            "P004": (436, 706, 1021, 1281),
            "P005": (135, 417, 706, 1001),
            "P006": (408, 436, 726, 1001),
            "P007": (987, 1281, 1452, 1532),
            "P008": (1461, 1489, 1549, 1758),
        },
    ),
    5: (
        0.75,
        {
            "P001": (122, 410, 711, 1006),
            "P002": (122, 430, 711, 1006),
            "P003": (141, 430, 985, 1276),
            "P004": (141, 430, 711, 985),
            "P005": (696, 1006, 1302, 1523),
            "P006": (141, 410, 711, 1536),
            "P007": (1478, 1761, 2451, 2733),
            "P008": (1288, 1500, 1749, 2136),
        },
    ),
}
"""Hours late and starts, in slots of five minutes, of plans that a long search has found."""

_FAR = 600.0
_WORK = 0.3


def _search(seed: int) -> PlanSearch:
    return PlanSearch(quick_start(benchmark_studio("S", seed), START))


def _known(seed: int) -> PlanSearch:
    """A search that stands at the known plan of a studio."""
    search = _search(seed)
    best = search.best
    lanes = frozenset(range(len(best.standing.lanes)))
    draft = best.parts.draft(best.standing, Freedom(lanes, all_mixes=True))
    assert draft is not None
    for lane in draft.lanes:
        for coat, start in zip(lane.coats, _KNOWN[seed][1][lane.room.lane.key], strict=True):
            draft.model.equal(coat.start, start)
    draft.model.aim(quantity_of(draft, Goal.LATENESS))
    answer = draft.model.solve(Search(_FAR, light=True))
    found = AnswerReader(draft, answer).lanes()
    assert found is not None
    assert best.offer(best.parts.put_back(best.standing, lanes, found))
    return search


@pytest.mark.parametrize("seed", _KNOWN)
def test_no_bound_is_above_the_lateness_of_a_plan_that_keeps_every_rule(seed: int) -> None:
    known = _known(seed)
    assert not check_plan(benchmark_studio("S", seed), known.plan()).broken
    late = known.best.standing.worth.late
    assert late == pytest.approx(_KNOWN[seed][0])
    # The bound comes from a search that knows nothing of that plan.
    other = _search(seed)
    search = Search(seconds=_FAR, work=_WORK, light=True)
    Whole(other.best).solve(monotonic() + _FAR, search, lambda: False)
    row = next(row for row in other.best.goals if row.goal is Goal.LATENESS)
    assert row.bound is not None
    assert row.bound <= late + 1e-6


def test_a_bound_on_joints_holds_only_beside_the_lateness_it_was_found_with(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    best = PlanSearch(quick_start(late_studio(2), START)).best
    values = best.parts.values(best.standing.lanes)
    late = values[Goal.LATENESS]
    assert late
    assert values[Goal.TESTED] == 2

    def bounded(*_: object) -> Answer:
        # Somebody else has proved the lateness of the plan when this search is ended: what
        # it knows is that plans without any lateness have at least two joints to be tested.
        best.bound(Goal.LATENESS, late)
        return Answer(Status.UNKNOWN, None, 2.0, lambda _: 0)

    monkeypatch.setattr("studio_planner.planning.solver.Model.solve", bounded)
    Whole(best).ask_for_less(monotonic() + _FAR, Search(seconds=_FAR), lambda: False)
    rows = {row.goal: row for row in best.goals}
    assert rows[Goal.LATENESS].proved
    assert not rows[Goal.TESTED].bound
    assert not rows[Goal.SCUFFED].bound


def test_pieces_that_lie_on_no_spot_are_proved_to_be_left_out() -> None:
    wide = board(key="wide", name="Wide board", shape=Rectangle(length_mm=900, width_mm=700))
    studio = small_studio(pieces=(board(), wide), orders=())
    best = PlanSearch(quick_start(studio, START)).best
    assert best.standing.worth.left_out == 1
    assert Goal.LEFT_OUT in best.met
