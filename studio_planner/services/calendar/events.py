"""The events of a plan: pours, windows that close for good, other work, orders that leave."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.plans import StepKind
from studio_planner.craft.reminders import ReminderKind, plain_key
from studio_planner.craft.tongue import capital, listed, translate
from studio_planner.services.reminding.scene import Scene, coat_below
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Voice
    from studio_planner.services.ribbons import Ribbon

_ALARMS = {
    StepKind.SAND: ReminderKind.SAND,
    StepKind.TURN: ReminderKind.TURN,
    StepKind.TAPE: ReminderKind.TAPE,
    StepKind.TRIM: ReminderKind.TRIM,
    StepKind.PACK: ReminderKind.PACK,
}
_LEAVING = timedelta(minutes=15)
"""How long before it leaves the event of an order begins (our choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedEvent:
    """One event: its name within the studio, when it is, its words, and when the phone rings.

    `rings_before` is how long before its start; `orders` are the keys of the orders it is for.
    """

    name: str
    starts: datetime
    ends: datetime
    words: str
    details: tuple[str, ...] = ()
    rings_before: timedelta = timedelta(0)
    orders: tuple[str, ...] = ()

    @property
    def fingerprint(self) -> str:
        """Stands for everything that a calendar is told of it."""
        told = (self.starts, self.ends, self.words, self.details, self.rings_before)
        return hashlib.blake2b(repr(told).encode(), digest_size=12).hexdigest()


def events_of(studio: Studio, now: datetime, voice: Voice) -> tuple[PlannedEvent, ...]:
    """Every event of the kept plan that is not done; none without a plan."""
    if studio.plan is None:
        return ()
    scene = Scene(studio, studio.plan, now)
    found = (*_pours(scene, voice), *_closings(scene), *_steps(scene), *_leaving(scene))
    return tuple(sorted(found, key=lambda event: (event.starts, event.name)))


def _pours(scene: Scene, voice: Voice) -> Iterator[PlannedEvent]:
    """One for each mix, by the name of its first coat."""
    mixes: dict[int, list[Ribbon]] = {}
    for bar in scene.ribbons():
        if not scene.is_poured(bar):
            mixes.setdefault(bar.planned.mix, []).append(bar)
    for bars in mixes.values():
        bars.sort(key=lambda bar: (bar.planned.piece, bar.planned.coat))
        first = bars[0].planned
        whom = listed(_coat_words(bar) for bar in bars)
        yield PlannedEvent(
            name=_name("pour", first.piece, first.coat),
            starts=_whole(first.start),
            ends=_whole(first.end),
            words=translate("calendar", "Pour: {whom}").format(whom=whom),
            details=tuple(_pour_details(scene, bars, voice)),
            rings_before=_lead(scene, ReminderKind.WEIGH),
            orders=_orders(scene, (bar.planned.piece for bar in bars)),
        )


def _pour_details(scene: Scene, bars: list[Ribbon], voice: Voice) -> Iterator[str]:
    yield translate("calendar", "Mix: {product}").format(product=bars[0].product.name)
    for bar in bars:
        yield translate("calendar", "{coat}: on {spot}").format(
            coat=_coat_words(bar), spot=scene.studio.spot(bar.planned.spot).name
        )
    latest = [one for one in (_latest(scene, bar) for bar in bars) if one is not None]
    if latest:
        yield translate("calendar", "It has to begin by {until}.").format(
            until=voice.moment(min(latest))
        )


def _closings(scene: Scene) -> Iterator[PlannedEvent]:
    """A window over a coat that cannot be sanded: the last start, until it closes."""
    for bar in scene.ribbons():
        below, latest, opening = coat_below(bar), _latest(scene, bar), scene.opening(bar)
        if scene.is_poured(bar) or below is None or below.sandable or latest is None:
            continue
        closes = None if opening is None else opening.closes
        planned = bar.planned
        yield PlannedEvent(
            name=_name("closing", planned.piece, planned.coat),
            starts=_whole(latest),
            ends=_whole(closes or latest) + timedelta(minutes=1),
            words=translate("calendar", "Last start: {whom}").format(whom=_coat_words(bar)),
            details=(translate("calendar", "After that no bond, and no sanding helps."),),
            rings_before=_lead(scene, ReminderKind.CLOSING),
            orders=_orders(scene, [planned.piece]),
        )


def _steps(scene: Scene) -> Iterator[PlannedEvent]:
    studio = scene.studio
    pieces = {piece.key: piece for piece in studio.pieces}
    for step in scene.plan.steps:
        piece = pieces.get(step.piece)
        done = (step.kind, step.piece, step.coat) in scene.done
        if piece is None or done or (step.piece, step.coat) in scene.studio.poured_keys:
            continue
        yield PlannedEvent(
            name=_name(step.kind.value.replace(" ", "-"), step.piece, step.coat or ""),
            starts=_whole(step.start),
            ends=max(_whole(step.end), _whole(step.start) + timedelta(minutes=1)),
            words=translate("calendar", "{what}: {piece}").format(
                what=capital(step_words(studio, step)), piece=piece.name
            ),
            rings_before=_lead(scene, _ALARMS[step.kind]),
            orders=_orders(scene, [step.piece]),
        )


def _leaving(scene: Scene) -> Iterator[PlannedEvent]:
    orders = {order.key: order for order in scene.studio.orders}
    for outcome in scene.plan.outcomes:
        order = orders.get(outcome.order)
        if order is None or outcome.leaves is None or scene.has_left(order):
            continue
        leaves = _whole(outcome.leaves)
        yield PlannedEvent(
            name=_name("leaves", order.key),
            starts=leaves - _LEAVING,
            ends=leaves,
            words=translate("calendar", "{order} leaves ({promise})").format(
                order=order.name, promise=kind_word(order.promise)
            ),
            rings_before=max(_lead(scene, ReminderKind.SHIP) - _LEAVING, timedelta(0)),
            orders=(order.key,),
        )


def _latest(scene: Scene, bar: Ribbon) -> datetime | None:
    opening = scene.opening(bar)
    if opening is None or opening.closes is None:
        return None
    return opening.closes - (bar.planned.end - bar.planned.start)


def _coat_words(bar: Ribbon) -> str:
    piece = bar.lane.piece
    return translate("reminders", "{piece}, {coat}").format(
        piece=piece.name, coat=piece.coat_name(bar.planned.coat)
    )


def _orders(scene: Scene, pieces: Iterable[str]) -> tuple[str, ...]:
    found = (scene.studio.order_of(piece) for piece in pieces)
    return tuple(sorted({order.key for order in found if order is not None}))


def _name(*parts: str) -> str:
    return "/".join(plain_key(part) for part in parts if part)


def _lead(scene: Scene, kind: ReminderKind) -> timedelta:
    return timedelta(minutes=scene.studio.reminding.lead(kind))


def _whole(moment: datetime) -> datetime:
    """The minute that an instant lies in: a calendar needs no more."""
    return moment.astimezone(UTC).replace(second=0, microsecond=0)
