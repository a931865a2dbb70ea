"""Random histories of a studio's reminders, played with a clock that is set and suspended.

A history is a studio whose plan changes, one or two instances of the program that are started,
killed and suspended, means that fail, and a maker who acknowledges and puts off. What has to
happen is kept by `Expected`, which shares no code with the program: it reads instants off a
calendar of its own and is told only what a maker could see.
"""

from __future__ import annotations

from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta
from random import Random
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from studio_planner.craft.reminders import Reminder, ReminderKind, Reminding, Urgency
from studio_planner.services.ports import CannotRing, Notice
from studio_planner.services.reminding.quiet import QuietHours
from studio_planner.services.reminding.settling import Made
from studio_planner.services.reminding.ticking import LEASE_SECONDS, Reminders
from studio_planner.storage.reminder_rows import ReminderRows
from tests.services.reminding.expected import Expected, Wish, require
from tests.services.reminding.tables import FileInMemory

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.services.ports import Notifier, Pressed
    from studio_planner.services.reminding.bundles import Bundle

ZONES = ("Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "Asia/Kolkata", "UTC")
# Both changes of the year in Berlin and New York, and an ordinary week.
STARTS = (
    datetime(2026, 3, 27, 12, tzinfo=UTC),
    datetime(2026, 10, 23, 12, tzinfo=UTC),
    datetime(2026, 3, 6, 12, tzinfo=UTC),
    datetime(2026, 10, 30, 12, tzinfo=UTC),
    datetime(2026, 6, 1, 12, tzinfo=UTC),
)
MINUTE = timedelta(minutes=1)
KINDS = tuple(ReminderKind)
_SETTLED = 4
"""The points that a tick has passed when what is due is written down."""


class Killed(BaseException):
    """The process was killed."""


@dataclass
class World:
    """What is outside the program: the clocks, the file, the plan, what the maker sees."""

    seed: int
    chance: Random = field(init=False)
    now: datetime = field(init=False)
    steady: float = 0.0
    zone: str = field(init=False)
    revision: int = 1
    points: int = 0
    kill_in: int | None = None
    inside: bool = False
    meanwhile: Callable[[], None] | None = None
    broken: set[str] = field(default_factory=set)
    known_acknowledged: int = 0

    def __post_init__(self) -> None:
        self.chance = Random(self.seed)  # noqa: S311 - histories, not secrets
        self.now = self.chance.choice(STARTS)
        self.zone = self.chance.choice(ZONES)
        self.file = FileInMemory()
        self.expected = Expected(self.zone, time(22), time(7))

    def read_clock(self) -> datetime:
        return self.now

    def point(self) -> None:
        """A moment at which the process may be killed, or others may do something."""
        self.points += 1
        if self.kill_in is not None:
            self.kill_in -= 1
            if self.kill_in <= 0:
                self.kill_in = None
                self.expected.kills += 1
                raise Killed
        if self.meanwhile is not None and not self.inside:
            meanwhile, self.meanwhile = self.meanwhile, None
            self.inside = True
            try:
                meanwhile()
            finally:
                self.inside = False


@dataclass
class WorldClock:
    world: World

    def now(self) -> datetime:
        return self.world.now


class Played:
    """The program's source of reminders, made of the world's wishes."""

    def __init__(self, world: World) -> None:
        self.world = world

    @contextmanager
    def rows(self) -> Iterator[ReminderRows]:
        if not self.world.inside:
            self.world.point()
            self.world.known_acknowledged = len(self.world.expected.acknowledgements)
        with self.world.file.beside() as connection:
            yield ReminderRows(connection)
        if not self.world.inside:
            self.world.point()

    def look(self) -> None:
        """There is nothing to read."""

    def revision(self) -> int:
        return self.world.revision

    def _quiet(self) -> QuietHours:
        return QuietHours(Reminding(), ZoneInfo(self.world.zone))

    def made(self, now: datetime) -> Made:
        assert now == self.world.now
        quiet = self._quiet()
        wishes = self.world.expected.wishes
        found = tuple(quiet.put_off(reminder_of(uid, wish)) for uid, wish in wishes.items())
        return Made(self.world.revision, found)

    def may_ring(self, row: DueRow, now: datetime) -> bool:
        return self._quiet().may_ring(row.reminder, now)

    def notice(self, bundle: Bundle, now: datetime, *, perhaps_shown: bool) -> Notice:
        assert now <= self.world.now or not perhaps_shown
        names = "\n".join(row.uid for row in bundle.rows)
        return Notice(
            key=bundle.key, title="perhaps shown already" if perhaps_shown else "", body=names
        )

    def wanted(self, notifiers: Sequence[Notifier]) -> Sequence[Notifier]:
        return notifiers


def reminder_of(uid: str, wish: Wish) -> Reminder:
    return Reminder(
        uid=uid,
        kind=KINDS[int(uid.removeprefix("r")) % len(KINDS)],
        urgency=Urgency.LOST_LATER if wish.lost_later else Urgency.CAN_WAIT,
        due=wish.meant,
        meant=wish.meant,
        moment=wish.meant,
        saved_until=wish.saved_until,
    )


class Bell:
    """A means that shows notices to the expecting eye, unless it is broken."""

    def __init__(self, world: World, means: str) -> None:
        self._world = world
        self.means = means

    def ring(self, notice: Notice) -> None:
        world, uids = self._world, notice.body.split("\n")
        self._require_written(uids)
        # What is acknowledged once the call is written down comes too late to stop it.
        done = world.expected.acknowledgements
        exempt = set() if world.inside else set(done[world.known_acknowledged :])
        world.expected.call_begins(uids, world.now, exempt)
        if not world.inside:
            world.point()
        if self.means in world.broken:
            world.expected.failed(self.means, uids)
            raise CannotRing("broken")
        world.expected.shown(self.means, notice.key, notice.title, uids)
        if not world.inside:
            world.point()

    def _require_written(self, uids: list[str]) -> None:
        for uid in uids:
            (written,) = self._world.file.connection.execute(
                'SELECT count(*) FROM "reminders" JOIN "rings" USING ("uid", "round") '
                'WHERE "uid" = ? AND "came_due" IS NOT NULL AND "means" = ?',
                (uid, self.means),
            ).fetchone()
            require(written == 1, f"{uid} rings before it is written down as due")

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:
        assert seconds == 0
        return ()


class History:
    """One history, played from its seed."""

    def __init__(self, seed: int, steps: int = 40) -> None:
        self.world = World(seed)
        self._chance = self.world.chance
        self._steps = steps
        self._started = 0
        self._running: list[Reminders | None] = [self._start(0), None]
        for number in range(self._chance.randint(2, 6)):
            self._wish(f"r{number}")

    def play(self) -> Expected:
        events = (
            (self._wait, 10), (self._tick, 14), (self._replan, 3), (self._acknowledge, 3),
            (self._snooze, 2), (self._suspend, 2), (self._set_clock, 1), (self._travel, 1),
            (self._restart, 2), (self._second, 2), (self._break, 1), (self._kill, 3),
            (self._at_once, 3), (self._gone_and_back, 1),
        )  # fmt: skip
        kinds, weights = zip(*events, strict=True)
        for event in self._chance.choices(kinds, weights, k=self._steps):
            event()
        self._end()
        return self.world.expected

    def _end(self) -> None:
        """Some quiet days at the end, in which everything that is due has to be told."""
        world = self.world
        world.broken.clear()
        self._running = [self._start(0), self._start(1)]
        for _ in range(20):
            self._pass(timedelta(hours=7))
            self._tick()
        world.expected.at_the_end(world.now)
        world.file.close()

    def _start(self, which: int) -> Reminders:
        self._started += 1
        world = self.world
        means = ("notification", "sound") if which == 0 else ("notification", "terminal")
        return Reminders(
            Played(world),
            [Bell(world, name) for name in means],
            WorldClock(world),
            steady=lambda: world.steady,
            caller=f"caller {self._started}",
        )

    def _pass(self, time_: timedelta) -> None:
        self.world.now += time_
        self.world.steady += time_.total_seconds()

    def _wait(self) -> None:
        self._pass(MINUTE * self._chance.choice((1, 2, 10, 45, 120, 300, 700)))

    def _suspend(self) -> None:
        self.world.now += MINUTE * self._chance.choice((30, 500, 2000))

    def _set_clock(self) -> None:
        self.world.now += MINUTE * self._chance.choice((-2000, -600, -60, -5, 60, 3000, 9000))

    def _travel(self) -> None:
        self.world.zone = self._chance.choice(ZONES)
        self.world.expected.zone = ZoneInfo(self.world.zone)
        self.world.revision += 1

    def _restart(self) -> None:
        which = self._chance.randrange(2)
        if self._running[which] is not None:
            self._running[which] = self._start(which)

    def _second(self) -> None:
        self._running[1] = self._start(1) if self._running[1] is None else None

    def _break(self) -> None:
        means = self._chance.choice(("notification", "sound", "terminal"))
        self.world.broken ^= {means}

    def _replan(self) -> None:
        number = self._chance.randrange(8)
        uid, expected = f"r{number}", self.world.expected
        undone = self._chance.random() < 0.3
        if undone and uid in expected.wishes:
            expected.forget(uid)
            self.world.revision += 1
        elif undone and uid in expected.forgotten:
            expected.wish(uid, expected.forgotten[uid])
            self.world.revision += 1
        else:
            self._wish(uid)

    def _gone_and_back(self) -> None:
        """A change that is undone after the program has seen it."""
        expected = self.world.expected
        if expected.wishes:
            uid = self._chance.choice(sorted(expected.wishes))
            expected.forget(uid)
            self.world.revision += 1
            self._tick()
            expected.wish(uid, expected.forgotten[uid])
            self.world.revision += 1

    def _wish(self, uid: str) -> None:
        chance = self._chance
        meant = self.world.now + MINUTE * chance.choice((-300, -20, 2, 15, 60, 400, 900, 2500))
        saved = chance.choice((None, 20, 120, 800))
        wish = Wish(
            meant=meant,
            saved_until=None if saved is None else meant + MINUTE * saved,
            lost_later=chance.random() < 0.5,
        )
        self.world.expected.wish(uid, wish)
        self.world.revision += 1

    def _alive(self) -> tuple[int, Reminders]:
        found = [(i, one) for i, one in enumerate(self._running) if one is not None]
        if not found:
            self._running[0] = self._start(0)
            return self._alive()
        return self._chance.choice(found)

    def _tick(self) -> None:
        which, reminders = self._alive()
        self.world.expected.tick_begins(self.world.now)
        self.world.points = 0
        try:
            reminders.tick()
        except Killed:
            if self.world.points >= _SETTLED:
                self.world.expected.settled(self.world.now)
            # Whoever starts it again does so after its right to ring is over.
            self._pass(timedelta(seconds=self._chance.choice((1, LEASE_SECONDS))))
            self._running[which] = self._start(which)
            return
        finally:
            self.world.kill_in = self.world.meanwhile = None
        due = [row.uid for row in reminders.due()]
        self.world.expected.ticked(due, self.world.now)

    def _kill(self) -> None:
        self.world.kill_in = self._chance.randint(1, 14)
        self._tick()

    def _at_once(self) -> None:
        """Something that happens in the middle of another instance's tick."""
        other = self._start(1)
        things: tuple[Callable[[Reminders], None], ...] = (
            self._other_tick,
            self._acknowledge,
            self._snooze,
        )
        doing = self._chance.choice(things)
        left = self._chance.randint(0, 8)

        def later() -> None:
            nonlocal left
            left -= 1
            if left > 0:
                self.world.meanwhile = later
                return
            if self.world.points >= _SETTLED:
                self.world.expected.settled(self.world.now)
            doing(other)

        self.world.meanwhile = later
        self._tick()

    def _other_tick(self, other: Reminders) -> None:
        other.tick()
        self.world.expected.settled(self.world.now)

    def _one_due(self, reminders: Reminders) -> str | None:
        due = [row.uid for row in reminders.due()]
        return self._chance.choice(due) if due else None

    def _acknowledge(self, reminders: Reminders | None = None) -> None:
        reminders = reminders or self._alive()[1]
        uid = self._one_due(reminders)
        if uid is not None:
            reminders.acknowledge([uid])
            self.world.expected.acknowledged(uid, self.world.now)

    def _snooze(self, reminders: Reminders | None = None) -> None:
        reminders = reminders or self._alive()[1]
        uid = self._one_due(reminders)
        if uid is not None:
            until = self.world.now + MINUTE * self._chance.choice((10, 90, 600))
            reminders.snooze([uid], lambda _: until)
            self.world.expected.put_off(uid)
