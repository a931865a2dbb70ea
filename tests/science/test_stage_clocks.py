"""When a stage is reached: clocks against adaptive quadrature and against plain arithmetic."""

from __future__ import annotations

import math
from bisect import bisect_right
from functools import cache
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad

from studio_planner.science.clocks import StageClock, degree_over, reached_through
from studio_planner.science.history import History, constant_history
from studio_planner.science.laws import SheetFigure, StageLaw, stage_law
from studio_planner.science.stages import Edge, Stage
from tests.science.rooms import stepped_room, wavy_room
from tests.science.sheets import laws

HOUR = 3600.0
START = 1.75e9
SHEETS = {
    Stage.RECOAT_OPENS: [SheetFigure(15, 8), SheetFigure(20, 5, 6), SheetFigure(25, 4)],
    Stage.RECOAT_CLOSES: [SheetFigure(15, 30), SheetFigure(25, 14)],
    Stage.HANDLE: [SheetFigure(23, 24)],
    Stage.FULL_CURE: [SheetFigure(20, 168)],
}


def law_of(stage: Stage) -> StageLaw:
    """Return the law of one of the sheets above."""
    return stage_law(stage, SHEETS[stage])


def rate_at(clock: StageClock, instant: float) -> float:
    """Return the share per second at an instant, straight from law and history."""
    history, edge = clock.history, clock.edge
    celsius, band = history.celsius_at(instant), history.band_at(instant)
    assert celsius is not None
    assert band is not None
    judged = celsius + {Edge.EARLY: band, Edge.LIKELY: 0.0, Edge.LATE: -band}[edge]
    if clock.minimum_celsius is not None and clock.law.stage.not_before:
        if judged < clock.minimum_celsius:
            return 0.0
    elif clock.minimum_celsius is not None:
        celsius = max(celsius, clock.minimum_celsius)
    return 1.0 / (HOUR * clock.law.hours(celsius, edge, band))


def break_points(clock: StageClock, start: float, end: float) -> list[float]:
    """Return every instant at which the rate may have a kink or a jump."""
    history = clock.history
    levels = list(clock.law.kinks())
    if clock.minimum_celsius is not None:
        levels.append(clock.minimum_celsius)
    points = {s for s in history.seconds if start < s < end}
    low = max(bisect_right(history.seconds, start) - 1, 0)
    high = min(bisect_right(history.seconds, end), len(history.seconds) - 1)
    for i in range(low, high):
        t0, t1 = history.seconds[i], history.seconds[i + 1]
        for sign in (-1.0, 0.0, 1.0):
            c0 = history.celsius[i] + sign * history.band[i]
            c1 = history.celsius[i + 1] + sign * history.band[i + 1]
            for level in levels:
                if min(c0, c1) < level < max(c0, c1):
                    points.add(t0 + (level - c0) / (c1 - c0) * (t1 - t0))
    return sorted(p for p in points if start < p < end)


def quadrature(clock: StageClock, start: float, end: float) -> float:
    """Return the share from start to end by scipy's adaptive rule between break points."""
    ends = [start, *break_points(clock, start, end), end]
    return math.fsum(
        quad(lambda t: rate_at(clock, t), a, b, epsrel=1e-10, epsabs=0.0)[0]
        for a, b in pairwise(ends)
        if b - a > 1e-6
    )


@cache
def eight_weeks(step_seconds: float) -> History:
    """Return eight weeks of a swinging room."""
    return wavy_room(56, step_seconds, start=START)


@pytest.mark.parametrize("edge", list(Edge))
@pytest.mark.parametrize("stage", list(SHEETS))
@pytest.mark.parametrize("minimum", [None, 16.0])
def test_hourly_clocks_agree_with_quadrature_to_a_second(
    stage: Stage, edge: Edge, minimum: float | None
) -> None:
    """Source: scipy.integrate.quad (QUADPACK), given samples, kinks and the minimum."""
    clock = StageClock(law_of(stage), eight_weeks(HOUR), edge, minimum)
    start = START + 13.37 * HOUR
    when = clock.reached(start)
    assert when is not None
    share = quadrature(clock, start, when)
    assert abs(share - 1.0) / rate_at(clock, when - 1.0) < 1.0
    back = clock.start_for(when)
    assert back is not None
    assert abs(quadrature(clock, back, when) - 1.0) / rate_at(clock, back + 1.0) < 1.0


