"""What is due as it is shown, and the maker's answers to it, written down aside."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from studio_planner.desktop.reminding.worker import Worker
    from studio_planner.services.reminding.due_list import DueList
    from studio_planner.services.reminding.studio_reminders import StudioReminders


class DueAnswers(QObject):
    """The list of what is due, and what the maker says to it.

    What is answered is off the list at once, though its answer is still being written down; it
    comes back where that does not work. `given` counts the answers: a list that was made before
    the last one is not to be shown.

    Signals:
        changed: the DueList is another one; None for no studio.
        refused: why an answer could not be written down.
    """

    changed = Signal(object)
    refused = Signal(str)

    def __init__(self, parent: QObject) -> None:
        """Have no list yet."""
        super().__init__(parent)
        self._kept: StudioReminders | None = None
        self._lists: Callable[[], DueList] | None = None
        self._clerk: Worker | None = None
        self._pending: set[str] = set()
        self.given = 0
        self.due: DueList | None = None

    @property
    def busy(self) -> bool:
        """Whether an answer is not written down yet."""
        return self._clerk is not None and self._clerk.busy

    def begin(self, kept: StudioReminders, clerk: Worker, lists: Callable[[], DueList]) -> None:
        """Take answers for `kept`, in the thread of `clerk`; `lists` lists what is due now."""
        self._kept, self._clerk, self._lists = kept, clerk, lists

    def leave(self, *, wait: bool = False) -> None:
        """Show nothing any more; what is being written down is written down to its end."""
        if self._clerk is not None:
            self._clerk.close(wait=wait)
        self._kept = self._clerk = self._lists = None
        self._pending.clear()
        if self.due is not None:
            self.due = None
            self.changed.emit(None)

    def show(self, due: DueList) -> None:
        """Show a list, without what is being answered."""
        self.due = due.without(self._pending) if self._pending else due
        self.changed.emit(self.due)

    def list_again(self) -> None:
        """List what is due without telling anything."""
        self._answer(set(), lambda _kept: None)

    def done(self, uids: Iterable[str]) -> None:
        """Take reminders off the list for good; it is written down at once."""
        wanted = tuple(uids)
        self._answer(set(wanted), lambda kept: kept.acknowledge(wanted))

    def put_off(self, uids: Iterable[str]) -> None:
        """Have reminders told again at the moment that makes sense for each."""
        wanted = tuple(uids)
        self._answer(set(), lambda kept: kept.snooze(wanted))

    def clear_late(self) -> None:
        """Take everything off the list that it is too late for."""
        items = () if self.due is None else self.due.items
        late = {uid for item in items if not item.saved for uid in item.uids}
        self._answer(late, lambda kept: kept.clear())

    def put_back(self) -> None:
        """Put what was taken off last on the list again; it does not ring for that."""
        uids = () if self.due is None else self.due.taken_off
        self._answer(set(), lambda kept: kept.put_back(uids))

    def _answer(self, gone: set[str], does: Callable[[StudioReminders], object]) -> None:
        kept, clerk, lists = self._kept, self._clerk, self._lists
        if kept is None or clerk is None or lists is None:
            return
        self.given += 1
        self._pending |= gone
        if gone and self.due is not None:
            self.show(self.due)

        def work() -> DueList:
            does(kept)
            return lists()

        def written(due: DueList) -> None:
            self._pending -= gone
            self.show(due)

        def not_written(why: str) -> None:
            self._pending -= gone
            self.refused.emit(why)

        clerk.do(work, written, not_written)
