"""What is said once something is in the log: that it is, and what of it can hardly be right."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.services.log_book.doubts import doubts

if TYPE_CHECKING:
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.services.desk import DeskSession


class TellingDesk(Protocol):
    """What saying news needs of the window."""

    session: DeskSession | None
    notice: NoticeLine

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...


def tell_entry(desk: TellingDesk, said: str) -> None:
    """Say the news of the step just made; what is doubtful about it stays until it is read."""
    session = desk.session
    step = None if session is None else session.history.undoable
    found = () if step is None else doubts(step.before, step.after)
    if session is None or not found:
        desk.tell(said)
        return
    desk.notice.say(" ".join([said, *DeskVoice(session.studio).all_of(found)]), stays=True)
