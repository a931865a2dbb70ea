"""The desk once on a real (virtual) screen with a window manager, moved by a real mouse."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

if TYPE_CHECKING:
    from collections.abc import Iterator

TOOLS = ("Xvfb", "openbox", "xdotool")
MISSING = [tool for tool in TOOLS if shutil.which(tool) is None]
ROOT = Path(__file__).resolve().parents[2]

DESK = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from studio_planner.desktop.application import desk_window
from studio_planner.desktop.theme import Look
from tests.desktop import scenes

window = desk_window(scenes.StillClock(scenes.NOW), look=Look.LIGHT)
window.open_soon(Path(sys.argv[1]))
window.show()

def tell():
    if window.session is None:
        return
    scale = window.canvas.scale
    bar = window.timeline.lanes.bar(window.timeline.currentIndex())
    name = bar.lane.piece.name if bar else "-"
    index = window.timeline.lanes.index(5, 0)
    place = window.timeline.viewport().mapToGlobal(window.timeline.visualRect(index).center())
    print(f"{scale.seconds_per_pixel:.3f}|{name}|{place.x()},{place.y()}|"
          f"{QApplication.platformName()}", flush=True)

timer = QTimer()
timer.timeout.connect(tell)
timer.start(150)
code = QApplication.exec()
window.close()
raise SystemExit(code)
"""

PLACED = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from studio_planner.desktop import application as desk
from studio_planner.desktop.theme import Look
from tests.desktop import scenes

def tell():
    window = next(w for w in QApplication.topLevelWidgets() if hasattr(w, "session"))
    if not window.isActiveWindow() or window.session is None:
        return
    frame, room = window.frameGeometry(), window.screen().availableGeometry()
    print(f"{room.contains(frame)}|{frame.getRect()}|{room.getRect()}", flush=True)

app = desk.application()
timer = QTimer()
timer.timeout.connect(tell)
timer.start(400)
desk.run_desk(Path(sys.argv[1]), scenes.StillClock(scenes.NOW), look=Look.LIGHT)
"""


@pytest.fixture
def screen() -> Iterator[str]:
    """A virtual screen with a window manager; its name."""
    read, write = os.pipe()
    server = subprocess.Popen(  # noqa: S603 - our own words
        ["Xvfb", "-displayfd", str(write), "-screen", "0", "1400x900x24", "-nolisten", "tcp"],  # noqa: S607
        pass_fds=(write,),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(write)
    with os.fdopen(read) as told:
        display = f":{told.readline().strip()}"
    manager = subprocess.Popen(
        ["openbox"],  # noqa: S607
        env=os.environ | {"DISPLAY": display},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    yield display
    for process in (manager, server):
        process.terminate()
        process.wait(10)


class Watched:
    """A desk in a process of its own, which tells what it shows again and again."""

    def __init__(
        self, display: str, path: Path, *, program: str = DESK, scale: str = "1"
    ) -> None:
        self.environment = os.environ | {
            "DISPLAY": display,
            "QT_SCALE_FACTOR": scale,
            "QT_QPA_PLATFORM": "xcb",
            "PYTHONPATH": str(ROOT),
        }
        self.process = subprocess.Popen(  # noqa: S603 - our own words
            [sys.executable, "-c", program, str(path)],
            env=self.environment,
            stdout=subprocess.PIPE,
            text=True,
        )

    def told(self) -> list[str]:
        assert self.process.stdout is not None
        line = self.process.stdout.readline()
        assert line, "the desk ended"
        return line.strip().split("|")

    def until(self, field: int, unlike: str) -> list[str]:
        deadline = time.monotonic() + 20.0
        while time.monotonic() < deadline:
            told = self.told()
            if told[field] != unlike:
                return told
        pytest.fail(f"it stayed {unlike!r}")

    def end(self) -> None:
        self.process.kill()
        self.process.communicate()

    def do(self, *words: str) -> None:
        subprocess.run(["xdotool", *words], check=True, env=self.environment)  # noqa: S603, S607


@pytest.mark.skipif(bool(MISSING), reason=f"not installed here: {', '.join(MISSING)}")
@pytest.mark.journey
@pytest.mark.slow
def test_on_a_screen_a_click_chooses_a_bar_and_ctrl_wheel_zooms(
    screen: str, tmp_path: Path
) -> None:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    desk = Watched(screen, path)
    try:
        told = desk.told()
        assert told[3] == "xcb"
        desk.do("search", "--sync", "--name", "Lantern Yard", "windowactivate", "--sync")
        for _ in range(4):
            told = desk.told()
        x, y = told[2].split(",")
        desk.do("mousemove", x, y, "click", "1")
        chosen = desk.until(1, told[1])
        assert chosen[1] == "Market board 7"
        desk.do("keydown", "ctrl", "click", "4", "keyup", "ctrl")
        zoomed = desk.until(0, chosen[0])
        assert float(zoomed[0]) < float(chosen[0])
        desk.do("key", "minus")
        assert float(desk.until(0, zoomed[0])[0]) > float(zoomed[0])
        desk.do("key", "ctrl+q")
        assert desk.process.wait(20) == 0
    finally:
        desk.end()


@pytest.mark.skipif(bool(MISSING), reason=f"not installed here: {', '.join(MISSING)}")
@pytest.mark.journey
@pytest.mark.slow
@pytest.mark.parametrize("scale", ["1", "2"])
def test_on_a_screen_of_1400_by_900_the_whole_window_is_inside(
    screen: str, tmp_path: Path, scale: str
) -> None:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    desk = Watched(screen, path, program=PLACED, scale=scale)
    try:
        inside, frame, room = desk.told()
        assert inside == "True", f"{frame} in {room}"
    finally:
        desk.end()
