"""Hours of a stage against temperature."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.laws import (
    LawError,
    LawSettings,
    SheetFigure,
    StageLaw,
    stage_law,
)
from studio_planner.science.stages import Basis, Edge, Stage
from tests.science.sheets import laws

if TYPE_CHECKING:
    from studio_planner.science.bands import PublishedTable

TWO = [SheetFigure(15, 8), SheetFigure(25, 4)]
R = 8.314462618e-3


def arrhenius(hours: float, at: float, to: float, kj: float = 45.0) -> float:
    """Return hours moved along one activation energy, written out anew."""
    return hours * math.exp(kj / R * (1 / (to + 273.15) - 1 / (at + 273.15)))


TEMPERATURES = st.floats(-20.0, 60.0)


@given(laws())
def test_published_figures_are_returned_exactly(law: StageLaw) -> None:
    for figure in law.figures:
        assert law.hours(figure.celsius) == figure.middle_hours
        assert law.basis(figure.celsius) is Basis.PUBLISHED


@given(laws(), TEMPERATURES, st.floats(0.0, 5.0))
def test_early_is_not_after_likely_and_late_not_before(
    law: StageLaw, celsius: float, band: float
) -> None:
    early, likely, late = (law.hours(celsius, edge, band) for edge in Edge)
    assert early <= likely * (1 + 1e-12)
    assert likely <= late * (1 + 1e-12)


@given(laws(), TEMPERATURES, st.floats(0.0, 30.0), st.sampled_from(list(Edge)))
def test_a_colder_room_never_shortens_a_cure(
    law: StageLaw, celsius: float, colder: float, edge: Edge
) -> None:
    assert law.hours(celsius - colder, edge) >= law.hours(celsius, edge) * (1 - 1e-9)


@given(laws(), TEMPERATURES, st.floats(0.0, 3.0), st.sampled_from(list(Edge)))
def test_with_a_room_band_a_colder_room_shortens_an_edge_by_two_percent_at_most(
    law: StageLaw, celsius: float, band: float, edge: Edge
) -> None:
    for colder in (0.2, 0.5, 1.0, 2.0, 5.0):
        cold = law.hours(celsius - colder, edge, band)
        assert cold >= law.hours(celsius, edge, band) * 0.98


@given(laws())
def test_the_printed_ends_are_inside_the_edges(law: StageLaw) -> None:
    for figure in law.figures:
        assert law.hours(figure.celsius, Edge.LATE) >= figure.long_hours
        assert law.hours(figure.celsius, Edge.EARLY) <= figure.from_hours


@given(laws(), TEMPERATURES, st.floats(0.0, 3.0), st.floats(0.0, 3.0))
def test_a_wider_room_band_never_narrows_the_edges(
    law: StageLaw, celsius: float, band: float, wider: float
) -> None:
    assert law.hours(celsius, Edge.LATE, band + wider) >= law.hours(celsius, Edge.LATE, band)
    assert law.hours(celsius, Edge.EARLY, band + wider) <= law.hours(celsius, Edge.EARLY, band)


@given(laws())
def test_the_width_at_a_figure_is_ten_percent_or_the_printed_range(law: StageLaw) -> None:
    for figure in law.figures:
        late = law.hours(figure.celsius, Edge.LATE)
        early = law.hours(figure.celsius, Edge.EARLY)
        middle = figure.middle_hours
        assert math.isclose(late, max(figure.long_hours, middle * 1.1), rel_tol=1e-9)
        assert math.isclose(early, min(figure.from_hours, middle / 1.1), rel_tol=1e-9)


@given(laws(), TEMPERATURES)
def test_between_two_kinks_the_edges_have_no_kink(law: StageLaw, celsius: float) -> None:
    """The slope's own change over 2e-3 °C is far below what a kink would make."""
    step = 1e-3
    near = [k for k in law.kinks() if abs(k - celsius) < 2 * step]
    if near:
        return
    for edge in Edge:
        a, b, c = (math.log(law.hours(celsius + d, edge)) for d in (-step, 0.0, step))
        assert abs(a - 2 * b + c) < 1e-7


def test_published_tables_are_returned_exactly(cure_tables: list[PublishedTable]) -> None:
    """Source: the publishers named row by row in resources/published/cure_times.csv."""
    assert len(cure_tables) == 20
    for table in cure_tables:
        law = stage_law(table.stage, table.figures)
        for figure in table.figures:
            assert law.hours(figure.celsius) == figure.from_hours


