"""How much moves on the desk: as much as the system says, or little where the maker wants so.

Qt tells of no such wish of the system, so it is read where systems keep it; the style of the
application then carries it, for Qt's own widgets as well as for ours.
"""

from __future__ import annotations

import ctypes
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, QStandardPaths
from PySide6.QtWidgets import QApplication, QProxyStyle, QStyle
from typing_extensions import override

from studio_planner.desktop.remembered import remember_motion

if TYPE_CHECKING:
    from PySide6.QtWidgets import QStyleHintReturn, QStyleOption, QWidget

STYLE = "fusion"
"""The style that all widgets are drawn in; our colours and outlines are made for it."""

_Hint = QStyle.StyleHint
_STILL = {_Hint.SH_Widget_Animation_Duration, _Hint.SH_Widget_Animate}
_SPI_GETCLIENTAREAANIMATION = 0x1042
_FILES = (
    ("kdeglobals", "KDE/AnimationDurationFactor"),
    ("gtk-4.0/settings.ini", "Settings/gtk-enable-animations"),
    ("gtk-3.0/settings.ini", "Settings/gtk-enable-animations"),
)
"""Where desktops of free systems keep whether anything is animated, below the settings."""

_OFF = {"0", "0.0", "false"}


class StillStyle(QProxyStyle):
    """A style whose parts change at once instead of sliding or fading."""

    @override
    def styleHint(
        self,
        hint: QStyle.StyleHint,
        option: QStyleOption | None = None,
        widget: QWidget | None = None,
        returnData: QStyleHintReturn | None = None,
    ) -> int:
        return 0 if hint in _STILL else super().styleHint(hint, option, widget, returnData)


def moves_little() -> bool:
    """Whether nothing is to glide, fade or slide now."""
    return not QApplication.style().styleHint(_Hint.SH_Widget_Animation_Duration)


def move(*, little: bool) -> None:
    """Let the application move little, or as usual; it looks the same."""
    if moves_little() != little:
        QApplication.setStyle(StillStyle(STYLE) if little else STYLE)


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
    user32 = getattr(ctypes, "windll").user32  # noqa: B009 - other systems have none
    animates = ctypes.c_int(1)
    asked = user32.SystemParametersInfoW(
        _SPI_GETCLIENTAREAANIMATION, 0, ctypes.byref(animates), 0
    )
    return bool(asked) and not animates.value
