from __future__ import annotations

import json
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.services import sample as sample_service
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.screens import Screen
from tests.services.small_studios import DAY, two_trays

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal


def _joined(text: str) -> str:
    return " ".join(text.split())


@pytest.fixture
def small_sample(monkeypatch: pytest.MonkeyPatch) -> None:
    """The sample's way through the program, with a studio that is planned in a moment."""
    small = two_trays()
    monkeypatch.setattr(sample_service, "_stored", lambda: small)


def test_the_sample_is_planned_and_in_the_file(sample: Path) -> None:
    studio = read_studio(sample)
    assert studio.plan is not None
    assert studio.plan.start.astimezone(studio.time_zone).date() == DAY


@pytest.mark.usefixtures("small_sample")
def test_the_sample_begins_today_unless_told_otherwise(
    terminal: Terminal, tmp_path: Path
) -> None:
    terminal.now += timedelta(days=3)
    answer = terminal("sample", tmp_path / "a.studio")
    assert answer.code == 0
    assert f"from {DAY + timedelta(days=3)} on" in answer.out
    plan = read_studio(tmp_path / "a.studio").plan
    assert plan is not None
    assert plan.start.date() == DAY + timedelta(days=3)


def test_the_sample_is_never_written_over_a_file(terminal: Terminal, sample: Path) -> None:
    before = sample.read_bytes()
    answer = terminal("sample", sample)
    assert answer.code == 2
    assert "is there already" in answer.one_sentence
    assert sample.read_bytes() == before


@pytest.mark.parametrize("day", ["1979-06-01", "9999-12-31", "1700-01-01"])
def test_a_first_day_out_of_range_is_refused_with_the_range(
    terminal: Terminal, tmp_path: Path, day: str
) -> None:
    answer = terminal("sample", tmp_path / "a.studio", "--on", day)
    assert answer.code == 2
    assert f"--on {day} is outside 1980 to 2150" in answer.one_sentence
    assert not (tmp_path / "a.studio").exists()


@pytest.mark.parametrize("day", ["soon", "2026-13-01", "2026-02-30"])
def test_a_first_day_that_is_none_is_refused(
    terminal: Terminal, tmp_path: Path, day: str
) -> None:
    answer = terminal("sample", tmp_path / "a.studio", "--on", day)
    assert answer.code == 2
    assert "is not a date" in answer.one_sentence
    assert not (tmp_path / "a.studio").exists()


def test_a_folder_that_is_not_there_is_told(terminal: Terminal, unplanned: Path) -> None:
    target = unplanned.parent / "none" / "out.json"
    answer = terminal("export", unplanned, target)
    assert answer.code == 2
    assert answer.one_sentence == (
        f"{target} cannot be found or made: there is no folder {target.parent}; check its name."
    )


def test_export_says_whether_a_plan_goes_with_it(
    terminal: Terminal, sample: Path, unplanned: Path, tmp_path: Path
) -> None:
    bare = _joined(terminal("export", unplanned, tmp_path / "bare.json").out)
    assert bare.endswith(f"everything in {unplanned}, which keeps no plan yet.")
    whole = _joined(terminal("export", sample, tmp_path / "whole.json").out)
    assert whole.endswith(f"everything in {sample}, with its kept plan.")


@pytest.mark.parametrize("name", ["", "  "])
@pytest.mark.parametrize("command", ["sample", "plan", "check", "import"])
def test_an_empty_name_is_refused(terminal: Terminal, command: str, name: str) -> None:
    words = ["in.json", name] if command == "import" else [name]
    answer = terminal(command, *words)
    assert answer.code == 2
    assert "FILE: the name is empty" in answer.one_sentence


