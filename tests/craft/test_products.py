"""Products: data sheets that make laws, and bad ones refused in sentences.

All figures are invented; the mixing arithmetic is tested beside the amounts.
"""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.products import (
    MixRatio,
    Product,
    ProductKind,
    RatioBy,
    SheetPoint,
)
from studio_planner.science.laws import SheetFigure
from studio_planner.science.stages import Edge, Stage
from tests.craft.nouns import broken, refusal, resin


def at(
    stage: Stage,
    celsius: float,
    from_hours: float,
    to_hours: float | None = None,
    mass_g: float | None = None,
) -> SheetPoint:
    return SheetPoint(
        stage=stage, celsius=celsius, from_hours=from_hours, to_hours=to_hours, mass_g=mass_g
    )


OPENS, CLOSES = Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES


def test_the_law_of_a_stage_returns_the_published_hours() -> None:
    product = resin(sheet=(at(OPENS, 15, 8), at(CLOSES, 25, 12), at(OPENS, 25, 3, 5)))
    law = product.law(OPENS)
    assert law is not None
    assert [law.hours(celsius) for celsius in (15, 25)] == [8, 4]
    assert product.figures(OPENS) == (at(OPENS, 15, 8), at(OPENS, 25, 3, 5))


def test_a_stage_that_the_sheet_leaves_out_has_no_law() -> None:
    product = resin(sheet=(at(OPENS, 15, 8),))
    assert product.law(CLOSES) is None
    assert product.law(Stage.CUP_LIFE) is None
    assert product.cup_life() is None


def test_a_printed_range_reaches_the_law_as_a_range() -> None:
    assert at(OPENS, 20, 4, 6).figure == SheetFigure(20, 4, 6)


def test_cup_life_of_several_masses_has_a_law_at_the_one_nearest_100_g() -> None:
    sheet = [
        at(Stage.CUP_LIFE, 23, hours, mass_g=mass) for mass, hours in ((50, 1), (120, 0.7))
    ]
    product = resin(sheet=tuple(sheet))
    law, life = product.law(Stage.CUP_LIFE), product.cup_life()
    assert law is not None
    assert life is not None
    assert law.hours(23) == 0.7
    assert life.hours(23, 50) == pytest.approx(1.0)


def test_a_cup_life_without_a_mass_holds_for_100_g_and_never_outlasts_the_film() -> None:
    product = resin(sheet=(at(Stage.CUP_LIFE, 23, 0.7), at(Stage.WORKING_TIME, 23, 0.8)))
    life = product.cup_life()
    assert life is not None
    assert life.hours(23, 100) == pytest.approx(0.7)
    assert life.hours(23, 5) == pytest.approx(0.8)


@pytest.mark.parametrize(
    ("sheet", "field", "words"),
    [
        ([at(OPENS, 20, 4), at(OPENS, 20, 5)], "sheet, recoat_opens", "20 °C"),
        ([at(OPENS, 20, 4), at(OPENS, 30, 9)], "sheet, recoat_opens", "9"),
        ([at(OPENS, 20, 9), at(CLOSES, 20, 8)], "sheet, recoat_opens", "opens after it closes"),
        ([at(OPENS, 20, 8), at(CLOSES, 20, 8)], "sheet, recoat_opens", "opens after it closes"),
        (
            [at(Stage.TAPE_OPENS, 20, 9), at(Stage.TAPE_CLOSES, 20, 5, 8)],
            "sheet, tape_opens",
            "opens after it closes",
        ),
        (
            [at(Stage.TRIM_OPENS, 20, 9), at(Stage.TRIM_CLOSES, 20, 5, 8)],
            "sheet, trim_opens",
            "opens after it closes",
        ),
        (
            [at(Stage.CUP_LIFE, 20, 1, mass_g=50), at(Stage.CUP_LIFE, 20, 2, mass_g=100)],
            "sheet, cup_life",
            "larger mix",
        ),
    ],
)
def test_a_sheet_that_cannot_be_true_is_refused_in_a_sentence(
    sheet: list[SheetPoint], field: str, words: str
) -> None:
    told = broken(resin, sheet=tuple(sheet))
    assert told.keys() == {field}
    assert words in told[field]


def test_a_window_that_opens_before_its_printed_end_is_accepted() -> None:
    sheet = (at(OPENS, 20, 7), at(CLOSES, 20, 5, 8), at(OPENS, 25, 99 / 20))
    assert resin(sheet=sheet).sheet == sheet


