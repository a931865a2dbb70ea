"""Where a promise is seldom kept in rehearsed weeks, the desk says so beside its date."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.desktop.order_pages.answer_words import (
    dates,
    for_the_customer,
    gate_lines,
    list_line,
)
from studio_planner.desktop.side_rows import Standing, promise_rows
from studio_planner.services.desk import DeskView
from studio_planner.services.order_answers import answer_for
from tests.desktop import scenes

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow

SPARE = timedelta(hours=71, minutes=35)
DOUBT = "But that day is not sure yet."


def seen(held: float | None, day_held: float | None, *, late: bool = False) -> DeskView:
    """The scene with one order, kept or late by as much time, as its weeks were rehearsed."""
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    first = plan.outcomes[0]
    order = next(one for one in studio.orders if one.key == first.order)
    outcome = replace(
        first,
        leaves=first.due + SPARE if late else first.due - SPARE,
        held=held,
        day_held=day_held,
        rehearsed_spare_hours=20.5,
    )
    plan = replace(plan, outcomes=(outcome,), rehearsals=1000)
    return DeskView(replace(studio, orders=(order,), plan=plan), scenes.NOW)


def said(view: DeskView) -> tuple[str, str]:
    """How the order stands in the list of orders, and what its customer is told."""
    studio = view.studio
    answer = answer_for(studio, studio.plan, studio.orders[0].key, view.now)
    return list_line(studio, answer), for_the_customer(studio, answer)


def test_a_promise_that_is_seldom_kept_is_in_doubt_everywhere() -> None:
    view = seen(0.02, 0.02)
    (row,) = promise_rows(view)
    assert row.standing is Standing.TIGHT
    assert row.word == "in doubt, 2 d 23 h spare as planned"
    stands, customer = said(view)
    assert stands.endswith(f": {row.word}")
    assert customer.endswith(DOUBT)


@pytest.mark.parametrize(
    ("held", "late", "words"),
    [
        (0.02, False, "1 of 1 in doubt"),
        (0.9, False, "every promise kept"),
        (0.02, True, "1 of 1 promises late"),
    ],
)
def test_the_head_of_the_desk_calls_no_promise_kept_that_is_in_doubt(
    desk: DeskWindow, held: float, late: bool, words: str
) -> None:
    desk.title_bar.show_view(seen(held, held, late=late))
    assert f", {words}, planned" in desk.title_bar.line.accessibleName()


def test_a_late_order_whose_new_day_seldom_holds_is_in_doubt_too() -> None:
    view = seen(0.0, 0.3, late=True)
    (row,) = promise_rows(view)
    assert row.standing is Standing.BROKEN
    assert row.word == "in doubt, 3 days late or more"
    assert row.sure == "leaves that day or sooner in 30 % of 1,000 rehearsed weeks"
    assert said(view)[1].endswith(DOUBT)


@pytest.mark.parametrize(("held", "late"), [(0.9, False), (None, False), (0.0, True)])
def test_what_mostly_comes_true_or_was_not_rehearsed_is_said_without_doubt(
    held: float | None,
    late: bool,
) -> None:
    view = seen(held, None if held is None else 0.97, late=late)
    stands, customer = said(view)
    assert "in doubt" not in stands
    assert DOUBT not in customer
    assert promise_rows(view)[0].word == ("3 days late" if late else "kept, 2 d 23 h spare")


def test_the_answer_tells_the_spare_that_is_left_in_nine_weeks_of_ten() -> None:
    view = seen(0.95, 0.9)
    answer = answer_for(view.studio, view.plan, view.studio.orders[0].key, view.now)
    told = {line.about: line.says for line in dates(view.studio, answer)}
    assert told["Spare"] == "2 d 23 h"
    assert told["How sure"].endswith("in nine of ten with 20 h 30 min spare")


def test_a_stage_has_the_word_that_the_terminal_prints() -> None:
    view = seen(0.95, 0.9)
    answer = answer_for(view.studio, view.plan, view.studio.orders[0].key, view.now)
    gates = [line.about for line in gate_lines(view.studio, answer.pieces[0])]
    assert gates == ["Handle (display)", "Pack", "Full cure"]
