"""The rules between lanes: hands, spots, dust, shared mixes; and the goals over all."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.exact.choices import is_wet
from studio_planner.planning.exact.draft import Lying
from studio_planner.planning.exact.lane_rules import LaneRules
from studio_planner.planning.exact.reaches import not_before
from studio_planner.planning.exact.sharing import A_GRAIN
from studio_planner.planning.problem import cover_stage
from studio_planner.planning.spans import joined
from studio_planner.planning.worth import MOVED_SECONDS

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.planning.exact.draft import Draft, LaneUnknowns
    from studio_planner.planning.exact.lanes import Settled
    from studio_planner.planning.exact.rooms import LaneRoom
    from studio_planner.planning.exact.sharing import Coat, Sharing
    from studio_planner.planning.exact.unknowns import CoatUnknowns
    from studio_planner.planning.solver import Flag, Quantity, Span


def drafted(
    draft: Draft,
    rooms: Sequence[LaneRoom],
    sharing: Sharing,
    settled: Settled,
) -> Draft:
    """Build the whole model of some lanes among what is settled."""
    for room in rooms:
        LaneRules(draft, room).add()
    follows = _share(draft, sharing)
    _blocks(draft, follows)
    _limit_hands(draft, settled)
    _limit_spots(draft, settled)
    _keep_dust_away(draft, settled)
    _count_moved(draft)
    _promise(draft)
    draft.goals.mixes = _mixes(draft, follows)
    return draft


# Shared mixes


def _share(draft: Draft, sharing: Sharing) -> dict[Coat, list[Flag]]:
    """Say what it means that coats share a mix; the flags with which each coat follows."""
    follows: dict[Coat, list[Flag]] = {}
    for leader, follower in sharing.pairs:
        one, other = _coat(draft, leader), _coat(draft, follower)
        if one.known_start is None and other.known_start is None:
            flag = draft.model.flag()
            draft.together[leader, follower] = flag
            follows.setdefault(follower, []).append(flag)
    for flags in follows.values():
        draft.model.at_most_one(flags)
    for (leader, follower), shared in draft.together.items():
        _bind_block(draft, _coat(draft, leader), _coat(draft, follower), shared)
        for led in follows.get(leader, []):
            draft.model.at_most_one([shared, led])
    for coat in sharing.portions:
        _lengthen(draft, sharing, coat, follows.get(coat, []))
    return follows


def _bind_block(draft: Draft, one: CoatUnknowns, other: CoatUnknowns, shared: Flag) -> None:
    """Coats of one mix are one block of one person."""
    draft.model.equal(one.start, other.start, [shared])
    draft.model.equal(one.minutes, other.minutes, [shared])
    if len(one.by) > 1:
        for (_, mine), (_, theirs) in zip(one.by, other.by, strict=True):
            draft.model.equal(mine, theirs, [shared])


def _lengthen(draft: Draft, sharing: Sharing, coat: Coat, follows: list[Flag]) -> None:
    """A block that leads is as long as all that follow; one alone as long as its own work."""
    mine = _coat(draft, coat)
    if mine.known_start is not None:
        return
    led = [
        (sharing.portions[one], draft.together[coat, one])
        for one in sharing.led_by(coat)
        if (coat, one) in draft.together
    ]
    own = sharing.portions[coat]
    minutes: Quantity = own.alone // 60
    for other, flag in led:
        minutes += other.own // 60 * flag
    draft.model.equal(mine.minutes, minutes, [~flag for flag in follows])
    if led:
        draft.model.at_least(sharing.most_together(coat), sum(flag for _, flag in led))
        grams = sum(_in_parts(other.grams) * flag for other, flag in led)
        draft.model.at_least(_in_parts(own.limit + A_GRAIN) - _in_parts(own.grams), grams)


def _in_parts(grams: float) -> int:
    """Grams counted so finely that rounding is less than a grain."""
    return round(grams * 10 / A_GRAIN)


def _blocks(draft: Draft, follows: dict[Coat, list[Flag]]) -> None:
    """Put every block, with turning before it, into somebody's hours; what follows is led."""
    for at, lane in enumerate(draft.lanes):
        for index, coat in enumerate(lane.coats):
            if coat.known_start is None:
                _block(draft, coat, follows.get((at, index), []))


def _block(draft: Draft, coat: CoatUnknowns, follows: list[Flag]) -> None:
    lead = draft.grid.length(coat.task.lead)
    slots = coat.slots(draft.grid.step) + lead
    for hands, flag in coat.by:
        there = [*draft.flags(flag), *(~one for one in follows)]
        draft.busy[hands].append(draft.span(coat.start - lead, slots, *there))


def _mixes(draft: Draft, follows: dict[Coat, list[Flag]]) -> Quantity:
    """How many mixes are made: one for each new coat that does not follow another."""
    count = sum(coat.known_start is None for lane in draft.lanes for coat in lane.coats)
    return count - sum(flag for flags in follows.values() for flag in flags)


# Hands and spots


