"""Where a mix stands at the scale: the step that is next, and what is in which cup."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.mixes import WeighedColour
from studio_planner.services.mixing.at_the_scale import STOP_SHARE

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.services.mixing.at_the_scale import ReallyWeighed
    from studio_planner.services.mixing.cup_plan import CupTime
    from studio_planner.services.mixing.scale_steps import ScaleStep
    from studio_planner.services.weighing import Cup, MixPortion


class Do(StrEnum):
    """What one step asks for.

    WEIGH: put something on the scale. MEET: begin to add B. MORE: put the ratio right. DIVIDE:
    put what is too much for one cup into two. STIR. POUR: empty a cup. WRITE: all is poured,
    write it down. WRITTEN: it is.
    """

    WEIGH = "weigh"
    MEET = "meet"
    MORE = "more"
    DIVIDE = "divide"
    STIR = "stir"
    POUR = "pour"
    WRITE = "write"
    WRITTEN = "written"


@dataclass(frozen=True, slots=True, kw_only=True)
class RunStep:
    """One step: what is done, with what on the scale or with which cup to pour, and when."""

    do: Do
    scale: ScaleStep | None = None
    cup: Cup | None = None
    pour: CupTime | None = None

    @property
    def weighs(self) -> bool:
        """Whether it ends with what the display reads."""
        return self.do in {Do.WEIGH, Do.MORE}


@dataclass(frozen=True, slots=True, kw_only=True)
class LeftInCup:
    """What was left of a cup when it was poured: its colour ("" for clear), grams, when."""

    colour: str
    grams: float
    at: datetime


@dataclass(slots=True, kw_only=True)
class PortionRun:
    """One portion as far as it has come; grams as the display read them.

    `portion` is as planned, and as it really is once A is in the cup. `mixes` and `colours`
    are grams by the number of their cup. `settled`: the ratio is right, or left as it is.
    """

    portion: MixPortion
    a_grams: float | None = None
    b_grams: float | None = None
    a_at: datetime | None = None
    met: datetime | None = None
    real: ReallyWeighed | None = None
    settled: bool = False
    divided: bool = False
    stirred: bool = False
    mixes: dict[int, float]
    colours: dict[int, float]
    emptied: dict[int, datetime]
    left: dict[int, LeftInCup]

    @classmethod
    def of(cls, portion: MixPortion) -> PortionRun:
        """A portion of which nothing is in a cup."""
        return cls(portion=portion, mixes={}, colours={}, emptied={}, left={})

    @property
    def mixed(self) -> bool:
        """Whether A meets B in it."""
        return self.portion.a_grams is not None

    @property
    def since(self) -> datetime | None:
        """When A met B, or when what is not mixed was in its cup."""
        return self.met if self.mixed else self.a_at

    @property
    def on_scale(self) -> float:
        """All of A and B that is in the first cup [g]."""
        return (self.a_grams or 0.0) + (self.b_grams or 0.0)

    @property
    def can_leave(self) -> bool:
        """Whether a ratio that is not right may be left: it is worth a note, and no stop."""
        real = self.real
        return real is not None and abs(real.hardener_share) < STOP_SHARE

    @property
    def colourants(self) -> tuple[WeighedColour, ...]:
        """What was weighed of each colourant so far."""
        grams: dict[str, float] = {}
        for cup in self.portion.cups:
            if self.colours.get(cup.number):
                name = cup.colourant or cup.colour
                grams[name] = grams.get(name, 0.0) + self.colours[cup.number]
        return tuple(WeighedColour(name=name, grams=round(g, 6)) for name, g in grams.items())


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """Where a running mix stands.

    `step` is next in the portion `now`; it is number `step_number` of `step_count` of its
    portion, as far as is known. `portions` have all that were begun.
    """

    step: RunStep
    now: PortionRun
    portions: tuple[PortionRun, ...]
    parts: int
    step_number: int
    step_count: int

    @property
    def part(self) -> int:
        """The number of the portion, from 1."""
        return len(self.portions)

    @property
    def lefts(self) -> tuple[tuple[PortionRun, LeftInCup], ...]:
        """Everything that was left in a cup, with its portion."""
        return tuple((one, left) for one in self.portions for left in one.left.values())

    @property
    def poured_at(self) -> datetime | None:
        """When the last cup that was emptied was."""
        return max(_emptied(self.portions), default=None)

    @property
    def started(self) -> datetime | None:
        """When A met B first."""
        return min((p.since for p in self.portions if p.since is not None), default=None)


def _emptied(portions: Iterable[PortionRun]) -> list[datetime]:
    return [at for one in portions for at in one.emptied.values()]
