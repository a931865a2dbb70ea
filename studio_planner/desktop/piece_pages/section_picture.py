"""What a section shows at one moment: the shape, the words, and which coat is where."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.piece_pages.joint_words import coat_words
from studio_planner.desktop.piece_pages.kind_words import material_word
from studio_planner.desktop.piece_pages.section_labels import (
    LabelBlock,
    blank_block,
    block_for,
    place,
)
from studio_planner.desktop.piece_pages.section_shape import section_shape
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Mapping

    from PySide6.QtCore import QPointF

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.piece_pages.section_shape import Stratum
    from studio_planner.services.editing.stack_faults import StackFault

_SHARE = 0.36
_NARROWEST, _WIDEST = 90.0, 300.0
_GAP = 48.0
_NARROWEST_WORDS = 126.0
_SCALE_ROOM = 26.0
_NEAR = 7.0


class SectionPicture:
    """A piece laid out in a width, with its words; asked by the painter and by the mouse."""

    def __init__(  # noqa: PLR0913, PLR0917 - a picture is made of all of them
        self,
        studio: Studio,
        piece: Piece,
        planned: Mapping[str, PlannedCoat],
        faults: tuple[StackFault, ...],
        fonts: Fonts,
        size: tuple[float, float],
    ) -> None:
        """Lay `piece` out; `size` is the width in pixels, and the pixels to a mm of film."""
        width, scale = size
        self.studio = studio
        self.piece = piece
        across = min(max(width * _SHARE, _NARROWEST), _WIDEST)
        self.shape = section_shape(piece, scale, across, studio.settings.edge_film_mm)
        self.said = {
            coat.key: coat_words(studio, piece, coat, planned.get(coat.key), faults)
            for coat in piece.stack
        }
        left = self.shape.right + _GAP
        words_wide = max(width - left - 8.0, _NARROWEST_WORDS)
        self.width = left + words_wide + 8.0
        self.least_width = left + _NARROWEST_WORDS + 8.0
        self.blocks = self._placed(fonts, left, words_wide)
        last = max(self.shape.bottom, *(block.rect.bottom() for block in self.blocks))
        self.bottom = last + _SCALE_ROOM
        self.height = self.bottom + 14.0

    def _placed(self, fonts: Fonts, left: float, width: float) -> list[LabelBlock]:
        shape = self.shape
        above = [s for s in shape.strata if s.outward.y() < 0]
        beside = [s for s in shape.strata if s.outward.y() >= 0]
        blocks, middles = [], []
        for stratum in above:
            blocks.append(
                block_for(fonts, stratum.coat.key, self.said[stratum.coat.key], width)
            )
            middles.append(stratum.middle.y())
        blocks.append(blank_block(fonts, self.blank_words, width))
        middles.append(shape.body.center().y() - 10.0)
        for stratum in beside:
            blocks.append(
                block_for(fonts, stratum.coat.key, self.said[stratum.coat.key], width)
            )
            middles.append(stratum.middle.y())
        place(blocks, middles, left, width)
        return blocks

    @property
    def blank_words(self) -> str:
        """The blank in words."""
        piece, units = self.piece, self.studio.units
        text = translate("pieces", "bare {material}, {thick} thick").format(
            material=material_word(piece.material), thick=words.length(piece.body_mm, units)
        )
        if piece.rim_mm > 0.0:
            rim = words.length(piece.rim_mm, units)
            text += translate("pieces", ", rim {rim} high").format(rim=rim)
        return text

    @property
    def spoken(self) -> str:
        """The whole section in words, from the top down."""
        names = [self.said[block.key].spoken for block in self.blocks if block.key]
        return "; ".join([*names, self.blank_words])

    def coat_at(self, point: QPointF) -> str:
        """The key of the coat at a point, in the section or by its words; empty: none."""
        for block in self.blocks:
            if block.key and block.rect.adjusted(-6, -3, 0, 3).contains(point):
                return block.key
        thin = [s for s in self.shape.strata if self._distance(s, point) <= _NEAR]
        inside = [s for s in self.shape.strata if s.path.contains(point)]
        if inside:
            return inside[0].coat.key
        nearest = min(thin, key=lambda s: self._distance(s, point), default=None)
        return "" if nearest is None else nearest.coat.key

    @staticmethod
    def _distance(stratum: Stratum, point: QPointF) -> float:
        box = stratum.path.boundingRect()
        right, low = box.right(), box.bottom()
        dx = max(box.left() - point.x(), 0.0, point.x() - right)
        dy = max(box.top() - point.y(), 0.0, point.y() - low)
        return float(max(dx, dy))

    def grips(self, point: QPointF, chosen: str) -> str:
        """The key of the coat whose free face is under a point; empty: none.

        The chosen coat's face comes first where faces lie close together.
        """
        near = [s for s in self.shape.strata if self._from_grip(s, point) <= _NEAR]
        near.sort(key=lambda s: (s.coat.key != chosen, self._from_grip(s, point)))
        return near[0].coat.key if near else ""

    @staticmethod
    def _from_grip(stratum: Stratum, point: QPointF) -> float:
        grip = stratum.grip
        if stratum.outward.y() != 0.0:
            inside = min(grip.x1(), grip.x2()) <= point.x() <= max(grip.x1(), grip.x2())
            away = abs(point.y() - grip.y1())
        else:
            inside = grip.y1() <= point.y() <= grip.y2()
            away = abs(point.x() - grip.x1())
        return away if inside else float("inf")

    def neighbour(self, key: str, by: int) -> str:
        """The coat drawn next above (-1) or below (+1) another; empty: none."""
        keys = [stratum.coat.key for stratum in self.shape.strata]
        if key not in keys:
            return keys[0] if keys else ""
        to = keys.index(key) + by
        return keys[to] if 0 <= to < len(keys) else ""

    def beside(self, key: str, by: int) -> str:
        """The neighbour on the same side of the blank; empty: none."""
        other = self.neighbour(key, by)
        mine, theirs = self.shape.stratum(key), self.shape.stratum(other)
        if mine is None or theirs is None or mine.outward != theirs.outward:
            return ""
        return other

    def dropped_on(self, key: str, point: QPointF) -> str:
        """The coat on the same side that a dragged one would change places with."""
        mine = self.shape.stratum(key)
        if mine is None:
            return ""
        same = [s for s in self.shape.strata if s.outward == mine.outward]
        nearest = min(same, key=lambda s: _away(self, s, point))
        return "" if nearest is mine else nearest.coat.key


def _away(picture: SectionPicture, stratum: Stratum, point: QPointF) -> float:
    block = next(b for b in picture.blocks if b.key == stratum.coat.key)
    by_words = block.rect.left() - 6.0 <= point.x()
    middle = block.rect.center() if by_words else stratum.middle
    return abs(middle.y() - point.y())
