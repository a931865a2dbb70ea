"""The bench view: one task, one number, one target that a knuckle can hit."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, QTimer
from PySide6.QtGui import QKeySequence, QPainter, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.bench import bench_words
from studio_planner.desktop.bench.bench_lists import BenchLists
from studio_planner.desktop.bench.bench_taps import BenchTaps, Going
from studio_planner.desktop.bench.bench_targets import BenchTargets
from studio_planner.desktop.big_screen import letters, target_pixels
from studio_planner.desktop.row_signs import draw_cup
from studio_planner.desktop.side_rows import CUP_HOURS
from studio_planner.desktop.tongue import translate
from studio_planner.services.bench import bench_of

if TYPE_CHECKING:
    from datetime import datetime

    from PySide6.QtGui import QPaintEvent, QResizeEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.bench import Bench, BenchTask

TICK_MILLISECONDS = 5_000
"""How often the numbers are counted anew; they are whole minutes."""

_LOW = 600
"""Under this height margins are narrow, and six targets stand in one row if that is wide."""

_ROOM_FOR_SIX = 1000
"""From which width on six targets beside each other have room for their words."""

_GIVING_WAY = (
    *((3, 100), (2, 100), (1, 100), (0, 100)),
    *((0, 90), (0, 80), (0, 70), (0, 60), (0, 50)),
)
"""Lines of each list, and how large letters are in percent: what is tried until all fits."""

_CUP_SHAPE = 0.8
"""How wide a cup is to its height."""

_NUMBER_LINE = 1.02
"""How high the number's line is, in parts of its letters: without the air over them."""

_SHARES = {"number": 0.2, "verb": 0.075, "about": 0.042, "line": 0.03, "target": 0.045}
"""How high each kind of line is, in parts of the window's height."""


class Cup(QWidget):
    """A cup as large as there is room, drained as the time runs out."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Start with an empty cup."""
        super().__init__(parent)
        self._canvas = canvas
        self.level = 0.0

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        high = min(self.width() / _CUP_SHAPE, float(self.height())) * 0.85
        wide = high * _CUP_SHAPE
        rect = QRectF(self.width() - wide, (self.height() - high) / 2.0, wide, high)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            inside = rect.adjusted(4.0, 4.0, -4.0, -4.0)
            draw_cup(painter, self._canvas.theme, inside, self.level)


