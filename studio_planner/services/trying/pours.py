"""The pours that a trial bears on: start, window and dew-point margin, then and now."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.services.questions.air_ahead import air_between, lowest_margin

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.desk import DeskView

_SAME = timedelta(minutes=1)
"""Times that differ by less are the same to a maker."""


@dataclass(frozen=True, slots=True)
class PourThen:
    """A pour in one plan: its start, its window, and the least margin in the hours after it.

    `opens` is None where it has no window, `closes` also where that never closes; `margin` in
    °C is None where it is not known.
    """

    start: datetime
    opens: datetime | None
    closes: datetime | None
    margin: float | None


@dataclass(frozen=True, slots=True)
class PourBeside:
    """A pour without and with the change; None where one of the plans has it not."""

    piece: str
    coat: str
    words: str
    without: PourThen | None
    tried: PourThen | None

    @property
    def opens_sooner(self) -> timedelta | None:
        """How much sooner its window opens, below zero when later; None without both."""
        return _sooner(self.without, self.tried, "opens")

    @property
    def closes_sooner(self) -> timedelta | None:
        """How much sooner its window closes, below zero when later; None without both."""
        return _sooner(self.without, self.tried, "closes")


def pours_beside(
    without: DeskView, tried: DeskView, about: frozenset[tuple[str, str]]
) -> tuple[PourBeside, ...]:
    """Pours to come that are moved or have another window, and those it is `about`.

    In the order of their times in the tried plan.
    """
    before, after = _to_come(without), _to_come(tried)
    concerned = [
        key
        for key in dict.fromkeys([*after, *before])
        if key in about or _differ(before.get(key), after.get(key))
    ]
    rows = (_beside(without, tried, before.get(key), after.get(key)) for key in concerned)
    return tuple(sorted(rows, key=_first_start))


def _to_come(view: DeskView) -> dict[tuple[str, str], PlannedCoat]:
    coats: Iterable[PlannedCoat] = view.plan.coats if view.plan is not None else ()
    coming = (one for one in coats if not one.poured and one.start > view.now)
    return {(one.piece, one.coat): one for one in coming}


def _differ(one: PlannedCoat | None, other: PlannedCoat | None) -> bool:
    if one is None or other is None:
        return one is not other
    if abs(one.start - other.start) >= _SAME or one.spot != other.spot:
        return True
    if one.window is None or other.window is None:
        return one.window is not other.window
    return _apart(one.window.opens, other.window.opens) or _apart(
        one.window.closes, other.window.closes
    )


def _apart(one: datetime | None, other: datetime | None) -> bool:
    if one is None or other is None:
        return one is not other
    return abs(one - other) >= _SAME


def _beside(
    without: DeskView, tried: DeskView, before: PlannedCoat | None, after: PlannedCoat | None
) -> PourBeside:
    coat = after or before
    if coat is None:
        raise AssertionError
    piece = (tried if after is not None else without).studio.piece(coat.piece)
    return PourBeside(
        piece=coat.piece,
        coat=coat.coat,
        words=f"{piece.name}, {piece.coat_name(coat.coat)}",
        without=None if before is None else _then(without, before),
        tried=None if after is None else _then(tried, after),
    )


def _then(view: DeskView, coat: PlannedCoat) -> PourThen:
    window = coat.window
    end = coat.end + timedelta(hours=view.studio.settings.dew_hours)
    place = view.studio.place_of_spot(coat.spot).key
    material = view.studio.piece(coat.piece).material
    low = lowest_margin(air_between(view.timing, place, material, coat.start, end))
    return PourThen(
        start=coat.start,
        opens=None if window is None else window.opens,
        closes=None if window is None else window.closes,
        margin=None if low is None else low.margin,
    )


def _sooner(one: PourThen | None, other: PourThen | None, field: str) -> timedelta | None:
    before: datetime | None = getattr(one, field, None)
    after: datetime | None = getattr(other, field, None)
    return None if before is None or after is None else before - after


def _first_start(row: PourBeside) -> tuple[datetime, str, str]:
    then = row.tried or row.without
    if then is None:
        raise AssertionError
    return then.start, row.piece, row.coat