def test_between_figures_log_hours_are_straight_over_inverse_temperature() -> None:
    law = stage_law(Stage.RECOAT_OPENS, TWO)
    x = [1 / (c + 273.15) for c in (15, 20, 25)]
    share = (x[1] - x[0]) / (x[2] - x[0])
    assert math.isclose(law.hours(20), 8 * (4 / 8) ** share, rel_tol=1e-12)
    assert law.basis(20) is Basis.BETWEEN


def test_one_figure_follows_the_assumed_energy_and_says_so() -> None:
    law = stage_law(Stage.TACK_FREE, [SheetFigure(23, 8)])
    assert math.isclose(law.hours(13), arrhenius(8, 23, 13), rel_tol=1e-12)
    assert math.isclose(law.hours(30), arrhenius(8, 23, 30), rel_tol=1e-12)
    assert law.basis(13) is Basis.ASSUMED


@pytest.mark.parametrize(
    ("stage", "factor", "cold_kj", "warm_kj"),
    [
        (Stage.RECOAT_OPENS, 4.0, "own", 45.0),
        (Stage.RECOAT_OPENS, 1.2, 45.0, "own"),
        (Stage.WORKING_TIME, 4.0, 45.0, "own"),
        (Stage.WORKING_TIME, 1.2, "own", 45.0),
    ],
)
def test_outside_the_figures_a_law_goes_on_along_the_safe_slope(
    stage: Stage, factor: float, cold_kj: float | str, warm_kj: float | str
) -> None:
    law = stage_law(stage, [SheetFigure(15, 4 * factor), SheetFigure(25, 4)])
    own = R * math.log(factor) / (1 / 288.15 - 1 / 298.15)
    cold = own if cold_kj == "own" else float(cold_kj)
    warm = own if warm_kj == "own" else float(warm_kj)
    assert math.isclose(law.hours(5), arrhenius(4 * factor, 15, 5, cold), rel_tol=1e-9)
    assert math.isclose(law.hours(35), arrhenius(4, 25, 35, warm), rel_tol=1e-9)
    assert law.basis(5) is law.basis(35) is Basis.OUTSIDE


@pytest.mark.parametrize("stage", [s for s in Stage if s.closes])
def test_a_window_that_closes_stays_in_the_cold_at_its_coldest_figure(stage: Stage) -> None:
    one = stage_law(stage, [SheetFigure(23, 12)])
    two = stage_law(stage, [SheetFigure(15, 48), SheetFigure(25, 24)])
    assert one.hours(5) == 12.0
    assert two.hours(5) == pytest.approx(48.0, rel=1e-12)
    assert one.hours(33) < 12.0
    assert math.isclose(two.hours(5, Edge.EARLY), 48 / 1.1, rel_tol=1e-9)


@pytest.mark.parametrize("stage", [s for s in Stage if s.late_cure])
def test_the_late_cure_slows_threefold_per_ten_degrees_of_cold(stage: Stage) -> None:
    at_twenty = stage_law(stage, [SheetFigure(20, 24)])
    assert math.isclose(at_twenty.hours(10), 72.0, rel_tol=1e-12)
    assert math.isclose(at_twenty.hours(5), 24 * 3**1.5, rel_tol=1e-12)
    warmer = stage_law(stage, [SheetFigure(25, 24)])
    assert math.isclose(warmer.hours(20), arrhenius(24, 25, 20), rel_tol=1e-12)
    assert math.isclose(warmer.hours(10), 3 * arrhenius(24, 25, 20), rel_tol=1e-12)
    colder = stage_law(stage, [SheetFigure(10, 48), SheetFigure(20, 24)])
    assert math.isclose(colder.hours(0), 3 * 48, rel_tol=1e-12)
    assert math.isclose(colder.hours(15), math.exp(colder.likely.at(15)), rel_tol=1e-12)


def test_a_late_cure_steeper_than_threefold_keeps_its_own_slope() -> None:
    law = stage_law(Stage.SANDABLE, [SheetFigure(10, 100), SheetFigure(20, 10)])
    own = R * math.log(10) / (1 / 283.15 - 1 / 293.15)
    assert math.isclose(law.hours(0), arrhenius(100, 10, 0, own), rel_tol=1e-9)


