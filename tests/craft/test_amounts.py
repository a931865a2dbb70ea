"""Grams of a coat against the arithmetic of the trade.

The worked examples are common practice, on their unrounded figures; 1 mm over 100 cm² at
1.10 g/cm³ is 11 g by geometry.
"""

from __future__ import annotations

import doctest

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft import amounts
from studio_planner.craft.amounts import (
    CoatParts,
    coat_area_cm2,
    coat_grams,
    coat_parts,
    edge_area_cm2,
    ratio_by_weight,
)
from studio_planner.craft.pieces import (
    EDGE,
    TOP,
    UNDERSIDE,
    Coat,
    CoatKind,
    Colour,
    Material,
    Piece,
)
from studio_planner.craft.products import MixRatio, Product, ProductKind, RatioBy
from studio_planner.craft.settings import Settings
from studio_planner.craft.shapes import Rectangle, Round, Shape
from studio_planner.science.mix_ratio import MassError

PAINT = Product(key="p", name="Invented paint", kind=ProductKind.PRIMER, sheet=(), density=1.10)


def coat(film_mm: float = 2.0, **facts: object) -> Coat:
    entries: dict[str, object] = {"key": "flood", "kind": CoatKind.FLOOD, "product": "p"}
    entries |= {"film_mm": film_mm, "faces": frozenset({TOP})}
    return Coat(**(entries | facts))  # type: ignore[arg-type]


def piece(shape: Shape, *stack: Coat, **facts: object) -> Piece:
    entries: dict[str, object] = {"key": "k", "name": "Board", "shape": shape, "stack": stack}
    entries |= {"material": Material.SLATE, "body_mm": 18.0}
    return Piece(**(entries | facts))  # type: ignore[arg-type]


def test_one_millimetre_over_100_square_centimetres_is_11_grams() -> None:
    film = coat(1.0)
    board = piece(Rectangle(length_mm=100, width_mm=100), film)
    plain = Settings(reserve_pct=0, drip_loss_pct=0)
    assert coat_grams(board, film, PAINT, plain) == pytest.approx(11.0)


def test_six_undammed_coasters_take_144_4_g_with_three_cups() -> None:
    # Worked example A of the trade: 2 mm, edge 8 mm at 0.4 mm, drips 20 %, three cups at 4 g.
    film = coat(2.0, faces=frozenset({TOP, EDGE}))
    six = piece(Round(diameter_mm=100), film, count=6, body_mm=8.0)
    rules = Settings(reserve_pct=0, drip_loss_pct=20, edge_film_mm=0.4)
    assert coat_grams(six, film, PAINT, rules) + 3 * 4.0 == pytest.approx(144.4, abs=0.05)


def test_a_rimmed_tray_takes_276_6_g_with_two_cups() -> None:
    # Worked example B: rim 10 mm, walls 0.3 mm, nothing drips, two cups at 4 g.
    film = coat(2.0)
    tray = piece(Rectangle(length_mm=400, width_mm=300), film, rim_mm=10.0)
    rules = Settings(reserve_pct=0, rim_drip_loss_pct=0)
    assert coat_grams(tray, film, PAINT, rules) + 2 * 4.0 == pytest.approx(276.6, abs=0.05)


def test_the_same_tray_without_a_rim_takes_316_2_g() -> None:
    film = coat(2.0, faces=frozenset({TOP, EDGE}))
    tray = piece(Rectangle(length_mm=400, width_mm=300), film)
    rules = Settings(reserve_pct=0, drip_loss_pct=15)
    # The example rounds its edge (11.09 g) down to 11 g before it adds 15 %.
    assert coat_grams(tray, film, PAINT, rules) == pytest.approx(316.2, abs=0.2)


