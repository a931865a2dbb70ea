"""The pigments: the list, and of the chosen one its entry, its stock and what is usual."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QVBoxLayout
from typing_extensions import override

from studio_planner.craft.stock import LotPart
from studio_planner.desktop.forms.fields import ChoiceField, NoteField, NumberField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.list_beside import ListBeside
from studio_planner.desktop.page import Page
from studio_planner.desktop.stock_pages.part_row import PartRow
from studio_planner.desktop.stock_pages.pigment_words import kind_name, usual_line
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import counted, translate
from studio_planner.science.film_limits import Colourant
from studio_planner.services.editing.bottles import (
    added_pigment,
    coats_with,
    copied_pigment,
    moved_pigment,
    pigment_with,
    removed_pigment,
    renamed_in,
    with_changed_pigment,
)
from studio_planner.services.editing.changes import Change
from studio_planner.services.stocks.stock_view import stock_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.pigments import Pigment
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_WIDEST = 560
_WIDE = 680
"""From this width on the list stands beside its pigment, else above it."""

_FIELDS = ("name", "kind", "density", "diameter_um", "price_per_100g", "note")


class PigmentsSection(Page):
    """Pigments at the left, the chosen one at the right.

    Signals:
        bottle_asked: the key of a bottle that the maker wants to see.
        new_asked: (pigment, part) of which a bottle is to be entered.
    """

    bottle_asked = Signal(str)
    new_asked = Signal(str, object)

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._shown = ""
        self.pigments = NounList(
            self.canvas,
            translate("pigments", "Pigments"),
            translate("pigments", "No pigment yet. Add the pots that your colours come from."),
            self,
        )
        self._inside = QFrame(self)
        self._name = Line(self.canvas, "", self._inside, font="title")
        self.form = Form(self.canvas, self._enter, self._inside)
        self.usual = Line(self.canvas, "", self._inside, font="small", colour="quiet")
        self.used = Line(self.canvas, "", self._inside)
        self.stock = PartRow(self.canvas, self._inside)
        self.enter = verb(
            translate("pigments", "Count it: enter a bottle"), self._ask_bottle, self
        )
        self._lay_out()
        self.stock.bottle_asked.connect(self.bottle_asked)
        self.stock.new_asked.connect(self.new_asked)
        self.pigments.chosen.connect(lambda _key: self._show_chosen())
        self.pigments.add_asked.connect(self.add)
        self.pigments.copy_asked.connect(self._copy)
        self.pigments.remove_asked.connect(self._remove)
        self.pigments.move_asked.connect(self._move)

    def _lay_out(self) -> None:
        canvas, add = self.canvas, self.form.add
        add("name", TextField(canvas, translate("pigments", "Name, as your colours call it")))
        kinds = [(kind, kind_name(kind)) for kind in Colourant]
        add("kind", ChoiceField(canvas, translate("pigments", "Kind"), kinds))
        numbers = (
            ("density", translate("pigments", "Density in g/cm³, where it is known")),
            (
                "diameter_um",
                translate("pigments", "Grain or flake in micrometres, where it is known"),
            ),
        )
        for name, label in numbers:
            add(name, NumberField(canvas, label, optional=True))
        self._price = NumberField(canvas, "")
        add("price_per_100g", self._price)
        add("note", NoteField(canvas, translate("pigments", "Note")))
        self._inside.setMaximumWidth(_WIDEST)
        whole = QVBoxLayout(self._inside)
        whole.setContentsMargins(0, 0, 16, 0)
        whole.setSpacing(8)
        for widget in (self._name, self.used, self.stock):
            whole.addWidget(widget)
        whole.addWidget(self.enter, 0, Qt.AlignmentFlag.AlignLeft)
        whole.addWidget(self.form)
        whole.addWidget(self.usual)
        whole.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(ListBeside(self.pigments, self._inside, _WIDE, self))

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        pigments = () if view is None else view.studio.pigments
        self.pigments.show_things(
            [(one.key, one.name, kind_name(one.kind)) for one in pigments]
        )
        self.pigments.add_button.setEnabled(view is not None)
        self._show_chosen()

    @property
    @override
    def chosen(self) -> str:
        return self.pigments.current_key

    @override
    def choose(self, key: str) -> None:
        self.pigments.choose(key)

    @property
    def _pigment(self) -> Pigment | None:
        pigments = () if self._view is None else self._view.studio.pigments
        key = self.pigments.current_key
        return next((one for one in pigments if one.key == key), None)

    def _show_chosen(self) -> None:
        view, pigment = self._view, self._pigment
        self.form.setVisible(pigment is not None)
        self._show_stock()
        if view is None or pigment is None:
            self.used.say("")
            self.usual.say("")
            self._name.say(
                translate("pigments", "Open a studio first.")
                if view is None
                else translate("pigments", "Add a pigment for costs, and for how it sinks.")
            )
            return
        self._name.say(pigment.name)
        names = ", ".join(coats_with(view.studio, pigment))
        self.used.say(
            translate("pigments", "In colours of {pieces}.").format(pieces=names)
            if names
            else translate("pigments", "No colour of a coat is called so.")
        )
        self.usual.say(usual_line(pigment.kind))
        self._price.rename(
            translate("pigments", "Price of 100 g, {currency}").format(
                currency=view.studio.currency
            )
        )
        fresh, self._shown = pigment.key != self._shown, pigment.key
        values = {name: getattr(pigment, name) for name in _FIELDS}
        self.form.show_values(values, view.studio.units, fresh=fresh)

    def _show_stock(self) -> None:
        """What is there of the chosen pigment; who counts none is offered to begin."""
        view, pigment = self._view, self._pigment
        stock = None if view is None else stock_of(view.studio, view.plan, view.now)
        wanted = None if pigment is None else (pigment.key, LotPart.COLOURANT)
        rows = () if stock is None else stock.rows
        row = next((one for one in rows if (one.product, one.part) == wanted), None)
        self.stock.setVisible(row is not None)
        self.enter.setVisible(pigment is not None and row is None)
        if view is not None and stock is not None and row is not None:
            self.stock.show_row(view, stock, row, 1)
            self.stock.steps.hide()
            self.stock.name.hide()

    def _ask_bottle(self) -> None:
        self.new_asked.emit(self.pigments.current_key, LotPart.COLOURANT)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        view, pigment = self._view, self._pigment
        if view is None or pigment is None:
            return
        new = pigment_with(pigment, values)
        words = f"{pigment.name}, {self.form.fields[name].words}"
        coats = renamed_in(view.studio, pigment, new)
        self.desk.changes.make(Change(words, lambda now: with_changed_pigment(now, new)))
        if coats:
            self.desk.tell(
                counted(
                    coats,
                    translate("pigments", "{count} coat has the new name, too."),
                    translate("pigments", "{count} coats have the new name, too."),
                )
            )

    # Verbs

    def add(self) -> None:
        """Add a pigment, ready to be named."""
        if self.desk.changes.attempt(added_pigment(translate("pigments", "New pigment"))):
            self._choose_last()
            self.form.fields["name"].take_up()

    def _copy(self) -> None:
        pigment = self._pigment
        if pigment is not None and self.desk.changes.attempt(copied_pigment(pigment)):
            self._choose_last()

    def _remove(self) -> None:
        pigment = self._pigment
        if pigment is not None:
            self.desk.changes.attempt(removed_pigment(pigment))

    def _move(self, key: str, to: int) -> None:
        words = translate("pigments", "Move a pigment")
        self.desk.changes.attempt(Change(words, lambda now: moved_pigment(now, key, to)))

    def _choose_last(self) -> None:
        if self.desk.session is not None:
            self.pigments.choose(self.desk.session.studio.pigments[-1].key)
