"""Which films lie in the open at a moment, what each is called, and until when it is wet.

The kept plan is taken as what is being done: a coat whose block has begun counts as poured.
"""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon

COVERING = (Stage.COVER, Stage.TACK_FREE, Stage.RECOAT_OPENS)
"""The first of these on a sheet ends the time in which dust spoils a film."""

NEVER = datetime.max.replace(tzinfo=UTC)
"""Later than everything that is known."""


def ribbons_of(view: DeskView, piece: str | None = None) -> Iterator[Ribbon]:
    """Every film of the plan, or of one piece (a key), lane by lane in order of time."""
    for lane in view.lanes:
        if piece is None or lane.piece.key == piece:
            yield from lane.ribbons


def begun(view: DeskView, piece: str | None = None) -> list[Ribbon]:
    """The films that have been poured by now, earliest first."""
    found = (one for one in ribbons_of(view, piece) if one.start <= view.now)
    return sorted(found, key=lambda one: one.start)


def to_come(view: DeskView, piece: str | None = None) -> list[Ribbon]:
    """The films that are still to be poured, earliest first."""
    found = (one for one in ribbons_of(view, piece) if one.start > view.now)
    return sorted(found, key=lambda one: (one.start, one.planned.number))


def open_films(view: DeskView, piece: str) -> list[Ribbon]:
    """The films of a piece that have been poured and that no coat covers yet, latest first."""
    found = begun(view, piece)
    covered = {one.lane.piece.below(one.position) for one in found}
    return [one for one in reversed(found) if one.position not in covered]


def wet_until(film: Ribbon) -> datetime:
    """Until when dust spoils a film, at the safe edge; `NEVER` where no end is known."""
    known = {point.stage for point in film.product.sheet}
    stage = next((one for one in COVERING if one in known), None)
    if stage is None:
        return film.planned.end
    reached = film.film.safe(stage)
    return NEVER if reached is None else max(reached, film.planned.end)


def coat_words(film: Ribbon) -> str:
    """A coat with its piece, such as: Tide tray, flood."""
    return f"{film.lane.piece.name}, {film.lane.piece.coat_name(film.coat.key)}"


def piece_options(view: DeskView) -> tuple[tuple[str, str], ...]:
    """Every piece of the studio, to choose from."""
    return tuple((piece.key, piece.name) for piece in view.studio.pieces)
