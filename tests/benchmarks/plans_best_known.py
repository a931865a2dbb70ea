"""The best values that any search has found so far, kept beside the benchmark.

An entry counts only for the studio it was found for: when the generator or the plan that was
kept before changes, its mark no longer fits and the entry is found anew. Entries only improve.
"""

from __future__ import annotations

import hashlib
import json
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.storage.exchange import studio_to_json

if TYPE_CHECKING:
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


def mark_of(studio: Studio) -> str:
    """A short mark that another studio would not have."""
    return hashlib.sha256(studio_to_json(studio).encode()).hexdigest()[:12]


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
