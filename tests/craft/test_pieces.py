"""Pieces: what lies on what, what rests on what, and how much room it takes."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.pieces import (
    EDGE,
    TOP,
    UNDERSIDE,
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Piece,
)
from studio_planner.craft.shapes import Rectangle
from tests.craft.nouns import broken, coat, piece

FACES = st.sampled_from(
    [
        {TOP},
        {EDGE},
        {UNDERSIDE},
        {TOP, EDGE},
        {UNDERSIDE, EDGE},
        {"moon"},
        {"sea"},
        {"moon", "sea"},
    ]
).map(frozenset)
STACKS = st.lists(FACES, min_size=1, max_size=6)


def stack_of(*faces: frozenset[str] | set[str]) -> tuple[Coat, ...]:
    return tuple(coat(f"c{i}", faces=frozenset(one)) for i, one in enumerate(faces))


def upper(faces: frozenset[str]) -> bool:
    """Whether anything of these faces is on the top side of the blank."""
    return bool(faces - {EDGE, UNDERSIDE})


@pytest.mark.parametrize(
    ("material", "porous"),
    [
        (Material.MDF, True),
        (Material.TIMBER, True),
        (Material.PLYWOOD, True),
        (Material.SLATE, False),
        (Material.STONE, False),
        (Material.METAL, False),
        (Material.GLASS, False),
        (Material.PLASTIC, False),
    ],
)
def test_wood_breathes_out_bubbles_when_it_warms(material: Material, porous: bool) -> None:
    # Common practice; slate and stone are coated as dense.
    assert material.porous is porous


@pytest.mark.parametrize(
    ("one", "other", "touching"),
    [
        ({TOP}, {TOP}, True),
        ({TOP}, {"moon"}, True),
        ({"moon"}, {TOP}, True),
        ({"moon"}, {"moon"}, True),
        ({"moon"}, {"sea"}, False),
        ({"moon", "sea"}, {"sea"}, True),
        ({TOP}, {EDGE}, False),
        ({TOP, EDGE}, {EDGE}, True),
        ({"moon"}, {EDGE}, False),
        ({TOP}, {UNDERSIDE}, False),
        ({"moon"}, {UNDERSIDE}, False),
        ({UNDERSIDE}, {UNDERSIDE, EDGE}, True),
    ],
)
def test_coats_touch_where_they_share_a_face(
    one: set[str],
    other: set[str],
    touching: bool,
) -> None:
    mine, theirs = stack_of(one, other)
    assert mine.touches(theirs) is touching


@given(FACES, FACES)
def test_touching_goes_both_ways(one: frozenset[str], other: frozenset[str]) -> None:
    mine, theirs = stack_of(one, other)
    assert mine.touches(theirs) is theirs.touches(mine)
    assert mine.touches(mine)


@given(STACKS)
def test_the_coat_below_is_the_last_one_that_touches(faces: list[frozenset[str]]) -> None:
    stack = stack_of(*faces)
    tray = piece(*stack)
    for index, one in enumerate(stack):
        below = tray.below(index)
        if below is None:
            assert not any(one.touches(earlier) for earlier in stack[:index])
        else:
            assert one.touches(stack[below])
            assert not any(one.touches(between) for between in stack[below + 1 : index])


@given(STACKS)
def test_a_piece_rests_on_what_was_coated_on_its_other_side(
    faces: list[frozenset[str]],
) -> None:
    tray = piece(*stack_of(*faces))
    for index, mine in enumerate(faces):
        lying_on_its_top = UNDERSIDE in mine
        expected = tuple(
            i
            for i, other in enumerate(faces[:index])
            if (upper(other) if lying_on_its_top else UNDERSIDE in other)
        )
        assert tray.rests_on(index) == expected


def test_an_underside_seal_rests_on_nothing_but_the_flood_later_rests_on_it() -> None:
    tray = piece(*stack_of({UNDERSIDE}, {TOP, EDGE}, {"moon"}, {UNDERSIDE}))
    assert [tray.rests_on(i) for i in range(4)] == [(), (0,), (0,), (1, 2)]
    assert [tray.below(i) for i in range(4)] == [None, None, 1, 0]


@given(STACKS)
def test_a_piece_is_turned_when_its_wet_side_changes(faces: list[frozenset[str]]) -> None:
    tray = piece(*stack_of(*faces))
    turned = [tray.turned_before(i) for i in range(len(faces))]
    assert turned[0] is False
    sides = ["down" if UNDERSIDE in one else "up" for one in faces]
    assert turned[1:] == [one != other for one, other in pairwise(sides)]


def test_a_coat_is_found_by_its_key() -> None:
    tray = piece(*stack_of({TOP}, {TOP}))
    assert tray.coat("c1") is tray.stack[1]
    assert tray.position("c1") == 1
    with pytest.raises(KeyError, match="varnish"):
        tray.coat("varnish")


def test_the_names_of_colours_keep_their_order() -> None:
    colours = (Colour(name="Sea", share_pct=70), Colour(name="Foam", share_pct=30))
    assert coat(colours=colours).colour_names == ("Sea", "Foam")


def test_a_single_piece_takes_its_size_and_clearance_all_round() -> None:
    board = piece(shape=Rectangle(length_mm=300, width_mm=200), clearance_mm=25)
    assert board.footprint == (350, 250)


def test_six_coasters_stand_in_two_rows_of_three() -> None:
    # Three of 100 mm and four gaps of 20 mm; two of 100 mm and three gaps.
    assert piece(count=6, clearance_mm=20).footprint == (380, 260)


def test_a_measured_footprint_wins() -> None:
    assert piece(count=6, footprint_mm=(500, 120)).footprint == (500, 120)


@given(st.integers(1, 500), st.floats(0, 500), st.floats(1, 5000), st.floats(1, 5000))
def test_a_set_fits_into_its_footprint_without_an_empty_row(
    count: int, gap: float, length: float, width: float
) -> None:
    shape = Rectangle(length_mm=length, width_mm=width)
    long, across = piece(count=count, clearance_mm=gap, shape=shape).footprint
    columns, rows = (long - gap) / (length + gap), (across - gap) / (width + gap)
    assert columns == pytest.approx(round(columns))
    assert rows == pytest.approx(round(rows))
    assert round(columns) * (round(rows) - 1) < count <= round(columns) * round(rows)
    assert abs(round(columns) - math.sqrt(count)) <= 1


@pytest.mark.parametrize(
    ("entries", "fields"),
    [
        ({"key": " "}, {"key"}),
        ({"product": ""}, {"product"}),
        ({"film_mm": 0.0}, {"film_mm"}),
        ({"film_mm": 101}, {"film_mm"}),
        ({"faces": frozenset()}, {"faces"}),
        ({"faces": frozenset({TOP, UNDERSIDE})}, {"faces"}),
        ({"faces": frozenset({"moon", UNDERSIDE})}, {"faces"}),
        ({"faces": frozenset({TOP, "  "})}, {"faces"}),
        ({"colours": (Colour(name="Sea", share_pct=60),)}, {"colours"}),
        ({"area_cm2": 0.0}, {"area_cm2"}),
        ({"setup_minutes": -1}, {"setup_minutes"}),
        ({"piece_minutes": 0}, {"piece_minutes"}),
        ({"joint": Joint.BARE}, {"joint"}),
        ({"joint": Joint.SCUFFED}, {"joint"}),
        (
            {
                "film_mm": -1,
                "setup_minutes": 1441,
                "area_cm2": 1e9,
                "product": "",
                "joint": Joint.BARE,
            },
            {"film_mm", "setup_minutes", "area_cm2", "product", "joint"},
        ),
    ],
)
def test_a_coat_that_cannot_be_is_refused_by_every_wrong_field(
    entries: dict[str, object], fields: set[str]
) -> None:
    assert broken(coat, **entries).keys() == fields


def test_shares_may_be_rounded_to_a_half_per_cent() -> None:
    thirds = tuple(Colour(name=name, share_pct=33.3) for name in "abc")
    assert coat(colours=thirds).colours == thirds
    told = broken(coat, colours=tuple(Colour(name=name, share_pct=33) for name in "abc"))
    assert told == {"colours": "the shares add up to 99 %, not to 100 %."}


def test_only_leaf_may_have_no_film() -> None:
    assert coat(kind=CoatKind.LEAF, film_mm=0.0).film_mm == 0.0


def test_each_wrong_figure_of_a_colour_is_named() -> None:
    told = broken(Colour, name="", share_pct=0, colourant_pct=51)
    assert told.keys() == {"name", "share_pct", "colourant_pct"}


def test_each_wrong_figure_of_a_piece_is_named() -> None:
    told = broken(
        piece,
        key="",
        name="",
        body_mm=0,
        count=0,
        rim_mm=-1,
        clearance_mm=501,
        cover_mm=0,
        footprint_mm=(0.0, 100.0),
    )
    assert told.keys() == {
        "key",
        "name",
        "body_mm",
        "count",
        "rim_mm",
        "clearance_mm",
        "cover_mm",
        "footprint_mm",
    }


def test_a_piece_needs_a_stack_of_coats_with_keys_of_their_own() -> None:
    assert broken(piece, stack=()) == {"stack": "add at least one coat."}
    assert broken(piece, stack=(coat(), coat())).keys() == {"stack"}


def test_leaf_is_refused_on_a_bare_face_and_welcome_on_size() -> None:
    leaf = coat("leaf", kind=CoatKind.LEAF, film_mm=0.0, faces=frozenset({"moon"}))
    size = coat("size", kind=CoatKind.SIZE, film_mm=0.05)
    assert broken(piece, stack=(leaf, size)).keys() == {"stack, coat leaf"}
    assert (
        Piece(
            key="p",
            name="P",
            shape=Rectangle(length_mm=10, width_mm=10),
            material=Material.GLASS,
            body_mm=4,
            stack=(size, leaf),
        ).below(1)
        == 0
    )


def test_coats_of_one_kind_are_numbered_and_a_lone_one_is_not() -> None:
    floods = [coat(key, kind=CoatKind.FLOOD) for key in ("a", "b")]
    seal = coat("s", kind=CoatKind.SEAL)
    stack = piece(seal, *floods)
    assert [stack.coat_name(key) for key in ("s", "a", "b")] == ["seal", "flood 1", "flood 2"]
