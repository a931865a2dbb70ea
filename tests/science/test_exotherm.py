"""Heat of full cups and deep pours, against published figures and a general solver."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad, solve_ivp

from studio_planner.science import exotherm as heat
from studio_planner.science.exotherm import (
    Exotherm,
    HeatVerdict,
    adiabatic_rise,
    exotherm,
    gel_hours,
    rate_of,
)
from studio_planner.science.heat_bodies import Body, HeatError, cup_body, pour_body
from studio_planner.science.heat_figures import (
    ACTIVATION_ENERGY_KJ,
    GEL_CONVERSION,
    HEAT_CAPACITY_J_PER_GK,
    START_SHARE,
)

GRAMS = 100.0
RATE = rate_of(0.5, cup_body(GRAMS), 23.0)
_THIN_FILM_MM = 1.0

Row = dict[str, str]


def reckoned(row: Row, life: Row) -> tuple[float, float]:
    """What is reckoned for a published row, from the cup life of the same mix; and the row's.

    Minutes are given as a ratio to what is printed, degrees as what they are apart.
    """
    celsius = float(row["temperature_c"])
    rate = rate_of(
        float(life["value"]) / 60.0,
        cup_body(float(life["mass_g"])),
        float(life["temperature_c"]),
    )
    body = cup_body(float(row["mass_g"])) if row["mass_g"] else pour_body(_THIN_FILM_MM)
    found = exotherm(rate, body, celsius)
    minutes = {
        "time to peak exotherm": found.peak_minutes,
        "peak exotherm": found.peak_celsius,
    }.get(row["figure"], gel_hours(rate, body, celsius) * 60.0)
    return minutes, float(row["value"])


def compared(rows: list[Row]) -> dict[tuple[str, str, str], bool]:
    """Whether every row that follows from another one of its mix is met."""
    lives = {
        "WEST SYSTEM 105/205": "100",
        "3M DP460 Off-White": "20",
        "Ancamine 1618 (A)": "150",
        "Ancamine 1618 (B)": "150",
    }
    met = {}
    for material, grams in lives.items():
        of_mix = [row for row in rows if row["material"] == material]
        life = next(row for row in of_mix if row["mass_g"] == grams)
        for row in of_mix:
            # "Solid" is long after the gel, and cannot follow from a cup life.
            if row is life or "solid" in row["figure"]:
                continue
            ours, printed = reckoned(row, life)
            degrees = row["unit"] == "degC"
            near = abs(ours - printed) <= (30.0 if degrees else 0.4 * printed)
            met[material, row["figure"], row["mass_g"]] = near
    return met


def test_published_times_and_peaks_are_met_but_for_these_two(cup_rows: list[Row]) -> None:
    """Peaks within 30 °C, times within 40 %. Source: resources/published/cup_life.csv.

    Not met, with heat, heat capacity, loss and kinetics fixed from their own sources:

    - The peak of Ancamine 1618 (A): reckoned 204 °C in a cup of 100 g, printed 91 °C. Its time,
      54 minutes for 60, is met. At its peak a cup of 100 g in still air loses 83 °C an hour, so
      the printed mix makes no more there: it slows down far sooner than the kinetics of the
      sources do, or stood in a vessel that loses far more. The sheet names neither. Nothing was
      adjusted to meet it.
    - The working time of WEST SYSTEM 105/205 as a film: reckoned 36 minutes to its gel, printed
      60 to 70. Its pot life is read as the gel, which it seems to come before.
    """
    met = compared(cup_rows)
    outside = {row for row, near in met.items() if not near}
    assert outside == {
        ("Ancamine 1618 (A)", "peak exotherm", "100"),
        ("WEST SYSTEM 105/205", "working time (thin film)", ""),
    }
    assert len(met) == 7


def test_what_is_not_met_errs_on_the_hot_and_early_side(cup_rows: list[Row]) -> None:
    """Source: as above. A warning comes too soon, never too late."""
    of_mix = {row["figure"]: row for row in cup_rows if row["material"] == "Ancamine 1618 (A)"}
    ours, printed = reckoned(of_mix["peak exotherm"], of_mix["gel time"])
    assert ours == pytest.approx(204.0, abs=3.0)
    assert ours > printed
    film, life = (
        next(row for row in cup_rows if row["record"] == "EPWX1" and row["figure"] == figure)
        for figure in ("working time (thin film)", "pot life")
    )
    minutes, as_printed = reckoned(film, life)
    assert minutes < as_printed


def test_a_mix_that_goes_off_in_its_cup_passes_a_hundred_degrees() -> None:
    """Common practice: 140 g of a mix with an hour went off in a plastic cup."""
    found = exotherm(rate_of(1.0, cup_body(GRAMS), 23.0), cup_body(140.0), 23.0)
    assert found.peak_celsius > 100.0
    assert found.verdict is HeatVerdict.TOO_HOT


def test_a_flood_of_two_millimetres_stays_cool_and_of_twelve_does_not() -> None:
    """Common practice: 3 mm for flood mixes; deeper needs a mix made for it."""
    assert exotherm(RATE, pour_body(2.0), 23.0).verdict is HeatVerdict.COOL
    assert exotherm(RATE, pour_body(12.0), 23.0).verdict is HeatVerdict.TOO_HOT


def test_a_slow_mix_can_be_poured_deeper() -> None:
    """Common practice: casting mixes live for hours in their cup."""
    slow = rate_of(6.0, cup_body(GRAMS), 23.0)
    assert exotherm(slow, pour_body(12.0), 23.0).verdict is HeatVerdict.COOL


def test_between_cool_and_too_hot_lies_warm_and_its_minute_is_told() -> None:
    found = exotherm(RATE, pour_body(4.0), 23.0)
    assert found.verdict is HeatVerdict.WARM
    assert found.warm_minutes is not None
    assert 0.0 < found.warm_minutes < found.peak_minutes


def test_the_gel_in_the_sheets_cup_is_the_sheets_cup_life() -> None:
    assert gel_hours(RATE, cup_body(GRAMS), 23.0) == pytest.approx(0.5, rel=1e-3)


def test_without_heating_itself_the_hours_to_the_gel_are_an_integral() -> None:
    """Against scipy's quadrature of da / ((B + a)(1 - a)²) at 25 °C, with no heat kept."""
    cold = Body(loss_w_per_gk=50.0, hot_share=0.0)
    wanted, _ = quad(lambda a: 1.0 / ((START_SHARE + a) * (1.0 - a) ** 2), 0.0, GEL_CONVERSION)
    assert gel_hours(2.0, cold, 25.0) == pytest.approx(wanted / 2.0, rel=1e-3)


