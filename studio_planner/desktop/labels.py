"""Labels that never meet: measured once, placed side by side in a row, drawn together."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QStaticText, QTextOption

if TYPE_CHECKING:
    from PySide6.QtGui import QColor, QPainter

_GAP = 6.0
_MOST_KEPT = 4000


class TextStore:
    """Prepared texts, so that a frame lays out none."""

    def __init__(self) -> None:
        """Start empty."""
        self._texts: dict[tuple[str, str], QStaticText] = {}
        self._widths: dict[tuple[str, str], float] = {}
        self._metrics: dict[str, QFontMetricsF] = {}

    def width(self, text: str, font: QFont) -> float:
        """How wide a text is in pixels."""
        key = (text, font.key())
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
        key = (text, font.key())
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
        key = font.key()
        if key not in self._metrics:
            self._metrics[key] = QFontMetricsF(font)
        return self._metrics[key]


@dataclass(slots=True)
class PlacedLabel:
    """One label: where, what, in which font and colour."""

    rect: QRectF
    text: str
    font: QFont
    colour: QColor


@dataclass(slots=True)
class LabelRow:
    """One row of labels; what was placed first keeps its place."""

    store: TextStore
    top: float
    height: float
    labels: list[PlacedLabel] = field(default_factory=list)

    def free(self, left: float, right: float) -> bool:
        """Tell whether nothing lies between two places yet."""
        return all(
            right + _GAP <= label.rect.left() or label.rect.right() + _GAP <= left
            for label in self.labels
        )

    def place(self, left: float, text: str, font: QFont, colour: QColor) -> bool:
        """Put a label with its left edge at `left`; False when it would meet another."""
        width = self.store.width(text, font)
        if not text or not self.free(left, left + width):
            return False
        rect = QRectF(left, self.top, width, self.height)
        self.labels.append(PlacedLabel(rect, text, font, colour))
        return True

    def place_before(self, right: float, text: str, font: QFont, colour: QColor) -> bool:
        """Put a label with its right edge at `right`; False when it would meet another."""
        return self.place(right - self.store.width(text, font), text, font, colour)


def draw_labels(painter: QPainter, store: TextStore, labels: list[PlacedLabel]) -> None:
    """Draw placed labels, font by font and colour by colour."""
    labels.sort(key=lambda label: (label.font.key(), label.colour.rgb()))
    font = colour = None
    for label in labels:
        if label.font is not font:
            font = label.font
            painter.setFont(font)
        if label.colour is not colour:
            colour = label.colour
            painter.setPen(colour)
        corner = QPointF(round(label.rect.left()), round(label.rect.top()))
        painter.drawStaticText(corner, store.prepared(label.text, label.font))
