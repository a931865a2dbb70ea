"""Makes pictures of the real window on the sample studio, to be looked at.

    python -m tests.desktop.pictures OUT_DIR [--language de]
    python -m tests.desktop.pictures --readme

Light and dark, at 100 and 200 %: the week, the whole plan, one day near by, every other page
with its sections and parts, what is due, the bench and the scale. With --readme only the two
pictures of the week that the README shows, in resources/pictures.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from argparse import ArgumentParser
from datetime import date, time, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.desktop.application import application, desk_window
from studio_planner.desktop.page_keys import (
    LOG,
    ORDERS,
    PIECES,
    PRODUCTS,
    QUESTIONS,
    REMINDERS,
    STOCK,
    STUDIO,
)
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.stock_page import BOTTLES, PIGMENTS, PRICES
from studio_planner.desktop.pages.studio_page import BACKUPS, HANDS, ROOM, RULES, UNITS
from studio_planner.desktop.piece_pages.part_names import BLANK, PATTERNS, PHOTOS, STACK
from studio_planner.desktop.theme import Look
from studio_planner.desktop.tongue import Language
from studio_planner.services.sample import create_sample
from tests.desktop.due_scene import NotingNotifier, NotingScheduler, ways_out
from tests.desktop.scenes import StillClock

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QPixmap
    from PySide6.QtWidgets import QApplication, QWidget

    from studio_planner.desktop.window import DeskWindow

DAY = date(2026, 12, 7)
AT = time(19, 10)
SECTIONS = (HANDS, ROOM, UNITS, RULES, REMINDERS, BACKUPS)
STOCK_SECTIONS = (BOTTLES, PIGMENTS, PRICES)
PARTS = (BLANK, PHOTOS, PATTERNS)
PAGES = (ORDERS, PIECES, PRODUCTS, STUDIO, QUESTIONS, LOG, STOCK)
SMALLEST = 0
"""Qt's quality of a PNG without loss that takes the least room."""
SIZE = (1440, 900)
LAST_STEP = 12
"""The step at the scale after which nothing new is seen: the second cup is poured."""

README_PICTURES = {
    "desk-week-light-100.png": "desk.png",
    "desk-week-dark-100.png": "desk-dark.png",
}
README_FOLDER = Path(__file__).resolve().parents[2] / "resources" / "pictures"
LARGEST_BYTES = 260_000
"""What a picture in the README may take."""


def main(arguments: list[str]) -> int:
    """Make all pictures; each scale needs a process of its own."""
    parser = ArgumentParser(prog="python -m tests.desktop.pictures")
    where = parser.add_mutually_exclusive_group(required=True)
    where.add_argument("out", nargs="?", metavar="OUT_DIR", help="where the pictures go")
    where.add_argument("--readme", action="store_true", help="only those of the README")
    parser.add_argument("--language", choices=("en", "de"), default="en", help="what it speaks")
    asked = parser.parse_args(arguments)
    if asked.readme:
        return for_readme()
    out = Path(asked.out).resolve()
    out.mkdir(parents=True, exist_ok=True)
    for percent in (100, 200):
        at_scale(out, percent, Language(asked.language))
    return 0


def for_readme() -> int:
    """Make the two pictures of the README; 1 when one of them is too large."""
    README_FOLDER.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory() as folder:
        at_scale(Path(folder), 100, Language.ENGLISH)
        for made, name in README_PICTURES.items():
            shutil.copyfile(Path(folder) / made, README_FOLDER / name)
    sizes = {name: (README_FOLDER / name).stat().st_size for name in README_PICTURES.values()}
    for name, size in sizes.items():
        sys.stdout.write(f"{README_FOLDER / name}: {size} bytes\n")
    return 1 if max(sizes.values()) > LARGEST_BYTES else 0


def at_scale(out: Path, percent: int, language: Language) -> None:
    """Make all pictures at a scale, in a process of its own."""
    environment = os.environ | {
        "QT_QPA_PLATFORM": os.environ.get("QT_QPA_PLATFORM", "offscreen"),
        "QT_SCALE_FACTOR": str(percent / 100),
        "PICTURES_PERCENT": str(percent),
    }
    program = [sys.executable, "-m", "tests.desktop.pictures", str(out), language.value]
    subprocess.run(program, check=True, env=environment)  # noqa: S603 - our own module


def one_scale(out: Path, percent: int, language: Language) -> None:
    """Make the pictures in a language, at the scale that this process runs at."""
    for look in Look:
        with TemporaryDirectory() as folder:
            for name, picture in _pictures(Path(folder), look, language):
                to = out / f"{name}-{look.value}-{percent}.png"
                picture.save(str(to), quality=SMALLEST)


