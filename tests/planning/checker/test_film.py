"""The checker's own integration, against adaptive quadrature and against the wall clock."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from studio_planner.craft.places import PatternPoint, Place
from studio_planner.planning.checking.film import FilmRates
from studio_planner.planning.checking.quadrature import integral, reached_at
from studio_planner.science.history import History
from studio_planner.science.laws import SheetFigure, StageLaw, stage_law
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Callable

BERLIN = ZoneInfo("Europe/Berlin")


def breaks(law: StageLaw, history: History, edge: Edge, minimum: float | None) -> list[float]:
    """Instants where the rate may have a kink: samples, sheet points, the minimum."""
    sign = {Edge.EARLY: 1.0, Edge.LIKELY: 0.0, Edge.LATE: -1.0}[edge]
    found = set(history.seconds)
    samples = zip(history.seconds, history.celsius, history.band, strict=True)
    for (s, c, b), (s2, c2, b2) in itertools.pairwise(samples):
        for first, last in ((c, c2), (c + sign * b, c2 + sign * b2)):
            for level in (*law.kinks(), *([] if minimum is None else [minimum])):
                if min(first, last) < level < max(first, last):
                    found.add(s + (s2 - s) * (level - first) / (last - first))
    return sorted(found)


def rate(
    law: StageLaw, history: History, edge: Edge, minimum: float | None
) -> Callable[[float], float]:
    """The share of the stage per second, straight from its definition."""
    sign = {Edge.EARLY: 1.0, Edge.LIKELY: 0.0, Edge.LATE: -1.0}[edge]

    def share(second: float) -> float:
        celsius, band = history.celsius_at(second), history.band_at(second)
        assert celsius is not None
        assert band is not None
        if minimum is not None and law.stage.not_before and celsius + sign * band < minimum:
            return 0.0
        felt = celsius if law.stage.not_before or minimum is None else max(celsius, minimum)
        return 1.0 / (3600.0 * law.hours(felt, edge, band))

    return share


def by_quad(law: StageLaw, history: History, edge: Edge, minimum: float | None) -> float | None:
    """When the stage is reached from the first sample, by scipy's quad between all breaks."""
    share, done = rate(law, history, edge, minimum), 0.0
    cuts = breaks(law, history, edge, minimum)
    for low, high in itertools.pairwise(cuts):
        passed = quad(share, low, high, epsabs=1e-13, epsrel=1e-11)[0]
        if done + passed >= 1.0:
            missing = 1.0 - done
            return float(
                brentq(
                    lambda x, low=low, missing=missing: (
                        quad(share, low, x, epsrel=1e-11)[0] - missing
                    ),
                    low,
                    high,
                    xtol=1e-3,
                )
            )
        done += passed
    return None


@st.composite
def histories(draw: st.DrawFn) -> History:
    count = draw(st.integers(2, 12))
    gaps = draw(st.lists(st.integers(600, 30_000), min_size=count - 1, max_size=count - 1))
    seconds = [1.77e9, *itertools.accumulate(gaps, initial=1.77e9)][1:]
    warmths = st.floats(2.0, 38.0).map(lambda value: round(value, 1))
    celsius = draw(st.lists(warmths, min_size=count, max_size=count))
    bands = st.floats(0.0, 3.0).map(lambda value: round(value, 1))
    band = draw(st.lists(bands, min_size=count, max_size=count))
    return History(tuple(seconds), tuple(celsius), tuple(band), (None,) * count)


LAWS = (
    stage_law(Stage.RECOAT_OPENS, [SheetFigure(20, 3)]),
    stage_law(Stage.RECOAT_CLOSES, [SheetFigure(15, 24), SheetFigure(25, 14, 18)]),
    stage_law(Stage.HANDLE, [SheetFigure(10, 40), SheetFigure(20, 20), SheetFigure(30, 11)]),
    stage_law(Stage.WORKING_TIME, [SheetFigure(23, 0.75)]),
)


@settings(max_examples=60, deadline=None)
@given(
    history=histories(),
    law=st.sampled_from(LAWS),
    edge=st.sampled_from(list(Edge)),
    minimum=st.sampled_from([None, 10.0, 15.0]),
)
def test_a_stage_is_reached_within_a_second_of_adaptive_quadrature(
    history: History, law: StageLaw, edge: Edge, minimum: float | None
) -> None:
    expected = by_quad(law, history, edge, minimum)
    found, missing = FilmRates(law, history, edge, minimum).walk(
        history.seconds[0], math.inf, 1.0
    )
    if expected is None:
        assert found is None or found >= history.seconds[-1] - 1.0
        assert missing < 1.0 + 1e-9
    else:
        assert found == pytest.approx(expected, abs=1.0)


