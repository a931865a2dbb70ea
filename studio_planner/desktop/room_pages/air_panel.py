"""The expected air of one place: the curve, its verbs, its table, and what it does tonight."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.room_pages.air_curve import AirCurve
from studio_planner.desktop.room_pages.effects_view import EffectsView
from studio_planner.desktop.room_pages.point_table import PointTable
from studio_planner.desktop.room_pages.set_back_row import WeekVerbs
from studio_planner.desktop.room_pages.spell_list import SpellList
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.air_weeks import (
    DAY_MINUTES,
    minute_of,
    with_point,
    with_step,
    without_point,
)
from studio_planner.services.editing.places import changed_place

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.places import Place
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.editing.air_weeks import Pattern


class AirPanel(QWidget):
    """One drag, one verb or one typed cell is one change."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._view: DeskView | None = None
        self._place: Place | None = None
        self.title = Line(canvas, translate("room", "Expected air"), self, font="clock")
        self.how = Line(
            canvas,
            translate(
                "room",
                "Drag a point up, down or along; double click on the line to add one. Keys: "
                "left and right choose, up and down warm, Shift with left and right moves "
                "in time, Delete removes. Or type into the table.",
            ),
            self,
            font="small",
            colour="quiet",
        )
        self.curve = AirCurve(canvas, self)
        self.wrong = Line(canvas, "", self, colour="now")
        self.add = verb(translate("room", "Add a point"), self._add_after, self)
        self.step = verb(translate("room", "Add a step"), self._add_step, self)
        self.remove = verb(translate("room", "Remove the point"), self._remove, self)
        self.verbs = WeekVerbs(canvas, self)
        self.table = PointTable(canvas, self)
        self.spells = SpellList(desk, self)
        self.effects = EffectsView(canvas, self)
        self._lay_out()
        self._connect()
        self.wrong.say("")

    def _lay_out(self) -> None:
        points = Wrapping()
        points.add(self.add, self.step, self.remove)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        for part in (self.title, self.how, self.curve, self.wrong):
            layout.addWidget(part)
        layout.addLayout(points)
        for widget in (self.spells, self.effects, self.verbs, self.table):
            layout.addWidget(widget)

    def _connect(self) -> None:
        moved = translate("room", "expected air")
        self.curve.drawn.connect(lambda pattern: self._enter(moved, lambda _now: pattern))
        self.curve.drawing.connect(self._drawing)
        self.curve.left_as_it_was.connect(lambda: self._drawing(self.curve.pattern))
        self.curve.add_asked.connect(self._add_at)
        self.curve.remove_asked.connect(self._remove)
        self.table.entered.connect(lambda pattern: self._enter(moved, lambda _now: pattern))
        self.table.wrong.connect(self._say_wrong)
        self.table.remove_asked.connect(self._remove)
        self.table.currentCellChanged.connect(lambda row, *_: self.curve.choose(row))
        self.curve.chosen.connect(self._choose_row)
        self.verbs.asked.connect(self._enter)
        self.spells.tried.connect(self._trying)

    def show_place(self, view: DeskView, place: Place) -> None:
        """Show a place of a studio."""
        fresh = self._place is None or self._place.key != place.key
        same = not fresh and self._place is not None and self._place.pattern == place.pattern
        self._view, self._place = view, place
        units = view.studio.units
        self.curve.show_place(place, units)
        if not (same and self.wrong.text()):
            self.wrong.say("")
            self.table.show_pattern(place.pattern, units)
        self.verbs.show_pattern(place.pattern, units)
        self.spells.show_place(view, place)
        self.effects.show_place(view.studio, place, view.now)

    def _drawing(self, pattern: Pattern) -> None:
        if self._place is not None:
            self._trying(replace(self._place, pattern=pattern))

    def _trying(self, candidate: Place) -> None:
        if self._view is not None:
            self.effects.show_place(self._view.studio, candidate, self._view.now)

    def _choose_row(self, index: int) -> None:
        day = self.curve.pattern[index].day
        if day is not None:
            self.verbs.source.show_value(day)
        if self.table.currentRow() != index:
            self.table.setCurrentCell(index, max(self.table.currentColumn(), 0))

    def _enter(self, what: str, make: Callable[[Pattern], Pattern]) -> bool:
        place = self._place
        if place is None:
            return False
        change = changed_place(
            place.key,
            f"{place.name}, {what}",
            lambda now: replace(now, pattern=make(now.pattern)),
        )
        try:
            self._desk.changes.make(change)
        except StudioError as error:
            self._say_wrong(_sentences(error))
            self.curve.show_place(place, self._units)
            return False
        self._say_wrong("")
        return True

    @property
    def _units(self) -> Units:
        assert self._view is not None  # noqa: S101 - a place is of a view
        return self._view.studio.units

    def _say_wrong(self, sentence: str) -> None:
        self.wrong.say(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}" if sentence else "")

    def _add_at(self, day: int, minute: int) -> None:
        self._put(lambda now: with_point(now, None if day < 0 else day, minute))

    def _add_after(self) -> None:
        """Add a point in the middle between the chosen one and the next of its day."""
        self._put(lambda now: with_point(now, *_middle(now, self.curve.index)))

    def _add_step(self) -> None:
        self._put(lambda now: with_step(now, *_middle(now, self.curve.index)))

    def _put(self, make: Callable[[Pattern], tuple[Pattern, int]]) -> None:
        found: list[int] = []

        def pattern(now: Pattern) -> Pattern:
            new, index = make(now)
            found.append(index)
            return new

        if self._enter(translate("room", "a point more"), pattern):
            self.curve.choose(found[-1])
            self.curve.setFocus()

    def _remove(self) -> None:
        index = self.curve.index
        self._enter(translate("room", "a point less"), lambda now: without_point(now, index))


def _middle(pattern: Pattern, index: int) -> tuple[int | None, int]:
    """A day and a minute for a new point after another one, on whole five minutes."""
    day = pattern[index].day
    mine = minute_of(pattern[index].at)
    later = [minute_of(p.at) for p in pattern if p.day == day and minute_of(p.at) > mine]
    if not later and mine > DAY_MINUTES - 60:
        before = [minute_of(p.at) for p in pattern if p.day == day and minute_of(p.at) < mine]
        return day, (max(before, default=0) + mine) // 10 * 5
    return day, (mine + min(later, default=DAY_MINUTES)) // 10 * 5


def _sentences(error: StudioError) -> str:
    broken = getattr(error, "broken", ())
    return " ".join(rule.sentence for rule in broken) or str(error)
