"""How sure a plan is: shares of rehearsed weeks, what is left of time, and doubt."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from studio_planner.craft.plans import Outcome, Plan
from studio_planner.services.how_sure import (
    day_in_doubt,
    held_words,
    in_doubt,
    share_words,
    sure_words,
    weeks_words,
)
from tests.desktop import scenes

DUE = scenes.at(9, "16:00")
KEPT = Outcome(order="o", due=DUE, leaves=DUE - timedelta(hours=40), held=0.93, day_held=0.8)
LATE = replace(KEPT, leaves=DUE + timedelta(hours=72), held=0.0, day_held=0.97)
PLAN = Plan(made=scenes.NOW, start=scenes.NOW, coats=(), rehearsals=1000)


@pytest.mark.parametrize(
    ("share", "words"),
    [(0, "0 %"), (0.004, "under 1 %"), (0.93, "93 %"), (0.9996, "over 99 %"), (1, "100 %")],
)
def test_a_share_is_all_or_none_only_when_it_is(share: float, words: str) -> None:
    assert share_words(share) == words


def test_rehearsed_weeks_are_counted() -> None:
    assert (weeks_words(1), weeks_words(1000)) == ("1 rehearsed week", "1,000 rehearsed weeks")


def test_a_promise_says_in_how_many_weeks_it_is_kept_and_what_is_spare_in_most() -> None:
    words = "kept in 93 % of 1,000 rehearsed weeks"
    assert sure_words(KEPT, PLAN) == words
    spared = replace(KEPT, rehearsed_spare_hours=23.99)
    assert sure_words(spared, PLAN) == f"{words}, in nine of ten with 23 h 59 min spare"
    assert sure_words(replace(KEPT, rehearsed_spare_hours=-3.0), PLAN) == words


def test_a_late_order_says_in_how_many_weeks_its_new_day_holds() -> None:
    words = "leaves that day or sooner in 97 % of 1,000 rehearsed weeks"
    assert sure_words(LATE, PLAN) == words
    assert sure_words(replace(LATE, day_held=None), PLAN) == ""


def test_what_comes_true_in_less_than_half_of_the_weeks_is_in_doubt() -> None:
    assert in_doubt(replace(KEPT, held=0.49))
    assert not in_doubt(replace(KEPT, held=0.5))
    assert in_doubt(replace(LATE, day_held=0.2))
    assert not in_doubt(LATE)
    assert not in_doubt(replace(KEPT, held=None))
    assert not in_doubt(None)


def test_a_day_can_be_in_doubt_where_the_promise_is_not() -> None:
    seldom = replace(KEPT, day_held=0.4)
    assert (in_doubt(seldom), day_in_doubt(seldom)) == (False, True)
    assert not day_in_doubt(KEPT)
    assert day_in_doubt(replace(KEPT, held=0.1, day_held=None))
    assert not day_in_doubt(None)


def test_a_plan_that_was_not_rehearsed_claims_nothing() -> None:
    assert sure_words(KEPT, replace(PLAN, rehearsals=0)) == ""
    assert sure_words(None, PLAN) == ""
    coat = scenes.planned().plan.coats[-1]  # type: ignore[union-attr]
    assert held_words(coat, PLAN) == ""
    assert held_words(replace(coat, held=0.71), PLAN) == "held in 71 % of rehearsed weeks"
    assert held_words(replace(coat, held=0.71, poured=True), PLAN) == ""
