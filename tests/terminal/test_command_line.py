from __future__ import annotations

import os
import re
import subprocess
import sys
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest

from studio_planner import __main__, assembly
from studio_planner.craft.errors import StudioError
from studio_planner.craft.plans import Goal
from studio_planner.science.stages import Stage
from studio_planner.services.desk import DeskView
from studio_planner.services.paper.stock_list import stock_list
from studio_planner.terminal import entry
from studio_planner.terminal.arguments import COMMANDS
from studio_planner.terminal.reading import when_of
from studio_planner.terminal.writing import clock_words, hours_words, printable, say_table
from tests.services.small_studios import morning, two_trays

if TYPE_CHECKING:
    from tests.terminal.conftest import Terminal

ROOT = Path(__file__).resolve().parents[2]


@pytest.mark.parametrize(
    "words",
    [
        ("plan",),
        ("plan", "a", "b"),
        ("--nonsense",),
        ("plot", "a.studio"),
        ("weigh", "a.studio"),
        ("plan", "a.studio", "--kee"),
        ("import", "a.json"),
    ],
)
def test_arguments_that_do_not_fit_are_told_in_one_sentence(
    terminal: Terminal, words: tuple[str, ...]
) -> None:
    answer = terminal(*words)
    assert answer.code == 2
    assert "--help." in answer.one_sentence


@pytest.mark.parametrize("words", [("-x",), ("--json", "plan"), ("--sheet", "a.csv")])
def test_an_option_without_a_command_is_answered_with_the_commands(
    terminal: Terminal, words: tuple[str, ...]
) -> None:
    told = terminal(*words).one_sentence
    assert f"{words[0]} is not an option here; a command comes first: sample, plan," in told


