"""The bottles of the studio: the list, and of the chosen one what is in it and its entry."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QMenu, QVBoxLayout
from typing_extensions import override

from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.layouts import empty
from studio_planner.desktop.list_beside import ListBeside
from studio_planner.desktop.page import Page
from studio_planner.desktop.stock_pages.bottle_drawing import filled
from studio_planner.desktop.stock_pages.bottle_form import BottleForm
from studio_planner.desktop.stock_pages.bottle_row import BottleRow
from studio_planner.desktop.stock_pages.count_panel import CountPanel
from studio_planner.desktop.stock_pages.stock_said import (
    bottle_facts,
    bottle_head,
    bottle_in_list,
    bottle_warnings,
    described,
    letter_of,
)
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.bottles import (
    another_bottle,
    moved_bottle,
    new_bottle,
    parts_in_bottles,
    with_bottle,
    without_bottle,
)
from studio_planner.services.editing.changes import Change
from studio_planner.services.stocks.stock_view import stock_of
from studio_planner.services.stocks.stock_words import stuff_said

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.stock import LotPart
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.stocks.stock_view import LotRow, Stock

_ROOM_FOR_ARROW, _HIGH, _WIDEST = 14, 170, 720
_WIDE = 880
"""From this width on the list stands beside its bottle, else above it."""

_ROOM_FOR_PICTURE = 640
"""From this width on the bottle stands beside its figures."""


class BottlesSection(Page):
    """Bottles at the left; of the chosen one drawing, figures, counting and form."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._stock: Stock | None = None
        self.bottles = NounList(
            self.canvas,
            translate("stock", "Bottles"),
            translate("stock", "No bottle yet. Add one for each part of what is on the shelf."),
            self,
        )
        self._menu = QMenu(self)
        self._inside = QFrame(self)
        self._name = Line(self.canvas, "", self._inside, font="title")
        self.picture = BottleRow(self.canvas, _HIGH, self._inside)
        self._facts = QGridLayout()
        self._warnings = QVBoxLayout()
        self.counting = CountPanel(desk, self._inside)
        self.form = BottleForm(self.canvas, desk.changes, self._inside)
        self._lay_out()
        self.bottles.chosen.connect(lambda _key: self._show_chosen())
        self.bottles.copy_asked.connect(self._copy)
        self.bottles.remove_asked.connect(self._remove)
        self.bottles.move_asked.connect(self._move)

    def _lay_out(self) -> None:
        button = self.bottles.add_button
        button.setMenu(self._menu)
        button.setMinimumWidth(button.sizeHint().width() + _ROOM_FOR_ARROW)
        self._inside.setMaximumWidth(_WIDEST)
        self._facts.setHorizontalSpacing(12)
        self._facts.setVerticalSpacing(2)
        self._facts.setColumnStretch(1, 1)
        beside = QVBoxLayout()
        beside.addLayout(self._facts)
        beside.addLayout(self._warnings)
        beside.addStretch(1)
        top = QHBoxLayout()
        top.setSpacing(22)
        top.addWidget(self.picture, 0, Qt.AlignmentFlag.AlignTop)
        top.addLayout(beside, 1)
        whole = QVBoxLayout(self._inside)
        whole.setContentsMargins(0, 0, 16, 0)
        whole.setSpacing(12)
        whole.addWidget(self._name)
        whole.addLayout(top)
        whole.addWidget(self.counting)
        whole.addWidget(self.form)
        whole.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(ListBeside(self.bottles, self._inside, _WIDE, self))

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self._stock = None if view is None else stock_of(view.studio, view.plan, view.now)
        lots = () if self._stock is None else self._stock.lots
        studio = None if view is None else view.studio
        self.bottles.show_things(
            [bottle_in_list(studio, row) for row in lots if studio is not None]
        )
        self._offer(studio)
        self._show_chosen()

    def _offer(self, studio: Studio | None) -> None:
        """What a new bottle may hold."""
        self._menu.clear()
        stuffs = () if studio is None else parts_in_bottles(studio)
        for product, part in stuffs:
            if studio is not None:
                action = self._menu.addAction(stuff_said(studio, product, part))
                action.triggered.connect(partial(self._add_chosen, product, part))
        self.bottles.add_button.setEnabled(bool(stuffs))

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        self.picture.setVisible(self._row is not None and self.width() >= _ROOM_FOR_PICTURE)

    @property
    @override
    def chosen(self) -> str:
        return self.bottles.current_key

    @override
    def choose(self, key: str) -> None:
        self.bottles.choose(key)

    @property
    def _row(self) -> LotRow | None:
        lots = () if self._stock is None else self._stock.lots
        key = self.bottles.current_key
        return next((row for row in lots if row.lot.key == key), None)

    def _show_chosen(self) -> None:
        view, stock, row = self._view, self._stock, self._row
        for part in (self.counting, self.form):
            part.setVisible(row is not None)
        self._fit()
        empty(self._facts)
        empty(self._warnings)
        if view is None or stock is None:
            self._name.say(translate("stock", "Open a studio first."))
        elif row is None:
            self._name.say(self._hint(view.studio))
        else:
            self._show_bottle(view, stock, row)

    @staticmethod
    def _hint(studio: Studio) -> str:
        if not parts_in_bottles(studio):
            return translate("stock", "A bottle holds a product; add one under Products first.")
        return translate("stock", "Add a bottle to see how long it lasts.")

    def _show_bottle(self, view: DeskView, stock: Stock, row: LotRow) -> None:
        studio = view.studio
        today = view.now.astimezone(studio.time_zone).date()
        self._name.say(bottle_head(studio, row))
        self.picture.setAccessibleName(row.lot.label)
        self.picture.show_bottles(
            [filled(row, letter_of(row.lot.part))], described(studio, row)
        )
        for line, (figure, about) in enumerate(bottle_facts(studio, stock, row)):
            shown = Line(self.canvas, figure, self._inside, font="bold")
            shown.setWordWrap(False)
            self._facts.addWidget(shown, line, 0, Qt.AlignmentFlag.AlignRight)
            self._facts.addWidget(Line(self.canvas, about, self._inside), line, 1)
        for sentence in bottle_warnings(studio, stock, row, today):
            said = f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}"
            self._warnings.addWidget(Line(self.canvas, said, self._inside, colour="now"))
        self.counting.show_bottle(studio, row.lot)
        self.form.show_bottle(studio, row.lot, today)

    # Verbs

    def _add_chosen(self, product: str, part: LotPart, _checked: bool = False) -> None:  # noqa: FBT001, FBT002 - Qt's own signal
        self.add(product, part)

    def add(self, product: str, part: LotPart) -> None:
        """Add a full bottle of a product's part, ready to be labelled."""
        today = self.desk.clock.now()
        label = translate("stock", "New bottle")

        def make(studio: Studio) -> Studio:
            day = today.astimezone(studio.time_zone).date()
            return with_bottle(studio, new_bottle(studio, (product, part), label, day))

        if self._attempt(translate("stock", "Add a bottle"), make):
            self._choose_last()
            self.form.form.fields["label"].take_up()

    def _copy(self) -> None:
        row = self._row
        if row is not None:
            words = translate("stock", "Copy {name}").format(name=row.lot.label)
            if self._attempt(
                words, lambda studio: with_bottle(studio, another_bottle(studio, row.lot))
            ):
                self._choose_last()

    def _remove(self) -> None:
        row = self._row
        if row is not None:
            words = translate("stock", "Remove {name}").format(name=row.lot.label)
            self._attempt(words, lambda studio: without_bottle(studio, row.lot.key))

    def _move(self, key: str, to: int) -> None:
        words = translate("stock", "Move a bottle")
        self._attempt(words, lambda studio: moved_bottle(studio, key, to))

    def _attempt(self, words: str, make: Callable[[Studio], Studio]) -> bool:
        return self.desk.changes.attempt(Change(words, make))

    def _choose_last(self) -> None:
        if self.desk.session is not None:
            self.bottles.choose(self.desk.session.studio.lots[-1].key)
