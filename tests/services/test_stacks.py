"""Stacks as a maker changes them: coats, patterns, faults, and what is poured."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.pieces import (
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Piece,
    StackPattern,
)
from studio_planner.craft.pins import Pin
from studio_planner.craft.plans import Plan, Unplanned
from studio_planner.craft.products import Product, ProductKind
from studio_planner.craft.saying import Saying
from studio_planner.craft.shapes import Oval, Round
from studio_planner.planning.cannot_meet import cannot_meet
from studio_planner.services.desk import DeskView
from studio_planner.services.editing import patterns, photos, pieces, recipes, stacks
from studio_planner.services.editing.history import History, Step
from studio_planner.services.editing.new_coats import USUAL, new_coat, of_kind, refitted
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.stack_faults import refused_by, stack_faults
from studio_planner.services.editing.stacks import StackHolder
from tests.desktop import scenes

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

SIZE = Product(key="size", name="Slow size (invented)", kind=ProductKind.SIZE, sheet=())
LEAF = Product(key="leaf", name="Brass leaf (invented)", kind=ProductKind.LEAF, sheet=())


def studio() -> Studio:
    bare = scenes.studio()
    return replace(bare, products=(*bare.products, SIZE, LEAF))


def moon() -> Piece:
    return studio().piece("m")


def said(piece: Piece) -> str:
    return " ".join(fault.sentence for fault in stack_faults(studio(), piece))


def with_stack_of(*coats: Coat, key: str = "m") -> Piece:
    return replace(studio().piece(key), stack=coats)


def laid(kind: CoatKind, *below: Coat, **more: object) -> Coat:
    coat = new_coat(studio(), kind, below, len(below))
    return replace(coat, **more)  # type: ignore[arg-type]


def refusal(where: Studio, stack: tuple[Coat, ...], key: str) -> str:
    with pytest.raises(InvalidEntry) as caught:
        stacks.with_stack(where, StackHolder(key), stack)
    return str(caught.value)


def pattern(*coats: Coat) -> StackPattern:
    return StackPattern(key="p", name="Night", stack=coats)


# New coats


@pytest.mark.parametrize("kind", CoatKind)
def test_a_new_coat_of_every_kind_is_whole_and_usual(kind: CoatKind) -> None:
    base = moon().stack[:1]
    coat = new_coat(studio(), kind, base, 1)
    after = stacks.with_stack(studio(), StackHolder("m"), (*base, coat))
    assert after.piece("m").stack[1].film_mm == USUAL[kind].film_mm
    assert (kind in {CoatKind.GLITTER, CoatKind.LEAF}) == (not coat.sandable)


def test_a_coat_over_a_primer_waits_until_that_is_dry() -> None:
    prime = laid(CoatKind.PRIME)
    assert studio().product(prime.product).kind is ProductKind.PRIMER
    assert laid(CoatKind.FLOOD, prime).joint is Joint.ON_DRY
    assert laid(CoatKind.LOCK, laid(CoatKind.SEAL)).joint is Joint.IN_WINDOW


def test_leaf_without_a_leaf_product_points_to_products() -> None:
    with pytest.raises(InvalidEntry, match="under Products first"):
        new_coat(scenes.studio(), CoatKind.LEAF, (), 0)


def test_a_coat_that_becomes_leaf_takes_leaf_and_loses_its_film() -> None:
    coat = of_kind(studio(), moon().stack[1], CoatKind.LEAF)
    assert (coat.product, coat.film_mm, coat.sandable) == ("leaf", 0.0, False)


def test_leaf_over_size_lies_where_the_size_is() -> None:
    size = laid(CoatKind.SIZE, moon().stack[0], faces=frozenset({"crescent"}))
    leaf = laid(CoatKind.LEAF, moon().stack[0], size)
    assert leaf.faces == frozenset({"crescent"})
    assert leaf.joint is Joint.ON_DRY
    assert laid(CoatKind.LOCK, moon().stack[0], size, leaf).faces == frozenset({"top"})


# Stacks


def test_a_copied_coat_lies_on_the_first_under_a_key_of_its_own() -> None:
    stack, key = stacks.with_copy(moon().stack, "glitter")
    assert [coat.kind for coat in stack[1:3]] == [CoatKind.GLITTER] * 2
    assert stack[2].key == key != "glitter"


def test_a_lost_coat_loses_its_pin() -> None:
    pin = Pin(piece="m", coat="lock", start=scenes.at(1, "18:00"))
    pinned = replace(studio(), pins=(pin,))
    stack = stacks.without_coat(moon().stack, "lock")
    assert stacks.with_stack(pinned, StackHolder("m"), stack).pins == ()


def test_what_is_poured_is_not_changed_but_may_be_covered() -> None:
    poured = scenes.poured_studio()
    clear = poured.piece("k").stack[0]
    thicker = (replace(clear, film_mm=1.0),)
    assert "top coat is poured already" in refusal(poured, thicker, "k")
    more = new_coat(poured, CoatKind.FLOOD, (clear,), 1)
    assert (
        stacks.with_stack(poured, StackHolder("k"), (clear, more)).piece("k").stack[1] == more
    )
    assert "poured already" in refusal(poured, (more, clear), "k")


def test_a_pattern_is_drawn_on_a_board_and_changed_by_itself() -> None:
    own = pattern(*moon().stack)
    held = with_thing(studio(), own)
    holder = StackHolder("p", pattern=True)
    board = stacks.as_piece(held, holder)
    assert board is not None
    assert board.stack == own.stack
    after = stacks.with_stack(held, holder, own.stack[:1])
    assert after.patterns[0].stack == own.stack[:1]
    assert stacks.as_piece(held, StackHolder("gone", pattern=True)) is None


# Patterns


def test_a_pattern_goes_on_twenty_pieces_with_keys_of_their_own() -> None:
    one = moon()
    twenty = tuple(replace(one, key=f"n{i}", name=f"Night {i}") for i in range(20))
    many = replace(studio(), pieces=(*studio().pieces, *twenty))
    seal = laid(CoatKind.SEAL)
    flood = laid(CoatKind.FLOOD, seal)
    after = patterns.put_on(many, pattern(seal, flood), [piece.key for piece in twenty])
    for piece in twenty:
        stack = after.piece(piece.key).stack
        assert [coat.kind for coat in stack] == [CoatKind.SEAL, CoatKind.FLOOD]
        assert len({coat.key for coat in stack}) == 2


def test_a_coat_that_stays_as_it_is_keeps_its_key() -> None:
    stack = moon().stack
    own = pattern(*(replace(coat, key=f"other {coat.key}") for coat in stack))
    assert patterns.stack_on(studio(), own, moon()) == stack


def test_a_pattern_that_begins_otherwise_than_what_is_poured_goes_on_no_piece() -> None:
    poured = scenes.poured_studio()
    own = pattern(laid(CoatKind.SEAL))
    with pytest.raises(InvalidEntry, match=r"Market board 7.*poured already.*Night begins"):
        patterns.put_on(poured, own, ["m", "k"])
    clear = replace(poured.piece("k").stack[0], key="z")
    after = patterns.put_on(poured, pattern(clear, laid(CoatKind.LOCK, clear)), ["k"])
    assert after.piece("k").stack[0].key == "clear"


def test_a_pattern_gets_a_free_name_and_refuses_one_that_is_taken() -> None:
    first = patterns.pattern_of(studio(), moon(), "Night")
    held = with_thing(studio(), first)
    second = patterns.pattern_of(held, moon(), "Night")
    assert (second.name, second.key) == ("Night 2", "night-2")
    held = with_thing(held, second)
    assert patterns.renamed(held, second, "Dusk").patterns[1].name == "Dusk"
    with pytest.raises(InvalidEntry, match="there is a pattern Night already"):
        patterns.renamed(held, second, "Night")


# Joints that can be


def test_what_comes_to_lie_on_another_kind_of_product_meets_it_as_usual() -> None:
    prime = laid(CoatKind.PRIME)
    flood = laid(CoatKind.FLOOD, prime)
    seal = laid(CoatKind.SEAL, prime)
    assert flood.joint is Joint.ON_DRY
    after = refitted(studio(), (prime, flood), (prime, seal, flood))
    assert [coat.joint for coat in after[1:]] == [Joint.ON_DRY, Joint.IN_WINDOW]
    copied, _ = stacks.with_copy((prime, flood), flood.key)
    assert refitted(studio(), (prime, flood), copied)[2].joint is Joint.IN_WINDOW
    veil = laid(CoatKind.COLOUR, seal, joint=Joint.WET_IN_WET)
    assert refitted(studio(), (seal, veil), (prime, veil))[1].joint is Joint.ON_DRY


def test_a_joint_that_can_be_stays_and_so_does_what_the_maker_chose() -> None:
    seal, other = laid(CoatKind.SEAL), laid(CoatKind.FLOOD)
    veil = laid(CoatKind.COLOUR, seal, joint=Joint.WET_IN_WET)
    assert refitted(studio(), (seal, veil), (seal, other, veil))[2].joint is Joint.WET_IN_WET
    dry = replace(veil, joint=Joint.ON_DRY)
    assert refitted(studio(), (seal, veil), (seal, dry))[1].joint is Joint.ON_DRY


# Faults


def test_leaf_on_a_wet_coat_sinks() -> None:
    seal = laid(CoatKind.SEAL)
    leaf = laid(CoatKind.LEAF, seal, joint=Joint.WET_IN_WET)
    assert "leaf laid on a wet coat sinks" in said(with_stack_of(seal, leaf))


def test_leaf_sticks_to_size_and_to_tack_only() -> None:
    prime = laid(CoatKind.PRIME)
    leaf = laid(CoatKind.LEAF, prime)
    assert "does not stick to the prime" in said(with_stack_of(prime, leaf))
    seal = laid(CoatKind.SEAL)
    dry = laid(CoatKind.LEAF, seal, joint=Joint.ON_DRY)
    assert "no tack for leaf" in said(with_stack_of(seal, dry))
    size = laid(CoatKind.SIZE, seal)
    good = laid(CoatKind.LEAF, seal, size)
    words = said(with_stack_of(seal, size, good, laid(CoatKind.LOCK, seal)))
    assert "stick" not in words
    assert "no tack" not in words


def test_what_can_never_meet_is_told_at_the_joint_and_no_figure_is_asked_for_it() -> None:
    prime = laid(CoatKind.PRIME)
    veil = laid(CoatKind.FLOOD, prime, joint=Joint.WET_IN_WET)
    (fault,) = stack_faults(studio(), with_stack_of(prime, veil))
    assert (fault.coat, fault.field, fault.refused) == (veil.key, "joint", False)
    assert "choose on dry" in fault.sentence


def test_what_the_plan_left_out_for_that_is_not_told_twice() -> None:
    prime = laid(CoatKind.PRIME)
    piece = with_stack_of(prime, laid(CoatKind.FLOOD, prime, joint=Joint.WET_IN_WET))
    planned = replace(studio(), pieces=(piece,), orders=(), poured=(), pins=())
    rows = tuple(cannot_meet(planned, piece))
    plan = Plan(made=scenes.NOW, start=scenes.NOW, coats=(), unplanned=rows)
    assert len(stack_faults(replace(planned, plan=plan), piece)) == 1


def test_what_the_plan_has_no_time_for_is_told_at_the_joint_of_the_coat() -> None:
    row = Unplanned(piece="m", coat=moon().stack[1].key, reason=Saying("Moon: no hands."))
    plan = Plan(made=scenes.NOW, start=scenes.NOW, coats=(), unplanned=(row,))
    found = stack_faults(replace(studio(), plan=plan), moon())
    told = [(one.coat, one.field) for one in found if "no hands" in one.sentence]
    assert told == [(row.coat, "joint")]


def test_leaf_on_nothing_is_refused_at_the_leaf() -> None:
    leaf = laid(CoatKind.LEAF)
    with pytest.raises(InvalidEntry) as caught:
        stacks.with_stack(studio(), StackHolder("m"), (leaf,))
    fault = refused_by(caught.value, "")[0]
    assert (fault.coat, fault.field, fault.refused) == ("leaf", "kind", True)
    assert "needs a size or a tacky coat" in fault.sentence


def test_a_film_that_runs_off_is_refused_and_one_near_it_is_warned_of() -> None:
    seal = laid(CoatKind.SEAL)
    near = with_stack_of(laid(CoatKind.FLOOD, film_mm=2.8), key="h1")
    assert "near what an edge without a rim holds" in said(near)
    held = with_stack_of(laid(CoatKind.FLOOD, film_mm=2.8))
    assert "near what" not in said(held)
    deep = (seal, laid(CoatKind.FLOOD, seal, film_mm=4.0))
    with pytest.raises(InvalidEntry) as caught:
        stacks.with_stack(studio(), StackHolder("h1"), deep)
    fault = refused_by(caught.value, "x")[0]
    assert (fault.coat, fault.field) == ("flood", "film_mm")
    assert "runs off" in fault.sentence


def test_glitter_wants_a_lock_coat_and_no_sanding() -> None:
    seal = laid(CoatKind.SEAL)
    glitter = laid(CoatKind.GLITTER, seal, sandable=True)
    words = said(with_stack_of(seal, glitter))
    assert "nothing covers the glitter" in words
    assert "sanding takes the glitter off" in words


def test_ink_is_taken_off_by_sanding_like_glitter() -> None:
    ink = Colour(name="night", colourant="alcohol ink", colourant_pct=1.0)
    seal = laid(CoatKind.SEAL)
    words = said(with_stack_of(seal, laid(CoatKind.COLOUR, seal, colours=(ink,))))
    assert "sanding takes the ink off" in words
    assert "nothing covers the ink" in words


def test_much_colourant_is_said_at_its_coat() -> None:
    blue = Colour(name="blue", colourant="paste", colourant_pct=9.0)
    words = said(with_stack_of(laid(CoatKind.COLOUR, colours=(blue,))))
    assert "9 % of paste is over the usual ceiling" in words


def test_a_sheet_without_a_figure_for_the_joint_is_said_at_the_coat_below() -> None:
    seal = laid(CoatKind.SEAL)
    size = laid(CoatKind.SIZE, seal)
    leaf = laid(CoatKind.LEAF, seal, size)
    faults = stack_faults(studio(), with_stack_of(seal, size, leaf))
    assert any(f.coat == size.key and "does not say" in f.sentence for f in faults)


def test_glitter_whose_window_closes_before_hands_come_would_have_to_be_sanded() -> None:
    quick = replace(
        scenes.FAST,
        key="quick",
        sheet=tuple(
            replace(point, from_hours=point.from_hours * 0.5) for point in scenes.FAST.sheet
        ),
    )
    bare = replace(studio(), products=(*studio().products, quick))
    seal = laid(CoatKind.SEAL)
    glitter = laid(CoatKind.GLITTER, seal, test_first=False)
    lock = laid(CoatKind.LOCK, seal, glitter)
    glitter = replace(glitter, product="quick")
    piece = with_stack_of(seal, glitter, lock)
    view = DeskView(with_thing(bare, piece), scenes.NOW)
    early = replace(scenes.PEOPLE[1], work=scenes.PEOPLE[1].work[:1])
    shut = DeskView(replace(with_thing(bare, piece), people=(early,)), scenes.NOW)
    words = "closes before hands can be there"
    open_ = stack_faults(view.studio, piece, view.timing, view.now)
    closed = stack_faults(shut.studio, piece, shut.timing, shut.now)
    assert not any(words in fault.sentence for fault in open_)
    assert any(words in fault.sentence and fault.coat == glitter.key for fault in closed)


def test_the_samples_stacks_have_no_planted_fault() -> None:
    for piece in scenes.PIECES[:3]:
        assert not stack_faults(scenes.studio(), piece)


# Pieces, photos, recipes


def test_a_new_piece_is_whole_and_needs_a_product() -> None:
    piece = pieces.new_piece(studio(), "Board")
    assert with_thing(studio(), piece).piece(piece.key).stack
    assert pieces.can_be_coated(studio())
    empty = replace(studio(), products=(LEAF,), pieces=(), orders=())
    assert not pieces.can_be_coated(empty)
    with pytest.raises(InvalidEntry, match="under Products first"):
        pieces.new_piece(empty, "Board")


def test_the_blanks_form_gives_back_what_it_shows() -> None:
    for piece in (moon(), studio().piece("c")):
        values = pieces.values_of(studio(), piece)
        assert pieces.with_values(studio(), piece, values) == studio()


def test_an_outline_is_changed_with_its_sizes() -> None:
    values = pieces.values_of(studio(), moon())
    values |= {"outline": pieces.Outline.ROUND}
    assert pieces.with_values(studio(), moon(), values).piece("m").shape == Round(
        diameter_mm=400
    )
    values |= {"outline": pieces.Outline.OVAL, "width_mm": 150.0}
    assert pieces.with_values(studio(), moon(), values).piece("m").shape == Oval(
        length_mm=400, width_mm=150
    )
    values |= {"outline": pieces.Outline.MEASURED, "area_cm2": 300.0}
    shape = pieces.with_values(studio(), moon(), values).piece("m").shape
    assert pieces.outline_of(shape) is pieces.Outline.MEASURED


def test_a_footprint_has_both_sides_or_none() -> None:
    values = pieces.values_of(studio(), moon()) | {"footprint_mm": 500.0}
    with pytest.raises(InvalidEntry, match="both sides, or neither"):
        pieces.with_values(studio(), moon(), values)
    values |= {"footprint_width": 300.0}
    assert pieces.with_values(studio(), moon(), values).piece("m").footprint == (500.0, 300.0)


def test_a_piece_changes_its_order_unless_that_would_be_empty() -> None:
    values = pieces.values_of(studio(), studio().piece("h1")) | {"order": "33"}
    after = pieces.with_values(studio(), studio().piece("h1"), values)
    assert [order.pieces for order in after.orders[:2]] == [("h2",), ("c", "h1")]
    values = pieces.values_of(studio(), moon()) | {"order": None}
    with pytest.raises(InvalidEntry, match="would have no piece left"):
        pieces.with_values(studio(), moon(), values)


def test_pieces_are_found_by_all_words_wherever_they_stand() -> None:
    assert [p.key for p in pieces.found(studio(), "harbour seal")] == ["h1", "h2"]
    assert [p.key for p in pieces.found(studio(), "slate")] == ["c"]
    assert pieces.found(studio(), "") == studio().pieces


def test_copies_take_no_photos_and_several_go_at_once() -> None:
    with_one = photos.with_photo(studio(), "m", "k1", scenes.NOW, "wet")
    after, keys = pieces.copied(with_one, ["m", "c"])
    assert not after.piece(keys[0]).photos
    assert pieces.without_pieces(after, keys) == with_one


def test_an_order_goes_with_its_last_piece_and_no_sooner() -> None:
    assert not pieces.orders_going_with(studio(), ["h1"])
    going = pieces.orders_going_with(studio(), ["h1", "h2", "c"])
    assert [order.pieces for order in going] == [("h1", "h2"), ("c",)]
    after = pieces.without_pieces(studio(), ["h1", "h2", "c"])
    assert set(studio().orders) - set(after.orders) == set(going)


def test_a_photo_is_kept_once_reworded_and_removed() -> None:
    after = photos.with_photo(studio(), "m", "k1", scenes.NOW, "wet")
    with pytest.raises(InvalidEntry, match="kept with it already"):
        photos.with_photo(after, "m", "k1", scenes.NOW, "again")
    reworded = photos.with_words(after, "m", "k1", "hard")
    assert reworded.piece("m").photos[0].words == "hard"
    assert photos.without_photo(after, "m", "k1") == studio()


def test_recipes_are_those_of_other_pieces_each_once() -> None:
    blue = Colour(name="Blue", colourant="paste", colourant_pct=2.0)
    coat = laid(CoatKind.COLOUR, colours=(blue,))
    twins = [
        replace(moon(), key=key, name=key, stack=(replace(coat, key="colour"),))
        for key in ("a", "b")
    ]
    many = replace(studio(), pieces=(*studio().pieces, *twins))
    assert [(r.colour, r.piece) for r in recipes.recipes_before(many, "m")] == [(blue, "a")]
    assert [r.piece for r in recipes.recipes_before(many, "a")] == ["b"]


# Any sequence of edits


_EDITS = st.lists(
    st.tuples(
        st.sampled_from(["add", "copy", "remove", "move", "film", "pattern"]),
        st.integers(0, 5),
        st.sampled_from(list(CoatKind)),
        st.floats(0.0, 4.0),
    ),
    max_size=12,
)


def _edited(now: Studio, edit: tuple[str, int, CoatKind, float]) -> Studio:
    what, at, kind, film = edit
    stack = now.piece("m").stack
    coat = stack[at % len(stack)]
    if what == "pattern":
        own = pattern(*(replace(one, key=f"x{one.key}") for one in stack[: at + 1]))
        return patterns.put_on(now, own, ["m", "h1"])
    new = {
        "add": lambda: stacks.with_new(
            stack, at % len(stack), new_coat(now, kind, stack, at % len(stack))
        ),
        "copy": lambda: stacks.with_copy(stack, coat.key)[0],
        "remove": lambda: stacks.without_coat(stack, coat.key),
        "move": lambda: stacks.with_move(stack, coat.key, at % len(stack)),
        "film": lambda: stacks.with_coat(stack, replace(coat, film_mm=film)),
    }[what]()
    return stacks.with_stack(now, StackHolder("m"), new)


@given(_EDITS)
def test_any_edits_of_stacks_keep_the_studio_whole_and_are_all_undone(
    edits: list[tuple[str, int, CoatKind, float]],
) -> None:
    start = studio()
    now, history = start, History()
    for edit in edits:
        try:
            after = _edited(now, edit)
        except InvalidEntry:
            continue
        stack_faults(after, after.piece("m"))
        history.add(Step(edit[0], now, after))
        now = after
    while history.undoable is not None:
        now = history.undoable.before
        history.undo()
    assert now == start


def test_a_blank_of_another_material_is_entered() -> None:
    values = pieces.values_of(studio(), moon()) | {"material": Material.SLATE}
    assert pieces.with_values(studio(), moon(), values).piece("m").material is Material.SLATE
