"""Readings are typed, a log is looked at and taken, and a pattern is made from both."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.places import Reading
from studio_planner.services.air_effects import pours_tonight, tonight
from studio_planner.services.editing.air_weeks import WeekLine
from studio_planner.services.editing.changes import made
from studio_planner.services.read_patterns import read_pattern, taken_pattern
from studio_planner.services.reading_plots import ReadingPlot
from studio_planner.services.room_logs import (
    LogAnswers,
    LogAsked,
    LogFile,
    LogUnit,
    Overlap,
    log_file,
    look_at,
    taken,
    thinned,
    typed_reading,
    without_last_reading,
    without_readings,
)
from tests.desktop import scenes

if TYPE_CHECKING:
    from pathlib import Path

BERLIN = ZoneInfo("Europe/Berlin")
START = datetime(2026, 11, 2, tzinfo=UTC)
DRY_NIGHT = [16, 16, 15, 15, 15, 15, 16, 18, 20, 21, 21, 22, 22, 22, 22, 22, 21, 21, 20, 20]
HOURS = [*DRY_NIGHT, 19, 18, 17, 17]


def record(days: int, minutes: int = 30) -> tuple[Reading, ...]:
    """A hand-made record: the hours of HOURS by the wall clock, one day like another."""
    found = []
    for step in range(days * 1440 // minutes):
        when = START + timedelta(minutes=minutes * step)
        warmth = HOURS[when.astimezone(BERLIN).hour]
        found.append(Reading(when=when, celsius=warmth, humidity_pct=50))
    return tuple(found)


def csv(rows: int, heading: str = "time,temperature_c") -> LogFile:
    lines = [heading]
    for row in range(rows):
        when = START + timedelta(minutes=row)
        lines.append(f"{when:%Y-%m-%dT%H:%M:%S}Z,{20 + row % 5}")
    return LogFile("shed.csv", "\n".join(lines).encode())


def test_a_pattern_is_the_median_of_each_hour_of_the_wall_clock() -> None:
    readings = record(20)
    spike = Reading(when=readings[-1].when + timedelta(minutes=7), celsius=40.0)
    found = read_pattern((*readings, spike), BERLIN)
    assert found is not None
    line = WeekLine(found.pattern)
    for hour, warmth in enumerate(HOURS):
        assert line.at(hour * 60 + 30)[0] == pytest.approx(warmth, abs=0.16)
    assert found.hours == 24
    assert found.first >= spike.when - timedelta(days=14)
    assert len(found.pattern) < 24


def test_a_pattern_leaves_humidity_out_where_an_hour_lacks_it() -> None:
    readings = record(3)
    dry = [Reading(when=r.when, celsius=r.celsius) for r in readings]
    found = read_pattern(dry, BERLIN)
    assert found is not None
    assert {point.humidity_pct for point in found.pattern} == {None}
    assert read_pattern((), BERLIN) is None


def test_a_pattern_that_is_taken_brings_its_band() -> None:
    studio = scenes.studio()
    found = read_pattern(record(14), BERLIN)
    assert found is not None
    after = made(taken_pattern(studio.places[0], found), studio)
    assert after.places[0].pattern == found.pattern
    assert after.places[0].band_celsius == found.band_celsius


def test_a_log_is_looked_at_and_taken_as_one_change() -> None:
    studio = scenes.studio()
    room = studio.places[0]
    look = look_at(csv(300), BERLIN, room.readings, LogAsked())
    assert look.ready
    assert not look.thinned
    assert look.columns == ("temperature_c",)
    after = made(taken(room, look, Overlap.EXISTING_WINS), studio)
    assert len(after.places[0].readings) == 300
    assert made(without_readings(room), after).places[0].readings == ()


def test_a_log_of_minutes_is_thinned_when_asked_or_very_long() -> None:
    look = look_at(csv(300), BERLIN, (), LogAsked(thin=True))
    assert look.thinned
    assert len(look.new) == 31
    again = look_at(csv(300), BERLIN, look.new, LogAsked(thin=True))
    assert (look.overlapping, again.overlapping) == (0, 31)
    assert again.merged == look.merged
    assert thinned(()) == ()
    assert len(look_at(csv(20_001), BERLIN, (), LogAsked()).new) == 2001


def test_open_questions_are_answered_and_asked_no_more() -> None:
    file = csv(30, "time,temp").data.replace(b",2", b",7")
    warm = LogFile("shed.csv", file)
    look = look_at(warm, BERLIN, (), LogAsked())
    assert "°C or °F" in look.questions[0]
    assert not look.ready
    answered = LogAsked(answers=LogAnswers(unit=LogUnit.FAHRENHEIT))
    assert look_at(warm, BERLIN, (), answered).ready


def test_a_log_that_lies_ahead_is_not_taken_and_says_its_years() -> None:
    file = csv(300)
    last = look_at(file, BERLIN, (), LogAsked()).new[-1].when
    early = last - timedelta(days=366)
    look = look_at(file, BERLIN, (), LogAsked(), early)
    (question,) = look.questions
    assert f"to {last.date()}, and today is {early.date()}" in question
    assert not look.ready
    assert look_at(file, BERLIN, (), LogAsked(), last - timedelta(hours=14)).ready
    assert look_at(file, BERLIN, (), LogAsked(), last + timedelta(days=400)).ready


def test_local_times_can_be_read_as_utc() -> None:
    local = LogFile("shed.csv", csv(30).data.replace(b"Z,", b","))
    here = look_at(local, BERLIN, (), LogAsked())
    there = look_at(local, BERLIN, (), LogAsked(in_utc=True))
    assert here.found.local_rows == 30
    assert there.new[0].when - here.new[0].when == timedelta(hours=1)


@pytest.mark.parametrize(
    ("begins", "said"),
    [
        (b"SQLite format 3\x00", "studio file"),
        (b"%PDF-1.7", "PDF"),
        (b"\x89PNG\r\n", "picture"),
        (b"PK\x03\x04", "spreadsheet"),
        (b"  {", "JSON"),
        (b"", "empty"),
    ],
)
def test_a_wrong_file_says_what_it_is_and_what_is_wanted(
    tmp_path: Path, begins: bytes, said: str
) -> None:
    path = tmp_path / "thing.csv"
    path.write_bytes(begins)
    with pytest.raises(StudioFileError) as caught:
        log_file(path)
    assert said in str(caught.value)
    assert "What is wanted here" in str(caught.value)
    with pytest.raises(StudioFileError, match="is a folder"):
        log_file(tmp_path)


def test_a_text_without_a_table_names_the_file() -> None:
    with pytest.raises(StudioFileError, match=r"note\.txt: The room log has no rows"):
        look_at(LogFile("note.txt", b"buy more tape"), BERLIN, (), LogAsked())


def test_a_typed_reading_lands_at_its_minute_and_is_taken_back() -> None:
    studio = scenes.studio()
    room = studio.places[0]
    after = made(typed_reading(room, scenes.NOW, 19.3, 55.0), studio)
    after = made(typed_reading(room, scenes.NOW, 19.4, None), after)
    assert [r.celsius for r in after.places[0].readings] == [19.4]
    assert made(without_last_reading(room), after).places == studio.places


def test_a_colder_room_opens_every_window_later() -> None:
    studio = scenes.studio()
    warm, cold = scenes.constant_room(24.0), scenes.constant_room(16.0)
    for one, other in zip(
        pours_tonight(studio, warm, scenes.NOW),
        pours_tonight(studio, cold, scenes.NOW),
        strict=True,
    ):
        assert one.opens is not None
        assert other.opens is not None
        assert one.opens < other.opens
        assert not one.shut
    assert tonight(studio, scenes.NOW) == scenes.at(0, "20:00")
    assert tonight(studio, scenes.at(0, "20:01")) == scenes.at(1, "20:00")


def test_a_plot_of_many_readings_has_few_columns_and_keeps_the_peaks() -> None:
    from dataclasses import replace  # noqa: PLC0415

    room = replace(scenes.night_room(), readings=record(30, 5))
    plot = ReadingPlot(room, BERLIN)
    start, end = plot.extent
    columns = plot.columns(start, end + 1, 100)
    assert len(columns) <= 100
    assert min(c.low for c in columns) == min(HOURS)
    assert max(c.high for c in columns) == max(HOURS)
    assert len(plot.expected(start, end, 50)) == 50
    assert ReadingPlot(scenes.night_room(), BERLIN).extent == (0.0, 0.0)
