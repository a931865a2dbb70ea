"""Joins the number in the head of the desk, the list behind it, and what reminds."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QEvent, QObject, QRect
from typing_extensions import override

from studio_planner.desktop.page_keys import ORDERS, PLAN, REMINDERS, STUDIO
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.due_badge import DueBadge
    from studio_planner.desktop.due_pages.due_panel import DuePanel
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.reminding.desk_reminding import DeskReminding
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.reminding.due_list import DueItem, DueList


class DueDesk(Protocol):
    """What the list of what is due needs of the window."""

    canvas: Canvas
    notice: NoticeLine

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page, and on it the thing of that key."""
        ...

    def come_back(self) -> None:
        """Show the window again, wherever it is."""
        ...

    def leave(self) -> bool:
        """End the desk; False when it stays for what is being typed."""
        ...


class DueCorner(QObject):
    """The list lies over the pages, `over` them and below the head, while it is open."""

    def __init__(
        self, desk: DueDesk, badge: DueBadge, reminding: DeskReminding, over: QWidget
    ) -> None:
        """Show by `badge` what `reminding` finds."""
        super().__init__(over)
        self._desk = desk
        self._badge = badge
        self._reminding = reminding
        self._over = over
        self._trouble = ""
        reminding.answers.changed.connect(self._show_due)
        reminding.told.connect(self._show_failures)
        reminding.open_asked.connect(self._open_rows)
        if reminding.possible:
            closed = reminding.closed
            closed.open_asked.connect(desk.come_back)
            closed.due_asked.connect(self._open_from_afar)
            closed.leave_asked.connect(desk.leave)
        over.installEventFilter(self)

    def show_session(self, session: DeskSession) -> None:
        """Remind of another studio from now on."""
        self._reminding.show_session(session)

    @cached_property
    def panel(self) -> DuePanel:
        """The list."""
        from studio_planner.desktop.due_pages.due_panel import DuePanel  # noqa: PLC0415 - when seen

        panel = DuePanel(self._desk.canvas, self._over)
        reminding = self._reminding
        panel.done.connect(reminding.answers.done)
        panel.later.connect(reminding.answers.put_off)
        panel.cleared.connect(reminding.answers.clear_late)
        panel.put_back.connect(reminding.answers.put_back)
        panel.open_asked.connect(self._open)
        panel.settings_asked.connect(self._open_settings)
        panel.closed.connect(self._closed)
        panel.show_due(reminding.answers.due)
        panel.show_failures(reminding.outcomes, reminding.trouble)
        return panel

    @property
    def is_open(self) -> bool:
        """Whether the list is there to be seen."""
        return "panel" in self.__dict__ and not self.panel.isHidden()

    def turn(self) -> None:
        """Open the list, or close it."""
        if self.is_open:
            self.panel.leave()
        else:
            self.open()

    def open(self) -> None:
        """Open the list."""
        if not self._reminding.possible:
            return
        self.panel.show_due(self._reminding.answers.due)
        self._place()
        self.panel.enter()
        self._badge.setChecked(True)
        self._reminding.look()

    def _closed(self) -> None:
        self._badge.setChecked(False)
        self._badge.setFocus()

    def _show_due(self, due: DueList | None) -> None:
        self._badge.show_due(due)
        if self.is_open:
            self.panel.show_due(due)

    def _show_failures(self) -> None:
        self._show_trouble(self._reminding.trouble)
        if "panel" in self.__dict__:
            self.panel.show_failures(self._reminding.outcomes, self._reminding.trouble)

    def _show_trouble(self, why: str) -> None:
        """Say once that nothing new can ring, and in the head for as long as it is so."""
        said = translate("due", "Reminders cannot be written down: {why}")
        trouble = said.format(why=why) if why else ""
        if trouble == self._trouble:
            return
        before, self._trouble = self._trouble, trouble
        self._badge.show_trouble(trouble)
        notice = self._desk.notice
        if not before:
            notice.say(trouble, stays=True)
        elif not trouble and notice.words == before:
            notice.hide()

    def _open_from_afar(self) -> None:
        self._desk.come_back()
        self.open()

    # Where things lead to

    def _open_rows(self, rows: tuple[DueRow, ...]) -> None:
        """Open what a notice was about: the thing itself where it is one, else the list."""
        self._desk.come_back()
        if len({(r.reminder.piece, r.reminder.order, r.reminder.place) for r in rows}) == 1:
            reminder = rows[0].reminder
            self._go(reminder.piece, reminder.coat, reminder.order)
        else:
            self.open()

    def _open(self, item: DueItem | None) -> None:
        if item is not None:
            self.panel.leave()
            self._go(item.piece, item.coat, item.order)

    def _go(self, piece: str, coat: str, order: str) -> None:
        if piece:
            self._desk.go_to(PLAN, f"{piece}/{coat}" if coat else piece)
        elif order:
            self._desk.go_to(ORDERS, order)
        else:
            self._desk.go_to(STUDIO, "room")

    def _open_settings(self) -> None:
        self.panel.leave()
        self._desk.go_to(STUDIO, REMINDERS)

    # Where it lies

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Resize and self.is_open:
            self._place()
        return False

    def _place(self) -> None:
        from studio_planner.desktop.due_pages.due_panel import WIDTH  # noqa: PLC0415 - as above

        over = self._over
        top = self._badge.mapTo(over, self._badge.rect().bottomLeft()).y() + 10
        width = min(WIDTH, over.width())
        self.panel.setGeometry(QRect(over.width() - width, top, width, over.height() - top))
