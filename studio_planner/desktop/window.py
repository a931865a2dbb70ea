"""The desk's window: it stands at once, and brings the parts of an open studio in after."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QTimer, Signal
from PySide6.QtWidgets import QApplication, QVBoxLayout
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.desk_changes import DeskChanges
from studio_planner.desktop.desk_files import DeskFiles
from studio_planner.desktop.desk_look import DeskLook
from studio_planner.desktop.desk_planning import DeskPlanning
from studio_planner.desktop.desk_presence import DeskPresence
from studio_planner.desktop.desk_time import DeskTime
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.late_parts import LateParts
from studio_planner.desktop.log_drops import LogDrops
from studio_planner.desktop.measures import LEAST_HEIGHT, LEAST_WIDTH
from studio_planner.desktop.menus import build_menus
from studio_planner.desktop.notice_line import NoticeLine
from studio_planner.desktop.other_windows import OtherWindows
from studio_planner.desktop.page_keys import PLAN, SET_UP, STUDIO
from studio_planner.desktop.page_stack import PageStack
from studio_planner.desktop.theme import Look, theme_for
from studio_planner.desktop.title_bar import TitleBar
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent, QPaintEvent

    from studio_planner.desktop.desk_parts import DeskParts
    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.desktop.guide_line import GuideLine
    from studio_planner.desktop.planning_process import PlanningProcess
    from studio_planner.desktop.reading_watch import ReadingWatch
    from studio_planner.desktop.timeline_work.work_line import WorkLine
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline
    from studio_planner.services.desk import DeskSession, DeskView
    from studio_planner.services.ports import WallClock, WaysOut


class DeskWindow(LateParts):
    """The window on one studio; nothing it shows is planned here, it reads the kept plan.

    Signals:
        look_chosen: the maker chose this Look.
        opened: another studio is shown.
    """

    look_chosen = Signal(object)
    opened = Signal()

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
        super().__init__(clock, dialogs, data_folder, ways_out)
        self.canvas = Canvas(theme_for(look), fonts_from(QApplication.font()), clock.now())
        self.title_bar = TitleBar(self.canvas, self)
        self.notice = NoticeLine(self.canvas, self)
        self.others = OtherWindows(self, data_folder, self)
        self.pages = PageStack(self, self.title_bar.page_bar, self)
        self.page_of = self.pages.page
        self.pages.currentChanged.connect(lambda _index: self.notice.pass_by())
        self._lay_out()
        self.files = DeskFiles(self, zone, self)
        self.open_soon, self.open_path = self.files.open_soon, self.files.open_path
        self._planning = DeskPlanning(self, self)
        self.plan_again, self.stop_planning = self._planning.ask, self._planning.stop
        self.plan_with = self._planning.listen_to
        self.weigh, self.weigh_chosen = self.others.weigh, self.others.weigh_chosen
        looks = DeskLook(self)
        self.choose_look, self.set_look = looks.choose, looks.set
        self.verbs = build_menus(self)
        self.changes = DeskChanges(self, self._planning, self)
        self._presence = DeskPresence(self, self)
        self.leave, self.come_back = self._presence.leave, self._presence.come_back
        self.end = self._presence.end
        self.offer_due()
        self.changes.offer()
        self.title_bar.plan_asked.connect(self.plan_again)
        self.title_bar.stop_asked.connect(self.stop_planning)
        self._time = DeskTime(self, self._planning, self)
        self.tick = self._time.tick
        self._show_name(None)

    def _lay_out(self) -> None:
        layout = self._whole = QVBoxLayout(self.whole_desk)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.title_bar)
        layout.addWidget(self.notice)
        layout.addWidget(self.pages, 1)
        self.setCentralWidget(self.whole_desk)
        LogDrops(self, self)
        self.resize(1280, 800)
        self.setMinimumSize(LEAST_WIDTH, LEAST_HEIGHT)

    # The parts, each made when it is first needed: the window is up before any of them.

    @cached_property
    def parts(self) -> DeskParts:
        """Timeline, room and side."""
        from studio_planner.desktop.desk_parts import DeskParts  # noqa: PLC0415
        from studio_planner.desktop.timeline_work.shared_choice import (  # noqa: PLC0415
            SharedChoice,
        )

        parts = DeskParts(self.canvas, self.attempt, self)
        self.pages.hold(PLAN, parts)
        parts.timeline.work_in(self)
        self.pages.choice = SharedChoice(parts.timeline)
        parts.timeline.new_asked.connect(self.files.ask_new)
        parts.timeline.set_up_asked.connect(lambda: self.go_to(STUDIO, SET_UP))
        parts.timeline.setFocus()
        return parts

    @cached_property
    def reading_watch(self) -> ReadingWatch:
        """What looks at loggers' files while they grow."""
        from studio_planner.desktop.reading_watch import ReadingWatch  # noqa: PLC0415

        return ReadingWatch(self, self)

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
        """The line that says how work on the plan goes."""
        return self.parts.work_line

    @property
    def planning(self) -> PlanningProcess:
        """The process that plans again."""
        return self._planning.process

    # The studio

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        self.files.painted()

    def show_session(self, session: DeskSession | None) -> None:
        """Show an open studio in place of the one before; None: there is none to show."""
        if session is None:
            self._show_view(None)
            return
        if self.session is not None:
            self.reminding.leave()
            self.session.close()
        self.session = session
        self._planning.leave(session.path)
        self.notice.hide()
        self._show_view(session.view)
        self.canvas.show_first()
        self.backups.make_soon()
        if self.others.mix_runs:
            said = translate("window", "A mix is still at the scale: F12 goes on with it.")
            self.notice.say(said)
        self.due.show_session(session)
        self.opened.emit()

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
        self.look_soon()

    def _show_name(self, view: DeskView | None) -> None:
        self.title_bar.show_view(view)
        name = view.studio.name if view else translate("window", "No studio")
        self.setWindowTitle(f"{name} - Studio planner")
        self.verbs["copy"].setEnabled(view is not None)
        self._planning.offer()
        self.changes.offer()
        if self.session is not None:
            self.backups.offer()

    def attempt(self, action: Callable[[], object]) -> bool:
        """Do what may fail in a sentence, which is said then; tell whether it was done."""
        try:
            action()
        except StudioError as error:
            self.notice.say(str(error), wrong=True)
            return False
        return True

    # Verbs

    @override
    def go_to(self, page: str, key: str = "") -> None:
        """Show another page, and on it the thing of that key."""
        self.pages.go_to(page, key)
        if page == PLAN and key:
            self.timeline.choose_piece(key)

    def show_session_view(self) -> None:
        """Show the studio as the session has it now; the view stays where it is."""
        if self.session is not None:
            self._show_view(self.session.view)

    def read_again(self) -> bool:
        """Read the file as it is now and show it; the view stays where it is."""
        session = self.session
        if session is None or not self.attempt(session.read_again):
            return False
        self._show_view(session.view)
        return True

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.ActivationChange and self.isActiveWindow():
            QTimer.singleShot(0, self, self.tick)
            self.look_soon()

    @override
    def closeEvent(self, event: QCloseEvent) -> None:
        if self._presence.stays(event):
            return
        self._time.stop()
        self._planning.leave()
        self.let_go()
        super().closeEvent(event)