@settings(max_examples=30, deadline=None)
@given(history=histories(), part=st.floats(0.01, 0.99))
def test_what_is_walked_in_two_parts_is_what_is_walked_in_one(
    history: History, part: float
) -> None:
    rates = FilmRates(LAWS[2], history, Edge.LATE, 10.0)
    start, end = history.seconds[0], history.seconds[-1]
    middle = start + part * (end - start)
    _, whole = rates.walk(start, end, 1e3)
    _, first = rates.walk(start, middle, 1e3)
    _, both = rates.walk(middle, end, first)
    assert both == pytest.approx(whole, abs=1e-6)


def test_a_step_in_the_log_is_taken_from_both_sides() -> None:
    # 2 h at 20 °C, then 30 °C: what is left of a 4 h stage passes at the rate of 30 °C.
    law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(20, 4), SheetFigure(30, 2)])
    seconds = (0.0, 7200.0, 7200.0, 36_000.0)
    room = History(seconds, (20.0, 20.0, 30.0, 30.0), (0.0,) * 4, (None,) * 4)
    found, _ = FilmRates(law, room, Edge.LIKELY, None).walk(0.0, math.inf, 1.0)
    assert found == pytest.approx(7200.0 + 3600.0, abs=1e-3)


def test_hours_below_the_minimum_do_not_count_before_and_count_as_the_minimum_after() -> None:
    # 20 °C, ten hours at 5 °C, 20 °C again; the minimum is 10 °C.
    seconds = (0.0, 3600.0, 3600.0, 39_600.0, 39_600.0, 200_000.0)
    celsius = (20.0, 20.0, 5.0, 5.0, 20.0, 20.0)
    room = History(seconds, celsius, (0.0,) * 6, (None,) * 6)
    opens = stage_law(Stage.RECOAT_OPENS, [SheetFigure(10, 6), SheetFigure(20, 4)])
    found, _ = FilmRates(opens, room, Edge.LIKELY, 10.0).walk(0.0, math.inf, 1.0)
    assert found == pytest.approx(39_600.0 + 3 * 3600.0, abs=1e-3)
    closes = stage_law(Stage.RECOAT_CLOSES, [SheetFigure(10, 30), SheetFigure(20, 20)])
    found, _ = FilmRates(closes, room, Edge.LIKELY, 10.0).walk(0.0, math.inf, 1.0)
    left = 1.0 - 1 / 20 - 10 / 30
    assert found == pytest.approx(39_600.0 + left * 20 * 3600.0, abs=1e-3)


def test_nothing_passes_outside_the_record() -> None:
    room = History((0.0, 3600.0), (20.0, 20.0), (0.0, 0.0), (None, None))
    rates = FilmRates(LAWS[0], room, Edge.LIKELY, None)
    assert rates.walk(3600.0, math.inf, 1.0) == (None, 1.0)
    assert rates.walk(-900.0, 0.0, 1.0) == (None, 1.0)


@pytest.mark.parametrize(
    ("evening", "night_hours"),
    [
        pytest.param(datetime(2026, 3, 28, 22, tzinfo=BERLIN), 8, id="spring"),
        pytest.param(datetime(2026, 10, 24, 22, tzinfo=BERLIN), 10, id="autumn"),
        pytest.param(datetime(2026, 6, 6, 22, tzinfo=BERLIN), 9, id="summer"),
    ],
)
def test_a_night_is_an_hour_shorter_or_longer_where_the_clock_changes(
    evening: datetime, night_hours: int
) -> None:
    # 16 °C from 22:00 to 7:00 by the wall clock, 20 °C else; 6 h at 16 °C and 3 h at 20 °C.
    points = [(7, 16.0), (7, 20.0), (22, 20.0), (22, 16.0)]
    place = Place(
        key="r",
        name="R",
        band_celsius=0.0,
        pattern=tuple(PatternPoint(at=time(hour), celsius=c) for hour, c in points),
    )
    start = evening.astimezone(UTC)
    history = place.history(BERLIN, start - timedelta(days=1), start + timedelta(days=3))
    law = stage_law(Stage.HANDLE, [SheetFigure(16, 20), SheetFigure(20, 10)])
    found, _ = FilmRates(law, history, Edge.LIKELY, None).walk(start.timestamp(), math.inf, 1.0)
    hours = night_hours + 10.0 * (1.0 - night_hours / 20.0)
    assert found == pytest.approx(start.timestamp() + 3600.0 * hours, abs=1.0)


