"""The page of the stock: what lasts, bottles, pigments, and what things cost."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QStackedWidget, QWidget
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.stock_pages.bottles_section import BottlesSection
from studio_planner.desktop.stock_pages.enough_section import EnoughSection
from studio_planner.desktop.stock_pages.pigments_section import PigmentsSection
from studio_planner.desktop.stock_pages.prices_section import PricesSection
from studio_planner.desktop.studio_pages.section_names import SectionNames
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.stock import LotPart
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

ENOUGH, BOTTLES, PIGMENTS, PRICES = "enough", "bottles", "pigments", "prices"
"""The keys of the sections; behind a slash may follow the key of a thing on it."""


class StockPage(Page):
    """One section in front, chosen from the words at the left; each is made when first seen."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._held: dict[str, tuple[Page, QWidget]] = {}
        self._stale: set[str] = set()
        self.key = ENOUGH
        self.names = SectionNames(self.canvas, translate("stock", "Sections"), self)
        for key, words in (
            (ENOUGH, translate("stock", "What lasts")),
            (BOTTLES, translate("stock", "Bottles")),
            (PIGMENTS, translate("pigments", "Pigments")),
            (PRICES, translate("prices", "Prices and rules")),
        ):
            self.names.add(key, words)
        self._stack = QStackedWidget(self)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.names)
        layout.addWidget(self._stack, 1)
        self.names.section_asked.connect(self.choose)
        self.names.show_section(ENOUGH)

    @property
    def bottles(self) -> BottlesSection:
        """The section of the bottles."""
        section = self.section(BOTTLES)
        assert isinstance(section, BottlesSection)  # noqa: S101 - it was made by that key
        return section

    def section(self, key: str) -> Page:
        """The section of that key, made now if it was not yet."""
        if key not in self._held:
            section = self._made(key)
            holder = self._scrolled(section)
            self._stack.addWidget(holder)
            self._held[key] = (section, holder)
            self._stale.add(key)
        return self._held[key][0]

    def _made(self, key: str) -> Page:
        if key == BOTTLES:
            return BottlesSection(self.desk, self)
        if key == PRICES:
            return PricesSection(self.desk, self)
        asking = PigmentsSection if key == PIGMENTS else EnoughSection
        section = asking(self.desk, self)
        section.bottle_asked.connect(lambda lot: self.choose(f"{BOTTLES}/{lot}"))
        section.new_asked.connect(self._enter_bottle)
        return section

    def _scrolled(self, section: Page) -> QScrollArea:
        scroll = QScrollArea(self)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(section)
        return scroll

    def _enter_bottle(self, product: str, part: LotPart) -> None:
        self._bring(BOTTLES)
        self.bottles.add(product, part)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self._stale = set(self._held)
        self._bring(self.key)

    @override
    def choose(self, key: str) -> None:
        """Choose a section, and behind a slash a thing on it: bottles/tarn-a."""
        name, _, thing = key.partition("/")
        if name not in self.names.names:
            return
        self._bring(name)
        self.names.names[name].setFocus()
        if thing:
            self.section(name).choose(thing)

    def _bring(self, key: str) -> None:
        section = self.section(key)
        self.key = key
        if key in self._stale:
            section.show_view(self._view)
            self._stale.discard(key)
        self._stack.setCurrentWidget(self._held[key][1])
        self.names.show_section(key)
