"""The figures of a product's sheet, typed cell by cell as they are printed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.craft.products import ProductKind
from studio_planner.desktop.product_pages.figure_grid import FigureGrid, Lines
from studio_planner.desktop.product_pages.law_words import (
    SHEET_ORDER,
    in_a_sentence,
    row_name,
    stage_name,
)
from studio_planner.desktop.product_pages.wrong_words import wrong_words
from studio_planner.desktop.quantities import (
    Quantity,
    number_of,
    number_words,
    scale_of,
)
from studio_planner.desktop.tongue import translate
from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.times import PrintedTime, printed_time, shown_time
from studio_planner.services.editing.products import (
    changed_product,
    figure_at,
    with_figure,
    with_temperature,
)

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges

_USUAL_CELSIUS = 20.0
_USUAL_GRAMS = 100.0
_DIGITS = 4
_SAME = 0.005

Row = tuple[Stage, float | None]
"""A stage, and for cup life the mass in grams that it is printed for."""


class SheetTable(QWidget):
    """Stages down, temperatures across; a column or a mass without a figure is only here.

    Signals:
        stage_chosen: the maker is in the row of that stage.
    """

    stage_chosen = Signal(object)

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no product yet."""
        super().__init__(parent)
        self._changes = changes
        self._product: Product | None = None
        self._units: Units | None = None
        self._columns: dict[str, list[float]] = {}
        self._masses: dict[str, list[float]] = {}
        self.grid = FigureGrid(canvas, self._enter, self)
        self.grid.row_chosen.connect(self._chosen)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.grid)

    def show_product(self, product: Product, units: Units) -> None:
        """Show a product's figures in the studio's units."""
        old = self._product
        fresh = old is None or old.key != product.key or self._units != units
        self._product, self._units = product, units
        self.grid.show_lines(self._lines(product, units), fresh=fresh)

    # What there is

    def columns(self) -> list[float]:
        """The temperatures [°C] of the columns, from cold to warm."""
        product = self._product
        if product is None:
            return []
        more = self._columns.get(product.key, [])
        at = sorted({point.celsius for point in product.sheet} | set(more))
        return at or [_USUAL_CELSIUS]

    def rows(self) -> list[Row]:
        """The rows of the table, from the film's first stage to the cup."""
        product = self._product
        if product is None:
            return []
        film: list[Row] = [(stage, None) for stage in SHEET_ORDER]
        printed = {point.mass_g for point in product.figures(Stage.CUP_LIFE)}
        more = self._masses.get(product.key, [])
        masses = sorted({mass for mass in printed if mass is not None} | set(more))
        if not printed and not masses and product.kind is ProductKind.TWO_PART:
            masses = [_USUAL_GRAMS]
        unnamed: list[Row] = [(Stage.CUP_LIFE, None)] if None in printed else []
        return [*film, *unnamed, *((Stage.CUP_LIFE, mass) for mass in masses)]

    def place_of(
        self, stage: Stage, celsius: float, grams: float | None = None
    ) -> tuple[int, int]:
        """Where a figure is typed, as (row, column) of the grid."""
        columns = self.columns()
        near = min(columns, key=lambda at: abs(at - celsius))
        return self.rows().index((stage, grams)) + 1, columns.index(near) + 1

    def _lines(self, product: Product, units: Units) -> Lines:
        rows, columns = self.rows(), self.columns()
        temperature = scale_of(Quantity.TEMPERATURE, units)
        names = [
            f"{number_words(temperature.shown(at), digits=_DIGITS)} {temperature.unit}"
            for at in columns
        ]
        cells = {(0, column): name for column, name in enumerate(names, start=1)}
        for row, (stage, grams) in enumerate(rows, start=1):
            for column, at in enumerate(columns, start=1):
                point = figure_at(product, (stage, at, grams))
                if point is not None:
                    time = PrintedTime(point.from_hours, point.to_hours)
                    cells[row, column] = shown_time(time)
        labels = [row_name(stage, grams, units) for stage, grams in rows]
        hints = {(0, len(columns) + 1): f"+ {temperature.unit}"}
        named: frozenset[int] = frozenset()
        if product.kind is ProductKind.TWO_PART:
            labels.append("")
            named = frozenset({len(labels)})
            unit = scale_of(Quantity.MASS, units).unit
            hints[len(labels), 0] = translate("products", "+ cup, {unit}").format(unit=unit)
        return Lines(tuple(labels), (*names, ""), cells, hints, named)

    def _chosen(self, row: int) -> None:
        rows = self.rows()
        if 1 <= row <= len(rows):
            self.stage_chosen.emit(rows[row - 1][0])

    # What is typed

    def _enter(self, row: int, column: int, text: str) -> None:
        if self._product is None or self._units is None:
            return
        try:
            if row == 0:
                self._enter_temperature(self._product, column, text)
            elif column == 0:
                self._enter_mass(self._product, text)
            else:
                self._enter_time(self._product, row, column, text)
        except InvalidEntry as error:
            raise ValueError(wrong_words(error, self._units)) from error
        except StudioError as error:
            raise ValueError(str(error)) from error

    def _enter_time(self, product: Product, row: int, column: int, text: str) -> None:
        stage, grams = self.rows()[row - 1]
        time = printed_time(text) if text else None
        columns = self.columns()
        cell = (stage, columns[column - 1], grams)
        # A column stays while the last figure in it is typed anew.
        self._columns[product.key] = columns
        if grams is not None:
            known = self._masses.setdefault(product.key, [])
            known.extend([] if grams in known else [grams])
        what = in_a_sentence(stage_name(stage))
        self._changes.make(
            changed_product(product, what, lambda now: with_figure(now, cell, time))
        )

    def _enter_temperature(self, product: Product, column: int, text: str) -> None:
        columns = self.columns()
        old = columns[column - 1] if column <= len(columns) else None
        new = self._read(text, Quantity.TEMPERATURE) if text else None
        if new is not None and any(abs(new - at) <= _SAME for at in columns if at != old):
            raise ValueError(translate("products", "There is a column for it already."))
        kept = [at for at in columns if at != old] + ([] if new is None else [new])
        if old is not None and any(point.celsius == old for point in product.sheet):
            what = translate("products", "temperature of the sheet")
            self._changes.make(
                changed_product(product, what, lambda now: with_temperature(now, old, new))
            )
        self._columns[product.key] = kept
        self._show_again()

    def _enter_mass(self, product: Product, text: str) -> None:
        if not text:
            return
        grams = self._read(text, Quantity.MASS)
        if grams <= 0.0:
            raise ValueError(translate("products", "A mass has to be more than nothing."))
        if (Stage.CUP_LIFE, grams) not in self.rows():
            printed = [row for row, mass in self.rows() if row is Stage.CUP_LIFE and mass]
            first = [_USUAL_GRAMS] if printed else []
            self._masses.setdefault(product.key, first).append(grams)
        self._show_again()

    def _read(self, text: str, quantity: Quantity) -> float:
        assert self._units is not None  # noqa: S101 - nothing is typed before a studio is shown
        scale = scale_of(quantity, self._units)
        bare = text.removesuffix(scale.unit).strip()
        return round(scale.inside(number_of(bare.removesuffix("°").strip())), 4)

    def _show_again(self) -> None:
        if self._product is not None and self._units is not None:
            self.show_product(self._product, self._units)
