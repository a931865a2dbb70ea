"""What of the log is shown: of a piece, an order, a kind, a day, or with some words in it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.forms.still_editors import StillChoice
from studio_planner.desktop.log_pages import choices
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.log_rows import LogWanted

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date, datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.log_book.log_rows import LogRow

_LEAST = 28


class Narrowing(QWidget):
    """A line to find words with, and choices beside it.

    Signals:
        wanted: other rows are wanted now.
    """

    wanted = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Want everything."""
        super().__init__(parent)
        self._canvas = canvas
        self._options: dict[str, list[object]] = {}
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(translate("happened", "find: piece, coat, note, mix 12"))
        self.search.setAccessibleName(translate("happened", "Find in the log"))
        self.search.setClearButtonEnabled(True)
        self.search.setMinimumHeight(_LEAST)
        self.search.textChanged.connect(lambda _text: self.wanted.emit())
        names = {
            "piece": translate("happened", "Of which piece"),
            "order": translate("happened", "Of which order"),
            "kind": translate("happened", "Of which kind"),
            "day": translate("happened", "Of which day"),
        }
        self.choices = {name: self._choice(said) for name, said in names.items()}
        self.count = QLabel(self)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(8)
        grid.addWidget(self.search, 0, 0, 1, 3)
        grid.addWidget(self.count, 0, 3)
        for column, choice in enumerate(self.choices.values()):
            grid.addWidget(choice, 1, column)
            grid.setColumnStretch(column, 1)

    def _choice(self, name: str) -> StillChoice:
        choice = StillChoice(self)
        choice.setAccessibleName(name)
        choice.setToolTip(name)
        choice.setMinimumHeight(_LEAST)
        choice.setMinimumContentsLength(6)
        choice.setSizeAdjustPolicy(
            StillChoice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        choice.activated.connect(lambda _index: self.wanted.emit())
        return choice

    def offer(self, studio: Studio, rows: Sequence[LogRow]) -> None:
        """Offer what a studio and its whole log have; what is chosen stays so."""
        zone = studio.time_zone
        days: dict[date, datetime] = {}
        for row in rows:
            days.setdefault(row.entry.at.astimezone(zone).date(), row.entry.at)
        named: choices.Options = [(day, words.day_name(at, zone)) for day, at in days.items()]
        offered: tuple[tuple[str, object, str, choices.Options], ...] = (
            ("piece", "", translate("happened", "all pieces"), choices.any_pieces(studio)),
            ("order", "", translate("happened", "all orders"), choices.any_orders(studio)),
            ("kind", None, translate("happened", "all kinds"), choices.every_kind()),
            ("day", None, translate("happened", "all days"), named),
        )
        for name, none, said, options in offered:
            self._fill(name, [(none, said), *options])

    def _fill(self, name: str, options: choices.Options) -> None:
        choice, values = self.choices[name], [value for value, _ in options]
        said = [text for _, text in options]
        if values == self._options.get(name) and said == [
            choice.itemText(row) for row in range(choice.count())
        ]:
            return
        kept = self._value(name)
        self._options[name] = values
        choice.clear()
        choice.addItems(said)
        choice.setCurrentIndex(values.index(kept) if kept in values else 0)

    def _value(self, name: str) -> object:
        values, row = self._options.get(name, []), self.choices[name].currentIndex()
        return values[row] if 0 <= row < len(values) else None

    def choose(self, name: str, value: object) -> None:
        """Choose one of the values that are offered."""
        values = self._options.get(name, [])
        if value in values:
            self.choices[name].setCurrentIndex(values.index(value))
            self.wanted.emit()

    def want_all(self) -> None:
        """Want everything again."""
        for choice in self.choices.values():
            choice.setCurrentIndex(0)
        self.search.clear()
        self.wanted.emit()

    @property
    def asked(self) -> LogWanted:
        """What is wanted now."""
        piece, order, kind, day = (self._value(name) for name in self.choices)
        return LogWanted(
            piece=piece or "",  # type: ignore[arg-type]
            order=order or "",  # type: ignore[arg-type]
            kind=kind,  # type: ignore[arg-type]
            day=day,  # type: ignore[arg-type]
            text=self.search.text(),
        )

    def say_count(self, shown: int, every: int) -> None:
        """Say how many entries are shown, where those are not all."""
        text = translate("happened", "{shown} of {every}")
        self.count.setText("" if shown == every else text.format(shown=shown, every=every))
        self.count.setAccessibleName(self.count.text())
