"""What really happened: what was poured, and everything that was written down, once for all.

Nothing in the log is ever changed. Whoever was wrong writes another entry that says which one
it corrects; the old one stays to be read.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import marked, translate
from studio_planner.craft.touches import Touch, Verdict  # noqa: TC001 - the exchange format's

if TYPE_CHECKING:
    from collections.abc import Iterable

_MOST = 1_000_000_000
"""No entry and no batch has a larger number: nobody writes so much, and a file holds it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Poured:
    """A coat that has been poured: its hands-on block, its spot, and the joint it was given.

    `batch` is the number of the mix it came from, where that was weighed and written down.
    """

    piece: str
    coat: str
    start: datetime
    end: datetime
    spot: str
    joint: Joint = Joint.BARE
    batch: int | None = None

    def __post_init__(self) -> None:
        """Check that the times carry a zone and run forward."""
        rules = Rulebook(
            translate("nouns", "pour of {piece}, {coat}").format(
                piece=self.piece, coat=self.coat
            )
        )
        rules.forward(self.start, self.end)
        rules.close()


class EntryKind(StrEnum):
    """What an entry of the log tells of.

    A piece that is *stripped* is a bare blank again, whether it was stripped back or replaced
    by a new one. What is *withdrawn* never happened.
    """

    POURED = "poured"
    WEIGHED = "weighed"
    TOUCHED = "touched"
    TAPED = "tape pulled"
    TRIMMED = "drips trimmed"
    TURNED = "turned over"
    MOVED = "moved"
    SANDED = "washed and sanded"
    PACKED = "packed"
    SHIPPED = "shipped"
    SPOILED = "spoiled"
    STRIPPED = "stripped"
    WITHDRAWN = "withdrawn"


@dataclass(frozen=True, slots=True, kw_only=True)
class LogEntry:
    """One thing that happened `at` an instant, as it was `written` down (both aware).

    `number` is what the maker types and reads; it rises. What does not belong to the kind is
    empty: a pour has its block's `end`, a spot, a joint and perhaps the `batch` it came from; a
    weighing has its batch; a touch test its touch and verdict; *moved* has the spot that the
    piece was moved to. `coat` is the coat that was poured, touched, taped or trimmed, or that
    turning and sanding make ready for. `corrects` is the number of the entry that this one
    takes the place of.
    """

    number: int
    kind: EntryKind
    at: datetime
    written: datetime
    piece: str = ""
    coat: str = ""
    order: str = ""
    end: datetime | None = None
    spot: str = ""
    joint: Joint | None = None
    batch: int | None = None
    touch: Touch | None = None
    verdict: Verdict | None = None
    words: str = ""
    corrects: int | None = None

    def __post_init__(self) -> None:
        """Check that it has what its kind needs and nothing else, and that times make sense."""
        rules = Rulebook(
            translate("nouns", "entry {number} of the log").format(number=self.number)
        )
        rules.between(self.number, 1, _MOST, "number")
        if self.batch is not None:
            rules.between(self.batch, 1, _MOST, "batch")
        for name in ("at", "written"):
            rules.require(
                getattr(self, name).utcoffset() is not None,
                name,
                translate("rules", "give the time with a zone."),
            )
        if self.end is not None:
            self._check_end(self.end, rules)
        self._check_kind(rules)
        rules.close()

    def _check_end(self, end: datetime, rules: Rulebook) -> None:
        zoned = end.utcoffset() is not None
        rules.require(zoned, "end", translate("rules", "give the time with a zone."))
        # Two times of one zone compare by the wall clock, which doubles an hour in autumn.
        kept = not zoned or self.at.timestamp() < end.timestamp()
        rules.require(kept, "end", translate("rules", "it has to end after it starts."))

    def _check_kind(self, rules: Rulebook) -> None:
        needed, allowed = _FIELDS[self.kind]
        given = {name for name in _OWN if getattr(self, name) not in {None, ""}}
        for name in sorted(needed - given):
            rules.require(False, name, translate("rules", _MISSING[name]))  # noqa: FBT003
        for name in sorted(given - needed - allowed):
            rules.require(False, name, translate("rules", "this entry has no such thing."))  # noqa: FBT003
        nobody = self.kind is EntryKind.SHIPPED and not self.piece and not self.order
        rules.require(
            not nobody, "piece", translate("rules", "say which piece or order was shipped.")
        )
        rules.require(
            self.corrects is None or 1 <= self.corrects < self.number,
            "corrects",
            translate("rules", "only an earlier entry can be corrected."),
        )


_OWN = frozenset(
    {"piece", "coat", "order", "end", "spot", "joint", "batch", "touch", "verdict", "corrects"}
)
_MISSING = {
    "piece": marked("rules", "say which piece it happened to."),
    "coat": marked("rules", "say which coat it is about."),
    "end": marked("rules", "say when the pour ended."),
    "spot": marked("rules", "say on which spot it lies."),
    "joint": marked("rules", "say how it met the coat below."),
    "batch": marked("rules", "say which mix it was."),
    "touch": marked("rules", "say which touch test it was."),
    "verdict": marked("rules", "say what the touch test found."),
    "corrects": marked("rules", "say which entry it takes the place of."),
}
_NOTHING: frozenset[str] = frozenset()
_ANY = frozenset({"corrects"})
_PIECE = frozenset({"piece"})
_COAT = frozenset({"piece", "coat"})
_FIELDS = {
    EntryKind.POURED: (_COAT | {"end", "spot", "joint"}, _ANY | {"batch"}),
    EntryKind.WEIGHED: (frozenset({"batch"}), _ANY),
    EntryKind.TOUCHED: (_COAT | {"touch", "verdict"}, _ANY),
    EntryKind.TAPED: (_COAT, _ANY),
    EntryKind.TRIMMED: (_COAT, _ANY),
    EntryKind.TURNED: (_PIECE, _ANY | {"coat"}),
    EntryKind.MOVED: (_PIECE | {"spot"}, _ANY),
    EntryKind.SANDED: (_PIECE, _ANY | {"coat"}),
    EntryKind.PACKED: (_PIECE, _ANY),
    EntryKind.SHIPPED: (_NOTHING, _ANY | {"piece", "order"}),
    EntryKind.SPOILED: (_PIECE, _ANY | {"coat"}),
    EntryKind.STRIPPED: (_PIECE, _ANY),
    EntryKind.WITHDRAWN: (frozenset({"corrects"}), _NOTHING),
}


def standing_of(log: Iterable[LogEntry]) -> tuple[LogEntry, ...]:
    """The entries that are neither corrected nor withdrawn, in the order of what happened."""
    entries = tuple(log)
    replaced = {entry.corrects for entry in entries}
    standing = (
        entry
        for entry in entries
        if entry.number not in replaced and entry.kind is not EntryKind.WITHDRAWN
    )
    return tuple(sorted(standing, key=lambda entry: (entry.at.timestamp(), entry.number)))


class GoneKind(StrEnum):
    """What kind of thing was taken out of a studio."""

    PIECE = "piece"
    ORDER = "order"
    PRODUCT = "product"


@dataclass(frozen=True, slots=True, kw_only=True)
class Gone:
    """A thing that was taken out of the studio, and of which the log still speaks.

    Its key is not given again, so that nothing is ever told of another thing than it happened
    to. `order` is the key of the order that a piece was promised to.
    """

    kind: GoneKind
    key: str
    name: str
    order: str = ""

    def __post_init__(self) -> None:
        """Check that it has a key and a name."""
        rules = Rulebook(
            translate("nouns", "{name}, which was taken out").format(name=self.name or self.key)
        )
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.close()
