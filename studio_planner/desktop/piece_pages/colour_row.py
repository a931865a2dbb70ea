"""One colour of a coat: what goes into its cup, in a row."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.pieces import Colour
from studio_planner.desktop.forms.undo_keys import UndoKeys
from studio_planner.desktop.piece_pages.colourants import ColourantChoice
from studio_planner.desktop.quantities import number_of, number_words
from studio_planner.desktop.tongue import translate

_WHOLE = 100.0
_NARROW = 58
TARGET = 26


class ColourRow(QWidget):
    """One colour: its name, its share of the mix, the colourant and how much of it.

    Signals:
        edited: something in it was changed.
        remove_asked: the row is to go.
        recipes_asked: the maker looks for a recipe used before.
    """

    edited = Signal()
    remove_asked = Signal()
    recipes_asked = Signal()

    def __init__(self, colour: Colour, parent: QWidget) -> None:
        """Show a colour."""
        super().__init__(parent)
        self._shown: tuple[str, ...] = ()
        self._unnamed = ""
        self.name = QLineEdit(self)
        self.share = QLineEdit(self)
        self.colourant = ColourantChoice(self)
        self.amount = QLineEdit(self)
        self.recipe = QPushButton(translate("pieces", "Recipe of…"), self)
        self.remove = QPushButton(translate("pieces", "Remove"), self)
        self._lay_out()
        self.show_colour(colour)
        self._listen()

    def _lay_out(self) -> None:
        for editor in (self.share, self.amount):
            editor.setMaximumWidth(_NARROW)
        for button in (self.recipe, self.remove):
            button.setMinimumHeight(TARGET)
        percent = translate("pieces", "% of the mix")
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 6)
        grid.setVerticalSpacing(3)
        grid.addWidget(self.name, 0, 0, 1, 2)
        grid.addWidget(self.share, 0, 2)
        grid.addWidget(QLabel(percent, self), 0, 3)
        grid.addWidget(self.colourant, 1, 0, 1, 2)
        grid.addWidget(self.amount, 1, 2)
        grid.addWidget(QLabel(translate("pieces", "% in its cup"), self), 1, 3)
        grid.addWidget(self.recipe, 2, 0)
        grid.addWidget(self.remove, 2, 1)
        grid.setColumnStretch(0, 1)

    def _listen(self) -> None:
        for editor in (self.name, self.share, self.amount):
            editor.editingFinished.connect(self._finished)
            UndoKeys(editor, lambda: self.texts != self._shown)
        line = self.colourant.lineEdit()
        if line is not None:
            line.editingFinished.connect(self._finished)
        self.colourant.activated.connect(lambda _index: self._chosen())
        self.remove.clicked.connect(self.remove_asked)
        self.recipe.clicked.connect(self.recipes_asked)

    def name_row(self, number: int) -> None:
        """Tell a screen reader which colour the editors belong to."""
        of = self._unnamed = translate("pieces", "colour {number}").format(number=number)
        named: tuple[tuple[QWidget, str], ...] = (
            (self.name, translate("pieces", "Name")),
            (self.share, translate("pieces", "Share in per cent of the mix")),
            (self.colourant, translate("pieces", "Colourant")),
            (self.amount, translate("pieces", "Colourant in per cent of its cup")),
            (self.recipe, self.recipe.text()),
            (self.remove, self.remove.text()),
        )
        for editor, word in named:
            editor.setAccessibleName(f"{word}, {of}")

    @property
    def texts(self) -> tuple[str, ...]:
        """Everything as it is typed."""
        return (
            self.name.text(),
            self.share.text(),
            self.colourant.currentText(),
            self.amount.text(),
        )

    def _finished(self) -> None:
        if self.texts != self._shown:
            self._shown = self.texts
            self.edited.emit()

    def _chosen(self) -> None:
        # A colour without a name of its own is called like what is in it.
        if self.name.text() == self._unnamed:
            self.name.setText(self.colourant.currentText())
        self._finished()

    def show_colour(self, colour: Colour) -> None:
        """Show another colour."""
        self.name.setText(colour.name)
        self.share.setText(number_words(colour.share_pct))
        self.colourant.show_colourant(colour.colourant)
        self.amount.setText(number_words(colour.colourant_pct))
        self._shown = self.texts

    def show_texts(self, texts: tuple[str, ...]) -> None:
        """Type everything again."""
        self.name.setText(texts[0])
        self.share.setText(texts[1])
        self.colourant.setCurrentText(texts[2])
        self.amount.setText(texts[3])
        self._shown = texts

    def colour(self) -> Colour:
        """The colour as it is typed; ValueError in a sentence when that makes no sense."""
        try:
            return Colour(
                name=self.name.text().strip(),
                share_pct=number_of(self.share.text()),
                colourant=self.colourant.colourant,
                colourant_pct=number_of(self.amount.text() or "0"),
            )
        except InvalidEntry as error:
            name = self.name.text().strip() or translate("pieces", "a colour")
            raise ValueError(f"{name}: {error.broken[0].sentence}") from error

    @property
    def typing(self) -> bool:
        """Whether the maker is in the middle of typing into it."""
        lines = [self.name, self.share, self.amount, self.colourant.lineEdit()]
        return any(line is not None and line.hasFocus() and line.isModified() for line in lines)
