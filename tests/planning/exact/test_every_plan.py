"""The exact model against every plan of tiny studios: the same best value, goal by goal."""

from __future__ import annotations

from time import monotonic
from typing import TYPE_CHECKING

from hypothesis import HealthCheck, given, settings

from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.best_so_far import BestSoFar
from studio_planner.planning.exact.frame import frame_of
from studio_planner.planning.exact.goals import IN_ORDER, quantity_of
from studio_planner.planning.exact.lanes import lanes_of
from studio_planner.planning.exact.part import Freedom, Parts
from studio_planner.planning.exact.sharing import least_mixes
from studio_planner.planning.exact.whole import Whole, leaves_nothing_out
from studio_planner.planning.problem import build_chains
from studio_planner.planning.quick import quick_start
from studio_planner.planning.solver import Search, Status
from tests.planning.exact.every_plan import EveryPlan
from tests.planning.exact.frames import examples
from tests.planning.exact.tiny_studios import NOW, Tiny, tiny_studios

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.plans import Goal
    from studio_planner.planning.exact.part import Standing

_HOUR = 3600
_LONG = 60.0
_ROUNDED = 1e-6


def _parts(tiny: Tiny) -> tuple[Parts, Standing]:
    """The studio on the hour, with nothing placed yet."""
    placer = quick_start(tiny.studio, NOW, before=None).rounds.placer()
    frame = frame_of(tiny.studio, placer.finisher, placer.means, tiny.before, _HOUR)
    parts = Parts(frame)
    chains, _ = build_chains(tiny.studio, twins=False)
    return parts, parts.standing(lanes_of((), chains, chains))


def _found(
    parts: Parts,
    nothing: Standing,
    goals: Sequence[Goal],
    most_mixes: int | None = None,
    *,
    to_prove: bool = False,
) -> Standing | None:
    """What the model finds with each of some goals as small as can be, one after the other.

    None when it says that there is nothing.
    """
    free = frozenset(range(len(nothing.lanes)))
    freedom = Freedom(free, all_mixes=True, most_mixes=most_mixes, to_prove=to_prove)
    draft = parts.draft(nothing, freedom)
    if draft is None:
        return None
    answer = draft.model.solve(Search(_LONG))
    for goal in goals:
        if answer.status is Status.IMPOSSIBLE:
            break
        quantity = quantity_of(draft, goal)
        draft.model.aim(quantity)
        answer = draft.model.solve(Search(_LONG))
        assert answer.status in {Status.PROVED, Status.IMPOSSIBLE}
        if answer.found:
            draft.model.at_least(answer.of(quantity), quantity)
    if answer.status is Status.IMPOSSIBLE:
        return None
    lanes = AnswerReader(draft, answer).lanes()
    assert lanes is not None, "the clocks do not agree with the model"
    after = parts.put_back(nothing, free, lanes)
    assert after is not None, "the answer has no spots, no hands or no gate after all"
    return after


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(12))
@given(tiny_studios())
def test_the_model_s_best_plan_is_the_best_of_all_plans(tiny: Tiny) -> None:
    _is_the_best(tiny)


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(12))
@given(tiny_studios())
def test_it_is_so_too_where_mixes_are_unknowns_of_their_own(tiny: Tiny) -> None:
    coats = sum(len(piece.stack) for piece in tiny.studio.pieces)
    _is_the_best(tiny, most_mixes=coats)


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(12))
@given(tiny_studios(halves=True))
def test_it_is_so_too_where_blocks_end_between_full_hours(tiny: Tiny) -> None:
    coats = sum(len(piece.stack) for piece in tiny.studio.pieces)
    _is_the_best(tiny, to_prove=True)
    _is_the_best(tiny, most_mixes=coats, to_prove=True)


def _is_the_best(tiny: Tiny, most_mixes: int | None = None, *, to_prove: bool = False) -> None:
    best = EveryPlan(tiny.studio, tiny.before).best()
    parts, nothing = _parts(tiny)
    after = _found(parts, nothing, IN_ORDER, most_mixes, to_prove=to_prove)
    if best is None:
        assert after is None
        return
    assert after is not None
    assert tuple(after.worth[1:]) == best
    least = sum(parts.alone_late(after.lanes, order) for order in tiny.studio.orders)
    assert least <= round(_HOUR * best[0])
    assert least_mixes(after.lanes) <= after.worth.mixes
    assert parts.alone_ends(after.lanes) / 60 <= after.worth.ends + _ROUNDED


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(6))
@given(tiny_studios(carried=True))
def test_it_is_so_too_where_a_piece_was_carried_after_its_pour(tiny: Tiny) -> None:
    _is_the_best(tiny)


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(12))
@given(tiny_studios())
def test_what_is_looked_at_as_a_whole_is_proved_in_every_goal(tiny: Tiny) -> None:
    parts, nothing = _parts(tiny)
    begin = _found(parts, nothing, ())
    if begin is None or not leaves_nothing_out(BestSoFar(parts, begin)):
        return
    best = BestSoFar(parts, begin)
    Whole(best).solve(monotonic() + _LONG, Search(_LONG), lambda: False)
    assert tuple(best.standing.worth[1:]) == EveryPlan(tiny.studio, tiny.before).best()
    assert best.proved, best.goals