class BenchWindow(QWidget):
    """The whole screen; what is done on it is changed through the desk, and can be undone.

    A pour takes two taps: one when A meets B, one when the last film is spread. The times of
    both are written down. A step takes one tap once it is done, a touch test one for what is
    felt for and one for what was found; the last tap can be taken back.
    """

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show what the desk's studio needs next."""
        super().__init__(parent, Qt.WindowType.Window)
        self._desk = desk
        self._position = 0
        self._bench: Bench | None = None
        self.taps = BenchTaps(
            desk, Going(self.go_on, self.go_back, self.close), self._after_tap
        )
        self.setWindowTitle(translate("bench", "Bench - Studio planner"))
        self.clock = self._label("line")
        self.verb = self._label("verb")
        self.about = self._label("about")
        self.number = self._label("number")
        self.number.setWordWrap(False)
        self.number.setAlignment(Qt.AlignmentFlag.AlignBottom)
        self.meaning = self._label("about")
        self.left = self._label("line")
        self.cup = Cup(desk.canvas, self)
        self.lists = BenchLists(self)
        self.targets = BenchTargets(self)
        self.target, self.other, self.touch, self.undo, self.leave, self.weigh = (
            self.targets.buttons
        )
        self._lay_out()
        for keys, does in (("Esc", self.close), ("Right", self.go_on), ("Left", self.go_back)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.activated.connect(does)
        self._tick = QTimer(self)
        self._tick.setInterval(TICK_MILLISECONDS)
        self._tick.timeout.connect(self.show_now)
        desk.canvas.recoloured.connect(self._recolour)
        desk.changes.changed.connect(self.show_now)
        self._recolour()

    def _label(self, kind: str) -> QLabel:
        label = QLabel(self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        label.setProperty("kind", kind)
        return label

    def _lay_out(self) -> None:
        number = QHBoxLayout()
        number.addWidget(self.number)
        number.addWidget(self.meaning, 1, Qt.AlignmentFlag.AlignBottom)
        task = QVBoxLayout()
        task.addWidget(self.clock)
        task.addWidget(self.verb)
        task.addWidget(self.about)
        task.addLayout(number)
        task.addWidget(self.left)
        head = QHBoxLayout()
        head.addLayout(task, 3)
        head.addWidget(self.cup, 1)
        layout = self._whole = QVBoxLayout(self)
        # What stands in it changes while it is shown; the screen is as large as it is.
        layout.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)
        layout.addLayout(head)
        layout.addStretch(1)
        layout.addLayout(self.lists)
        layout.addStretch(1)
        layout.addWidget(self.targets)

    def begin(self) -> None:
        """Take the whole screen and show what is next."""
        self.show_now()
        self.showFullScreen()
        self._tick.start()
        self.target.setFocus()

    # What is shown

    @property
    def task(self) -> BenchTask | None:
        """The task that is shown."""
        tasks = self._bench.tasks if self._bench else ()
        return tasks[self._position] if self._position < len(tasks) else None

    def show_now(self) -> None:
        """Ask anew what is next, and count."""
        session = self._desk.session
        if session is None:
            return
        now, studio = session.now(), session.studio
        self._bench = bench_of(studio, studio.plan, now)
        self._position = min(self._position, max(len(self._bench.tasks) - 1, 0))
        written = f"   {self.taps.written}" if self.taps.written else ""
        self.clock.setText(words.moment(now, words.wall_of(studio)) + written)
        self._show_task(now)
        self._show_lists(now)
        self._fit()

    def _show_task(self, now: datetime) -> None:
        session, task = self._desk.session, self.task
        if session is None:
            return
        studio = session.studio
        if task is None:
            self.verb.setText(translate("bench", "Nothing needs hands."))
            for label in (self.about, self.number, self.meaning, self.left):
                label.setText("")
        else:
            shown = (
                bench_words.number(task, now)
                if self.taps.met is None
                else bench_words.counted_up(self.taps.met[1], now, mixed=task.mixed)
            )
            self.verb.setText(bench_words.verb(studio, task))
            self.about.setText(bench_words.about(studio, task))
            self.number.setText(shown.amount)
            self.meaning.setText(f"{shown.unit} {shown.meaning}".strip())
            self.left.setText(bench_words.if_left(task))
        hours = 0.0 if task is None else (task.counts_to - now) / timedelta(hours=1)
        self.cup.level = min(max(hours / CUP_HOURS, 0.0), 1.0)
        self.cup.update()
        self.targets.offer(self.taps.offers(task))

    def _show_lists(self, now: datetime) -> None:
        session, bench = self._desk.session, self._bench
        if session is None or bench is None:
            return
        studio = session.studio
        self.lists.say(
            (
                (
                    translate("bench", "Then"),
                    bench_words.next_lines(studio, bench, self._position),
                ),
                (
                    translate("bench", "Windows closing"),
                    bench_words.closing_lines(studio, bench, now),
                ),
                (translate("bench", "Ready"), bench_words.ready_lines(studio, bench)),
            )
        )

    # Taps

    def tap(self) -> None:
        """Hit the first target."""
        self.target.click()

    def _after_tap(self, written: bool) -> None:  # noqa: FBT001 - a fact
        if written:
            self._position = 0
        self.show_now()

    def go_on(self) -> None:
        """Show the next thing, from the last one the first; forget what was begun."""
        count = len(self._bench.tasks) if self._bench else 0
        if self.taps.met is None:
            self._position = (self._position + 1) % max(count, 1)
        self.taps.forget()
        self.show_now()

    def go_back(self) -> None:
        """Show the thing before."""
        if self.taps.met is None:
            self._position = max(self._position - 1, 0)
            self.show_now()

    # Size and colours

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Let the lists give way to the task and the targets, then all letters to the room."""
        bold, low = self._desk.canvas.fonts.bold, self.height() < _LOW
        self._whole.setContentsMargins(*((16, 4, 16, 6) if low else (32, 20, 32, 24)))
        first, others = (letters(self, bold, _SHARES[kind]) for kind in ("target", "line"))
        one_row = low and self.width() >= _ROOM_FOR_SIX
        self.targets.fit(target_pixels(self), first, others, rows=1 if one_row else 2)
        for most, percent in _GIVING_WAY:
            self.lists.keep(most)
            self._write(percent / 100.0)
            if self._all_fits:
                break

    def _write(self, factor: float) -> None:
        bold = self._desk.canvas.fonts.bold
        for label in self.findChildren(QLabel):
            label.setFont(letters(self, bold, factor * _SHARES[label.property("kind")]))
        self.number.setFixedHeight(round(_NUMBER_LINE * self.number.font().pixelSize()))

    @property
    def _all_fits(self) -> bool:
        self._whole.invalidate()
        self._whole.activate()  # what lies in it is measured anew, too
        high = self._whole.totalHeightForWidth(self.width())
        wide = self._whole.totalMinimumSize().width()
        return high <= self.height() and wide <= self.width()

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(480, 320)

    def _recolour(self) -> None:
        theme = self._desk.canvas.theme
        self.setPalette(theme.palette)
        self.setAutoFillBackground(True)
        for label, colour in (
            (self.number, "now"),
            (self.meaning, "now"),
            (self.left, "quiet"),
            (self.clock, "quiet"),
        ):
            palette = theme.palette
            palette.setColor(palette.ColorRole.WindowText, theme.colour(colour))
            label.setPalette(palette)
