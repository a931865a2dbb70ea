"""Two starts at once: one works, the other waits and says so."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from bootstrap import alone as alone_module
from bootstrap.alone import WAITING, alone

if TYPE_CHECKING:
    from collections.abc import Iterator

PACKAGING = Path(__file__).parents[2] / "packaging"
HOLDING = """
import pathlib, sys
sys.path.insert(0, sys.argv[1])
from bootstrap.alone import alone
with alone(pathlib.Path(sys.argv[2])):
    print("in", flush=True)
    sys.stdin.readline()
"""


def is_free(path: Path) -> bool:
    """Whether nobody holds the lock at ``path`` now."""
    descriptor = os.open(path, os.O_RDWR)
    try:
        return alone_module._taken(descriptor)
    finally:
        os.close(descriptor)


@pytest.fixture
def holder(tmp_path: Path) -> Iterator[subprocess.Popen[str]]:
    """Another process that holds the lock until it is told to let go."""
    command = [sys.executable, "-c", HOLDING, str(PACKAGING), str(tmp_path / "lock")]
    with subprocess.Popen(  # noqa: S603 - our own program
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as process:
        assert process.stdout is not None
        assert process.stdout.readline() == "in\n"
        yield process
        process.kill()


def test_a_second_start_waits_and_says_so_once(
    holder: subprocess.Popen[str],
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    waited: list[float] = []

    def let_go(seconds: float) -> None:
        waited.append(seconds)
        if len(waited) == 2:
            holder.communicate("go\n")

    monkeypatch.setattr(time, "sleep", let_go)
    with alone(tmp_path / "lock"):
        assert len(waited) >= 2
    assert capsys.readouterr().err == f"{WAITING}\n"


def test_a_start_that_was_killed_keeps_nobody_waiting(
    holder: subprocess.Popen[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert not is_free(tmp_path / "lock")
    holder.kill()
    holder.wait()
    with alone(tmp_path / "lock"):
        assert capsys.readouterr().err == ""


def test_where_no_lock_can_be_made_nobody_waits(tmp_path: Path) -> None:
    with alone(tmp_path / "no such folder" / "lock"):
        assert not (tmp_path / "no such folder").exists()


def test_a_disk_that_knows_no_locks_makes_nobody_wait(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuses(_: int) -> None:
        raise OSError(38, "Function not implemented")

    monkeypatch.setattr(alone_module, "_lock", refuses)
    with alone(tmp_path / "lock"):
        assert (tmp_path / "lock").exists()
