"""What was written down and can hardly be right, or bodes ill: said with the entry, and kept.

The maker may always write down what really happened; nothing here refuses an entry. How fast a
room warms and what a touch test rules out is common practice.
"""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind
from studio_planner.craft.standing import life_of
from studio_planner.craft.stock import LotPart
from studio_planner.craft.tongue import listed
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.known import coat_name, piece_name, product_name
from studio_planner.services.log_book.mix_faults import fault_and_remedy
from studio_planner.services.questions.sentences import Degrees, Moment, said

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.places import Place, Reading
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Sentence

LEAP_CELSIUS = 5.0
"""What a thermometer that is carried or breathed at may jump by (common practice)."""

LEAP_PER_HOUR = 15.0
"""How fast a small room or box warms at most, in °C an hour (common practice)."""

_RISING = (Touch.STRING, Touch.TACK, Touch.NO_MARK, Touch.THUMBNAIL)
"""Touch tests in the order in which a film passes them."""

_LEAVING = {EntryKind.PACKED, EntryKind.SHIPPED}
_MOST_PIECES = 3


def doubts(before: Studio, after: Studio) -> tuple[Sentence, ...]:
    """What is hard to believe of what was written down between the two, with what to do.

    It looks at entries, weighings and single readings that are new and stand; none where all
    of it can well be so.
    """
    known = {entry.number for entry in before.log}
    new = [entry for entry in after.standing if entry.number not in known]
    numbers = {entry.number for entry in new}
    mixes = [mix for mix in after.mixes if mix.entry in numbers]
    return (
        *(one for mix in mixes for one in _of_mix(after, mix)),
        *_never_poured(after, [entry for entry in new if entry.kind in _LEAVING]),
        *(one for entry in new for one in _against_other_touches(after, entry)),
        *_of_readings(before, after),
    )


def _of_mix(studio: Studio, mix: WeighedMix) -> Iterable[Sentence]:
    yield from fault_and_remedy(studio, mix)
    for text, part in ((mix.lot_a, LotPart.A), (mix.lot_b, LotPart.B)):
        labels = [
            (lot.key.casefold(), lot.label.casefold(), lot.label)
            for lot in studio.lots
            if lot.product == mix.product and lot.part in {part, LotPart.WHOLE}
        ]
        wanted = text.strip().casefold()
        # Who keeps no bottles of it here writes down what the label says.
        if not wanted or not labels or any(wanted in {key, name} for key, name, _ in labels):
            continue
        yield said(
            "No bottle of {product} has the lot {lot}; there is {known}. Correct entry "
            "{number}, or enter that bottle, so that stock and traces count it.",
            product=product_name(studio, mix.product),
            lot=text.strip(),
            known=listed(label for _, _, label in labels),
            number=mix.entry,
        )


def _never_poured(studio: Studio, leaving: Iterable[LogEntry]) -> Iterable[Sentence]:
    stacks = {piece.key: piece.stack for piece in studio.pieces}
    poured = studio.poured_keys
    bare = []
    for entry in leaving:
        missing = [
            coat_name(studio, entry.piece, coat.key)
            for coat in stacks.get(entry.piece, ())
            if (entry.piece, coat.key) not in poured
        ]
        if missing:
            bare.append((entry, missing))
    for entry, missing in bare[:_MOST_PIECES]:
        yield said(
            "{piece}: {what}, but no pour of {coats} is written down. Write down what was "
            "poured, with its time, or withdraw entry {number}.",
            piece=piece_name(studio, entry.piece),
            what=kind_word(entry.kind),
            coats=listed(missing),
            number=entry.number,
        )
    if len(bare) > _MOST_PIECES:
        text = "And so it is with {count} more of what went with it."
        yield said(text, count=len(bare) - _MOST_PIECES)


def _against_other_touches(studio: Studio, new: LogEntry) -> Iterable[Sentence]:
    if new.kind is not EntryKind.TOUCHED:
        return
    for other in life_of(studio, new.piece):
        alike = other.kind is EntryKind.TOUCHED and other.coat == new.coat
        if not alike or not (_rules_out(new, other) or _rules_out(other, new)):
            continue
        yield said(
            "{coat}: {new} does not go with {old} of {when} (entry {entry}), since a film does "
            "not become wet again. Correct whichever is wrong.",
            coat=f"{piece_name(studio, new.piece)}, {coat_name(studio, new.piece, new.coat)}",
            new=_touch_words(new),
            old=_touch_words(other),
            when=Moment(other.at),
            entry=other.number,
        )
        return


def _rules_out(passed: LogEntry, asked: LogEntry) -> bool:
    """Whether one test found a film further than another one says it was then or later.

    A film without strings may still be a wet one, so that answer rules out nothing.
    """
    first, second = passed.touch, asked.touch
    if first is None or second is None or first is Touch.STRING or asked.at < passed.at:
        return False
    answers = (passed.verdict, asked.verdict)
    return answers == (Verdict.ALREADY, Verdict.NOT_YET) and (
        _RISING.index(second) <= _RISING.index(first)
    )


def _touch_words(entry: LogEntry) -> str:
    touch = "" if entry.touch is None else kind_word(entry.touch)
    verdict = "" if entry.verdict is None else kind_word(entry.verdict)
    return f"{touch}, {verdict}"


def _of_readings(before: Studio, after: Studio) -> Iterable[Sentence]:
    earlier = {place.key: place.readings for place in before.places}
    for place in after.places:
        then = earlier.get(place.key, ())
        # A logger's file has its own preview; here it is one reading that somebody typed.
        if place.readings is then or not -1 < len(place.readings) - len(then) <= 1:
            continue
        known = set(then)
        new = [one for one in place.readings if one not in known]
        if len(new) == 1:
            yield from _leaps(place, new[0])


def _leaps(place: Place, new: Reading) -> Iterable[Sentence]:
    index = place.readings.index(new)
    for other in place.readings[max(0, index - 1) : index + 2]:
        hours = abs(other.when - new.when) / timedelta(hours=1)
        if abs(other.celsius - new.celsius) <= LEAP_CELSIUS + LEAP_PER_HOUR * hours:
            continue
        yield said(
            "{place}: {now} is far from the {was} of {when}; no room changes so fast. If it "
            "was mistyped, write the right one down for the same minute; else look where the "
            "thermometer stands.",
            place=place.name,
            now=Degrees(new.celsius),
            was=Degrees(other.celsius),
            when=Moment(other.when),
        )
        return
