"""A whole page: whose it is at the top, what it holds, caution and page number at the foot."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QSizeF

from studio_planner.craft.tongue import translate
from studio_planner.desktop.paper.ink import FINE, Ink
from studio_planner.desktop.paper.paging import Page, draw_block, pages_of
from studio_planner.desktop.paper.paper_type import (
    DOTS_PER_MM,
    Face,
    line_height,
    require_letters,
    wrapped,
)
from studio_planner.services.paper.pages import PaperSize

if TYPE_CHECKING:
    from PySide6.QtGui import QPainter

    from studio_planner.services.paper.pages import Sheet

_SIZES = {PaperSize.A5: (148.0, 210.0), PaperSize.A4: (210.0, 297.0)}
"""Width and height [mm] by ISO 216."""

_SIDE, _TOP, _BOTTOM = 10.0, 9.0, 8.0
"""What stays white at the edges [mm]; printers leave about 5."""

_UNDER_HEAD = 3.0

_SMALLER = (1.0, 0.94, 0.88)
"""By how much a sheet that should have one page is drawn smaller until it has."""


@dataclass(frozen=True)
class PaperPages:
    """A sheet laid out on its pages."""

    sheet: Sheet

    @property
    def size_mm(self) -> tuple[float, float]:
        """Width and height of its paper [mm]."""
        return _SIZES[self.sheet.paper]

    @property
    def dots(self) -> QSizeF:
        """The same in the dots that a page is drawn in."""
        return QSizeF(*self.size_mm) * DOTS_PER_MM

    @property
    def pages(self) -> tuple[Page, ...]:
        """Its pages; StudioError where there is no font to write with."""
        return self._laid_out[1]

    @cached_property
    def _laid_out(self) -> tuple[float, tuple[Page, ...]]:
        """The scale of what the pages hold, and the pages."""
        require_letters()
        room = self.size_mm[1] - self._body_top - self._foot_height - _BOTTOM
        scales = _SMALLER if self.sheet.one_page else (1.0,)
        tried = (
            (scale, pages_of(self.sheet.parts, self._width / scale, room / scale))
            for scale in scales
        )
        full = next(tried)
        return full if len(full[1]) == 1 else next((t for t in tried if len(t[1]) == 1), full)

    def draw(self, painter: QPainter, number: int) -> None:
        """Draw a page, counted from 0, with a painter whose units are dots of the page."""
        ink = Ink(painter)
        scale, pages = self._laid_out
        self._draw_head(ink)
        painter.save()
        painter.scale(scale, scale)
        for placed in pages[number].blocks:
            y = self._body_top / scale + placed.y
            draw_block(ink, placed.block, _SIDE / scale, y, self._width / scale)
        painter.restore()
        self._draw_foot(ink, number)

    @property
    def _width(self) -> float:
        return self.size_mm[0] - 2 * _SIDE

    @property
    def _body_top(self) -> float:
        heads = 1 + len(wrapped(self._head_words, Face.LABEL, self._width))
        return _TOP + line_height(Face.LABEL) * (heads - 1) + _UNDER_HEAD + 1.0

    @property
    def _head_words(self) -> str:
        return f"{self.sheet.studio} · {self.sheet.title} · {self.sheet.made}"

    def _draw_head(self, ink: Ink) -> None:
        y = ink.paragraph(_SIDE, _TOP, self._head_words, Face.LABEL, self._width) + 0.8
        ink.rule((_SIDE, y), (_SIDE + self._width, y), FINE)

    @cached_property
    def _caution_lines(self) -> tuple[str, ...]:
        return wrapped(self.sheet.caution, Face.SMALL, self._width)

    @property
    def _foot_height(self) -> float:
        return (len(self._caution_lines) + 1) * line_height(Face.SMALL) + 2.0

    def _draw_foot(self, ink: Ink, number: int) -> None:
        y = self.size_mm[1] - _BOTTOM - self._foot_height + 1.0
        ink.rule((_SIDE, y), (_SIDE + self._width, y), FINE)
        y = ink.lines(_SIDE, y + 0.8, self._caution_lines, Face.SMALL)
        counted = translate("paper", "page {number} of {count}").format(
            number=number + 1, count=len(self.pages)
        )
        running = self.pages[number].running
        ink.text(_SIDE, y, running, Face.SMALL)
        ink.text(_SIDE, y, counted, Face.SMALL, right_of=_SIDE + self._width)
