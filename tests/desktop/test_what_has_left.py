"""What has left stands so on the desk, and what is not planned is never counted as kept."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QLabel

from studio_planner.craft.orders import Promise
from studio_planner.desktop.order_pages import answer_words
from studio_planner.desktop.order_pages.answer_view import AnswerView
from studio_planner.desktop.side_rows import Standing, promise_rows, worth_rows
from studio_planner.desktop.title_bar import TitleBar
from studio_planner.desktop.verdicts import planned_words
from studio_planner.services.desk import DeskView
from studio_planner.services.order_answers import answer_for
from tests.services.test_still_to_do import LATER
from tests.services.test_what_has_left import left, only_the_board, planned

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow


def promised(of: Studio, kind: Promise, days: int = 0) -> Studio:
    """The market board's order with another promise, so many days earlier."""
    orders = (
        replace(o, promise=kind, promised=o.promised - timedelta(days=days))
        if o.key == "m"
        else o
        for o in of.orders
    )
    return replace(of, orders=tuple(orders))


def test_a_shipped_order_stands_as_shipped_at_the_side() -> None:
    view = DeskView(left(planned()), LATER)
    row = next(row for row in promise_rows(view) if row.title == "Quay market")
    assert row.word == "shipped"
    assert row.standing is Standing.KEPT
    assert row.dates.startswith("left ")
    assert row.sure == ""


def test_an_order_that_was_shipped_late_stands_as_late() -> None:
    late = left(promised(planned(), Promise.SHIP_BY, days=10))
    row = next(row for row in promise_rows(DeskView(late, LATER)) if row.title == "Quay market")
    assert row.word.startswith("shipped, ")
    assert row.word.endswith(" late")
    assert row.standing is Standing.BROKEN


def test_the_customer_is_told_that_it_has_left() -> None:
    for kind in (Promise.MARKET, Promise.ARRIVE_BY):
        studio = left(promised(planned(), kind))
        answer = answer_for(studio, studio.plan, "m", LATER)
        said = answer_words.for_the_customer(studio, answer)
        assert " left on Sat 12 Dec" in said
        assert ("should be with you by" in said) == (kind is Promise.ARRIVE_BY)
        about = {line.about: line.says for line in answer_words.dates(studio, answer)}
        assert about["Left"] == "Sat 12 Dec 15:00"
        assert not any(words.startswith(("Leaves", "Ready")) for words in about)
        assert answer_words.list_line(studio, answer).endswith(": shipped")


def test_where_all_has_left_the_desk_says_that_there_is_nothing_to_plan() -> None:
    studio = left(only_the_board())
    said = planned_words(DeskView(studio, LATER))
    assert said == "Everything is packed or has left; there is nothing to plan."
    (row,) = worth_rows(DeskView(studio, LATER))
    assert row.spoken == "Nothing to plan. Everything is packed or has left."


def test_a_promise_whose_pieces_are_left_out_is_not_counted_as_kept(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    del qtbot
    whole = planned()
    assert whole.plan is not None

    def line(*lost: str) -> str:
        assert whole.plan is not None
        outcomes = tuple(
            replace(one, leaves=None) if one.order in lost else one
            for one in whole.plan.outcomes
        )
        plan = replace(whole.plan, outcomes=outcomes)
        bar = TitleBar(desk.canvas)
        bar.show_view(DeskView(replace(whole, plan=plan), LATER))
        return bar.line.words

    assert "every promise kept" in line()
    assert "1 of 2 not planned" in line("m")
    assert "2 of 2 not planned" in line("m", "33")


def test_what_has_left_is_not_asked_any_more_when_it_may_go(desk: DeskWindow) -> None:
    def tables(studio: Studio) -> int:
        view = AnswerView(desk.canvas)
        view.show_answer(studio, answer_for(studio, studio.plan, "m", LATER))
        return sum(label.text() == "Full cure" for label in view.findChildren(QLabel))

    assert tables(planned()) == 1
    assert tables(left(planned())) == 0
