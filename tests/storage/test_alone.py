"""One at a time, whatever becomes of the one before."""

from __future__ import annotations

import subprocess
import sys
from typing import TYPE_CHECKING

from studio_planner.storage.alone import alone_at

if TYPE_CHECKING:
    from pathlib import Path

HOLDER = """
import sys
from pathlib import Path
from studio_planner.storage.alone import alone_at
with alone_at(Path(sys.argv[1])) as ours:
    print(ours, flush=True)
    sys.stdin.read()
"""


def test_who_comes_second_is_kept_out_until_the_first_has_left(tmp_path: Path) -> None:
    lock = tmp_path / "made when needed" / "mix.lock"
    with alone_at(lock) as first, alone_at(lock, patience=0.0) as second:
        assert (first, second) == (True, False)
    with alone_at(lock, patience=0.0) as again:
        assert again


def test_who_is_killed_inside_keeps_nobody_out(tmp_path: Path) -> None:
    lock = tmp_path / "mix.lock"
    command = [sys.executable, "-c", HOLDER, str(lock)]
    with subprocess.Popen(  # noqa: S603 - this Python, and a text of ours
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as holder:
        assert holder.stdout is not None
        assert holder.stdout.readline() == "True\n"
        with alone_at(lock, patience=0.0) as ours:
            assert not ours
        holder.kill()
        holder.wait()
        with alone_at(lock) as ours:
            assert ours


def test_where_nothing_can_be_locked_the_work_goes_on(tmp_path: Path) -> None:
    (tmp_path / "a file").write_text("no folder", encoding="utf-8")
    with alone_at(tmp_path / "a file" / "mix.lock") as ours:
        assert not ours
