"""Coats and stacks of them: what is put on where, and how each coat meets the one below."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

TOP = "top"
EDGE = "edge"
UNDERSIDE = "underside"
"""The three faces of every piece; any other name is an area of the top."""


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
        return any(overlap(mine, theirs) for mine in self.faces for theirs in other.faces)

    @property
    def holds_on_sanded(self) -> bool:
        """Whether it holds on what was washed and sanded: leaf finds no tack there."""
        return self.joint is not Joint.WET_IN_WET and self.kind is not CoatKind.LEAF

    @property
    def colour_names(self) -> tuple[str, ...]:
        """The colours' names in order, as they tell one mix from another."""
        return tuple(colour.name for colour in self.colours)


def overlap(one: str, other: str) -> bool:
    """Tell whether two faces are the same, or one is an area of the other, the top."""
    areas_of_the_top = {TOP} | ({one, other} - {EDGE, UNDERSIDE})
    return one == other or ({one, other} <= areas_of_the_top and TOP in {one, other})


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