def test_an_undammed_board_takes_165_1_g() -> None:
    # Worked example C: 20 x 30 cm, 2 mm, edge 18 mm, drips 18 %.
    film = coat(2.0, faces=frozenset({TOP, EDGE}))
    board = piece(Rectangle(length_mm=300, width_mm=200), film)
    assert coat_grams(board, film, PAINT, Settings(reserve_pct=0)) == pytest.approx(
        165.1, abs=0.06
    )


def test_leaf_weighs_nothing() -> None:
    size = coat(0.1, key="size", kind=CoatKind.SIZE)
    leaf = coat(0.0, key="leaf", kind=CoatKind.LEAF)
    board = piece(Rectangle(length_mm=300, width_mm=200), size, leaf)
    assert coat_grams(board, leaf, PAINT, Settings()) == 0.0


def test_a_bare_porous_blank_drinks_only_under_its_first_coat() -> None:
    seal, flood = coat(0.1, key="seal"), coat(2.0)
    board = piece(Rectangle(length_mm=300, width_mm=200), seal, flood, material=Material.MDF)
    rules = Settings(reserve_pct=0, drip_loss_pct=0)
    # 600 cm² x 0.1 mm x 1.10 = 6.6 g, and 75 % of it is drunk (common practice, 50 to 100 %).
    assert coat_grams(board, seal, PAINT, rules) == pytest.approx(6.6 * 1.75)
    assert coat_grams(board, flood, PAINT, rules) == pytest.approx(132.0)


def test_the_bare_edge_of_a_porous_blank_drinks_twice_its_coat() -> None:
    seal = coat(0.1, key="seal", faces=frozenset({EDGE}))
    board = piece(Rectangle(length_mm=300, width_mm=200), seal, material=Material.MDF)
    # 100 cm x 1.8 cm x 0.1 mm x 1.10 = 1.98 g; edges +200 % (common practice).
    assert coat_grams(board, seal, PAINT, Settings(reserve_pct=0)) == pytest.approx(1.98 * 3)


def test_the_reserve_is_added_to_everything() -> None:
    film = coat(1.0)
    board = piece(Rectangle(length_mm=100, width_mm=100), film)
    rules = Settings(reserve_pct=5, drip_loss_pct=0)
    assert coat_grams(board, film, PAINT, rules) == pytest.approx(11.0 * 1.05)


@given(
    film_mm=st.floats(0.05, 3.0),
    faces=st.sampled_from([{TOP}, {EDGE}, {UNDERSIDE}, {TOP, EDGE}, {UNDERSIDE, EDGE}]),
    material=st.sampled_from(Material),
    count=st.integers(1, 20),
    reserve_pct=st.floats(0.0, 30.0),
)
def test_the_parts_add_up_to_the_grams_of_the_coat(
    film_mm: float,
    faces: set[str],
    material: Material,
    count: int,
    reserve_pct: float,
) -> None:
    film = coat(film_mm, faces=frozenset(faces))
    size = Rectangle(length_mm=300, width_mm=200)
    one = piece(size, film, material=material, rim_mm=10.0)
    several = piece(size, film, material=material, rim_mm=10.0, count=count)
    rules = Settings(reserve_pct=reserve_pct)
    parts = coat_parts(several, film, PAINT, rules)
    put_on = parts.film + parts.edges + parts.drips + parts.absorbed
    assert put_on + parts.reserve == coat_grams(several, film, PAINT, rules)
    assert min(parts.film, parts.edges, parts.drips, parts.absorbed, parts.reserve) >= 0.0
    assert parts.reserve == pytest.approx(put_on * reserve_pct / 100.0)
    assert parts.grams == pytest.approx(count * coat_grams(one, film, PAINT, rules))
    assert (parts.absorbed > 0.0) == (material.porous)


