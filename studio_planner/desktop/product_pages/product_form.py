"""What is in the bottles: name, kind, ratio, densities and limits, each with why it matters."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.products import ProductKind, RatioBy
from studio_planner.desktop.forms.fields import ChoiceField, NumberField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.product_pages.law_words import in_a_sentence
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.products import changed_product, product_with, values_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.forms.field import Field

_CELL_WIDTH = 176
_MOST_COLUMNS = 5
_MIX_ONLY = {
    "ratio_a",
    "ratio_b",
    "ratio_by",
    "density_a",
    "density_b",
    "viscosity_mpas",
    "cup_limit_g",
}
_POURED_ONLY = {"density", "depth_limit_mm", "mix_limit_g"}
"""What leaf has none of: it is laid, not poured."""


def kind_name(kind: ProductKind) -> str:
    """What a kind of product is called."""
    names = {
        ProductKind.TWO_PART: translate("products", "two-part mix"),
        ProductKind.PRIMER: translate("products", "one-part primer"),
        ProductKind.SIZE: translate("products", "size"),
        ProductKind.LEAF: translate("products", "leaf"),
    }
    return names[kind]


def _ways() -> list[tuple[object, str]]:
    return [
        (RatioBy.WEIGHT, translate("products", "by weight")),
        (RatioBy.VOLUME, translate("products", "by volume")),
    ]


def _unsaid() -> tuple[object, str]:
    return RatioBy.ASSUMED, translate("products", "not said yet")


def _words_by_kind() -> dict[str, tuple[str, str, str, str]]:
    """Of a field: its label for a mix and for what is in one bottle, its reasons likewise."""
    grams = translate("products", "From film and area to grams.")
    return {
        "density": (
            translate("products", "Density of the mix, g/cm³"),
            translate("products", "Density, g/cm³"),
            grams,
            grams,
        ),
        "depth_limit_mm": (
            translate("products", "Deepest film"),
            translate("products", "Deepest film"),
            translate("products", "Deeper coats are refused: they heat themselves."),
            translate("products", "Deeper coats are refused."),
        ),
        "mix_limit_g": (
            translate("products", "Largest mix"),
            translate("products", "Most at once"),
            translate("products", "As much as can be spread in its working time."),
            translate("products", "As much as can be spread before it sets."),
        ),
    }


class Cells(QWidget):
    """Fields, each with its reason, in as many columns as there is room for."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start without a field."""
        super().__init__(parent)
        self._canvas = canvas
        self._columns = 0
        self._cells: list[QWidget] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(20)
        self._grid.setVerticalSpacing(8)

    def add(self, reason: str) -> tuple[QWidget, QVBoxLayout, Line]:
        """A cell, the layout to put its field into, and the line of the reason below it."""
        cell = QWidget(self)
        inside, field = QVBoxLayout(cell), QVBoxLayout()
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(0)
        inside.addLayout(field)
        line = Line(self._canvas, reason, cell, font="small", colour="quiet")
        line.setVisible(bool(reason))
        inside.addWidget(line)
        inside.addStretch(1)
        self._cells.append(cell)
        return cell, field, line

    def arrange(self, columns: int | None = None) -> None:
        """Lay the cells that are shown out in columns, by default as many as fit."""
        self._columns = columns or min(max(self.width() // _CELL_WIDTH, 1), _MOST_COLUMNS)
        for cell in self._cells:
            self._grid.removeWidget(cell)
        shown = [cell for cell in self._cells if not cell.isHidden()]
        for place, cell in enumerate(shown):
            self._grid.addWidget(cell, place // self._columns, place % self._columns)
        for column in range(_MOST_COLUMNS):
            self._grid.setColumnStretch(column, 1 if column < self._columns else 0)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if min(max(self.width() // _CELL_WIDTH, 1), _MOST_COLUMNS) != self._columns:
            self.arrange()


class ProductForm(QWidget):
    """The fields of one product: what it is and its ratio; its densities and limits apart.

    `limits` is a widget of its own that the page lays out where it wants.
    """

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no product yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._changes = changes
        self._product: Product | None = None
        self.form = Form(canvas, self._enter, self)
        self.bottles = Cells(canvas, self)
        self.limits = Cells(canvas, parent)
        self._cells: dict[str, QWidget] = {}
        self._reasons: dict[str, Line] = {}
        self._add_bottles()
        self._add_densities()
        self._add_limits()
        self._add_leaf()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.bottles)
        layout.addWidget(self.form)

    def _add_bottles(self) -> None:
        canvas = self._canvas
        kinds = [(kind, kind_name(kind)) for kind in ProductKind]
        rows: tuple[tuple[str, Field, str], ...] = (
            ("name", TextField(canvas, translate("products", "Name")), ""),
            (
                "kind",
                ChoiceField(canvas, translate("products", "Kind"), kinds),
                translate("products", "Only a mix is weighed as A and B."),
            ),
            (
                "ratio_a",
                NumberField(canvas, translate("products", "Parts of A")),
                translate("products", "A wrong ratio never cures."),
            ),
            ("ratio_b", NumberField(canvas, translate("products", "Parts of B")), ""),
            (
                "ratio_by",
                ChoiceField(canvas, translate("products", "Ratio is"), _ways()),
                translate("products", "By volume it needs densities."),
            ),
        )
        for name, field, reason in rows:
            self._add(name, field, reason, limit=False)
        ratio_by = self.form.fields["ratio_by"]
        assert isinstance(ratio_by, ChoiceField)  # noqa: S101 - made just above
        self.ratio_by = ratio_by

    def _add_densities(self) -> None:
        self._add(
            "density_a",
            self._number(translate("products", "Density of A, g/cm³")),
            translate("products", "Turns a ratio by volume into one by weight."),
        )
        self._add("density_b", self._number(translate("products", "Density of B, g/cm³")), "")
        self._add(
            "density",
            NumberField(self._canvas, translate("products", "Density of the mix, g/cm³")),
            translate("products", "From film and area to grams."),
        )

    def _add_limits(self) -> None:
        self._add(
            "minimum_celsius",
            self._number(translate("products", "Lowest temperature"), Quantity.TEMPERATURE),
            translate("products", "Colder hours do not cure it, and no pour is planned."),
        )
        self._add(
            "maximum_celsius",
            self._number(translate("products", "Highest temperature"), Quantity.TEMPERATURE),
            translate("products", "No pour is planned in a warmer room."),
        )
        self._add(
            "humidity_limit_pct",
            self._number(translate("products", "Most humidity"), Quantity.PER_CENT),
            translate("products", "Damp air clouds a film; no pour is planned above it."),
        )
        self._add(
            "depth_limit_mm",
            self._number(translate("products", "Deepest film"), Quantity.FILM),
            translate("products", "Deeper coats are refused: they heat themselves."),
        )
        canvas = self._canvas
        self._add(
            "viscosity_mpas",
            self._number(translate("products", "Viscosity of the mix, mPa·s")),
            translate("products", "How fast pigments and glitter sink in it."),
        )
        self._add(
            "cup_limit_g",
            NumberField(canvas, translate("products", "Largest cup"), Quantity.MASS),
            translate("products", "Larger mixes are weighed in portions."),
        )
        self._add(
            "mix_limit_g",
            NumberField(canvas, translate("products", "Largest mix"), Quantity.MASS),
            translate("products", "As much as can be spread in its working time."),
        )

    def _add_leaf(self) -> None:
        self._add(
            "leaf_mm",
            self._number(translate("products", "Side of a leaf"), Quantity.LENGTH),
            translate("products", "So that its area counts in what a piece costs."),
        )
        self._add(
            "leaf_price",
            NumberField(self._canvas, translate("products", "Price of one leaf")),
            translate("products", "In your currency: that of a book by its leaves."),
        )

    def _number(self, label: str, quantity: Quantity = Quantity.PLAIN) -> NumberField:
        return NumberField(self._canvas, label, quantity, optional=True)

    def _add(self, name: str, field: Field, reason: str, *, limit: bool = True) -> None:
        cells = self.limits if limit else self.bottles
        self._cells[name], inside, self._reasons[name] = cells.add(reason)
        self.form.add(name, field, into=inside)

    def show_product(self, product: Product, units: Units) -> None:
        """Show a product; what is being typed stays."""
        fresh = self._product is None or self._product.key != product.key
        self._product = product
        self._fit_kind(product.kind)
        known = product.ratio is not None and product.ratio.by is not RatioBy.ASSUMED
        self.ratio_by.offer(_ways() if known else [_unsaid(), *_ways()])
        self.bottles.arrange()
        self.limits.arrange()
        self.form.show_values(values_of(product), units, fresh=fresh)

    def _fit_kind(self, kind: ProductKind) -> None:
        """Show what a product of that kind has; what is hidden stays in it as it was."""
        mixed = kind is ProductKind.TWO_PART
        for name in _MIX_ONLY:
            self._cells[name].setVisible(mixed)
        leaf = kind is ProductKind.LEAF
        for name in (*_POURED_ONLY, "leaf_mm", "leaf_price"):
            self._cells[name].setVisible(leaf == name.startswith("leaf"))
        for name, (of_mix, of_one, reason, reason_of_one) in _words_by_kind().items():
            field, label = self.form.fields[name], of_mix if mixed else of_one
            if field.words != label:
                field.rename(label)
            self._reasons[name].say(reason if mixed else reason_of_one)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        product = self._product
        if product is None:
            return
        label = in_a_sentence(self.form.fields[name].words)

        def make(now: Product) -> Product:
            return product_with(now, values)

        self._changes.make(changed_product(product, label, make))
