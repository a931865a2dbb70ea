"""A year of hourly outdoor air as a room history: clocks still agree with quadrature.

Source: NREL TMY3 station 723170, carried by the pvlib package (test only). It is outdoor
air, joined from months of different years: raw history, nothing a maker would pour in.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from scipy.integrate import quad

from studio_planner.science.air import condensation_point, surface_history
from studio_planner.science.clocks import StageClock
from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from studio_planner.science.history import History

HOUR = 3600.0
LAW = stage_law(Stage.FULL_CURE, [SheetFigure(15, 240), SheetFigure(25, 120)])


def test_the_year_has_every_hour_and_its_humidity(outdoor_year: History) -> None:
    assert len(outdoor_year.seconds) == 8760
    assert outdoor_year.gaps(HOUR) == ()
    assert None not in outdoor_year.humidity


@pytest.mark.parametrize("edge", list(Edge))
@pytest.mark.parametrize("month", [0, 3, 6, 9])
def test_a_year_of_clocks_agrees_with_quadrature_to_a_second(
    outdoor_year: History, edge: Edge, month: int
) -> None:
    clock = StageClock(LAW, outdoor_year, edge)
    start = outdoor_year.seconds[0] + month * 730 * HOUR + 17.0
    when = clock.reached(start)
    assert when is not None
    sign = {Edge.EARLY: 1.0, Edge.LIKELY: 0.0, Edge.LATE: -1.0}[edge]

    def rate(second: float) -> float:
        celsius = outdoor_year.celsius_at(second)
        assert celsius is not None
        return 1.0 / (HOUR * LAW.hours(celsius, edge, 1.0))

    ends = {start, when, *(s for s in outdoor_year.seconds if start < s < when)}
    for (t0, c0), (t1, c1) in pairwise(
        zip(outdoor_year.seconds, outdoor_year.celsius, strict=True)
    ):
        if t1 < start or t0 > when or c0 == c1:
            continue
        for kink in LAW.kinks():
            for level in (kink, kink - sign):
                instant = t0 + (level - c0) / (c1 - c0) * (t1 - t0)
                if t0 < instant < t1 and start < instant < when:
                    ends.add(instant)
    share = math.fsum(
        quad(rate, a, b, epsrel=1e-9)[0] for a, b in pairwise(sorted(ends)) if b - a > 1e-6
    )
    assert abs(share - 1.0) / rate(when - 1.0) < 1.0


def test_below_a_minimum_of_twenty_degrees_the_winter_never_cures_a_coat(
    outdoor_year: History,
) -> None:
    clock = StageClock(LAW, outdoor_year, Edge.LATE, minimum_celsius=20.0)
    first, last = outdoor_year.extent
    assert clock.degree(first, first + 30 * 24 * HOUR) < 1.0
    assert clock.reached(last - 30 * 24 * HOUR) is None


def test_the_air_of_a_year_is_never_below_its_own_dew_point(outdoor_year: History) -> None:
    for celsius, humidity in zip(outdoor_year.celsius, outdoor_year.humidity, strict=True):
        assert humidity is not None
        point = condensation_point(celsius, humidity)
        if celsius >= 0.0:
            assert point.celsius <= celsius + 1e-9


def test_a_blank_follows_the_year_without_leaving_its_range(outdoor_year: History) -> None:
    blank = surface_history(outdoor_year, lag_hours=1.5)
    assert min(blank.celsius) >= min(outdoor_year.celsius)
    assert max(blank.celsius) <= max(outdoor_year.celsius)
    assert blank.extent == outdoor_year.extent
