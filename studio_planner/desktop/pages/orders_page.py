"""The page of orders: what was promised, what can be said to the customer, and the order."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.orders import Order
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.order_pages.answer_view import AnswerView
from studio_planner.desktop.order_pages.answer_words import list_line
from studio_planner.desktop.order_pages.cost_fold import OrderCostFold
from studio_planner.desktop.order_pages.order_form import OrderForm
from studio_planner.desktop.page import Page
from studio_planner.desktop.page_keys import PLAN
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import (
    copy_of,
    moved_thing,
    with_thing,
    without_thing,
)
from studio_planner.services.editing.orders import new_order
from studio_planner.services.order_answers import answer_for

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_LIST_WIDTH = 270
_FORM_WIDTH = 340
_WIDE = 960
"""From this width on the order stands beside its answer, else below it."""


class OrdersPage(Page):
    """Orders at the left; of the chosen one the answer, and beside it the order itself."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._shown: list[str] = []
        self.orders = NounList(
            self.canvas,
            translate("orders", "Orders"),
            translate("orders", "No order yet. Add one to see when it can leave."),
            self,
        )
        self.answer = AnswerView(self.canvas, self)
        self.cost = OrderCostFold(self.canvas, desk.changes, self)
        self.form = OrderForm(self.canvas, desk.changes, self)
        self._name = QLabel(self)
        self._inside = QWidget(self)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self.orders.chosen.connect(lambda _key: self._show_chosen())
        self.orders.add_asked.connect(self.add)
        self.orders.copy_asked.connect(self._copy)
        self.orders.remove_asked.connect(self._remove)
        self.orders.move_asked.connect(self._move)
        self.answer.piece_asked.connect(lambda key: desk.go_to(PLAN, key))
        self._show_chosen()

    def _lay_out(self) -> None:
        self._name.setFont(self.canvas.fonts.title)
        self._name.setWordWrap(True)
        self._name.setTextFormat(Qt.TextFormat.PlainText)
        self.orders.setFixedWidth(_LIST_WIDTH)
        self.form.setMinimumWidth(260)
        self._columns.setSpacing(28)
        answer = QVBoxLayout()
        answer.addWidget(self.answer)
        answer.addWidget(self.cost)
        answer.addStretch(1)
        self._columns.addLayout(answer, 1)
        self._columns.addWidget(self.form)
        whole = QBoxLayout(QBoxLayout.Direction.TopToBottom, self._inside)
        whole.setContentsMargins(18, 0, 18, 12)
        whole.addWidget(self._name)
        whole.addLayout(self._columns, 1)
        scroll = QScrollArea(self)
        scroll.setAccessibleName(translate("orders", "The chosen order"))
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(self._inside)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 8, 0, 12)
        layout.addWidget(self.orders)
        layout.addWidget(scroll, 1)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() >= _WIDE
        self._columns.setDirection(
            QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom
        )
        self.form.setMaximumWidth(_FORM_WIDTH if wide else _WIDE)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        studio = None if view is None else view.studio
        rows = [] if view is None else _rows(view)
        self._shown = [key for key, _, _ in rows]
        self.orders.show_things(rows)
        self.orders.add_button.setEnabled(studio is not None)
        self._show_chosen()

    @property
    @override
    def chosen(self) -> str:
        return self.orders.current_key

    @override
    def choose(self, key: str) -> None:
        self.orders.choose(key)

    def _show_chosen(self) -> None:
        view, key = self._view, self.orders.current_key
        studio = None if view is None else view.studio
        found = studio is not None and any(order.key == key for order in studio.orders)
        for part in (self.answer, self.cost, self.form):
            part.setVisible(found)
        self._name.setText(self._head(studio, key))
        if view is not None and studio is not None and found:
            answer = answer_for(studio, studio.plan, key, view.now)
            self.answer.show_answer(studio, answer)
            self.cost.show_order(studio, answer.order)
            today = view.now.astimezone(studio.time_zone).date()
            self.form.show_order(studio, answer.order, today)

    def _head(self, studio: Studio | None, key: str) -> str:
        if studio is None:
            return translate("orders", "Open a studio first.")
        name = next((order.name for order in studio.orders if order.key == key), "")
        if name:
            return name
        if not studio.pieces:
            return translate("orders", "An order needs a piece; add one under Pieces first.")
        return translate("orders", "Add an order to see when it can leave.")

    # Verbs

    def add(self) -> None:
        """Add an order of the first free piece, ready to be named."""
        studio = self._studio
        if studio is None:
            return
        today = self.desk.clock.now().astimezone(studio.time_zone).date()
        name = translate("orders", "New order")

        def make(before: Studio) -> Studio:
            return with_thing(before, new_order(before, today, name))

        if self.desk.changes.attempt(Change(translate("orders", "Add an order"), make)):
            self.orders.choose(self._studio_now.orders[-1].key)
            self.form.form.fields["name"].take_up()

    def _copy(self) -> None:
        order = self._chosen
        if order is None:
            return

        def make(studio: Studio) -> Studio:
            copy = copy_of(studio, order)
            made = new_order(studio, copy.promised, copy.name)
            return with_thing(studio, _like(copy, made))

        words = translate("orders", "Copy {name}").format(name=order.name)
        if self.desk.changes.attempt(Change(words, make)):
            self.orders.choose(self._studio_now.orders[-1].key)

    def _remove(self) -> None:
        order = self._chosen
        if order is not None:
            words = translate("orders", "Remove {name}").format(name=order.name)
            self._attempt(words, lambda studio: without_thing(studio, Order, order.key))

    def _move(self, key: str, to: int) -> None:
        words = translate("orders", "Move an order")
        there = self._shown[to]

        def make(studio: Studio) -> Studio:
            keys = [order.key for order in studio.orders]
            return moved_thing(studio, Order, key, keys.index(there))

        self._attempt(words, make)

    def _attempt(self, words: str, make: Callable[[Studio], Studio]) -> None:
        self.desk.changes.attempt(Change(words, make))

    @property
    def _studio(self) -> Studio | None:
        return None if self.desk.session is None else self.desk.session.studio

    @property
    def _studio_now(self) -> Studio:
        assert self.desk.session is not None  # noqa: S101 - a change has just been made in it
        return self.desk.session.studio

    @property
    def _chosen(self) -> Order | None:
        studio, key = self._studio, self.orders.current_key
        orders = studio.orders if studio else ()
        return next((order for order in orders if order.key == key), None)


def _rows(view: DeskView) -> list[tuple[str, str, str]]:
    """Every order with its quiet line: those that are late first, else as they were put."""
    studio = view.studio
    answers = [answer_for(studio, studio.plan, order.key, view.now) for order in studio.orders]
    answers.sort(key=lambda answer: not (answer.outcome and answer.outcome.late_hours))
    return [(one.order.key, one.order.name, list_line(studio, one)) for one in answers]


def _like(copy: Order, made: Order) -> Order:
    # A piece is promised once, so a copy takes the next free one.
    return replace(copy, pieces=made.pieces, key=made.key, name=made.name)
