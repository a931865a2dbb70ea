"""Clocks cut their record as far as questions go; how far that is changes no answer."""

from __future__ import annotations

from threading import Thread
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.clocks import StageClock
from studio_planner.science.history import History
from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.rates import RatePieces, rate_pieces
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.science.rate_cuts import Cut

HOUR = 3600.0
_A_MOMENT = 0.05
LAW = stage_law(Stage.RECOAT_OPENS, [SheetFigure(15, 8, 10), SheetFigure(25, 4, 5)])
ROOM = History(
    tuple(6 * HOUR * step for step in range(41)),
    tuple(16.0 + 7.0 * (step % 4) / 3 for step in range(41)),
    tuple(0.5 + 0.02 * step for step in range(41)),
    (None,) * 41,
)
instants = st.integers(-20, 260).map(lambda hours: hours * HOUR)
questions = st.lists(
    st.tuples(st.sampled_from(("reached", "start", "degree")), instants, instants),
    min_size=1,
    max_size=8,
)


def _asked(clock: StageClock, question: tuple[str, float, float]) -> float | None:
    what, one, other = question
    if what == "reached":
        return clock.reached(one)
    return clock.start_for(one) if what == "start" else clock.degree(one, other)


@given(questions, st.sampled_from(Edge))
def test_an_answer_is_the_same_whatever_was_asked_before(
    asked: list[tuple[str, float, float]], edge: Edge
) -> None:
    clock = StageClock(LAW, ROOM, edge, 17.0)
    for question in asked:
        fresh = StageClock(LAW, ROOM, edge, 17.0)
        assert _asked(clock, question) == _asked(fresh, question)


def test_an_early_question_leaves_most_of_the_record_uncut() -> None:
    pieces = rate_pieces(LAW, ROOM, Edge.LIKELY, None)
    assert pieces.first_with(HOUR, 0.5) is not None
    assert len(pieces._times) < len(pieces.sums) / 4


def test_another_thread_may_ask_while_one_cuts() -> None:
    answers: list[float | None] = []

    def cut() -> Iterator[Cut]:
        yield 10.0, (0.1, 0.1, 0.1)
        other.start()
        # It has to wait for this piece, so this wait for it is in vain.
        other.join(_A_MOMENT)
        yield 20.0, (0.2, 0.2, 0.2)
        yield 30.0, (0.3, 0.3, 0.3)

    pieces = RatePieces(0.0, cut())

    def ask() -> None:
        answers.append(pieces.first_with(0.0, 2.0))

    other = Thread(target=ask)
    ask()
    other.join()
    assert answers == pytest.approx([15.0, 15.0])
