"""However the program ends, an open window never takes it down with a crash."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

ROOT = Path(__file__).resolve().parents[2]

START = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from studio_planner.desktop import application as desk
from tests.desktop.scenes import NOW, StillClock
path, clock = Path(sys.argv[1]), StillClock(NOW)
"""
LEFT_OPEN = """
window = desk.desk_window(clock)
window.open_path(path)
window.show()
for _ in range(5):
    desk.application().processEvents()
"""
FALLS_OVER = f"{LEFT_OPEN}raise RuntimeError('something else went wrong')"
INTERRUPTED = """
def interrupt():
    raise KeyboardInterrupt
def instead():
    desk.application().processEvents()
    interrupt()
desk.QApplication.exec = staticmethod(instead)
try:
    desk.run_desk(path, clock)
except KeyboardInterrupt:
    sys.exit(7)
"""
QUIT = """
desk.application()
QTimer.singleShot(100, desk.application().quit)
sys.exit(desk.run_desk(path, clock))
"""


@pytest.mark.slow
@pytest.mark.parametrize(
    ("program", "code"),
    [(LEFT_OPEN, 0), (FALLS_OVER, 1), (INTERRUPTED, 7), (QUIT, 0)],
    ids=["left open", "falls over", "interrupted", "quit"],
)
def test_an_open_window_never_crashes_the_end_of_the_program(
    tmp_path: Path, program: str, code: int
) -> None:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    environment = os.environ | {"QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)}
    ended = subprocess.run(  # noqa: S603 - our own words
        [sys.executable, "-c", START + program, str(path)],
        check=False,
        env=environment,
        capture_output=True,
        text=True,
        timeout=60,
    )
    assert ended.returncode == code, ended.stderr
    assert ("Traceback" in ended.stderr) == (code == 1)
