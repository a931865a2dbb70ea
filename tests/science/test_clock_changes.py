"""Both clock changes of the year: readings in local time, clocks in true seconds."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from studio_planner.science.clocks import StageClock
from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.samples import history_of
from studio_planner.science.stages import Stage

ZONE = ZoneInfo("Europe/Berlin")


@pytest.mark.parametrize(
    ("evening", "wall_clock_hours"),
    [
        (datetime(2026, 3, 28, 22, 0, tzinfo=ZONE), 9.0),
        (datetime(2026, 10, 24, 22, 0, tzinfo=ZONE), 7.0),
        (datetime(2026, 11, 7, 22, 0, tzinfo=ZONE), 8.0),
    ],
)
def test_eight_hours_are_eight_true_hours_across_a_clock_change(
    evening: datetime, wall_clock_hours: float
) -> None:
    """Source of the changes: the IANA time zone database, through zoneinfo."""
    first = evening.astimezone(UTC)
    readings = [(first + timedelta(minutes=10 * i)).astimezone(ZONE) for i in range(80)]
    history = history_of([(reading.timestamp(), 20.0, 0.5, None) for reading in readings])
    clock = StageClock(stage_law(Stage.TACK_FREE, [SheetFigure(20, 8)]), history)
    when = clock.reached(evening.timestamp())
    assert when is not None
    assert when - evening.timestamp() == pytest.approx(8 * 3600, abs=1e-3)
    morning = datetime.fromtimestamp(when, ZONE)
    shown = morning.replace(tzinfo=None) - evening.replace(tzinfo=None)
    assert abs(shown - timedelta(hours=wall_clock_hours)) < timedelta(seconds=1)
