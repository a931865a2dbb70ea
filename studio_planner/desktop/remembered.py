"""What the desk remembers of itself between two runs: how it looks and speaks, no studio."""

from __future__ import annotations

from PySide6.QtCore import QSettings

from studio_planner.desktop.theme import Look
from studio_planner.desktop.tongue import Language

_NAME = "studio-planner"
_LOOK = "window/look"
_LANGUAGE = "window/language"
_LITTLE_MOTION = "window/little_motion"
_TRAY_TOLD = "window/tray_told"


def remembered_look() -> Look | None:
    """The look that was chosen last; None when none was, or it is no look of ours."""
    said = own_settings().value(_LOOK)
    return next((look for look in Look if look.value == said), None)


def remember_look(look: Look) -> None:
    """Keep the look that was chosen; where settings cannot be written, it is forgotten."""
    settings = own_settings()
    settings.setValue(_LOOK, look.value)
    settings.sync()


def remembered_language() -> Language:
    """The language that was chosen last; that of the system when none was."""
    said = own_settings().value(_LANGUAGE)
    return next((one for one in Language if one.value == said), Language.SYSTEM)


def remember_language(language: Language) -> None:
    """Keep the language that was chosen; where settings cannot be written, it is forgotten."""
    settings = own_settings()
    settings.setValue(_LANGUAGE, language.value)
    settings.sync()


def remembered_motion() -> bool | None:
    """Whether little is to move, as was chosen; None where the system's word holds."""
    said = own_settings().value(_LITTLE_MOTION)
    return None if said is None else str(said).lower() == "true"


def remember_motion(*, little: bool) -> None:
    """Keep how much is to move; where settings cannot be written, it is forgotten."""
    settings = own_settings()
    settings.setValue(_LITTLE_MOTION, "true" if little else "false")
    settings.sync()


def remembered_tray_told() -> bool:
    """Whether it was said once that the desk stays in the tray."""
    return str(own_settings().value(_TRAY_TOLD)).lower() == "true"


def remember_tray_told() -> None:
    """Keep that it was said; where settings cannot be written, it is said again."""
    settings = own_settings()
    settings.setValue(_TRAY_TOLD, "true")
    settings.sync()


def own_settings() -> QSettings:
    """Where the desk keeps what it remembers of itself."""
    form, scope = QSettings.Format.IniFormat, QSettings.Scope.UserScope
    return QSettings(form, scope, _NAME, "window")