def _limit_hands(draft: Draft, settled: Settled) -> None:
    for hands, spans in draft.busy.items():
        taken = [
            span
            for person in hands.people
            for span in _fixed(draft, settled.hands.get(person, []))
        ]
        if len(hands.people) == 1:
            draft.model.one_at_a_time([*spans, *taken])
        elif spans:
            every = [*spans, *taken]
            draft.model.capacity(every, [1] * len(every), len(hands.people))


def _limit_spots(draft: Draft, settled: Settled) -> None:
    for spots, held in draft.held.items():
        if not held:
            continue
        taken = [
            span for spot in spots.spots for span in _fixed(draft, settled.spots.get(spot, []))
        ]
        for spot in spots.spots:
            taken += _lying_on(draft, spot, settled.lying.get(spot, []))
        spans = [span for span, _ in held]
        needs = [need for _, need in held]
        draft.model.capacity([*spans, *taken], [*needs, *([1] * len(taken))], len(spots.spots))


def _lying_on(draft: Draft, spot: str, settled: Iterable[tuple[float, float]]) -> list[Span]:
    """What is poured and on one spot takes it once, until the last of it is gone.

    All of it is there by now, and what was before is over.
    """
    there = [Lying(begin, begin + slots) for begin, slots in _slotted(draft, joined(settled))]
    there += draft.lying[spot]
    if len(there) <= 1:
        return [draft.span_until(one.since, one.until) for one in there]
    far = draft.frame.reaches.far
    until = draft.model.between(-far, far + 1)
    for one in there:
        draft.model.at_least(until, one.until)
        for other in there:
            if one.stays is not None and other is not one:
                draft.model.at_least(one.goes_on, other.until, draft.flags(one.stays))
    return [draft.span_until(min(one.since for one in there), until)]


def _slotted(draft: Draft, spans: Iterable[tuple[float, float]]) -> Iterable[tuple[int, int]]:
    """Begin and length in slots of spans of seconds, on the safe side."""
    far = draft.frame.reaches.far
    for start, end in spans:
        begin, until = draft.grid.down(start), min(draft.grid.up(end), far)
        if until > begin:
            yield begin, until - begin


def _keep_dust_away(draft: Draft, settled: Settled) -> None:
    """No sanding while something wet is uncovered, none before a pour has settled.

    Two people never sand at once here; a plan may do without.
    """
    if not draft.sandings and not settled.sanding:
        return
    for lane in draft.lanes:
        _wet_spans(draft, lane)
    settle = draft.frame.means.shop.settle
    wet = _fixed(draft, joined((start - settle, end) for start, end in settled.wet))
    sanding = _fixed(draft, joined(settled.sanding))
    spans, sandings = [*draft.wet, *wet], [*draft.sandings, *sanding]
    most = len(spans) + 1
    needs = [1] * len(spans) + [most] * len(sandings)
    draft.model.capacity([*spans, *sandings], needs, most)


def _wet_spans(draft: Draft, lane: LaneUnknowns) -> None:
    """Note from when to when each coat must not get dust: from settling before it to cover."""
    far, settle = draft.frame.reaches.far, draft.grid.length(draft.frame.means.shop.settle)
    for coat in lane.coats:
        if not is_wet(coat.task):
            continue
        stage = cover_stage(coat.task.product)
        until = draft.model.between(0, far + 1)
        draft.model.at_least(until, coat.start + coat.slots(draft.grid.step))
        if stage is not None:
            draft.maker.waits_for(until, coat, not_before(stage))
        draft.wet.append(draft.span_until(coat.start - settle, until))


def _fixed(draft: Draft, spans: Iterable[tuple[float, float]]) -> list[Span]:
    return [draft.model.fixed_span(*one) for one in _slotted(draft, spans)]


# Goals


def _count_moved(draft: Draft) -> None:
    """Count the pours that start more than half an hour away from where they were."""
    allowed = MOVED_SECONDS // draft.grid.step
    for lane in draft.lanes:
        for coat in lane.coats if draft.frame.before else ():
            if coat.known_start is not None:
                continue
            for piece in lane.room.lane.chain.pieces:
                then = draft.frame.before.get((piece.key, coat.task.coat.key))
                if then is not None:
                    slot = draft.grid.down(then)
                    moved = draft.model.flag()
                    draft.model.inside(coat.start, [(slot - allowed, slot + allowed)], [~moved])
                    draft.goals.moved += moved


def _promise(draft: Draft) -> None:
    """Each order leaves when the last of its pieces in the model is packed."""
    orders: dict[str, tuple[Order, list[LaneUnknowns]]] = {}
    for lane in draft.lanes:
        order = lane.room.lane.chain.order
        if order is not None:
            orders.setdefault(order.key, (order, []))[1].append(lane)
    for order, lanes in orders.values():
        first = max(lane.room.first_packing for lane in lanes)
        last = min(lane.room.last_packing for lane in lanes)
        begins = draft.model.between(0, max(0, last))
        for lane in lanes:
            for pack in lane.packs:
                draft.model.at_least(begins, pack.start)
        late, lacking = draft.frame.promised(order).bind(draft.model, begins, first, last)
        draft.goals.late += late
        draft.goals.spare += lacking


def _coat(draft: Draft, coat: Coat) -> CoatUnknowns:
    return draft.lanes[coat[0]].coats[coat[1]]
