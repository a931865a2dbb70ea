"""Carrying errands out at the scheduler of the system: what is written, and what is run."""

from __future__ import annotations

import subprocess
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence
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

        Then everything is as it was before: what had been installed stands and runs.
        """
        new = [(path, content) for path, content in errand.writes if content is not None]
        gone = [path for path, content in errand.writes if content is None]
        before = [(path, _content(path)) for path, _ in new]
        try:
            for path, content in new:
                _write(path, content)
            for command in errand.clears:
                self._run(command)
            for path in gone:
                _take_away(path)
            for command in errand.runs:
                _require_done(command, self._run(command))
        except StudioError:
            self._bring_back(before, errand)
            raise

    def _bring_back(self, before: Sequence[tuple[Path, bytes | None]], errand: Errand) -> None:
        """Let files be as they were; what stood whole is run again, as far as that works."""
        for path, content in before:
            with suppress(StudioError):
                _take_away(path) if content is None else _write(path, content)
        if before and all(content is not None for _, content in before):
            for command in errand.runs:
                self._run(command)


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


def _content(path: Path) -> bytes | None:
    """What a file holds; None where there is none."""
    with _told_about(path):
        return path.read_bytes() if path.exists() else None


def _take_away(path: Path) -> None:
    with _told_about(path):
        path.unlink(missing_ok=True)


def _write(path: Path, content: bytes) -> None:
    with _told_about(path):
        path.parent.mkdir(parents=True, exist_ok=True)
        new = path.with_name(f"{path.name}.new")  # what stands is never half written over
        try:
            new.write_bytes(content)
            new.replace(path)
        finally:
            new.unlink(missing_ok=True)


@contextmanager
def _told_about(path: Path) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise StudioError(
            translate("ringing", "{path} cannot be written: {error}.").format(
                path=path, error=(error.strerror or "the system refuses it").lower()
            )
        ) from error
