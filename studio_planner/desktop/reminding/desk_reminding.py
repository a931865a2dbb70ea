"""Reminding on the desk: it looks what is due, and tells it by every means of the desk."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, QTimer, Signal

from studio_planner.desktop.reminding.due_answers import DueAnswers
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from datetime import datetime

    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.reminding.while_closed import WhileClosed
    from studio_planner.desktop.reminding.window_means import TrayMeans
    from studio_planner.desktop.reminding.worker import Worker
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.ports import Notice, Notifier, Pressed, WallClock, WaysOut
    from studio_planner.services.questions.sentences import Voice
    from studio_planner.services.reminding.due_list import DueList
    from studio_planner.services.reminding.studio_reminders import StudioReminders
    from studio_planner.services.reminding.ticking import Told

LOOKS_EVERY_MILLISECONDS = 20_000
FIRST_LOOK_MILLISECONDS = 1_500
"""How long after a studio was opened it is looked at: what is on screen comes first."""

AFTER_CHANGE_MILLISECONDS = 3_000
"""How long it waits for the next change: making reminders anew takes a moment."""


class RemindedDesk(Protocol):
    """What reminding needs of the window."""

    clock: WallClock
    session: DeskSession | None


@dataclass(frozen=True, slots=True)
class _Looked:
    """What came of a look; `answers` is how many answers had been given before it."""

    due: DueList
    told: tuple[Told, ...]
    answers: int


class DeskReminding(QObject):
    """Reminds of the studio on the desk, in threads of its own: nothing in the window waits.

    `answers` holds what is due and takes what the maker says to it. `outcomes` says of each
    means that was called why it failed, empty where it did not.

    Signals:
        told: something was told, or could not be: see `outcomes` and `trouble`.
        open_asked: the rows that a button on a notice asks to open.
    """

    told = Signal()
    open_asked = Signal(object)

    def __init__(
        self,
        desk: RemindedDesk,
        ways_out: WaysOut | None,
        voice: Callable[[Studio], Voice],
        parent: QWidget,
    ) -> None:
        """Remind by `ways_out`; without them nothing is due here."""
        super().__init__(parent)
        self._desk = desk
        self._ways_out = ways_out
        self._voice = voice
        self._kept: StudioReminders | None = None
        self._ringer: Worker | None = None
        self._looking = self._again = False
        self.answers = DueAnswers(self)
        self.answers.refused.connect(self._refused)
        self.outcomes: dict[str, str] = {}
        self.trouble = ""
        self.pause_milliseconds = AFTER_CHANGE_MILLISECONDS
        self._every = self._timer(LOOKS_EVERY_MILLISECONDS)
        self._soon = self._timer(AFTER_CHANGE_MILLISECONDS)
        self._soon.setSingleShot(True)

    def _timer(self, milliseconds: int) -> QTimer:
        timer = QTimer(self)
        timer.setInterval(milliseconds)
        timer.timeout.connect(self.look)
        return timer

    @property
    def possible(self) -> bool:
        """Whether this desk reminds at all."""
        return self._ways_out is not None

    @property
    def busy(self) -> bool:
        """Whether something was asked for and is not known yet."""
        return self.answers.busy or (self._ringer is not None and self._ringer.busy)

    # The means

    @cached_property
    def closed(self) -> WhileClosed:
        """What goes on when the window is closed: the tray, and the system's scheduler."""
        from studio_planner.desktop.reminding.while_closed import WhileClosed  # noqa: PLC0415

        closed = WhileClosed(self._ways_out, self)
        self.answers.changed.connect(closed.show_due)
        return closed

    @cached_property
    def _means(self) -> tuple[TrayMeans, tuple[Notifier, ...]]:
        from studio_planner.desktop.reminding.window_means import (  # noqa: PLC0415 - when needed
            SoundMeans,
            TrayMeans,
            Watched,
        )

        outside = () if self._ways_out is None else self._ways_out.notifiers()
        watched = tuple(Watched(notifier) for notifier in outside)
        before = watched[0] if watched else None
        tray = TrayMeans(self._show_in_tray, before, self)
        return tray, (*watched, tray, SoundMeans(self))

    def _show_in_tray(self, notice: Notice) -> str:
        return self.closed.tray.show_notice(notice)

    # The studio

    def show_session(self, session: DeskSession) -> None:
        """Remind of another studio from now on."""
        self.leave()
        if not self.possible:
            return
        self.closed.show_session(session)
        self._soon.start(FIRST_LOOK_MILLISECONDS)
        self._every.start()

    def leave(self, *, wait: bool = False) -> None:
        """Remind of nothing any more; what is being told is told to its end."""
        self._soon.stop()
        self._every.stop()
        if self._ringer is not None:
            self._ringer.close(wait=wait)
        self._kept = self._ringer = None
        self._looking = self._again = False
        self.answers.leave(wait=wait)

    def _begun(self) -> tuple[StudioReminders | None, Worker | None]:
        """What is needed to look, made when it is first needed; None where it can't be."""
        session = self._desk.session
        if self._kept is not None or session is None or not self.possible:
            return self._kept, self._ringer
        from studio_planner.desktop.reminding.worker import Worker  # noqa: PLC0415 - when needed
        from studio_planner.services.reminding.shared_file import reminders_in  # noqa: PLC0415

        kept = reminders_in(session.file, self._desk.clock, self._means[1], self._voice)
        if kept is None:
            return None, None
        self._kept = kept
        self._ringer = Worker(self, lambda: kept.answered(0.0))
        self._ringer.heard.connect(self._heard)
        clock, voice = self._desk.clock, self._voice
        self.answers.begin(kept, Worker(self), lambda: _listed(kept, voice, clock.now()))
        return self._kept, self._ringer

    # Looking

    def look_soon(self) -> None:
        """Look after a pause: the studio has changed, and may change once more."""
        if self._every.isActive():
            self._soon.start(self.pause_milliseconds)

    def look(self) -> None:
        """Write down what is due by now and tell it, in the thread that rings."""
        if self._looking:
            self._again = True
            return
        kept, ringer = self._begun()
        if kept is None or ringer is None:
            return
        self._looking = True
        voice, answers = self._voice, self.answers.given

        def work() -> _Looked:
            tick = kept.tick()
            due = _listed(kept, voice, tick.now)
            return _Looked(due, tick.told, answers)

        ringer.do(work, self._looked, self._not_looked)

    def _looked(self, found: _Looked) -> None:
        self._looking = False
        self._note(found.told)
        self._say_trouble("")
        if found.answers == self.answers.given:
            self.answers.show(found.due)
        else:
            self.answers.list_again()  # something was answered meanwhile
        if self._again:
            self._again = False
            self.look()

    def _note(self, told: Iterable[Told]) -> None:
        """Note what came of each means; a tray that was not needed has shown nothing."""
        tray = self._means[0]
        self.outcomes |= {
            one.means: one.failure or ""
            for one in told
            if one.means != tray.means or tray.needed
        }

    def _not_looked(self, why: str) -> None:
        self._looking = self._again = False
        self._say_trouble(why)

    def _say_trouble(self, why: str) -> None:
        self.trouble = why
        self.told.emit()

    def _refused(self, why: str) -> None:
        """Say that an answer could not be written down, and look how things stand."""
        self._say_trouble(why)
        self.look()

    def _heard(self, answers: tuple[tuple[Pressed, tuple[DueRow, ...]], ...]) -> None:
        from studio_planner.services.reminding.notices import OPEN  # noqa: PLC0415 - loaded by then

        self.answers.list_again()
        for pressed, rows in answers:
            if pressed.button == OPEN:
                self.open_asked.emit(rows)

    def ring_now(
        self, then: Callable[[tuple[Told, ...]], object], failed: Callable[[str], object]
    ) -> None:
        """Try every means with a notice that is about nothing; `then` gets what came of it."""
        kept, ringer = self._begun()
        if kept is None or ringer is None:
            failed(translate("due", "This desk does not remind."))
            return
        tray = self._means[0]

        def work() -> tuple[Told, ...]:
            tray.always = True
            try:
                return kept.ring_now()
            finally:
                tray.always = False

        def rung(told: tuple[Told, ...]) -> None:
            self._note(told)
            self.told.emit()
            then(told)

        ringer.do(work, rung, failed)

    def close(self) -> None:
        """End everything."""
        self.leave(wait=True)
        self.closed.close()


def _listed(kept: StudioReminders, voice: Callable[[Studio], Voice], now: datetime) -> DueList:
    from studio_planner.services.reminding.due_list import due_list  # noqa: PLC0415 - when needed

    return due_list(kept, kept.due(), voice(kept.studio), now)
