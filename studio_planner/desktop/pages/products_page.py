"""The page of products: what is in the bottles, and what their sheets mean in this room."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMenu, QScrollArea, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.craft.products import Product, ProductKind
from studio_planner.craft.tongue import capital
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.page import Page
from studio_planner.desktop.product_pages.product_form import kind_name
from studio_planner.desktop.product_pages.product_panel import ProductPanel
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import moved_thing
from studio_planner.services.editing.products import (
    added_product,
    copied_product,
    removed_product,
)

if TYPE_CHECKING:
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_LIST_WIDTH, _ROOM_FOR_ARROW = 232, 14


class ProductsPage(Page):
    """Products at the left; of the chosen one the sheet and all that it means."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self.products = NounList(
            self.canvas,
            translate("products", "Products"),
            translate("products", "No product yet. Add one, and have its data sheet at hand."),
            self,
        )
        self.panel = ProductPanel(self.canvas, desk.changes, self)
        self.refusal = Line(self.canvas, "", self, font="small", colour="now")
        self.refusal.hide()
        self._name = Line(self.canvas, "", self, font="title")
        self.kinds = self._kind_menu()
        self._lay_out()
        self.products.chosen.connect(lambda _key: self._choose_another())
        self.products.copy_asked.connect(self._copy)
        self.products.remove_asked.connect(self._remove)
        self.products.move_asked.connect(self._move)
        self._show_chosen()

    def _kind_menu(self) -> QMenu:
        menu = QMenu(self)
        for kind in ProductKind:
            action = menu.addAction(capital(kind_name(kind)))
            action.triggered.connect(lambda _checked=False, kind=kind: self.add(kind))
        button = self.products.add_button
        button.setMenu(menu)
        button.setMinimumWidth(button.sizeHint().width() + _ROOM_FOR_ARROW)
        return menu

    def _lay_out(self) -> None:
        width = max(_LIST_WIDTH, self.products.minimumSizeHint().width())
        self.products.setFixedWidth(width)
        left = QVBoxLayout()
        left.addWidget(self.products, 1)
        self.refusal.setFixedWidth(width)
        left.addWidget(self.refusal)
        inside = QWidget(self)
        whole = QVBoxLayout(inside)
        whole.setContentsMargins(18, 0, 4, 12)
        whole.addWidget(self._name)
        whole.addWidget(self.panel, 1)
        self.scroller = QScrollArea(self)
        self.scroller.setFrameShape(QFrame.Shape.NoFrame)
        self.scroller.setWidgetResizable(True)
        self.scroller.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.scroller.setWidget(inside)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 8, 0, 12)
        layout.addLayout(left)
        layout.addWidget(self.scroller, 1)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        products = () if view is None else view.studio.products
        # Only what is chosen in the end is worth its clocks.
        self.products.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.products.show_things([(p.key, p.name, kind_name(p.kind)) for p in products])
        self.products.blockSignals(False)  # noqa: FBT003 - Qt's own
        self.products.add_button.setEnabled(view is not None)
        self._show_chosen()

    @property
    @override
    def chosen(self) -> str:
        return self.products.current_key

    @override
    def choose(self, key: str) -> None:
        self.products.choose(key)

    def _choose_another(self) -> None:
        self.refusal.say("")
        self._show_chosen()

    def _show_chosen(self) -> None:
        view, product = self._view, self._product
        self.panel.setVisible(product is not None)
        if view is None:
            self._name.say(translate("products", "Open a studio first."))
        elif product is None:
            self._name.say(
                translate("products", "Add a product to see what its sheet means in your room.")
            )
        else:
            self._name.say(product.name)
            self.panel.show_product(view, product)

    @property
    def _product(self) -> Product | None:
        key = self.products.current_key
        products = () if self._view is None else self._view.studio.products
        return next((product for product in products if product.key == key), None)

    # Verbs

    def add(self, kind: ProductKind) -> None:
        """Add a product of that kind, ready to be named."""
        name = translate("products", "New {kind}").format(kind=kind_name(kind))
        if self._attempt(added_product(kind, name)):
            self._choose_last()
            self.panel.form.form.fields["name"].take_up()

    def _copy(self) -> None:
        product = self._product
        if product is not None and self._attempt(copied_product(product)):
            self._choose_last()

    def _remove(self) -> None:
        product = self._product
        if product is not None:
            self._attempt(removed_product(product))

    def _move(self, key: str, to: int) -> None:
        words = translate("products", "Move a product")
        self._attempt(Change(words, lambda studio: moved_thing(studio, Product, key, to)))

    def _attempt(self, change: Change) -> bool:
        """Make a change; why it is refused is said under the verbs."""
        self.refusal.say("")
        try:
            self.desk.changes.make(change)
        except InvalidEntry as error:
            sentences = " ".join(rule.sentence for rule in error.broken)
            self._refuse(f"{error.noun}: {sentences}")
            return False
        except StudioError as error:
            self._refuse(str(error))
            return False
        return True

    def _refuse(self, sentence: str) -> None:
        self.refusal.say(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}")

    def _choose_last(self) -> None:
        if self._view is not None:
            self.products.choose(self._view.studio.products[-1].key)
