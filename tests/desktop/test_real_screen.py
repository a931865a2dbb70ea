"""The desk once on a real (virtual) screen, moved by a real mouse and real keys."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.storage.studio_file import create_studio, open_studio
from tests.desktop import scenes
from tests.desktop.real_hands import WHEEL_UP, Hands, missing, virtual_screen

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

ROOT = Path(__file__).resolve().parents[2]
PATIENCE_SECONDS = 20.0
MISSING = ", ".join(missing())

pytestmark = [
    pytest.mark.skipif(bool(MISSING), reason=f"not installed here: {MISSING}"),
    pytest.mark.journey,
    pytest.mark.slow,
]

DESK = """
import json
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from studio_planner.desktop import application as desk
from studio_planner.desktop.theme import Look
from tests.desktop import scenes

def middle(widget, rect):
    place = widget.mapToGlobal(rect.center()) * widget.devicePixelRatio()
    return place.x(), place.y()

def tell():
    window = next(w for w in QApplication.topLevelWidgets() if hasattr(w, "session"))
    if window.session is None:
        return
    window.changes.plans_by_itself = False
    timeline = window.timeline
    bar = timeline.lanes.bar(timeline.currentIndex())
    shown = timeline.visualRect(timeline.lanes.index(5, 0))
    frame, room = window.frameGeometry(), window.screen().availableGeometry()
    told = {
        "platform": QApplication.platformName(),
        "window": int(window.winId()),
        "active": window.isActiveWindow(),
        "inside": room.contains(frame),
        "where": f"{frame.getRect()} in {room.getRect()}",
        "page": window.pages.current_key,
        "zoom": window.canvas.scale.seconds_per_pixel,
        "chosen": bar.lane.piece.name if bar else "",
        "bar": middle(timeline.viewport(), shown),
        "pieces": [piece.name for piece in window.session.studio.pieces],
    }
    if told["page"] == "pieces":
        add = window.pages.page("pieces").pieces.add_button
        told["add"] = middle(add, add.rect())
    print(json.dumps(told), flush=True)

app = desk.application()
timer = QTimer()
timer.timeout.connect(tell)
timer.start(150)
raise SystemExit(
    desk.run_desk(Path(sys.argv[1]), scenes.StillClock(scenes.NOW), look=Look.LIGHT)
)
"""


class Watched:
    """A desk in a process of its own, which tells what it shows again and again."""

    def __init__(self, display: str, path: Path, scale: str) -> None:
        self.process = subprocess.Popen(  # noqa: S603 - our own words
            [sys.executable, "-c", DESK, str(path)],
            env=os.environ
            | {
                "DISPLAY": display,
                "QT_SCALE_FACTOR": scale,
                "QT_QPA_PLATFORM": "xcb",
                "PYTHONPATH": str(ROOT),
                "LANGUAGE": "en",
                "LC_ALL": "C.UTF-8",
                "XDG_CONFIG_HOME": str(path.parent / "settings"),
                "XDG_DATA_HOME": str(path.parent / "data"),
            },
            stdout=subprocess.PIPE,
            text=True,
        )
        self.hands = Hands(display)

    def told(self) -> dict[str, Any]:
        assert self.process.stdout is not None
        line = self.process.stdout.readline()
        assert line, "the desk ended"
        told = json.loads(line)
        assert isinstance(told, dict)
        return told

    def until(self, holds: Callable[[dict[str, Any]], object]) -> dict[str, Any]:
        """What the desk tells once something holds."""
        deadline = time.monotonic() + PATIENCE_SECONDS
        told = self.told()
        while not holds(told):
            assert time.monotonic() < deadline, f"it stayed {told}"
            told = self.told()
        return told

    def ready(self) -> dict[str, Any]:
        """Give the window the keys, and wait until it is in front and at rest."""
        self.hands.give_keys(self.told()["window"])
        told = self.until(lambda told: told["active"])
        assert told["platform"] == "xcb"
        while (after := self.told()) != told:
            told = after
        return told

    def end(self) -> None:
        self.hands.let_go()
        self.process.kill()
        self.process.communicate()


@pytest.fixture
def studio_file(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    return path


@pytest.fixture
def desk(request: pytest.FixtureRequest, studio_file: Path) -> Iterator[Watched]:
    """A desk on a screen of its own, at the scale that a test asks for."""
    with virtual_screen() as screen:
        watched = Watched(screen, studio_file, getattr(request, "param", "1"))
        try:
            yield watched
        finally:
            watched.end()


def test_on_a_screen_a_click_chooses_a_bar_and_ctrl_wheel_zooms(desk: Watched) -> None:
    told, hands = desk.ready(), desk.hands
    hands.move(*told["bar"])
    hands.click()
    chosen = desk.until(lambda now: now["chosen"] != told["chosen"])
    assert chosen["chosen"] == "Market board 7"
    with hands.holding("Control_L"):
        hands.click(WHEEL_UP)
    near = desk.until(lambda now: now["zoom"] < chosen["zoom"])
    hands.key("minus")
    desk.until(lambda now: now["zoom"] > near["zoom"])
    with hands.holding("Control_L"):
        hands.key("q")
    assert desk.process.wait(PATIENCE_SECONDS) == 0


def test_on_a_screen_a_piece_is_added_named_by_keys_kept_and_undone(
    desk: Watched, studio_file: Path
) -> None:
    before, hands = desk.ready()["pieces"], desk.hands
    with hands.holding("Control_L"):
        hands.key("3")
    pieces = desk.until(lambda now: "add" in now)
    hands.move(*pieces["add"])
    hands.click()
    desk.until(lambda now: len(now["pieces"]) == len(before) + 1)
    hands.write("Moon board")
    hands.key("Return")
    desk.until(lambda now: "Moon board" in now["pieces"])
    with open_studio(studio_file) as file:
        assert "Moon board" in [piece.name for piece in file.read().pieces]
    for _ in range(2):
        with hands.holding("Control_L"):
            hands.key("z")
    desk.until(lambda now: now["pieces"] == before)


@pytest.mark.parametrize("desk", ["1", "2"], indirect=True)
def test_on_a_screen_of_1400_by_900_the_whole_window_is_inside(desk: Watched) -> None:
    told = desk.ready()
    assert told["inside"], told["where"]
