"""Which backups there are, what they are called, and which may go."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable
    from pathlib import Path

KEPT_NEWEST = 10
KEPT_DAYS = 30
_STAMP = "%Y-%m-%d %H%M%S.%fZ"
_STAMP_PATTERN = r"\d{4}-\d{2}-\d{2} \d{6}\.\d{6}Z"


@dataclass(frozen=True, slots=True, kw_only=True)
class Backup:
    """One backup: when it was made (UTC), and where it is."""

    made: datetime
    path: Path


def backup_name(studio_file: Path, now: datetime) -> str:
    """The name of a backup of that file made at `now` (aware)."""
    return f"{_series(studio_file)} {now.astimezone(UTC):{_STAMP}}{studio_file.suffix}"


def backups_of(studio_file: Path, folder: Path) -> tuple[Backup, ...]:
    """All backups of that file in a folder, newest first; none when there is no such folder."""
    pattern = re.compile(
        re.escape(_series(studio_file)) + f" ({_STAMP_PATTERN})" + re.escape(studio_file.suffix)
    )
    names = [path for path in folder.iterdir() if path.is_file()] if folder.is_dir() else []
    found = []
    for path in names:
        match = pattern.fullmatch(path.name)
        if match:
            made = datetime.strptime(match[1], _STAMP).replace(tzinfo=UTC)
            found.append(Backup(made=made, path=path))
    return tuple(sorted(found, key=lambda backup: backup.made, reverse=True))


def no_longer_kept(backups: Iterable[Backup], now: datetime) -> tuple[Backup, ...]:
    """The backups that may go: not among the 10 newest, nor the last of its day for 30 days."""
    newest_first = sorted(backups, key=lambda backup: backup.made, reverse=True)
    kept = {backup.path for backup in newest_first[:KEPT_NEWEST]}
    days: set[object] = set()
    for backup in newest_first:
        recent = backup.made > now - timedelta(days=KEPT_DAYS)
        if recent and backup.made.date() not in days:
            days.add(backup.made.date())
            kept.add(backup.path)
    return tuple(backup for backup in newest_first if backup.path not in kept)


def _series(studio_file: Path) -> str:
    # Two studios of the same name in different folders must not thin out each other's backups.
    from hashlib import sha256  # noqa: PLC0415 - takes longer to load than a studio to open

    where = sha256(str(studio_file.absolute()).encode("utf-8", "surrogateescape"))
    return f"{studio_file.stem} {where.hexdigest()[:8]}"
