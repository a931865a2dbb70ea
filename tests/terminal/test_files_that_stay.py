"""Files that no command writes over, whatever name it is given."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.terminal.conftest import Terminal


@pytest.mark.parametrize(
    "words",
    [
        ("calendar", "{studio}", "{target}"),
        ("calendar", "{studio}", "{target}", "--test"),
        ("sheet", "{studio}", "{target}", "--stock"),
        ("sheet", "{studio}", "{target}", "--stock", "--overwrite"),
        ("export", "{studio}", "{target}"),
        ("sample", "{target}"),
    ],
)
@pytest.mark.parametrize("own", [True, False])
def test_no_command_writes_over_a_studio(
    terminal: Terminal, sample: Path, words: tuple[str, ...], *, own: bool
) -> None:
    other = Path(shutil.copy(sample, sample.with_name("other.studio")))
    target = sample if own else other
    before = sample.read_bytes(), other.read_bytes()
    answer = terminal(*(word.format(studio=sample, target=target) for word in words))
    assert answer.code == 2
    assert "choose another name" in answer.one_sentence
    assert "--overwrite" not in answer.one_sentence
    assert (sample.read_bytes(), other.read_bytes()) == before


@pytest.mark.parametrize("more", [(), ("--test",)])
@pytest.mark.parametrize(
    "content",
    [
        "what to buy",
        "",
        "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//another//another//EN\r\nEND:VCALENDAR\r\n",
    ],
)
def test_a_calendar_is_written_over_nothing_but_our_calendars(
    terminal: Terminal, sample: Path, tmp_path: Path, content: str, more: tuple[str, ...]
) -> None:
    notes = tmp_path / "notes.txt"
    notes.write_bytes(content.encode())
    answer = terminal("calendar", sample, notes, *more)
    assert answer.code == 2
    assert "no calendar file that was written here; choose another name" in answer.one_sentence
    assert notes.read_bytes() == content.encode()


def test_a_calendar_is_written_over_the_one_before(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    target = tmp_path / "plan.ics"
    assert terminal("calendar", sample, target, "--test").code == 0
    assert terminal("calendar", sample, target).code == 0
    assert target.read_bytes().count(b"BEGIN:VEVENT") > 1
