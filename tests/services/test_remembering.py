"""What is taken out of a studio stays in the log under its name, and its key stays its own."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, Gone, GoneKind, LogEntry
from studio_planner.craft.mixes import MixedFor, WeighedMix
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Piece
from studio_planner.craft.products import Product
from studio_planner.services.editing.nouns import copy_of, key_for, with_thing, without_thing
from tests.storage.full_studio import NOON, full_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

MOON = Gone(kind=GoneKind.PIECE, key="p1", name="Moon tray", order="o1")


def told() -> Studio:
    """The full studio without its plan, whose log speaks of Moon tray and of no other piece."""
    bare = replace(full_studio(), plan=None, gone=(), mixes=(), poured=(), log=(), pins=())
    packed = LogEntry(number=1, kind=EntryKind.PACKED, at=NOON, written=NOON, piece="p1")
    return replace(bare, log=(packed,))


def test_a_piece_that_the_log_speaks_of_is_remembered_with_its_order() -> None:
    after = without_thing(told(), Piece, "p1")
    assert after.gone == (MOON,)
    assert after.log == told().log
    assert [order.pieces for order in after.orders if order.key == "o1"] == [("p3",)]


def test_a_piece_that_nothing_was_written_of_leaves_no_memory() -> None:
    after = without_thing(told(), Piece, "p3")
    assert after.gone == ()


def test_an_order_that_goes_with_its_last_piece_is_remembered_too() -> None:
    after = without_thing(without_thing(told(), Piece, "p3"), Piece, "p1")
    assert after.gone == (MOON, Gone(kind=GoneKind.ORDER, key="o1", name="Ines"))


def test_an_order_is_remembered_for_its_pieces() -> None:
    after = without_thing(told(), Order, "o1")
    assert after.gone == (Gone(kind=GoneKind.ORDER, key="o1", name="Ines"),)
    assert without_thing(told(), Order, "m1").gone == ()
    later = without_thing(without_thing(told(), Piece, "p1"), Order, "o1")
    assert [one.key for one in later.gone] == ["p1", "o1"]


def test_a_product_that_was_weighed_is_remembered() -> None:
    weighed = LogEntry(number=2, kind=EntryKind.WEIGHED, at=NOON, written=NOON, batch=3)
    mix = WeighedMix(
        entry=2, batch=3, product="spare", at=NOON, a_grams=9.0,
        coats=(MixedFor(piece="p2", coat="x"),),
    )  # fmt: skip
    studio = told()
    spare = replace(studio.product("clear"), key="spare", name="Spare", taught=())
    studio = with_thing(studio, spare)
    studio = replace(studio, log=(*studio.log, weighed), mixes=(mix,))
    after = without_thing(studio, Product, "spare")
    assert after.gone == (Gone(kind=GoneKind.PRODUCT, key="spare", name="Spare"),)
    assert without_thing(after, Piece, "p2").gone[-2].key == "p2"


def test_a_key_is_not_given_again_to_another_thing() -> None:
    tray = replace(told().piece("p1"), key="moon-tray")
    studio = with_thing(told(), tray)
    spoken = LogEntry(number=2, kind=EntryKind.PACKED, at=NOON, written=NOON, piece="moon-tray")
    studio = replace(studio, log=(*studio.log, spoken))
    after = without_thing(studio, Piece, "moon-tray")
    assert key_for(after, Piece, "Moon tray") == "moon-tray-2"
    assert copy_of(after, replace(tray, name="Moon tray")).key == "moon-tray-2"
    assert key_for(after, Order, "Moon tray") == "moon-tray"
