"""How fast the desk is drawn and opened; run it by hand, it is no test.

    python -m tests.benchmarks.desk

Prints frame times on 20,000 bars (asked: median under 8 ms, offscreen) and the time to the
first window against that of an empty main window (asked: under 1.6 times). Exit 1 when either
is missed.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter
from typing import TYPE_CHECKING

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtWidgets import QApplication

from studio_planner.desktop.application import application
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.theme import LIGHT
from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline
from studio_planner.services.desk import DeskView
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

if TYPE_CHECKING:
    from collections.abc import Callable

BARS = 20_000
FRAMES = 240
FRAME_MILLISECONDS = 8.0
RATIO = 1.6
RUNS = 9

EMPTY = """
import sys
from PySide6.QtWidgets import QApplication, QMainWindow
app = QApplication(sys.argv)
window = QMainWindow()
window.resize(1280, 800)
window.show()
app.processEvents()
"""

DESK = """
import sys
from pathlib import Path
from datetime import UTC, datetime
from studio_planner.desktop.application import application, desk_window
class Clock:
    def now(self):
        return datetime(2026, 12, 8, 18, 36, tzinfo=UTC)
window = desk_window(Clock())
window.open_soon(Path(sys.argv[1]))
window.show()
application().processEvents()
if sys.argv[2:]:
    while window.session is None:
        application().processEvents()
    drawn = []
    window.timeline.drawing.drawn.connect(lambda: drawn.append(True))
    while not drawn:
        application().processEvents()
if "whole" in sys.argv:
    hands = window.parts.side.hands.rows
    while not (window.timeline.settled and window.timeline.at_rest and hands.rowCount()):
        application().processEvents()
window.close()
"""


def _tell(line: str) -> None:
    sys.stdout.write(f"{line}\n")


def frames(timeline: WorkingTimeline, move: Callable[[int], None]) -> list[float]:
    """Milliseconds of each frame: move, repaint at once, drain the events."""
    times = []
    for step in range(FRAMES):
        begun = perf_counter()
        move(step)
        timeline.viewport().repaint()
        QApplication.processEvents()
        times.append((perf_counter() - begun) * 1000.0)
    return times


def _come_to_rest(timeline: WorkingTimeline) -> None:
    """Draw all that is in view and around it: whoever zooms looks before scrolling on."""
    timeline.viewport().repaint()
    while not timeline.at_rest:
        QApplication.processEvents()


def measure_frames() -> bool:
    """Scroll and zoom over many bars; tell whether scrolling is fast enough."""
    canvas = Canvas(LIGHT, fonts_from(application().font()), scenes.NOW)
    timeline = WorkingTimeline(canvas)
    timeline.resize(1280, 800)
    begun = perf_counter()
    canvas.show_view(DeskView(scenes.many(BARS), scenes.NOW))
    timeline.show_lanes()
    timeline.show()
    QApplication.processEvents()
    _tell(f"{BARS} bars shown after {(perf_counter() - begun) * 1000.0:.0f} ms")
    scale, rows = canvas.scale, timeline.verticalScrollBar()

    def zoomed_to(pixels_per_day: float) -> None:
        scale.show(scenes.NOW.timestamp(), 86_400.0 / pixels_per_day)

    def pan(step: int) -> None:
        scale.pan(9 if step % 200 < 100 else -9)

    def scroll(step: int) -> None:
        rows.setValue(step * 37 % max(rows.maximum(), 1))

    def zoom(step: int) -> None:
        scale.zoom(1.04 if step % 40 < 20 else 1 / 1.04, 640.0)

    medians = {}
    for name, zoom_pixels, move in (
        ("through time, roomy lanes", 160.0, pan),
        ("over lanes, roomy", 160.0, scroll),
        ("zooming", 160.0, zoom),
        ("through time, close lanes", 60.0, pan),
        ("over lanes, close", 60.0, scroll),
        ("through time, hairlines", 20.0, pan),
        ("over lanes, hairlines", 20.0, scroll),
    ):
        zoomed_to(zoom_pixels)
        _come_to_rest(timeline)
        times = sorted(frames(timeline, move))
        medians[name] = statistics.median(times)
        slow = times[int(0.95 * FRAMES)]
        _tell(f"{name:28} median {medians[name]:6.2f} ms, 95 % {slow:6.2f} ms")
    timeline.close()
    scrolled = (median for name, median in medians.items() if name != "zooming")
    return max(scrolled) < FRAME_MILLISECONDS


def measure_start() -> bool:
    """Open a window in fresh processes; tell whether the desk is quick enough."""
    with TemporaryDirectory() as folder:
        path = Path(folder) / "scene.studio"
        create_studio(path, scenes.planned()).close()
        environment = _compiled_into(Path(folder))
        programs = (
            (EMPTY,),
            (DESK, str(path)),
            (DESK, str(path), "plan"),
            (DESK, str(path), "whole"),
        )
        times = [[_seconds(environment, *one) for one in programs] for _ in range(RUNS)]
    quick, shown, planned, whole = (
        statistics.median(each) for each in zip(*times, strict=True)
    )
    _tell(f"empty main window          {quick * 1000:.0f} ms")
    for name, found in (
        ("first window              ", shown),
        ("with its plan, sketched   ", planned),
        ("with shades, room and side", whole),
    ):
        _tell(f"{name} {found * 1000:.0f} ms, ratio {found / quick:.2f}")
    _tell(f"asked: the first window under {RATIO}")
    return bool(shown / quick < RATIO)


def _compiled_into(folder: Path) -> dict[str, str]:
    """Surroundings in which modules are compiled once, as in every installed program."""
    environment = {**os.environ, "PYTHONPYCACHEPREFIX": str(folder / "compiled")}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    path = str(folder / "scene.studio")
    for program in (EMPTY, DESK):
        _seconds(environment, program, path, "whole")
    return environment


def _seconds(environment: dict[str, str], program: str, *arguments: str) -> float:
    begun = perf_counter()
    subprocess.run([sys.executable, "-c", program, *arguments], check=True, env=environment)
    return perf_counter() - begun


if __name__ == "__main__":
    verdicts = [measure_frames(), measure_start()]
    raise SystemExit(0 if all(verdicts) else 1)
