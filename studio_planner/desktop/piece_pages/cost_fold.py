"""What a piece costs, folded away until the maker asks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.cost_view import CostView
from studio_planner.desktop.forms.fold import Fold
from studio_planner.desktop.tongue import translate
from studio_planner.services.amount_words import money_said
from studio_planner.services.costs.cost_words import missing_said
from studio_planner.services.costs.order_cost import price_for
from studio_planner.services.costs.piece_cost import piece_cost

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas


class PieceCostFold(QWidget):
    """A verb, and under it the cost of one piece or set by kind, and its price."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Be folded, and about no piece yet."""
        super().__init__(parent)
        self._shown: tuple[Studio, Piece] | None = None
        self.view = CostView(canvas, self)
        inside = QVBoxLayout()
        inside.addWidget(self.view)
        self.fold = Fold(translate("costs", "What it costs"), inside, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.fold)
        # Costs are worked out once somebody wants to see them.
        self.fold.button.toggled.connect(lambda _opened: self._show())

    def show_piece(self, studio: Studio, piece: Piece) -> None:
        """Be about a piece of a studio."""
        self._shown = (studio, piece)
        self._show()

    def _show(self) -> None:
        if self._shown is None or not self.fold.button.isChecked():
            return
        studio, piece = self._shown
        cost = piece_cost(studio, studio.plan, piece)
        price = price_for(studio.prices, cost.total)
        said = translate(
            "costs",
            "Floor price {floor}; by your rule {asked} for the piece, or for the whole set.",
        ).format(
            floor=money_said(price.floor, studio.currency),
            asked=money_said(price.asked, studio.currency),
        )
        self.view.show_cost(studio, (cost,), (said,), missing_said(studio, cost.missing))
