"""Reminders: what a maker is told of in time, how urgent it is, and when nothing may ring.

Lead times and hours are common practice; every maker can change them.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass, field, replace
from datetime import datetime, time
from enum import StrEnum

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import marked, translate

_LONGEST_LEAD_MINUTES = 3 * 24 * 60


class ReminderKind(StrEnum):
    """What a reminder is about."""

    WEIGH = "weigh now"
    POUR_BY = "pour by"
    LAST_TORCH = "last torch"
    COVER = "cover"
    TAPE = "pull tape"
    TRIM = "trim drips"
    OPENS = "window opens"
    CLOSING = "window about to close"
    SAND = "wash and sand"
    TURN = "turn over"
    WARM_BOX = "move to the warm box"
    PACK = "ready to pack"
    SHIP = "order can ship"
    COLD = "too cold tonight"
    DAMP = "too near the dew point tonight"
    READINGS = "readings missing"
    MOVED = "window moved"


class Urgency(StrEnum):
    """Whether something is gone for good once its time is over."""

    LOST_LATER = "can't be saved later"
    CAN_WAIT = "can wait"


class Means(StrEnum):
    """Ways to reach the maker beside the list of what is due, which is always there."""

    NOTIFICATION = "notification"
    TRAY = "tray"
    SOUND = "sound"
    TERMINAL = "terminal"


WORDS = (
    marked("reminders", "weigh now"),
    marked("reminders", "pour by"),
    marked("reminders", "last torch"),
    marked("reminders", "cover"),
    marked("reminders", "pull tape"),
    marked("reminders", "trim drips"),
    marked("reminders", "window opens"),
    marked("reminders", "window about to close"),
    marked("reminders", "wash and sand"),
    marked("reminders", "turn over"),
    marked("reminders", "move to the warm box"),
    marked("reminders", "ready to pack"),
    marked("reminders", "order can ship"),
    marked("reminders", "too cold tonight"),
    marked("reminders", "too near the dew point tonight"),
    marked("reminders", "readings missing"),
    marked("reminders", "window moved"),
    marked("reminders", "can't be saved later"),
    marked("reminders", "can wait"),
    marked("reminders", "notification"),
    marked("reminders", "tray"),
    marked("reminders", "sound"),
    marked("reminders", "terminal"),
)
"""The values of those kinds; a test says which are missing."""


def reminder_word(value: ReminderKind | Urgency | Means) -> str:
    """Say a kind of reminder, an urgency or a means in the language that is spoken."""
    return translate("reminders", value.value)


LEAD_MINUTES = {
    ReminderKind.WEIGH: 10,
    ReminderKind.POUR_BY: 20,
    ReminderKind.LAST_TORCH: 5,
    ReminderKind.COVER: 0,
    ReminderKind.TAPE: 5,
    ReminderKind.TRIM: 5,
    ReminderKind.OPENS: 0,
    ReminderKind.CLOSING: 90,
    ReminderKind.SAND: 5,
    ReminderKind.TURN: 5,
    ReminderKind.WARM_BOX: 15,
    ReminderKind.PACK: 0,
    ReminderKind.SHIP: 120,
    ReminderKind.COLD: 0,
    ReminderKind.DAMP: 0,
    ReminderKind.READINGS: 0,
    ReminderKind.MOVED: 0,
}
"""How long before its moment each kind rings (common practice).

Of a window that closes, and of *pour by*, the moment is the last one at which the whole of
mixing and pouring still fits; of tonight's air it is the hour of the evening that is set.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminding:
    """How a studio reminds: quiet hours, lead times, and by which means.

    In the quiet hours (the studio's wall clock; none when both are the same) only what can't be
    saved later rings; hours in which somebody works are never quiet. `evening` is when the air
    of the night is told of. Readings are missed after `readings_hours` without one, where a
    film lies and somebody reads the air. A window that moved by more than `moved_minutes` is
    told of. `leads` holds only the minutes that the maker has chosen.
    """

    quiet_from: time = time(22, 0)
    quiet_to: time = time(7, 0)
    evening: time = time(18, 0)
    readings_hours: float = 12.0
    moved_minutes: int = 30
    stays_in_tray: bool = False
    leads: dict[ReminderKind, int] = field(default_factory=dict)
    off: frozenset[ReminderKind] = frozenset()
    means_off: frozenset[Means] = frozenset()

    def __post_init__(self) -> None:
        """Check times and every lead."""
        rules = Rulebook(translate("nouns", "reminders"))
        for name in ("quiet_from", "quiet_to", "evening"):
            rules.wall_clock(getattr(self, name), name)
        rules.between(self.readings_hours, 0.5, 24 * 30, "readings_hours")
        rules.between(self.moved_minutes, 5, 24 * 60, "moved_minutes")
        for kind, minutes in self.leads.items():
            rules.between(minutes, 0, _LONGEST_LEAD_MINUTES, f"leads, {kind}")
        rules.close()

    def lead(self, kind: ReminderKind) -> int:
        """Minutes before its moment at which a kind rings."""
        return self.leads.get(kind, LEAD_MINUTES[kind])


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder:
    """One thing to be told of at `due`.

    `uid` stays the same over re-planning: the kind and what it is about. `moment` is the
    instant it is about (a block's start, the last start, the pick-up), `meant` when it would
    ring without quiet hours; `due` is later where those have moved it. `saved_until` is until
    when it still helps to act; None where there is no such end. What rings at the same time
    `together` is told in one go. Keys that do not belong to it are empty; `strong` marks a
    window in which a coat is lost that cannot be sanded.
    """

    uid: str
    kind: ReminderKind
    urgency: Urgency
    due: datetime
    meant: datetime
    moment: datetime
    saved_until: datetime | None = None
    together: str = ""
    piece: str = ""
    coat: str = ""
    order: str = ""
    place: str = ""
    strong: bool = False

    def __post_init__(self) -> None:
        """Check that it has a name and that every time carries a zone."""
        rules = Rulebook(translate("nouns", "reminder {uid}").format(uid=self.uid))
        rules.named(self.uid, "uid")
        for name in ("due", "meant", "moment", "saved_until"):
            when = getattr(self, name)
            rules.require(
                when is None or when.utcoffset() is not None,
                name,
                translate("rules", "give a time with a zone."),
            )
        rules.close()

    @property
    def was_moved(self) -> bool:
        """Whether quiet hours have put it off."""
        return self.due > self.meant

    def put_off(self, due: datetime) -> Reminder:
        """The same reminder, told of at a later instant."""
        return replace(self, due=due)

    def can_be_saved(self, now: datetime) -> bool:
        """Whether it still helps to act at `now` (aware)."""
        return self.saved_until is None or now < self.saved_until


def uid_of(kind: ReminderKind, *about: str) -> str:
    """Give the name of a reminder: its kind and the keys of what it is about.

    Two different things never share a name, whatever their keys are.

    Examples
    --------
    >>> uid_of(ReminderKind.PACK, "Tide tray/2")
    'ready-to-pack/Tide%20;tray%2f;2'
    """
    return "/".join(plain_key(part) for part in (kind.value.replace(" ", "-"), *about))


def sign_of(uid: str) -> str:
    """Give six letters and figures that stand for a reminder's name where room is short.

    Examples
    --------
    >>> sign_of("cover/tray/flood")
    'a77d7d'
    """
    return hashlib.blake2b(uid.encode(), digest_size=3).hexdigest()


def plain_key(text: str) -> str:
    """Give a key in letters and figures that every other program takes, never two alike."""
    return "".join(c if c.isalnum() or c in "-_.+" else f"%{ord(c):x};" for c in text)
