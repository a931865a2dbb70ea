"""What the window's process has loaded once a studio is on the desk."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = """
import json, sys
from pathlib import Path
from studio_planner.desktop.application import application, desk_window
from tests.desktop.scenes import NOW, StillClock
window = desk_window(StillClock(NOW))
window.open_path(Path(sys.argv[1]))
window.show()
for _ in range(5):
    application().processEvents()
print(json.dumps(sorted(sys.modules)))
window.close()
"""


def loaded(path: Path) -> set[str]:
    environment = os.environ | {"QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)}
    answer = subprocess.run(  # noqa: S603 - our own words
        [sys.executable, "-c", PROGRAM, str(path)],
        check=True,
        env=environment,
        capture_output=True,
        text=True,
    )
    return set(json.loads(answer.stdout.splitlines()[-1]))


def test_an_open_studio_is_drawn_without_a_planner_or_anything_heavy(tmp_path: Path) -> None:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    modules = loaded(path)
    assert "studio_planner.services.next_hands" in modules
    assert not {"numpy", "ortools", "pandas", "scipy"} & modules
    assert not [name for name in modules if name.startswith("studio_planner.planning")]