@pytest.mark.parametrize("edge", list(Edge))
def test_eight_weeks_add_up_to_a_second(edge: Edge) -> None:
    clock = StageClock(law_of(Stage.RECOAT_OPENS), eight_weeks(HOUR), edge, 16.0)
    start, end = clock.history.extent
    error = clock.degree(start, end) - quadrature(clock, start, end)
    mean_rate = clock.degree(start, end) / (end - start)
    assert abs(error) / mean_rate < 1.0


@pytest.mark.parametrize("stage", [Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES])
def test_minute_clocks_agree_with_quadrature_to_a_second(stage: Stage) -> None:
    clock = StageClock(law_of(stage), eight_weeks(60.0), Edge.LATE, 17.0)
    start = START + 40 * 86400 + 1234.5
    when = clock.reached(start)
    assert when is not None
    assert abs(quadrature(clock, start, when) - 1.0) / rate_at(clock, when - 1.0) < 1.0


def test_steep_steps_and_slow_changes_agree_with_quadrature() -> None:
    """A heater that rises 12 °C in half an hour, and a day with three samples."""
    seconds = (0.0, 8 * HOUR, 8.5 * HOUR, 20 * HOUR, 20 * HOUR, 60 * HOUR)
    celsius = (21.0, 12.0, 24.0, 24.0, 14.0, 26.0)
    history = History(seconds, celsius, (2.0, 0.5, 0.5, 3.0, 1.0, 1.0), (None,) * 6)
    for stage in SHEETS:
        for edge in Edge:
            clock = StageClock(law_of(stage), history, edge, 15.0)
            for end in (5 * HOUR, 8.2 * HOUR, 33 * HOUR, 60 * HOUR):
                error = clock.degree(1.0, end) - quadrature(clock, 1.0, end)
                assert abs(error) / max(clock.degree(1.0, end) / end, 1e-9) < 1.0


@st.composite
def rough_rooms(draw: st.DrawFn) -> History:
    """Draw a room of few samples with hard changes of temperature and band."""
    pauses = st.sampled_from([60.0, 600.0, HOUR, 6 * HOUR, 24 * HOUR])
    changes = st.sampled_from([0.0, 0.0, 0.5, -1.0, 3.0, -4.0, 10.0, -10.0])
    rows = draw(
        st.lists(
            st.tuples(pauses, changes, st.sampled_from([0.0, 0.5, 1.0, 3.0])),
            min_size=2,
            max_size=10,
        )
    )
    seconds, celsius = [0.0], [draw(st.floats(5.0, 35.0))]
    for pause, change, _ in rows[1:]:
        seconds.append(seconds[-1] + pause)
        celsius.append(min(max(celsius[-1] + change, -5.0), 45.0))
    bands = tuple(row[2] for row in rows)
    return History(tuple(seconds), tuple(celsius), bands, (None,) * len(rows))


@settings(max_examples=50)
@given(laws(), rough_rooms(), st.sampled_from(list(Edge)), st.sampled_from([None, 10.0, 16.0]))
def test_any_law_in_any_room_agrees_with_quadrature_to_a_second(
    law: StageLaw, room: History, edge: Edge, minimum: float | None
) -> None:
    clock = StageClock(law, room, edge, minimum)
    first, last = room.extent
    share = clock.degree(first, last)
    error = abs(share - quadrature(clock, first, last))
    assert error * (last - first) <= 1.0 * share + 1e-9


