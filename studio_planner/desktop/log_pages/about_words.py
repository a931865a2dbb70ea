"""What follows from an entry that is about to be written, said over its fields."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio


def what_follows(studio: Studio, piece: str, kind: EntryKind) -> str:
    """What it means for a piece, or for its order, that this happened; mostly nothing."""
    order = studio.order_of(piece) if kind is EntryKind.SHIPPED else None
    if order is not None:
        text = translate("happened", "{order} leaves with all of its pieces.")
        return text.format(order=order.name)
    if kind is EntryKind.STRIPPED:
        return translate("happened", "It is a bare blank again and is planned from there.")
    if kind is EntryKind.SPOILED:
        return translate("happened", "Nothing more is planned for it until it is stripped.")
    return ""
