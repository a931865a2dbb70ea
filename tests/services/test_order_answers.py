"""What can be said to a customer about an order."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.orders import Gate, Order
from studio_planner.craft.plans import Outcome, Plan, Readiness
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.orders import (
    free_pieces,
    new_order,
    order_with,
    values_of,
)
from studio_planner.services.order_answers import answer_for
from tests.desktop import scenes

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

FRIDAY = datetime(2026, 12, 11, 12, tzinfo=UTC)


def answered(likely: datetime | None, safe: datetime, leaves: datetime) -> tuple[Studio, Order]:
    """A studio with one order of one piece, which is ready at those times."""
    studio = scenes.planned()
    piece = studio.pieces[0]
    order = Order(
        key="o", name="Oda", pieces=(piece.key,), promised=FRIDAY.date(), gate=Gate.PACK
    )
    ready = tuple(
        Readiness(piece=piece.key, stage=gate.stage, likely=likely, safe=safe) for gate in Gate
    )
    outcome = Outcome(order="o", due=FRIDAY, leaves=leaves)
    plan = Plan(made=scenes.NOW, start=scenes.NOW, coats=(), ready=ready, outcomes=(outcome,))
    return replace(studio, orders=(order,), plan=plan), order


def test_likely_is_the_first_pick_up_after_somebody_has_packed_it() -> None:
    # Likely ready on Tuesday at 03:00; the scene's hands come in the evening, so it is packed
    # after that day's pick-up at 16:00 and goes with the one of Wednesday.
    studio, order = answered(
        scenes.at(0, "03:00"), scenes.at(2, "03:00"), scenes.at(4, "16:00")
    )
    zone = studio.time_zone
    answer = answer_for(studio, studio.plan, "o", scenes.NOW)
    spans = [
        span
        for person in studio.people
        for span in person.working(zone, scenes.at(0, "03:00"), scenes.at(3, "00:00"))
    ]
    first = min(s for s, e in spans if e - s >= timedelta(minutes=order.packing_minutes))
    packed = first + timedelta(minutes=order.packing_minutes)
    assert answer.likely == order.courier.next_pick_up(zone, packed)
    assert answer.safe == scenes.at(4, "16:00")


def test_likely_is_never_later_than_for_sure() -> None:
    studio, _ = answered(scenes.at(3, "03:00"), scenes.at(3, "09:00"), scenes.at(1, "16:00"))
    assert answer_for(studio, studio.plan, "o", scenes.NOW).likely == scenes.at(1, "16:00")


def test_likely_is_never_in_the_past() -> None:
    studio, order = answered(
        scenes.at(0, "03:00"), scenes.at(2, "03:00"), scenes.at(9, "16:00")
    )
    now = scenes.at(5, "09:00")
    likely = answer_for(studio, studio.plan, "o", now).likely
    assert likely is not None
    assert likely > now
    assert likely > order.courier.next_pick_up(studio.time_zone, scenes.at(0, "03:00"))


def test_nothing_is_likely_where_a_stage_is_never_reached() -> None:
    studio, _ = answered(None, scenes.at(3, "09:00"), scenes.at(4, "16:00"))
    assert answer_for(studio, studio.plan, "o", scenes.NOW).likely is None


def test_without_a_plan_there_is_no_date() -> None:
    studio = scenes.planned()
    answer = answer_for(studio, None, studio.orders[0].key, scenes.NOW)
    assert (answer.likely, answer.safe, answer.outcome) == (None, None, None)
    assert all(gate.safe is None for row in answer.pieces for gate in row.gates)


def test_what_a_form_shows_makes_the_same_order() -> None:
    for order in scenes.planned().orders:
        assert order_with(order, values_of(order)) == order


def test_a_new_order_takes_a_free_piece_and_says_so_when_there_is_none() -> None:
    studio = scenes.planned()
    while free_pieces(studio):
        order = new_order(studio, FRIDAY.date(), "New order")
        assert order.key not in {one.key for one in studio.orders}
        studio = with_thing(studio, order)
    with pytest.raises(InvalidEntry, match="every piece is promised already"):
        new_order(studio, FRIDAY.date(), "New order")
