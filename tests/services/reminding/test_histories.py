"""Reminders in random histories: nothing is lost, nothing doubled, nothing rings once seen."""

from __future__ import annotations

from datetime import time

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from tests.services.reminding.expected import Expected, Unexpected, Wish
from tests.services.reminding.played import MINUTE, STARTS, History

_EACH = 20
_NEVER_QUIET = (time(0), time(0))


@pytest.mark.parametrize("first", range(0, 8 * _EACH, _EACH))
def test_nothing_is_lost_doubled_or_told_once_acknowledged(first: int) -> None:
    played = [History(seed).play() for seed in range(first, first + _EACH)]
    assert sum(expected.rung for expected in played) > _EACH


@given(st.integers(min_value=10_000))
@example(101418)  # put off, and the clock set back before that moment
def test_nothing_is_lost_in_any_history(seed: int) -> None:
    History(seed).play()


def test_what_is_expected_notices_what_is_lost() -> None:
    expected = Expected("UTC", *_NEVER_QUIET)
    expected.wish("r1", Wish(meant=STARTS[0], saved_until=None, lost_later=False))
    with pytest.raises(Unexpected, match="not on the list"):
        expected.ticked([], STARTS[0] + MINUTE)


def test_what_is_expected_notices_what_rings_early_or_twice() -> None:
    expected = Expected("UTC", *_NEVER_QUIET)
    expected.wish("r1", Wish(meant=STARTS[0], saved_until=None, lost_later=False))
    with pytest.raises(Unexpected, match="before it is due"):
        expected.call_begins(["r1"], STARTS[0] - MINUTE, set())
    expected.call_begins(["r1"], STARTS[0], set())
    expected.shown("sound", "one", "", ["r1"])
    with pytest.raises(Unexpected, match="told 2 times"):
        expected.shown("sound", "two", "", ["r1"])
    expected.acknowledged("r1", STARTS[0])
    with pytest.raises(Unexpected, match="after it was acknowledged"):
        expected.call_begins(["r1"], STARTS[0], set())
