"""The colours of a coat, each a row of what goes into its cup."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QIcon, QImage, QPixmap
from PySide6.QtWidgets import (
    QMenu,
    QPushButton,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.pieces import Colour
from studio_planner.desktop.forms.field import Field
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.piece_pages.colour_row import TARGET, ColourRow
from studio_planner.desktop.piece_pages.colourants import colourant_words
from studio_planner.desktop.quantities import number_words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from studio_planner.craft.pigments import Pigment
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.editing.recipes import Recipe

_WHOLE = 100.0
_PICTURE = 96


class ColoursField(Field):
    """Colours in rows; without a row the coat is clear.

    `picture` gives a kept photo by its key, to be shown beside the recipe of its piece.
    """

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start clear."""
        super().__init__(canvas, label, parent)
        self._recipes: Sequence[Recipe] = ()
        self._pigments: Sequence[Pigment] = ()
        self.picture: Callable[[str], QImage] | None = None
        self.rows: list[ColourRow] = []
        self.menu = QMenu(self)
        holder = QWidget(self)
        self._rows = QVBoxLayout()
        self.add_button = QPushButton(translate("pieces", "Add a colour"), holder)
        self.add_button.setMinimumHeight(TARGET)
        self.add_button.clicked.connect(lambda _checked: self.add())
        layout = QVBoxLayout(holder)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._rows)
        layout.addWidget(self.add_button)
        self.hold(holder)
        self.setFocusProxy(self.add_button)

    def offer(self, pigments: Sequence[Pigment], recipes: Sequence[Recipe]) -> None:
        """Offer the studio's pigments, and recipes used before."""
        self._pigments, self._recipes = pigments, recipes
        for row in self.rows:
            self._offer_to(row)

    def _offer_to(self, row: ColourRow) -> None:
        row.colourant.offer(self._pigments)
        row.recipe.setEnabled(bool(self._recipes))

    @property
    @override
    def in_hand(self) -> bool:
        return any(row.typing for row in self.rows)

    @override
    def value(self) -> tuple[Colour, ...]:
        return tuple(row.colour() for row in self.rows)

    @override
    def show_value(self, value: tuple[Colour, ...]) -> None:
        self.say_right()
        while len(self.rows) > len(value):
            self._drop(self.rows[-1])
        for row, colour in zip(self.rows, value, strict=False):
            row.show_colour(colour)
        for colour in value[len(self.rows) :]:
            self._new_row(colour)

    @property
    def texts(self) -> tuple[tuple[str, ...], ...]:
        """Every row as it is typed."""
        return tuple(row.texts for row in self.rows)

    def show_texts(self, texts: tuple[tuple[str, ...], ...]) -> None:
        """Type every row again."""
        self.show_value((Colour(name="-"),) * len(texts))
        for row, typed in zip(self.rows, texts, strict=True):
            row.show_texts(typed)

    def _new_row(self, colour: Colour) -> None:
        row = ColourRow(colour, self)
        self._offer_to(row)
        row.edited.connect(self.edited)
        row.remove_asked.connect(lambda: self.remove(row))
        row.recipes_asked.connect(lambda: self._show_recipes(row))
        self.rows.append(row)
        self._rows.addWidget(row)
        self._number()

    def _drop(self, row: ColourRow) -> None:
        self.rows.remove(row)
        take_out(self._rows, row)
        self._number()

    def _number(self) -> None:
        for number, row in enumerate(self.rows, start=1):
            row.name_row(number)

    def add(self) -> None:
        """Add a colour; it gets what is left of the mix, or half of the last one's share."""
        name = translate("pieces", "colour {number}").format(number=len(self.rows) + 1)
        self._new_row(Colour(name=name, share_pct=self._free_share()))
        self.rows[-1].name.setFocus()
        self.rows[-1].name.selectAll()
        self.edited.emit()

    def _free_share(self) -> float:
        try:
            shares = [colour.share_pct for colour in self.value()]
        except ValueError:
            return _WHOLE
        left = _WHOLE - sum(shares)
        if left >= 1.0 or not shares:
            return left
        half = shares[-1] / 2.0
        self.rows[-1].show_colour(replace(self.rows[-1].colour(), share_pct=half))
        return half

    def remove(self, row: ColourRow) -> None:
        """Take a colour out; what is left shares the mix as before."""
        self._drop(row)
        try:
            colours = self.value()
        except ValueError:
            colours = ()
        total = sum(colour.share_pct for colour in colours)
        for other, colour in zip(self.rows, colours, strict=False):
            share = round(colour.share_pct * _WHOLE / total, 2)
            other.show_colour(replace(colour, share_pct=share))
        self.edited.emit()

    def _show_recipes(self, row: ColourRow) -> None:
        self.fill_menu(row)
        self.menu.popup(row.recipe.mapToGlobal(row.recipe.rect().bottomLeft()))

    def fill_menu(self, row: ColourRow) -> None:
        """Put every recipe into the menu, for one colour."""
        self.menu.clear()
        for recipe in self._recipes:
            action = self.menu.addAction(self._icon(recipe), recipe_words(recipe))
            action.setIconVisibleInMenu(True)
            action.triggered.connect(lambda _on=False, of=recipe: self._use(row, of))

    def _icon(self, recipe: Recipe) -> QIcon:
        image = self.picture(recipe.photo) if self.picture and recipe.photo else QImage()
        if image.isNull():
            return QIcon()
        small = image.scaled(
            _PICTURE,
            _PICTURE,
            Qt.AspectRatioMode.KeepAspectRatioByExpanding,
            Qt.TransformationMode.SmoothTransformation,
        )
        return QIcon(QPixmap.fromImage(small))

    def _use(self, row: ColourRow, recipe: Recipe) -> None:
        try:
            share = row.colour().share_pct
        except ValueError:
            share = _WHOLE
        row.show_colour(replace(recipe.colour, share_pct=share))
        self.edited.emit()


def recipe_words(recipe: Recipe) -> str:
    """A recipe, and which piece it was mixed for."""
    colour = recipe.colour
    mixed = translate("pieces", "{percent} % {colourant}").format(
        percent=number_words(colour.colourant_pct),
        colourant=colourant_words(colour.colourant) or translate("pieces", "colourant"),
    )
    return (
        translate("pieces", "{colour}: {mixed} ({piece}, {coat})")
        .format(colour=colour.name, mixed=mixed, piece=recipe.piece, coat=recipe.coat)
        .replace("&", "&&")
    )
