"""The one line at the top of the desk that says what went wrong, or what has changed."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.desktop.canvas import Canvas

PASSING = timedelta(minutes=1)
"""How long news stands that nobody needs to act upon."""


class NoticeLine(QWidget):
    """A sentence that stays until it is read, or has said its news for a while.

    It never covers the desk. What went wrong stays; what has merely been done goes by itself.
    """

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Say nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._wrong = False
        self.stays = False
        self._said: datetime | None = None
        self._words = QLabel(self)
        self._words.setWordWrap(True)
        self._words.setTextFormat(Qt.TextFormat.PlainText)
        self._words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self._read = QPushButton(translate("notice", "Got it"), self)
        self._read.setAccessibleName(translate("notice", "Got it, hide the notice"))
        self._read.clicked.connect(self.hide)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 4, 16, 4)
        layout.addWidget(self._words, 1)
        layout.addWidget(self._read)
        canvas.recoloured.connect(self._recolour)
        self.setAutoFillBackground(True)
        self.hide()

    @property
    def words(self) -> str:
        """What is said now; empty when nothing is."""
        return "" if self.isHidden() else self._words.text()

    @property
    def failure(self) -> str:
        """What is said now to have gone wrong; empty when nothing is."""
        return self.words if self._wrong else ""

    def say(
        self,
        words: str,
        *,
        wrong: bool = False,
        stays: bool = False,
        passing: datetime | None = None,
    ) -> None:
        """Say a sentence; `wrong` marks one that tells of a failure.

        One that is `passing`, said at that instant, goes by itself after a while; one that
        `stays` is not taken away by planning that was not asked for.
        """
        self._wrong = wrong
        self.stays = stays
        self._said = passing
        not_done = translate("notice", "Not done: {why}")
        self._words.setText(not_done.format(why=words) if wrong else words)
        self._words.setAccessibleName(self._words.text())
        self._recolour()
        self.show()
        self._announce(words)

    def tick(self, now: datetime) -> None:
        """Hide what was said in passing, once it has stood for a while."""
        if self._said is not None and abs(now - self._said) >= PASSING:
            self.pass_by()

    def pass_by(self) -> None:
        """Hide what was said in passing, before its time: it is over."""
        if self._said is not None:
            self._said = None
            self.hide()

    def _announce(self, words: str) -> None:
        # Loaded with the first words, not with the window, which mostly has none to say.
        from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent  # noqa: PLC0415

        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, words))

    def _recolour(self) -> None:
        theme = self._canvas.theme
        palette = theme.palette
        palette.setColor(palette.ColorRole.Window, theme.colour("panel"))
        colour = theme.colour("now" if self._wrong else "ink")
        palette.setColor(palette.ColorRole.WindowText, colour)
        self.setPalette(palette)
