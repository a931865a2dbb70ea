"""Pieces and sets: the blank and its stack; `coats.py` has what a stack is made of."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from enum import StrEnum
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.coats import (
    EDGE,
    TOP,
    UNDERSIDE,
    Coat,
    CoatKind,
    Colour,
    Joint,
    StackPattern,
    check_stack,
    coat_below,
    overlap,
)
from studio_planner.craft.errors import Rulebook
from studio_planner.craft.kind_words import kind_said, kind_word
from studio_planner.craft.saying import joined
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.saying import Saying
    from studio_planner.craft.shapes import Shape

__all__ = [
    "EDGE",
    "TOP",
    "UNDERSIDE",
    "Coat",
    "CoatKind",
    "Colour",
    "Joint",
    "Material",
    "Photo",
    "Piece",
    "StackPattern",
    "coat_below",
]


class Material(StrEnum):
    """The bare material of a blank."""

    MDF = "mdf"
    TIMBER = "timber"
    PLYWOOD = "plywood"
    SLATE = "slate"
    STONE = "stone"
    METAL = "metal"
    GLASS = "glass"
    PLASTIC = "plastic"

    @property
    def porous(self) -> bool:
        """Whether air in its pores blows bubbles when it warms under a coat."""
        return self in {Material.MDF, Material.TIMBER, Material.PLYWOOD}


@dataclass(frozen=True, slots=True, kw_only=True)
class Photo:
    """A photo that is kept with a piece; `key` names its picture in the studio file."""

    key: str
    taken: datetime
    words: str = ""

    def __post_init__(self) -> None:
        """Check that it names its picture, and that the time carries a zone."""
        rules = Rulebook(translate("nouns", "photo"))
        rules.named(self.key, "key")
        rules.require(
            self.taken.utcoffset() is not None,
            "taken",
            translate("rules", "give a time with a zone."),
        )
        rules.close()


class Level(Protocol):
    """A level place, such as a spot."""

    def holds(self, footprint_mm: tuple[float, float], height_mm: float) -> bool:
        """Tell whether something of that footprint and height fits, turned if need be."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A piece, or a set of identical pieces that stay together (`count` of them).

    `body_mm` is the blank's thickness, the height of its edge. `rim_mm` is the height of a rim
    that holds a flood (0: none). `footprint_mm` (length, width) is the room that the piece or
    the whole set takes on its spot with clearance for drips; None: it follows from the shape.
    `cover_mm` is the height that it needs with its dust cover on. `blank_price` is what the
    blank cost, or all blanks of the set, in the studio's currency.
    """

    key: str
    name: str
    shape: Shape
    material: Material
    body_mm: float
    stack: tuple[Coat, ...]
    count: int = 1
    rim_mm: float = 0.0
    clearance_mm: float = 20.0
    footprint_mm: tuple[float, float] | None = None
    cover_mm: float = 80.0
    note: str = ""
    photos: tuple[Photo, ...] = ()
    blank_price: float = 0.0

    def __post_init__(self) -> None:
        """Check the blank, then the stack as a whole."""
        rules = Rulebook(translate("nouns", "piece {name}").format(name=self.name or self.key))
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.between(self.body_mm, 0.1, 500, "body_mm")
        rules.between(self.count, 1, 500, "count")
        rules.between(self.rim_mm, 0.0, 200, "rim_mm")
        rules.between(self.clearance_mm, 0.0, 500, "clearance_mm")
        rules.between(self.cover_mm, 1.0, 2000, "cover_mm")
        rules.between(self.blank_price, 0.0, 1_000_000, "blank_price")
        keys = [photo.key for photo in self.photos]
        rules.require(
            len(set(keys)) == len(keys), "photos", translate("rules", "a photo is in it twice.")
        )
        for side in self.footprint_mm or ():
            rules.between(side, 1.0, 10_000, "footprint_mm")
        check_stack(self.stack, rules)
        rules.close()

    def below(self, index: int) -> int | None:
        """The position of the coat that coat `index` lies on; None where the face is bare."""
        return coat_below(self.stack, index)

    def rests_on(self, index: int) -> tuple[int, ...]:
        """Positions of the earlier coats that the piece lies on while coat `index` is poured.

        They are on the opposite face, so each must have reached *handle* first.
        """
        faces = self.stack[index].faces
        under = UNDERSIDE if UNDERSIDE not in faces else TOP
        return tuple(
            i for i in range(index) if any(overlap(under, f) for f in self.stack[i].faces)
        )

    def turned_before(self, index: int) -> bool:
        """Tell whether the piece has to be turned over between coat `index` - 1 and `index`."""
        if index == 0:
            return False
        return (UNDERSIDE in self.stack[index].faces) != (
            UNDERSIDE in self.stack[index - 1].faces
        )

    def coat(self, key: str) -> Coat:
        """The coat called `key`; KeyError when there is none."""
        return self.stack[self.position(key)]

    def position(self, key: str) -> int:
        """The position of the coat called `key`; KeyError when there is none."""
        for index, coat in enumerate(self.stack):
            if coat.key == key:
                return index
        raise KeyError(key)

    def coat_name(self, key: str) -> str:
        """What a coat is called: its kind, numbered where the stack has several of it."""
        word, number = kind_word(self.coat(key).kind), self._number(key)
        return f"{word} {number}" if number else word

    def coat_name_said(self, key: str) -> Saying:
        """The same for a text that is kept."""
        return joined(kind_said(self.coat(key).kind), self._number(key))

    def _number(self, key: str) -> str:
        kind = self.coat(key).kind
        alike = [one.key for one in self.stack if one.kind is kind]
        return "" if len(alike) == 1 else str(alike.index(key) + 1)

    @property
    def footprint(self) -> tuple[float, float]:
        """Length and width in mm that the piece, or the set in rows, takes on its spot."""
        if self.footprint_mm is not None:
            return self.footprint_mm
        columns = math.ceil(math.sqrt(self.count))
        rows = math.ceil(self.count / columns)
        gap = self.clearance_mm
        length = columns * self.shape.length_mm + (columns + 1) * gap
        width = rows * self.shape.width_mm + (rows + 1) * gap
        return (length, width)

    @property
    def covered_mm(self) -> float:
        """Its height in mm with the cover over it."""
        return self.body_mm + self.cover_mm

    def fits(self, spot: Level) -> bool:
        """Whether it has room on a spot, turned if need be, with its cover on."""
        return spot.holds(self.footprint, self.covered_mm)
