"""Mixes that were really weighed: which grams, from which lots, for which coats."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate

_MOST_GRAMS = 100_000
_MOST = 1_000_000_000


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighedColour:
    """A colourant that was weighed into a mix, in grams."""

    name: str
    grams: float

    def __post_init__(self) -> None:
        """Check its name and mass."""
        rules = Rulebook(translate("nouns", "colourant {name}").format(name=self.name))
        rules.named(self.name)
        rules.between(self.grams, 0, _MOST_GRAMS, "grams")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class MixedFor:
    """A coat of a piece that a mix was for."""

    piece: str
    coat: str


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighedMix:
    """What was weighed together; `batch` is the studio's own rising number on cup and paper.

    A met B `at` an aware instant. Grams are those that the scale showed, not those that were
    wanted; a one-part product is all `a_grams`. `lot_a` and `lot_b` are keys of lots or what
    the labels say, empty where nobody noted it. `entry` is the number of the log's entry that
    wrote it down; a weighing that was corrected stays, and the new one has the same batch.
    """

    entry: int
    batch: int
    product: str
    at: datetime
    a_grams: float
    b_grams: float = 0.0
    lot_a: str = ""
    lot_b: str = ""
    colourants: tuple[WeighedColour, ...] = ()
    coats: tuple[MixedFor, ...] = ()

    def __post_init__(self) -> None:
        """Check masses, and that each coat is named once."""
        rules = Rulebook(translate("nouns", "mix {batch}").format(batch=self.batch))
        rules.between(self.batch, 1, _MOST, "batch")
        rules.require(
            self.at.utcoffset() is not None,
            "at",
            translate("rules", "give the time with a zone."),
        )
        for name in ("a_grams", "b_grams"):
            rules.between(getattr(self, name), 0, _MOST_GRAMS, name)
        rules.require(
            self.grams > 0, "a_grams", translate("rules", "a mix weighs more than nothing.")
        )
        rules.require(
            len(set(self.coats)) == len(self.coats),
            "coats",
            translate("rules", "each coat can be named only once."),
        )
        rules.close()

    @property
    def grams(self) -> float:
        """All that was weighed together."""
        return self.a_grams + self.b_grams + sum(one.grams for one in self.colourants)