@given(
    energy=st.floats(20_000.0, 200_000.0),
    celsius=st.floats(-10.0, 40.0),
    hourly=st.floats(-5.0, 5.0),
    width=st.floats(0.1, 6.0),
)
def test_an_integral_agrees_with_quad(
    energy: float, celsius: float, hourly: float, width: float
) -> None:
    # Arrhenius' rate in a room that warms or cools evenly, relative to its start.
    first = 273.15 + celsius

    def rate(hours: float) -> float:
        return math.exp(energy / 8.314 * (1.0 / first - 1.0 / (first + hourly * hours)))

    expected = quad(rate, 0.0, width, epsrel=1e-12)[0]
    assert integral(rate, 0.0, width) == pytest.approx(expected, rel=1e-6)


def test_an_integral_is_halved_once_more_where_the_curve_turns_in_its_fourth_slope() -> None:
    # Here the error that one halving shows is nought by chance, and the true one is not.
    def curve(x: float) -> float:
        return math.exp(-0.7 * x) + 1.2 + math.sin(x)

    expected = quad(curve, -2.625, -1.1875, epsrel=1e-12)[0]
    assert integral(curve, -2.625, -1.1875) == pytest.approx(expected, rel=1e-6)


@given(st.floats(0.01, 0.999))
def test_a_share_is_found_where_newton_alone_would_leap_too_far(part: float) -> None:
    def steep(x: float) -> float:
        return 1e-3 + x**8

    whole = quad(steep, 0.0, 2.0)[0]
    found = reached_at(steep, 0.0, 2.0, part * whole)
    assert 1e-3 * found + found**9 / 9 == pytest.approx(part * whole, rel=0.02)


def test_a_discontinuity_that_was_missed_ends_the_halving() -> None:
    expected = 1.0 / 3.0 + 5.0 * 2.0 / 3.0
    assert integral(lambda x: 1.0 if x < 1.0 / 3.0 else 5.0, 0.0, 1.0) == pytest.approx(
        expected, rel=1e-5
    )


def test_a_law_of_one_figure_keeps_its_hours_at_that_temperature() -> None:
    room = History((0.0, 90_000.0), (20.0, 20.0), (0.0, 0.0), (None, None))
    found, _ = FilmRates(LAWS[0], room, Edge.LATE, None).walk(0.0, math.inf, 1.0)
    assert found == pytest.approx(3 * 1.1 * 3600.0, abs=0.01)
    warmer = replace(room, celsius=(21.0, 21.0))
    sooner, _ = FilmRates(LAWS[0], warmer, Edge.LATE, None).walk(0.0, math.inf, 1.0)
    assert sooner is not None
    assert sooner < 3 * 1.1 * 3600.0


def test_stretches_before_the_start_and_after_the_end_are_left_out() -> None:
    # One segment from 10 °C to 30 °C, cut where it crosses the only published figure.
    law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(20, 500)])
    room = History((0.0, 72_000.0), (10.0, 30.0), (0.0, 0.0), (None, None))
    rates = FilmRates(law, room, Edge.LIKELY, None)
    share = rate(law, room, Edge.LIKELY, None)
    for start, end in ((50_000.0, 60_000.0), (1000.0, 9000.0)):
        expected = quad(share, start, end, epsrel=1e-11)[0]
        assert 1.0 - rates.walk(start, end, 1.0)[1] == pytest.approx(expected, rel=1e-6)


def test_a_band_that_shrinks_to_nothing_never_falls_below_it() -> None:
    room = History((1.77e9, 1.77e9 + 600.0), (2.0, 2.0), (2.9, 0.0), (None, None))
    found, missing = FilmRates(LAWS[0], room, Edge.EARLY, None).walk(1.77e9, math.inf, 1.0)
    assert found is None
    assert 0.9 < missing < 1.0
