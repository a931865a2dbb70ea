"""Notices: what is shown for reminders that are told together, and the buttons on it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.reminders import Means, Reminder
from studio_planner.craft.tongue import translate
from studio_planner.services.ports import Button, Notice
from studio_planner.services.reminding.snoozing import snooze_until
from studio_planner.services.reminding.words import (
    away_headline,
    details,
    headline,
    put_off_headline,
)

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Voice
    from studio_planner.services.reminding.bundles import Bundle

DONE, SNOOZE, OPEN = "done", "snooze", "open"
"""The keys of the buttons."""

_MOST_LINES = 6


def notice_of(
    studio: Studio, bundle: Bundle, voice: Voice, now: datetime, *, perhaps_shown: bool
) -> Notice:
    """Put a bundle into words; with `perhaps_shown` it says that it was told before, maybe."""
    reminders = [row.reminder for row in bundle.rows]
    lines = _lines(studio, bundle, reminders, voice, now)
    if perhaps_shown:
        lines.append(translate("reminders", "Perhaps shown already."))
    return Notice(
        key=bundle.key,
        title=_title(studio, bundle, reminders, now),
        body="\n".join(lines),
        strong=any(one.strong and one.can_be_saved(now) for one in reminders),
        sound=Means.SOUND not in studio.reminding.means_off,
        buttons=_buttons(studio, reminders, voice, now),
    )


def trial_notice(now: datetime) -> Notice:
    """What is shown when the maker wants to see whether a means works."""
    return Notice(
        key=f"test {now.timestamp():.0f}",
        title=translate("reminders", "This is how the studio reminds you"),
        body=translate("reminders", "A test: nothing is due because of it."),
        buttons=(Button(key=DONE, words=translate("reminders", "Done")),),
    )


def _of_one_kind(reminders: list[Reminder]) -> bool:
    return len({one.kind for one in reminders}) == 1


def _title(studio: Studio, bundle: Bundle, reminders: list[Reminder], now: datetime) -> str:
    if len(reminders) == 1 or (_of_one_kind(reminders) and not bundle.away):
        return headline(studio, reminders)
    return away_headline(reminders, now) if bundle.away else put_off_headline(reminders)


def _lines(
    studio: Studio, bundle: Bundle, reminders: list[Reminder], voice: Voice, now: datetime
) -> list[str]:
    if len(reminders) == 1 or (_of_one_kind(reminders) and not bundle.away):
        lines = list(details(reminders[0], voice, now))
        if bundle.away:
            lines.append(translate("reminders", "It was due while you were away."))
        return lines
    lines = [headline(studio, [one]) for one in reminders[:_MOST_LINES]]
    left = len(reminders) - len(lines)
    if left:
        lines.append(translate("reminders", "and {count} more").format(count=left))
    return lines


def _buttons(
    studio: Studio, reminders: list[Reminder], voice: Voice, now: datetime
) -> tuple[Button, ...]:
    buttons = [Button(key=DONE, words=translate("reminders", "Done"))]
    until = snooze_until(studio, reminders[0], now)
    if until is not None:
        words = translate("reminders", "Remind me at {until}")
        buttons.append(Button(key=SNOOZE, words=words.format(until=voice.moment(until))))
    buttons.append(Button(key=OPEN, words=translate("reminders", "Open")))
    return tuple(buttons)
