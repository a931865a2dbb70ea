"""Pieces and sets: the blank, its stack of coats, and how each coat meets the one below."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.shapes import Shape

TOP = "top"
EDGE = "edge"
UNDERSIDE = "underside"
"""The three faces of every piece; any other name is an area of the top."""


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


class CoatKind(StrEnum):
    """What a coat is for."""

    PRIME = "prime"
    SEAL = "seal"
    FLOOD = "flood"
    COLOUR = "colour pour"
    GLITTER = "glitter"
    SIZE = "size"
    LEAF = "leaf"
    LOCK = "lock coat"
    TOP_COAT = "top coat"


class Joint(StrEnum):
    """How a coat meets what lies below it."""

    BARE = "on bare"
    WET_IN_WET = "wet in wet"
    IN_WINDOW = "in the window"
    SCUFFED = "scuffed"
    ON_DRY = "on dry"


@dataclass(frozen=True, slots=True, kw_only=True)
class Colour:
    """One colour of a coat: its share of the mix and its colourant, both in per cent.

    `share_pct` is the part of the mix that gets this colour; `colourant_pct` is the colourant's
    mass in per cent of that part. `pour_at_minute` is when it is poured, counted from the first
    one, where the maker waits for it to thicken.
    """

    name: str
    share_pct: float = 100.0
    colourant: str = ""
    colourant_pct: float = 0.0
    pour_at_minute: float | None = None

    def __post_init__(self) -> None:
        """Check the name and both percentages."""
        rules = Rulebook(translate("nouns", "colour {name}").format(name=self.name))
        rules.named(self.name)
        rules.between(self.share_pct, 0.1, 100.0, "share_pct")
        rules.between(self.colourant_pct, 0.0, 50.0, "colourant_pct")
        if self.pour_at_minute is not None:
            rules.between(self.pour_at_minute, 0.0, 24 * 60, "pour_at_minute")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class Coat:
    """One coat of a stack.

    `key` is unique within the piece. `joint` is how the maker wants it to meet the coat below
    (ignored on a bare face); a coat meant *in the window* may be planned *scuffed* when the
    coat below can be sanded. `sandable` says whether this coat survives sanding; `test_first`
    whether the next coat may rely on a touch test in this one's likely window when it does not.
    `setup_minutes` are attended once per mix, `piece_minutes` once for every single piece.
    """

    key: str
    kind: CoatKind
    product: str
    film_mm: float
    faces: frozenset[str] = frozenset({TOP})
    joint: Joint = Joint.IN_WINDOW
    colours: tuple[Colour, ...] = ()
    sandable: bool = True
    test_first: bool = False
    taped: bool = False
    trimmed: bool = False
    area_cm2: float | None = None
    setup_minutes: int = 20
    piece_minutes: int = 25

    def __post_init__(self) -> None:
        """Check the coat on its own; the stack it lies in is checked by the piece."""
        rules = Rulebook(translate("nouns", "coat {key}").format(key=self.key))
        rules.named(self.key, "key")
        rules.named(self.product, "product")
        rules.between(self.film_mm, 0.0 if self.kind is CoatKind.LEAF else 0.01, 100, "film_mm")
        rules.require(
            bool(self.faces), "faces", translate("rules", "say which face it covers.")
        )
        rules.require(
            all(face.strip() for face in self.faces),
            "faces",
            translate("rules", "name every area."),
        )
        rules.require(
            UNDERSIDE not in self.faces or self.faces <= {UNDERSIDE, EDGE},
            "faces",
            translate(
                "rules",
                "top and underside cannot be coated in one go: it has to lie on one of them.",
            ),
        )
        shares = sum(colour.share_pct for colour in self.colours)
        rules.require(
            not self.colours or math.isclose(shares, 100.0, abs_tol=0.5),
            "colours",
            translate("rules", "the shares add up to {shares:g} %, not to 100 %.").format(
                shares=shares
            ),
        )
        if self.area_cm2 is not None:
            rules.between(self.area_cm2, 0.01, 250_000, "area_cm2")
        rules.between(self.setup_minutes, 0, 24 * 60, "setup_minutes")
        rules.between(self.piece_minutes, 1, 24 * 60, "piece_minutes")
        rules.require(
            self.joint not in {Joint.BARE, Joint.SCUFFED},
            "joint",
            translate(
                "rules",
                "choose wet in wet, in the window or on dry; the plan finds bare and scuffed.",
            ),
        )
        rules.close()

    def touches(self, other: Coat) -> bool:
        """Tell whether this coat lies on a face that the other one covers."""
        return any(_overlap(mine, theirs) for mine in self.faces for theirs in other.faces)

    @property
    def colour_names(self) -> tuple[str, ...]:
        """The colours' names in order, as they tell one mix from another."""
        return tuple(colour.name for colour in self.colours)


def _overlap(one: str, other: str) -> bool:
    areas_of_the_top = {TOP} | ({one, other} - {EDGE, UNDERSIDE})
    return one == other or ({one, other} <= areas_of_the_top and TOP in {one, other})


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
        self._check_stack(rules)
        rules.close()

    def _check_stack(self, rules: Rulebook) -> None:
        check_stack(self.stack, rules)

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
            i for i in range(index) if any(_overlap(under, f) for f in self.stack[i].faces)
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
        coat = self.coat(key)
        alike = [one.key for one in self.stack if one.kind is coat.kind]
        word = kind_word(coat.kind)
        return word if len(alike) == 1 else f"{word} {alike.index(key) + 1}"

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


def coat_below(stack: Sequence[Coat], index: int) -> int | None:
    """The position of the coat that coat `index` of a stack lies on; None on a bare face."""
    coat = stack[index]
    return next((i for i in reversed(range(index)) if coat.touches(stack[i])), None)


def check_stack(stack: Sequence[Coat], rules: Rulebook) -> None:
    """Note what is wrong with coats that lie in that order, whatever the blank."""
    keys = [coat.key for coat in stack]
    rules.require(bool(keys), "stack", translate("rules", "add at least one coat."))
    rules.require(
        len(set(keys)) == len(keys), "stack", translate("rules", "two coats have the same key.")
    )
    for index, coat in enumerate(stack):
        rules.require(
            coat.kind is not CoatKind.LEAF or coat_below(stack, index) is not None,
            f"stack, coat {coat.key}",
            translate("rules", "leaf needs a size or a tacky coat below it."),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class StackPattern:
    """A stack of coats that the maker uses again and again, under a name of their own."""

    key: str
    name: str
    stack: tuple[Coat, ...]

    def __post_init__(self) -> None:
        """Check the name, and the stack as for a piece."""
        rules = Rulebook(
            translate("nouns", "stack pattern {name}").format(name=self.name or self.key)
        )
        rules.named(self.key, "key")
        rules.named(self.name)
        check_stack(self.stack, rules)
        rules.close()
