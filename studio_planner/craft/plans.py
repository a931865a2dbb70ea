"""The plan: which coat starts when, on which spot, from which mix, with which joint.

The hands-on block of a mix is set-up once plus minutes for every piece; all coats of one mix
share its start and end. What must not happen *before* a stage counts from the block's end (the
last film is spread); what must not happen *after* one counts from its start (A has met B).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint  # noqa: TC001 - likewise
from studio_planner.craft.saying import SILENT, Saying
from studio_planner.science.stages import Stage  # noqa: TC001 - likewise

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log import Poured


class Trust(StrEnum):
    """Which window a joint stands in."""

    SAFE = "safe"
    TEST_FIRST = "test first"


class StepKind(StrEnum):
    """Work beside the pours."""

    SAND = "wash and sand"
    TURN = "turn over"
    TAPE = "pull tape"
    TRIM = "trim drips"
    PACK = "pack"


class Air(StrEnum):
    """What is known about the dew-point margin of a pour."""

    KEPT = "kept"
    UNKNOWN = "unknown"


_ALIKE = 1e-6
"""Two values of a goal that differ by less are the same."""


class Goal(StrEnum):
    """What a plan aims at, strictly in this order."""

    LEFT_OUT = "pieces left out"
    LATENESS = "weighted hours late"
    SCUFFED = "scuffed joints"
    TESTED = "joints to test first"
    MOVED = "pours moved"
    SPARE = "hours of spare lacking"
    MIXES = "separate mixes"
    ENDS = "hours to the ends"


@dataclass(frozen=True, slots=True, kw_only=True)
class GoalValue:
    """How far a plan gets with one goal; less is better.

    No plan that is as good in the goals before gets below `bound`; None when no bound is known.
    """

    goal: Goal
    value: float
    bound: float | None = None

    @property
    def gap(self) -> float | None:
        """How much better another plan might still be; None when no bound is known."""
        return None if self.bound is None else max(0.0, self.value - self.bound)

    @property
    def proved(self) -> bool:
        """Whether no plan can do better, on the grid that was looked at."""
        return self.gap is not None and self.gap < _ALIKE


@dataclass(frozen=True, slots=True, kw_only=True)
class Window:
    """When the joint to the coat below may be made; `closes` is None when it never closes."""

    opens: datetime
    closes: datetime | None
    trust: Trust


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedCoat:
    """One coat in the plan; `number` is what the maker types and reads.

    `held` is the share of rehearsed weeks in which it could be poured in its window,
    `wrong_first` that in which its piece went wrong, and with this coat first; both are None
    when the plan was not rehearsed.
    """

    number: int
    piece: str
    coat: str
    start: datetime
    end: datetime
    spot: str
    joint: Joint
    mix: int
    person: str
    window: Window | None = None
    air: Air = Air.KEPT
    poured: bool = False
    held: float | None = None
    wrong_first: float | None = None

    def as_it_was(self, pour: Poured) -> PlannedCoat:
        """The coat as it was poured."""
        return replace(self, start=pour.start, end=pour.end, spot=pour.spot, poured=True)


def pours_as_planned(
    pours: Iterable[Poured], number: int = 0, mix: int = 0
) -> tuple[PlannedCoat, ...]:
    """What was poured as coats of a plan, in order of start, each taken as a mix of its own.

    They are numbered on from the last `number` of a coat and of a `mix`.
    """
    ordered = sorted(pours, key=lambda pour: pour.start)
    return tuple(
        PlannedCoat(
            number=number + place,
            piece=pour.piece,
            coat=pour.coat,
            start=pour.start,
            end=pour.end,
            spot=pour.spot,
            joint=pour.joint,
            mix=mix + place,
            person="",
            poured=True,
        )
        for place, pour in enumerate(ordered, start=1)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedStep:
    """One other thing to do to a piece; tape and trim need somebody awake, the rest hands.

    `coat` is the coat that is taped or trimmed, or that the sanding or turning prepares for.
    For tape and trim `opens` and `closes` are the safe window.
    """

    kind: StepKind
    piece: str
    start: datetime
    end: datetime
    person: str
    coat: str | None = None
    opens: datetime | None = None
    closes: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Readiness:
    """When a whole piece has reached a stage, likely and safe; None: never in this record."""

    piece: str
    stage: Stage
    likely: datetime | None
    safe: datetime | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Unplanned:
    """A piece that cannot be planned as asked, and the rule that stops it."""

    piece: str
    coat: str | None
    reason: Saying


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A change that was tried for a late order, and the date it would leave then."""

    words: Saying
    leaves: datetime | None
    keeps_promise: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What the plan means for one order; `leaves` is None when a piece of it is not planned.

    `reason` is empty when the promise is kept; otherwise it names what binds, and `changes` are
    the changes that were tried. Of the rehearsed weeks, `held` is the share in which the
    promise was kept, and `day_held` that in which it left on the day of `leaves` or sooner;
    nine of ten had `rehearsed_spare_hours` left before the due instant, negative when it was
    late. All are None where nothing was rehearsed, the spare also where it often never left.
    """

    order: str
    due: datetime
    leaves: datetime | None
    reason: Saying = SILENT
    changes: tuple[Change, ...] = ()
    held: float | None = None
    day_held: float | None = None
    rehearsed_spare_hours: float | None = None

    @property
    def late_hours(self) -> float | None:
        """Hours after the due instant, 0 when in time; None when not planned."""
        if self.leaves is None:
            return None
        return max(0.0, (self.leaves - self.due).total_seconds() / 3600.0)

    @property
    def spare_hours(self) -> float | None:
        """Hours left before the due instant, 0 when late; None when not planned."""
        if self.leaves is None:
            return None
        return max(0.0, (self.due - self.leaves).total_seconds() / 3600.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """A whole plan, made at `made` for everything from `start` on.

    `goals` say what it is worth, on starts that lie `grid_minutes` apart, after
    `solved_seconds` of looking for better ones. `rehearsals` counts the simulated weeks behind
    every share.
    """

    made: datetime
    start: datetime
    coats: tuple[PlannedCoat, ...]
    steps: tuple[PlannedStep, ...] = ()
    ready: tuple[Readiness, ...] = ()
    outcomes: tuple[Outcome, ...] = ()
    unplanned: tuple[Unplanned, ...] = ()
    goals: tuple[GoalValue, ...] = ()
    grid_minutes: int = 5
    solved_seconds: float = 0.0
    rehearsals: int = 0

    def coat(self, number: int) -> PlannedCoat | None:
        """The coat with that number, or None."""
        return next((coat for coat in self.coats if coat.number == number), None)
