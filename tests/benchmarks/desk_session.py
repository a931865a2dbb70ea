"""Whether the desk ever stands still while it is worked with; run it by hand, it is no test.

    python -m tests.benchmarks.desk_session [--runs N] [--why]

Plays a session on the sample studio, with planning going on in its own process: every page is
opened, things are chosen, changed, dragged and undone, a long log is taken in. Prints the
longest wait of the event loop in each step (asked: no more than 50 ms), of several runs the
median and the worst, and frames on 20,000 bars while a solve runs (asked: median under 8 ms,
95 % under 16 ms). Exit 1 when anything is missed. With --why it says where the time of long
waits went; its figures are worth nothing then.
"""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys
from argparse import ArgumentParser
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtWidgets import QApplication

from studio_planner.craft.local_time import instant
from studio_planner.desktop.application import application, desk_window
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.planning_process import PlanningProcess
from studio_planner.desktop.theme import LIGHT, Look
from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline
from studio_planner.services.desk import DeskView
from studio_planner.services.sample import create_sample
from tests.benchmarks.desk import BARS, FRAME_MILLISECONDS, frames
from tests.benchmarks.desk_heart import Heart, Watch
from tests.benchmarks.desk_steps import session
from tests.desktop import scenes
from tests.desktop.pictures import AT, DAY

if TYPE_CHECKING:
    from collections.abc import Sequence

STALL_MILLISECONDS = 50.0
SLOW_FRAME_MILLISECONDS = 16.0
_OPENING_SECONDS = 5.0
_PLAY, _COMPILE = "--play", "--compile"

Waits = dict[str, float]
"""The longest wait [ms] of each step."""


def play(*, why: bool = False) -> Waits:
    """Play the session once."""
    app = application()
    waits: Waits = {}
    watch = Watch() if why else None
    with TemporaryDirectory() as folder:
        path = Path(folder) / "sample.studio"
        studio = create_sample(path, DAY)
        clock = scenes.StillClock(instant(studio.time_zone, DAY, AT))
        window = desk_window(clock, look=Look.LIGHT, data_folder=lambda: Path(folder))
        window.show()
        app.processEvents()
        heart = Heart(watch)

        def opening() -> None:
            window.open_soon(path)
            window.update()

        waits["open the studio"] = heart.run(opening, _OPENING_SECONDS)
        for step in session(window, Path(folder)):
            if why:
                _tell(step.words)
            waits[step.words] = heart.run(step.does, step.seconds)
        window.others.bench.close()
        window.close()
        app.processEvents()
    return waits


def measure_session(runs: int, *, why: bool) -> bool:
    """Play the session in processes of their own; tell whether nobody had to wait."""
    with TemporaryDirectory() as folder:
        environment = _compiled_into(folder)
        found = [_played(environment, why=why) for _ in range(runs)]
    for words in found[0]:
        waits = [waits[words] for waits in found]
        mark = "" if max(waits) <= STALL_MILLISECONDS else "  TOO LONG"
        told = f"median {statistics.median(waits):6.1f} ms, most {max(waits):6.1f} ms"
        _tell(f"{words:36} {told}{mark}")
    worst = max(max(waits.values()) for waits in found)
    _tell(f"longest wait of all {worst:.1f} ms; asked: at most {STALL_MILLISECONDS:.0f} ms")
    return worst <= STALL_MILLISECONDS


def _compiled_into(folder: str) -> dict[str, str]:
    """Surroundings in which modules are compiled once, as in every installed program."""
    environment = {**os.environ, "PYTHONPYCACHEPREFIX": folder}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    _run(environment, _COMPILE)
    return environment


def _played(environment: dict[str, str], *, why: bool) -> Waits:
    said = _run(environment, _PLAY, *(["--why"] if why else []))
    *reasons, last = said.splitlines()
    if why:
        _tell("\n".join(reasons))
    waits: Waits = json.loads(last)
    return waits


def _run(environment: dict[str, str], *arguments: str) -> str:
    command = [sys.executable, "-m", "tests.benchmarks.desk_session", *arguments]
    done = subprocess.run(
        command, check=True, env=environment, stdout=subprocess.PIPE, text=True
    )
    return done.stdout


def _compile_all() -> None:
    """Load every module of the desk once, so that it is there compiled."""
    import pkgutil  # noqa: PLC0415 - in a process of its own
    from importlib import import_module  # noqa: PLC0415 - likewise

    import studio_planner  # noqa: PLC0415 - likewise

    for module in pkgutil.walk_packages(studio_planner.__path__, "studio_planner."):
        if not module.name.endswith("__main__"):
            import_module(module.name)


def measure_frames_while_solving() -> bool:
    """Scroll 20,000 bars while a plan is looked for; tell whether that is fast enough."""
    canvas = Canvas(LIGHT, fonts_from(application().font()), scenes.NOW)
    timeline = WorkingTimeline(canvas)
    timeline.resize(1280, 800)
    canvas.show_view(DeskView(scenes.many(BARS), scenes.NOW))
    timeline.show_lanes()
    timeline.show()
    timeline.viewport().repaint()
    while not timeline.at_rest:
        QApplication.processEvents()
    with TemporaryDirectory() as folder:
        path = Path(folder) / "sample.studio"
        create_sample(path, DAY)
        planning = PlanningProcess()
        planning.start(path)
        times = sorted(
            frames(timeline, lambda step: canvas.scale.pan(9 if step % 200 < 100 else -9))
        )
        going_on = planning.running
        planning.close()
    timeline.close()
    median, slow = statistics.median(times), times[int(0.95 * len(times))]
    state = "while a solve runs" if going_on else "the solve had ended, so this says nothing"
    _tell(f"frames on {BARS} bars {state}: median {median:.2f} ms, 95 % {slow:.2f} ms")
    return going_on and median < FRAME_MILLISECONDS and slow < SLOW_FRAME_MILLISECONDS


def _tell(line: str) -> None:
    sys.stdout.write(f"{line}\n")


def main(arguments: Sequence[str]) -> int:
    """Measure, or be one of the processes in which it is measured."""
    parser = ArgumentParser(prog="desk_session")
    parser.add_argument("--runs", type=int, default=1, help="how often the session is played")
    parser.add_argument("--why", action="store_true", help="say where long waits come from")
    parser.add_argument(_PLAY, action="store_true", help="play it in this process")
    parser.add_argument(_COMPILE, action="store_true", help="only load everything once")
    asked = parser.parse_args(arguments)
    if asked.compile:
        _compile_all()
        return 0
    if asked.play:
        waits = play(why=asked.why)
        _tell(json.dumps(waits))
        return 0
    verdicts = [measure_session(asked.runs, why=asked.why), measure_frames_while_solving()]
    return 0 if all(verdicts) else 1


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
