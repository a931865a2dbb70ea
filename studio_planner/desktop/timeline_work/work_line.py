"""The line under the title of the plan: it finds pieces, and says how work on the plan goes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QDateTime, QSize, Qt, QTimeZone, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QCheckBox,
    QDateTimeEdit,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QStackedWidget,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.settings import ClockForm
from studio_planner.desktop.measures import LINE_HEIGHT
from studio_planner.desktop.short_label import ShortLabel
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.narrowing import Wanted

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from PySide6.QtGui import QResizeEvent

    from studio_planner.desktop.canvas import Canvas

_FIND, _SAID, _ASK = range(3)
_WIDEST, _STEPPER = "Wed. 28. Mmm. 00:00 MM", 44
_FIELD = 240
_ROOMY = 460
"""From this width on there is room for more than the field to find with."""

_TIMES = {ClockForm.HOURS_24: "HH:mm", ClockForm.HOURS_12: "h:mm AP"}

Verb = tuple[str, "Callable[[], object]"]
"""What a button says and does."""


class WorkLine(QStackedWidget):
    """One line that finds, says or asks, whatever is needed last.

    Signals:
        wanted: the maker wants to see other lanes; a Wanted.
        left: the maker is done with it; the timeline may have the keys.
        spoke: something else is said now, or nothing.
    """

    wanted = Signal(object)
    left = Signal()
    spoke = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Find nothing and say nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._answered: Callable[[datetime], object] | None = None
        self.search = QLineEdit(self)
        self.only_late = QCheckBox(translate("work", "only late"), self)
        self.only_week = QCheckBox(translate("work", "only this week"), self)
        self.shown = QLabel(self)
        self.words = ShortLabel(self)
        self.verbs: list[QPushButton] = []
        self.when = QDateTimeEdit(self)
        self._question = ShortLabel(self)
        self._leave = QPushButton(translate("work", "Leave it"), self)
        self.setFixedHeight(LINE_HEIGHT)
        self.addWidget(self._finding())
        self.addWidget(self._saying())
        self.addWidget(self._asking())
        escape = QShortcut(QKeySequence(Qt.Key.Key_Escape), self)
        escape.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        escape.activated.connect(self.back)
        canvas.recoloured.connect(self._recolour)

    def _finding(self) -> QWidget:
        page, layout = _row(self)
        self.search.setPlaceholderText(
            translate("work", "Find a piece, order, product, colour")
        )
        self.search.setAccessibleName(translate("work", "Find on the timeline"))
        self.search.setMinimumHeight(24)
        self.search.setMaximumWidth(_FIELD)
        self.search.textChanged.connect(self._ask_lanes)
        layout.addWidget(self.search, 1)
        for box in (self.only_late, self.only_week):
            box.setMinimumHeight(24)
            box.setAccessibleName(box.text())
            box.toggled.connect(self._ask_lanes)
            layout.addWidget(box)
        layout.addWidget(self.shown)
        layout.addStretch(1)
        return page

    def _saying(self) -> QWidget:
        page, layout = _row(self)
        layout.addWidget(self.words, 1)
        self._verbs_place = layout
        return page

    def _asking(self) -> QWidget:
        page, layout = _row(self)
        self.when.setTimeZone(QTimeZone.utc())
        self.when.setMinimumHeight(24)
        self.when.setAccessibleName(translate("work", "Day and time to pour at"))
        pour = QPushButton(translate("work", "Pour then"), self)
        leave = self._leave
        for button in (pour, leave):
            button.setMinimumHeight(24)
        pour.clicked.connect(self._answer)
        leave.clicked.connect(self.clear)
        enter = QShortcut(QKeySequence(Qt.Key.Key_Return), self.when)
        enter.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        enter.activated.connect(self._answer)
        layout.addWidget(self._question, 1)
        for part in (self.when, pour, leave):
            layout.addWidget(part)
        layout.addStretch(1)
        return page

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        roomy = self.width() >= _ROOMY
        for box in (self.only_late, self.only_week):
            box.setVisible(roomy or box.isChecked())
        # Esc leaves it as well.
        self._leave.setVisible(roomy)

    @override
    def minimumSizeHint(self) -> QSize:
        # A narrow window is not made wide for it: words are cut short instead.
        return QSize(0, LINE_HEIGHT)

    # Finding

    def begin_to_find(self) -> None:
        """Let the maker type what is wanted."""
        self.setCurrentIndex(_FIND)
        self.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.search.selectAll()

    @property
    def asked(self) -> Wanted:
        """What is wanted now."""
        return Wanted(
            text=self.search.text(),
            late=self.only_late.isChecked(),
            week=self.only_week.isChecked(),
        )

    def _ask_lanes(self) -> None:
        self.wanted.emit(self.asked)

    def show_count(self, shown: int, every: int) -> None:
        """Say how many lanes are shown; nothing where all are."""
        text = translate("work", "{shown} of {every} pieces")
        self.shown.setText("" if shown == every else text.format(shown=shown, every=every))
        self.shown.setAccessibleName(self.shown.text())

    def find_all(self) -> None:
        """Want everything again."""
        self.search.clear()
        self.only_late.setChecked(False)
        self.only_week.setChecked(False)

    # Saying

    @property
    def said(self) -> str:
        """What is said now; empty when nothing is."""
        return self.words.words

    def say(self, words: str, *, wrong: bool = False, more: str = "") -> None:
        """Say a sentence; `more` is shown to whoever points at it or reads its description."""
        self._wrong = wrong
        self.offer()
        self.words.setText(words)
        if more:
            self.words.setToolTip(more)
        self.words.setAccessibleName(words)
        self.words.setAccessibleDescription(more)
        self._recolour()
        self.setCurrentIndex(_SAID)
        self._announce(f"{words} {more}".strip())
        self.spoke.emit()

    def offer(self, *verbs: Verb) -> None:
        """Put buttons beside what is said, in place of those before."""
        for old in self.verbs:
            old.hide()
            old.deleteLater()
        self.verbs = []
        for words, does in verbs:
            button = QPushButton(words, self.currentWidget())
            button.setMinimumHeight(24)
            button.setAccessibleName(words)
            button.clicked.connect(lambda _checked=False, does=does: does())
            self._verbs_place.addWidget(button)
            self.verbs.append(button)

    def clear(self) -> None:
        """Say and ask nothing more."""
        self.words.setText("")
        self.offer()
        self._answered = None
        self.setCurrentIndex(_FIND)
        self.spoke.emit()

    def pass_by(self) -> None:
        """Say no more what was said in passing; what waits for an answer stays."""
        if self.currentIndex() == _SAID and not self.verbs:
            self.clear()

    def back(self) -> None:
        """Esc: stop asking, or saying, or finding, whichever is in front."""
        page = self.currentIndex()
        if page == _FIND:
            self.find_all()
            self.setCurrentIndex(_SAID if self.said else _FIND)
            self.left.emit()
        elif page == _ASK or not self.verbs:
            self.clear()

    _wrong = False

    def _recolour(self) -> None:
        palette = self._canvas.theme.palette
        colour = self._canvas.theme.colour("now" if self._wrong else "ink")
        palette.setColor(palette.ColorRole.WindowText, colour)
        self.words.setPalette(palette)

    def _announce(self, words: str) -> None:
        from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent  # noqa: PLC0415

        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, words))

    # Asking

    def ask_time(
        self,
        question: str,
        wall: datetime,
        form: ClockForm,
        answered: Callable[[datetime], object],
    ) -> None:
        """Ask for a day and a time on the studio's clock, beginning with `wall` (naive)."""
        self._answered = answered
        self._question.setMaximumWidth(self._question.fontMetrics().horizontalAdvance(question))
        self._question.setText(question)
        day = translate("forms", "ddd d MMM")
        self.when.setDisplayFormat(f"{day} {_TIMES[form]}")
        self.when.setMinimumWidth(self.when.fontMetrics().horizontalAdvance(_WIDEST) + _STEPPER)
        self.when.setDateTime(_shown(wall))
        self.setCurrentIndex(_ASK)
        self.when.setFocus(Qt.FocusReason.OtherFocusReason)
        self.when.setSelectedSection(QDateTimeEdit.Section.HourSection)

    def _answer(self) -> None:
        answered = self._answered
        if answered is not None:
            answered(_read(self.when.dateTime()))


def _row(parent: QWidget) -> tuple[QWidget, QHBoxLayout]:
    page = QWidget(parent)
    layout = QHBoxLayout(page)
    layout.setContentsMargins(14, 4, 16, 4)
    layout.setSpacing(12)
    return page, layout


def _shown(wall: datetime) -> QDateTime:
    # A wall clock has no zone here: none may be taken from the computer's.
    seconds = (wall - wall.min).total_seconds() - _EPOCH
    return QDateTime.fromSecsSinceEpoch(round(seconds), QTimeZone.utc())


def _read(shown: QDateTime) -> datetime:
    from datetime import UTC, datetime  # noqa: PLC0415 - at run time only here

    return datetime.fromtimestamp(shown.toSecsSinceEpoch(), UTC).replace(tzinfo=None)


_EPOCH = 62_135_596_800.0
"""Seconds from the first day of the calendar to 1970."""
