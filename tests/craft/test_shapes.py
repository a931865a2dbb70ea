"""Areas and edges of blanks against closed forms and the exact elliptic integral."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.special import ellipe

from studio_planner.craft.shapes import FreeArea, Oval, Rectangle, Round
from tests.craft.nouns import broken, refusal

LENGTHS = st.floats(1.0, 5000.0)


def test_a_300_by_200_mm_board_has_600_square_centimetres_and_a_metre_of_edge() -> None:
    board = Rectangle(length_mm=300, width_mm=200)
    assert board.area_cm2 == 600.0
    assert board.perimeter_mm == 1000.0


def test_a_round_of_100_mm_has_25_pi_square_centimetres() -> None:
    coaster = Round(diameter_mm=100)
    assert coaster.area_cm2 == pytest.approx(25.0 * math.pi)
    assert coaster.perimeter_mm == pytest.approx(100.0 * math.pi)
    assert (coaster.length_mm, coaster.width_mm) == (100, 100)


@given(LENGTHS, LENGTHS)
def test_an_oval_fills_a_quarter_pi_of_its_rectangle(length: float, width: float) -> None:
    oval = Oval(length_mm=length, width_mm=width)
    around = Rectangle(length_mm=length, width_mm=width)
    assert oval.area_cm2 == pytest.approx(around.area_cm2 * math.pi / 4.0)


@given(LENGTHS, LENGTHS)
def test_the_edge_of_an_oval_is_at_most_0_05_per_cent_short(
    length: float, width: float
) -> None:
    """Exact: 4 a E(k) with k² = 1 - b²/a²; Ramanujan's second is below it (NIST DLMF 19.9)."""
    long, short = max(length, width) / 2.0, min(length, width) / 2.0
    exact = 4.0 * long * float(ellipe(1.0 - (short / long) ** 2))
    edge = Oval(length_mm=length, width_mm=width).perimeter_mm
    assert exact * (1.0 - 5e-4) <= edge <= exact * (1.0 + 1e-12)


@given(LENGTHS)
def test_an_oval_with_equal_axes_is_round(diameter: float) -> None:
    oval, circle = Oval(length_mm=diameter, width_mm=diameter), Round(diameter_mm=diameter)
    assert oval.perimeter_mm == pytest.approx(circle.perimeter_mm)
    assert oval.area_cm2 == pytest.approx(circle.area_cm2)


@given(LENGTHS, LENGTHS)
def test_no_shape_encloses_more_than_a_circle_with_its_edge(
    length: float, width: float
) -> None:
    """The isoperimetric inequality: 4 pi A <= P²."""
    for shape in (
        Rectangle(length_mm=length, width_mm=width),
        Oval(length_mm=length, width_mm=width),
        Round(diameter_mm=length),
    ):
        enclosed = 4.0 * math.pi * shape.area_cm2 * 100.0
        # An oval's edge may be 0.05 % short.
        assert enclosed <= shape.perimeter_mm**2 * 1.001


@given(st.floats(2.0, 5000.0), st.floats(2.0, 5000.0))
def test_what_a_shape_measures_is_accepted_as_a_free_area(length: float, width: float) -> None:
    for shape in (
        Rectangle(length_mm=length, width_mm=width),
        Oval(length_mm=length, width_mm=width),
    ):
        measured = FreeArea(
            area_cm2=shape.area_cm2,
            perimeter_mm=shape.perimeter_mm,
            length_mm=length,
            width_mm=width,
        )
        assert measured.area_cm2 == shape.area_cm2


@pytest.mark.parametrize("side", [0.0, -1.0, 0.99, 5001.0, math.nan, math.inf])
def test_each_impossible_side_is_named(side: float) -> None:
    assert broken(Rectangle, length_mm=side, width_mm=side).keys() == {"length_mm", "width_mm"}
    assert broken(Oval, length_mm=side, width_mm=10).keys() == {"length_mm"}
    assert broken(Round, diameter_mm=side).keys() == {"diameter_mm"}


def test_an_area_larger_than_the_rectangle_around_it_is_refused() -> None:
    sizes = {"length_mm": 100, "width_mm": 100}
    told = broken(FreeArea, area_cm2=101.0, perimeter_mm=2000, **sizes)
    assert told.keys() == {"area_cm2"}


def test_an_edge_too_short_for_its_area_is_refused() -> None:
    sizes = {"length_mm": 100, "width_mm": 100}
    told = broken(FreeArea, area_cm2=90.0, perimeter_mm=300, **sizes)
    assert told == {"perimeter_mm": "300 mm of edge cannot enclose 90 cm²."}


@given(
    st.floats(allow_nan=True) | st.floats(1, 9000),
    st.floats(allow_nan=True) | st.floats(1, 9000),
    st.floats(1, 9000),
    st.floats(1, 9000),
)
def test_a_free_area_is_refused_in_sentences_or_can_exist(
    area: float, edge: float, length: float, width: float
) -> None:
    sizes = {"area_cm2": area, "perimeter_mm": edge, "length_mm": length, "width_mm": width}
    if not refusal(FreeArea, **sizes):
        assert 4 * math.pi * area * 100 <= edge**2 * 1.01
        assert area * 100 <= length * width * 1.01
        assert max(length, width) <= 5000