def _pictures(folder: Path, look: Look, language: Language) -> Iterator[tuple[str, QPixmap]]:
    """Every picture by its name, of a studio that was backed up once."""
    path = folder / "sample.studio"
    studio = create_sample(path, DAY)
    clock = StillClock(instant(studio.time_zone, DAY, AT))
    window = desk_window(
        clock,
        look=look,
        language=language,
        data_folder=lambda: folder,
        ways_out=ways_out(NotingNotifier(), NotingScheduler(folder)),
    )
    window.open_path(path)
    window.backups.make_for_today()
    window.backups.work.finish()
    window.resize(*SIZE)
    window.show()
    app = application()
    _settle(app, window)
    _look(app, window)
    window.timeline.choose_piece(studio.pieces[0].key)
    for name in ("week", "plan", "day"):
        _show(window, name)
        _settle(app, window)
        yield f"desk-{name}", window.grab()
    for name in _each_page(app, window):
        yield f"desk-{name}", window.grab()
    yield "due", _due(app, window)
    yield "bench", _bench(app, window)
    for name, picture in _scale(app, window, clock):
        yield f"scale-{name}", picture
    window.leave()


def _look(app: QApplication, window: DeskWindow) -> None:
    window.reminding.look()
    while window.reminding.busy:
        app.processEvents()


def _each_page(app: QApplication, window: DeskWindow) -> Iterator[str]:
    """Every page, the sections of studio and stock, the parts of a piece, each in turn."""
    sections = [
        (f"{page}-{key}", page, key)
        for page, keys in ((STUDIO, SECTIONS), (STOCK, STOCK_SECTIONS))
        for key in keys
    ]
    for name, page, key in [*((page, page, "") for page in PAGES), *sections]:
        window.go_to(page, key)
        _turn(app)
        yield name
    pieces = window.pages.page(PIECES)
    assert isinstance(pieces, PiecesPage)
    window.go_to(PIECES)
    for part in PARTS:
        pieces.show_part(part)
        _turn(app)
        yield f"{PIECES}-{part}"
    pieces.show_part(STACK)


def _turn(app: QApplication) -> None:
    for _ in range(20):
        app.processEvents()


def _due(app: QApplication, window: DeskWindow) -> QPixmap:
    """The list of what is due, over how the studio reminds."""
    window.go_to(STUDIO, REMINDERS)
    window.due.open()
    _look(app, window)
    for _ in range(50):
        app.processEvents()
    picture = window.grab()
    window.due.panel.leave()
    return picture


def _bench(app: QApplication, window: DeskWindow) -> QPixmap:
    bench = window.others.bench
    bench.resize(*SIZE)
    bench.show_now()
    bench.show()
    for _ in range(5):
        app.processEvents()
    return bench.grab()


def _scale(
    app: QApplication, window: DeskWindow, clock: StillClock
) -> Iterator[tuple[str, QPixmap]]:
    """The sheet of a mix of several colours, then what the scale asks for, to the end."""
    scale, begun = window.others.scale, clock.when
    window.weigh("tide-tray", "colour")
    scale.showNormal()
    scale.resize(*SIZE)
    scale.sounds.off = True
    names = {1: "a", 3: "b", 4: "stir", 6: "colourant", 11: "pour"}
    yield "sheet", _grabbed(app, scale)
    scale.tap()
    while (stand := scale.work.stand) is not None and stand.step_number < LAST_STEP:
        if stand.step_number in names:
            yield names[stand.step_number], _grabbed(app, scale)
        clock.when += timedelta(seconds=50)
        scale.tap()
    scale.tap_other()
    yield "left", _grabbed(app, scale)
    clock.when = begun


def _grabbed(app: QApplication, widget: QWidget) -> QPixmap:
    for _ in range(5):
        app.processEvents()
    return widget.grab()


def _show(window: DeskWindow, name: str) -> None:
    if name == "plan":
        window.canvas.show_plan()
        return
    window.canvas.show_week()
    if name == "day":
        window.canvas.scale.zoom(3.2, window.canvas.now_x)


def _settle(app: QApplication, window: DeskWindow) -> None:
    timeline = window.timeline
    timeline.viewport().repaint()
    hands = window.parts.side.hands.rows
    while not (timeline.at_rest and timeline.settled and hands.rowCount()):
        app.processEvents()
    for _ in range(5):
        app.processEvents()


if __name__ == "__main__":
    if len(sys.argv) == 3 and "PICTURES_PERCENT" in os.environ:
        scale = int(os.environ["PICTURES_PERCENT"])
        one_scale(Path(sys.argv[1]), scale, Language(sys.argv[2]))
    else:
        raise SystemExit(main(sys.argv[1:]))
