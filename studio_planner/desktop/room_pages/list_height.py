"""How high a list is that stands among other things: as high as what is in it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.desktop.forms.noun_list import NounList


def list_height(nouns: NounList, most: int) -> int:
    """The pixels that the rows of a list take, up to `most` of them."""
    rows = min(nouns.list.count(), most)
    high = sum(nouns.list.sizeHintForRow(row) for row in range(rows))
    return high + 2 * nouns.list.frameWidth() + 2
