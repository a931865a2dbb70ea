"""The words of a finding: local times and temperatures."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from studio_planner.craft.settings import TemperatureUnit, Units
from studio_planner.planning.checking.words import local, room_between
from studio_planner.science.history import History

BERLIN = ZoneInfo("Europe/Berlin")
FAHRENHEIT = Units(temperature=TemperatureUnit.FAHRENHEIT)


def test_a_time_is_said_as_the_studios_clock_shows_it() -> None:
    assert local(BERLIN, datetime(2026, 7, 3, 22, 30, tzinfo=UTC)) == "Sat 4 Jul 00:30"
    assert local(BERLIN, 0.0) == "Thu 1 Jan 01:00"
    assert local(BERLIN, None) == "never"


def test_the_two_passings_of_the_doubled_hour_are_told_apart() -> None:
    first, second = (datetime(2026, 10, 25, hour, 30, tzinfo=UTC) for hour in (0, 1))
    assert local(BERLIN, first) == "Sun 25 Oct 02:30 CEST"
    assert local(BERLIN, second) == "Sun 25 Oct 02:30 CET"


def test_a_room_is_said_with_its_band_in_the_makers_unit() -> None:
    room = History((0.0, 3600.0, 7200.0), (20.0, 22.0, 20.0), (1.0, 1.0, 1.0), (None,) * 3)
    assert room_between(Units(), room, 0.0, 7200.0) == "room 19 to 23 °C"
    assert room_between(FAHRENHEIT, room, 0.0, 1800.0) == "room 66.2 to 71.6 °F"
    assert room_between(Units(), room, 8000.0, 9000.0) == "room unknown"


def test_the_band_of_a_steady_room_is_not_rounded_away() -> None:
    steady = History((0.0, 3600.0), (20.0, 20.0), (0.5, 0.5), (None, None))
    assert room_between(Units(), steady, 0.0, 3600.0) == "room 19.5 to 20.5 °C"
