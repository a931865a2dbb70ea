"""Whatever a maker taps, the log only grows, pieces carry what it says, and undo is exact."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from hypothesis import given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.log import EntryKind
from studio_planner.craft.standing import life_of
from studio_planner.services.log_book.corrections import corrected, withdrawn
from studio_planner.services.log_book.entries import as_logged, entry_of
from studio_planner.services.log_book.pours import poured
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.log_book.tracing import trace_piece
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.storage.exchange import studio_from_json, studio_to_json
from tests.services.log_book.logged_studio import NOW, ago, pour, studio

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.changes import Change

    Tap = Callable[[Studio], Change]

COATS = [("tray", "seal"), ("tray", "flood"), ("tray", "top"), ("one", "flood")]
HOURS = st.integers(1, 90)
STEPS = st.sampled_from(
    [EntryKind.TURNED, EntryKind.PACKED, EntryKind.SHIPPED, EntryKind.SPOILED]
    + 2 * [EntryKind.STRIPPED]
)


def _pouring(coat: tuple[str, str], hours: int) -> Tap:
    return lambda now: poured(now, [pour(*coat, hours=hours)], NOW)


def _step(kind: EntryKind, piece: str, hours: int) -> Tap:
    step = StepTold(kind=kind, pieces=(piece,), at=ago(hours))
    return lambda now: told(now, step, NOW)


def _weighing(coat: tuple[str, str], hours: int) -> Tap:
    product = studio().piece(coat[0]).coat(coat[1]).product
    mix = WeighingTold(product=product, at=ago(hours), a_grams=9, b_grams=4, coats=(coat,))
    return lambda now: weighed(now, mix, NOW)


def _withdrawing(number: int) -> Tap:
    return lambda now: withdrawn(now, number, NOW)


def _correcting(number: int, hours: int) -> Tap:
    def tap(now: Studio) -> Change:
        old = entry_of(now, number)
        if old is None or old.kind is EntryKind.WEIGHED:
            return withdrawn(now, number, NOW)
        end = None if old.end is None else ago(hours) + timedelta(minutes=40)
        return corrected(now, number, replace(old, at=ago(hours), end=end), NOW)

    return tap


TAPS = st.one_of(
    st.builds(_pouring, st.sampled_from(COATS), HOURS),
    st.builds(_pouring, st.sampled_from(COATS), HOURS),
    st.builds(_step, STEPS, st.sampled_from(["tray", "one"]), HOURS),
    st.builds(_weighing, st.sampled_from(COATS), HOURS),
    st.builds(_withdrawing, st.integers(1, 8)),
    st.builds(_correcting, st.integers(1, 8), HOURS),
)


def _carries_what_the_log_says(now: Studio) -> bool:
    said = {
        (entry.piece, entry.coat, entry.at, entry.end)
        for piece in now.pieces
        for entry in life_of(now, piece.key)
        if entry.kind is EntryKind.POURED
    }
    return said == {(one.piece, one.coat, one.start, one.end) for one in now.poured}


@settings(max_examples=150, deadline=None)
@given(st.lists(TAPS, max_size=14))
def test_the_log_only_grows_and_pieces_carry_what_it_says(taps: list[Tap]) -> None:
    now = studio()
    for tap in taps:
        after = now
        with suppress(InvalidEntry):
            after = tap(now).make(now)
        if after is now:
            continue
        assert after.log[: len(now.log)] == now.log
        assert len(after.log) > len(now.log)
        assert _carries_what_the_log_says(after)
        now = after
    assert as_logged(now, [piece.key for piece in now.pieces]) == now
    assert studio_from_json(studio_to_json(now)) == now
    assert sum(len(trace_piece(now, piece.key).pours) for piece in now.pieces) >= len(
        now.poured
    )
