"""The few type sizes of the desk, all from the system's own font."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QFont, QFontMetricsF

_SMALL = 0.86
_CLOCK = 1.45
_TITLE = 1.75
_SMALLEST_POINTS = 7.5


@dataclass(frozen=True, slots=True)
class Fonts:
    """Plain, bold, small (labels), clock (times that lead a line) and title."""

    plain: QFont
    bold: QFont
    small: QFont
    small_bold: QFont
    clock: QFont
    title: QFont

    @property
    def small_height(self) -> float:
        """The height of a line of labels in pixels."""
        return QFontMetricsF(self.small).height()

    @property
    def plain_height(self) -> float:
        """The height of a line of text in pixels."""
        return QFontMetricsF(self.plain).height()


def fonts_from(base: QFont) -> Fonts:
    """Derive all sizes from the system's font."""
    return Fonts(
        plain=QFont(base),
        bold=_sized(base, 1.0, bold=True),
        small=_sized(base, _SMALL),
        small_bold=_sized(base, _SMALL, bold=True),
        clock=_sized(base, _CLOCK, bold=True),
        title=_sized(base, _TITLE, bold=True),
    )


def _sized(base: QFont, factor: float, *, bold: bool = False) -> QFont:
    font = QFont(base)
    font.setBold(bold)
    if base.pointSizeF() > 0:
        font.setPointSizeF(max(base.pointSizeF() * factor, _SMALLEST_POINTS))
    else:
        font.setPixelSize(max(round(base.pixelSize() * factor), 10))
    return font
