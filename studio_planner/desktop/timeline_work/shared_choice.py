"""One choice for all panes: the piece of the timeline goes along to the pages, and back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.page_keys import LOG, ORDERS, PIECES

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import Page
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline


class SharedChoice:
    """Carries the chosen piece from page to page.

    On the page of orders it is the piece's order; an order that is chosen there gives its first
    piece, unless the piece of before is one of it.
    """

    def __init__(self, timeline: WorkingTimeline) -> None:
        """Begin with what is chosen on `timeline`."""
        self._timeline = timeline

    def leave(self, key: str, page: Page, studio: Studio) -> None:
        """Choose on the timeline what is chosen on a page that is left."""
        piece = self.piece
        if key == PIECES:
            piece = page.chosen
        elif key == ORDERS:
            piece = _piece_of(studio, page.chosen, piece)
        if piece and piece != self.piece:
            self._timeline.choose_piece(piece)

    def thing_for(self, key: str, studio: Studio) -> str:
        """What is to be chosen on a page that is gone to; empty where nothing is."""
        if key in {PIECES, LOG}:
            return self.piece
        order = studio.order_of(self.piece) if key == ORDERS else None
        return "" if order is None else order.key

    @property
    def piece(self) -> str:
        """The key of the piece that is chosen on the timeline; empty where none is."""
        bar = self._timeline.lanes.bar(self._timeline.currentIndex())
        return "" if bar is None else bar.lane.piece.key


def _piece_of(studio: Studio, key: str, before: str) -> str:
    """A piece of the order of that key: the one of before if it is one."""
    order = next((order for order in studio.orders if order.key == key), None)
    if order is None:
        return before
    return before if before in order.pieces else order.pieces[0]
