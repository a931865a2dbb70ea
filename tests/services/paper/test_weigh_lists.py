"""What a weigh list prints adds up as printed, keeps the ratio, and is all in the cups."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.amounts import ratio_by_weight
from studio_planner.craft.pieces import Colour
from studio_planner.craft.products import MixRatio, ProductKind
from studio_planner.craft.settings import MassUnit, Settings, Units
from studio_planner.science.mix_ratio import Parts, hardener_error
from studio_planner.services.paper.pour_sheet import pour_sheet_of_day
from studio_planner.services.weighing import weigh_mix
from tests.services.mixing.bench_mixes import FLOOD, bench, coasters, flood_coat, poured
from tests.services.paper.printed import DAY, grams, of_cups, seen, tables

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.paper.pages import Table

STEPS = (0.01, 0.1, 0.5, 1.0)


@st.composite
def studios(draw: st.DrawFn) -> Studio:
    """A bench with a set of coasters in up to four colours, on scales of several steps."""
    count = draw(st.integers(1, 4))
    cuts = sorted(draw(st.lists(st.integers(1, 99), min_size=count - 1, max_size=count - 1,
                                unique=True)))  # fmt: skip
    shares = [b - a for a, b in zip([0, *cuts], [*cuts, 100], strict=True)]
    colours = tuple(
        Colour(
            name=f"c{n}",
            share_pct=share,
            colourant="paste",
            colourant_pct=draw(st.floats(0.0, 6.0)),
        )
        for n, share in enumerate(shares)
    )
    product = replace(
        FLOOD,
        ratio=MixRatio(a=100, b=draw(st.floats(25.0, 110.0))),
        cup_limit_g=draw(st.sampled_from((120.0, 300.0, 2000.0))),
    )
    settings = Settings(scale_step_g=draw(st.sampled_from(STEPS)))
    studio = bench(
        coasters("set", draw(st.integers(1, 9)), flood_coat(colours)),
        product=product,
        settings=settings,
    )
    unit = draw(st.sampled_from(MassUnit))
    return replace(studio, units=Units(mass=unit))


def lists(studio: Studio) -> list[Table]:
    return tables(pour_sheet_of_day(seen(studio), DAY), "Weigh")


@given(studios())
def test_every_reading_is_the_one_before_and_what_is_added(studio: Studio) -> None:
    for table in lists(studio):
        before = 0.0
        for row in table.rows:
            what, add, reads, really = row.cells
            assert really == ""
            if what == "A" or what.startswith("cup "):
                before = 0.0  # an empty cup, set to zero
            assert grams(reads) == pytest.approx(before + grams(add), abs=1e-9)
            before = grams(reads)


@given(studios())
def test_the_cups_take_all_of_a_and_b_and_nothing_else(studio: Studio) -> None:
    for table in lists(studio):
        mixed = grams(table.rows[1].cells[2])
        if cups := of_cups(table):
            assert sum(cups) == pytest.approx(mixed, abs=1e-9)


@given(studios())
def test_all_portions_print_what_the_whole_mix_takes(studio: Studio) -> None:
    portions = weigh_mix(studio, (poured(1),))
    printed = sum(grams(table.rows[1].cells[2]) for table in lists(studio))
    factor = 28.349523125 if studio.units.mass is MassUnit.OUNCE else 1.0  # avoirdupois
    wanted = sum(portion.total_grams for portion in portions)
    digits = len(portions) * 0.0005 * factor if factor > 1.0 else 1e-6
    assert printed * factor == pytest.approx(wanted, abs=digits + 1e-9)


@given(studios())
def test_a_and_b_as_printed_keep_the_ratio(studio: Studio) -> None:
    ratio = ratio_by_weight(studio.products[0])
    for table in lists(studio):
        a, b = (grams(row.cells[1]) for row in table.rows[:2])
        error = abs(hardener_error(ratio, Parts(a, b)))
        # A thousandth of an ounce is what is printed, not what the scale was asked for.
        rounded = 0.001 / b if studio.units.mass is MassUnit.OUNCE else 0.0
        assert error <= studio.settings.ratio_tolerance_pct / 100.0 + rounded + 1e-9


@given(studios())
def test_every_mass_in_grams_is_one_that_the_scale_can_show(studio: Studio) -> None:
    plain = replace(studio, units=Units())
    step = plain.settings.scale_step_g
    for table in lists(plain):
        for row in table.rows:
            for text in row.cells[1:3]:
                if text:
                    steps = grams(text) / step
                    assert steps == pytest.approx(round(steps), abs=1e-6)


def test_paint_is_one_number_and_has_no_cup_clock() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    view = seen(bench(coasters("set", 6, flood_coat()), product=paint))
    sheet = pour_sheet_of_day(view, DAY)
    (table,) = tables(sheet, "Weigh")
    ((what, add, reads, _),) = (row.cells for row in table.rows)
    assert what == "Invented flood"
    assert add == reads
    assert not tables(sheet, "The cup's clock")
    assert "lot" in sheet.texts
    assert "lot of B" not in sheet.texts