def test_the_course_is_that_of_a_general_solver() -> None:
    """Against scipy's stiff solver, with the kinetics written once more."""
    body, room = cup_body(GRAMS), 23.0
    cooling = body.loss_w_per_gk * 3600.0 / HEAT_CAPACITY_J_PER_GK

    def slopes(_: float, state: list[float]) -> list[float]:
        reacted, celsius = state
        inverse = 1.0 / 298.15 - 1.0 / (celsius + 273.15)
        k = RATE * math.exp(ACTIVATION_ENERGY_KJ / 8.314462618e-3 * inverse)
        speed = k * (START_SHARE + reacted) * (1.0 - reacted) ** 2
        return [speed, adiabatic_rise() * speed - cooling * (celsius - room)]

    solved = solve_ivp(
        slopes, (0.0, 1.0), [0.0, room], method="LSODA", rtol=1e-8, atol=1e-8, max_step=1e-3
    )
    hot = solved.y[1] + body.hot_share * (solved.y[1] - room)
    found = exotherm(RATE, body, room)
    assert found.peak_celsius == pytest.approx(hot.max(), abs=1.0)
    assert found.peak_minutes == pytest.approx(60.0 * solved.t[hot.argmax()], rel=0.01)


def test_what_loses_no_heat_warms_by_its_heat_over_its_capacity() -> None:
    assert adiabatic_rise() == 175.0
    found = exotherm(RATE, Body(loss_w_per_gk=1e-9, hot_share=0.0), 23.0)
    assert found.peak_celsius == pytest.approx(23.0 + 175.0, abs=3.0)


def test_a_warm_mix_in_a_cool_room_peaks_sooner() -> None:
    room = exotherm(RATE, cup_body(GRAMS), 20.0)
    warmed = exotherm(RATE, cup_body(GRAMS), 20.0, 30.0)
    assert warmed.peak_minutes < room.peak_minutes


def test_a_film_that_only_cools_was_hottest_when_it_was_poured() -> None:
    found = exotherm(RATE, pour_body(1.0), 20.0, 35.0)
    assert found.peak_celsius == 35.0
    assert found.peak_minutes == 0.0


@given(st.floats(0.2, 8.0), st.floats(1.0, 50.0), st.floats(10.0, 35.0), st.floats(-10.0, 20.0))
def test_once_a_cure_cools_and_slows_nothing_hotter_comes(
    hours: float, depth: float, room: float, warmer: float
) -> None:
    rate, body = rate_of(hours, cup_body(GRAMS), 23.0), pour_body(depth)
    course = list(heat._course(rate, body, room, room + warmer))
    hottest = max(mean + body.hot_share * (mean - room) for _, _, mean in course)
    found = exotherm(rate, body, room, room + warmer)
    assert found.peak_celsius == max(hottest, room + warmer)


def test_what_never_gels_has_no_hour(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(heat, "_LONGEST", 0.1)
    assert gel_hours(RATE, pour_body(1.0), 23.0) == math.inf


def test_a_cup_of_a_hundred_grams_has_the_surface_of_its_cylinder() -> None:
    """By hand: 90.9 cm³, 4.87 cm wide and high, 112 cm²; 1/10 and 0.0304 m²K/W."""
    body = cup_body(GRAMS)
    assert body.loss_w_per_gk * GRAMS == pytest.approx(112e-4 / (0.1 + 0.0304), rel=2e-3)
    assert body.hot_share == pytest.approx(0.0304 / 0.1304, rel=2e-3)


peaks = st.floats(0.2, 4.0).map(lambda hours: rate_of(hours, cup_body(GRAMS), 23.0))


@given(peaks, st.floats(1.0, 30.0), st.floats(1.05, 1.5))
def test_a_deeper_pour_never_stays_cooler(rate: float, depth: float, more: float) -> None:
    def peak(millimetres: float) -> Exotherm:
        return exotherm(rate, pour_body(millimetres), 23.0)

    assert peak(depth * more).peak_celsius >= peak(depth).peak_celsius - 0.5


def test_what_can_be_no_cup_no_pour_and_no_cup_life_is_refused() -> None:
    for make in (
        lambda: cup_body(0.0),
        lambda: pour_body(-1.0),
        lambda: rate_of(0.0, cup_body(GRAMS), 23.0),
    ):
        with pytest.raises(HeatError):
            make()
