"""Starts the desk: one application, one window."""

from __future__ import annotations

import atexit
import gc
import sys
from functools import partial
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QCoreApplication, QEvent, QPoint, QRect, QSize, Qt
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from studio_planner.craft.resources import resource_path
from studio_planner.desktop.motion import STYLE, move, wanted_motion
from studio_planner.desktop.remembered import (
    remember_look,
    remembered_language,
    remembered_look,
    remembered_motion,
)
from studio_planner.desktop.rubbish import Rubbish
from studio_planner.desktop.theme import Look, theme_for, wear
from studio_planner.desktop.tongue import Language, speak
from studio_planner.desktop.window import DeskWindow

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from pathlib import Path

    from PySide6.QtWidgets import QMainWindow

    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.services.ports import WallClock, WaysOut

DESKTOP_FILE = "studio-planner"
_OBJECTS_BETWEEN_COLLECTIONS = 50_000
"""A desk makes many objects when it opens and keeps them; looking through them takes time."""

ICON = "icons/studio-planner.svg"

_FRAME = QSize(16, 48)
"""About what a window manager puts around a window."""


def application(arguments: Sequence[str] = ()) -> QApplication:
    """The application, made once, in our own style; `arguments` are Qt's own."""
    gc.set_threshold(_OBJECTS_BETWEEN_COLLECTIONS)
    found = QApplication.instance()
    if not isinstance(found, QApplication):
        return _named(_started(arguments))
    if found.desktopFileName() != DESKTOP_FILE:  # somebody else has started it
        _named(found).setStyle(STYLE)
    return found


def _named(app: QApplication) -> QApplication:
    app.setApplicationName("studio-planner")
    app.setApplicationDisplayName("Studio planner")
    app.setDesktopFileName(DESKTOP_FILE)
    app.setWindowIcon(QIcon(str(resource_path(ICON))))
    return app


def _started(arguments: Sequence[str]) -> QApplication:
    # A window that outlives the interpreter takes the process down with it, however it ends.
    atexit.register(close_windows)
    # A style that is set afterwards has to be made for Python, too; that takes a while.
    return QApplication([sys.argv[0], *arguments, "-style", STYLE])


def close_windows() -> None:
    """Close and let go of every window that is left."""
    for window in QApplication.topLevelWidgets():
        window.close()
        window.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def system_look(app: QApplication) -> Look:
    """The look that the system asks for; light where it says nothing."""
    dark = app.styleHints().colorScheme() is Qt.ColorScheme.Dark
    return Look.DARK if dark else Look.LIGHT


def desk_window(  # noqa: PLR0913 - all but one by name
    clock: WallClock,
    *,
    dialogs: Dialogs | None = None,
    look: Look | None = None,
    language: Language | None = None,
    data_folder: Callable[[], Path] | None = None,
    ways_out: WaysOut | None = None,
) -> DeskWindow:
    """A window on no studio yet, and not shown yet.

    Without `look` it looks as the maker chose last, else as the system does, and without
    `language` it speaks so. Backups go into the maker's own `data_folder`; `ways_out` are how
    the maker is reminded.
    """
    app = application()
    speak(language or remembered_language())
    chosen = look or remembered_look() or system_look(app)
    wear(app, theme_for(chosen))
    move(little=wanted_motion(remembered_motion()))
    window = DeskWindow(
        clock, look=chosen, dialogs=dialogs, data_folder=data_folder, ways_out=ways_out
    )
    window.look_chosen.connect(remember_look)
    window.opened.connect(window.pages.get_ready)
    Rubbish(window)
    if look is None:
        app.styleHints().colorSchemeChanged.connect(
            lambda _scheme: window.set_look(remembered_look() or system_look(app))
        )
    return window


def fit_to_screen(window: QMainWindow) -> None:
    """Make a window no larger than its screen has room for, frame included, and centre it."""
    room = window.screen().availableGeometry()
    least, wanted = window.minimumSize(), window.size()
    most = room.size() - _FRAME
    window.setMinimumSize(least.boundedTo(most))
    window.resize(wanted.boundedTo(most))
    place = QRect(QPoint(), window.size() + _FRAME)
    place.moveCenter(room.center())
    window.move(place.topLeft())


def run_desk(  # noqa: PLR0913 - all but two by name
    path: Path | None,
    clock: WallClock,
    *,
    dialogs: Dialogs | None = None,
    look: Look | None = None,
    data_folder: Callable[[], Path] | None = None,
    ways_out: WaysOut | None = None,
) -> int:
    """Show the desk on the studio at `path` until its window is closed; the exit code.

    However it ends, the window is closed, its planning stopped and its file let go.
    """
    window = desk_window(
        clock, dialogs=dialogs, look=look, data_folder=data_folder, ways_out=ways_out
    )
    # A system that shuts down must not find a window that stays in the tray.
    application().commitDataRequest.connect(partial(leave_session, window))
    try:
        if path is not None:
            window.open_soon(path)
        fit_to_screen(window)
        window.show()
        return int(QApplication.exec())
    finally:
        window.end()


class EndingSession(Protocol):
    """The part of Qt's session manager that the desk asks."""

    def allowsInteraction(self) -> bool:  # noqa: N802 - Qt's own
        """Whether somebody may be asked something."""
        ...

    def cancel(self) -> None:
        """Let the session go on."""
        ...


def leave_session(window: DeskWindow, session: EndingSession) -> None:
    """End the desk with the session; what is typed and refused holds it up where it may."""
    if window.leave():
        return
    if session.allowsInteraction():
        session.cancel()
    else:
        window.end()
