"""How far pigments and flakes sink: Stokes, shapes, and a mix that thickens."""

from __future__ import annotations

import csv
import math

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad, solve_ivp

from studio_planner.craft.resources import resource_path
from studio_planner.science.clocks import StageClock
from studio_planner.science.film_limits import Colourant
from studio_planner.science.grains import (
    GRAINS,
    LARGEST_REYNOLDS,
    Grain,
    GrainError,
    Liquid,
    fall_speed,
    reynolds,
)
from studio_planner.science.history import History, constant_history
from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.sinking import (
    DEFAULT_VISCOSITY_MPAS,
    Thickening,
    stays_from_minute,
    steady_thickening,
    sunk_mm,
    thickening,
    viscosity_at,
)
from studio_planner.science.stages import Stage

FRESH = Liquid(1.0, 1.10)
BENCH = steady_thickening(40 / 60)
WATER = Liquid(1e-3, 1.0)
HOUR = 3600.0


def metres_per_second(grain: Grain, liquid: Liquid) -> float:
    units: pint.UnitRegistry[float] = pint.UnitRegistry()
    return float((fall_speed(grain, liquid) * units.mm / units.hour).to("m/s").magnitude)


def test_a_tiny_grain_falls_as_a_general_fluids_library_has_it() -> None:
    """Source: the open library fluids, its own test of v_terminal (70 nm, 2600, 1000, 1e-3)."""
    assert metres_per_second(Grain(0.07, 2.6), WATER) == pytest.approx(4.271340888888889e-09)


def test_a_published_terminal_velocity_is_met() -> None:
    """Source: Rushton, Ward, Holdich, Solid-Liquid Filtration and Separation Technology.

    50 µm, 2800 kg/m³ in water: 0.002453 m/s, as quoted in the open library fluids.
    """
    assert metres_per_second(Grain(50.0, 2.8), WATER) == pytest.approx(0.002453, rel=1e-3)


def test_beyond_small_reynolds_numbers_stokes_sinks_too_far_rather_than_too_little() -> None:
    """Source: as above: 70 µm, 2600 kg/m³ in water: 0.00406 m/s by Oseen."""
    sand = Grain(70.0, 2.6)
    assert reynolds(sand, WATER) > LARGEST_REYNOLDS
    assert 1.0 < metres_per_second(sand, WATER) / 0.00406 < 1.06


def test_the_trades_own_settling_figures_are_met() -> None:
    """Common practice, worked out for spheres at 1 and 5 Pa·s [mm/h]."""
    mica = Grain(20.0, 2.8)
    assert fall_speed(mica, FRESH) == pytest.approx(1.3, abs=0.05)
    assert fall_speed(mica, Liquid(5.0, 1.10)) == pytest.approx(0.27, abs=0.01)
    assert fall_speed(Grain(10.0, 8.7), FRESH) == pytest.approx(1.5, abs=0.05)
    assert fall_speed(Grain(0.5, 4.1), FRESH) == pytest.approx(0.0015, abs=1e-4)


@pytest.mark.parametrize("aspect", [1.0, 1.001, 2.0, 10.0, 20.0, 100.0])
def test_a_flake_is_held_by_the_drag_of_a_spheroid_at_every_angle(aspect: float) -> None:
    """Against the integral over the confocal spheroids (Perrin 1936), by quadrature."""
    width, thickness = 1.0, 1.0 / aspect

    def confocal(x: float) -> float:
        # s = x / (1 - x) brings infinity to 1.
        s = x / (1.0 - x)
        root = (width**2 + s) * math.sqrt(thickness**2 + s)
        return 1.0 / root / (1.0 - x) ** 2

    integral, _ = quad(confocal, 0.0, 1.0, limit=200)
    radius_of_drag = 2.0 / integral
    expected = (width**2 * thickness) / radius_of_drag
    assert Grain(10.0, 3.0, aspect=aspect).shape_share == pytest.approx(expected, rel=1e-6)


