"""What is done in the played session on the desk; for the benchmark that measures its waits."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from studio_planner.desktop.page_keys import (
    ORDERS,
    PIECES,
    PLAN,
    PRODUCTS,
    QUESTIONS,
    STUDIO,
)
from studio_planner.desktop.pages.studio_page import BACKUPS, HANDS, ROOM, RULES, UNITS
from studio_planner.desktop.theme import Look
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import copy_of, with_thing
from studio_planner.services.questions.every import QUESTIONS as EVERY_QUESTION
from tests.desktop.hands_on import LEFT, choose, free_pour, grip, move
from tests.desktop.piece_hands import grip_of

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path
    from typing import Any

    from PySide6.QtWidgets import QLineEdit

    from studio_planner.desktop.window import DeskWindow
    from tests.benchmarks.desk_heart import Does

_LOOKING = 12
"""For how many turns a maker looks at what was chosen before choosing the next."""

LOG_ROWS = 35_000


@dataclass(frozen=True, slots=True)
class Step:
    """What is done, and the seconds it is given at least."""

    words: str
    does: Does
    seconds: float


def _looking() -> Iterator[None]:
    for _ in range(_LOOKING):
        yield


class Hands:
    """A maker's hands on the desk: each method is one step."""

    def __init__(self, window: DeskWindow, folder: Path) -> None:
        """Work on `window`; files go into `folder`."""
        self._window = window
        self._log = _log_in(folder)
        self._spare = iter(range(30, 60))

    def _page(self, key: str) -> Any:  # noqa: ANN401 - each page has its own parts
        return self._window.pages.page(key)

    @property
    def _studio(self) -> Any:  # noqa: ANN401 - never None here
        assert self._window.session is not None
        return self._window.session.studio

    def change(self) -> None:
        """Change a rule of thumb."""
        hours = float(next(self._spare))
        self._window.changes.attempt(
            Change(
                "Spare",
                lambda studio: replace(
                    studio, settings=replace(studio.settings, spare_hours=hours)
                ),
            )
        )

    def add(self) -> None:
        """Copy a piece."""
        self._window.changes.attempt(
            Change("Copy", lambda studio: with_thing(studio, copy_of(studio, studio.pieces[0])))
        )

    def choose_products(self) -> Iterator[None]:
        """Look at one product after the other."""
        self._window.go_to(PRODUCTS)
        for product in self._studio.products:
            self._page(PRODUCTS).choose(product.key)
            yield from _looking()

    def type_a_figure(self) -> Iterator[None]:
        """Type another time into the sheet of a product."""
        page = self._page(PRODUCTS)
        page.choose(self._studio.products[0].key)
        yield from _looking()
        edits = page.panel.sheet.grid.edits.values()
        edit = next(one for one in edits if one.isVisible() and one.text().strip("0123456789"))
        yield from _typed(edit, "50 min")
        yield from _looking()

    def choose_pieces(self) -> Iterator[None]:
        """Look at one piece after the other."""
        self._window.go_to(PIECES)
        for piece in self._studio.pieces:
            self._page(PIECES).choose(piece.key)
            yield from _looking()

    def show_parts(self) -> Iterator[None]:
        """Look at everything of a piece."""
        page = self._page(PIECES)
        for key in ("blank", "photos", "patterns", "stack"):
            page.show_part(key)
            yield from _looking()

    def drag_a_film(self) -> Iterator[None]:
        """Make a coat thicker with the mouse."""
        page, piece = self._page(PIECES), self._studio.pieces[0]
        coat = piece.stack[-1].key
        page.choose(f"{piece.key}/{coat}")
        yield from _looking()
        section = page.stack.section
        at = grip_of(section, coat)
        QTest.mousePress(section, LEFT, pos=at)
        for step in range(1, 12):
            QTest.mouseMove(section, at - QPoint(0, round(step * section.scale * 0.1)))
            yield
        QTest.mouseRelease(section, LEFT, pos=at - QPoint(0, round(section.scale)))
        yield from _looking()

    def drag_a_pour(self) -> Iterator[None]:
        """Move a pour along the timeline and drop it where it may stand."""
        window = self._window
        window.go_to(PLAN)
        yield from _looking()
        bar, minutes = free_pour(window)
        choose(window, bar)
        window.canvas.scale.show(bar.begins - 6 * 3600.0, 60.0)
        yield from _looking()
        viewport, start = window.timeline.viewport(), grip(window, bar)
        end = start + QPoint(round(minutes * 60.0 / window.canvas.scale.seconds_per_pixel), 0)
        QTest.mousePress(viewport, LEFT, pos=start)
        for step in range(1, 40):
            move(window, start + QPoint(4 * step, step % 2))
            yield
        for step in (1, 2, 3):
            move(window, end + QPoint(0, step % 2))
            yield
        QTest.mouseRelease(viewport, LEFT, pos=end)
        yield from _looking()

    def open_sections(self) -> Iterator[None]:
        """Look at every section of the studio."""
        self._window.go_to(STUDIO)
        for key in (HANDS, ROOM, UNITS, RULES, BACKUPS):
            self._page(STUDIO).choose(key)
            yield from _looking()

    def ask(self) -> Iterator[None]:
        """Ask every question that is answered at once."""
        self._window.go_to(QUESTIONS)
        for question in EVERY_QUESTION:
            self._page(QUESTIONS).choose(question.key)
            yield from _looking()

    def import_log(self) -> Iterator[None]:
        """Look at a long log of a logger's, and take it."""
        self._window.go_to(STUDIO, ROOM)
        readings = self._page(STUDIO).section(ROOM).readings
        yield from _looking()
        readings.open_log(self._log)
        while readings.work.busy:
            yield
        yield from _looking()
        QTest.mouseClick(readings.preview.take, LEFT)
        yield from _looking()

    def go_through_pages(self) -> Iterator[None]:
        """Go from page to page."""
        for key in (ORDERS, PIECES, PRODUCTS, STUDIO, QUESTIONS, PLAN):
            self._window.go_to(key)
            yield from _looking()


