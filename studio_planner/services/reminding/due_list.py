"""The list of what is due, in words: what to do, until when it helps, when to tell it again."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.reminders import Urgency
from studio_planner.craft.tongue import translate
from studio_planner.services.reminding.bundles import was_missed
from studio_planner.services.reminding.quiet import QuietHours
from studio_planner.services.reminding.words import away_headline, details, headline

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence
    from datetime import datetime

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.craft.reminders import Reminder
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Voice
    from studio_planner.services.reminding.studio_reminders import StudioReminders

MOST_ITEMS = 20
"""As many are put into words; the others come up as these are answered."""

_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class DueItem:
    """One thing on the list; the pieces of one mix are one thing.

    `uids` are the names of its reminders. `urgent` says that it can't be saved later and still
    can now; `saved` that it still helps to act. `later` is the moment at which it would be told
    again, None where none would help, and `later_words` say so. Of `piece`, `coat`, `order` and
    `place` those are set that it is about.
    """

    uids: tuple[str, ...]
    title: str
    lines: tuple[str, ...]
    missed: bool
    urgent: bool
    saved: bool
    hours_left: float | None
    later: datetime | None
    later_words: str
    put_off: str
    piece: str = ""
    coat: str = ""
    order: str = ""
    place: str = ""

    @property
    def uid(self) -> str:
        """The name that tells it from all others on the list."""
        return self.uids[0]

    @property
    def spoken(self) -> str:
        """All of it for a screen reader."""
        return " ".join((f"{self.title}.", *self.lines, self.put_off)).strip()


@dataclass(frozen=True, slots=True, kw_only=True)
class DueList:
    """What is due at a moment, the most pressing first.

    `items` are the first MOST_ITEMS of `count`; of all of them `urgent` can't be saved later
    and for `too_late` nothing can be done any more. `missed_words` stand over what was missed;
    `next_words` tell what comes next, empty where nothing does; `tonight` what rings in the
    quiet hours of the next day and what waits. `taken_off` are the names of what was taken off
    the list last and can be put back, and `taken_off_words` say what that is.
    """

    items: tuple[DueItem, ...] = ()
    count: int = 0
    urgent: int = 0
    too_late: int = 0
    missed_words: str = ""
    next_words: str = ""
    tonight: tuple[str, ...] = ()
    taken_off: tuple[str, ...] = ()
    taken_off_words: str = ""

    def without(self, uids: Iterable[str]) -> DueList:
        """The list without some of it, as long as their answers are being written down."""
        gone = set(uids)
        items = tuple(item for item in self.items if not gone.issuperset(item.uids))
        less = [item for item in self.items if item not in items]
        return replace(
            self,
            items=items,
            count=self.count - len(less),
            urgent=self.urgent - sum(item.urgent for item in less),
            too_late=self.too_late - sum(not item.saved for item in less),
            missed_words=self.missed_words if any(one.missed for one in items) else "",
        )


def due_list(
    reminders: StudioReminders, rows: Iterable[DueRow], voice: Voice, now: datetime
) -> DueList:
    """Put what is due at `now` (aware) into words; `rows` are in the order of the list."""
    rows, studio = tuple(rows), reminders.studio
    groups: dict[tuple[object, ...], list[DueRow]] = {}
    for row in rows:
        groups.setdefault(_group(row, now), []).append(row)
    shown = tuple(groups.values())[:MOST_ITEMS]
    items = tuple(_item(reminders, studio, group, voice, now) for group in shown)
    firsts = [group[0].reminder for group in groups.values()]
    coming, gone = reminders.coming(), reminders.taken_off()
    missed = [row.reminder for row in rows if was_missed(row, now)]
    return DueList(
        items=items,
        count=len(firsts),
        urgent=sum(_is_urgent(one, now) for one in firsts),
        too_late=sum(not one.can_be_saved(now) for one in firsts),
        missed_words=away_headline(missed, now) if missed else "",
        next_words=_next_words(studio, coming, voice),
        tonight=tuple(_tonight(studio, coming, voice, now)),
        taken_off=tuple(row.uid for row in gone),
        taken_off_words=_taken_off_words(studio, gone),
    )


def _taken_off_words(studio: Studio, gone: Sequence[DueRow]) -> str:
    """Say what it is about: one thing by its name, several things by how many they are."""
    reminders = sorted((row.reminder for row in gone), key=lambda one: one.due)
    if len({(one.piece, one.coat, one.order, one.place) for one in reminders}) == 1:
        return headline(studio, reminders[-1:])
    if not reminders:
        return ""
    return translate("due", "{count} reminders").format(count=len(reminders))


def _group(row: DueRow, now: datetime) -> tuple[object, ...]:
    """What is told, answered and over together is one thing on the list."""
    one = row.reminder
    if not one.together:
        return (one.uid,)
    missed = was_missed(row, now)
    return (one.kind, one.together, one.saved_until, one.urgency, row.rings_at, missed)


def _is_urgent(reminder: Reminder, now: datetime) -> bool:
    return reminder.urgency is Urgency.LOST_LATER and reminder.can_be_saved(now)


def _item(
    reminders: StudioReminders,
    studio: Studio,
    rows: Sequence[DueRow],
    voice: Voice,
    now: datetime,
) -> DueItem:
    row, reminder = rows[0], rows[0].reminder
    later = reminders.snooze_until(row)
    saved = reminder.can_be_saved(now)
    until = reminder.saved_until
    return DueItem(
        uids=tuple(one.uid for one in rows),
        title=headline(studio, [one.reminder for one in rows]),
        lines=details(reminder, voice, now),
        missed=was_missed(row, now),
        urgent=_is_urgent(reminder, now),
        saved=saved,
        hours_left=None if until is None else (until - now).total_seconds() / 3600.0,
        later=later,
        later_words=_later_words(row, later, voice, now),
        put_off=_put_off(row, voice),
        piece=reminder.piece,
        coat=reminder.coat,
        order=reminder.order,
        place=reminder.place,
    )


def _later_words(row: DueRow, later: datetime | None, voice: Voice, now: datetime) -> str:
    until = row.reminder.saved_until
    if later is None:
        return translate("due", "No later moment would help.")
    if until is None or until <= now:
        return translate("due", "Later: {later}.").format(later=voice.moment(later))
    return translate("due", "Later: {later}; it helps until {until}.").format(
        later=voice.moment(later), until=voice.moment(until)
    )


def _put_off(row: DueRow, voice: Voice) -> str:
    if row.rings_at is None:
        return ""
    said = (
        translate("due", "The plan has moved it: told again {when}.")
        if row.rings_at == row.reminder.due
        else translate("due", "Put off: told again {when}.")
    )
    return said.format(when=voice.moment(row.rings_at))


def _next_words(studio: Studio, coming: Sequence[DueRow], voice: Voice) -> str:
    following = next(iter(coming), None)
    if following is None or following.rings_at is None:
        return ""
    return translate("due", "Next: {what}, {when}.").format(
        what=headline(studio, [following.reminder]), when=voice.moment(following.rings_at)
    )


def _tonight(
    studio: Studio, coming: Iterable[DueRow], voice: Voice, now: datetime
) -> Iterator[str]:
    """What rings in the quiet hours within a day, and what waits for their end."""
    quiet = QuietHours(studio.reminding, studio.time_zone, studio.people)
    soon = [r.reminder for r in coming if r.rings_at is not None and r.rings_at - now < _DAY]
    for one in soon:
        what = headline(studio, [one])
        if quiet.around(one.due) is not None:
            yield translate("due", "Rings all the same: {what}, {when}.").format(
                what=what, when=voice.moment(one.due)
            )
        elif one.was_moved:
            yield translate("due", "Waits until {when}: {what}.").format(
                what=what, when=voice.moment(one.due)
            )
