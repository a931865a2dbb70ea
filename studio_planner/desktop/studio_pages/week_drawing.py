"""A week of hours, drawn as green rules on seven rows, to be painted by mouse and by keys."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.craft.settings import Units
from studio_planner.desktop import words
from studio_planner.desktop.studio_pages.week_keys import moved_by, new_block
from studio_planner.desktop.studio_pages.week_painting import WeekLook, draw_week
from studio_planner.desktop.studio_pages.week_shape import STEP, Part, WeekShape
from studio_planner.desktop.tongue import translate, whole_weekday
from studio_planner.services.editing.weeks import DAY_MINUTES, Block, joined, wall_time

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_LEFT, _RIGHT, _ROW = 104.0, 20.0, 34.0
_LEAST_PULL = 5.0
_KEYS = {Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space, Qt.Key.Key_Insert}
_REMOVE = {Qt.Key.Key_Delete, Qt.Key.Key_Backspace}
_BY = {
    Qt.Key.Key_Left: -STEP,
    Qt.Key.Key_Right: STEP,
}
_PARTS = {
    Qt.KeyboardModifier.ShiftModifier: Part.END,
    Qt.KeyboardModifier.AltModifier: Part.START,
    Qt.KeyboardModifier.ControlModifier: Part.WHOLE,
}


@dataclass(slots=True)
class _Held:
    """What a hand holds: the block as it was, where it was taken, and which part of it."""

    block: Block
    part: Part
    taken: QPointF
    rest: tuple[Block, ...]
    fresh: bool = False

    @property
    def before(self) -> tuple[Block, ...]:
        """The week as it was before."""
        return self.rest if self.fresh else tuple(sorted((*self.rest, self.block)))


class WeekDrawing(QWidget):
    """Blocks of one person's week.

    Drag over a free stretch to add a block, its ends to change it, its middle to move it.

    Signals:
        painted: the blocks of the week that the maker has made of it.
        chosen_changed: another block, or none, is the chosen one.
    """

    painted = Signal(object)
    chosen_changed = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start with an empty week."""
        super().__init__(parent)
        self._canvas = canvas
        self._units = Units()
        self._held: _Held | None = None
        self._asleep: tuple[tuple[int, int], ...] = ()
        self.blocks: tuple[Block, ...] = ()
        self.day = 0
        self.chosen: Block | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("week", "Working hours of the week"))
        canvas.redrawn.connect(self.update)

    # What is shown

    def show_week(
        self, blocks: Sequence[Block], units: Units, asleep: Sequence[tuple[int, int]] = ()
    ) -> None:
        """Show another week; `asleep` are minutes of every day in which nobody is awake."""
        if self._held is not None:
            return
        if units.week_starts != self._units.week_starts:
            self.day = units.week_starts
        self._units = units
        self._asleep = tuple(asleep)
        self.blocks = tuple(blocks)
        if self.chosen not in self.blocks:
            self._choose(None)
        self._describe()
        self.update()

    def _describe(self) -> None:
        said = "; ".join(self.block_words(block) for block in self.blocks)
        self.setAccessibleDescription(said or translate("week", "No hours yet."))

    def block_words(self, block: Block) -> str:
        """A block in words: Monday 18:00 to 22:00."""
        form = self._units.clock
        return translate("week", "{day} {start} to {end}").format(
            day=whole_weekday(block.day),
            start=words.time_of_day(wall_time(block.start), form),
            end=words.time_of_day(wall_time(block.end), form),
        )

    def _choose(self, block: Block | None) -> None:
        if block is not None:
            self.day = block.day
        if block != self.chosen:
            self.chosen = block
            self.chosen_changed.emit()
        self.update()

    @property
    def shape(self) -> WeekShape:
        """Where everything lies."""
        top = self._canvas.fonts.small_height + 8.0
        width = max(self.width() - _LEFT - _RIGHT, 60.0)
        return WeekShape(_LEFT, top, width, _ROW, self._units.week_starts)

    @override
    def sizeHint(self) -> QSize:
        high = self._canvas.fonts.small_height + 8.0 + 7 * _ROW + 4.0
        return QSize(560, round(high))

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(380, self.sizeHint().height())

    # By mouse

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        at, shape = event.position(), self.shape
        self.day = shape.day_at(at.y())
        found = shape.grip(self.blocks, at)
        if found is None:
            start = min(shape.minute_at(at.x()), DAY_MINUTES - STEP)
            block = Block(self.day, start, start + STEP)
            self._held = _Held(block, Part.END, at, self.blocks, fresh=True)
            self._choose(None)
            return
        block = self.blocks[found[0]]
        rest = tuple(one for one in self.blocks if one is not block)
        self._held = _Held(block, found[1], at, rest)
        self._choose(block)

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        held, shape = self._held, self.shape
        if held is None:
            found = shape.grip(self.blocks, event.position())
            ends = found is not None and found[1] is not Part.WHOLE
            self.setCursor(Qt.CursorShape.SizeHorCursor if ends else Qt.CursorShape.ArrowCursor)
            return
        if held.fresh and abs(event.position().x() - held.taken.x()) < _LEAST_PULL:
            self.blocks = held.rest  # a click is no hours
            self.update()
            return
        block = _pulled(held, event.position(), shape)
        self.blocks = tuple(sorted((*held.rest, block)))
        self._choose(block)

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        held, self._held = self._held, None
        if held is None:
            return
        was = held.before
        if self.blocks != was:
            self._finish(self.blocks, was)
        self.update()

    def _let_go(self) -> None:
        """Leave the week as it was before the hand took hold of it."""
        held, self._held = self._held, None
        if held is not None:
            self.blocks = held.before
            self._choose(None)

    def _finish(self, blocks: Sequence[Block], was: Sequence[Block]) -> None:
        """Offer another week; it is shown when it has been taken."""
        wanted, chosen = joined(blocks), self.chosen
        self.blocks = tuple(was)
        if chosen is not None:
            held = [
                b for b in wanted if b.day == chosen.day and b.start <= chosen.start < b.end
            ]
            self.chosen = held[0] if held else None
        self.painted.emit(wanted)
        self._describe()
        self.chosen_changed.emit()
        self.update()

    # By keys

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in {Qt.Key.Key_Up, Qt.Key.Key_Down}:
            self._go_by_days(-1 if key is Qt.Key.Key_Up else 1)
        elif key in _BY:
            self._left_or_right(event, _BY[key])
        elif key in _KEYS:
            self.add_block()
        elif key in _REMOVE:
            self.remove_chosen()
        elif key is Qt.Key.Key_Escape and self._held is not None:
            self._let_go()
        else:
            super().keyPressEvent(event)

    def _go_by_days(self, by: int) -> None:
        row = min(max(self.shape.row_of(self.day) + by, 0), 6)
        self.day = self.shape.day_of(row)
        self._choose(next((b for b in self.blocks if b.day == self.day), None))

    def _left_or_right(self, event: QKeyEvent, by: int) -> None:
        part = next((p for keys, p in _PARTS.items() if event.modifiers() & keys), None)
        if part is None:
            self._go_along(1 if by > 0 else -1)
        elif self.chosen is not None:
            moved = moved_by(self.chosen, part, by)
            rest = [block for block in self.blocks if block != self.chosen]
            was, self.chosen = self.blocks, moved
            self._finish([*rest, moved], was)

    def _go_along(self, by: int) -> None:
        today = [block for block in self.blocks if block.day == self.day]
        if not today:
            return
        index = today.index(self.chosen) + by if self.chosen in today else 0
        self._choose(today[min(max(index, 0), len(today) - 1)])

    def add_block(self) -> None:
        """Add a block on the day that is chosen, beside those that are there."""
        block = new_block(self.blocks, self.day)
        if block is not None:
            was, self.chosen = self.blocks, block
            self._finish([*was, block], was)

    def remove_chosen(self) -> None:
        """Remove the chosen block."""
        chosen = self.chosen
        if chosen is not None:
            self.chosen = None
            rest = [block for block in self.blocks if block != chosen]
            self._finish(rest, self.blocks)

    @override
    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        look = WeekLook(
            shape=self.shape,
            form=self._units.clock,
            asleep=self._asleep,
            chosen=self.chosen,
            day=self.day if self.hasFocus() else None,
        )
        with QPainter(self) as painter:
            draw_week(painter, self._canvas, look, self.blocks)


def _pulled(held: _Held, at: QPointF, shape: WeekShape) -> Block:
    """The block that is held, as it is when the hand is at a point."""
    block = held.block
    if held.part is Part.END:
        if held.fresh and shape.day_at(at.y()) == block.day:
            minute = shape.minute_at(at.x())
            if minute < block.start:
                return Block(block.day, minute, block.end)
        return Block(block.day, block.start, shape.end_at(block, at))
    if held.part is Part.START:
        start = min(shape.minute_at(at.x()), block.end - STEP, DAY_MINUTES - STEP)
        return Block(block.day, max(start, block.end - DAY_MINUTES), block.end)
    steps = round((at.x() - held.taken.x()) / shape.width * DAY_MINUTES / STEP)
    start = min(max(block.start + steps * STEP, 0), DAY_MINUTES - STEP)
    length = block.end - block.start
    return Block(shape.day_at(at.y()), start, start + length)
