"""A cool night worked out by hand: when a coat poured at 18:00 opens, is tack-free, closes.

Calculated by the trade's rule of a factor 2 per 10 °C from 23 °C (opens 4 h, tack-free 8 h,
handle 24 h); the night falls from 17 °C at 18:00 to 13 °C at 04:00, rises to 16 °C at 10:00
and 19 °C at 14:00. It is arithmetic only: 13 °C is under nearly every product's minimum.
"""

from __future__ import annotations

import pytest

from studio_planner.science.clocks import StageClock
from studio_planner.science.history import History, constant_history
from studio_planner.science.laws import SheetFigure, StageLaw, stage_law
from studio_planner.science.stages import Stage
from tests.science.rooms import stepped_room

HOUR = 3600.0
POURED = 18 * HOUR


def night() -> History:
    """Return the unheated night, hours counted from midnight before the pour."""
    hours, celsius = (18.0, 28.0, 34.0, 38.0, 60.0), (17.0, 13.0, 16.0, 19.0, 19.0)
    return History(tuple(h * HOUR for h in hours), celsius, (0.0,) * 5, (None,) * 5)


ROOMS = {
    "steady 23": constant_history(23.0),
    "unheated": night(),
    "steady 17": constant_history(17.0),
    "heated": constant_history(22.0),
    "heated to midnight": stepped_room([(POURED, 21.0), (24 * HOUR, 16.0)], 60 * HOUR),
}


def doubling(hours: float) -> StageLaw:
    """Return the law of a factor 2 per 10 °C from 23 °C, figure by figure."""
    figures = [SheetFigure(c, hours * 2 ** ((23 - c) / 10)) for c in range(10, 28)]
    return stage_law(Stage.TACK_FREE, figures)


@pytest.mark.parametrize(
    ("room", "nominal", "clock_time"),
    [
        ("steady 23", 4, (22, 0)),
        ("unheated", 4, (24, 39)),
        ("unheated", 8, (32, 10)),
        ("unheated", 12, (38, 14)),
        ("steady 17", 4, (24, 4)),
        ("steady 17", 8, (30, 8)),
        ("heated", 4, (22, 18)),
        ("heated", 8, (26, 35)),
        ("heated", 12, (30, 52)),
        ("heated", 24, (43, 44)),
        ("heated to midnight", 4, (22, 36)),
        ("heated to midnight", 8, (28, 31)),
        ("heated to midnight", 12, (35, 1)),
    ],
)
def test_the_night_agrees_with_the_arithmetic_to_a_minute(
    room: str, nominal: float, clock_time: tuple[int, int]
) -> None:
    when = StageClock(doubling(nominal), ROOMS[room]).reached(POURED)
    assert when is not None
    hours, minutes = clock_time
    assert when / 60 == pytest.approx(60 * hours + minutes, abs=1.0)


@pytest.mark.parametrize("room", list(ROOMS))
@pytest.mark.parametrize(("poured", "closes"), [(18, 30), (21, 33), (23, 35)])
def test_with_one_figure_the_window_closes_at_its_hours_on_any_cold_night(
    room: str, poured: int, closes: int
) -> None:
    """12 h at 23 °C: 06:00 for 18:00, 09:00 for 21:00, 11:00 for 23:00; no slope assumed."""
    law = stage_law(Stage.RECOAT_CLOSES, [SheetFigure(23, 12)])
    when = StageClock(law, ROOMS[room]).reached(poured * HOUR)
    assert when == pytest.approx(closes * HOUR, abs=1e-3)
