"""What the window's process has loaded at its first frame, and once a studio is on the desk."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = """
import sys
from datetime import UTC, datetime
from pathlib import Path
from studio_planner.desktop.application import application, desk_window
class Clock:
    def now(self):
        return datetime(2026, 12, 8, 18, 36, tzinfo=UTC)
window = desk_window(Clock())
# On a slow computer pages are made ready before the desk is drawn.
window.opened.disconnect(window.pages.get_ready)
if sys.argv[1:]:
    window.open_path(Path(sys.argv[1]))
window.show()
for _ in range(5):
    application().processEvents()
print(*sys.modules)
window.close()
"""

AFTER_THE_FIRST_FRAME = {
    "desk_backups",
    "desk_parts",
    "due_pages",
    "language_menu",
    "pages",
    "reminding",
    "still_style",
    "timeline_work",
    "watched_files",
}
"""Modules and packages of the desk that a window without a studio has no use for."""


def loaded(path: Path | None = None) -> set[str]:
    environment = os.environ | {"QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)}
    answer = subprocess.run(  # noqa: S603 - our own words
        [sys.executable, "-c", PROGRAM, *([] if path is None else [str(path)])],
        check=True,
        env=environment,
        capture_output=True,
        text=True,
    )
    return set(answer.stdout.splitlines()[-1].split())


def test_the_first_frame_is_drawn_without_nouns_file_or_any_page() -> None:
    modules = loaded()
    ours = {name for name in modules if name.startswith("studio_planner.")}
    desk = {name for name in ours if name.startswith("studio_planner.desktop")}
    assert ours - desk == {
        "studio_planner.craft",
        "studio_planner.craft.errors",
        "studio_planner.craft.resources",
        "studio_planner.craft.tongue",
    }
    late = {f"studio_planner.desktop.{name}" for name in AFTER_THE_FIRST_FRAME}
    assert not late & desk
    assert not {"ctypes", "json.decoder", "pkgutil", "zoneinfo"} & modules


def test_an_open_studio_is_drawn_without_a_planner_or_anything_heavy(tmp_path: Path) -> None:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    modules = loaded(path)
    assert "studio_planner.services.next_hands" in modules
    assert not {"numpy", "ortools", "pandas", "scipy"} & modules
    assert not [name for name in modules if name.startswith("studio_planner.planning")]
