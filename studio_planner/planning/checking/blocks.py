"""Blocks and mixes: one mix is one block of one person, as long as its work."""

from __future__ import annotations

import itertools
import math
from collections import defaultdict
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_grams
from studio_planner.craft.products import ProductKind
from studio_planner.planning.checking.findings import Finding, Rule

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.planning.checking.evidence import Laid
    from studio_planner.planning.checking.reading import Reading

_GRID_SECONDS = 300
_WEIGHING_ERROR_G = 1e-6


def broken_blocks(reading: Reading) -> Iterator[Finding]:
    """What is wrong with mixes, the length of blocks, their grid and their numbers."""
    mixes: dict[int, list[Laid]] = defaultdict(list)
    for laid in reading.laid:
        mixes[laid.planned.mix].append(laid)
    for mix in mixes.values():
        yield from _broken_mix(reading, mix)
        yield from _broken_length(reading, [laid for laid in mix if not laid.planned.poured])
    yield from _off_the_grid(reading)
    yield from _off_their_pins(reading)
    yield from _broken_numbers(reading)


_SHARED: tuple[tuple[str, Callable[[Laid], object]], ...] = (
    ("product", lambda laid: laid.product.key),
    ("colours", lambda laid: laid.coat.colour_names),
    ("start", lambda laid: laid.planned.start),
    ("end", lambda laid: laid.planned.end),
    ("pair of hands", lambda laid: laid.planned.person),
)


def _broken_mix(reading: Reading, mix: list[Laid]) -> Iterator[Finding]:
    planned = [laid for laid in mix if not laid.planned.poured]
    for laid in planned[1:]:
        for noun, part in _SHARED:
            if part(laid) != part(planned[0]):
                sentence = f"shares mix {laid.planned.mix}, but not its {noun}"
                yield reading.about(Rule.MIX, laid, sentence)
    for laid in planned if len(planned) < len(mix) else ():
        sentence = f"shares mix {laid.planned.mix} with a coat that is poured already"
        yield reading.about(Rule.MIX, laid, sentence)
    room = min((_room(reading, laid) for laid in planned), default=0.0)
    grams = _grams(reading, planned)
    if len(planned) > 1 and grams > room + _WEIGHING_ERROR_G:
        sentence = (
            f"mix {planned[0].planned.mix} takes {grams:.0f} g, but only {room:g} g can be "
            "mixed at once"
        )
        yield reading.about(Rule.MIX, planned[0], sentence)


def _grams(reading: Reading, mix: list[Laid]) -> float:
    settings = reading.studio.settings
    return sum(coat_grams(laid.piece, laid.coat, laid.product, settings) for laid in mix)


def _room(reading: Reading, laid: Laid) -> float:
    """What can be spread in time, and of what heats itself what one cup holds [g]."""
    product = laid.product
    cup = math.inf
    if product.kind is ProductKind.TWO_PART:
        stays = reading.studio.settings.cup_loss_g * (len(laid.coat.colours) or 1)
        cup = max(1.0, product.cup_limit_g - stays)
    return min(product.mix_limit_g, cup)


def _broken_length(reading: Reading, mix: list[Laid]) -> Iterator[Finding]:
    if not mix:
        return
    room = _room(reading, mix[0])
    portions = max(1, math.ceil((_grams(reading, mix) - _WEIGHING_ERROR_G) / room))
    minutes = portions * max(laid.coat.setup_minutes for laid in mix)
    minutes += sum(laid.coat.piece_minutes * laid.piece.count for laid in mix)
    for laid in mix:
        length = laid.planned.end - laid.planned.start
        if length != timedelta(minutes=minutes):
            sentence = (
                f"its block is {length.total_seconds() / 60:g} min long, but the work takes "
                f"{minutes} min"
            )
            yield reading.about(Rule.BLOCK, laid, sentence)


def _off_the_grid(reading: Reading) -> Iterator[Finding]:
    for laid in reading.laid:
        if not laid.planned.poured and laid.start % _GRID_SECONDS:
            start = laid.planned.start.astimezone(reading.zone)
            sentence = f"starts {start:%H:%M:%S}, which is not on five minutes"
            yield reading.about(Rule.BLOCK, laid, sentence)


def _off_their_pins(reading: Reading) -> Iterator[Finding]:
    """Pours that the maker has put at another time, unless that has passed already."""
    wanted = {(pin.piece, pin.coat): pin.start for pin in reading.studio.pins}
    for laid in reading.laid:
        start = wanted.get((laid.piece.key, laid.coat.key))
        if start is None or laid.planned.poured or start < reading.plan.start:
            continue
        if laid.planned.start != start:
            yield reading.about(Rule.PINNED, laid, "does not start where it is pinned")


def _broken_numbers(reading: Reading) -> Iterator[Finding]:
    coats = reading.plan.coats
    numbers = sorted(coat.number for coat in coats)
    if numbers != list(range(1, len(coats) + 1)):
        yield reading.finding(
            Rule.NUMBER, None, None, None, f"the coats are not numbered 1 to {len(coats)}"
        )
    in_order = sorted((laid.planned for laid in reading.laid), key=lambda coat: coat.number)
    for one, other in itertools.pairwise(in_order):
        if other.start < one.start:
            yield _misnumbered(reading, one, other)


def _misnumbered(reading: Reading, one: PlannedCoat, other: PlannedCoat) -> Finding:
    sentence = f"is number {other.number}, but starts before number {one.number}"
    laid = next(laid for laid in reading.laid if laid.planned is other)
    return reading.about(Rule.NUMBER, laid, sentence)
