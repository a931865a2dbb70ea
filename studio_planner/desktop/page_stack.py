"""The pages of the desk in one place; each is made when it is first looked at."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QWidget

from studio_planner.desktop.idle_work import IdleWork
from studio_planner.desktop.page import Page, focus_first
from studio_planner.desktop.page_keys import (
    LOG,
    ORDERS,
    PIECES,
    PLAN,
    PRODUCTS,
    QUESTIONS,
    STOCK,
    STUDIO,
)
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from studio_planner.desktop.page import PageDesk
    from studio_planner.desktop.page_bar import PageBar
    from studio_planner.desktop.timeline_work.shared_choice import SharedChoice
    from studio_planner.services.desk import DeskView


_SOON_MILLISECONDS = 300
"""How long after a studio was opened other pages are made ready: the plan is drawn first."""


def _orders(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.orders_page import OrdersPage  # noqa: PLC0415 - when seen

    return OrdersPage(desk)


def _pieces(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.pieces_page import PiecesPage  # noqa: PLC0415 - likewise

    return PiecesPage(desk)


def _products(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.products_page import ProductsPage  # noqa: PLC0415

    return ProductsPage(desk)


def _studio(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.studio_page import StudioPage  # noqa: PLC0415

    return StudioPage(desk)


def _questions(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.questions_page import QuestionsPage  # noqa: PLC0415

    return QuestionsPage(desk)


def _log(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.log_page import LogPage  # noqa: PLC0415 - likewise

    return LogPage(desk)


def _stock(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.stock_page import StockPage  # noqa: PLC0415 - likewise

    return StockPage(desk)


_MAKERS: dict[str, Callable[[PageDesk], Page]] = {
    ORDERS: _orders,
    PIECES: _pieces,
    PRODUCTS: _products,
    STUDIO: _studio,
    QUESTIONS: _questions,
    LOG: _log,
    STOCK: _stock,
}


def _names() -> tuple[tuple[str, str], ...]:
    return (
        (PLAN, translate("pages", "Plan")),
        (ORDERS, translate("pages", "Orders")),
        (PIECES, translate("pages", "Pieces")),
        (PRODUCTS, translate("pages", "Products")),
        (STUDIO, translate("pages", "Studio")),
        (QUESTIONS, translate("pages", "Questions")),
        (LOG, translate("pages", "Log")),
        (STOCK, translate("pages", "Stock")),
    )


class PageStack(QStackedWidget):
    """The plan in front, the other pages behind it."""

    def __init__(self, desk: PageDesk, bar: PageBar, parent: QWidget) -> None:
        """Let `bar` choose among the pages of `desk`."""
        super().__init__(parent)
        self._desk = desk
        self._bar = bar
        self._held: dict[str, QWidget] = {}
        self._view: DeskView | None = None
        self.choice: SharedChoice | None = None
        self._stale: set[str] = set()
        self._ahead = IdleWork(self, wait=_SOON_MILLISECONDS)
        for number, (key, words) in enumerate(_names(), start=1):
            bar.add(key, words, number)
            shortcut = QShortcut(QKeySequence(f"Ctrl+{number}"), parent)
            shortcut.activated.connect(partial(self.go_by_key, key))
        bar.show_page(PLAN)
        bar.page_asked.connect(self.go_to)

    def hold(self, key: str, widget: QWidget) -> None:
        """Take a page in that was made elsewhere."""
        self._held[key] = widget
        self.addWidget(widget)

    @property
    def current_key(self) -> str:
        """The key of the page in front."""
        return next((k for k, w in self._held.items() if w is self.currentWidget()), PLAN)

    def page(self, key: str) -> QWidget:
        """The page of that key, made now if it was not yet."""
        if key not in self._held and key in _MAKERS:
            self.hold(key, _MAKERS[key](self._desk))
            self._stale.add(key)
        return self._held[key]

    def get_ready(self) -> None:
        """Make the pages that nobody has looked at yet while there is nothing else to do."""
        self._ahead.do(self._getting_ready())

    def _getting_ready(self) -> Iterator[None]:
        from studio_planner.desktop.ahead import load_ahead  # noqa: PLC0415 - the plan is drawn first

        yield from load_ahead()
        for key in _MAKERS:
            page = self.page(key)
            yield
            if isinstance(page, Page):
                yield from page.getting_ready()

    def go_to(self, key: str, thing: str = "") -> None:
        """Bring a page to the front, and on it the thing of that key."""
        asked = bool(thing)
        thing = thing or self._shared_thing(key)
        page = self.page(key)
        if key in self._stale and isinstance(page, Page):
            page.show_view(self._view)
            self._stale.discard(key)
        # Who asks for a thing sees it, also where another part of the page was in front.
        if thing and isinstance(page, Page) and (asked or thing != page.chosen):
            page.choose(thing)
        self._desk.canvas.recoloured.finish(page)
        self.setCurrentWidget(page)
        self._bar.show_page(key)

    def go_by_key(self, key: str) -> None:
        """Bring a page to the front for a maker at the keys, who goes on working on it."""
        self.go_to(key)
        page = self.page(key)
        if isinstance(page, Page):
            page.take_focus()
        else:
            focus_first(page)

    def _shared_thing(self, key: str) -> str:
        """What is chosen on the page that is left, as it is to be chosen on the next one."""
        before, page = self.current_key, self.currentWidget()
        if self._view is None or key == before or self.choice is None:
            return ""
        if isinstance(page, Page):
            self.choice.leave(before, page, self._view.studio)
        return self.choice.thing_for(key, self._view.studio)

    def show_view(self, view: DeskView | None) -> None:
        """Show a studio on the page in front now, on the others when they come there."""
        self._view = view
        self._stale = {key for key, held in self._held.items() if isinstance(held, Page)}
        front = self.currentWidget()
        if isinstance(front, Page):
            front.show_view(view)
            self._stale.discard(self.current_key)
