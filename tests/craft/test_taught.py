"""What touch tests taught of a product's stages; all figures are invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from studio_planner.craft.products import SheetPoint
from studio_planner.craft.taught import TaughtStage
from studio_planner.science.stages import Basis, Edge, Stage
from tests.craft.nouns import broken, resin

OPENS = Stage.RECOAT_OPENS
SHEET = (
    SheetPoint(stage=OPENS, celsius=23, from_hours=4),
    SheetPoint(stage=Stage.RECOAT_CLOSES, celsius=23, from_hours=14),
)
PRODUCT = resin(sheet=SHEET)


def sheet_hours(celsius: float) -> float:
    law = PRODUCT.sheet_law(OPENS)
    assert law is not None
    return law.hours(celsius)


TAUGHT = TaughtStage(
    stage=OPENS,
    celsius=17.0,
    sheet_hours=sheet_hours(17.0),
    early_hours=6.0,
    likely_hours=6.7,
    late_hours=7.5,
    sheet_factor=1.05,
    band_left=0.8,
    tests=7,
    pours=4,
    at=datetime(2026, 3, 2, 9, tzinfo=UTC),
)


def test_a_taught_stage_has_the_hours_that_the_tests_found() -> None:
    law = replace(PRODUCT, taught=(TAUGHT,)).law(OPENS)
    assert law is not None
    edges = [law.hours(17.0, edge) for edge in Edge]
    assert edges == pytest.approx([6.0, 6.7, 7.5])
    assert (law.tests, law.basis(17.0), law.basis(20.0)) == (7, Basis.TAUGHT, Basis.TAUGHT)
    assert law.basis(30.0) is Basis.OUTSIDE


def test_a_published_figure_is_corrected_by_what_the_tests_say_of_the_sheet() -> None:
    law = replace(PRODUCT, taught=(TAUGHT,)).law(OPENS)
    assert law is not None
    assert law.hours(23.0) == pytest.approx(4 * 1.05)


def test_the_sheet_law_stays_that_of_the_sheet() -> None:
    law = replace(PRODUCT, taught=(TAUGHT,)).sheet_law(OPENS)
    assert law is not None
    assert (law.hours(23.0), law.tests, law.basis(23.0)) == (4.0, 0, Basis.PUBLISHED)


def test_other_stages_stay_as_the_sheet_has_them() -> None:
    taught = replace(PRODUCT, taught=(TAUGHT,))
    closes = Stage.RECOAT_CLOSES
    assert taught.law(closes) == PRODUCT.law(closes)
    assert taught.law(Stage.HANDLE) is None


def test_a_sheet_that_has_changed_since_is_taken_as_it_is() -> None:
    changed = (replace(SHEET[0], from_hours=5), SHEET[1])
    law = replace(PRODUCT, sheet=changed, taught=(TAUGHT,)).law(OPENS)
    assert law is not None
    assert (law.hours(23.0), law.tests) == (5.0, 0)


@pytest.mark.parametrize("celsius", [22.5, 23.0, 23.9])
def test_tests_beside_a_figure_correct_the_whole_sheet_by_one_factor(celsius: float) -> None:
    said = sheet_hours(celsius)
    near = replace(
        TAUGHT,
        celsius=celsius,
        sheet_hours=said,
        early_hours=said,
        likely_hours=said * 1.25,
        late_hours=said * 1.5,
    )
    law = replace(PRODUCT, taught=(near,)).law(OPENS)
    assert law is not None
    assert law.hours(23.0) == pytest.approx(4 * 1.25)
    assert law.hours(10.0) == pytest.approx(sheet_hours(10.0) * 1.25)
    assert law.hours(23.0, Edge.LATE) == pytest.approx(4 * 1.5)


def test_hours_that_would_rise_with_warmth_correct_the_whole_sheet_by_one_factor() -> None:
    short = replace(TAUGHT, early_hours=2.5, likely_hours=3.0, late_hours=3.5)
    law = replace(PRODUCT, taught=(short,)).law(OPENS)
    assert law is not None
    assert law.hours(23.0) == pytest.approx(4 * 3.0 / sheet_hours(17.0))


@pytest.mark.parametrize("stage", [Stage.RECOAT_CLOSES, Stage.CUP_LIFE, Stage.WORKING_TIME])
def test_the_end_of_a_window_and_the_cup_are_never_taught(stage: Stage) -> None:
    assert set(broken(lambda: replace(TAUGHT, stage=stage))) == {"stage"}


def test_a_stage_is_taught_once() -> None:
    assert set(broken(lambda: replace(PRODUCT, taught=(TAUGHT, TAUGHT)))) == {"taught"}


def test_times_in_the_wrong_order_and_without_a_zone_are_refused_together() -> None:
    wrong = broken(
        lambda: replace(TAUGHT, early_hours=8.0, at=datetime(2026, 3, 2, 9), pours=9)  # noqa: DTZ001
    )
    assert set(wrong) == {"likely_hours", "at", "pours"}
