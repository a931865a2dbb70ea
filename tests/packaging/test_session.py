"""The two commands of README: what each needs, and what it becomes."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from bootstrap import session
from bootstrap.environment import Environment
from bootstrap.libraries import SCREEN, WINDOWS
from bootstrap.machine import NO_SUCH_COMMAND, Answer, ThisMachine, Trouble
from typing_extensions import override

from tests.packaging.bare_machine import BareMachine
from tests.packaging.test_alone import is_free

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

START = Path(__file__).parents[2] / "packaging" / "start.py"
OF_WINDOWS = {library.name for library in WINDOWS}
OF_SCREEN = {library.name for library in SCREEN}


@dataclass(slots=True)
class Locked(BareMachine):
    """Looks at the lock whenever something is run."""

    lock: Path = Path()
    free_while_made: list[bool] = field(default_factory=list)
    free_when_run: bool = False

    @override
    def ask(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        self.free_while_made.append(is_free(self.lock))
        return Answer(0)

    @override
    def become(self, command: Sequence[str], folder: Path | None = None) -> int:
        self.free_when_run = is_free(self.lock)
        return 0


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A checkout with its lock files."""
    (tmp_path / "tests").mkdir()
    for name in ("requirements.lock", "pyproject.toml", "tests/requirements.lock"):
        (tmp_path / name).touch()
    return tmp_path


def test_without_a_screen_the_program_runs_without_qt(root: Path) -> None:
    machine = BareMachine(glibc=None)
    assert session.run_program(Environment(root, machine), ["plan", "a.studio"]) == 0
    assert machine.became[1:] == ["-P", "-m", "studio_planner", "plan", "a.studio", "None"]


def test_a_screen_asks_for_the_libraries_of_a_screen(root: Path) -> None:
    machine = BareMachine(environment={"DISPLAY": ":0"}, libraries=OF_WINDOWS)
    with pytest.raises(Trouble, match=r"libxcb-cursor\.so\.0"):
        session.run_program(Environment(root, machine), [])
    machine.libraries |= OF_SCREEN
    session.run_program(Environment(root, machine), [])
    assert machine.became[-2] == "studio_planner"


def test_a_display_that_does_not_answer_asks_for_no_libraries(root: Path) -> None:
    machine = BareMachine(
        environment={"DISPLAY": ":77"}, answers={"this_screen": Answer(session.NO_SCREEN)}
    )
    assert session.run_program(Environment(root, machine), []) == 0
    assert machine.became[-2] == "studio_planner"


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="displays of Linux")
@pytest.mark.parametrize(
    ("variables", "code"),
    [
        ({"DISPLAY": "nowhere.invalid:7"}, session.NO_SCREEN),
        ({"QT_QPA_PLATFORM": "offscreen"}, 0),
    ],
)
def test_the_program_itself_tells_whether_its_screen_answers(
    monkeypatch: pytest.MonkeyPatch, variables: dict[str, str], code: int
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    command = [sys.executable, "-c", session.SCREEN_PROBE]
    told = ThisMachine().ask(command, {"PYTHONPATH": str(session.ROOT), **variables})
    assert told.code == code, told.text


@pytest.mark.parametrize("system", ["darwin", "win32"])
def test_other_systems_always_have_a_screen(system: str) -> None:
    assert session.has_screen(BareMachine(system=system))


def test_the_whole_run_demands_coverage(root: Path) -> None:
    machine = BareMachine(libraries=OF_WINDOWS)
    session.run_tests(Environment(root, machine), [])
    assert machine.became[-3:] == ["--cov", "--cov-fail-under=100", str(root)]


def test_a_chosen_part_of_the_tests_demands_none(root: Path) -> None:
    machine = BareMachine(libraries=OF_WINDOWS)
    session.run_tests(Environment(root, machine), ["-k", "clocks"])
    assert machine.became[-3:] == ["-k", "clocks", str(root)]


@pytest.mark.parametrize(
    ("stop", "code", "sentence"),
    [
        (Trouble("The disk is full."), 2, "The disk is full.\n"),
        (KeyboardInterrupt(), 130, "Stopped; the next start goes on from here.\n"),
    ],
)
def test_what_stops_it_is_one_sentence(
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    stop: BaseException,
    code: int,
    sentence: str,
) -> None:
    def stopped(*_: object) -> int:
        raise stop

    monkeypatch.setattr(session, "run_tests", stopped)
    assert session.main(["test"]) == code
    assert capsys.readouterr().err == sentence


def test_a_start_holds_the_lock_while_it_makes_and_not_while_the_program_runs(
    root: Path,
) -> None:
    environment = Environment(root, machine := Locked())
    machine.lock = environment.lock
    session.run_program(environment, [])
    assert machine.free_while_made == [False] * 3
    assert machine.free_when_run


def test_an_old_python_is_refused_in_a_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 9, 2))
    with pytest.raises(SystemExit) as refusal:
        exec(compile(START.read_text(encoding="utf-8"), START, "exec"), {})  # noqa: S102
    assert refusal.value.code == 2
    told = capsys.readouterr().err
    assert told.startswith("Python 3.11 or newer is needed and this is Python 3.9")
    assert told.count("\n") == 1


def test_this_machine_runs_and_answers() -> None:
    machine = ThisMachine()
    told = machine.ask(
        [sys.executable, "-c", "import os; print(os.environ['WORD'])"], {"WORD": "é"}
    )
    assert (told.code, told.text.strip()) == (0, "é")
    failed = machine.show([sys.executable, "-c", "raise SystemExit('no')"])
    assert (failed.code, failed.text.strip()) == (1, "no")
    assert machine.ask(["no-such-command-here"]).code == NO_SUCH_COMMAND


def test_this_machine_knows_what_it_has() -> None:
    machine = ThisMachine()
    assert machine.has_module("venv")
    assert not machine.has_module("no_such_module")
    assert not machine.has_command("no-such-command-here")
    assert not machine.has_library("libno-such-library.so.1")
    assert machine.python.startswith(sys.executable)


def test_nothing_leads_pip_or_python_astray(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PYTHONPATH", "elsewhere")
    monkeypatch.setenv("PIP_USER", "1")
    environment = ThisMachine().environment
    assert "PYTHONPATH" not in environment
    assert environment["PIP_USER"] == "0"


def test_becoming_a_command_passes_on_its_exit_code(tmp_path: Path) -> None:
    program = (
        "import pathlib, sys; sys.path.insert(0, sys.argv[1]);"
        "from bootstrap.machine import ThisMachine;"
        "sys.exit(ThisMachine().become([sys.executable, '-c', 'raise SystemExit(7)'],"
        " pathlib.Path(sys.argv[2])))"
    )
    command = [sys.executable, "-c", program, str(START.parent), str(tmp_path)]
    assert subprocess.run(command, check=False).returncode == 7  # noqa: S603
