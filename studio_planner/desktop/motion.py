"""How much moves on the desk: as much as the system says, or little where the maker wants so.

Qt tells of no such wish of the system, so it is read where systems keep it; the style of the
application then carries it, for Qt's own widgets as well as for ours.
"""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QSettings, QStandardPaths
from PySide6.QtWidgets import QApplication

from studio_planner.desktop.remembered import remember_motion

STYLE = "fusion"
"""The style that all widgets are drawn in; our colours and outlines are made for it."""

_SPI_GETCLIENTAREAANIMATION = 0x1042
_FILES = (
    ("kdeglobals", "KDE/AnimationDurationFactor"),
    ("gtk-4.0/settings.ini", "Settings/gtk-enable-animations"),
    ("gtk-3.0/settings.ini", "Settings/gtk-enable-animations"),
)
"""Where desktops of free systems keep whether anything is animated, below the settings."""

_OFF = {"0", "0.0", "false"}


_STILL = "still"
"""The property of an application that wears the still style: styles take long to look at."""


def moves_little() -> bool:
    """Whether nothing is to glide, fade or slide now."""
    from PySide6.QtWidgets import QStyle  # noqa: PLC0415 - the window stands before

    hint = QStyle.StyleHint.SH_Widget_Animation_Duration
    return not QApplication.style().styleHint(hint)


def move(*, little: bool) -> None:
    """Let the application move little, or as usual; it looks the same."""
    application = QApplication.instance()
    if application is None or bool(application.property(_STILL)) == little:
        return
    from studio_planner.desktop.still_style import StillStyle  # noqa: PLC0415 - when wanted

    QApplication.setStyle(StillStyle(STYLE) if little else STYLE)
    application.setProperty(_STILL, little)


def wanted_motion(chosen: bool | None) -> bool:  # noqa: FBT001 - a setting that may be unset
    """Whether little is to move: as was chosen, else as the system says."""
    return system_moves_little() if chosen is None else chosen


def choose_motion(*, little: bool) -> None:
    """Move little, or as usual, from now on and after the next start."""
    move(little=little)
    remember_motion(little=little)


def system_moves_little() -> bool:
    """Whether the system asks for little motion; False where it says nothing of it."""
    if sys.platform == "win32":
        return _windows_moves_little()
    folder = QStandardPaths.writableLocation(
        QStandardPaths.StandardLocation.GenericConfigLocation
    )
    return any(_says_off(Path(folder) / name, key) for name, key in _FILES)


def _says_off(path: Path, key: str) -> bool:
    if not path.is_file():
        return False
    said = QSettings(str(path), QSettings.Format.IniFormat).value(key)
    return str(said).strip().lower() in _OFF


def _windows_moves_little() -> bool:
    import ctypes  # noqa: PLC0415 - only there

    user32 = getattr(ctypes, "windll").user32  # noqa: B009 - other systems have none
    animates = ctypes.c_int(1)
    asked = user32.SystemParametersInfoW(
        _SPI_GETCLIENTAREAANIMATION, 0, ctypes.byref(animates), 0
    )
    return bool(asked) and not animates.value