def test_a_rimmed_tray_says_where_its_grams_go() -> None:
    # Worked example B by its parts: 1200 cm² of 2 mm at 1.10, walls of 140 cm x 1 cm x 0.3 mm.
    film = coat(2.0)
    tray = piece(Rectangle(length_mm=400, width_mm=300), film, rim_mm=10.0)
    rules = Settings(reserve_pct=10, rim_drip_loss_pct=0, wall_film_mm=0.3, cup_loss_g=4.0)
    parts = coat_parts(tray, film, PAINT, rules)
    assert parts.film == pytest.approx(264.0)
    assert parts.edges == pytest.approx(4.62)
    assert (parts.drips, parts.absorbed) == (0.0, 0.0)
    assert parts.reserve == pytest.approx(26.862)
    assert parts.mixed == pytest.approx(parts.grams + 4.0)


def test_every_colour_leaves_something_in_its_cup() -> None:
    colours = tuple(Colour(name=name, share_pct=50) for name in ("sea", "sand"))
    film = coat(1.0, colours=colours)
    board = piece(Rectangle(length_mm=100, width_mm=100), film)
    assert coat_parts(board, film, PAINT, Settings(cup_loss_g=3.0)).cups == 6.0


def test_leaf_has_no_parts() -> None:
    size = coat(0.1, key="size", kind=CoatKind.SIZE)
    leaf = coat(0.0, key="leaf", kind=CoatKind.LEAF)
    board = piece(Rectangle(length_mm=300, width_mm=200), size, leaf)
    assert coat_parts(board, leaf, PAINT, Settings()) == CoatParts()


def test_a_measured_area_wins_over_the_blank() -> None:
    band = coat(0.3, faces=frozenset({"band"}), area_cm2=42.0)
    board = piece(Rectangle(length_mm=300, width_mm=200), band)
    assert coat_area_cm2(board, band) == 42.0
    assert edge_area_cm2(board, band) == 0.0
    measured_edge = coat(0.3, faces=frozenset({EDGE}), area_cm2=42.0)
    assert edge_area_cm2(board, measured_edge) == 42.0


def test_an_area_inside_the_top_does_not_drip() -> None:
    band = coat(1.0, faces=frozenset({"band"}), area_cm2=100.0)
    board = piece(Rectangle(length_mm=300, width_mm=200), band)
    assert coat_grams(board, band, PAINT, Settings(reserve_pct=0)) == pytest.approx(11.0)


def test_a_rim_does_not_hold_what_is_poured_on_the_underside() -> None:
    film = coat(2.0, faces=frozenset({UNDERSIDE}))
    board = piece(Rectangle(length_mm=100, width_mm=100), film, rim_mm=10.0)
    rules = Settings(reserve_pct=0, drip_loss_pct=10)
    assert coat_grams(board, film, PAINT, rules) == pytest.approx(24.2)


def mixed(ratio: MixRatio, a: float | None = None, b: float | None = None) -> Product:
    kind = ProductKind.TWO_PART
    return Product(
        key="m", name="Mix", kind=kind, sheet=(), ratio=ratio, density_a=a, density_b=b
    )


def test_three_to_one_by_weight_is_90_and_30_of_120_g() -> None:
    # Common practice.
    parts = ratio_by_weight(mixed(MixRatio(a=3, b=1))).parts(120.0)
    assert (parts.a_grams, parts.b_grams) == pytest.approx((90.0, 30.0))


def test_a_volume_ratio_is_weighed_through_the_two_densities() -> None:
    # B per 100 A = 100 x (1 / 2) x (0.98 / 1.15), common practice.
    by_volume = MixRatio(a=2, b=1, by=RatioBy.VOLUME)
    ratio = ratio_by_weight(mixed(by_volume, 1.15, 0.98))
    assert ratio.b_for(100.0) == pytest.approx(100 / 2 * 0.98 / 1.15)


def test_a_one_part_product_has_no_ratio() -> None:
    with pytest.raises(MassError, match="not mixed from two parts"):
        ratio_by_weight(PAINT)


def test_the_example_in_the_documentation_is_true() -> None:
    assert doctest.testmod(amounts).failed == 0
