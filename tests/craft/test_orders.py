"""Orders: courier days against numpy's business days, and what ready means for a promise."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.orders import Courier, Gate, Promise
from studio_planner.science.stages import Stage
from tests.craft.clock_changes import CHANGES, Change
from tests.craft.nouns import broken, order, utc

BERLIN = ZoneInfo("Europe/Berlin")
FRIDAY = date(2026, 11, 13)
COURIERS = st.builds(
    Courier,
    days=st.sets(st.integers(0, 6), min_size=1).map(frozenset),
    cut_off=st.times(),
    transit_days=st.integers(0, 12),
)
DATES = st.dates(date(2020, 1, 1), date(2040, 1, 1))


def mask(courier: Courier) -> list[bool]:
    return [day in courier.days for day in range(7)]


def shifted(day: date, by: int, courier: Courier) -> date:
    """A date moved by courier days, back to one first: numpy's business days."""
    moved = np.busday_offset(day, by, roll="backward", weekmask=mask(courier))
    return date.fromisoformat(str(moved))


def test_shipped_on_a_friday_with_one_day_under_way_arrives_on_monday() -> None:
    assert Courier(transit_days=1).arrives(FRIDAY) == date(2026, 11, 16)


def test_a_courier_that_also_goes_on_saturdays_needs_no_weekend() -> None:
    courier = Courier(days=frozenset(range(6)), transit_days=1)
    assert courier.arrives(FRIDAY) == date(2026, 11, 14)


@given(COURIERS, DATES)
def test_days_under_way_are_business_days(courier: Courier, day: date) -> None:
    shipped = shifted(day, 0, courier)
    assert courier.arrives(shipped) == shifted(shipped, courier.transit_days, courier)


@given(COURIERS, DATES)
def test_the_last_day_to_ship_is_counted_back_in_business_days(
    courier: Courier, arrive_by: date
) -> None:
    assert courier.last_ship_day(arrive_by) == shifted(
        arrive_by, -courier.transit_days, courier
    )


@given(COURIERS, st.datetimes(datetime(2020, 1, 1), datetime(2040, 1, 1)))  # noqa: DTZ001 - zoned
def test_a_parcel_goes_with_the_first_cut_off_that_is_left(
    courier: Courier, wall: datetime
) -> None:
    packed = wall.replace(tzinfo=UTC)
    pick_up = courier.next_pick_up(ZoneInfo("UTC"), packed)
    days = [packed.date() + timedelta(days=n) for n in range(9)]
    offs = [
        datetime.combine(d, courier.cut_off, UTC) for d in days if mask(courier)[d.weekday()]
    ]
    assert pick_up == min(off for off in offs if off >= packed)


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
def test_the_cut_off_stays_at_its_local_time_across_a_change(change: Change) -> None:
    courier = Courier(days=frozenset(range(7)), cut_off=time(16))
    for days in range(-2, 3):
        found = courier.next_pick_up(change.zone, change.moment + timedelta(days=days))
        assert found.astimezone(change.zone).time() == time(16)
        wait = found - (change.moment + timedelta(days=days))
        assert timedelta(0) <= wait <= timedelta(hours=25)


def test_packed_at_the_cut_off_still_goes() -> None:
    packed = utc(2026, 11, 13, 15)  # 16:00 in Berlin
    assert order().leaves(BERLIN, packed) == packed
    later = packed + timedelta(seconds=1)
    assert order().leaves(BERLIN, later) == utc(2026, 11, 16, 15)


def test_ship_by_a_sunday_means_the_friday_before() -> None:
    one = order(promise=Promise.SHIP_BY, promised=date(2026, 11, 15))
    assert one.due(BERLIN) == utc(2026, 11, 13, 15)


@given(COURIERS, DATES)
def test_ship_by_is_the_last_courier_day_that_is_not_later(
    courier: Courier, promised: date
) -> None:
    due = order(promised=promised, courier=courier).due(ZoneInfo("UTC"))
    assert due == datetime.combine(shifted(promised, 0, courier), courier.cut_off, UTC)


def test_arrive_by_leaves_the_days_under_way() -> None:
    # Two courier days before Friday the 13th is Wednesday the 11th.
    one = order(promise=Promise.ARRIVE_BY, promised=FRIDAY, courier=Courier(transit_days=2))
    assert one.due(BERLIN) == utc(2026, 11, 11, 15)


def test_a_market_is_due_when_it_opens_and_needs_no_courier() -> None:
    one = order(promise=Promise.MARKET, promised=date(2026, 11, 15), opens=time(8, 30))
    assert one.due(BERLIN) == utc(2026, 11, 15, 7, 30)
    packed = utc(2026, 11, 14, 3)
    assert one.leaves(BERLIN, packed) == packed


@given(COURIERS, DATES)
def test_what_is_packed_when_it_is_due_leaves_and_arrives_in_time(
    courier: Courier, promised: date
) -> None:
    one = order(promise=Promise.ARRIVE_BY, promised=promised, courier=courier)
    due = one.due(BERLIN)
    assert one.leaves(BERLIN, due) == due
    assert courier.arrives(due.astimezone(BERLIN).date()) <= promised
    late = one.leaves(BERLIN, due + timedelta(seconds=1))
    assert courier.arrives(late.astimezone(BERLIN).date()) > promised


def test_a_gate_opens_at_its_stage() -> None:
    # Common practice: stand it out when it can be handled, wrap it when it no longer prints.
    assert Gate.DISPLAY.stage is Stage.HANDLE
    assert Gate.PACK.stage is Stage.PRINT_FREE
    assert Gate.FULL.stage is Stage.FULL_CURE


def test_everything_wrong_with_a_courier_is_reported() -> None:
    told = broken(Courier, days=frozenset({7}), transit_days=61, cut_off=time(16, tzinfo=UTC))
    assert told.keys() == {"days", "transit_days", "cut_off"}
    assert broken(Courier, days=frozenset()).keys() == {"days"}


def test_everything_wrong_with_an_order_is_reported() -> None:
    told = broken(
        order,
        key="",
        name=" ",
        pieces=(),
        packing_minutes=0,
        weight=0,
        opens=time(9, tzinfo=UTC),
    )
    assert told.keys() == {"key", "name", "pieces", "packing_minutes", "weight", "opens"}
    assert broken(order, pieces=("a", "a")) == {"pieces": "a piece is named twice."}