def test_a_cold_late_cure_with_a_wide_band_stays_in_order() -> None:
    """A band of 70 kJ/mol would turn the early edge about in the cold; it is held flat."""
    settings = LawSettings(assumed_band_kj=70.0)
    law = stage_law(Stage.FULL_CURE, [SheetFigure(20, 168)], settings=settings)
    hours = [law.hours(c, Edge.EARLY) for c in range(20, -60, -5)]
    assert hours == sorted(hours)


def test_room_and_law_join_in_quadrature() -> None:
    law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(20, 6)])
    room = math.log(law.hours(18) / law.hours(20))
    late = math.log(law.hours(20, Edge.LATE, 2.0) / 6)
    assert math.isclose(late, math.hypot(math.log(1.1), room), rel_tol=1e-9)
    room = math.log(law.hours(20) / law.hours(22))
    early = math.log(6 / law.hours(20, Edge.EARLY, 2.0))
    assert math.isclose(early, math.hypot(math.log(1.1), room), rel_tol=1e-9)


def test_ranges_that_overlap_are_accepted_with_a_mark_and_the_safe_end_as_printed() -> None:
    figures = [SheetFigure(20, 3, 6), SheetFigure(25, 4, 5)]
    law = stage_law(Stage.RECOAT_OPENS, figures)
    assert law.rises_with_warmth
    assert math.isclose(law.hours(20, Edge.LATE), 6.0, rel_tol=1e-9)
    assert not stage_law(Stage.RECOAT_OPENS, TWO).rises_with_warmth
    with pytest.raises(LawError, match="warmth does not slow a cure"):
        stage_law(Stage.RECOAT_CLOSES, figures)


@pytest.mark.parametrize(
    ("figures", "sentence"),
    [
        ([], "no figure for recoat_opens"),
        ([SheetFigure(20, 0)], "more than zero"),
        ([SheetFigure(20, -4)], "more than zero"),
        ([SheetFigure(20, math.nan)], "more than zero"),
        ([SheetFigure(20, math.inf)], "more than zero"),
        ([SheetFigure(20, 4, math.inf)], "more than zero"),
        ([SheetFigure(20, 6, 4)], "6 to 4 h at 20 °C ends before it starts"),
        ([SheetFigure(20, 6), SheetFigure(20, 5)], "two figures at 20 °C"),
        ([SheetFigure(20, 5), SheetFigure(25, 6)], "6 h at 25 °C is longer than 5 h at 20 °C"),
        ([SheetFigure(math.nan, 5)], "no temperature"),
        ([SheetFigure(400, 5)], "no temperature"),
    ],
)
def test_a_sheet_that_is_no_law_is_refused_in_one_sentence(
    figures: list[SheetFigure], sentence: str
) -> None:
    with pytest.raises(LawError, match=sentence):
        stage_law(Stage.RECOAT_OPENS, figures)


def test_equal_hours_at_two_temperatures_are_fine() -> None:
    law = stage_law(Stage.RECOAT_CLOSES, [SheetFigure(10, 672), SheetFigure(15, 672)])
    assert math.isclose(law.hours(12), 672, rel_tol=1e-12)


@pytest.mark.parametrize(
    ("celsius", "band", "sentence"),
    [(-100.0, 0.0, "outside"), (math.nan, 0.0, "outside"), (20.0, -1.0, "negative")],
)
def test_a_temperature_or_band_that_can_not_be_is_refused(
    celsius: float, band: float, sentence: str
) -> None:
    with pytest.raises(LawError, match=sentence):
        stage_law(Stage.COVER, [SheetFigure(20, 1)]).hours(celsius, Edge.LATE, band)


def test_settings_change_the_width_at_a_published_figure() -> None:
    law = stage_law(Stage.COVER, TWO, settings=LawSettings(published_share=0.2))
    assert math.isclose(law.hours(15, Edge.LATE), 9.6, rel_tol=1e-9)


def test_kinks_of_one_edge_are_among_those_of_all() -> None:
    law = stage_law(Stage.RECOAT_OPENS, TWO)
    assert law.kinks(Edge.LIKELY) == (15, 25)
    assert {k for edge in Edge for k in law.kinks(edge)} == set(law.kinks())
