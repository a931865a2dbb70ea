"""What the log is told of a running mix: its portions once A has met B, its colours, its pours.

A portion is written down as soon as its ratio is settled, so that its batch number can be
written on cups and under pieces. What is weighed into its colours comes to the same mix.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.pours import with_pour
from studio_planner.services.log_book.weighings import WeighingTold, next_batch, weighed
from studio_planner.services.mix_run.stand import Do

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.mixes import WeighedColour, WeighedMix
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import PortionRun, Stand
    from studio_planner.services.mix_run.taps import RunningMix

_SHORTEST = timedelta(minutes=1)
"""No pour takes less; two taps in the same minute are one minute apart."""


_COLOURED = {Do.POUR, Do.WRITE, Do.WRITTEN}
"""From these steps on everything is weighed."""


_NOTHING = Change("", lambda studio: studio)


@dataclass(frozen=True, slots=True, kw_only=True)
class ToWrite:
    """One change that the log lacks of a running mix.

    `batches` are those of the mix after it.
    """

    change: Change
    batches: tuple[int, ...]


def is_poured(studio: Studio, running: RunningMix) -> bool:
    """Whether every coat of a mix is written down as poured."""
    return all((coat.piece, coat.coat) in studio.poured_keys for coat in running.coats)


def batch_of(studio: Studio, running: RunningMix, part: int) -> WeighedMix | None:
    """The mix in the log that a portion (from 1) is; None where the log has none."""
    if part > len(running.batches):
        return None
    batch = running.batches[part - 1]
    return next((mix for mix in studio.standing_mixes if mix.batch == batch), None)


def to_write(
    studio: Studio, running: RunningMix, stand: Stand, now: datetime
) -> ToWrite | None:
    """The next thing that the log lacks of a running mix; None where it has everything."""
    for part in range(1, stand.part + 1):
        missing = _portion(studio, running, stand, part, now)
        if missing is not None:
            return missing
    if stand.step.do is Do.WRITTEN and not is_poured(studio, running):
        change = _pours(studio, running, stand, now)
        return ToWrite(change=change, batches=running.batches)
    return None


def thrown_away(
    studio: Studio, running: RunningMix, stand: Stand, now: datetime
) -> tuple[Change, ...]:
    """What the log still has to be told of a mix that goes nowhere: what was used up of it."""
    found = []
    for part, portion in enumerate(stand.portions, start=1):
        if portion.b_grams is not None and batch_of(studio, running, part) is None:
            words = translate("weigh", "thrown away")
            found.append(weighed(studio, _told(running, portion, words), now))
    return tuple(found)


def without_last(studio: Studio, running: RunningMix, stand: Stand) -> Change | None:
    """What the log says too much after a tap was taken back: colours that are weighed anew."""
    for part, portion in enumerate(stand.portions, start=1):
        mix = batch_of(studio, running, part)
        if mix is not None and mix.colourants and not portion.colours:
            return _with_colourants(mix.batch, ())
    return None


def settled_portions(stand: Stand) -> int:
    """How many portions are to be in the log."""
    return sum(_is_settled(portion) for portion in stand.portions)


def _is_settled(portion: PortionRun) -> bool:
    if not portion.mixed:
        return portion.a_grams is not None
    return portion.settled and portion.b_grams is not None


def _portion(
    studio: Studio, running: RunningMix, stand: Stand, part: int, now: datetime
) -> ToWrite | None:
    portion = stand.portions[part - 1]
    if not _is_settled(portion):
        return None
    mix = batch_of(studio, running, part)
    if mix is None:
        # A portion that somebody has taken out of the log gets a new number in its place.
        before, after = running.batches[: part - 1], running.batches[part:]
        told = _told(running, portion)
        known = _known(studio, told)
        change = weighed(studio, told, now) if known is None else _NOTHING
        batch = next_batch(studio) if known is None else known
        return ToWrite(change=change, batches=(*before, batch, *after))
    coloured = portion is not stand.now or stand.step.do in _COLOURED
    if coloured and portion.colourants != mix.colourants:
        change = _with_colourants(mix.batch, portion.colourants)
        return ToWrite(change=change, batches=running.batches)
    return None


def _known(studio: Studio, told: WeighingTold) -> int | None:
    """The batch under which a portion is in the log, though nobody noted its number.

    That is so when the desk was killed right after the log was told.
    """
    for mix in studio.standing_mixes:
        coats = tuple((one.piece, one.coat) for one in mix.coats)
        same = (mix.product, mix.at, coats) == (told.product, told.at, told.coats)
        if same and (mix.a_grams, mix.b_grams) == (told.a_grams, told.b_grams):
            return mix.batch
    return None


def _told(running: RunningMix, portion: PortionRun, words: str = "") -> WeighingTold:
    since = portion.since or portion.a_at or running.begun
    return WeighingTold(
        product=portion.portion.product.key,
        at=since,
        a_grams=portion.a_grams or 0.0,
        b_grams=portion.b_grams or 0.0,
        colourants=portion.colourants,
        lot_a=running.lot_a,
        lot_b=running.lot_b if portion.mixed else "",
        coats=tuple((coat.piece, coat.coat) for coat in running.coats),
        words=words,
    )


def _with_colourants(batch: int, colourants: tuple[WeighedColour, ...]) -> Change:
    words = translate("weigh", "Colours of batch {batch}").format(batch=batch)

    def make(then: Studio) -> Studio:
        standing = {id(mix) for mix in then.standing_mixes if mix.batch == batch}
        return replace(
            then,
            mixes=tuple(
                replace(mix, colourants=colourants) if id(mix) in standing else mix
                for mix in then.mixes
            ),
        )

    return Change(words, make)


def _pours(studio: Studio, running: RunningMix, stand: Stand, now: datetime) -> Change:
    start = stand.started or running.begun
    end = max(stand.poured_at or now, start + _SHORTEST)
    names = dict.fromkeys(studio.piece(coat.piece).name for coat in running.coats)
    words = translate("weigh", "Poured: {pieces}").format(pieces=", ".join(names))
    return Change(
        words,
        lambda then: with_pour(then, running.coats, start, end, written=max(now, end)),
    )
