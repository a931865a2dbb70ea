"""What the weigh view does with the running mix: taps are kept at once, and the log is told."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.alone_work import alone
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.corrections import withdrawn
from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mix_run.taps import RunningMix, Tap, TapKind
from studio_planner.services.mix_run.told import (
    batch_of,
    is_poured,
    settled_portions,
    thrown_away,
    to_write,
    without_last,
)
from studio_planner.services.mix_run.walk import stand_of

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.mix_run.kept_file import KeptMix
    from studio_planner.services.mix_run.stand import Stand


class WeighWork:
    """The running mix of the desk's studio; `trouble` is what went wrong last, in a sentence.

    A tap is in the file before anything else is done with it. Whatever the log refuses, the
    tap that asked for it is taken back, so that what is shown is what is so. Where another
    window went on with the mix, nothing is done but to show it as it stands there.
    """

    def __init__(self, desk: PageDesk, kept: Callable[[], KeptMix | None]) -> None:
        """Change the studio of `desk`; `kept` gives the file of its running mix, if any."""
        self._desk = desk
        self.kept = kept
        self._seen: tuple[Studio, RunningMix, Stand] | None = None
        self._of: Path | None = None
        self.running: RunningMix | None = None
        self.at_work = False
        self.trouble = ""

    # What there is

    @property
    def studio(self) -> Studio | None:
        """The studio on the desk."""
        session = self._desk.session
        return None if session is None else session.studio

    @alone
    def look(self) -> None:
        """Take up what was kept of a mix of the studio on the desk, maybe by another desk."""
        session, kept = self._desk.session, self.kept()
        path = None if session is None else session.path
        if path != self._of:
            self.running = None
        self._of = path
        if kept is not None:
            self._attempt(lambda: self._take_up(kept))
        if self.running is None:
            return
        if self.stand is None:
            self._forget()
            self.trouble = translate(
                "weigh",
                "The mix that was on the scale is of a piece that is gone; it is forgotten.",
            )
        else:
            self._see_others()
            self._told()  # what a kill came before

    def _see_others(self) -> None:
        """Read what others have written, so that the log is not told twice."""
        session = self._desk.session
        if session is not None and session.changed_elsewhere():
            self._change(Change("", lambda studio: studio))

    def _is_ours(self) -> bool:
        """Whether nobody else went on with the mix; else it is taken up as it stands now."""
        kept = self.kept()
        if kept is None or kept.holds(self.running):
            return True
        self.look()
        if not self.trouble:
            self.trouble = (
                translate("weigh", "The mix was ended in another window.")
                if self.running is None
                else translate(
                    "weigh", "The mix went on in another window; this is how it stands now."
                )
            )
        return False

    def _take_up(self, kept: KeptMix) -> None:
        self.running = kept.read()

    def follow(self) -> None:
        """Look again where another studio is on the desk, or the mix is of what is gone."""
        session = self._desk.session
        other = session is not None and session.path != self._of
        if other or (self.running is not None and self.stand is None):
            self.look()

    @property
    def stand(self) -> Stand | None:
        """Where the running mix stands; None without one, or when its pieces are gone."""
        studio, running = self.studio, self.running
        if studio is None or running is None:
            return None
        seen = self._seen
        if seen is None or seen[0] is not studio or seen[1] != running:
            try:
                seen = (studio, running, stand_of(studio, running))
            except KeyError:
                return None
            self._seen = seen
        return seen[2]

    @property
    def batches(self) -> tuple[int, ...]:
        """The batch numbers of the running mix that are in the log."""
        return () if self.running is None else self.running.batches

    # Taps

    @alone
    def begin(self, coats: tuple[PlannedCoat, ...], lot_a: str, lot_b: str) -> bool:
        """Begin to weigh a mix of the plan."""
        session = self._desk.session
        if session is None or not self._is_ours():
            return False
        return self._set(RunningMix(coats=coats, begun=session.now(), lot_a=lot_a, lot_b=lot_b))

    @alone
    def tap(self, kind: TapKind, grams: float = 0.0) -> bool:
        """Take one tap; tell whether it was taken."""
        session, running = self._desk.session, self.running
        if session is None or running is None or not self._is_ours():
            return False
        if not self._set(running.tapped(Tap(kind=kind, at=session.now(), grams=grams))):
            return False
        if self._told():
            return True
        said = self.trouble
        self._set(replace(running, batches=self.batches))
        self.trouble = said
        return False

    def _told(self) -> bool:
        """Tell the log everything that it lacks."""
        while True:
            session, running, stand = self._desk.session, self.running, self.stand
            if session is None or running is None or stand is None:
                return False
            missing = to_write(session.studio, running, stand, session.now())
            if missing is None:
                return True
            if not self._change(missing.change):
                return False
            numbered = replace(running, batches=missing.batches)
            if numbered != running and not self._set(numbered):
                return False

    @alone
    def undo(self) -> bool:
        """Take the last tap back, and what the log was told because of it."""
        running = self.running
        if running is None or not self._is_ours():
            return False
        if not running.taps:
            self._forget()
            return True
        if not self._untold(running.before_last):
            return False
        return self._set(replace(running.before_last, batches=self.batches))

    def _untold(self, before: RunningMix) -> bool:
        """Take back what the log says beyond an earlier state of the mix."""
        studio = self.studio
        if studio is None:
            return False
        stand = stand_of(studio, before)
        if not self._unpoured(stand):
            return False
        self._uncoloured(stand)
        while self.running is not None and len(self.batches) > settled_portions(stand):
            if not self._unweighed(self.running):
                return False
        return True

    def _unpoured(self, stand: Stand) -> bool:
        running, session = self.running, self._desk.session
        if running is None or session is None or stand.step.do is Do.WRITTEN:
            return True
        if not is_poured(session.studio, running):
            return True
        step = session.history.undoable
        if step is not None and not is_poured(step.before, running):
            return self._desk_undo()
        self.trouble = translate(
            "weigh", "The studio was changed since: take these pours back in the log."
        )
        return False

    def _uncoloured(self, stand: Stand) -> None:
        running, session = self.running, self._desk.session
        if running is None or session is None or not running.batches:
            return
        part = len(running.batches)
        mix, step = batch_of(session.studio, running, part), session.history.undoable
        was = None if step is None else batch_of(step.before, running, part)
        if mix is None or stand.step.do in {Do.POUR, Do.WRITE, Do.WRITTEN}:
            return
        if was is not None and was.colourants != mix.colourants:
            self._desk_undo()
            return
        change = without_last(session.studio, running, stand)
        if change is not None:
            self._change(change)

    def _unweighed(self, running: RunningMix) -> bool:
        session = self._desk.session
        if session is None:
            return False
        part = len(running.batches)
        mix, step = batch_of(session.studio, running, part), session.history.undoable
        if mix is not None:
            fresh = step is not None and batch_of(step.before, running, part) is None
            change = withdrawn(session.studio, mix.entry, session.now())
            if not (self._desk_undo() if fresh else self._change(change)):
                return False
        return self._set(replace(running, batches=running.batches[:-1]))

    def _desk_undo(self) -> bool:
        self._desk.changes.undo()
        return True

    # The end

    @alone
    def throw_away(self) -> bool:
        """Give the mix up; what was used up of it stays in the log as weighed."""
        session, running, stand = self._desk.session, self.running, self.stand
        if session is None or running is None or not self._is_ours():
            return False
        changes = (
            () if stand is None else thrown_away(session.studio, running, stand, session.now())
        )
        if not all(self._change(change) for change in changes):
            return False
        self._forget()
        return True

    @alone
    def finish(self) -> None:
        """Let a mix go that is written down."""
        if self._is_ours():
            self._forget()

    def _set(self, running: RunningMix) -> bool:
        kept = self.kept()
        if kept is not None and not self._attempt(lambda: kept.keep(running)):
            return False
        self.running = running
        return True

    def _forget(self) -> None:
        kept = self.kept()
        if kept is not None:
            self._attempt(kept.forget)
        self.running = None

    def _change(self, change: Change) -> bool:
        return self._attempt(lambda: self._desk.changes.make(change))

    def _attempt(self, action: Callable[[], object]) -> bool:
        try:
            action()
        except StudioError as error:
            self.trouble = str(error)
            return False
        return True
