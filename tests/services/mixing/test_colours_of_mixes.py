"""What colours are made of, in which order they are poured, and recipes for a pour."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.mixes import MixedFor, WeighedColour, WeighedMix
from studio_planner.craft.pieces import Colour
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.settings import Settings
from studio_planner.science.film_limits import Colourant
from studio_planner.services.colour_stuff import Heaviness, kind_called, light_first, stuff_of
from studio_planner.services.mixing.recipes import really_used, recipe_of
from tests.services.mixing.bench_mixes import START, THREE, bench, coasters, flood_coat

GOLD = Pigment(key="gold", name="Old gold", kind=Colourant.METAL_POWDER, density=8.8)


def test_a_kind_is_called_as_it_is_written_in_any_case() -> None:
    assert kind_called(" Metal Powder") is Colourant.METAL_POWDER
    assert kind_called("ground slate") is None


def test_light_colours_come_first_and_heavy_ones_last() -> None:
    assert [colour.name for colour in light_first(THREE)] == ["white", "pearl", "gold"]


def test_colours_that_sink_alike_stay_in_the_makers_order() -> None:
    clear = tuple(Colour(name=name, share_pct=25) for name in "dbca")
    assert light_first(clear) == clear


@pytest.mark.parametrize(
    ("colourant", "pct", "heaviness"),
    [
        ("alcohol ink", 1.0, Heaviness.CLEAR),
        ("paste", 3.0, Heaviness.LIGHT),
        ("mica", 3.0, Heaviness.HEAVY),
        ("mica", 0.0, Heaviness.CLEAR),
        ("ground slate", 3.0, Heaviness.CLEAR),
    ],
)
def test_colours_are_clear_light_or_heavy(
    colourant: str, pct: float, heaviness: Heaviness
) -> None:
    colour = Colour(name="one", colourant=colourant, colourant_pct=pct)
    assert stuff_of(colour).heaviness is heaviness


def test_a_pigment_of_the_studio_gives_kind_density_and_grain() -> None:
    stuff = stuff_of(Colour(name="sun", colourant="old GOLD", colourant_pct=5), (GOLD,))
    assert stuff.grain is not None
    assert (stuff.grain.density, stuff.grain.diameter_um) == (8.8, 30.0)


def test_a_fine_mica_is_light() -> None:
    fine = Pigment(key="silk", name="Silk", kind=Colourant.MICA, diameter_um=5.0)
    silk = Colour(name="silk", colourant="silk", colourant_pct=3)
    assert stuff_of(silk, (fine,)).heaviness is Heaviness.LIGHT


def test_each_kind_has_its_own_ceiling_and_reason() -> None:
    for kind in Colourant:
        much = Colour(name="one", colourant=kind.value, colourant_pct=30)
        assert stuff_of(much).over_ceiling
        assert stuff_of(much).reason
    assert (
        stuff_of(Colour(name="own", colourant="my own", colourant_pct=30)).ceiling_pct is None
    )
    assert stuff_of(Colour(name="own", colourant="my own")).reason == ""


@given(
    st.floats(20.0, 900.0),
    st.lists(st.floats(1.0, 60.0), min_size=1, max_size=5),
    st.sampled_from([0.01, 0.1, 1.0]),
)
def test_the_shares_of_a_recipe_add_up_to_the_mix(
    grams: float, shares: list[float], step: float
) -> None:
    whole = sum(shares)
    colours = tuple(
        Colour(
            name=f"c{n}",
            share_pct=min(max(100.0 * share / whole, 0.1), 100.0),
            colourant="paste",
        )
        for n, share in enumerate(shares)
    )
    studio = bench(settings=Settings(scale_step_g=step))
    lines = recipe_of(studio, flood_coat(colours), grams)
    total = sum(line.mix_grams for line in lines)
    assert total == pytest.approx(grams, abs=step / 2 + 1e-6)
    for line in lines:
        assert line.mix_grams / step == pytest.approx(round(line.mix_grams / step), abs=1e-6)


def test_a_recipe_is_scaled_to_the_pour_and_names_its_ceilings() -> None:
    white, pearl, gold = recipe_of(bench(), flood_coat(THREE), 200.0)
    assert (white.mix_grams, white.colourant_grams) == (100.0, 3.0)
    assert white.stuff.ceiling_pct == pytest.approx(6.0)
    assert (pearl.mix_grams, pearl.colourant_grams) == (60.0, 1.8)
    assert gold.stuff.ceiling_pct == pytest.approx(10.0)


def test_an_unknown_colourant_has_no_ceiling() -> None:
    own = (Colour(name="own", colourant="my own", colourant_pct=2),)
    (line,) = recipe_of(bench(), flood_coat(own), 100.0)
    assert line.stuff.ceiling_pct is None


def test_what_was_really_used_is_kept_with_the_piece() -> None:
    studio = bench(coasters("set"), coasters("other"))
    entry = LogEntry(number=1, kind=EntryKind.WEIGHED, at=START, written=START, batch=7)
    mix = WeighedMix(
        entry=1, batch=7, product="flood", at=START, a_grams=100.0, b_grams=44.0,
        colourants=(WeighedColour(name="gold", grams=2.88),),
        coats=(MixedFor(piece="set", coat="flood"),),
    )  # fmt: skip
    studio = replace(studio, log=(entry,), mixes=(mix,))
    (used,) = really_used(studio, "set", "flood")
    assert (used.batch, used.name, used.grams) == (7, "gold", 2.88)
    assert used.of_mix_pct == pytest.approx(2.0)
    assert really_used(studio, "other", "flood") == ()
