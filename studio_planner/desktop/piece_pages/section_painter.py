"""Paints a section through a piece: blank, strata, joints, rim, words, and a scale."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF

from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.desktop import words
from studio_planner.desktop.piece_pages.section_fill import LETTERS, fill_stratum
from studio_planner.desktop.piece_pages.section_labels import BADGE, Role, font_of
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.piece_pages.section_labels import LabelBlock
    from studio_planner.desktop.piece_pages.section_picture import SectionPicture
    from studio_planner.desktop.piece_pages.section_shape import SectionShape, Stratum

_BAR_PIXELS = 40.0
_STEPS = tuple(one * 10.0**power for power in range(-3, 3) for one in (1.0, 2.0, 5.0))
_LETTER_FROM = 15.0
_THIN = 6.0
"""A frame on so thin a stratum would hide it; it stands around it."""

_COLOURS = {
    Role.HEAD: "ink",
    Role.POUR: "quiet",
    Role.JOINT: "window",
    Role.FAULT: "now",
}


class SectionPainter:
    """Paints one picture; made anew for every paint."""

    def __init__(self, painter: QPainter, canvas: Canvas, picture: SectionPicture) -> None:
        """Paint `picture` with `painter`."""
        self._painter = painter
        self._canvas = canvas
        self._theme = canvas.theme
        self._picture = picture

    def paint(self, chosen: str) -> None:
        """Paint everything; the chosen coat gets a frame of ink."""
        shape, picture = self._picture.shape, self._picture
        self._painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_body(shape.body)
        for stratum in shape.strata:
            said = picture.said[stratum.coat.key]
            fill_stratum(self._painter, stratum, self._theme, coming=not said.poured)
        self._draw_rims(shape)
        for stratum in shape.strata:
            self._draw_joint(stratum, picture.said[stratum.coat.key].joint)
            self._draw_letter(stratum)
        self._draw_areas(shape)
        for block in picture.blocks:
            self._draw_block(block, chosen=bool(chosen) and block.key == chosen)
        marked = shape.stratum(chosen)
        if marked is not None:
            self._draw_chosen(marked)
        self._draw_scale(picture.bottom, picture.studio.units)

    def _draw_body(self, body: QRectF) -> None:
        painter, theme = self._painter, self._theme
        painter.setPen(QPen(theme.colour("film_edge"), 1.2))
        painter.setBrush(theme.colour("wood"))
        painter.drawRect(body)
        self._draw_break(body)

    def _draw_break(self, body: QRectF) -> None:
        """Two ragged lines: what stands between them is left out."""
        steps = range(int(body.width() // 8) + 1)
        for offset in (-3.0, 3.0):
            y = body.center().y() + offset
            wave = [QPointF(body.left() + 8.0 * i, y + (2.0 if i % 2 else -2.0)) for i in steps]
            self._painter.setPen(QPen(self._theme.colour("paper"), 2.0))
            self._painter.drawPolyline(QPolygonF(wave))

    def _draw_rims(self, shape: SectionShape) -> None:
        painter, theme = self._painter, self._theme
        for rim in shape.rims:
            painter.setPen(QPen(theme.colour("film_edge"), 1.2))
            painter.setBrush(theme.colour("wood"))
            painter.drawRect(rim)
            if shape.rim_cut:
                painter.setPen(QPen(theme.colour("paper"), 2.0))
                top = rim.top() + 7.0
                ragged = [QPointF(rim.left() - 1.0, top), QPointF(rim.center().x(), top + 3.0)]
                painter.drawPolyline(QPolygonF([*ragged, QPointF(rim.right() + 1.0, top)]))

    def _draw_joint(self, stratum: Stratum, joint: Joint) -> None:
        """The line of a joint: posts for a window, ragged when scuffed, broken on dry."""
        painter = self._painter
        pen = QPen(self._theme.colour("ink" if joint is Joint.BARE else "window"), 1.6)
        if joint is Joint.ON_DRY:
            pen.setDashPattern([3.0, 3.0])
        painter.setPen(pen)
        for seat in stratum.seats:
            if joint is Joint.SCUFFED:
                painter.drawPolyline(_ragged(seat))
            elif joint is Joint.WET_IN_WET:
                for offset in (-1.5, 1.5):
                    painter.drawLine(seat.translated(stratum.outward * offset))
            else:
                painter.drawLine(seat)
        if joint is Joint.IN_WINDOW:
            for end in (stratum.seats[0].p1(), stratum.seat.p2()):
                post = stratum.outward * 4.0
                painter.drawLine(QLineF(end - post, end + post))

    def _draw_letter(self, stratum: Stratum) -> None:
        high = abs(stratum.grip.y1() - stratum.seat.y1())
        if high < _LETTER_FROM:
            return
        painter, theme = self._painter, self._theme
        painter.setFont(self._canvas.fonts.small_bold)
        middle = QPointF(stratum.grip.p1().x() + 15.0, stratum.middle.y())
        box = QRectF(middle.x() - 8.0, middle.y() - 7.0, 16.0, 14.0)
        painter.fillRect(box, theme.colour("paper"))
        painter.setPen(theme.colour("ink"))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, LETTERS[stratum.coat.kind])

    def _draw_areas(self, shape: SectionShape) -> None:
        painter, fonts = self._painter, self._canvas.fonts
        painter.setFont(fonts.small)
        painter.setPen(self._theme.colour("ink"))
        metrics = QFontMetricsF(fonts.small)
        for name, x in shape.areas:
            text = metrics.elidedText(name, Qt.TextElideMode.ElideRight, 90.0)
            box = QRectF(x - 60.0, shape.body.bottom() - 18.0, 120.0, 16.0)
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)

    def _draw_block(self, block: LabelBlock, *, chosen: bool) -> None:
        painter, theme = self._painter, self._theme
        if chosen:
            painter.fillRect(block.rect.adjusted(-6, -3, 0, 3), theme.colour("panel"))
        self._draw_leaders(block)
        for line in block.lines:
            box = QRectF(
                block.rect.left() + BADGE,
                block.rect.top() + line.offset,
                block.rect.width() - BADGE,
                line.height,
            )
            painter.setFont(font_of(self._canvas.fonts, line.role))
            painter.setPen(theme.colour(_COLOURS[line.role]))
            painter.drawText(box, int(Qt.TextFlag.TextWordWrap), line.text)
        self._draw_badge(block)

    def _draw_badge(self, block: LabelBlock) -> None:
        stratum = self._picture.shape.stratum(block.key)
        if stratum is None:
            return
        painter, theme = self._painter, self._theme
        box = QRectF(block.rect.left(), block.rect.top() + 1.0, 14.0, 15.0)
        painter.setPen(QPen(theme.colour("film_edge"), 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(box)
        painter.setFont(self._canvas.fonts.small_bold)
        painter.setPen(theme.colour("ink"))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, LETTERS[stratum.coat.kind])

    def _draw_leaders(self, block: LabelBlock) -> None:
        painter, shape = self._painter, self._picture.shape
        stratum = shape.stratum(block.key)
        left, first = block.rect.left() - 4.0, block.rect.top() + 8.0
        painter.setPen(QPen(self._theme.colour("quiet"), 1.0))
        if stratum is None:
            end = QPointF(shape.body.right() + 2.0, shape.body.center().y())
            painter.drawLine(QLineF(end, QPointF(left, first)))
            return
        right = max(stratum.grip.x2(), stratum.seat.x2()) + 3.0
        painter.drawLine(QLineF(QPointF(right, stratum.middle.y()), QPointF(left, first)))

    def _draw_chosen(self, stratum: Stratum) -> None:
        painter, theme = self._painter, self._theme
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(theme.colour("ink"), 2.0))
        bounds = stratum.path.boundingRect()
        if min(bounds.height(), bounds.width()) < _THIN:
            painter.drawRect(bounds.adjusted(-4.0, -4.0, 4.0, 4.0))
        else:
            painter.drawPath(stratum.path)
        poured = self._picture.said[stratum.coat.key].poured
        if stratum.coat.kind is not CoatKind.LEAF and not poured:
            self._draw_grip(stratum)

    def _draw_grip(self, stratum: Stratum) -> None:
        """Two arrow heads on the free face: here the film is drawn thicker or thinner."""
        painter, out = self._painter, stratum.outward
        along = QPointF(-out.y(), out.x())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.colour("ink"))
        middle = stratum.grip.center()
        for way in (1.0, -1.0):
            base = middle + out * (2.5 * way)
            tip = middle + out * (8.5 * way)
            painter.drawPolygon(QPolygonF([base + along * 5.0, tip, base - along * 5.0]))

    def _draw_scale(self, y: float, units: Units) -> None:
        scale, unit = self._picture.shape.scale, scale_of(Quantity.FILM, units)
        steps = [unit.inside(step) for step in _STEPS]
        mm = next((mm for mm in steps if mm * scale >= _BAR_PIXELS), steps[-1])
        left = self._picture.shape.body.left()
        painter, font = self._painter, self._canvas.fonts.small
        painter.setPen(QPen(self._theme.colour("quiet"), 1.2))
        for x in (left, left + mm * scale):
            painter.drawLine(QLineF(x, y - 4.0, x, y + 4.0))
        painter.drawLine(QLineF(left, y, left + mm * scale, y))
        painter.setFont(font)
        text = translate("pieces", "{film} of film; the blank is cut short").format(
            film=words.film(mm, units)
        )
        at = QPointF(left + mm * scale + 8.0, y + QFontMetricsF(font).capHeight() / 2.0)
        painter.drawText(at, text)


def _ragged(line: QLineF) -> QPolygonF:
    count = max(int(line.length() // 6), 1)
    points = []
    for i in range(count + 1):
        at = line.pointAt(i / count)
        points.append(QPointF(at.x(), at.y() + (2.0 if i % 2 else -2.0)))
    return QPolygonF(points)