def test_a_spheroid_ten_times_as_wide_as_thick_has_the_tabled_friction() -> None:
    """Perrin's friction ratio of an oblate spheroid of 10 is 1.458; from memory."""
    by_volume = 10.0 ** (-2 / 3)
    assert by_volume / Grain(1.0, 3.0, aspect=10.0).shape_share == pytest.approx(
        1.458, abs=1e-3
    )


def test_plates_sink_two_or_three_times_slower_than_spheres_of_their_volume() -> None:
    """Common practice, from memory; for the usual mica and bronze flakes."""
    for kind in (Colourant.MICA, Colourant.METAL_POWDER):
        aspect = GRAINS[kind].aspect
        assert 1.4 < aspect ** (-2 / 3) / GRAINS[kind].shape_share < 3.0


@pytest.mark.parametrize("kind", GRAINS)
def test_usual_grains_are_slow_enough_for_stokes_in_the_thinnest_mix(kind: Colourant) -> None:
    assert reynolds(GRAINS[kind], Liquid(0.15, 1.10)) < LARGEST_REYNOLDS


def test_the_default_viscosity_lies_among_published_mixes() -> None:
    """Source: resources/published/properties.csv, publisher by publisher."""
    with resource_path("published/properties.csv").open(encoding="utf-8", newline="") as file:
        mixed = [
            float(row["value"]) * 1e3
            for row in csv.DictReader(file)
            if row["figure"].endswith("viscosity")
        ]
    assert min(mixed) < DEFAULT_VISCOSITY_MPAS < max(mixed)


def test_a_mix_is_twice_as_thick_ten_degrees_colder() -> None:
    """Common practice."""
    assert viscosity_at(15.0) == 2.0 * viscosity_at(25.0)


def test_heavy_metallics_poured_fresh_go_under() -> None:
    """The trade's own fact: bronze poured fresh is gone from the face, and stays later."""
    bronze = GRAINS[Colourant.METAL_POWDER]
    film_mm = 1.0
    assert sunk_mm(bronze, FRESH, BENCH, 0.0) > 0.5 * film_mm
    assert sunk_mm(bronze, FRESH, BENCH, 30.0) <= 0.1 * film_mm


def test_fresh_mica_sinks_about_half_a_millimetre_as_a_sphere_and_later_stays() -> None:
    """Common practice: 20 µm at 1 Pa·s in 2 mm that gel in 1.5 to 3 h.

    At four to five times the viscosity, 20 to 30 minutes into a working time of 40, it stays.
    """
    mica = Grain(20.0, 3.1)
    for working_hours in (0.5, 1.0):
        film = steady_thickening(working_hours)
        assert 0.3 < sunk_mm(mica, FRESH, film, 0.0) < 1.5
    assert sunk_mm(mica, FRESH, BENCH, 25.0) < 0.1 * 2.0


def test_white_paste_never_sinks() -> None:
    """Common practice: half a micrometre of titania stays anywhere."""
    assert stays_from_minute(GRAINS[Colourant.PASTE], FRESH, BENCH, 0.3) == 0.0


def test_what_is_as_light_as_the_mix_stays_and_what_is_lighter_rises() -> None:
    assert stays_from_minute(Grain(100.0, 1.10), FRESH, BENCH, 1.0) == 0.0
    assert sunk_mm(Grain(100.0, 0.6), FRESH, BENCH, 0.0) < 0.0


def test_the_depth_is_the_integral_of_the_speed_in_a_thickening_mix() -> None:
    """Against scipy's solver, speed falling tenfold in every working time."""
    bronze, begun = GRAINS[Colourant.METAL_POWDER], 17.0
    speed = fall_speed(bronze, FRESH)
    solved = solve_ivp(
        lambda hour, _: [speed / 10.0 ** (hour * 60.0 / 40.0)],
        (begun / 60.0, 2.0), [0.0], rtol=1e-10, atol=1e-12,
    )  # fmt: skip
    assert sunk_mm(bronze, FRESH, BENCH, begun) == pytest.approx(solved.y[0][-1], rel=1e-7)


