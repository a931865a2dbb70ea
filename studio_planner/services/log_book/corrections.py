"""Correcting what was written down: a new entry takes the place of the old one, which stays."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry, Rulebook
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.standing import bare_since, life_of
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.entries import (
    NEW,
    entry_of,
    logged,
    told_of_all_pours,
    with_entries,
)
from studio_planner.services.log_book.known import coat_name, piece_name
from studio_planner.services.log_book.pours import PourTold, check_pour
from studio_planner.services.log_book.steps import check_step
from studio_planner.services.log_book.times import require_past
from studio_planner.services.log_book.weighings import with_mixes_again, with_weighing

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.log import Poured
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.studio import Studio
    from studio_planner.services.log_book.weighings import WeighingTold


def corrected(studio: Studio, number: int, right: LogEntry, now: datetime) -> Change:
    """Let an entry take the place of the one of that `number`, written at `now` (aware).

    `right` is what it should have been, whatever its own number. The kind stays; a weighing is
    corrected by `weighing_corrected`. What is poured follows a corrected pour. Making it raises
    InvalidEntry in sentences, as for what is written anew.
    """
    said = _words(translate("log", "Correct: {what}"), studio, number)
    return Change(said, lambda then: _with_corrected(then, number, right, now))


def pour_corrected(studio: Studio, pour: Poured, now: datetime, words: str = "") -> Change:
    """Let a pour be as told; the entry of that coat that stands now is corrected.

    It serves for pours that are older than the log too: what was known of them is written down
    as it was before it is corrected.
    """
    said = translate("log", "Correct the pour of {coat}").format(
        coat=f"{piece_name(studio, pour.piece)}, {coat_name(studio, pour.piece, pour.coat)}"
    )

    def make(then: Studio) -> Studio:
        then = told_of_all_pours(then, pour.piece, now)
        old = _pour_of(then, pour.piece, pour.coat)
        right = replace(
            old,
            at=pour.start,
            end=pour.end,
            spot=pour.spot,
            joint=pour.joint,
            batch=pour.batch,
            words=words or old.words,
        )
        return _with_corrected(then, old.number, right, now)

    return Change(said, make)


def weighing_corrected(
    studio: Studio, mix: WeighedMix, told: WeighingTold, now: datetime
) -> Change:
    """Let a mix have been weighed as told; it keeps its batch number.

    Making it raises InvalidEntry in sentences, also where nothing is different.
    """
    said = _words(translate("log", "Correct: {what}"), studio, mix.entry)

    def make(then: Studio) -> Studio:
        old = _the_standing(then, mix.entry)
        right = replace(told, words=told.words or old.words)
        after = with_weighing(then, right, now, mix)
        same = replace(after.mixes[-1], entry=mix.entry) == mix
        if same and right.words == old.words:
            raise _unchanged(mix.entry)
        return after

    return Change(said, make)


def withdrawn(studio: Studio, number: int, now: datetime, words: str = "") -> Change:
    """Say that what an entry tells never happened; it stays to be read.

    Making it raises InvalidEntry for a pour on which another coat was poured.
    """
    said = _words(translate("log", "Withdraw: {what}"), studio, number)

    def make(then: Studio) -> Studio:
        old = _the_standing(then, number)
        entry = LogEntry(
            number=NEW,
            kind=EntryKind.WITHDRAWN,
            at=now,
            written=now,
            words=words,
            corrects=number,
        )
        if old.kind is EntryKind.WEIGHED:
            return _without_mix(then, entry, old)
        return logged(then, now, [entry], of=_whose_pours(old))

    return Change(said, make)


def never_happened(studio: Studio, entry: LogEntry, now: datetime) -> Change:
    """Say that an entry tells of what never happened; it may be a pour older than the log.

    Making it raises InvalidEntry as for `withdrawn`.
    """
    if entry.number != NEW:
        return withdrawn(studio, entry.number, now)
    said = translate("log", "Withdraw: {what}").format(
        what=f"{piece_name(studio, entry.piece)}, {kind_word(entry.kind)}"
    )

    def make(then: Studio) -> Studio:
        then = told_of_all_pours(then, entry.piece, now)
        old = _pour_of(then, entry.piece, entry.coat)
        return withdrawn(then, old.number, now).make(then)

    return Change(said, make)


def _with_corrected(studio: Studio, number: int, right: LogEntry, now: datetime) -> Studio:
    old = _the_standing(studio, number)
    new = replace(right, number=NEW, written=now, corrects=number)
    if old.kind is not new.kind:
        raise _refused(
            translate("rules", "entry {number} tells of something else."), old.number
        )
    if new == replace(old, number=NEW, written=now, corrects=number):
        raise _unchanged(number)
    if old.piece and old not in life_of(studio, old.piece):
        _check_former(studio, old, new, now)
    else:
        # As if the old one had never been written: it does not stand in its own way.
        without = _without(studio, old, now)
        check = _check_pour if new.kind is EntryKind.POURED else check_step
        check(without, new, now)
    return logged(studio, now, [new], of={*_whose_pours(old), *_whose_pours(new)})


def _check_former(studio: Studio, old: LogEntry, new: LogEntry, now: datetime) -> None:
    """What happened before the piece was a bare blank again stays before that."""
    rules = Rulebook(piece_name(studio, old.piece))
    require_past(rules, new.at, now)
    since = bare_since(studio, old.piece)
    rules.require(
        old.kind is EntryKind.STRIPPED
        or since is None
        or max(new.at, new.end or new.at) <= since,
        "at",
        translate("log", "it was stripped before that; keep it before, or correct that first."),
    )
    rules.require(
        new.piece == old.piece,
        "piece",
        translate("log", "it was stripped since, so this stays with it."),
    )
    rules.close()


def _without(studio: Studio, old: LogEntry, now: datetime) -> Studio:
    taken = LogEntry(
        number=NEW, kind=EntryKind.WITHDRAWN, at=now, written=now, corrects=old.number
    )
    after = with_entries(studio, [taken])
    if old.kind is not EntryKind.POURED:
        return after
    poured = tuple(
        pour for pour in after.poured if (pour.piece, pour.coat) != (old.piece, old.coat)
    )
    # Coats above it would lie on nothing for a moment; they are checked with the whole.
    above = tuple(pour for pour in poured if pour.piece != old.piece or pour.start < old.at)
    return replace(after, poured=above)


def _check_pour(studio: Studio, entry: LogEntry, now: datetime) -> None:
    told = PourTold(
        piece=entry.piece,
        coat=entry.coat,
        start=entry.at,
        end=entry.end or entry.at,
        spot=entry.spot,
        joint=entry.joint,
        batch=entry.batch,
    )
    check_pour(studio, told, now)


def _without_mix(studio: Studio, entry: LogEntry, old: LogEntry) -> Studio:
    batch = old.batch
    named = [one for one in studio.standing if one.batch == batch and one is not old]
    if named:
        numbers = ", ".join(str(one.number) for one in named)
        text = translate("log", "pours name its mix; correct entry {number} first.")
        raise InvalidEntry(
            translate("nouns", "log"), [BrokenRule("batch", text.format(number=numbers))]
        )
    poured = tuple(
        replace(pour, batch=None) if pour.batch == batch else pour for pour in studio.poured
    )
    return with_mixes_again(with_entries(replace(studio, poured=poured), [entry]))


def _whose_pours(entry: LogEntry) -> set[str]:
    return {entry.piece} if entry.kind in {EntryKind.POURED, EntryKind.STRIPPED} else set()


def _pour_of(studio: Studio, piece: str, coat: str) -> LogEntry:
    for entry in reversed(life_of(studio, piece)):
        if entry.kind is EntryKind.POURED and entry.coat == coat:
            return entry
    text = translate("log", "write down the pour of {coat} first.").format(coat=coat)
    raise InvalidEntry(translate("nouns", "log"), [BrokenRule("coat", text)])


def _the_standing(studio: Studio, number: int) -> LogEntry:
    """The entry of that number; InvalidEntry when there is none or it stands no more."""
    entry = entry_of(studio, number)
    if entry is None:
        raise _refused(translate("log", "there is no entry {number} in the log."), number)
    if entry not in studio.standing:
        raise _stands_no_more(studio, entry)
    return entry


def _stands_no_more(studio: Studio, last: LogEntry) -> InvalidEntry:
    number, later = last.number, {entry.corrects: entry for entry in studio.log}
    while last.number in later:
        last = later[last.number]
    text = (
        translate("log", "entry {last} says that it never happened; write anew what did.")
        if last.kind is EntryKind.WITHDRAWN
        else translate("log", "entry {number} was corrected already; correct entry {last}.")
    )
    return _refused(text, number, last=last.number)


def _refused(text: str, number: int, **facts: int) -> InvalidEntry:
    said = text.format(number=number, **facts)
    return InvalidEntry(translate("nouns", "log"), [BrokenRule("corrects", said)])


def _unchanged(number: int) -> InvalidEntry:
    text = translate("log", "nothing is different from entry {number}; change what was wrong.")
    return _refused(text, number)


def _words(text: str, studio: Studio, number: int) -> str:
    entry = entry_of(studio, number)
    if entry is None:
        return text.format(what=number)
    about = piece_name(studio, entry.piece) if entry.piece else f"{entry.batch}"
    return text.format(what=f"{about}, {kind_word(entry.kind)}")
