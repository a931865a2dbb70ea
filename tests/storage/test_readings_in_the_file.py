"""Readings are written from the first one on that is another, and come back the same."""

from __future__ import annotations

import sqlite3
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.places import Reading
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

    from studio_planner.craft.studio import Studio

NOON = datetime(2031, 3, 4, 12, tzinfo=UTC)


def read(path: Path) -> Studio:
    with open_studio(path) as file:
        return file.read()


def _with_readings(studio: Studio, celsius: Sequence[float]) -> Studio:
    room, *others = studio.places
    readings = tuple(
        Reading(when=NOON + timedelta(minutes=at), celsius=one)
        for at, one in enumerate(celsius)
    )
    return replace(studio, places=(replace(room, readings=readings), *others))


def test_a_reading_more_is_one_row_more(studio_path: Path, full_studio: Studio) -> None:
    many = [20.0 + hour % 7 for hour in range(400)]
    written: list[str] = []
    with open_studio(studio_path) as file:
        file.write(_with_readings(full_studio, many))
        file._connection.set_trace_callback(written.append)
        file.write(_with_readings(full_studio, [*many, 23.5]))
    assert read(studio_path) == _with_readings(full_studio, [*many, 23.5])
    inserted = [one for one in written if one.startswith('INSERT INTO "places_readings"')]
    assert len(inserted) == 1
    assert "23.5" in inserted[0]


@pytest.mark.parametrize("count", [0, 1, 49, 50, 51, 149, 260])
def test_readings_are_the_same_however_they_came_about(
    studio_path: Path, full_studio: Studio, count: int
) -> None:
    before = [20.0 + minute % 7 for minute in range(120)]
    others = [25.0 + minute % 5 for minute in range(count)]
    for after in (others, before[:count] + others, others + before[count:]):
        with open_studio(studio_path) as file:
            file.write(_with_readings(full_studio, before))
            file.write(_with_readings(full_studio, after))
        assert read(studio_path) == _with_readings(full_studio, after)


def test_readings_that_another_program_took_out_take_no_others_along(
    studio_path: Path, full_studio: Studio
) -> None:
    many = [20.0 + minute for minute in range(9)]
    with open_studio(studio_path) as file:
        file.write(_with_readings(full_studio, many))
    with sqlite3.connect(studio_path) as other:
        other.execute("DELETE FROM places_readings WHERE owner = 1 AND position = 3")
    other.close()
    more = Reading(when=NOON + timedelta(hours=1), celsius=30.0)
    with open_studio(studio_path) as file:
        room, *others = file.read().places
        longer = replace(room, readings=(*room.readings, more))
        file.write(replace(file.read(), places=(longer, *others)))
    assert read(studio_path).places[0] == longer
