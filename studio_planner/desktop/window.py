"""The desk's window: it stands at once, and brings the parts of an open studio in after."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QMainWindow, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.desk_backups import DeskBackups
from studio_planner.desktop.desk_changes import DeskChanges
from studio_planner.desktop.desk_planning import DeskPlanning
from studio_planner.desktop.due_pages.due_corner import DueCorner
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.measures import LEAST_HEIGHT, LEAST_WIDTH
from studio_planner.desktop.menus import build_menus
from studio_planner.desktop.notice_line import NoticeLine
from studio_planner.desktop.other_windows import OtherWindows
from studio_planner.desktop.page_keys import PLAN, SET_UP, STUDIO
from studio_planner.desktop.page_stack import PageStack
from studio_planner.desktop.reminding.desk_reminding import DeskReminding
from studio_planner.desktop.theme import Look, theme_for, wear
from studio_planner.desktop.timeline_work.shared_choice import SharedChoice
from studio_planner.desktop.title_bar import TitleBar
from studio_planner.desktop.tongue import translate
from studio_planner.services.setting_up import plan_possible

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent, QPaintEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.desk_parts import DeskParts
    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.desktop.guide_line import GuideLine
    from studio_planner.desktop.planning_process import PlanningProcess
    from studio_planner.desktop.timeline_work.work_line import WorkLine
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline
    from studio_planner.services.desk import DeskSession, DeskView
    from studio_planner.services.ports import WallClock, WaysOut
    from studio_planner.services.questions.sentences import Voice

TICK_MILLISECONDS = 15_000
"""How often the now line asks the clock, and the file is looked at for others' changes."""


