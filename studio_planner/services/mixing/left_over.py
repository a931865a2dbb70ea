"""Where what is left in a cup can still go, before its life is used."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_grams
from studio_planner.craft.plans import Trust
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.science.masses import film_grams
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.cup_times import air_at
from studio_planner.services.mixing.cup_plan import POUR_MINUTES

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Lane
    from studio_planner.services.weighing import MixPortion

CHIP_CM2, CHIP_MM = 9.0, 2.0
"""A witness chip of 3 by 3 cm, poured from the same cup and kept (common practice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LeftOver:
    """What is left in a cup: of which portion, its colour ("" for clear), and how much.

    `minute` is how many minutes ago A met B.
    """

    portion: MixPortion
    colour: str
    grams: float
    minute: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Home:
    """A planned coat that takes what is left: the grams and minutes that it needs."""

    coat: PlannedCoat
    grams: float
    minutes: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Homes:
    """Where what is left can go: for how many minutes it is good, and where it fits.

    `good_minutes` is None where the sheet has no cup life: then nobody knows.
    `coats` are alternatives, the first the one that is planned soonest. `chip_grams` go on a
    witness chip. What goes nowhere is spread thin on something that does not burn, to cure.
    """

    good_minutes: float | None
    coats: tuple[Home, ...]
    chip_grams: float


def minutes_left(view: DeskView, left: LeftOver) -> float | None:
    """How many minutes what is left may stay in its cup; None where the sheet does not say.

    It has stood in the whole portion until now, which is the careful way to count.
    """
    life = left.portion.product.cup_life()
    if life is None or left.grams <= 0.0:
        return None
    first = left.portion.coats[0]
    celsius, band = air_at(view.studio, first.spot, first.start)
    whole = 60.0 * life.hours(celsius, left.portion.total_grams, Edge.EARLY, band)
    small = 60.0 * life.hours(celsius, left.grams, Edge.EARLY, band)
    return max(0.0, (SHARE_TO_USE - left.minute / whole) * small)


def homes_for(view: DeskView, left: LeftOver) -> Homes:
    """Where what is left can go now.

    A planned coat takes it if it is of that product and colour, if its joint may be made now in
    its safe window or on a bare face, if its spot is free, if there is enough for the whole
    coat (a set is poured from one mix), and if it can be poured before the cup's life is used.
    """
    good = minutes_left(view, left)
    product = left.portion.product
    chip = min(film_grams(CHIP_CM2, CHIP_MM, product.density), left.grams)
    return Homes(
        good_minutes=good,
        coats=() if good == 0.0 else tuple(_homes(view, left, good)),
        chip_grams=chip,
    )


def _homes(view: DeskView, left: LeftOver, good: float | None) -> Iterator[Home]:
    plan = view.plan
    here = {(coat.piece, coat.coat) for coat in left.portion.coats}
    done = view.studio.poured_keys | here
    coats = () if plan is None else plan.coats
    for planned in sorted(coats, key=lambda one: (one.start, one.number)):
        if (planned.piece, planned.coat) in done or planned.start <= view.now:
            continue
        piece = view.studio.piece(planned.piece)
        coat = piece.coat(planned.coat)
        home = _home(view, planned, piece, coat)
        enough = home.grams <= left.grams and (good is None or home.minutes <= good)
        allowed = _alike(coat, left) and _joint_open(view, planned, piece)
        if enough and allowed and _spot_free(view, planned):
            yield home


def _home(view: DeskView, planned: PlannedCoat, piece: Piece, coat: Coat) -> Home:
    product = view.studio.product(coat.product)
    return Home(
        coat=planned,
        grams=coat_grams(piece, coat, product, view.studio.settings),
        minutes=min(POUR_MINUTES, coat.piece_minutes) * piece.count,
    )


def _alike(coat: Coat, left: LeftOver) -> bool:
    names = coat.colour_names
    wanted = (left.colour,) if left.colour else ()
    return coat.product == left.portion.product.key and names == wanted


def _joint_open(view: DeskView, planned: PlannedCoat, piece: Piece) -> bool:
    position = piece.position(planned.coat)
    if any(not _begun(view, piece.key, coat.key) for coat in piece.stack[:position]):
        return False
    window = planned.window
    if window is None:
        return piece.below(position) is None
    closes = window.closes
    open_now = window.opens <= view.now and (closes is None or view.now < closes)
    return window.trust is Trust.SAFE and open_now


def _begun(view: DeskView, piece: str, coat: str) -> bool:
    plan = view.plan
    rows = () if plan is None else plan.coats
    planned = (row for row in rows if (row.piece, row.coat) == (piece, coat))
    return (piece, coat) in view.studio.poured_keys or any(
        row.start <= view.now for row in planned
    )


def _spot_free(view: DeskView, planned: PlannedCoat) -> bool:
    return not any(
        _lies_on(view, lane, planned.spot)
        for lane in view.lanes
        if lane.piece.key != planned.piece
    )


def _lies_on(view: DeskView, lane: Lane, spot: str) -> bool:
    begun = [bar for bar in lane.ribbons if bar.start <= view.now]
    last = max(begun, key=lambda bar: bar.start, default=None)
    if last is None or lane.lies_on(last.planned) != spot:
        return False
    handled = last.film.safe(Stage.HANDLE)
    return handled is None or handled > view.now