def test_in_a_room_that_cools_the_depth_follows_the_films_clock() -> None:
    """Against scipy's solver over share and depth at once."""
    law = stage_law(Stage.WORKING_TIME, [SheetFigure(15, 1.4), SheetFigure(25, 0.7)])
    room = History((0.0, 6 * HOUR), (25.0, 13.0), (0.0, 0.0), (None, None))
    film = thickening(StageClock(law, room), 0.0)
    assert film is not None
    speed = fall_speed(GRAINS[Colourant.MICA], FRESH)

    def slopes(hour: float, state: list[float]) -> list[float]:
        return [1.0 / law.hours(25.0 - 2.0 * hour), speed / 10.0 ** state[0]]

    solved = solve_ivp(
        slopes, (0.0, film.sets_minute / 60.0), [0.0, 0.0], rtol=1e-9, atol=1e-12
    )
    assert solved.y[0][-1] == pytest.approx(3.0, abs=1e-4)
    depth = sunk_mm(GRAINS[Colourant.MICA], FRESH, film, 0.0)
    assert depth == pytest.approx(solved.y[1][-1], rel=1e-3)


def test_a_steady_room_gives_what_its_working_time_gives() -> None:
    law = stage_law(Stage.WORKING_TIME, [SheetFigure(22, 0.5)])
    film = thickening(StageClock(law, constant_history(22.0)), 0.0)
    steady = steady_thickening(0.5)
    assert film is not None
    assert film.left == pytest.approx(steady.left, abs=1e-3)


def test_a_film_that_does_not_set_within_the_record_has_no_answer() -> None:
    law = stage_law(Stage.WORKING_TIME, [SheetFigure(22, 0.5)])
    short = History((0.0, HOUR), (22.0, 22.0), (0.0, 0.0), (None, None))
    assert thickening(StageClock(law, short), 0.0) is None


def test_after_it_has_set_nothing_sinks() -> None:
    assert BENCH.thin_seconds(BENCH.sets_minute) == 0.0
    assert BENCH.thin_seconds(-1.0) == BENCH.thin_seconds(0.0)


films = st.floats(0.1, 6.0).map(steady_thickening)


@given(films, st.floats(0.0, 400.0), st.floats(0.0, 400.0))
def test_what_is_poured_later_sinks_less(film: Thickening, one: float, other: float) -> None:
    early, late = sorted((one, other))
    assert film.thin_seconds(early) >= film.thin_seconds(late)


@given(films, st.floats(5.0, 60.0), st.floats(1.5, 19.0), st.floats(0.2, 5.0))
def test_from_the_minute_on_that_it_stays_it_sinks_no_more_than_that_share(
    film: Thickening, diameter: float, density: float, film_mm: float
) -> None:
    grain = Grain(diameter, density, aspect=8.0)
    minute = stays_from_minute(grain, FRESH, film, film_mm)
    sunk = sunk_mm(grain, FRESH, film, minute)
    if minute == 0.0:
        assert sunk <= 0.1 * film_mm * (1 + 1e-9)
    else:
        assert sunk == pytest.approx(0.1 * film_mm, rel=1e-6)


def test_what_cannot_be_a_grain_a_mix_or_a_film_is_refused() -> None:
    for make in (
        lambda: Grain(0.0, 3.0),
        lambda: Grain(10.0, math.nan),
        lambda: Grain(10.0, 3.0, aspect=0.5),
        lambda: Liquid(0.0, 1.1),
        lambda: steady_thickening(0.0),
        lambda: stays_from_minute(Grain(10.0, 3.0), FRESH, BENCH, 0.0),
    ):
        with pytest.raises(GrainError):
            make()
