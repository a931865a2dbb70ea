"""Joints: the order of the stack, and how each coat meets the one below."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.craft.products import ProductKind
from studio_planner.planning.checking.evidence import SLACK_SECONDS, Laid, Lane
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.reading import readable
from studio_planner.planning.checking.words import room_between
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import datetime

    from studio_planner.craft.plans import Window
    from studio_planner.planning.checking.reading import Reading

_WINDOW_SECONDS = 60.0
"""How far a window in the plan may be wider than the exact one."""

_WISHED = {
    Joint.WET_IN_WET: {Joint.WET_IN_WET},
    Joint.IN_WINDOW: {Joint.IN_WINDOW},
    Joint.ON_DRY: {Joint.ON_DRY},
    Joint.SCUFFED: {Joint.IN_WINDOW, Joint.ON_DRY},
}
"""For each joint of a plan: what the maker must have asked for."""


def broken_joints(reading: Reading) -> Iterator[Finding]:
    """Coats out of order, and joints that do not hold."""
    for lane in reading.lanes.values():
        yield from _out_of_order(reading, lane)
        for laid in lane.laid:
            if not laid.planned.poured:
                yield from _broken_joint(reading, lane, laid)


def doubtful_joints(reading: Reading) -> Iterator[Finding]:
    """Warnings: joints that rely on a touch test."""
    for laid in reading.laid:
        window = laid.planned.window
        if not laid.planned.poured and window is not None and window.trust is Trust.TEST_FIRST:
            sentence = "the safe window is too short; touch-test the coat below before pouring"
            yield reading.about(Rule.TEST_FIRST, laid, sentence)


def _out_of_order(reading: Reading, lane: Lane) -> Iterator[Finding]:
    for one, other in zip(lane.laid, lane.laid[1:], strict=False):
        if not other.planned.poured and other.start < one.end:
            sentence = f"starts {reading.local(other.start)}, before the {one.name} is done at "
            yield reading.about(Rule.ORDER, other, sentence + reading.local(one.end))


def _broken_joint(reading: Reading, lane: Lane, laid: Laid) -> Iterator[Finding]:
    position = lane.piece.below(laid.index)
    joint, window = laid.planned.joint, laid.planned.window
    if joint in {Joint.BARE, Joint.SCUFFED} and window is not None:
        yield reading.about(Rule.WINDOW, laid, f"a joint {joint} has no window")
    if (position is None) != (joint is Joint.BARE):
        face = "a bare face" if position is None else "a coat below"
        yield reading.about(Rule.JOINT, laid, f"is planned {joint}, but there is {face}")
    elif position is not None:
        yield from _broken_on_coat(reading, lane, laid, position)


def _broken_on_coat(
    reading: Reading, lane: Lane, laid: Laid, position: int
) -> Iterator[Finding]:
    joint, wish = laid.planned.joint, laid.coat.joint
    if wish not in _WISHED[joint]:
        yield reading.about(Rule.JOINT, laid, f"is planned {joint}, but is meant {wish}")
    under = lane.piece.stack[position]
    if not _can_meet(laid, reading.studio.product(under.product).kind):
        sentence = f"is meant {wish} on the {lane.piece.coat_name(under.key)}, which cannot be"
        yield reading.about(Rule.JOINT, laid, sentence)
    below, sanded = lane.coat(position), reading.sanded(laid)
    if sanded is not None:
        yield from _broken_fact(reading, laid, sanded)
    elif below is None:
        sentence = f"lies on the {lane.piece.coat_name(lane.piece.stack[position].key)}"
        yield reading.about(Rule.JOINT, laid, f"{sentence}, which is not in the plan")
    elif joint is Joint.SCUFFED:
        yield from _broken_scuff(reading, lane, laid, below)
    else:
        yield from _broken_window(reading, lane, laid, below)


def _can_meet(laid: Laid, lower: ProductKind) -> bool:
    """Tell whether what a coat is made of can ever meet what is below, in the wished way."""
    mine, wish, mix = laid.product.kind, laid.coat.joint, ProductKind.TWO_PART
    if mine is ProductKind.LEAF:
        tacky = {ProductKind.SIZE: {Joint.IN_WINDOW, Joint.ON_DRY}, mix: {Joint.IN_WINDOW}}
        return wish in tacky.get(lower, ())
    if wish is Joint.WET_IN_WET:
        return mine is mix and lower is mix
    return wish is not Joint.ON_DRY or lower is not mix or mine is ProductKind.SIZE


def _broken_fact(reading: Reading, laid: Laid, sanded: datetime) -> Iterator[Finding]:
    """A joint that was scuffed already: it is planned so, not sanded again, and not dusty."""
    when = reading.local(sanded)
    if laid.planned.joint is not Joint.SCUFFED:
        sentence = f"was sanded for {when}, but is planned {laid.planned.joint}"
        yield reading.about(Rule.JOINT, laid, sentence)
    for step in reading.steps_of(laid.piece.key, StepKind.SAND, laid.coat.key):
        yield reading.on_step(Rule.JOINT, step, f"is sanded again, but was {when}")
    yield from _dust_on_joint(reading, laid, sanded)


def _broken_window(reading: Reading, lane: Lane, laid: Laid, below: Laid) -> Iterator[Finding]:
    window = laid.planned.window
    if window is None:
        yield reading.about(Rule.WINDOW, laid, "the plan does not say its window")
    trust = window.trust if window is not None else Trust.SAFE
    opens, closes, lacking = _LIMITS[laid.planned.joint](lane, laid, below, trust)
    if lacking:
        sentence = f"{below.product.name} has no {lacking} on its sheet"
        joint = laid.planned.joint
        yield reading.about(Rule.JOINT, laid, f"is planned {joint}, but {sentence}")
        return
    yield from _outside_window(reading, laid, below, opens, closes)
    if window is not None:
        yield from _misread_window(reading, laid, window, opens, closes)
    if trust is Trust.TEST_FIRST and not (below.coat.sandable or below.coat.test_first):
        sentence = (
            f"relies on a touch test, but the {below.name} below can't be sanded if it fails"
        )
        yield reading.about(Rule.JOINT, laid, sentence)


_Limits = tuple[float | None, float | None, str]
"""Opens (None: never), closes (None: never), and what the sheet lacks (empty: nothing)."""


def _wet_limits(lane: Lane, _: Laid, below: Laid, __: Trust) -> _Limits:
    if not lane.has(below.product, Stage.WORKING_TIME):
        return None, None, "working time"
    return below.start, lane.reached(below, Stage.WORKING_TIME, Edge.EARLY), ""


def _window_limits(lane: Lane, _: Laid, below: Laid, trust: Trust) -> _Limits:
    if not lane.has(below.product, Stage.RECOAT_OPENS):
        return None, None, "recoat opens"
    two_part = below.product.kind is ProductKind.TWO_PART
    if two_part and not lane.has(below.product, Stage.RECOAT_CLOSES):
        return None, None, "recoat closes"
    edge = None if trust is Trust.SAFE else Edge.LIKELY
    opens = lane.reached(below, Stage.RECOAT_OPENS, edge)
    return opens, lane.reached(below, Stage.RECOAT_CLOSES, edge), ""


def _dry_limits(lane: Lane, _: Laid, below: Laid, trust: Trust) -> _Limits:
    edge = None if trust is Trust.SAFE else Edge.LIKELY
    stages = (Stage.RECOAT_OPENS, Stage.TACK_FREE)
    stage = next((one for one in stages if lane.has(below.product, one)), None)
    if stage is None and not below.leaf:
        return None, None, "recoat opens or tack-free"
    opens = below.end if stage is None else lane.reached(below, stage, edge)
    return opens, lane.reached(below, Stage.RECOAT_CLOSES, edge), ""


_LIMITS: dict[Joint, Callable[[Lane, Laid, Laid, Trust], _Limits]] = {
    Joint.WET_IN_WET: _wet_limits,
    Joint.IN_WINDOW: _window_limits,
    Joint.ON_DRY: _dry_limits,
}


def _outside_window(
    reading: Reading, laid: Laid, below: Laid, opens: float | None, closes: float | None
) -> Iterator[Finding]:
    if opens is None:
        sentence = f"the {below.name} below never opens within this record"
        yield reading.about(Rule.JOINT, laid, sentence)
    elif laid.start < opens - SLACK_SECONDS:
        limit = f"the {below.name} below opens {reading.local(opens)} at the latest"
        sentence = f"starts {reading.local(laid.start)}, but {limit}"
        yield reading.about(Rule.JOINT, laid, sentence + _room(reading, below, opens))
    if closes is not None and laid.end > closes + SLACK_SECONDS:
        limit = f"the {below.name} below closes {reading.local(closes)} at the earliest"
        sentence = f"ends {reading.local(laid.end)}, but {limit}"
        yield reading.about(Rule.JOINT, laid, sentence + _room(reading, below, closes))


def _room(reading: Reading, below: Laid, end: float) -> str:
    history = reading.clocks.history(below.place.key)
    return f" ({room_between(reading.studio.units, history, below.start, end)})"


def _misread_window(
    reading: Reading, laid: Laid, window: Window, opens: float | None, closes: float | None
) -> Iterator[Finding]:
    early = timedelta(seconds=_WINDOW_SECONDS)
    if not readable(window.opens) or not (window.closes is None or readable(window.closes)):
        yield reading.about(Rule.WINDOW, laid, "its window has times without a zone")
        return
    if opens is not None and (window.opens + early).timestamp() < opens:
        sentence = f"the plan opens its window {reading.local(window.opens)}, but it opens "
        yield reading.about(Rule.WINDOW, laid, sentence + reading.local(opens))
    if closes is None:
        return
    if window.closes is None or (window.closes - early).timestamp() > closes:
        sentence = f"the plan closes its window {reading.local(window.closes)}, but it closes "
        yield reading.about(Rule.WINDOW, laid, sentence + reading.local(closes))


def _broken_scuff(reading: Reading, lane: Lane, laid: Laid, below: Laid) -> Iterator[Finding]:
    if not below.coat.sandable:
        sentence = f"is scuffed, but the {below.name} can't be sanded"
        yield reading.about(Rule.JOINT, laid, sentence)
    if laid.leaf:
        yield reading.about(Rule.JOINT, laid, "is scuffed, but leaf finds no tack on that")
    sandings = reading.steps_of(laid.piece.key, StepKind.SAND, laid.coat.key)
    if len(sandings) != 1:
        sentence = f"is scuffed, so it needs one sanding before it, not {len(sandings)}"
        yield reading.about(Rule.JOINT, laid, sentence)
    sandable = lane.reached(below, Stage.SANDABLE)
    for step in sandings:
        if sandable is None or step.start.timestamp() < sandable - SLACK_SECONDS:
            sentence = (
                f"is sanded {reading.local(step.start)}, but the {below.name} can be sanded "
                f"from {reading.local(sandable)}"
            )
            yield reading.on_step(Rule.JOINT, step, sentence)
        yield from _dust_on_joint(reading, laid, step.end)


def _dust_on_joint(reading: Reading, laid: Laid, sanded: datetime) -> Iterator[Finding]:
    settled = sanded + timedelta(minutes=reading.studio.settings.settle_minutes)
    if laid.planned.start < settled:
        sentence = f"starts {reading.local(laid.start)}, but dust from sanding settles till "
        yield reading.about(Rule.JOINT, laid, sentence + reading.local(settled))