def test_every_bad_stage_of_a_sheet_is_reported() -> None:
    sheet = [at(stage, 20, hours) for stage in (OPENS, Stage.HANDLE) for hours in (4, 5)]
    told = broken(resin, sheet=tuple(sheet))
    assert told.keys() == {"sheet, recoat_opens", "sheet, handle"}


@given(
    st.lists(
        st.builds(
            SheetPoint,
            stage=st.sampled_from(Stage),
            celsius=st.sampled_from([-40, 5, 15.0, 20, 25, 30.5, 150]),
            from_hours=st.floats(1e-4, 100),
            to_hours=st.none() | st.floats(100, 20_000),
            mass_g=st.none() | st.floats(0.1, 1e6),
        ),
        max_size=6,
    )
)
def test_any_sheet_is_refused_in_sentences_or_has_positive_hours_for_every_stage(
    sheet: list[SheetPoint],
) -> None:
    if rules := refusal(resin, sheet=tuple(sheet)):
        assert all(rule.field.startswith("sheet, ") for rule in rules)
        assert all(rule.sentence.endswith(".") for rule in rules)
        return
    product = resin(sheet=tuple(sheet))
    for stage in {point.stage for point in sheet}:
        law = product.law(stage)
        assert law is not None
        hours = [law.hours(18.0, edge) for edge in (Edge.EARLY, Edge.LIKELY, Edge.LATE)]
        assert 0.0 < hours[0] <= hours[1] <= hours[2] < math.inf


def test_each_wrong_figure_of_a_sheet_is_named() -> None:
    told = broken(SheetPoint, stage=OPENS, celsius=200, from_hours=0.0, to_hours=-1, mass_g=0.0)
    assert told.keys() == {"celsius", "from_hours", "to_hours", "mass_g"}
    assert broken(SheetPoint, stage=OPENS, celsius=20, from_hours=6, to_hours=4).keys() == {
        "to_hours"
    }


def test_both_parts_of_a_ratio_are_positive() -> None:
    assert broken(MixRatio, a=0, b=-1).keys() == {"a", "b"}


def test_a_two_part_mix_needs_its_ratio_and_nothing_else_has_one() -> None:
    assert broken(resin, ratio=None) == {"ratio": "a two-part mix needs its ratio."}
    for kind in (ProductKind.PRIMER, ProductKind.SIZE, ProductKind.LEAF):
        assert broken(resin, kind=kind) == {"ratio": "only a two-part mix has a ratio."}
        assert resin(kind=kind, ratio=None).ratio is None


@pytest.mark.parametrize("known", [{}, {"density_a": 1.15}, {"density_b": 0.98}])
def test_a_ratio_by_volume_cannot_be_weighed_without_both_densities(
    known: dict[str, float],
) -> None:
    by_volume = MixRatio(a=2, b=1, by=RatioBy.VOLUME)
    assert broken(resin, ratio=by_volume, **known).keys() == {"density_a"}
    both: Product = resin(ratio=by_volume, density_a=1.15, density_b=0.98)
    assert both.density_b == 0.98


def test_each_wrong_figure_of_a_product_is_named() -> None:
    told = broken(
        resin,
        key="",
        name=" ",
        density_a=0.1,
        density_b=6,
        density=math.nan,
        cup_limit_g=0,
        mix_limit_g=0,
        minimum_celsius=-21,
        maximum_celsius=81,
        humidity_limit_pct=0,
        depth_limit_mm=0,
    )
    assert told.keys() == {
        "key",
        "name",
        "density_a",
        "density_b",
        "density",
        "cup_limit_g",
        "mix_limit_g",
        "minimum_celsius",
        "maximum_celsius",
        "humidity_limit_pct",
        "depth_limit_mm",
    }


def test_the_coldest_allowed_is_under_the_warmest() -> None:
    told = broken(resin, minimum_celsius=25, maximum_celsius=15)
    assert told == {"minimum_celsius": "the lowest temperature must be under the highest."}
    assert broken(resin, minimum_celsius=15, maximum_celsius=15).keys() == {"minimum_celsius"}
    assert resin(minimum_celsius=15, maximum_celsius=25).maximum_celsius == 25


def test_a_sheet_may_name_only_one_end_of_the_temperatures() -> None:
    assert resin(minimum_celsius=15).maximum_celsius is None
    assert resin(maximum_celsius=30).minimum_celsius is None