@settings(max_examples=60)
@given(
    st.lists(
        st.tuples(st.floats(600.0, 86400.0), st.floats(5.0, 35.0), st.floats(0.0, 3.0)),
        min_size=2,
        max_size=12,
    ),
    st.sampled_from(list(SHEETS)),
    st.sampled_from(list(Edge)),
    st.sampled_from([None, 10.0, 18.0]),
    st.floats(0.0, 1.0),
)
def test_the_start_for_a_reached_instant_is_no_earlier_than_the_start(
    rows: list[tuple[float, float, float]],
    stage: Stage,
    edge: Edge,
    minimum: float | None,
    share: float,
) -> None:
    seconds = [0.0]
    for pause, _, _ in rows[1:]:
        seconds.append(seconds[-1] + pause)
    history = History(
        tuple(seconds),
        tuple(r[1] for r in rows),
        tuple(r[2] for r in rows),
        (None,) * len(rows),
    )
    clock = StageClock(law_of(stage), history, edge, minimum)
    start = share * seconds[-1]
    when = clock.reached(start)
    if when is None:
        assert clock.degree(start, seconds[-1]) < 1.0 + 1e-9
        return
    assert clock.degree(start, when) == pytest.approx(1.0, abs=1e-9)
    latest = clock.start_for(when)
    assert latest is not None
    assert latest >= start - 0.01
    assert clock.degree(start, latest) == pytest.approx(0.0, abs=1e-8)


@given(st.floats(16.0, 30.0), st.floats(0.0, 10.0), st.sampled_from(list(Edge)))
def test_a_colder_room_is_never_reached_sooner(
    celsius: float, colder: float, edge: Edge
) -> None:
    law = law_of(Stage.HANDLE)
    warm = StageClock(law, constant_history(celsius), edge).reached(0.0)
    cold = StageClock(law, constant_history(celsius - colder), edge).reached(0.0)
    assert warm is not None
    assert cold is not None
    assert cold >= warm - 1e-4


def test_a_steady_room_needs_the_hours_of_the_sheet() -> None:
    law = law_of(Stage.RECOAT_OPENS)
    clock = StageClock(law, constant_history(25.0))
    assert clock.reached(START) == START + 4 * HOUR
    assert clock.start_for(START) == START - 4 * HOUR
    assert clock.degrees(0.0, [HOUR, 2 * HOUR]) == [0.25, 0.5]
    assert clock.degree(2 * HOUR, 0.0) == -0.5


def test_the_edges_of_a_clock_are_in_order_and_use_the_rooms_band() -> None:
    law = law_of(Stage.RECOAT_OPENS)
    room = constant_history(20.0, band=2.0)
    early, likely, late = (StageClock(law, room, edge).reached(0.0) for edge in Edge)
    assert early is not None
    assert likely is not None
    assert late is not None
    assert early < likely < late
    assert late == pytest.approx(HOUR * law.hours(20.0, Edge.LATE, 2.0))


def test_cold_hours_do_not_count_for_not_before() -> None:
    """Eight hours at 25 °C need 4 h in the window: 2 h, a cold night, 2 h more."""
    day = stepped_room([(0.0, 25.0), (2 * HOUR, 10.0), (10 * HOUR, 25.0)], 20 * HOUR)
    clock = StageClock(law_of(Stage.RECOAT_OPENS), day, Edge.LIKELY, 15.0)
    assert clock.reached(0.0) == pytest.approx(12 * HOUR, abs=1e-3)
    assert clock.degree(2 * HOUR, 10 * HOUR) == 0.0
    assert clock.reached(5 * HOUR) == pytest.approx(14 * HOUR, abs=1e-3)


def test_where_several_starts_serve_the_latest_is_given() -> None:
    """Any start in the cold night is reached at 14:00; the latest is its end, 10:00."""
    day = stepped_room([(0.0, 25.0), (2 * HOUR, 10.0), (10 * HOUR, 25.0)], 20 * HOUR)
    clock = StageClock(law_of(Stage.RECOAT_OPENS), day, Edge.LIKELY, 15.0)
    assert clock.start_for(14 * HOUR) == pytest.approx(10 * HOUR, abs=1e-3)
    assert clock.start_for(13 * HOUR) == pytest.approx(1 * HOUR, abs=1e-3)


def test_the_minimum_itself_counts() -> None:
    clock = StageClock(law_of(Stage.RECOAT_OPENS), constant_history(15.0), Edge.LIKELY, 15.0)
    assert clock.reached(0.0) == 8 * HOUR


