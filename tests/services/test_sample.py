from __future__ import annotations

from datetime import UTC, date, time, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.hands import WorkHours
from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.places import PlaceKind
from studio_planner.craft.products import ProductKind
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.services.sample import (
    LATEST,
    REFERENCE_DAY,
    _moved_hours,
    sample_day,
    sample_studio,
)
from tests.services.small_studios import kept, morning, planned_once

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

# In the European Union clocks change on the last Sundays of March and October
# (directive 2000/84/EC): in 2026 on 29 March and 25 October.
CHANGES = (date(2026, 3, 29), date(2026, 10, 25))


@pytest.fixture(scope="module")
def planned() -> Studio:
    return planned_once()


def test_the_sample_is_a_workshop_of_the_size_that_was_asked_for() -> None:
    studio = sample_studio(REFERENCE_DAY)
    assert len(studio.pieces) >= 12
    assert any(piece.count > 1 for piece in studio.pieces)
    assert len(studio.orders) == 4
    assert len(studio.people) == 2
    rooms = [place for place in studio.places if place.kind is PlaceKind.ROOM]
    assert sum(len(room.spots) for room in rooms) == 6
    assert any(place.kind is PlaceKind.WARM_BOX for place in studio.places)


def test_every_product_of_the_sample_says_that_it_is_invented() -> None:
    products = sample_studio(REFERENCE_DAY).products
    kinds = [product.kind for product in products]
    assert len(products) == 5
    assert set(kinds) == set(ProductKind)
    assert kinds.count(ProductKind.TWO_PART) == 2
    assert all(product.invented for product in products)


def test_the_room_was_recorded_for_two_weeks_with_cool_nights_and_humidity() -> None:
    readings = sample_studio(REFERENCE_DAY).places[0].readings
    assert readings[-1].when - readings[0].when > timedelta(days=14)
    assert min(reading.celsius for reading in readings) > 16.4
    assert any(reading.celsius < 17.5 for reading in readings)
    assert all(reading.humidity_pct is not None for reading in readings)


def test_the_plan_of_the_sample_breaks_no_rule(planned: Studio) -> None:
    assert check_plan(planned, kept(planned)).broken == ()
    assert kept(planned).unplanned == ()


def test_one_order_is_late_with_a_reason_and_a_tried_change_that_keeps_it(
    planned: Studio,
) -> None:
    late = [outcome for outcome in kept(planned).outcomes if outcome.late_hours != 0.0]
    assert [outcome.order for outcome in late] == ["birthday"]
    assert late[0].reason
    assert any(change.keeps_promise for change in late[0].changes)


def test_the_lock_coat_over_glitter_stands_in_the_window(planned: Studio) -> None:
    for piece in ("night-sky", "small-moon"):
        stack = planned.piece(piece).stack
        assert any(coat.kind is CoatKind.GLITTER and not coat.sandable for coat in stack)
        lock = next(c for c in kept(planned).coats if (c.piece, c.coat) == (piece, "lock"))
        assert lock.joint is Joint.IN_WINDOW


def test_the_plan_of_the_sample_runs_over_more_than_a_week(planned: Studio) -> None:
    coats = kept(planned).coats
    assert len(coats) == sum(len(piece.stack) for piece in planned.pieces)
    assert max(c.end for c in coats) - min(c.start for c in coats) > timedelta(days=9)


def _clean(studio: Studio, day: date) -> Plan:
    plan = quick_plan(studio, morning(studio, day))
    assert check_plan(studio, plan).broken == ()
    assert plan.unplanned == ()
    late = [o.order for o in plan.outcomes if o.late_hours is None or o.late_hours > 0.0]
    assert late == ["birthday"]
    return plan


@pytest.mark.parametrize("shift", range(1, 7))
def test_the_sample_can_begin_on_any_day_of_the_week(shift: int) -> None:
    day = REFERENCE_DAY + timedelta(days=shift)
    _clean(sample_studio(day), day)


@pytest.mark.parametrize("change", CHANGES)
@pytest.mark.parametrize("before", [0, 3, 7])
def test_the_sample_can_be_dated_into_both_clock_changes(change: date, before: int) -> None:
    day = change - timedelta(days=before)
    _clean(sample_studio(day), day)


def test_the_sample_can_be_dated_from_a_leap_day() -> None:
    day = date(2028, 2, 29)
    _clean(sample_studio(day), day)


@pytest.mark.parametrize("change", CHANGES)
def test_moving_the_sample_keeps_what_the_wall_clock_shows(change: date) -> None:
    stored, moved = sample_studio(REFERENCE_DAY), sample_studio(change)
    zone = stored.time_zone
    days = change - REFERENCE_DAY
    for one, other in zip(stored.poured, moved.poured, strict=True):
        was, now = one.start.astimezone(zone), other.start.astimezone(zone)
        assert now.replace(tzinfo=None) == was.replace(tzinfo=None) + days


def test_a_reading_in_the_hour_that_spring_leaves_out_gives_way_to_the_next_one() -> None:
    readings = sample_studio(CHANGES[0] + timedelta(days=1)).places[0].readings
    stored = sample_studio(REFERENCE_DAY).places[0].readings
    assert len(readings) == len(stored) - 1
    whens = [reading.when for reading in readings]
    assert whens == sorted(set(whens))


def test_the_samples_day_is_that_of_its_own_zone() -> None:
    studio = sample_studio(REFERENCE_DAY)
    late = morning(studio).astimezone(UTC).replace(hour=23, minute=30)
    assert sample_day(late) == REFERENCE_DAY + timedelta(days=1)


def test_a_day_beyond_what_time_zones_know_is_refused() -> None:
    with pytest.raises(ValueError, match="is outside"):
        sample_studio(LATEST + timedelta(days=1))


def test_rules_that_count_from_a_date_move_with_the_sample() -> None:
    rule = "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO"
    every_other = WorkHours(rule=rule, start=time(9), end=time(12), first=REFERENCE_DAY)
    assert _moved_hours(every_other, 7).first == REFERENCE_DAY + timedelta(days=7)


def test_the_samples_log_moves_with_it() -> None:
    first, later = (sample_studio(REFERENCE_DAY + timedelta(days=days)) for days in (0, 3))
    pairs = list(zip(first.log, later.log, strict=True))
    assert len(pairs) > 10
    assert all(two.at - one.at == timedelta(days=3) for one, two in pairs)
    assert {one.at for one in later.mixes} == {
        one.at + timedelta(days=3) for one in first.mixes
    }
    assert all(pour.batch is not None for pour in later.poured)
