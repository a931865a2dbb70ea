"""The desk's window: timeline, room and side panel, and the verbs over them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QTimer
from PySide6.QtWidgets import QApplication, QHBoxLayout, QMainWindow, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.dialogs import Dialogs
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.menus import build_menus
from studio_planner.desktop.notice_line import NoticeLine
from studio_planner.desktop.planning_process import PlanningProcess
from studio_planner.desktop.room_strip import RoomStrip
from studio_planner.desktop.side_panel import SidePanel
from studio_planner.desktop.theme import Look, theme_for
from studio_planner.desktop.time_scroll import TimeScroll
from studio_planner.desktop.timeline import Timeline
from studio_planner.desktop.title_bar import TitleBar
from studio_planner.services.desk import DeskSession, DeskView, new_studio

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent

    from studio_planner.services.ports import WallClock

TICK_MILLISECONDS = 15_000
"""How often the now line asks the clock, and the file is looked at for others' changes."""


class DeskWindow(QMainWindow):
    """The window on one studio; nothing it shows is planned here, it reads the kept plan."""

    def __init__(
        self,
        clock: WallClock,
        *,
        look: Look = Look.LIGHT,
        dialogs: Dialogs | None = None,
        planning: PlanningProcess | None = None,
        zone: str = "UTC",
    ) -> None:
        """Build the desk without a studio; `zone` is what a new studio begins with."""
        super().__init__()
        self.clock = clock
        self.dialogs = dialogs or Dialogs()
        self.planning = planning or PlanningProcess()
        self.session: DeskSession | None = None
        self._zone = zone
        self.canvas = Canvas(theme_for(look), fonts_from(QApplication.font()), clock.now())
        self.title_bar = TitleBar(self.canvas, self)
        self.notice = NoticeLine(self.canvas, self)
        self.timeline = Timeline(self.canvas, self)
        self.room = RoomStrip(self.canvas, self)
        self.time_scroll = TimeScroll(self.canvas.scale, self)
        self.side = SidePanel(self.canvas, self)
        self.verbs = build_menus(self)
        self._lay_out()
        self._connect()
        self._tick = QTimer(self)
        self._tick.setInterval(TICK_MILLISECONDS)
        self._tick.timeout.connect(self.tick)
        self._tick.start()
        self._show_view(None)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(0)
        left.addWidget(self.timeline, 1)
        left.addWidget(self.room)
        left.addWidget(self.time_scroll)
        middle = QHBoxLayout()
        middle.setSpacing(0)
        middle.addLayout(left, 1)
        middle.addWidget(self.side)
        whole = QWidget(self)
        layout = QVBoxLayout(whole)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.title_bar)
        layout.addWidget(self.notice)
        layout.addLayout(middle, 1)
        self.setCentralWidget(whole)
        self.setTabOrder(self.timeline, self.side.hands)
        self.setTabOrder(self.side.hands, self.side.promises)
        self.setTabOrder(self.side.promises, self.title_bar.plan_button)
        self.timeline.setFocus()
        self.resize(1280, 800)
        self.setMinimumSize(880, 560)

    def _connect(self) -> None:
        self.timeline.piece_chosen.connect(self._piece_chosen)
        self.side.piece_chosen.connect(self.timeline.choose_piece)
        self.title_bar.plan_asked.connect(self.plan_again)
        self.title_bar.stop_asked.connect(self.planning.stop)
        self.planning.started.connect(self._planning_started)
        self.planning.planned.connect(self._planned)
        self.planning.failed.connect(self._not_planned)

    # The studio

    def open_path(self, path: Path) -> bool:
        """Open a studio file; what is wrong with it is said in the notice line."""
        try:
            session = DeskSession(path, self.clock)
        except StudioError as error:
            self.notice.say(str(error), wrong=True)
            return False
        self.show_session(session)
        return True

    def show_session(self, session: DeskSession) -> None:
        """Show an open studio in place of the one before."""
        if self.session is not None:
            self.session.close()
        self.session = session
        self.notice.hide()
        self._show_view(session.view)
        self.canvas.show_week()

    def _show_view(self, view: DeskView | None) -> None:
        self.canvas.now = self.clock.now()
        self.canvas.show_view(view)
        self.timeline.show_lanes()
        self.title_bar.show_view(view)
        self.title_bar.show_running(running=self.planning.running)
        self.title_bar.plan_button.setEnabled(view is not None and not self.planning.running)
        name = view.studio.name if view else "No studio"
        self.setWindowTitle(f"{name} - Studio planner")
        for verb in ("copy", "plan"):
            self.verbs[verb].setEnabled(view is not None)
        row = self.canvas.current_row
        lanes = view.lanes if view else ()
        self.side.show_lane(lanes[row] if 0 <= row < len(lanes) else None)
        # What needs hands asks many clocks: the window is up before it is asked.
        QTimer.singleShot(0, self, self._show_side)

    def _show_side(self) -> None:
        view = self.session.view if self.session else None
        self._attempt(lambda: self.side.show_view(view))

    def _piece_chosen(self, key: str) -> None:
        lanes = self.timeline.lanes.lanes
        self.side.show_lane(next((lane for lane in lanes if lane.piece.key == key), None))

    def _attempt(self, action: Callable[[], object]) -> bool:
        try:
            action()
        except StudioError as error:
            self.notice.say(str(error), wrong=True)
            return False
        return True

    # Verbs

    def ask_open(self) -> None:
        """Ask for a studio file and open it."""
        path = self.dialogs.open(self, self._folder())
        if path is not None:
            self.open_path(path)

    def ask_new(self) -> None:
        """Ask where a new, empty studio goes, make it and open it."""
        path = self.dialogs.new(self, self._folder())
        if path is not None and self._attempt(lambda: new_studio(path, zone=self._zone)):
            self.open_path(path)

    def ask_copy(self) -> None:
        """Ask for a name and save a copy under it; the studio itself stays open."""
        session = self.session
        path = self.dialogs.copy(self, self._folder()) if session is not None else None
        if path is None or session is None:
            return
        if self._attempt(lambda: session.save_copy(path, overwrite=True)):
            self.notice.say(f"A copy is saved as {path.name}.")

    def plan_again(self) -> None:
        """Plan the studio again in a process of its own."""
        if self.session is not None:
            self.planning.start(self.session.path)

    def _planning_started(self) -> None:
        self.title_bar.show_running(running=True)
        self.verbs["plan"].setEnabled(False)
        self.verbs["stop"].setEnabled(True)

    def _planning_ended(self) -> None:
        self.title_bar.show_running(running=False)
        self.title_bar.plan_button.setEnabled(self.session is not None)
        self.verbs["plan"].setEnabled(self.session is not None)
        self.verbs["stop"].setEnabled(False)

    def _planned(self) -> None:
        self._planning_ended()
        if self.read_again():
            self.notice.say("Planned again.")

    def _not_planned(self, why: str) -> None:
        self._planning_ended()
        if why:
            self.notice.say(why, wrong=True)
        else:
            self.notice.say("Planning was stopped; the plan is as it was.")

    def read_again(self) -> bool:
        """Read the file as it is now and show it; the view stays where it is."""
        session = self.session
        if session is None or not self._attempt(session.read_again):
            return False
        self._show_view(session.view)
        return True

    def set_look(self, look: Look) -> None:
        """Change between light and dark."""
        application = QApplication.instance()
        theme = theme_for(look)
        if isinstance(application, QApplication):
            application.setPalette(theme.palette)
        self.canvas.set_theme(theme)
        self.timeline.show_lanes()

    # Time passing

    def tick(self) -> None:
        """Move the now line, and see whether somebody else has changed the file."""
        self.canvas.set_now(self.clock.now())
        session = self.session
        if session is None or self.planning.running:
            return
        session.view.now = session.now()
        self._attempt(self._look_for_changes)
        self._show_side()

    def _look_for_changes(self) -> None:
        session = self.session
        if session is not None and session.changed_elsewhere() and self.read_again():
            self.notice.say("The studio was changed in another window; this is how it is now.")

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.ActivationChange and self.isActiveWindow():
            QTimer.singleShot(0, self, self.tick)

    @override
    def closeEvent(self, event: QCloseEvent) -> None:
        self._tick.stop()
        self.planning.close()
        if self.session is not None:
            self.session.close()
            self.session = None
        super().closeEvent(event)

    def _folder(self) -> str:
        return str(self.session.path.parent) if self.session else ""