def test_late_judges_the_minimum_by_the_coldest_likely_room_and_early_by_the_warmest() -> None:
    law, room = law_of(Stage.RECOAT_OPENS), constant_history(15.5, band=1.0)
    assert StageClock(law, room, Edge.LATE, 15.0).reached(0.0) is None
    assert StageClock(law, room, Edge.LIKELY, 15.0).reached(0.0) is not None
    colder = constant_history(14.5, band=1.0)
    assert StageClock(law, colder, Edge.LIKELY, 15.0).reached(0.0) is None
    assert StageClock(law, colder, Edge.EARLY, 15.0).reached(0.0) is not None


def test_cold_hours_count_at_the_minimum_for_not_after() -> None:
    law = law_of(Stage.RECOAT_CLOSES)
    cold = StageClock(law, constant_history(10.0), Edge.LIKELY, 20.0)
    assert cold.reached(0.0) == pytest.approx(HOUR * law.hours(20.0))


def test_a_stage_not_reached_within_the_record_is_never() -> None:
    clock = StageClock(law_of(Stage.FULL_CURE), eight_weeks(HOUR))
    _, end = clock.history.extent
    assert clock.reached(end - HOUR) is None
    assert clock.start_for(START + HOUR) is None


def test_outside_the_record_a_clock_has_no_answer() -> None:
    clock = StageClock(law_of(Stage.RECOAT_OPENS), eight_weeks(HOUR))
    first, last = clock.history.extent
    assert clock.reached(first - 1.0) is None
    assert clock.reached(last + 1.0) is None
    assert clock.start_for(last + 1.0) is None
    assert clock.degree(first - 10 * HOUR, first) == 0.0


def test_a_record_of_one_sample_reaches_nothing() -> None:
    clock = StageClock(law_of(Stage.RECOAT_OPENS), History((0.0,), (20.0,), (0.0,), (None,)))
    assert clock.reached(0.0) is None
    assert clock.start_for(0.0) is None
    assert clock.degree(0.0, 10.0) == 0.0


def test_no_share_is_reached_at_once() -> None:
    clock = StageClock(law_of(Stage.RECOAT_OPENS), constant_history(20.0))
    assert clock.reaches_share(5.0, 0.0) == 5.0


def test_a_piece_that_moves_takes_its_share_with_it() -> None:
    law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(15, 8), SheetFigure(25, 4)])
    shelf, box = (StageClock(law, constant_history(c)) for c in (15.0, 25.0))
    assert reached_through([(shelf, 0.0), (box, 4 * HOUR)]) == pytest.approx(6 * HOUR)
    assert reached_through([(shelf, 0.0), (box, 9 * HOUR)]) == pytest.approx(8 * HOUR)
    assert reached_through([(box, HOUR)]) == pytest.approx(5 * HOUR)
    legs = [(shelf, 0.0), (box, 2 * HOUR), (shelf, 4 * HOUR)]
    assert reached_through(legs) == pytest.approx(6 * HOUR)
    stays = [(shelf, 0.0, 2 * HOUR), (box, 2 * HOUR, 4 * HOUR)]
    assert degree_over(stays) == pytest.approx(0.75)


def test_a_piece_that_leaves_the_record_is_never_reached() -> None:
    law = law_of(Stage.HANDLE)
    short = StageClock(law, stepped_room([(0.0, 20.0)], 2 * HOUR))
    room = StageClock(law, constant_history(20.0))
    assert reached_through([(short, 0.0), (room, 3 * HOUR)]) is None
    assert reached_through([(short, -HOUR), (room, HOUR)]) is None


def test_places_out_of_order_or_missing_are_refused() -> None:
    clock = StageClock(law_of(Stage.HANDLE), constant_history(20.0))
    with pytest.raises(ValueError, match="order of time"):
        reached_through([(clock, HOUR), (clock, 0.0)])
    with pytest.raises(ValueError, match="at least one place"):
        reached_through([])


def test_a_kink_a_hair_after_a_sample_makes_no_empty_piece() -> None:
    """The rate's pieces are skipped where a crossing rounds onto the sample itself."""
    hair = math.nextafter(20.0, 0.0)
    history = History((1.75e9, 1.75e9 + HOUR), (hair, 21.0), (0.0, 0.0), (None, None))
    clock = StageClock(law_of(Stage.RECOAT_OPENS), history)
    assert clock.degree(*history.extent) == pytest.approx(quadrature(clock, *history.extent))
