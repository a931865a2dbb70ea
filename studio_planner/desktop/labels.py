"""Labels that never meet: measured once, placed side by side in a row, drawn together."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QStaticText, QTextOption

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QColor, QPainter

_GAP = 6.0
_MOST_KEPT = 4000


class TextStore:
    """Prepared texts in fonts that live as long as the store, so that a frame lays out none."""

    def __init__(self) -> None:
        """Start empty."""
        self._texts: dict[tuple[str, int], QStaticText] = {}
        self._widths: dict[tuple[str, int], float] = {}
        self._metrics: dict[int, QFontMetricsF] = {}

    def width(self, text: str, font: QFont) -> float:
        """How wide a text is in pixels."""
        key = (text, id(font))
        if key not in self._widths:
            self._widths[key] = self._metric(font).horizontalAdvance(text)
        return self._widths[key]

    def elided(self, text: str, font: QFont, width: float) -> str:
        """The text, cut with an ellipsis where it is wider than `width`."""
        if self.width(text, font) <= width:
            return text
        return self._metric(font).elidedText(text, Qt.TextElideMode.ElideRight, width)

    def prepared(self, text: str, font: QFont) -> QStaticText:
        """The text, laid out."""
        key = (text, id(font))
        if key not in self._texts:
            if len(self._texts) > _MOST_KEPT:
                self._texts.clear()
            static = QStaticText(text)
            static.setTextFormat(Qt.TextFormat.PlainText)
            option = QTextOption()
            option.setWrapMode(QTextOption.WrapMode.NoWrap)
            static.setTextOption(option)
            static.prepare(font=font)
            self._texts[key] = static
        return self._texts[key]

    def _metric(self, font: QFont) -> QFontMetricsF:
        key = id(font)
        if key not in self._metrics:
            self._metrics[key] = QFontMetricsF(font)
        return self._metrics[key]


@dataclass(slots=True)
class PlacedLabel:
    """One label of a row: where it begins, what it says, and how.

    `stays_until` is set for a label that is held in view while something goes on, to where
    that ends.
    """

    left: float
    top: float
    width: float
    text: str
    prepared: QStaticText
    font: QFont
    colour: QColor
    stays_until: float = 0.0


@dataclass(slots=True)
class LabelRow:
    """One row of labels, placed from left to right; none meets the one before it."""

    store: TextStore
    top: float
    height: float
    labels: list[PlacedLabel] = field(default_factory=list)

    def place(self, left: float, text: str, font: QFont, colour: QColor) -> bool:
        """Put a label with its left edge at `left`; False when it would meet another."""
        last = self.labels[-1] if self.labels else None
        if not text or (last is not None and left < last.left + last.width + _GAP):
            return False
        width = self.store.width(text, font)
        prepared = self.store.prepared(text, font)
        self.labels.append(PlacedLabel(left, self.top, width, text, prepared, font, colour))
        return True

    def place_before(self, right: float, text: str, font: QFont, colour: QColor) -> bool:
        """Put a label with its right edge at `right`; False when it would meet another."""
        return self.place(right - self.store.width(text, font), text, font, colour)


def draw_labels(painter: QPainter, seen: Sequence[tuple[float, float, PlacedLabel]]) -> None:
    """Draw labels, each at its left and top, font by font and colour by colour."""
    groups: dict[tuple[int, int], list[tuple[float, float, PlacedLabel]]] = {}
    for left, top, label in seen:
        groups.setdefault((id(label.font), id(label.colour)), []).append((left, top, label))
    for members in groups.values():
        painter.setFont(members[0][2].font)
        painter.setPen(members[0][2].colour)
        for left, top, label in members:
            painter.drawStaticText(QPointF(round(left), round(top)), label.prepared)
