"""An order as the maker enters it: pieces, promise, how far cured, how it goes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.orders import ContactClaim, Gate, Promise
from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.forms.days_field import DaysField
from studio_planner.desktop.forms.fields import ChoiceField, NoteField, NumberField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.same_names import same_name_words
from studio_planner.desktop.forms.time_fields import DateField, TimeField
from studio_planner.desktop.order_pages.answer_words import gate_word, promise_kind_word
from studio_planner.desktop.order_pages.order_fields import PiecesField
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.orders import free_pieces, order_with, values_of

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges


class OrderForm(QWidget):
    """One order; each field that is edited becomes one change."""

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no order yet."""
        super().__init__(parent)
        self._changes = changes
        self._order: Order | None = None
        self.form = Form(canvas, self._enter, self)
        self._add_fields(canvas)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.form)
        layout.addStretch(1)

    def _add_fields(self, canvas: Canvas) -> None:
        add = self.form.add
        add("name", TextField(canvas, translate("orders", "Order, or market")))
        self._pieces = PiecesField(canvas, translate("orders", "Pieces"))
        add("pieces", self._pieces)
        promises = [(kind, promise_kind_word(kind)) for kind in Promise]
        add("promise", ChoiceField(canvas, translate("orders", "Promised to"), promises))
        add("promised", DateField(canvas, translate("orders", "Date")))
        add("opens", TimeField(canvas, translate("orders", "The market opens")))
        gates = [(gate, gate_word(gate)) for gate in Gate]
        add("gate", ChoiceField(canvas, translate("orders", "May go once it may"), gates))
        add("days", DaysField(canvas, translate("orders", "Days on which parcels go")))
        add("cut_off", TimeField(canvas, translate("orders", "Last pick-up of the day")))
        add(
            "transit_days",
            NumberField(canvas, translate("orders", "Days under way"), Quantity.COUNT),
        )
        add(
            "packing_minutes",
            NumberField(canvas, translate("orders", "Packing each piece"), Quantity.MINUTES),
        )
        add(
            "weight",
            NumberField(canvas, translate("orders", "How much being late counts (1 is usual)")),
        )
        contacts = [(contact, capital(kind_word(contact))) for contact in ContactClaim]
        add("contact", ChoiceField(canvas, translate("orders", "Food"), contacts))
        add("note", NoteField(canvas, translate("orders", "Note")))

    def show_order(self, studio: Studio, order: Order, today: date) -> None:
        """Show an order of a studio as it is `today` (its own date)."""
        fresh = self._order is None or self._order.key != order.key
        self._order = order
        self._pieces.offer(
            [(p.key, words.piece_name(p)) for p in free_pieces(studio, order.key)]
        )
        self._pieces.show_value(order.pieces)
        self.form.show_values(values_of(order), studio.units, fresh=fresh)
        self.form.fields["name"].advise(same_name_words(order, studio.orders))
        past = translate("orders", "This day is past already.")
        self.form.fields["promised"].advise(past if order.promised < today else "")
        market = order.promise is Promise.MARKET
        self.form.fields["opens"].setVisible(market)
        for name in ("days", "cut_off", "transit_days"):
            self.form.fields[name].setVisible(not market)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        order = self._order
        if order is None:
            return
        new = order_with(order, values)
        label = self.form.fields[name].words
        self._changes.make(
            Change(f"{order.name}, {label}", lambda studio: with_thing(studio, new))
        )
