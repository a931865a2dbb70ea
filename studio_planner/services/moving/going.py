"""A piece that is put on another spot: which coats it gets there, and whether it may."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.moving.held import (
    Goes,
    Stay,
    handled,
    ribbons_of,
    stays_of,
    stays_on,
)
from studio_planner.services.moving.joint_then import faces_then, joint_then
from studio_planner.services.moving.spot_then import named, taken_on
from studio_planner.services.questions.sentences import Moment, said

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.craft.places import Spot
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.moving.air_then import AirThen
    from studio_planner.services.moving.around import Around
    from studio_planner.services.ribbons import Lane, Ribbon


def going_then(
    around: Around, lane: Lane, goes: Goes, along: Iterable[Lane]
) -> Iterator[Break]:
    """What keeps a piece from standing on that spot; its lane already has it there.

    `along` are the lanes of the other pieces of its mix.
    """
    spot, coats = around.studio.spot(goes.spot), _on(lane, goes)
    poured = next((coat for coat in coats if coat.poured), None)
    if poured is not None:
        yield _wet(lane, poured)
    elif not lane.piece.fits(spot):
        yield _too_small(lane, spot)
    else:
        there = [stay for other in along for stay in stays_on(other, goes.spot)]
        yield from _occupied(around, lane, coats, there)
        yield from _too_early(lane, coats)


def _on(lane: Lane, goes: Goes) -> list[PlannedCoat]:
    return [coat for coat in lane.coats if coat.coat in goes.coats]


def _wet(lane: Lane, poured: PlannedCoat) -> Break:
    name, until = lane.piece.coat_name(poured.coat), handled(lane, poured)
    if until is None:
        text = "It has been poured on: it stays where it is, with the {coat} on it."
        return Break(rule=Rule.SPOT, words=said(text, coat=name))
    text = "It stays where it is until the {coat} can be handled, {until}."
    return Break(rule=Rule.SPOT, words=said(text, coat=name, until=Moment(until)))


def _too_small(lane: Lane, spot: Spot) -> Break:
    low = spot.holds(lane.piece.footprint, 0.0)
    text = (
        "{piece} does not fit on {spot}: with its cover it is too high."
        if low
        else "{piece} does not fit on {spot}: it is longer or wider than that."
    )
    return Break(rule=Rule.SPOT, words=said(text, piece=lane.piece.name, spot=spot.name))


def _occupied(
    around: Around, lane: Lane, coats: Iterable[PlannedCoat], there: list[Stay]
) -> Iterator[Break]:
    for stay in stays_of(lane, coats):
        with_it = next((other for other in there if stay.meets(other)), None)
        taken = taken_on(around, stay) or with_it
        if taken is not None:
            yield Break(rule=Rule.SPOT, words=named(around, stay.coat, taken))
            return


def _too_early(lane: Lane, coats: list[PlannedCoat]) -> Iterator[Break]:
    """A piece is moved only once it can be handled: to the spot, and away from it again."""
    for one, other in zip(lane.coats, lane.coats[1:], strict=False):
        if lane.lies_on(one) == other.spot or (one not in coats and other not in coats):
            continue
        ready = handled(lane, one)
        if ready is not None and ready <= other.start:
            continue
        name, spot = lane.piece.coat_name(one.coat), lane.studio.spot(other.spot).name
        if ready is None:
            text = "It cannot be moved to {spot}: the {before} can never be handled."
            yield Break(rule=Rule.SPOT, words=said(text, spot=spot, before=name))
        else:
            text = "It cannot be moved to {spot} before the {before} can be handled, {ready}."
            facts = {"ready": Moment(ready)}
            words = said(text, spot=spot, before=name, **facts)
            yield Break(rule=Rule.SPOT, words=words)


def others_there(lane: Lane, goes: Goes, taken: str) -> list[Ribbon]:
    """The other coats that a piece gets on the spot, besides the one that is `taken`."""
    return [bar for key, bar in ribbons_of(lane).items() if key in goes.coats and key != taken]


def others_then(taken: Ribbon, air: AirThen, others: Iterable[Ribbon]) -> Iterator[Break]:
    """What the spot's own air means for the other coats that a piece gets there.

    Those before the pour that is `taken` stay at their times; those after it can be moved.
    """
    lane = taken.lane
    for bar in others:
        breaks = [*air.breaks(bar)]
        if bar.position < taken.position:
            yield from (b for b in (*joint_then(lane, bar).breaks, *breaks) if b.hard)
            yield from faces_then(lane, bar)
        elif breaks:
            text = "The {coat} after it no longer fits and will be moved."
            words = said(text, coat=lane.piece.coat_name(bar.coat.key))
            yield Break(rule=Rule.LATER, words=words, hard=False)