def _typed(edit: QLineEdit, text: str) -> Iterator[None]:
    edit.setFocus()
    edit.selectAll()
    for letter in text:
        QTest.keyClicks(edit, letter)
        yield
    QTest.keyClick(edit, Qt.Key.Key_Return)


def _log_in(folder: Path) -> Path:
    path = folder / "long.csv"
    start = datetime(2026, 10, 1, tzinfo=UTC)
    with path.open("w", encoding="utf-8") as file:
        file.write("Date/Time;Temperature (°C);Humidity (%)\n")
        for row in range(LOG_ROWS):
            when = start + timedelta(minutes=2 * row)
            warmth = f"{18 + row % 700 / 100:.2f}".replace(".", ",")
            file.write(f"{when:%d.%m.%Y %H:%M};{warmth};{45 + row % 90 / 10:.1f}\n")
    return path


def session(window: DeskWindow, folder: Path) -> list[Step]:
    """The session, in order."""
    hands, canvas = Hands(window, folder), window.canvas
    pages = [
        Step(f"open page {key}", partial(window.go_to, key), 1.0)
        for key in (ORDERS, PIECES, PRODUCTS, STUDIO, QUESTIONS)
    ]
    return [
        *pages,
        Step("from page to page again", hands.go_through_pages, 1.0),
        Step("plan again, better plans coming in", window.plan_again, 6.0),
        Step("change while planning", hands.change, 4.0),
        Step("add a piece while planning", hands.add, 4.0),
        Step("scroll while planning", lambda: canvas.scale.pan(120), 1.0),
        Step("zoom while planning", lambda: canvas.scale.zoom(1.3, 400.0), 1.0),
        Step("undo while planning", window.changes.undo, 3.0),
        Step("redo", window.changes.redo, 3.0),
        Step("stop planning", window.stop_planning, 5.0),
        Step("drag a pour along the timeline", hands.drag_a_pour, 4.0),
        Step("stop planning again", window.stop_planning, 3.0),
        Step("choose each product", hands.choose_products, 1.0),
        Step("type a figure into a product", hands.type_a_figure, 4.0),
        Step("stop planning once more", window.stop_planning, 3.0),
        Step("choose each piece", hands.choose_pieces, 1.0),
        Step("show each part of a piece", hands.show_parts, 1.0),
        Step("drag a film's thickness", hands.drag_a_film, 3.0),
        Step("open each section of the studio", hands.open_sections, 1.0),
        Step("ask each quick question", hands.ask, 1.0),
        Step(f"import a log of {LOG_ROWS:,} rows", hands.import_log, 4.0),
        Step("back up", window.backups.make_now, 2.0),
        Step("the whole plan", canvas.show_plan, 2.0),
        Step("dark", lambda: window.set_look(Look.DARK), 2.0),
        Step("bench", window.others.show_bench, 2.0),
    ]
