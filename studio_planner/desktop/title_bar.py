"""The head of the desk: the studio's name, what is shown of it, and planning again."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.due_badge import DueBadge
from studio_planner.desktop.page_bar import PageBar
from studio_planner.desktop.short_label import ShortLabel
from studio_planner.desktop.tongue import counted, marked, translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.plans import Outcome
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView

_FIRST = marked("title", "Plan")
_AGAIN = marked("title", "Plan again")
_STOP = marked("title", "Stop planning")
_ENOUGH = marked("title", "Good enough")
_ENOUGH_MEANS = marked("title", "Look no further and keep the best plan so far")


_BUTTON_WIDTH = 116
"""Wide enough for every verb that stands there."""

_NARROW = 800
"""Below this width the names of all pages have no room in their usual size."""


class TitleBar(QWidget):
    """Name, one quiet line, and the verb that matters.

    Signals:
        plan_asked: plan again.
        stop_asked: stop planning; what is kept by then is good enough.
    """

    plan_asked = Signal()
    stop_asked = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._quiet_line = ""
        self.name = ShortLabel(self)
        self.page_bar = PageBar(canvas, self)
        self.due = DueBadge(canvas, self)
        self.line = ShortLabel(self)
        self.plan_button = QPushButton(translate("title", _FIRST), self)
        self.stop_button = QPushButton(translate("title", _STOP), self)
        self._lay_out()
        self.plan_button.clicked.connect(self.plan_asked)
        self.stop_button.clicked.connect(self.stop_asked)
        canvas.recoloured.connect(self._recolour)
        self.show_running(running=False, possible=False)

    def _lay_out(self) -> None:
        fonts = self._canvas.fonts
        self.name.setFont(fonts.title)
        self.line.setFont(fonts.plain)
        for label in (self.name, self.line):
            label.setTextFormat(Qt.TextFormat.PlainText)
        names = QVBoxLayout()
        names.setSpacing(0)
        names.addWidget(self.name)
        names.addWidget(self.line)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 8, 16, 8)
        layout.addLayout(names, 1)
        layout.addWidget(self.page_bar, 0, Qt.AlignmentFlag.AlignVCenter)
        layout.addSpacing(8)
        layout.addWidget(self.due, 0, Qt.AlignmentFlag.AlignVCenter)
        layout.addSpacing(8)
        for button in (self.stop_button, self.plan_button):
            button.setMinimumHeight(28)
            button.setAccessibleName(button.text())
            button.setMinimumWidth(_BUTTON_WIDTH)
            layout.addWidget(button, 0, Qt.AlignmentFlag.AlignVCenter)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        narrow = self.width() < _NARROW
        self.page_bar.be_narrow(narrow)
        self.due.be_narrow(narrow)

    def _recolour(self) -> None:
        palette = self._canvas.theme.palette
        palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour("quiet"))
        self.line.setPalette(palette)

    def show_view(self, view: DeskView | None) -> None:
        """Show the name of a studio and when its plan was made."""
        planned = view is not None and view.plan is not None
        self.plan_button.setText(translate("title", _AGAIN if planned else _FIRST))
        self.plan_button.setAccessibleName(self.plan_button.text())
        if view is None:
            self.say(
                translate("title", "No studio is open"),
                translate("title", "Open a studio, or make a new one."),
            )
        else:
            self.say(view.studio.name, _line(view))

    def say(self, name: str, line: str) -> None:
        """Show a name, and a quiet line under it."""
        self.name.setText(name)
        self._quiet_line = line
        self._say_line(line)
        self._recolour()

    def show_running(self, *, running: bool, possible: bool) -> None:
        """Offer to stop while planning goes on, and to plan where there is a studio."""
        # One stands where the other stood, so that nothing beside them moves.
        self.stop_button.setVisible(running)
        self.plan_button.setVisible(not running)
        self.plan_button.setEnabled(possible)
        if not running:
            self._say_line(self._quiet_line)

    def show_progress(self, words: str, *, enough: bool) -> None:
        """Say how far planning has come, and whether the best so far may be called enough."""
        self._say_line(translate("title", "Planning: {how}").format(how=words))
        self.stop_button.setText(translate("title", _ENOUGH if enough else _STOP))
        self.stop_button.setAccessibleName(self.stop_button.text())
        self.stop_button.setToolTip(translate("title", _ENOUGH_MEANS) if enough else "")

    def say_quietly(self, words: str) -> None:
        """Say something in the quiet line, until the studio is shown anew."""
        self._quiet_line = words
        self._say_line(words)

    def _say_line(self, words: str) -> None:
        self.line.setText(words)
        self.line.setAccessibleName(words)


def _line(view: DeskView) -> str:
    from studio_planner.desktop import words  # noqa: PLC0415 - with the first studio
    from studio_planner.services.promises import promises_of  # noqa: PLC0415 - likewise

    count = len(view.studio.pieces)
    pieces = counted(
        count, translate("title", "{count} piece"), translate("title", "{count} pieces")
    )
    if view.plan is None:
        return translate("title", "{pieces}, not planned yet").format(pieces=pieces)
    promises = _promises_words([kept.outcome for kept in promises_of(view.studio, view.plan)])
    made = words.moment(view.plan.made, words.wall_of(view.studio))
    said = translate("title", "{pieces}, {promises}, planned {made}")
    return said.format(pieces=pieces, promises=promises, made=made)


def _promises_words(outcomes: Sequence[Outcome | None]) -> str:
    from studio_planner.services.how_sure import in_doubt  # noqa: PLC0415 - likewise

    if not outcomes:
        return translate("title", "no promises")
    late = sum(1 for one in outcomes if one is not None and one.late_hours)
    left = sum(1 for one in outcomes if one is None or one.leaves is None)
    doubtful = sum(in_doubt(one) for one in outcomes if one is None or not one.late_hours)
    if not (late or left or doubtful):
        return translate("title", "every promise kept")
    parts = (
        (late, translate("title", "{late} of {count} promises late")),
        (left, translate("title", "{late} of {count} not planned")),
        (doubtful, translate("title", "{late} of {count} in doubt")),
    )
    said = [text.format(late=some, count=len(outcomes)) for some, text in parts if some]
    return ", ".join(said)
