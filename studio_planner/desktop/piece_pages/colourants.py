"""What a cup can be coloured with: the studio's own pigments, a kind of colourant, or words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.forms.still_editors import StillChoice
from studio_planner.desktop.stock_pages.pigment_words import kind_name
from studio_planner.science.film_limits import Colourant
from studio_planner.services.colour_stuff import kind_called

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.pigments import Pigment

_WIDEST_LIST = 26
"""How many letters are always seen of what is listed."""


def colourant_words(colourant: str) -> str:
    """A colourant of a coat as it is read: a kind has a name, other words are as they are."""
    kind = kind_called(colourant)
    return colourant if kind is None else kind_name(kind)


class ColourantChoice(StillChoice):
    """The studio's pigments, then the kinds; or another one, typed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Offer the kinds only."""
        super().__init__(parent)
        self._pigments: Sequence[Pigment] = ()
        self.setEditable(True)
        self.setMinimumWidth(90)
        self.setMinimumContentsLength(1)
        self.setSizeAdjustPolicy(
            StillChoice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.view().setMinimumWidth(self.fontMetrics().averageCharWidth() * _WIDEST_LIST)
        self.offer(())

    def offer(self, pigments: Sequence[Pigment]) -> None:
        """Offer the studio's own pigments before the kinds; what is written stays."""
        if pigments == self._pigments and self.count():
            return
        self._pigments = pigments
        written = self.currentText()
        self.clear()
        self.addItem("")
        self.addItems([pigment.name for pigment in pigments])
        if pigments:
            self.insertSeparator(self.count())
        self.addItems([kind_name(kind) for kind in Colourant])
        self.setCurrentText(written)

    @property
    def colourant(self) -> str:
        """What is chosen or written, as a coat keeps it."""
        written = self.currentText().strip()
        kinds = {kind_name(kind).casefold(): str(kind) for kind in Colourant}
        return kinds.get(written.casefold(), written)

    def show_colourant(self, colourant: str) -> None:
        """Show what a coat keeps."""
        self.setCurrentText(colourant_words(colourant))
