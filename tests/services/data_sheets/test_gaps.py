"""What a sheet leaves open, the curve of its laws, and a pour in the studio's own room."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.products import MixRatio, ProductKind, RatioBy, SheetPoint
from studio_planner.science.stages import Basis, Edge, Stage, safe_edge
from studio_planner.services.data_sheets.gaps import Gap, gaps_of
from studio_planner.services.data_sheets.law_curves import (
    cup_curve,
    law_curve,
    law_point,
    times_at,
)
from studio_planner.services.data_sheets.times import PrintedTime
from studio_planner.services.editing.changes import made
from studio_planner.services.editing.products import (
    EVEN_RATIO,
    copied_product,
    lacks_densities,
    new_product,
    product_with,
    removed_product,
    values_of,
    with_figure,
    with_sheet,
    with_temperature,
)
from studio_planner.services.trial_pour import evening_pour
from tests.desktop import scenes

SLOW = scenes.SLOW


def found(product: object, low: float = 16.0, high: float = 22.0) -> set[Gap]:
    return {gap.gap for gap in gaps_of(product, low, high)}  # type: ignore[arg-type]


def without(*stages: Stage) -> object:
    return replace(SLOW, sheet=tuple(p for p in SLOW.sheet if p.stage not in stages))


def test_a_whole_sheet_lacks_only_its_cup_life() -> None:
    assert found(SLOW) == {Gap.NO_CUP_LIFE}


def test_what_is_missing_is_found() -> None:
    assert Gap.NO_CLOSING in found(without(Stage.RECOAT_CLOSES))
    assert Gap.NO_OPENING in found(without(Stage.RECOAT_OPENS))
    gaps = gaps_of(without(Stage.HANDLE, Stage.FULL_CURE), 16, 22)  # type: ignore[arg-type]
    missing = {gap.stage: gap.instead for gap in gaps if gap.gap is Gap.NO_STAGE}
    assert missing == {Stage.HANDLE: Stage.PRINT_FREE, Stage.FULL_CURE: None}


def test_a_room_far_from_the_sheet_is_found() -> None:
    assert Gap.ROOM_COLDER in found(SLOW, 10, 20)
    assert Gap.ROOM_WARMER in found(SLOW, 20, 31)
    assert Gap.UNDER_MINIMUM in found(replace(SLOW, minimum_celsius=17))


def test_a_window_that_is_not_open_for_sure_is_found() -> None:
    tight = [
        replace(p, from_hours=p.from_hours * 2.4) if p.stage is Stage.RECOAT_OPENS else p
        for p in SLOW.sheet
        if p.stage is not Stage.RECOAT_CLOSES
    ]
    closes = SheetPoint(stage=Stage.RECOAT_CLOSES, celsius=25, from_hours=9)
    (shut,) = (
        gap
        for gap in gaps_of(replace(SLOW, sheet=(*tight, closes)), 14, 16)
        if gap.gap is Gap.SHUT
    )
    assert shut.hours is not None
    assert shut.hours[0] >= shut.hours[1]


def test_a_curve_goes_through_every_printed_figure() -> None:
    for stage in {point.stage for point in SLOW.sheet}:
        curve = law_curve(SLOW, stage)
        assert curve is not None
        at = {point.celsius: point for point in curve.points}
        for printed in curve.printed:
            assert at[printed.celsius].likely == printed.from_hours
            assert at[printed.celsius].basis is Basis.PUBLISHED
        assert curve.points[0].guessed
        assert curve.points[-1].guessed
        assert all(point.early <= point.likely <= point.late for point in curve.points)


def test_a_stage_without_figures_has_no_curve() -> None:
    assert law_curve(SLOW, Stage.CUP_LIFE) is None
    assert cup_curve(SLOW, 20) == ()


def test_a_point_of_the_law_is_what_the_steady_table_says() -> None:
    for stage, time in times_at(SLOW, 18.0).items():
        point = law_point(SLOW, stage, 18.0)
        assert (point.early, point.likely, point.late) == (
            time.early_hours,
            time.likely_hours,
            time.late_hours,
        )


def test_a_larger_cup_goes_faster() -> None:
    sheet = (SheetPoint(stage=Stage.CUP_LIFE, celsius=20, from_hours=0.5, mass_g=100),)
    points = cup_curve(replace(SLOW, sheet=sheet), 20.0)
    assert {p.grams: p.likely for p in points}[100.0] == pytest.approx(0.5)
    lives = [point.likely for point in points]
    assert lives == sorted(lives, reverse=True)


def test_a_pour_tonight_is_what_the_clocks_of_its_room_say() -> None:
    studio = scenes.planned()
    pour = evening_pour(studio, SLOW, scenes.NOW)
    assert pour is not None
    assert pour.start.astimezone(studio.time_zone).hour == 20
    legs = [(pour.place.key, pour.end)]
    timing = pour.lane.timing
    for row in pour.moments:
        since = [(pour.place.key, pour.start)] if row.stage.not_after else legs
        expected = timing.reached(SLOW, row.stage, safe_edge(row.stage), since)
        assert (row.late if safe_edge(row.stage) is Edge.LATE else row.early) == expected
    assert pour.ribbon.doorway is not None
    assert pour.end - pour.start == timedelta(minutes=30)


@pytest.mark.parametrize("kind", list(ProductKind))
def test_a_new_product_of_every_kind_can_be_poured_on_trial(kind: ProductKind) -> None:
    studio = scenes.planned()
    product = new_product(studio, kind, "New")
    pour = evening_pour(studio, product, scenes.NOW)
    assert pour is not None
    assert pour.moments == ()
    low, high = pour.celsius()
    assert low <= high


def test_a_product_in_use_is_kept_and_its_users_are_named() -> None:
    studio = scenes.planned()
    with pytest.raises(InvalidEntry, match=studio.pieces[0].name):
        made(removed_product(SLOW), studio)
    more = made(copied_product(SLOW), studio)
    assert made(removed_product(more.products[-1]), more).products == studio.products


def test_a_figure_takes_the_place_of_the_one_before() -> None:
    cell = (Stage.HANDLE, 25.0, None)
    changed = with_figure(SLOW, cell, PrintedTime(16, 18))
    assert [p.to_hours for p in changed.figures(Stage.HANDLE)] == [18, None]
    assert len(changed.sheet) == len(SLOW.sheet)
    assert len(with_figure(changed, cell, None).sheet) == len(SLOW.sheet) - 1


def test_all_figures_of_a_temperature_move_or_go() -> None:
    assert {p.celsius for p in with_temperature(SLOW, 25, 26).sheet} == {15, 26}
    assert {p.celsius for p in with_temperature(SLOW, 25, None).sheet} == {15}


def test_the_fields_of_a_product_make_the_same_product() -> None:
    for product in (SLOW, scenes.FAST, scenes.PRIMER):
        assert product_with(product, values_of(product)) == product


def test_a_wrong_part_of_the_ratio_is_named_as_its_field() -> None:
    with pytest.raises(InvalidEntry) as caught:
        product_with(SLOW, values_of(SLOW) | {"ratio_a": 0})
    assert [rule.field for rule in caught.value.broken] == ["ratio_a"]


def test_a_ratio_by_volume_without_densities_is_refused() -> None:
    ratio = MixRatio(a=2, b=1, by=RatioBy.VOLUME)
    with pytest.raises(InvalidEntry, match="densities"):
        replace(SLOW, ratio=ratio)


def test_a_ratio_is_assumed_until_the_maker_says_what_it_counts() -> None:
    new = replace(SLOW, ratio=EVEN_RATIO)
    assert Gap.ASSUMED_RATIO in found(new)
    typed = product_with(new, values_of(new) | {"ratio_a": 2.0})
    assert Gap.ASSUMED_RATIO in found(typed)
    said = product_with(new, values_of(new) | {"ratio_by": RatioBy.WEIGHT})
    assert said.ratio == MixRatio(a=1, b=1)
    assert Gap.ASSUMED_RATIO not in found(said)


def test_another_kind_drops_the_ratio_and_keeps_the_largest_cup() -> None:
    mix = replace(SLOW, density_a=1.1, density_b=1.0, cup_limit_g=120.0, viscosity_mpas=900.0)
    one = product_with(mix, values_of(mix) | {"kind": ProductKind.PRIMER})
    assert (one.ratio, one.density_a, one.density_b) == (None, None, None)
    assert (one.cup_limit_g, one.viscosity_mpas) == (120.0, 900.0)
    again = product_with(one, values_of(one) | {"kind": ProductKind.TWO_PART})
    assert again.ratio == EVEN_RATIO
    assert again.cup_limit_g == 120.0


def test_a_sheet_with_a_ratio_by_volume_is_taken_but_for_the_ratio() -> None:
    by_volume = MixRatio(a=2, b=1, by=RatioBy.VOLUME)
    point = SheetPoint(stage=Stage.HANDLE, celsius=20, from_hours=30)
    bare = replace(SLOW, sheet=())
    taken = with_sheet(bare, [point], by_volume, "Slow mix")
    assert (taken.sheet, taken.name, taken.ratio) == ((point,), "Slow mix", SLOW.ratio)
    assert lacks_densities(bare, by_volume)
    dense = replace(bare, density_a=1.1, density_b=1.0)
    assert with_sheet(dense, [point], by_volume).ratio == by_volume


def test_a_ratio_that_says_nothing_new_keeps_what_is_known() -> None:
    assert SLOW.ratio is not None
    unsaid = replace(SLOW.ratio, by=RatioBy.ASSUMED)
    assert with_sheet(SLOW, [], unsaid).ratio == SLOW.ratio
    assert with_sheet(SLOW, [], replace(unsaid, a=9)).ratio == replace(unsaid, a=9)