def test_export_and_import_carry_everything(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    target, again = tmp_path / "out.json", tmp_path / "again.studio"
    assert terminal("export", sample, target).code == 0
    assert terminal("import", target, again).code == 0
    assert read_studio(again) == read_studio(sample)


def test_what_of_an_import_cannot_be_planned_is_told_and_it_opens_all_the_same(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    source, target = tmp_path / "in.json", tmp_path / "new.studio"
    terminal("export", sample, source)
    whole = json.loads(source.read_text(encoding="utf-8"))
    tray = next(one for one in whole["studio"]["pieces"] if one["name"] == "Dusk tray")
    for coat in tray["stack"]:
        coat["joint"] = "wet in wet"
    source.write_text(json.dumps(whole), encoding="utf-8")
    answer = terminal("import", source, target)
    assert answer.code == 0
    said = " ".join(answer.out.split())
    assert "Dusk tray, prime: it lies on the bare piece, where nothing is wet" in said
    assert "Dusk tray, colour pour: only two-part mixes meet wet in wet" in said
    assert len(read_studio(target).piece(tray["key"]).stack) == len(tray["stack"])


def test_import_refuses_a_file_that_exists_and_leaves_it_alone(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    target = tmp_path / "out.json"
    terminal("export", sample, target)
    before = sample.read_bytes()
    answer = terminal("import", target, sample)
    assert answer.code == 2
    assert "is there already" in answer.one_sentence
    assert sample.read_bytes() == before


def test_an_import_that_is_no_studio_is_told_in_one_sentence(
    terminal: Terminal, tmp_path: Path
) -> None:
    source = tmp_path / "in.json"
    source.write_text("[1, 2", encoding="utf-8")
    answer = terminal("import", source, tmp_path / "a.studio")
    assert answer.code == 2
    assert "in.json" in answer.one_sentence


@pytest.mark.parametrize("command", ["plan", "check", "promise", "next", "export"])
@pytest.mark.parametrize(
    "content", [None, b"", b"hello", b"SQLite format 3\x00" + b"\x00" * 200]
)
def test_a_file_that_is_no_studio_is_told_in_one_sentence(
    terminal: Terminal, tmp_path: Path, command: str, content: bytes | None
) -> None:
    path = tmp_path / "a.studio"
    if content is not None:
        path.write_bytes(content)
    words = [tmp_path / "out.json"] if command == "export" else []
    answer = terminal(command, path, *words)
    assert answer.code == 2
    assert str(path) in answer.one_sentence
    assert not (tmp_path / "out.json").exists()


def test_with_a_screen_the_desk_is_opened_on_the_file(terminal: Terminal, sample: Path) -> None:
    terminal.screen = Screen(answers=True)
    answer = terminal(sample)
    assert (answer.code, answer.out, answer.err) == (0, "", "")
    assert terminal.opened == [sample]


def test_without_a_screen_the_kept_plan_is_printed_and_the_reason_said(
    terminal: Terminal, sample: Path, unplanned: Path
) -> None:
    answer = terminal(sample)
    assert answer.code == 0
    assert answer.out.startswith("There is no screen here to open the desk on")
    assert "Night sky panel" in answer.out
    assert terminal.opened == []
    assert terminal(unplanned).code == 1


@pytest.mark.usefixtures("small_sample")
def test_a_display_that_does_not_answer_is_named_above_the_printed_plan(
    terminal: Terminal,
) -> None:
    terminal.screen = Screen(answers=False, silent="DISPLAY=:77")
    answer = terminal()
    assert (answer.code, answer.err) == (0, "")
    assert answer.out.startswith("The display DISPLAY=:77 does not answer")
    assert "Tide tray" in answer.out


def test_the_desk_of_a_file_on_a_display_that_does_not_answer_is_refused(
    terminal: Terminal, sample: Path
) -> None:
    terminal.screen = Screen(answers=False, silent="DISPLAY=:77")
    answer = terminal(sample)
    assert answer.code == 2
    assert "DISPLAY=:77 does not answer; set it to one that does" in answer.one_sentence
    assert terminal.opened == []


@pytest.mark.usefixtures("small_sample")
def test_without_a_file_the_sample_is_made_once_in_the_makers_own_folder(
    terminal: Terminal,
) -> None:
    path = terminal.folder / "data" / sample_service.FILE_NAME
    first = terminal()
    assert first.code == 0
    assert "There is no screen" in first.out
    before = path.read_bytes()
    terminal.screen = Screen(answers=True)
    assert terminal().code == 0
    assert terminal.opened == [path]
    assert path.read_bytes() == before


def test_a_folder_that_cannot_be_made_is_told_in_one_sentence(terminal: Terminal) -> None:
    (terminal.folder / "data").write_text("a file where the folder should be")
    answer = terminal()
    assert answer.code == 2
    assert str(terminal.folder / "data") in answer.one_sentence


@pytest.mark.parametrize("command", ["sample", "plan", "check"])
def test_a_name_that_no_system_takes_is_told_in_one_sentence(
    terminal: Terminal, tmp_path: Path, command: str
) -> None:
    answer = terminal(command, tmp_path / ("x" * 300))
    assert answer.code == 2
    assert answer.one_sentence


def test_where_a_folder_stands_no_studio_is_made(terminal: Terminal, tmp_path: Path) -> None:
    answer = terminal("sample", tmp_path)
    assert answer.code == 2
    assert "is a folder" in answer.one_sentence
    assert terminal("plan", tmp_path).code == 2
