"""Carrying errands out at the scheduler of the system: what is written, and what is run."""

from __future__ import annotations

import subprocess
from contextlib import suppress
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from pathlib import Path

    from studio_planner.services.ports import Errand

_SECONDS = 30.0


@dataclass(frozen=True, slots=True)
class Ran:
    """How a command ended: its code, and what it said."""

    code: int
    said: str


class Carrying:
    """Carries errands out; how is the same on every system."""

    def __init__(self, run: Callable[[Sequence[str]], Ran]) -> None:
        """Run commands with `run`."""
        self._run = run

    def carry_out(self, errand: Errand) -> None:
        """Do it; StudioError in one sentence when a file or a command is refused.

        What was written is taken away again then, unless it was there before.
        """
        for command in errand.clears:
            self._run(command)
        new = [path for path, content in errand.writes if content and not path.exists()]
        try:
            for path, content in errand.writes:
                _write(path, content)
            for command in errand.runs:
                _require_done(command, self._run(command))
        except StudioError:
            for path in new:
                with suppress(OSError):
                    path.unlink()
            raise


def run_command(command: Sequence[str]) -> Ran:
    """Run a command of the system and give how it ended; one that is missing ends with 127."""
    try:
        done = subprocess.run(  # noqa: S603 - built here, of no one's input
            list(command), capture_output=True, text=True, timeout=_SECONDS, check=False
        )
    except FileNotFoundError:
        words = translate("ringing", "this system has no {program}.")
        return Ran(127, words.format(program=command[0]))
    except (OSError, subprocess.TimeoutExpired) as error:
        return Ran(1, str(error))
    return Ran(done.returncode, f"{done.stdout}\n{done.stderr}")


def _require_done(command: Sequence[str], ran: Ran) -> None:
    if ran.code != 0:
        raise StudioError(
            translate("ringing", "{command} failed: {said}").format(
                command=" ".join(command), said=" ".join(ran.said.split()) or ran.code
            )
        )


def _write(path: Path, content: bytes | None) -> None:
    try:
        if content is None:
            path.unlink(missing_ok=True)
            return
        path.parent.mkdir(parents=True, exist_ok=True)
        new = path.with_name(f"{path.name}.new")  # what stands is never half written over
        try:
            new.write_bytes(content)
            new.replace(path)
        finally:
            new.unlink(missing_ok=True)
    except OSError as error:
        raise StudioError(
            translate("ringing", "{path} cannot be written: {error}.").format(
                path=path, error=(error.strerror or "the system refuses it").lower()
            )
        ) from error
