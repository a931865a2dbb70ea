"""The rules between lanes: hands, spots, dust, shared mixes; and the goals over all."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.exact.choices import is_wet
from studio_planner.planning.exact.draft import Busy, Lying
from studio_planner.planning.exact.lane_rules import LaneRules
from studio_planner.planning.exact.led_mixes import led_mixes
from studio_planner.planning.exact.mixes_in_turn import mixes_in_turn
from studio_planner.planning.exact.reaches import not_before
from studio_planner.planning.problem import cover_stage
from studio_planner.planning.spans import joined
from studio_planner.planning.worth import MOVED_SECONDS

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.planning.exact.draft import Draft, LaneUnknowns
    from studio_planner.planning.exact.lanes import Settled
    from studio_planner.planning.exact.rooms import LaneRoom
    from studio_planner.planning.exact.sharing import Sharing
    from studio_planner.planning.solver import Span


def drafted(
    draft: Draft,
    rooms: Sequence[LaneRoom],
    sharing: Sharing,
    settled: Settled,
    most_mixes: int | None = None,
) -> Draft:
    """Build the whole model of some lanes among what is settled.

    With `most_mixes` no more are made; then mixes are unknowns of their own.
    """
    for room in rooms:
        LaneRules(draft, room).add()
    if most_mixes is None:
        draft.goals.mixes = led_mixes(draft, sharing)
    else:
        draft.goals.mixes = mixes_in_turn(draft, sharing, most_mixes)
    _limit_hands(draft, settled)
    _limit_spots(draft, settled)
    _keep_dust_away(draft, settled)
    _count_moved(draft)
    _promise(draft)
    return draft


# Hands and spots


def _limit_hands(draft: Draft, settled: Settled) -> None:
    for hands, works in draft.busy.items():
        taken = [
            Busy(draft.model.fixed_span(begin, slots), begin, begin + slots)
            for person in hands.people
            for begin, slots in _slotted(draft, settled.hands.get(person, []))
        ]
        for meeting in _meeting([*works, *taken]):
            spans = [work.span for work in meeting]
            if len(hands.people) == 1:
                draft.model.one_at_a_time(spans)
            else:
                draft.model.capacity(spans, [1] * len(spans), len(hands.people))


def _meeting(works: Iterable[Busy]) -> Iterator[list[Busy]]:
    """Work in groups that never meet: small ones are searched in half the time."""
    group: list[Busy] = []
    until = 0
    for work in sorted(works, key=lambda one: one.first):
        if group and work.first >= until:
            yield group
            group = []
        until = max(until, work.until) if group else work.until
        group.append(work)
    if group:
        yield group


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
        last = max(lane.room.last_packing for lane in lanes)
        begins = draft.model.between(0, max(0, last))
        for lane in lanes:
            for pack in lane.packs:
                draft.model.at_least(begins, pack.start)
        late, lacking = draft.frame.promised(order).bind(draft.model, begins, first, last)
        draft.goals.late += late
        draft.goals.spare += lacking
