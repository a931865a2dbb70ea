"""What the desk remembers of itself between two runs: how it looks and speaks, no studio."""

from __future__ import annotations

import json
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QSettings

from studio_planner.desktop.theme import Look
from studio_planner.desktop.tongue import Language

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.room_logs import LogAsked

_NAME = "studio-planner"
_LOOK = "window/look"
_LANGUAGE = "window/language"
_LITTLE_MOTION = "window/little_motion"
_WATCHED = "readings/watched"
_TRAY_TOLD = "window/tray_told"


def remembered_look() -> Look | None:
    """The look that was chosen last; None when none was, or it is no look of ours."""
    said = _settings().value(_LOOK)
    return next((look for look in Look if look.value == said), None)


def remember_look(look: Look) -> None:
    """Keep the look that was chosen; where settings cannot be written, it is forgotten."""
    settings = _settings()
    settings.setValue(_LOOK, look.value)
    settings.sync()


def remembered_language() -> Language:
    """The language that was chosen last; that of the system when none was."""
    said = _settings().value(_LANGUAGE)
    return next((one for one in Language if one.value == said), Language.SYSTEM)


def remember_language(language: Language) -> None:
    """Keep the language that was chosen; where settings cannot be written, it is forgotten."""
    settings = _settings()
    settings.setValue(_LANGUAGE, language.value)
    settings.sync()


def remembered_motion() -> bool | None:
    """Whether little is to move, as was chosen; None where the system's word holds."""
    said = _settings().value(_LITTLE_MOTION)
    return None if said is None else str(said).lower() == "true"


def remember_motion(*, little: bool) -> None:
    """Keep how much is to move; where settings cannot be written, it is forgotten."""
    settings = _settings()
    settings.setValue(_LITTLE_MOTION, "true" if little else "false")
    settings.sync()


def remembered_tray_told() -> bool:
    """Whether it was said once that the desk stays in the tray."""
    return str(_settings().value(_TRAY_TOLD)).lower() == "true"


def remember_tray_told() -> None:
    """Keep that it was said; where settings cannot be written, it is said again."""
    settings = _settings()
    settings.setValue(_TRAY_TOLD, "true")
    settings.sync()


def remembered_watched(studio: Path) -> dict[str, tuple[Path, LogAsked]]:
    """The loggers' files that are watched for a studio file, by the keys of its places.

    What was kept otherwise than we keep it is not remembered.
    """
    said = _settings().value(_WATCHED)
    try:
        kept = json.loads(str(said)).get(str(studio), {}) if said is not None else {}
        return {
            str(key): (Path(one["path"]), _asked(one["asked"])) for key, one in kept.items()
        }
    except (ValueError, TypeError, KeyError, AttributeError):
        return {}


def remember_watched(studio: Path, files: Mapping[str, tuple[Path, LogAsked]]) -> None:
    """Keep which files are watched for a studio file, and what was said of each."""
    settings = _settings()
    try:
        kept = json.loads(str(settings.value(_WATCHED, "{}")))
    except ValueError:
        kept = {}
    kept = kept if isinstance(kept, dict) else {}
    kept[str(studio)] = {
        key: {"path": str(path), "asked": _told(asked)} for key, (path, asked) in files.items()
    }
    settings.setValue(_WATCHED, json.dumps({k: v for k, v in kept.items() if v}))
    settings.sync()


def _told(asked: LogAsked) -> dict[str, Any]:
    return {"answers": asdict(asked.answers), "in_utc": asked.in_utc, "thin": asked.thin}


def _asked(told: Mapping[str, Any]) -> LogAsked:
    from studio_planner.services.room_logs import (  # noqa: PLC0415 - few watch a file
        DateOrder,
        LogAnswers,
        LogAsked,
        LogUnit,
        Overlap,
    )

    said = told["answers"]
    unit, order = said["unit"], said["date_order"]
    answers = LogAnswers(
        date_order=None if order is None else DateOrder(order),
        unit=None if unit is None else LogUnit(unit),
        temperature_column=said["temperature_column"],
        humidity_column=said["humidity_column"],
        overlap=Overlap(said["overlap"]),
    )
    return LogAsked(answers=answers, in_utc=bool(told["in_utc"]), thin=told["thin"])


def _settings() -> QSettings:
    form, scope = QSettings.Format.IniFormat, QSettings.Scope.UserScope
    return QSettings(form, scope, _NAME, "window")
