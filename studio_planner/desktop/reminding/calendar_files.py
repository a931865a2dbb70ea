"""Calendar files for the phone: the whole plan, an order, a week, or one event to try."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject

from studio_planner.desktop.tongue import counted, translate

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtWidgets import QMenu, QWidget

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.reminding.worker import Worker
    from studio_planner.services.calendar.files import Calendar, Only
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.ports import WallClock
    from studio_planner.services.questions.sentences import Voice


class CalendarDesk(Protocol):
    """What calendar files need of the window."""

    clock: WallClock
    session: DeskSession | None
    notice: NoticeLine

    @property
    def dialogs(self) -> Dialogs:
        """The questions about files."""
        ...

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...


class CalendarFiles(QObject):
    """Asks where a file goes, writes it aside, and says what is in it."""

    def __init__(
        self, desk: CalendarDesk, voice: Callable[[Studio], Voice], parent: QWidget
    ) -> None:
        """Write of the studio on `desk`; `voice` writes times."""
        super().__init__(parent)
        self._desk = desk
        self._voice = voice
        self._window = parent
        self._aside: Worker | None = None

    def write_plan(self) -> None:
        """Write the whole plan."""
        from studio_planner.services.calendar.files import Only  # noqa: PLC0415 - when asked for

        self._write(_name_of(self._desk.session), lambda _studio: Only())

    def write_week(self) -> None:
        """Write this week."""
        from studio_planner.services.calendar.files import Only  # noqa: PLC0415 - when asked for

        session = self._desk.session
        if session is None:
            return
        day = session.now().astimezone(session.studio.time_zone).date()
        self._write(f"{_name_of(session)} {day.isoformat()}", lambda _studio: Only(week_of=day))

    def write_order(self, key: str) -> None:
        """Write what belongs to an order."""
        from studio_planner.services.calendar.files import Only  # noqa: PLC0415 - when asked for

        session = self._desk.session
        orders = () if session is None else session.studio.orders
        order = next((one for one in orders if one.key == key), None)
        if order is not None:
            self._write(order.name, lambda _studio: Only(order=order))

    def write_trial(self) -> None:
        """Write one event that rings in five minutes."""
        from studio_planner.services.calendar.keeping import write_trial  # noqa: PLC0415

        target = self._asked(translate("calendar", "A test"))
        if target is None:
            return
        now = self._desk.clock.now()
        said = translate(
            "calendar",
            "{name} holds one event, for which the phone should ring in five minutes: bring it "
            "there at once.",
        )
        self._begun().do(
            lambda: write_trial(target, now),
            lambda _none: self._desk.tell(said.format(name=target.name)),
            self._refused,
        )

    def _write(self, name: str, only: Callable[[Studio], Only]) -> None:
        session = self._desk.session
        if session is None:
            return
        if session.studio.plan is None:
            self._refused(
                translate(
                    "calendar", "There is no plan yet to put into a calendar: plan first."
                )
            )
            return
        target = self._asked(name)
        if target is None:
            return
        path, now, voice = session.path, session.now(), self._voice

        def work() -> Calendar:
            from studio_planner.services.calendar.keeping import write_calendar  # noqa: PLC0415

            return write_calendar(path, target, now, voice, only)

        # A moment on a busy machine: whoever asked sees that it has begun.
        writing = translate("calendar", "{name} is being written…")
        self._desk.tell(writing.format(name=target.name))
        self._begun().do(work, lambda made: self._written(target, made), self._refused)

    def _asked(self, name: str) -> Path | None:
        from studio_planner.services.calendar.files import ENDING  # noqa: PLC0415 - when asked for

        session = self._desk.session
        if session is None:
            return None
        plain = "".join(c if c.isalnum() or c in " -_" else "_" for c in name)
        return self._desk.dialogs.calendar(
            self._window, str(session.path.parent / f"{plain}{ENDING}")
        )

    def _written(self, target: Path, made: Calendar) -> None:
        if made.says_nothing:
            none = translate(
                "calendar",
                "{name} is not written: nothing that is planned for then or for it lies ahead.",
            )
            self._desk.tell(none.format(name=target.name))
            return
        events = counted(
            made.events,
            translate("calendar", "{count} event"),
            translate("calendar", "{count} events"),
        )
        said = translate("calendar", "{name} holds {events}.")
        if made.cancelled:
            said = translate(
                "calendar", "{name} holds {events}, and {gone} that were called off."
            )
        into = translate("calendar", "Import it into a calendar of its own.")
        words = said.format(name=target.name, events=events, gone=made.cancelled)
        self._desk.tell(f"{words} {into}")

    def _refused(self, why: str) -> None:
        self._desk.notice.say(why, wrong=True)

    def _begun(self) -> Worker:
        if self._aside is None:
            from studio_planner.desktop.reminding.worker import Worker  # noqa: PLC0415 - when needed

            self._aside = Worker(self)
        return self._aside

    def fill(self, menu: QMenu) -> None:
        """Put all that can be written into a menu, which is being opened."""
        session = self._desk.session
        menu.clear()
        _add(menu, translate("calendar", "The whole &plan…"), self.write_plan)
        _add(menu, translate("calendar", "This &week…"), self.write_week)
        orders = () if session is None else session.studio.orders
        one = menu.addMenu(translate("calendar", "One &order"))
        one.setEnabled(bool(orders))
        for order in orders:
            name = order.name.replace("&", "&&")
            _add(one, f"{name}…", partial(self.write_order, order.key))
        menu.addSeparator()
        _add(menu, translate("calendar", "A &test event…"), self.write_trial)
        for action in menu.actions():
            action.setEnabled(action.isEnabled() and session is not None)

    def close(self) -> None:
        """End what is being written."""
        if self._aside is not None:
            self._aside.close()


def _add(menu: QMenu, words: str, does: Callable[[], object]) -> None:
    menu.addAction(words).triggered.connect(lambda _checked=False: does())


def _name_of(session: DeskSession | None) -> str:
    return "" if session is None else session.studio.name
