"""What a reminder says: in a line, and what happens if it is left."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.reminders import Reminder, ReminderKind, reminder_word
from studio_planner.craft.tongue import capital, counted, listed, marked, translate
from studio_planner.services.hands_items import HandsKind, if_left
from studio_planner.services.log_book.known import order_name, piece_name

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Voice

_WHEN = {
    ReminderKind.WEIGH: marked("reminders", "Planned for {moment}."),
    ReminderKind.POUR_BY: marked("reminders", "It has to begin by {moment}."),
    ReminderKind.LAST_TORCH: marked("reminders", "Until {moment} at the latest."),
    ReminderKind.COVER: marked("reminders", "From {moment} on the cover leaves no mark."),
    ReminderKind.TAPE: marked("reminders", "Planned for {moment}."),
    ReminderKind.TRIM: marked("reminders", "Planned for {moment}."),
    ReminderKind.OPENS: marked("reminders", "It can be poured from {moment} on."),
    ReminderKind.CLOSING: marked(
        "reminders", "To be done before it closes, it has to begin by {moment}."
    ),
    ReminderKind.SAND: marked("reminders", "Planned for {moment}."),
    ReminderKind.TURN: marked("reminders", "Planned for {moment}."),
    ReminderKind.WARM_BOX: marked("reminders", "It is poured there at {moment}."),
    ReminderKind.PACK: marked("reminders", "Planned for {moment}."),
    ReminderKind.SHIP: marked("reminders", "It leaves at {moment}."),
    ReminderKind.COLD: marked(
        "reminders",
        "From {moment} on the air there is colder than the sheet of a film allows: it stands "
        "still until it is warmer.",
    ),
    ReminderKind.DAMP: marked(
        "reminders", "At {moment} the surface comes too near the dew point: keep it warm."
    ),
    ReminderKind.READINGS: marked(
        "reminders",
        "Readings have been missing since {moment}; what is said of the films is guessed.",
    ),
    ReminderKind.MOVED: marked("reminders", "Known since {moment}; plan again to follow it."),
}
"""When each kind is: `moment` is the instant that the reminder is about."""

_LEFT = {
    ReminderKind.LAST_TORCH: HandsKind.LAST_TORCH,
    ReminderKind.COVER: HandsKind.COVER,
    ReminderKind.TAPE: HandsKind.TAPE,
    ReminderKind.TRIM: HandsKind.TRIM,
    ReminderKind.SAND: HandsKind.SAND,
    ReminderKind.TURN: HandsKind.TURN,
}
_SAYS_LAST_START = {ReminderKind.WEIGH, ReminderKind.MOVED}
_OF_A_WINDOW = {ReminderKind.WEIGH, ReminderKind.POUR_BY, ReminderKind.CLOSING}


def headline(studio: Studio, reminders: Sequence[Reminder]) -> str:
    """What reminders of one kind are about, in a line."""
    first = reminders[0]
    return translate("reminders", "{what}: {whom}").format(
        what=capital(reminder_word(first.kind)), whom=about(studio, reminders)
    )


def about(studio: Studio, reminders: Iterable[Reminder]) -> str:
    """The names of what reminders are about; the last ones known of what is gone."""
    return listed(_subject(studio, one) for one in reminders)


def _subject(studio: Studio, reminder: Reminder) -> str:
    if reminder.piece:
        return _piece(studio, reminder)
    if reminder.order:
        return order_name(studio, reminder.order)
    return next((p.name for p in studio.places if p.key == reminder.place), reminder.place)


def _piece(studio: Studio, reminder: Reminder) -> str:
    piece = next((one for one in studio.pieces if one.key == reminder.piece), None)
    if piece is None:
        return piece_name(studio, reminder.piece)
    if not any(coat.key == reminder.coat for coat in piece.stack):
        return piece.name
    return translate("reminders", "{piece}, {coat}").format(
        piece=piece.name, coat=piece.coat_name(reminder.coat)
    )


def details(reminder: Reminder, voice: Voice, now: datetime) -> tuple[str, ...]:
    """Sentences: when it is, what happens if it is left, and whether quiet hours moved it."""
    when = translate("reminders", _WHEN[reminder.kind])
    lines = [when.format(moment=voice.moment(reminder.moment)), *_if_left(reminder, voice, now)]
    if reminder.was_moved:
        lines.append(
            translate(
                "reminders", "Put off from {meant}: it could wait until the quiet hours end."
            ).format(meant=voice.moment(reminder.meant))
        )
    return tuple(lines)


def _if_left(reminder: Reminder, voice: Voice, now: datetime) -> Iterable[str]:
    if not reminder.can_be_saved(now):
        yield translate("reminders", "It is too late for that now.")
    elif reminder.kind in _SAYS_LAST_START and reminder.saved_until is not None:
        yield translate("reminders", "It has to begin by {until}.").format(
            until=voice.moment(reminder.saved_until)
        )
    if reminder.strong and reminder.kind in _OF_A_WINDOW:
        yield translate("reminders", "After that it does not bond, and no sanding helps.")
    elif reminder.saved_until is not None and reminder.kind in _OF_A_WINDOW:
        yield translate("reminders", "After that: wash and sand the one below first.")
    elif reminder.kind in _LEFT:
        yield translate("reminders", "If it is left: {what}.").format(
            what=if_left(_LEFT[reminder.kind])
        )


def away_headline(reminders: Sequence[Reminder], now: datetime) -> str:
    """How much was missed while nobody was there, and how much of it can still be saved."""
    missed = counted(
        len(reminders),
        translate("reminders", "Missed while you were away: {count} reminder"),
        translate("reminders", "Missed while you were away: {count} reminders"),
    )
    saved = sum(one.can_be_saved(now) for one in reminders)
    if saved == 0:
        return missed
    return translate("reminders", "{missed}, {saved} of them can still be done").format(
        missed=missed, saved=saved
    )


def put_off_headline(reminders: Sequence[Reminder]) -> str:
    """How much waited for the end of the quiet hours."""
    return counted(
        len(reminders),
        translate("reminders", "After the quiet hours: {count} reminder"),
        translate("reminders", "After the quiet hours: {count} reminders"),
    )
