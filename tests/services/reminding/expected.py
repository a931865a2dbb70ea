"""What a maker may expect of reminders, kept by hand: no line of the program is used here.

For each reminder it is known when it is due (on a wall clock of its own), whether it stands on
the list, when it was acknowledged, how often it may be told, and how often each means did.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import dataclass, field
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

A_LITTLE = timedelta(minutes=2)
QUARTER = timedelta(minutes=15)
HALF_AN_HOUR = timedelta(minutes=30)
AN_HOUR = timedelta(hours=1)


class Unexpected(BaseException):
    """Something that must not be; no ordinary exception, which the program would take in."""


def require(kept: object, words: str) -> None:
    if not kept:
        raise Unexpected(words)


@dataclass
class Wish:
    """What the plan asks for: when it would ring, until when it helps, and how urgent it is."""

    meant: datetime
    saved_until: datetime | None
    lost_later: bool


@dataclass
class Fate:
    """What has become of one reminder; the two acknowledgements bound what is known of it.

    `owed_after` counts what was told when it came due or was put off, at the time `owed_for`.
    """

    listed: bool = False
    rung_for: datetime | None = None
    acknowledged: datetime | None = None
    acknowledged_at_least: datetime | None = None
    allowed: int = 0
    told: int = 0
    owed_after: int | None = None
    owed_for: datetime | None = None
    failed: Counter[str] = field(default_factory=Counter)
    shown: Counter[str] = field(default_factory=Counter)
    again: Counter[str] = field(default_factory=Counter)


class Expected:
    """What has to be, and what must not be."""

    def __init__(self, zone: str, quiet_from: time, quiet_to: time) -> None:
        self.zone = ZoneInfo(zone)
        self.wishes: dict[str, Wish] = {}
        self.forgotten: dict[str, Wish] = {}
        self.fates: dict[str, Fate] = defaultdict(Fate)
        self.acknowledgements: list[str] = []
        self.shows: Counter[tuple[str, str]] = Counter()
        self.rung = self.repeats = self.kills = 0
        self._quiet = (quiet_from, quiet_to)
        self._exempt: set[str] = set()

    # What happens

    def forget(self, uid: str) -> None:
        self.forgotten[uid] = self.wishes.pop(uid)

    def wish(self, uid: str, wish: Wish) -> None:
        self.wishes[uid] = wish
        self.fates[uid].owed_after = None

    def tick_begins(self, now: datetime) -> None:
        for fate in self.fates.values():
            if fate.acknowledged_at_least is not None:
                fate.acknowledged_at_least = min(fate.acknowledged_at_least, now)

    def settled(self, now: datetime) -> None:
        """What is due at that time is written down, whatever comes after."""
        for fate in self.fates.values():
            if fate.listed and fate.rung_for and fate.rung_for - now > A_LITTLE:
                # Told too early, by a clock that was wrong: what is ahead is told in its time.
                fate.rung_for = now - HALF_AN_HOUR
        for uid, wish in self.wishes.items():
            fate = self.fates[uid]
            if fate.acknowledged is not None:
                fate.acknowledged = min(fate.acknowledged, now)
            self._evaluate(fate, self._due(wish), now, fate.acknowledged)
            if fate.owed_for != self._due(wish):  # another time of the plan takes its place
                fate.owed_after = None

    def ticked(self, due: list[str], now: datetime) -> None:
        """A tick has come to its end, and that is the list."""
        self.settled(now)
        lost = [u for u in self.wishes if self.fates[u].listed and u not in due]
        require(not lost, f"{lost} are due and not on the list")
        ghosts = [u for u in due if u not in self.wishes]
        require(not ghosts, f"{ghosts} are on the list and nothing asks for them")
        back = [u for u in due if self.fates[u].acknowledged and not self._may_be_back(u)]
        require(not back, f"{back} were acknowledged and are on the list")

    def acknowledged(self, uid: str, now: datetime) -> None:
        fate, due = self.fates[uid], self._due(self.wishes.get(uid) or self.forgotten[uid])
        fate.listed, fate.owed_after = False, None
        fate.acknowledged = fate.acknowledged_at_least = now
        if fate.rung_for is None:
            fate.rung_for = due
        self.acknowledgements.append(uid)

    def put_off(self, uid: str) -> None:
        fate = self.fates[uid]
        fate.allowed += 1
        fate.owed_after = fate.told
        fate.owed_for = self._due(self.wishes.get(uid) or self.forgotten[uid])

    def call_begins(self, uids: list[str], now: datetime, exempt: set[str]) -> None:
        """A means is called: nothing may ring early, in quiet hours, or once acknowledged."""
        for uid in uids:
            require(uid in self.wishes, f"{uid} rings and nothing asks for it")
            wish, fate = self.wishes[uid], self.fates[uid]
            require(self._may_be_heard(wish, now), f"{uid} rings in the quiet hours")
            if uid not in exempt:
                self._evaluate(fate, self._due(wish), now, fate.acknowledged_at_least)
                require(fate.acknowledged is None, f"{uid} rings after it was acknowledged")
                require(fate.rung_for is not None, f"{uid} rings before it is due")

    def shown(self, means: str, key: str, title: str, uids: list[str]) -> None:
        """Each is told as often as it may be, and once more for each kill, which is said."""
        self.rung += 1
        self.shows[means, key] += 1
        again = title == "perhaps shown already"
        if self.shows[means, key] > 1:
            self.repeats += 1
            require(again, "it is told again and does not say so")
        for uid in uids:
            fate = self.fates[uid]
            fate.told += 1
            fate.shown[means] += not again
            fate.again[means] += again
            times, allowed = fate.shown[means], fate.allowed
            require(times <= allowed, f"{uid} was told {times} times, {allowed} allowed")
            both = times + fate.again[means]
            require(both <= allowed + self.kills, f"{uid} was told too often after kills")

    def failed(self, means: str, uids: list[str]) -> None:
        for uid in uids:
            self.fates[uid].failed[means] += 1

    def at_the_end(self, now: datetime) -> None:
        """Everything that was due was told, by the means that every instance has."""
        for uid, wish in self.wishes.items():
            fate = self.fates[uid]
            if not fate.listed or self._due(wish) > now - timedelta(days=1):
                continue
            told = fate.shown + fate.again + fate.failed
            require(told["notification"], f"{uid} was never told")
            owed = fate.owed_after is not None and not fate.failed
            require(not owed or fate.told > (fate.owed_after or 0), f"{uid} was not told again")

    # What follows from it

    def _evaluate(
        self, fate: Fate, due: datetime, now: datetime, acknowledged: datetime | None
    ) -> None:
        if due > now:
            return
        first = fate.rung_for is None
        another = fate.rung_for is not None and due - fate.rung_for >= HALF_AN_HOUR
        if acknowledged is not None and not (another and due > acknowledged):
            return
        if first or another:
            fate.listed = True
            fate.allowed += 1
            fate.rung_for = due
            fate.owed_after, fate.owed_for = fate.told, due
            fate.acknowledged = fate.acknowledged_at_least = None

    def _may_be_back(self, uid: str) -> bool:
        fate, due = self.fates[uid], self._due(self.wishes[uid])
        least = fate.acknowledged_at_least
        assert fate.rung_for is not None
        return least is not None and due > least and due - fate.rung_for >= HALF_AN_HOUR

    def _in_quiet(self, at: datetime) -> bool:
        if self._quiet[0] == self._quiet[1]:
            return False
        wall = at.astimezone(self.zone).time()
        return wall >= self._quiet[0] or wall < self._quiet[1]

    def _quiet_ends(self, at: datetime) -> datetime:
        # Every zone here keeps whole quarters of an hour.
        over = at.replace(minute=at.minute // 15 * 15, second=0, microsecond=0)
        while over <= at or self._in_quiet(over):
            over += QUARTER
        return over

    def _due(self, wish: Wish) -> datetime:
        if not self._in_quiet(wish.meant) or self._may_be_heard(wish, wish.meant):
            return wish.meant
        return self._quiet_ends(wish.meant)

    def _may_be_heard(self, wish: Wish, at: datetime) -> bool:
        if not self._in_quiet(at):
            return True
        until = wish.saved_until
        if not wish.lost_later or until is None:
            return False
        return at < until < self._quiet_ends(at) + AN_HOUR
