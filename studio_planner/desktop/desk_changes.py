"""Changing the studio on the desk: one change at a time, in the file at once, and undone."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, QTimer, Signal

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.idle_work import BREATH_MILLISECONDS
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.desk_planning import DeskPlanning
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.editing.history import Step


PAUSE_MILLISECONDS = 600
"""How long planning waits for the next change, so that a quick hand starts it only once."""


class ChangingDesk(Protocol):
    """What changing needs of the window."""

    session: DeskSession | None
    notice: NoticeLine
    verbs: dict[str, QAction]

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def show_session_view(self) -> None:
        """Show the studio as it is now."""
        ...


class DeskChanges(QObject):
    """Makes changes for every page and form of the desk.

    Signals:
        changed: the studio is another one now.
    """

    changed = Signal()

    def __init__(self, desk: ChangingDesk, planning: DeskPlanning, parent: QWidget) -> None:
        """Change what is on the desk; `planning` is ended before and begun again after it."""
        super().__init__(parent)
        self._desk = desk
        self._planning = planning
        self.plans_by_itself = True
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(PAUSE_MILLISECONDS)
        self._soon.timeout.connect(self._plan)
        self._late = QTimer(self)
        self._late.setSingleShot(True)
        self._late.setInterval(BREATH_MILLISECONDS)
        self._late.timeout.connect(self._show)

    def make(self, change: Change, *, plans: bool = True, long: bool = False) -> bool:
        """Make a change; tell whether anything is different after it.

        Unless it `plans`, planning does not begin by itself after it. One that is `long` to
        write is shown in the next turn of the event loop: a key comes between the two.

        Raises
        ------
        InvalidEntry
            With every broken rule; forms say each beside its field.
        StudioFileError
            When the file cannot be written. The studio stays as it was, both times.
        """
        session = self._desk.session
        if session is None:
            return False
        was_planning = self._planning.end_now()
        try:
            different = session.apply(change)
        except StudioError:
            self._go_on(was_planning)
            raise
        # What was said before was said of the studio as it was; what is said from now on stays.
        self._desk.notice.hide()
        if long:
            self._late.start()
        else:
            self._show()
        self._go_on(was_planning or (plans and different and session.studio.plan_outdated))
        return different

    def attempt(self, change: Change, *, plans: bool = True, long: bool = False) -> bool:
        """Make a change; what is wrong with it is said in the notice line. True when made."""
        try:
            self.make(change, plans=plans, long=long)
        except StudioError as error:
            self._desk.notice.say(str(error), wrong=True)
            return False
        return True

    def undo(self) -> None:
        """Take the last step back."""
        self._step(lambda session: session.undo(), translate("changes", "Undone: {words}."))

    def redo(self) -> None:
        """Do again what was taken back."""
        self._step(lambda session: session.redo(), translate("changes", "Done again: {words}."))

    def _step(self, take: Callable[[DeskSession], Step | None], said: str) -> None:
        session = self._desk.session
        if session is None:
            return
        self._planning.end_now()
        try:
            step = take(session)
        except StudioError as error:
            self._desk.notice.say(str(error), wrong=True)
            return
        self._desk.notice.hide()
        self._show()
        if step is not None:
            self._desk.tell(said.format(words=step.words))
        self._go_on(session.studio.plan_outdated)

    def _show(self) -> None:
        """Show the studio as it is now, and with it what was still to be shown."""
        self._late.stop()
        self._desk.show_session_view()
        self.offer()
        self.changed.emit()

    def _go_on(self, wanted: bool) -> None:  # noqa: FBT001 - a fact
        session = self._desk.session
        if not wanted or not self.plans_by_itself or session is None:
            return
        from studio_planner.services.setting_up import plan_possible  # noqa: PLC0415 - when needed

        # A studio that is still being set up is not told after each step what it lacks.
        if plan_possible(session.studio):
            self._soon.start()

    def _plan(self) -> None:
        session = self._desk.session
        if session is not None and session.studio.plan_outdated:
            self._planning.start(after_change=True)

    def plan_by_itself(self, wanted: bool) -> None:  # noqa: FBT001 - what a menu's tick says
        """Plan after each change, or only when the maker asks."""
        self.plans_by_itself = wanted
        self._soon.stop()
        if wanted:
            self._go_on(wanted)

    def offer(self) -> None:
        """Offer to undo and to do again, whatever makes sense now."""
        session = self._desk.session
        history = None if session is None else session.history
        undoable = None if history is None else history.undoable
        redoable = None if history is None else history.redoable
        undo, redo = self._desk.verbs["undo"], self._desk.verbs["redo"]
        undo.setEnabled(undoable is not None)
        redo.setEnabled(redoable is not None)
        undo.setText(_verb(translate("changes", "&Undo"), undoable))
        redo.setText(_verb(translate("changes", "&Do again"), redoable))


def _verb(verb: str, step: Step | None) -> str:
    return verb if step is None else f"{verb}: {step.words.replace('&', '&&')}"
