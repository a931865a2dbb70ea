"""What taps on the bench do: pours begun and written down, steps, touch tests, and undo."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind
from studio_planner.craft.tongue import capital
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.desktop.bench.bench_targets import Offer
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.pours import mix_of, with_pour
from studio_planner.services.log_book.taps import (
    last_coat,
    tap_for,
    tap_of_task,
    tapped,
    what_words,
)

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.bench import BenchTask
    from studio_planner.services.log_book.taps import Tap

_SHORTEST = timedelta(minutes=1)
"""No pour takes less; two taps in the same minute are one minute apart."""


class Going(NamedTuple):
    """What the taps lead through: on to the next thing, back to the one before, and away."""

    on: Callable[[], object]
    back: Callable[[], object]
    away: Callable[[], object]


class BenchTaps:
    """Where the maker is: before a task, after A met B, or at a touch test.

    `changed` is called whenever other targets are to be offered, with True after something was
    written down.
    """

    def __init__(self, desk: PageDesk, going: Going, changed: Callable[[bool], object]) -> None:
        """Stand before a task; nothing was written down yet."""
        self._desk = desk
        self._going = going
        self._changed = changed
        self._testing: str | None = None
        self._touch: Touch | None = None
        self.met: tuple[tuple[PlannedCoat, ...], datetime] | None = None
        self.written = ""

    @property
    def _studio(self) -> Studio | None:
        return None if self._desk.session is None else self._desk.session.studio

    def forget(self) -> None:
        """Forget a start or a touch test that was begun."""
        self.met = self._testing = self._touch = None

    def offers(self, task: BenchTask | None) -> list[Offer]:
        """What the targets say and do now."""
        if self._touch is not None:
            return self._verdicts(self._touch)
        if self._testing is not None:
            return self._touches()
        return [
            *self._of_task(task),
            self._touch_offer(task),
            self._undo(),
            self._leave(),
            self._weigh(task),
        ]

    def _weigh(self, task: BenchTask | None) -> Offer:
        """A pour whose mix is not begun yet can be weighed, one number after the other."""
        if task is None or not task.pours or self.met is not None or task.item.coat is None:
            return Offer("", None)
        piece, coat = task.item.piece, task.item.coat
        return Offer(translate("bench", "Weigh it"), lambda: self._desk.weigh(piece, coat))

    def _leave(self) -> Offer:
        return Offer(translate("bench", "Leave the bench"), self._going.away)

    # Pours and steps

    def _of_task(self, task: BenchTask | None) -> tuple[Offer, Offer]:
        if self.met is not None:
            said = translate("bench", "All poured: write it down")
            other = translate("bench", "Not yet: forget the start")
            return Offer(said, self._write_pour), Offer(other, self._forget_start)
        on = Offer(translate("bench", "Next thing"), self._going.on)
        if task is None:
            return Offer(on.words, None), Offer(translate("bench", "Back"), None)
        if task.pours:
            said = (
                translate("bench", "A met B: start")
                if task.mixed
                else translate("bench", "I begin now")
            )
            return Offer(said, lambda: self._start(task)), on
        studio = self._studio
        tap = None if studio is None else tap_of_task(task, studio)
        if studio is None or tap is None:
            return on, Offer(translate("bench", "Back"), self._going.back)
        text = translate("bench", "{what}: done now")
        said = text.format(what=what_words(studio, tap))
        return Offer(said, lambda: self._tap(tap)), on

    def _start(self, task: BenchTask) -> None:
        session = self._desk.session
        plan = None if session is None else session.studio.plan
        if session is None or plan is None:
            return
        coat = next(one for one in plan.coats if one.number == task.item.number)
        self.met = (mix_of(plan, coat), session.now())
        self.written = ""
        self._changed(False)  # noqa: FBT003 - nothing is written yet

    def _forget_start(self) -> None:
        self.forget()
        self._changed(False)  # noqa: FBT003 - likewise

    def _write_pour(self) -> None:
        session, met = self._desk.session, self.met
        if session is None or met is None:
            return
        coats, start = met
        end = max(session.now(), start + _SHORTEST)
        name = session.studio.piece(coats[0].piece).name
        said = translate("bench", "Poured: {piece}").format(piece=name)
        self._make(Change(said, lambda studio: with_pour(studio, coats, start, end)))

    def _tap(self, tap: Tap) -> None:
        session = self._desk.session
        if session is not None:
            self._make(tapped(session.studio, tap, session.now(), session.now()))

    def _make(self, change: Change) -> None:
        if self._desk.changes.attempt(change):
            self.forget()
            self.written = change.words
            self._changed(True)  # noqa: FBT003 - it is written
        else:
            # The desk's own line lies behind the bench.
            self.written = self._desk.notice.words
            self._changed(False)  # noqa: FBT003 - it is not

    # Touch tests

    def _touch_offer(self, task: BenchTask | None) -> Offer:
        studio, said = self._studio, translate("bench", "Touch test")
        piece = "" if task is None else task.item.piece
        if studio is None or not piece or not last_coat(studio, piece):
            return Offer(said, None)
        return Offer(said, lambda: self._test(piece))

    def _test(self, piece: str) -> None:
        self._testing = piece
        self._changed(False)  # noqa: FBT003 - likewise

    def _touches(self) -> list[Offer]:
        offers = [
            Offer(capital(kind_word(touch)), lambda touch=touch: self._feel(touch))  # type: ignore[misc]
            for touch in Touch
        ]
        return [*offers, self._no_test()]

    def _feel(self, touch: Touch) -> None:
        self._touch = touch
        self._changed(False)  # noqa: FBT003 - likewise

    def _verdicts(self, touch: Touch) -> list[Offer]:
        text = translate("bench", "{touch}: {verdict}")
        offers = [
            Offer(
                text.format(touch=capital(kind_word(touch)), verdict=kind_word(verdict)),
                lambda verdict=verdict: self._find(touch, verdict),  # type: ignore[misc]
            )
            for verdict in (Verdict.ALREADY, Verdict.NOT_YET)
        ]
        return [*offers, self._no_test()]

    def _find(self, touch: Touch, verdict: Verdict) -> None:
        studio, piece = self._studio, self._testing
        if studio is not None and piece is not None:
            self._tap(tap_for(studio, EntryKind.TOUCHED, piece, touch, verdict))

    def _no_test(self) -> Offer:
        return Offer(translate("bench", "No test after all"), self._forget_start)

    # Undo

    def _undo(self) -> Offer:
        history = None if self._desk.session is None else self._desk.session.history
        step = None if history is None else history.undoable
        said = translate("bench", "Undo the last tap")
        mine = step is not None and bool(self.written) and step.words == self.written
        return Offer(said, self._take_back if mine else None)

    def _take_back(self) -> None:
        self._desk.changes.undo()
        self.written = ""
        self._changed(False)  # noqa: FBT003 - likewise
