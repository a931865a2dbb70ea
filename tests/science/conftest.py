"""Published tables and an outdoor year, for the tests of the science room."""

from __future__ import annotations

import csv
import importlib.util
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import settings

from studio_planner.science.bands import PublishedTable
from studio_planner.science.history import History
from studio_planner.science.laws import SheetFigure
from studio_planner.science.stages import Stage

# A busy machine is no reason to fail: what is checked is the answer, not its time.
settings.register_profile("unhurried", deadline=None)
settings.load_profile("unhurried")

PUBLISHED = Path(__file__).parents[2] / "resources" / "published"
HOUR = 3600.0


@pytest.fixture(scope="session")
def cure_tables() -> list[PublishedTable]:
    """Every table of hours against temperature, with its source in the file."""
    tables: dict[tuple[str, str, str], list[SheetFigure]] = {}
    with (PUBLISHED / "cure_times.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            figure = SheetFigure(float(row["temperature_c"]), float(row["hours"]))
            key = (row["record"], row["stage"], row["read_as"])
            tables.setdefault(key, []).append(figure)
    return [
        PublishedTable(record, Stage(read_as), tuple(figures))
        for (record, _, read_as), figures in tables.items()
    ]


@pytest.fixture(scope="session")
def cup_rows() -> list[dict[str, str]]:
    """Every published figure of a cup, as printed."""
    with (PUBLISHED / "cup_life.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@pytest.fixture(scope="session")
def outdoor_year() -> History:
    """A typical meteorological year (NREL TMY3, station 723170) as raw history.

    It is outdoor air, joined from months of different years and stamped with the hour's
    end, 24:00 included; here the months follow each other in one year of hours.
    """
    spec = importlib.util.find_spec("pvlib")
    assert spec is not None
    assert spec.origin is not None
    path = Path(spec.origin).parent / "data" / "723170TYA.CSV"
    with path.open(encoding="utf-8", newline="") as file:
        next(file)
        rows = list(csv.DictReader(file))
    first = datetime(2025, 1, 1, tzinfo=UTC)
    for hour, row in enumerate(rows):
        stamped = first + timedelta(hours=hour)
        month_and_day = stamped.strftime("%m/%d")
        assert row["Date (MM/DD/YYYY)"].startswith(month_and_day)
        assert int(row["Time (HH:MM)"][:2]) == stamped.hour + 1
    start = first.timestamp() + HOUR
    return History(
        tuple(start + HOUR * hour for hour in range(len(rows))),
        tuple(float(row["Dry-bulb (C)"]) for row in rows),
        (1.0,) * len(rows),
        tuple(float(row["RHum (%)"]) for row in rows),
    )
