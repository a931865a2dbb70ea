"""The clock with one Arrhenius slope is the equivalent age of ASTM C1074.

Source: ASTM C1074, q = exp(-Q (1/Ta - 1/Ts)), Ts 23 °C or 20 °C; Q = 5000 K from memory.
"""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from scipy.integrate import quad

from studio_planner.science.clocks import StageClock
from studio_planner.science.law_shape import GAS_CONSTANT
from studio_planner.science.laws import LawSettings, SheetFigure, StageLaw, stage_law
from studio_planner.science.stages import Stage
from tests.science.rooms import stepped_room, wavy_room

HOUR = 3600.0
Q = 5000.0


def age_factor(celsius: float, reference: float) -> float:
    """Return the equivalent hours at the reference for an hour at a temperature."""
    return math.exp(-Q * (1 / (celsius + 273.15) - 1 / (reference + 273.15)))


def one_slope(reference: float) -> StageLaw:
    """Return a law of 10 h at the reference with the slope Q throughout."""
    settings = LawSettings(activation_energy_kj=Q * GAS_CONSTANT)
    return stage_law(Stage.RECOAT_OPENS, [SheetFigure(reference, 10)], settings=settings)


@pytest.mark.parametrize("reference", [23.0, 20.0])
@pytest.mark.parametrize("celsius", [5.0, 13.0, 20.0, 23.0, 35.0])
def test_one_slope_has_the_age_factor_of_the_standard(reference: float, celsius: float) -> None:
    factor = 10 / one_slope(reference).hours(celsius)
    assert math.isclose(factor, age_factor(celsius, reference), rel_tol=1e-12)


@pytest.mark.parametrize("reference", [23.0, 20.0])
def test_a_clock_reaches_its_stage_when_the_equivalent_age_is_its_hours(
    reference: float,
) -> None:
    steps = [(0.0, 18.0), (2 * HOUR, 12.0), (9 * HOUR, 21.0), (12 * HOUR, 26.0)]
    room = stepped_room(steps, 30 * HOUR)
    when = StageClock(one_slope(reference), room).reached(0.0)
    assert when is not None
    ends = [*(start for start, _ in steps[1:]), when]
    age = math.fsum(
        (min(end, when) - start) / HOUR * age_factor(celsius, reference)
        for (start, celsius), end in zip(steps, ends, strict=True)
        if start < when
    )
    assert age == pytest.approx(10.0, abs=1e-6)


def test_a_clock_over_a_swinging_room_is_the_integral_of_the_age_factor() -> None:
    room = wavy_room(4, HOUR, start=0.0)
    when = StageClock(one_slope(23.0), room).reached(0.0)
    assert when is not None

    def factor(second: float) -> float:
        celsius = room.celsius_at(second)
        assert celsius is not None
        return age_factor(celsius, 23.0)

    ends = [*(s for s in room.seconds if s < when), when]
    age = math.fsum(quad(factor, a, b)[0] for a, b in pairwise(ends)) / HOUR
    assert abs(age - 10.0) * HOUR < 1.0
