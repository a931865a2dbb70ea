"""Spells: hours of a date in which a place is another than its weekly pattern says.

Temperatures are invented; moisture is kept by the dew point.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest

from studio_planner.craft.places import PatternPoint, Place, Reading
from studio_planner.craft.spells import Spell
from studio_planner.science.air import dew_point
from tests.craft.nouns import broken, place, utc

if TYPE_CHECKING:
    from studio_planner.science.history import History

ZONE = ZoneInfo("UTC")
MONDAY = utc(2026, 1, 12)
DAY, HOUR = timedelta(days=1), timedelta(hours=1)
EVENING = MONDAY + 20 * HOUR
MINUTE = timedelta(minutes=1)


def room(*spells: Spell, humidity: float | None = 60.0) -> Place:
    points = (
        PatternPoint(at=time(8), celsius=20, humidity_pct=humidity),
        PatternPoint(at=time(20), celsius=16, humidity_pct=humidity),
    )
    return replace(place(*points), spells=spells)


def warm(start: datetime = EVENING, hours: float = 8, celsius: float = 22.0) -> Spell:
    return Spell(start=start, end=start + hours * HOUR, celsius=celsius)


def at(history: History, when: datetime) -> float:
    found = history.celsius_at(when.timestamp())
    assert found is not None
    return found


def test_a_spell_holds_on_its_date_and_not_a_week_later() -> None:
    plain = room().history(ZONE, MONDAY, MONDAY + 9 * DAY)
    history = room(warm()).history(ZONE, MONDAY, MONDAY + 9 * DAY)
    for hours in (0, 1, 4, 7.9):
        assert at(history, EVENING + hours * HOUR) == 22
    for when in (EVENING - MINUTE, EVENING + 8 * HOUR, EVENING + 7 * DAY + HOUR):
        assert at(history, when) == pytest.approx(at(plain, when))


def test_a_spell_begins_and_ends_in_a_step() -> None:
    history = room(warm()).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    seconds = list(history.seconds)
    for when in (EVENING, EVENING + 8 * HOUR):
        assert seconds.count(when.timestamp()) == 2


def test_warmed_air_keeps_its_moisture_and_given_humidity_is_kept() -> None:
    when = (EVENING + 2 * HOUR).timestamp()
    plain = room().history(ZONE, MONDAY, MONDAY + 2 * DAY)
    before, cool = plain.humidity_at(when), plain.celsius_at(when)
    history = room(warm()).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    dry = history.humidity_at(when)
    assert before is not None
    assert dry is not None
    assert cool is not None
    assert dry < before
    assert dew_point(22, dry) == pytest.approx(dew_point(cool, before), abs=0.15)
    given = replace(warm(), humidity_pct=33.0)
    history = room(given).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    assert history.humidity_at(when) == 33.0


def test_air_that_is_cooled_below_its_dew_point_is_saturated() -> None:
    history = room(warm(celsius=2.0)).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    assert history.humidity_at((EVENING + HOUR).timestamp()) == pytest.approx(100.0)


def test_unknown_humidity_stays_unknown_and_air_too_dry_to_reckon_stays_as_it_was() -> None:
    history = room(warm(), humidity=None).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    assert history.humidity_at((EVENING + HOUR).timestamp()) is None
    icy = PatternPoint(at=time(8), celsius=-30, humidity_pct=1)
    dry = replace(place(icy), spells=(warm(),)).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    assert dry.humidity_at((EVENING + HOUR).timestamp()) == 1


def test_spells_follow_one_another_and_are_cut_at_the_ends_of_a_record() -> None:
    spells = (warm(hours=2), warm(EVENING + 2 * HOUR, 3, 25.0), warm(EVENING + DAY, 3))
    history = room(*spells).history(ZONE, EVENING + HOUR, EVENING + 4 * HOUR)
    assert at(history, EVENING + HOUR) == 22
    assert at(history, EVENING + 2 * HOUR) == 25
    assert at(history, EVENING + 4 * HOUR) == 25
    whole = room(warm(MONDAY, 48)).history(ZONE, MONDAY, MONDAY + DAY)
    assert set(whole.celsius) == {22}


def test_what_was_read_wins_over_a_spell() -> None:
    readings = (
        Reading(when=EVENING + HOUR, celsius=15.5),
        Reading(when=EVENING + 2 * HOUR, celsius=15.0),
    )
    read = replace(room(warm()), readings=readings)
    history = read.history(ZONE, MONDAY, MONDAY + 2 * DAY)
    assert at(history, EVENING + 1.5 * HOUR) == pytest.approx(15.25)
    assert at(history, EVENING + 3 * HOUR) == 22


def test_a_spell_needs_an_order_of_time_and_a_zone() -> None:
    assert "end" in broken(Spell, start=EVENING, end=EVENING, celsius=20)
    naive = EVENING.replace(tzinfo=None)
    assert "start" in broken(Spell, start=naive, end=EVENING + HOUR, celsius=20)
    assert "celsius" in broken(warm, celsius=200)
    assert "humidity_pct" in broken(lambda: replace(warm(), humidity_pct=0.0))


def test_spells_of_a_place_are_in_order_and_none_lies_over_another() -> None:
    assert "spells" in broken(lambda: room(warm(), warm(EVENING + HOUR)))
    assert "spells" in broken(lambda: room(warm(EVENING + DAY), warm()))
