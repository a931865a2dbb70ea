"""The best values that any search has found so far, kept beside the benchmark.

An entry counts only for the studio it was found for: when the generator or the plan that was
kept before changes, its mark no longer fits and the entry is found anew. Entries only improve.
A mark is made of what a plan depends on. What is left at its default does not count, so that a
noun may get a new field; whoever changes what a default means finds all entries anew.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import MISSING, asdict, dataclass, fields, is_dataclass
from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from dataclasses import Field

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

PATH = Path(__file__).with_name("best_known.json")
Entry = tuple[str, int, str]
"""Size, seed, and what happened: an event of a kept plan, or `PLAN`."""

PLAN = "plan"
ALIKE = 0.01
"""Hours late that are the same."""


@dataclass(frozen=True, slots=True)
class Known:
    """The best known of one studio; `seconds` is the longest search that looked for it.

    `moved` counts pours that are not where a kept plan has them; `left_out` pieces that what
    has happened leaves without a place.
    """

    studio: str
    late: float
    bound: float
    moved: int
    seconds: float
    left_out: int = 0

    def rank(self) -> tuple[int, float, int]:
        """What is better comes first."""
        return self.left_out, round(self.late, 2), self.moved

    def with_another(self, other: Known) -> Known:
        """The better of two, with the better bound and the longer search.

        A bound that a plan gets below was none, and is not kept.
        """
        better = min(self, other, key=Known.rank)
        bounds = [one.bound for one in (self, other) if one.bound <= better.late + ALIKE]
        return Known(
            studio=self.studio,
            late=better.late,
            bound=max(bounds, default=0.0),
            moved=better.moved,
            seconds=max(self.seconds, other.seconds),
            left_out=better.left_out,
        )


_FOR_NO_PLAN = ("currency", "units", "patterns", "plan", "plan_outdated")
"""Fields of a studio that no plan depends on; of a kept plan only its pours count."""


def mark_of(studio: Studio) -> str:
    """A short mark that a studio with other plans would hardly have."""
    told = {key: one for key, one in _told(studio).items() if key not in _FOR_NO_PLAN}
    text = json.dumps([told, _pours(studio.plan)], sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()[:12]


def _told(thing: object) -> Any:  # noqa: ANN401 - whatever JSON can hold
    """A value of the craft as JSON can hold it, without what is left at its default."""
    if isinstance(thing, Enum):
        return thing.value
    if is_dataclass(thing) and not isinstance(thing, type):
        rows = [(one, getattr(thing, one.name)) for one in fields(thing) if one.init]
        left = {one.name: _told(value) for one, value in rows if value != _default(one)}
        return {"": type(thing).__name__, **left}
    if isinstance(thing, Mapping):
        return {str(_told(key)): _told(value) for key, value in thing.items()}
    if isinstance(thing, (tuple, list)):
        return [_told(one) for one in thing]
    if isinstance(thing, (set, frozenset)):
        return sorted(map(str, map(_told, thing)))
    return thing if isinstance(thing, (str, int, float, type(None))) else str(thing)


def _default(field: Field[Any]) -> object:
    if field.default_factory is not MISSING:
        return field.default_factory()
    return field.default


def _pours(plan: Plan | None) -> list[list[str]]:
    """Which coats a kept plan starts when and where."""
    coats = () if plan is None else plan.coats
    return [[one.piece, one.coat, one.start.isoformat(), str(one.spot)] for one in coats]


class BestKnown:
    """The entries by size, seed and what happened."""

    def __init__(self, path: Path = PATH) -> None:
        """Read what is kept; nothing when there is no file yet."""
        self._path = path
        self._rows = self._read()

    def of(self, entry: Entry, studio: Studio) -> Known | None:
        """What is known of one studio; None when nothing is, or of another studio only."""
        known = self._rows.get(_name(entry))
        return known if known is not None and known.studio == mark_of(studio) else None

    def keep(self, entry: Entry, known: Known) -> Known:
        """Keep what is better than before, in the file at once; the entry as it is now."""
        self._rows = self._read()  # another search may have kept something meanwhile
        before = self._rows.get(_name(entry))
        if before is not None and before.studio == known.studio:
            known = before.with_another(known)
        self._rows[_name(entry)] = known
        rows = {key: asdict(self._rows[key]) for key in sorted(self._rows)}
        self._path.write_text(json.dumps(rows, indent=1) + "\n", encoding="utf-8")
        return known

    def _read(self) -> dict[str, Known]:
        if not self._path.exists():
            return {}
        rows = json.loads(self._path.read_text(encoding="utf-8"))
        return {name: Known(**row) for name, row in rows.items()}


def _name(entry: Entry) -> str:
    return " ".join(map(str, entry))
