"""Which loggers' files are watched for which studio; the desk remembers it between two runs."""

from __future__ import annotations

import json
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.desktop.remembered import own_settings

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.room_logs import LogAsked

_WATCHED = "readings/watched"


def remembered_watched(studio: Path) -> dict[str, tuple[Path, LogAsked]]:
    """The loggers' files that are watched for a studio file, by the keys of its places.

    What was kept otherwise than we keep it is not remembered.
    """
    said = own_settings().value(_WATCHED)
    try:
        kept = json.loads(str(said)).get(str(studio), {}) if said is not None else {}
        return {
            str(key): (Path(one["path"]), _asked(one["asked"])) for key, one in kept.items()
        }
    except (ValueError, TypeError, KeyError, AttributeError):
        return {}


def remember_watched(studio: Path, files: Mapping[str, tuple[Path, LogAsked]]) -> None:
    """Keep which files are watched for a studio file, and what was said of each."""
    settings = own_settings()
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