class DeskWindow(QMainWindow):
    """The window on one studio; nothing it shows is planned here, it reads the kept plan.

    Signals:
        look_chosen: the maker chose this Look.
    """

    look_chosen = Signal(object)

    def __init__(  # noqa: PLR0913 - all but one by name
        self,
        clock: WallClock,
        *,
        look: Look = Look.LIGHT,
        dialogs: Dialogs | None = None,
        zone: str | None = None,
        data_folder: Callable[[], Path] | None = None,
        ways_out: WaysOut | None = None,
    ) -> None:
        """Build the frame of the desk; a new studio begins with `zone`, else the system's.

        Backups go into the maker's own `data_folder`; without one none are made. The maker is
        reminded by `ways_out`, and of nothing without them.
        """
        super().__init__()
        self.clock = clock
        self.session: DeskSession | None = None
        self._dialogs = dialogs
        self._zone = zone
        self._path_to_open: Path | None = None
        self._side_minute = 0
        self._leaving = False
        self.canvas = Canvas(theme_for(look), fonts_from(QApplication.font()), clock.now())
        self.title_bar = TitleBar(self.canvas, self)
        self.notice = NoticeLine(self.canvas, self)
        self.others = OtherWindows(self, data_folder, self)
        self.pages = PageStack(self, self.title_bar.page_bar, self)
        self._lay_out()
        self.verbs = build_menus(self)
        self._planning = DeskPlanning(self, self)
        self.changes = DeskChanges(self, self._planning, self)
        self.backups = DeskBackups(self, data_folder, self)
        self.reminding = DeskReminding(self, ways_out, _voice, self)
        self.due = DueCorner(self, self.title_bar.due, self.reminding, self._whole_desk)
        self.changes.offer()
        self.title_bar.plan_asked.connect(self.plan_again)
        self.title_bar.stop_asked.connect(self.stop_planning)
        self._tick = QTimer(self)
        self._tick.setInterval(TICK_MILLISECONDS)
        self._tick.timeout.connect(self.tick)
        self._tick.start()
        self._show_name(None)

    def _lay_out(self) -> None:
        whole = self._whole_desk = QWidget(self)
        layout = self._whole = QVBoxLayout(whole)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.title_bar)
        layout.addWidget(self.notice)
        layout.addWidget(self.pages, 1)
        self.setCentralWidget(whole)
        self.resize(1280, 800)
        self.setMinimumSize(LEAST_WIDTH, LEAST_HEIGHT)

    # The parts, each made when it is first needed: the window is up before any of them.

    @cached_property
    def parts(self) -> DeskParts:
        """Timeline, room and side."""
        from studio_planner.desktop.desk_parts import DeskParts  # noqa: PLC0415

        parts = DeskParts(self.canvas, self._attempt, self)
        self.pages.hold(PLAN, parts)
        parts.timeline.work_in(self)
        self.pages.choice = SharedChoice(parts.timeline)
        parts.timeline.new_asked.connect(self.ask_new)
        parts.timeline.set_up_asked.connect(lambda: self.go_to(STUDIO, SET_UP))
        parts.timeline.setFocus()
        return parts

    @cached_property
    def guide(self) -> GuideLine:
        """What leads through a studio that was not planned yet."""
        from studio_planner.desktop.guide_line import GuideLine  # noqa: PLC0415

        guide = GuideLine(self, self.pages, self)
        self._whole.insertWidget(self._whole.indexOf(self.pages), guide)
        return guide

    @property
    def timeline(self) -> WorkingTimeline:
        """The timeline."""
        return self.parts.timeline

    @property
    def work_line(self) -> WorkLine:
        """The line under the title that says how work on the plan goes."""
        return self.parts.work_line

    @property
    def planning(self) -> PlanningProcess:
        """The process that plans again."""
        return self._planning.process

    def plan_with(self, process: PlanningProcess) -> PlanningProcess:
        """Listen to a planning process, and use it from now on."""
        return self._planning.listen_to(process)

    @cached_property
    def dialogs(self) -> Dialogs:
        """The questions about files."""
        from studio_planner.desktop.dialogs import Dialogs  # noqa: PLC0415

        return self._dialogs or Dialogs()

    # The studio

    def open_soon(self, path: Path) -> None:
        """Open a studio file as soon as the window has been painted once."""
        self._path_to_open = path
        self.title_bar.say(path.stem, translate("window", "Opening…"))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        path, self._path_to_open = self._path_to_open, None
        if path is not None:
            QTimer.singleShot(0, self, lambda: self._open_now(path))

    def _open_now(self, path: Path) -> None:
        if not self.open_path(path):
            self._show_view(None)

    def open_path(self, path: Path) -> bool:
        """Open a studio file; what is wrong with it is said in the notice line."""
        from studio_planner.services.desk import DeskSession  # noqa: PLC0415

        try:
            session = DeskSession(path, self.clock)
        except StudioError as error:
            self.notice.say(f"{error} {self.backups.way_back(path)}".strip(), wrong=True)
            return False
        self.show_session(session)
        return True

    def show_session(self, session: DeskSession) -> None:
        """Show an open studio in place of the one before."""
        self.reminding.leave()
        if self.session is not None:
            self.session.close()
        self.session = session
        self._planning.leave(session.path)
        self.notice.hide()
        self._show_view(session.view)
        self.canvas.show_week()
        self.backups.make_soon()
        if self.others.mix_runs:
            self.notice.say(
                translate("window", "A mix is still at the scale: F12 goes on with it.")
            )
        self.reminding.show_session(session)

    def _show_view(self, view: DeskView | None) -> None:
        self.canvas.now = self.clock.now()
        parts = self.parts
        self.canvas.show_view(view)
        parts.show_view()
        self.pages.show_view(view)
        if view is not None and view.plan is None:
            self.guide.show_view(view)
        elif "guide" in self.__dict__ and self.guide.leads:
            self.guide.show_view(None)
            self.canvas.show_plan()  # the first plan may begin days ahead: all of it is shown
        self._show_name(view)
        self.reminding.look_soon()

    def _show_name(self, view: DeskView | None) -> None:
        self.title_bar.show_view(view)
        name = view.studio.name if view else translate("window", "No studio")
        self.setWindowTitle(f"{name} - Studio planner")
        self.verbs["copy"].setEnabled(view is not None)
        self._planning.offer()
        self.changes.offer()
        self.backups.offer()

    def tell(self, words: str) -> None:
        """Say news in the notice line, from where it goes by itself."""
        self.notice.say(words, passing=self.clock.now())

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
        from studio_planner.desktop.new_studio import make_studio  # noqa: PLC0415

        path = self.dialogs.new(self, self._folder())
        if path is None or not self._attempt(lambda: make_studio(path, self._zone)):
            return
        if self.open_path(path):
            self.go_to(STUDIO, SET_UP)

    def ask_copy(self) -> None:
        """Ask for a name and save a copy under it; the studio itself stays open."""
        session = self.session
        path = self.dialogs.copy(self, self._folder()) if session is not None else None
        if path is None or session is None:
            return
        if self._attempt(lambda: session.save_copy(path, overwrite=True)):
            self.tell(translate("window", "A copy is saved as {name}.").format(name=path.name))

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page, and on it the thing of that key."""
        self.pages.go_to(page, key)
        if page == PLAN and key:
            self.timeline.choose_piece(key)

    def weigh(self, piece: str, coat: str) -> None:
        """Take the whole screen to weigh the mix that a coat is poured from."""
        self.others.show_scale((piece, coat))

    def weigh_chosen(self) -> None:
        """Weigh the mix of the chosen bar; where none is to be weighed, the next one."""
        from studio_planner.services.ribbons import Ribbon  # noqa: PLC0415 - when asked for

        bar = self.timeline.lanes.bar(self.timeline.currentIndex())
        chosen = (bar.lane.piece.key, bar.coat.key) if isinstance(bar, Ribbon) else None
        self.others.show_scale(chosen)

    def plan_again(self) -> None:
        """Plan the studio in a process of its own, or show what it lacks for a plan."""
        if self.session is not None and not plan_possible(self.session.studio):
            self.go_to(STUDIO, SET_UP)
            self.tell(
                translate(
                    "planning",
                    "A plan needs hands, a room, a level spot and a piece. Here is what lacks.",
                )
            )
            return
        self._planning.start()

    def stop_planning(self) -> None:
        """Stop planning; the best plan so far, or the one that was kept, stays."""
        self._planning.stop()

    def show_session_view(self) -> None:
        """Show the studio as the session has it now; the view stays where it is."""
        if self.session is not None:
            self._show_view(self.session.view)

    def read_again(self) -> bool:
        """Read the file as it is now and show it; the view stays where it is."""
        session = self.session
        if session is None or not self._attempt(session.read_again):
            return False
        self._show_view(session.view)
        return True

    def choose_look(self, look: Look) -> None:
        """Change between light and dark because the maker wants it."""
        self.set_look(look)
        self.look_chosen.emit(look)

    def set_look(self, look: Look) -> None:
        """Change between light and dark."""
        application = QApplication.instance()
        theme = theme_for(look)
        if isinstance(application, QApplication):
            wear(application, theme)
        self.canvas.set_theme(theme)
        self.verbs["dark" if look is Look.DARK else "light"].setChecked(True)

    # Time passing

    def tick(self) -> None:
        """Move the now line, and see whether somebody else has changed the file."""
        self.canvas.set_now(self.clock.now())
        self.notice.tick(self.canvas.now)
        session = self.session
        if session is None or self._planning.running:
            return
        session.view.now = session.now()
        self._attempt(self._look_for_changes)
        minute = int(session.view.now.timestamp() // 60.0)
        if minute != self._side_minute:
            self._side_minute = minute
            self.parts.show_side()

    def _look_for_changes(self) -> None:
        session = self.session
        if session is not None and session.changed_elsewhere() and self.read_again():
            said = translate(
                "window", "The studio was changed in another window; this is how it is now."
            )
            self.tell(said)

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.ActivationChange and self.isActiveWindow():
            QTimer.singleShot(0, self, self.tick)
            self.reminding.look_soon()

    @override
    def closeEvent(self, event: QCloseEvent) -> None:
        if self._stays_in_tray(event):
            return
        self._tick.stop()
        self._planning.leave()
        self.reminding.close()
        if self.session is not None:
            self.session.close()
            self.session = None
        super().closeEvent(event)

    def _stays_in_tray(self, event: QCloseEvent) -> bool:
        """Whether the desk goes on reminding after its window was closed."""
        if self._leaving or not self.reminding.closed.stays:
            return False
        event.ignore()
        self.hide()
        self.reminding.closed.stay()
        return True

    def leave(self) -> None:
        """End the desk, from the tray, too."""
        self._leaving = True
        hidden = self.isHidden()
        self.close()
        if hidden:
            QApplication.quit()

    def come_back(self) -> None:
        """Show the window again, wherever it is."""
        self.setWindowState(self.windowState() & ~Qt.WindowState.WindowMinimized)
        self.show()
        self.raise_()
        self.activateWindow()

    def _folder(self) -> str:
        return str(self.session.path.parent) if self.session else ""


def _voice(studio: Studio) -> Voice:
    from studio_planner.desktop.timeline_work.voice import DeskVoice  # noqa: PLC0415 - when needed

    return DeskVoice(studio)
