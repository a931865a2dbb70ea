"""What touch tests teach of a stage: bands that hold, and one wild test that does little."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.stages import Edge, Stage
from studio_planner.science.teaching import FilmTest, steady_celsius, taught_by
from studio_planner.science.teaching_pours import TeachingSettings
from studio_planner.science.teaching_prior import Prior
from tests.science.taught_runs import drawn_run, law_of, moved_by_wild, share

SHEET = stage_law(Stage.RECOAT_OPENS, [SheetFigure(23, 4)])
COLD = 15.0
HONEST = TeachingSettings(wild_share=0.0)


def touches_about(truth: float, celsius: float, room_band: float = 0.0) -> list[FilmTest]:
    """Twelve touches on both sides of a factor, each of another pour."""
    shares = [truth * math.exp(step / 20) for step in range(-6, 7) if step]
    return [
        FilmTest(f"{n}", share, celsius, share > truth, room_band)
        for n, share in enumerate(shares)
    ]


def test_without_a_test_nothing_is_taught() -> None:
    assert taught_by(SHEET, []) is None


@pytest.mark.parametrize("celsius", [COLD, 23.0, 31.0])
def test_a_touch_long_before_the_stage_leaves_the_sheet_as_it_is(celsius: float) -> None:
    lesson = taught_by(SHEET, [FilmTest("first", 0.0, celsius, already=False)])
    assert lesson is not None
    said = [SHEET.hours(celsius, edge) for edge in Edge]
    law = law_of(SHEET, lesson)
    assert [law.hours(celsius, edge) for edge in Edge] == pytest.approx(said, rel=0.02)
    assert lesson.band_left == pytest.approx(1, abs=0.01)


@pytest.mark.parametrize("truth", [0.8, 1.0, 1.3])
def test_tests_on_both_sides_find_the_truth_and_narrow_the_band(truth: float) -> None:
    lesson = taught_by(SHEET, touches_about(truth, COLD))
    assert lesson is not None
    assert lesson.factor == pytest.approx(truth, rel=0.04)
    sheet_width = SHEET.hours(COLD, Edge.LATE) / SHEET.hours(COLD, Edge.EARLY)
    assert lesson.late / lesson.early < sheet_width**0.4
    assert (lesson.tests, lesson.pours) == (12, 12)


def test_the_next_pour_is_less_sure_than_the_law() -> None:
    lesson = taught_by(SHEET, touches_about(1.2, COLD))
    assert lesson is not None
    assert lesson.early < lesson.law_early < lesson.factor < lesson.law_late < lesson.late


def test_cold_tests_say_little_of_the_figure_at_twenty_three_degrees() -> None:
    lesson = taught_by(SHEET, touches_about(1.3, COLD))
    assert lesson is not None
    assert 1.0 < lesson.sheet_factor < 1.04


def test_tests_at_a_figure_correct_the_figure() -> None:
    lesson = taught_by(SHEET, touches_about(1.08, 23.0))
    assert lesson is not None
    assert lesson.factor == pytest.approx(lesson.sheet_factor, rel=0.01)
    assert lesson.band_left < 0.9


def test_tests_in_two_temperatures_find_offset_and_slope() -> None:
    # A truth that is 8 % above the sheet at its figure and another 20 % eight degrees below.
    tests = 3 * [*touches_about(1.08, 23.0), *touches_about(1.3, COLD)]
    lesson = taught_by(SHEET, [_of(test, n) for n, test in enumerate(tests)])
    assert lesson is not None
    law = law_of(SHEET, lesson)
    assert law.hours(23.0) / SHEET.hours(23.0) == pytest.approx(1.08, rel=0.03)
    assert law.hours(COLD) / SHEET.hours(COLD) == pytest.approx(1.3, rel=0.07)


def _of(test: FilmTest, pour: int) -> FilmTest:
    return FilmTest(str(pour), test.share, test.celsius, test.already)


def test_beyond_a_figure_on_the_other_side_another_slope_holds() -> None:
    prior = Prior(SHEET, COLD, TeachingSettings())
    felt, beside = prior.slope_at(31.0)
    assert felt == 0.0
    assert beside > 0.1
    assert prior.slope_at(14.0)[0] > prior.slope
    assert prior.slope_at(14.0)[1] == 0.0


def test_a_room_that_is_hardly_known_teaches_less() -> None:
    known = taught_by(SHEET, touches_about(1.3, COLD))
    guessed = taught_by(SHEET, touches_about(1.3, COLD, room_band=3.0))
    assert known is not None
    assert guessed is not None
    assert guessed.law_late / guessed.law_early > known.law_late / known.law_early


def test_tests_of_one_pour_teach_less_than_tests_of_many() -> None:
    tests = touches_about(1.3, COLD)
    many = taught_by(SHEET, tests)
    one = taught_by(SHEET, [_of(test, 1) for test in tests])
    assert many is not None
    assert one is not None
    assert one.law_late / one.law_early > many.law_late / many.law_early
    assert (one.pours, one.tests) == (1, 12)


def test_a_sheet_with_a_narrow_band_leaves_room_for_pours() -> None:
    """Where the printed band is narrower than pours deviate, half of it is the law's own."""
    prior = Prior(SHEET, 23.0, TeachingSettings(pour_sd=0.2))
    assert prior.scale == pytest.approx(math.log(1.1) / 2 / 1.8595, rel=1e-4)


def test_the_steady_temperature_is_the_one_with_the_same_hours() -> None:
    assert steady_celsius(SHEET, SHEET.hours(11.5)) == pytest.approx(11.5, abs=1e-6)


def test_the_law_lies_in_its_band_as_often_as_the_band_says() -> None:
    """A sample of `tests.benchmarks.teaching`; 4 deviations of 200 draws are 8.5 %."""
    found = [drawn_run(seed) for seed in range(5000, 5200)]
    assert share(run.law for run in found) == pytest.approx(0.90, abs=0.085)
    assert share(run.next_pour for run in found) == pytest.approx(0.90, abs=0.085)


@given(
    seed=st.integers(0, 10_000),
    wrong=st.floats(0.0, 2.0),
    already=st.booleans(),
    same_pour=st.booleans(),
)
def test_one_wild_test_among_eight_moves_the_likely_time_by_a_tenth_at_most(
    seed: int, wrong: float, already: bool, same_pour: bool
) -> None:
    """However wrong it is: by hardly anything, or by a factor of seven."""
    factor = math.exp(-wrong if already else wrong)
    assert moved_by_wild(seed, factor, same_pour=same_pour) <= 0.1


def test_a_single_test_is_not_believed_before_a_second_bears_it_out() -> None:
    """One touch moves the likely time by a tenth, the second like it by another tenth."""
    told = [FilmTest(f"{n}", 1.4, COLD, already=False) for n in range(3)]
    found = [taught_by(SHEET, told[:count]) for count in (1, 2, 3)]
    factors = [lesson.factor for lesson in found if lesson is not None]
    assert factors == pytest.approx([1.1, 1.21, 1.331], rel=0.01)


def test_where_one_test_is_limited_the_band_still_holds_the_likely_time() -> None:
    lesson = taught_by(SHEET, [FilmTest(f"{n}", 1.9, COLD, already=False) for n in range(3)])
    assert lesson is not None
    assert lesson.early <= lesson.factor <= lesson.late
    assert lesson.law_early <= lesson.factor <= lesson.law_late
