"""The taps of a running mix in a small file, so that nothing is lost when the desk is killed.

It lies in the maker's own folder, one for each studio file. Every tap replaces it whole.
"""

from __future__ import annotations

import json
from datetime import datetime
from typing import TYPE_CHECKING, Any
from zlib import crc32

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import PlannedCoat
from studio_planner.craft.tongue import translate
from studio_planner.services.mix_run.taps import RunningMix, Tap, TapKind
from studio_planner.storage.alone import alone_at
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.placing import placed

if TYPE_CHECKING:
    from collections.abc import Callable
    from contextlib import AbstractContextManager
    from pathlib import Path

FOLDER = "running mixes"
"""What the folder is called in the maker's own folder."""

_FORM = 1


class KeptMix:
    """The file of the running mix of one studio."""

    def __init__(self, folder: Path, studio_file: Path) -> None:
        """Keep it in `folder`, which is made when it is first needed."""
        # Studios of the same name in different folders have a mix each.
        where = crc32(str(studio_file.absolute()).encode("utf-8", "surrogateescape"))
        self.path = folder / f"{studio_file.stem} {where:08x}.json"

    def alone(self) -> AbstractContextManager[bool]:
        """Keep other windows from this mix for a moment; see `alone_at`."""
        return alone_at(self.path.with_suffix(".lock"))

    def keep(self, running: RunningMix) -> None:
        """Keep it as it is now; StudioFileError in one sentence when it cannot be written."""
        with told_about(self.path):
            self.path.parent.mkdir(parents=True, exist_ok=True)
            with placed(self.path, overwrite=True) as temporary:
                temporary.write_text(_text(running), encoding="utf-8")

    def read(self) -> RunningMix | None:
        """What was kept; None when there is none.

        StudioFileError in one sentence when it cannot be read. What is no running mix of ours
        is put aside first, so that the next mix does not write over it.
        """
        with told_about(self.path, reading=True):
            if not self.path.exists():
                return None
            content = self.path.read_bytes()
            try:
                return _running(json.loads(content))
            except (ValueError, KeyError, TypeError) as error:
                aside = self.path.with_suffix(".unread")
                self.path.replace(aside)
                raise StudioFileError(
                    translate(
                        "weigh",
                        "What was kept of the mix on the scale cannot be read; it was put "
                        "aside as {path}. Look into the log for what was weighed.",
                    ).format(path=aside)
                ) from error

    def holds(self, running: RunningMix | None) -> bool:
        """Whether this mix is what is kept (None: no mix), so nobody else went on meanwhile.

        True too when it cannot be read: who is about to keep a mix has it whole.
        """
        try:
            there = self.read()
        except StudioFileError:
            return True
        if there is None or running is None:
            return there is running
        return _text(there) == _text(running)

    def forget(self) -> None:
        """Keep it no more; StudioFileError in one sentence when it cannot be taken away."""
        with told_about(self.path):
            self.path.unlink(missing_ok=True)


def kept_for(studio_file: Path, data_folder: Callable[[], Path] | None) -> KeptMix | None:
    """The file of a studio's running mix in the maker's own folder; None without one."""
    return None if data_folder is None else KeptMix(data_folder() / FOLDER, studio_file)


def _text(running: RunningMix) -> str:
    return json.dumps(
        {
            "form": _FORM,
            "begun": running.begun.isoformat(),
            "lot_a": running.lot_a,
            "lot_b": running.lot_b,
            "batches": running.batches,
            "coats": [
                {
                    "number": coat.number,
                    "piece": coat.piece,
                    "coat": coat.coat,
                    "start": coat.start.isoformat(),
                    "end": coat.end.isoformat(),
                    "spot": coat.spot,
                    "joint": coat.joint.value,
                    "mix": coat.mix,
                    "person": coat.person,
                }
                for coat in running.coats
            ],
            "taps": [
                {"kind": tap.kind.value, "at": tap.at.isoformat(), "grams": tap.grams}
                for tap in running.taps
            ],
        },
        indent=1,
    )


def _running(form: dict[str, Any]) -> RunningMix:
    if form["form"] != _FORM:
        raise ValueError(form["form"])
    return RunningMix(
        coats=tuple(_coat(one) for one in form["coats"]),
        begun=datetime.fromisoformat(form["begun"]),
        lot_a=str(form["lot_a"]),
        lot_b=str(form["lot_b"]),
        batches=tuple(int(number) for number in form["batches"]),
        taps=tuple(
            Tap(
                kind=TapKind(one["kind"]),
                at=datetime.fromisoformat(one["at"]),
                grams=float(one["grams"]),
            )
            for one in form["taps"]
        ),
    )


def _coat(one: dict[str, Any]) -> PlannedCoat:
    return PlannedCoat(
        number=int(one["number"]),
        piece=one["piece"],
        coat=one["coat"],
        start=datetime.fromisoformat(one["start"]),
        end=datetime.fromisoformat(one["end"]),
        spot=one["spot"],
        joint=Joint(one["joint"]),
        mix=int(one["mix"]),
        person=one["person"],
    )
