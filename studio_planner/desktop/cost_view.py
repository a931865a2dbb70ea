"""What something costs as a table, kind by kind, with what there is to say of it beneath."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from studio_planner.desktop.layouts import empty
from studio_planner.desktop.studio_pages.lines import Line, Rule
from studio_planner.desktop.tongue import translate
from studio_planner.services.amount_words import minutes_said, money_said
from studio_planner.services.costs.cost_sums import cents_by_kind, minutes_by_kind
from studio_planner.services.costs.cost_words import cost_word, hands_word

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.costs.piece_cost import PieceCost


class CostView(QWidget):
    """A line for each kind of cost and their sum; then sentences, those to mind marked."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(1)
        self._grid.setColumnStretch(1, 1)
        self._sentences = QVBoxLayout()
        self._sentences.setSpacing(3)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addLayout(self._grid)
        layout.addLayout(self._sentences)

    def show_cost(
        self,
        studio: Studio,
        pieces: Sequence[PieceCost],
        sentences: Iterable[str],
        warnings: Iterable[str],
    ) -> None:
        """Show what pieces cost together, then `sentences`, then `warnings`."""
        empty(self._grid)
        empty(self._sentences)
        for kind, amount in cents_by_kind(pieces).items():
            self._add_row(money_said(amount, studio.currency), cost_word(kind))
        row = self._grid.rowCount()
        self._grid.addWidget(Rule(self._canvas, self), row, 0, 1, 2)
        total = sum(one.total for one in pieces)
        self._add_row(
            money_said(total, studio.currency), translate("costs", "in all"), font="bold"
        )
        for sentence in (attended_said(pieces), *sentences):
            self._sentences.addWidget(Line(self._canvas, sentence, self))
        for warning in warnings:
            said = f"\N{BLACK RIGHT-POINTING TRIANGLE} {warning}"
            self._sentences.addWidget(Line(self._canvas, said, self, colour="now"))

    def _add_row(self, amount: str, about: str, *, font: str = "plain") -> None:
        row = self._grid.rowCount()
        shown = Line(self._canvas, amount, self, font=font)
        shown.setWordWrap(False)
        self._grid.addWidget(shown, row, 0, Qt.AlignmentFlag.AlignRight)
        self._grid.addWidget(Line(self._canvas, about, self, font=font), row, 1)


def attended_said(pieces: Sequence[PieceCost]) -> str:
    """The attended minutes, in all and by what they are spent on."""
    minutes = minutes_by_kind(pieces)
    spent = ", ".join(
        translate("costs", "{what} {minutes}").format(
            what=hands_word(kind), minutes=minutes_said(amount)
        )
        for kind, amount in minutes.items()
    )
    if not spent:
        return translate("costs", "No attended time.")
    return translate("costs", "{minutes} min of attended time: {spent}.").format(
        minutes=minutes_said(sum(minutes.values())), spent=spent
    )
