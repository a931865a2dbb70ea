"""What the desk remembers of itself between two runs: how it looks, and nothing of a studio."""

from __future__ import annotations

from PySide6.QtCore import QSettings

from studio_planner.desktop.theme import Look

_NAME = "studio-planner"
_LOOK = "window/look"


def remembered_look() -> Look | None:
    """The look that was chosen last; None when none was, or it is no look of ours."""
    said = _settings().value(_LOOK)
    return next((look for look in Look if look.value == said), None)


def remember_look(look: Look) -> None:
    """Keep the look that was chosen; where settings cannot be written, it is forgotten."""
    settings = _settings()
    settings.setValue(_LOOK, look.value)
    settings.sync()


def _settings() -> QSettings:
    form, scope = QSettings.Format.IniFormat, QSettings.Scope.UserScope
    return QSettings(form, scope, _NAME, "window")
