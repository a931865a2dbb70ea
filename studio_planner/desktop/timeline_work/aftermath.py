"""What came of a change by hand: what planning moved besides, until that is taken note of."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.comparing import Difference, compare
from studio_planner.services.moving.difference_words import in_full, in_short

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.moving.comparing import ChangedJoint, MovedPour


class Aftermath(QObject):
    """Compares the plan before a change with the one that planning makes after it.

    What is different is said in the line over the timeline, old places are outlined on it.

    Signals:
        renewed: other places are to be outlined.
        shown: the piece and the coat of a moved pour that the maker wants to see.
    """

    renewed = Signal()
    shown = Signal(str, str)

    def __init__(self, desk: WorkDesk, parent: QObject) -> None:
        """Nothing was changed yet."""
        super().__init__(parent)
        self._desk = desk
        self._before: Studio | None = None
        self._mine: frozenset[tuple[str, str]] = frozenset()
        self._making = False
        self._shown = 0
        self.difference = Difference()
        desk.changes.changed.connect(self.changed)

    @property
    def _studio(self) -> Studio | None:
        return None if self._desk.session is None else self._desk.session.studio

    def make(self, change: Change, mine: Iterable[PlannedCoat]) -> bool:
        """Make a change; what is wrong with it is said. The coats of `mine` it moves itself."""
        was = self._studio
        self._making = True
        try:
            made = self._desk.changes.attempt(change)
        finally:
            self._making = False
        if not made or self._studio is was or self._desk.session is None:
            return made
        self._watch(mine)
        return True

    def _watch(self, mine: Iterable[PlannedCoat]) -> None:
        """Compare from now on with the studio before the last step."""
        step = None if self._desk.session is None else self._desk.session.history.undoable
        self._before = None if step is None or step.before.plan is None else step.before
        self._mine = frozenset((coat.piece, coat.coat) for coat in mine)
        self._shown = 0
        self.difference = Difference()

    def view_shown(self) -> None:
        """Compare the studio as it is now with what it was before the last change."""
        studio, before = self._studio, self._before
        if studio is None or before is None:
            return
        if not self._still_last(before):
            self.keep()
            return
        if studio.plan_outdated:
            # Planning has yet to put right what the change has left as it was.
            return
        found = compare(before, studio)
        self.difference = replace(
            found,
            moved=tuple(row for row in found.moved if self._of_others(row)),
            joints=tuple(row for row in found.joints if self._of_others(row)),
        )
        self._say_difference(studio)
        self.renewed.emit()

    def _of_others(self, row: MovedPour | ChangedJoint) -> bool:
        return (row.piece, row.coat) not in self._mine

    def _still_last(self, before: Studio) -> bool:
        """Whether the change that was compared is still the one that would be undone."""
        session = self._desk.session
        step = None if session is None else session.history.undoable
        return step is not None and step.before is before

    def _say_difference(self, studio: Studio) -> None:
        if self.difference.nothing:
            return
        full = DeskVoice(studio).all_of(in_full(self.difference, studio))
        line = self._desk.work_line
        line.say(f"{in_short(self.difference)}.", more="\n".join(full))
        show = [(translate("work", "Show"), self.show_next)] if self.difference.moved else []
        line.offer(
            *show,
            (translate("work", "Keep"), self.keep),
            (translate("work", "Take back"), self._desk.changes.undo),
        )

    def show_next(self) -> None:
        """Choose the moved pours one after another, and bring each into view."""
        moved = self.difference.moved
        pour = moved[self._shown % len(moved)]
        self._shown += 1
        self.shown.emit(pour.piece, pour.coat)

    def keep(self) -> None:
        """Take note of what was moved: the outlines go."""
        self._before = None
        self.difference = Difference()
        self._desk.work_line.clear()
        self.renewed.emit()

    def changed(self) -> None:
        """Watch what comes of a change that was made elsewhere, and forget the one before."""
        if self._making:
            return
        # Whatever else is changed, or undone: the comparison was with another studio.
        if self._before is not None:
            self.keep()
        session = self._desk.session
        if session is not None and session.studio.plan_outdated:
            undone = session.history.redoable is not None
            if not undone:
                self._watch(())
