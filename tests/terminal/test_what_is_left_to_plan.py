"""Plans of studios of which everything has left, of too few days, and from a time gone by."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind
from studio_planner.services.log_book.pours import PourTold, poured
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.studio_files import create, read_planned, read_studio
from studio_planner.storage.studio_file import open_studio
from tests.services.small_studios import kept

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from tests.terminal.conftest import Terminal


def finished(studio: Studio) -> Studio:
    """A planned studio in which all was poured as planned, and packed."""
    coats = sorted(kept(studio).coats, key=lambda coat: coat.start)
    for coat in coats:
        if not coat.poured:
            pour = PourTold(piece=coat.piece, coat=coat.coat, start=coat.start, end=coat.end)
            studio = poured(studio, (pour,), coat.end).make(studio)
    at = coats[-1].end + timedelta(days=20)
    pieces = tuple(piece.key for piece in studio.pieces)
    return told(studio, StepTold(kind=EntryKind.PACKED, pieces=pieces, at=at), at).make(studio)


@pytest.fixture
def done(terminal: Terminal, unplanned: Path) -> Path:
    """A file in which all was poured, and all but one order's pieces are packed."""
    assert terminal("plan", unplanned, "--keep").code == 0
    path = unplanned.with_name("done.studio")
    create(path, finished(read_studio(unplanned)))
    with open_studio(path) as file:
        studio = file.read()
        last = max(entry.at for entry in studio.log)
    terminal.now = last + timedelta(days=1)
    return path


def test_a_studio_of_which_all_is_packed_or_has_left_has_nothing_to_plan(
    terminal: Terminal, done: Path
) -> None:
    logged = terminal("log", done, "shipped", "market")
    assert logged.code == 0, logged.err
    assert "plans again" not in logged.out
    answer = terminal("plan", done, "--keep")
    assert answer.code == 0
    said = " ".join(answer.out.split())
    assert "everything is packed or has left; there is nothing to plan." in said
    assert "Ready, on the safe side" not in said
    assert "How good" not in said
    studio, _ = read_planned(done)
    assert not studio.plan_outdated
    assert terminal("check", done).code == 0


def test_an_order_that_has_left_is_shipped_and_not_still_to_leave(
    terminal: Terminal, done: Path
) -> None:
    assert terminal("log", done, "shipped", "market").code == 0
    said = " ".join(terminal("promise", done).out.split())
    assert "shipped" in said
    assert "to spare" not in said
    (row,) = terminal("promise", done, "--json").json["orders"]
    assert row["state"] == "shipped"
    assert row["held"] is None


def test_too_few_days_leave_orders_unplanned_and_say_how_many(
    terminal: Terminal, unplanned: Path
) -> None:
    answer = terminal("plan", unplanned, "--days", "1")
    said = " ".join(answer.out.split())
    assert answer.code == 1
    assert (
        "Late: no order that is planned; 1 order has pieces left out and is not planned."
        in said
    )
    found = terminal("plan", unplanned, "--days", "1", "--json").json
    assert found["orders_not_planned"] == 1


def test_a_plan_from_a_time_that_has_passed_says_so(
    terminal: Terminal, unplanned: Path
) -> None:
    note = "Note: --from has passed."
    assert note in terminal("plan", unplanned, "--from", "2026-02-02T06:00").out
    assert note not in terminal("plan", unplanned, "--from", "2026-02-02T06:58").out
    assert note not in terminal("plan", unplanned).out
