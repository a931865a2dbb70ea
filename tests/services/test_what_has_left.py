"""What has left is said to have left, whatever an older plan says of it."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.services.checking import checked
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.order_answers import answer_for
from studio_planner.services.plan_again import explained, plan_again
from studio_planner.services.plan_worth import worth_of
from studio_planner.services.promises import promise_of, promises_of
from studio_planner.services.still_to_do import done_with, nothing_left
from tests.desktop.scenes import NOW, at
from tests.services.small_studios import cut_down, kept
from tests.services.test_still_to_do import LATER, after, packed, studio

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio


def planned() -> Studio:
    """The market board and the coasters with the plan of Monday."""
    bare = studio()
    return replace(bare, plan=plan_again(bare, NOW).plan)


def left(of: Studio, order: str = "m") -> Studio:
    return shipped(of, order, at(4, "15:00"), LATER).make(of)


def order_of(of: Studio, key: str) -> Order:
    return next(order for order in of.orders if order.key == key)


def only_the_board() -> Studio:
    whole = cut_down(studio(), "k", orders=("m",))
    return replace(whole, plan=plan_again(whole, NOW).plan)


def test_a_shipped_order_is_shipped_whatever_an_older_plan_says() -> None:
    was, now = planned(), left(planned())
    assert [one.word for one in promises_of(was, kept(was))] == ["in time", "in time"]
    found = {one.order.key: one for one in promises_of(now, kept(now))}
    assert (found["m"].word, found["m"].shipped) == ("shipped", at(4, "15:00"))
    assert found["m"].outcome is not None
    assert found["m"].outcome.leaves == at(4, "15:00")
    assert found["m"].outcome.held is None, "it has left: no rehearsal knows better"
    assert (found["33"].word, found["33"].shipped) == ("in time", None)


def test_a_packed_order_leaves_at_the_next_pick_up_whatever_an_older_plan_says() -> None:
    now = packed(planned())
    kept_promise = promise_of(now, now.plan, order_of(now, "m"))
    assert (kept_promise.word, kept_promise.shipped) == ("in time", None)
    assert kept_promise.outcome is not None
    assert kept_promise.outcome.leaves == at(4, "12:00")


def test_a_piece_that_was_stripped_after_it_was_packed_is_to_be_made_again() -> None:
    again = after(packed(planned()), EntryKind.STRIPPED, "k", at(4, "13:00"))
    assert done_with(again, order_of(again, "m")) is None


def test_an_order_is_done_only_with_its_last_piece() -> None:
    whole = studio()
    both = tuple(
        replace(order, pieces=("c", "k")) for order in whole.orders if order.key == "33"
    )
    whole = replace(whole, orders=both)
    one = packed(whole)
    assert done_with(one, both[0]) is None
    step = StepTold(kind=EntryKind.PACKED, pieces=("c",), at=at(4, "13:00"))
    all_packed = told(one, step, LATER).make(one)
    assert promise_of(all_packed, None, both[0]).shipped is None


def test_what_the_customer_is_told_is_that_it_has_left() -> None:
    now = left(planned())
    answer = answer_for(now, now.plan, "m", LATER)
    assert answer.shipped == answer.safe == at(4, "15:00")
    assert answer.likely is None
    assert answer_for(planned(), planned().plan, "m", NOW).shipped is None


def test_a_studio_of_which_all_has_left_is_planned_as_what_was_poured() -> None:
    now = left(only_the_board())
    assert nothing_left(now)
    assert not nothing_left(only_the_board())
    made = plan_again(now, LATER, seconds=9.0)
    assert [coat.poured for coat in made.plan.coats] == [True]
    assert made.plan.outcomes[0].leaves == at(4, "15:00")
    assert made.report.clean
    assert (worth_of(now, made.plan).goals, worth_of(now, made.plan).effort) == ((), "")
    again = replace(now, plan=made.plan)
    assert explained(again, made.plan).plan == made.plan
    assert checked(again, made.plan).clean
    later = plan_again(again, LATER + timedelta(days=1)).plan
    assert later.outcomes == made.plan.outcomes


def test_a_studio_without_a_piece_has_nothing_that_has_left() -> None:
    assert not nothing_left(replace(studio(), pieces=(), orders=(), poured=(), log=()))