def test_a_mistyped_command_is_answered_with_the_commands(
    terminal: Terminal, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    answer = terminal("chek")
    assert answer.code == 2
    assert "it is no command; the commands are sample, plan, check" in answer.one_sentence
    assert terminal("").code == 2
    for file in ("mine.studio", "there/mine"):
        assert "no command" not in terminal(file).one_sentence


def test_help_names_the_columns_of_the_files_that_are_read(terminal: Terminal) -> None:
    said = terminal("stages", "--help").out
    assert "stage,temperature,unit,from,to,time_unit" in said
    assert "time,temperature_c" in said
    assert all(stage in said for stage in Stage)


def test_help_names_every_goal_of_a_plan_in_their_order(terminal: Terminal) -> None:
    named = {
        Goal.LEFT_OUT: "pieces left out",
        Goal.LATENESS: "hours late",
        Goal.SCUFFED: "scuffed joints",
        Goal.TESTED: "joints to test first",
        Goal.MOVED: "pours moved",
        Goal.SPARE: "spare before each promise",
        Goal.MIXES: "separate mixes",
        Goal.ENDS: "early end",
    }
    said = " ".join(terminal("plan", "--help").out.split())
    at = [said.index(named[goal]) for goal in Goal]
    assert at == sorted(at)


@pytest.mark.parametrize("days", ["0", "-1", "two", "1.5", "99999", "³"])
def test_days_are_a_whole_number(terminal: Terminal, unplanned: Path, days: str) -> None:
    answer = terminal("plan", unplanned, f"--days={days}")
    assert answer.code == 2
    assert "--days" in answer.one_sentence


def test_help_lists_every_command(terminal: Terminal) -> None:
    answer = terminal("--help")
    assert answer.code == 0
    assert all(command in answer.out for command in COMMANDS)
    assert set(COMMANDS) == set(entry._COMMANDS)
    for command in COMMANDS:
        assert terminal(command, "--help").code == 0


def test_an_interrupt_ends_quietly(terminal: Terminal, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupted(*_: object) -> int:
        raise KeyboardInterrupt

    monkeypatch.setattr(entry, "_run", interrupted)
    assert terminal("plan", "a.studio").code == 130


def test_a_file_may_be_called_like_nothing_else(terminal: Terminal) -> None:
    answer = terminal("./plan")
    assert answer.code == 2
    assert "plan is not there" in answer.one_sentence


@pytest.mark.parametrize(
    ("hours", "words"),
    [
        (None, "never"),
        (0.5, "30 min"),
        (8.25, "8 h 15 min"),
        (0.999, "1 h 00 min"),
        (76, "3 d 4 h"),
    ],
)
def test_hours_are_said_as_a_maker_says_them(hours: float | None, words: str) -> None:
    assert hours_words(hours) == words


def test_an_hour_that_comes_twice_is_shown_with_its_zone() -> None:
    vienna = ZoneInfo("Europe/Vienna")
    first = when_of("2026-10-25T02:30+02:00", vienna, "x")
    second = when_of("2026-10-25T02:30+01:00", vienna, "x")
    assert clock_words(vienna, first) == "02:30 (CEST)"
    assert clock_words(vienna, second) == "02:30 (CET)"


def test_a_name_cannot_move_the_cursor_or_widen_a_table(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert printable("a\x1b[2Jb\nc") == "a [2Jb c"
    wide = "漆" * 120
    say_table(("Name", "Other"), [(wide, "x" * 90), ("é" * 4, "y")])
    lines = capsys.readouterr().out.splitlines()
    assert all(len(line) <= 100 for line in lines)
    assert "…" in lines[1]


def test_a_reader_that_has_seen_enough_is_no_error(sample: Path) -> None:
    command = [sys.executable, "-m", "studio_planner", "promise", str(sample)]
    with subprocess.Popen(  # noqa: S603 - our own program
        command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, cwd=ROOT
    ) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        error = process.stderr.read()
    assert (process.returncode, error) == (0, b"")


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no device that is always full")
@pytest.mark.parametrize("words", [["plan"], ["check"], ["check", "--json"], ["--help"]])
def test_an_output_that_takes_no_more_is_told_in_one_sentence(
    sample: Path, words: list[str]
) -> None:
    files = [] if words == ["--help"] else [str(sample)]
    command = [sys.executable, "-m", "studio_planner", *words[:1], *files, *words[1:]]
    with Path("/dev/full").open("wb") as full:
        done = subprocess.run(  # noqa: S603 - our own program
            command, stdout=full, stderr=subprocess.PIPE, text=True, check=False, cwd=ROOT
        )
    assert done.returncode == 2
    assert done.stderr.startswith("The output cannot be written (no space left on device);")
    assert done.stderr.count("\n") == 1


@pytest.mark.skipif(sys.platform == "win32", reason="closed as a shell of Unix closes it")
def test_an_output_that_was_closed_before_the_start_is_no_error(sample: Path) -> None:
    command = [sys.executable, "-m", "studio_planner", "check", str(sample)]
    done = subprocess.run(  # noqa: S603 - our own program
        ["/bin/sh", "-c", 'exec "$@" >&-', "sh", *command],
        stderr=subprocess.PIPE, check=False, cwd=ROOT,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, b"")


def test_the_real_clock_is_aware_and_the_folder_is_the_makers_own() -> None:
    moment = assembly.SystemClock().now()
    assert moment.utcoffset() == timedelta(0)
    assert assembly.data_folder().name == assembly.NAME


def test_a_missing_system_library_is_told_with_what_to_install(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    # None in the table of modules makes their import fail, as a missing library does.
    monkeypatch.setitem(sys.modules, "studio_planner.desktop.application", None)
    with pytest.raises(StudioError, match=r"cannot be opened \(.*apt-get install libegl1"):
        assembly.open_desk(Path("a.studio"))
    monkeypatch.setitem(sys.modules, "studio_planner.desktop.paper.pdf", None)
    sheet = stock_list(DeskView(two_trays(), morning(two_trays())))
    with pytest.raises(StudioError, match=r"cannot be drawn \(.*apt-get install libegl1"):
        assembly.draw_sheet(sheet, morning(two_trays()))


def test_the_program_itself_runs_a_command(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], sample: Path
) -> None:
    monkeypatch.setattr(sys, "argv", ["studio-planner", "check", str(sample)])
    assert __main__.main() == 0
    assert "keeps every rule" in capsys.readouterr().out


_LISTING = """
import sys
from studio_planner.assembly import run
code = run(sys.argv[1:])
heavy = {"PySide6", "shiboken6", "numpy", "scipy", "pandas", "ortools"}
found = sorted({name.partition(".")[0] for name in sys.modules} & heavy)
sys.stderr.write("loaded:" + ",".join(found) + f";code:{code}")
"""


def _loaded(words: list[str]) -> str:
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        environment.pop(name, None)
    done = subprocess.run(  # noqa: S603 - our own program
        [sys.executable, "-c", _LISTING, *words],
        capture_output=True, text=True, check=False, env=environment, cwd=ROOT,
    )  # fmt: skip
    found = re.search(r"loaded:(.*)$", done.stderr)
    assert found is not None, done.stderr
    return found[1]


def test_no_command_but_sheet_loads_qt_and_none_anything_heavy(
    terminal: Terminal, sample: Path, unplanned: Path, tmp_path: Path
) -> None:
    terminal("export", unplanned, tmp_path / "in.json")
    every = {
        "sample": ["sample", str(sample)],
        "plan": ["plan", str(unplanned)],
        "check": ["check", str(sample)],
        "promise": ["promise", str(sample)],
        "next": ["next", str(sample)],
        "weigh": ["weigh", str(sample), "9"],
        "stages": ["stages", str(sample), "tarn", "--at", "20C"],
        "ask": ["ask", str(sample), "if-left"],
        "log": ["log", str(sample), "turned", "tide-tray"],
        "trace": ["trace", str(sample), "tide-tray"],
        "stock": ["stock", str(sample)],
        "cost": ["cost", str(sample), "birthday"],
        "sheet": ["sheet", str(sample), str(tmp_path / "out.pdf"), "--stock"],
        "remind": ["remind", str(sample), "--clear"],
        "calendar": ["calendar", str(sample), str(tmp_path / "out.ics")],
        "export": ["export", str(unplanned), str(tmp_path / "out.json")],
        "import": ["import", str(tmp_path / "in.json"), str(tmp_path / "new.studio")],
    }
    assert set(every) == set(COMMANDS)
    for command, words in every.items():
        expected = 2 if command == "sample" else 0  # it refuses the file that is there
        drawn = "PySide6,shiboken6" if command == "sheet" else ""  # the one that Qt draws for
        assert _loaded(words) == f"{drawn};code:{expected}", command
    assert _loaded([str(sample)]) == ";code:0"
