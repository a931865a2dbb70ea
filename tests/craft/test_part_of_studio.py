"""A part of a studio is a studio: nothing in it speaks of what was left out."""

from __future__ import annotations

from studio_planner.craft.log import EntryKind
from studio_planner.craft.part_of_studio import part_of
from tests.storage.full_studio import full_studio


def test_a_part_has_its_pieces_and_what_bears_on_them() -> None:
    whole = full_studio()
    part = part_of(whole, {"p1"}, {"o1", "m1"})
    assert [piece.key for piece in part.pieces] == ["p1"]
    assert [(order.key, order.pieces) for order in part.orders] == [("o1", ("p1",))]
    assert [pour.batch for pour in part.poured] == [None]
    assert [(e.number, e.kind, e.corrects) for e in part.log] == [
        (3, EntryKind.POURED, None), (6, EntryKind.TOUCHED, None),
    ]  # fmt: skip
    assert part.pins == whole.pins
    assert part.plan is None
    assert len(part.lots) == len(part.mixes) == len(part.gone) == 0


def test_a_part_without_an_order_tells_nothing_of_it() -> None:
    part = part_of(full_studio(), {"p2"}, ())
    assert len(part.orders) == len(part.poured) == len(part.pins) == len(part.log) == 0
