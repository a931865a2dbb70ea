"""The reminders of a file that is open already, as the desk's is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.reminding.studio_reminders import StudioReminders
from studio_planner.storage.studio_file import StudioFile

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.ports import Notifier, WallClock
    from studio_planner.services.reminding.studio_reminders import Speaking


def reminders_in(
    file: object, clock: WallClock, notifiers: Sequence[Notifier], voice: Speaking
) -> StudioReminders | None:
    """The reminders of an open studio file, which its lock shares among threads.

    None where it is no file that keeps any. A connection of its own would make every change of
    the studio a whole one: what lies in the file would have been changed by somebody else.
    """
    if not isinstance(file, StudioFile):
        return None
    return StudioReminders(file, clock, notifiers, voice)
