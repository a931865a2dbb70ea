"""The blank as the maker enters it: outline, sizes, material, rim, and room on the shelf."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.pieces import Material
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import ChoiceField, NoteField, NumberField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.same_names import same_name_words
from studio_planner.desktop.piece_pages.cost_fold import PieceCostFold
from studio_planner.desktop.piece_pages.footprint_view import FootprintView
from studio_planner.desktop.piece_pages.kind_words import material_word, outline_word
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.pieces import Outline, values_of, with_values

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges

_SIZES = {
    Outline.RECTANGLE: {"length_mm", "width_mm"},
    Outline.ROUND: {"diameter_mm"},
    Outline.OVAL: {"length_mm", "width_mm"},
    Outline.MEASURED: {"length_mm", "width_mm", "area_cm2", "perimeter_mm"},
}
"""The sizes that each outline has."""

_COLUMN = 250


class BlankForm(QWidget):
    """One blank; each field that is edited becomes one change."""

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no piece yet."""
        super().__init__(parent)
        self._changes = changes
        self._piece: Piece | None = None
        self._studio: Studio | None = None
        self.form = Form(canvas, self._enter, self)
        self.footprint = FootprintView(canvas, self)
        self.room = Line(canvas, "", self, font="small", colour="quiet")
        self.cost = PieceCostFold(canvas, self)
        columns = QHBoxLayout()
        columns.setSpacing(28)
        self._left, self._right, self._above = QVBoxLayout(), QVBoxLayout(), QVBoxLayout()
        self._add_blank(canvas)
        self._add_room(canvas)
        self._above.addWidget(self.footprint)
        self._above.addWidget(self.room)
        for column in (self._left, self._right, self._above):
            column.setSpacing(4)
            column.addStretch(1)
            columns.addLayout(column)
        columns.setStretch(2, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(columns)
        layout.addWidget(self.form)
        layout.addWidget(self.cost)
        layout.addStretch(1)

    def _number(
        self, canvas: Canvas, label: str, quantity: Quantity, *, optional: bool = False
    ) -> NumberField:
        field = NumberField(canvas, label, quantity, optional=optional)
        field.setMinimumWidth(_COLUMN)
        return field

    def _add_blank(self, canvas: Canvas) -> None:
        def add(name: str, field: Any) -> None:  # noqa: ANN401 - any field
            self.form.add(name, field, into=self._left)

        name = TextField(canvas, translate("pieces", "Piece, or set"))
        name.setMinimumWidth(_COLUMN)
        add("name", name)
        add(
            "count",
            self._number(canvas, translate("pieces", "How many in the set"), Quantity.COUNT),
        )
        outlines = [(outline, outline_word(outline)) for outline in Outline]
        add("outline", ChoiceField(canvas, translate("pieces", "Outline"), outlines))
        length = Quantity.LENGTH
        add("length_mm", self._number(canvas, translate("pieces", "Length"), length))
        add("width_mm", self._number(canvas, translate("pieces", "Width"), length))
        add("diameter_mm", self._number(canvas, translate("pieces", "Diameter"), length))
        add(
            "area_cm2",
            self._number(canvas, translate("pieces", "Measured area"), Quantity.AREA),
        )
        edge = translate("pieces", "Measured length of the edge")
        add("perimeter_mm", self._number(canvas, edge, length))
        materials = [(one, material_word(one)) for one in Material]
        add("material", ChoiceField(canvas, translate("pieces", "Bare material"), materials))
        add("body_mm", self._number(canvas, translate("pieces", "Thickness"), length))
        rim = translate("pieces", "Rim that holds a flood, 0 for none")
        add("rim_mm", self._number(canvas, rim, length))

    def _add_room(self, canvas: Canvas) -> None:
        def add(name: str, field: Any) -> None:  # noqa: ANN401 - any field
            self.form.add(name, field, into=self._right)

        length = Quantity.LENGTH
        self.order = ChoiceField(canvas, translate("pieces", "Belongs to the order"))
        self.order.setMinimumWidth(_COLUMN)
        add("order", self.order)
        add(
            "clearance_mm",
            self._number(canvas, translate("pieces", "Clearance for drips"), length),
        )
        own = translate("pieces", "Own footprint, length; empty: from the outline")
        add("footprint_mm", self._number(canvas, own, length, optional=True))
        add(
            "footprint_width",
            self._number(
                canvas, translate("pieces", "Own footprint, width"), length, optional=True
            ),
        )
        cover = translate("pieces", "Height with its dust cover on")
        add("cover_mm", self._number(canvas, cover, length))
        self.price = NumberField(canvas, "")
        self.price.setMinimumWidth(_COLUMN)
        add("blank_price", self.price)
        add("note", NoteField(canvas, translate("pieces", "Note")))

    def show_piece(self, studio: Studio, piece: Piece) -> None:
        """Show a blank of a studio."""
        fresh = self._piece is None or self._piece.key != piece.key
        self._piece, self._studio = piece, studio
        none = translate("pieces", "no order")
        self.order.offer([(None, none), *((one.key, one.name) for one in studio.orders)])
        self.price.rename(
            translate("pieces", "What one blank cost, {currency}").format(
                currency=studio.currency
            )
        )
        self.cost.show_piece(studio, piece)
        values = values_of(studio, piece)
        self.form.show_values(values, studio.units, fresh=fresh)
        self.form.fields["name"].advise(same_name_words(piece, studio.pieces))
        self._offer_sizes(values["outline"])
        length, width = piece.footprint
        self.footprint.show_piece(piece)
        said = translate("pieces", "Takes {length} by {width} on its spot, {high} high.")
        self.room.say(
            said.format(
                length=words.length(length, studio.units),
                width=words.length(width, studio.units),
                high=words.length(piece.cover_mm, studio.units),
            )
        )

    def _offer_sizes(self, outline: Outline) -> None:
        for name in set().union(*_SIZES.values()):
            self.form.fields[name].setVisible(name in _SIZES[outline])

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        piece = self._piece
        if piece is None:
            return
        if name == "outline":
            self._offer_sizes(values["outline"])
        label = self.form.fields[name].words
        self._changes.make(
            Change(f"{piece.name}, {label}", lambda studio: with_values(studio, piece, values))
        )
