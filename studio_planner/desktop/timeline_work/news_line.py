"""The line over the timeline that says which windows moved, and which were missed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust
from studio_planner.desktop import words
from studio_planner.desktop.measures import LINE_HEIGHT
from studio_planner.desktop.page_keys import PIECES
from studio_planner.desktop.short_label import ShortLabel
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.after_missing import missed_windows
from studio_planner.services.log_book.moved_windows import moved_windows

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.log_book.after_missing import Missed


@dataclass(frozen=True, slots=True)
class WindowNews:
    """One thing to say of a window; `missed` ones have ways out, others may need a new plan."""

    words: str
    piece: str
    coat: str
    missed: bool
    fits: bool


def window_news(view: DeskView) -> tuple[WindowNews, ...]:
    """What there is to say of windows: missed ones, then those that hold their pour no more."""
    missed = tuple(_missed(view))
    named = {(one.piece, one.coat) for one in missed}
    moved = (one for one in _moved(view) if (one.piece, one.coat) not in named)
    return (*missed, *moved)


def _missed(view: DeskView) -> Iterable[WindowNews]:
    wall = words.wall_of(view.studio)
    for one in missed_windows(view):
        if _is_dealt_with(view, one):
            continue
        text = (
            translate("moved", "{coat}: its window closed {when}.")
            if one.closed <= view.now
            else translate("moved", "{coat}: its window closes {when}, too soon for the pour.")
        )
        said = text.format(coat=one.name, when=words.moment(one.closed, wall))
        yield WindowNews(said, one.piece, one.coat, missed=True, fits=False)


def _is_dealt_with(view: DeskView, missed: Missed) -> bool:
    """Whether the plan has it poured otherwise later on: scuffed, or after a touch test."""
    coats = () if view.plan is None else view.plan.coats
    planned = next((c for c in coats if (c.piece, c.coat) == (missed.piece, missed.coat)), None)
    if planned is None or planned.start < view.now:
        return False
    tested = planned.window is not None and planned.window.trust is Trust.TEST_FIRST
    return planned.joint is Joint.SCUFFED or tested


def _moved(view: DeskView) -> Iterable[WindowNews]:
    voice = DeskVoice(view.studio)
    for one in moved_windows(view):
        text = translate("moved", "The window of {coat} moved. {what}")
        said = text.format(coat=one.name, what=" ".join(voice.all_of(one.sentences)))
        yield WindowNews(said, one.piece, one.coat, missed=False, fits=one.fits)


class NewsLine(QWidget):
    """One sentence at a time; it is not there while there is nothing to say.

    Signals:
        shown: piece and coat of the pour that the maker wants to see.
    """

    shown = Signal(str, str)

    def __init__(
        self, canvas: Canvas, desk: WorkDesk | None, parent: QWidget | None = None
    ) -> None:
        """Say nothing yet; without a desk there is nothing to do about what is said."""
        super().__init__(parent)
        self._desk = desk
        self._canvas = canvas
        self.news: tuple[WindowNews, ...] = ()
        self._place = 0
        self.words = ShortLabel(self)
        self.more = self._verb(self._go_on)
        self.show_it = self._verb(self._show)
        self.plan = self._verb(self._plan)
        self.ways = self._verb(self._ask_ways)
        self.setMinimumHeight(LINE_HEIGHT)
        self.setAutoFillBackground(True)
        self.words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 4, 16, 4)
        layout.setSpacing(10)
        layout.addWidget(self.words, 1)
        for button in (self.ways, self.plan, self.show_it, self.more):
            layout.addWidget(button)
        canvas.recoloured.connect(self._recolour)
        self._recolour()
        self.hide()

    def _verb(self, does: Callable[[], object]) -> QPushButton:
        button = QPushButton(self)
        button.setMinimumHeight(24)
        button.clicked.connect(lambda _checked=False: does())
        return button

    @override
    def minimumSizeHint(self) -> QSize:
        # A narrow window is not made wide for it: words are cut short instead.
        return QSize(0, LINE_HEIGHT)

    def show_view(self, view: DeskView | None) -> None:
        """Ask anew what there is to say."""
        news = () if view is None else window_news(view)
        if news != self.news:
            self._place = 0
        self.news = news
        self._say()

    def _say(self) -> None:
        self.setVisible(bool(self.news))
        if not self.news:
            return
        one = self.news[self._place]
        self.words.setText(one.words)
        self.words.setAccessibleName(one.words)
        left = len(self.news) - 1
        self._name(self.more, translate("moved", "And {count} more").format(count=left))
        self._name(self.show_it, translate("moved", "Show it"))
        self._name(self.plan, translate("moved", "Plan again"))
        self._name(self.ways, translate("moved", "What now?"))
        self.more.setVisible(left > 0)
        self.plan.setVisible(not one.missed and not one.fits)
        self.ways.setVisible(one.missed)

    @staticmethod
    def _name(button: QPushButton, said: str) -> None:
        button.setText(said)
        button.setAccessibleName(said)

    def _go_on(self) -> None:
        self._place = (self._place + 1) % max(len(self.news), 1)
        self._say()

    def _show(self) -> None:
        one = self.news[self._place]
        self.shown.emit(one.piece, one.coat)

    def _plan(self) -> None:
        if self._desk is not None:
            self._desk.verbs["plan"].trigger()

    def _ask_ways(self) -> None:
        if self._desk is not None:
            self._desk.go_to(PIECES, f"{self.news[self._place].piece}/missed")

    def _recolour(self) -> None:
        palette = self._canvas.theme.palette
        palette.setColor(palette.ColorRole.Window, self._canvas.theme.colour("panel"))
        palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour("now"))
        self.setPalette(palette)
        self.words.setPalette(palette)
