"""What the system's own schedulers are told, and that it is taken away again."""

from __future__ import annotations

import errno
import plistlib
from pathlib import Path
from typing import TYPE_CHECKING
from xml.etree import ElementTree as ET

import pytest

from studio_planner.craft.errors import StudioError
from studio_planner.ringing.carrying import Ran, run_command
from studio_planner.ringing.scheduling import Around, scheduler_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.ports import Scheduler

PROGRAM = ("/opt/py thon/bin/python", "-m", "studio_planner")
SYSTEMS = ("linux", "darwin", "win32")


class Runner:
    """Notes what it is asked to run; fails where it is told to."""

    def __init__(self) -> None:
        self.ran: list[tuple[str, ...]] = []
        self.fails: set[str] = set()

    def __call__(self, command: Sequence[str]) -> Ran:
        self.ran.append(tuple(command))
        refused = self.fails.intersection(command)
        return Ran(1, "Access\n denied") if refused else Ran(0, "")


@pytest.fixture
def runner() -> Runner:
    return Runner()


def scheduler(
    system: str, home: Path, runner: Runner, environment: dict[str, str] | None = None
) -> Scheduler:
    around = Around(home=home, environment=environment or {}, user=1000, program=PROGRAM)
    return scheduler_of(system, around, runner)


def files(home: Path) -> list[Path]:
    return sorted(path.relative_to(home) for path in home.rglob("*") if path.is_file())


@pytest.fixture
def studio(tmp_path: Path) -> Path:
    return tmp_path / "my 50% $tudio.studio"


@pytest.mark.parametrize("system", SYSTEMS)
def test_nothing_is_done_before_it_is_said(
    system: str, tmp_path: Path, runner: Runner, studio: Path
) -> None:
    errand = scheduler(system, tmp_path, runner).install(studio)
    assert (files(tmp_path), runner.ran) == ([], [])
    assert str(studio) in errand.says
    for path, _ in errand.writes:
        assert str(path) in errand.says


@pytest.mark.parametrize("system", SYSTEMS)
def test_what_is_installed_is_removed_without_a_trace(
    system: str, tmp_path: Path, runner: Runner, studio: Path
) -> None:
    one = scheduler(system, tmp_path, runner)
    one.carry_out(one.install(studio))
    assert files(tmp_path)
    one.carry_out(one.install(studio))  # again changes nothing
    one.carry_out(one.remove(studio))
    assert files(tmp_path) == []
    one.carry_out(one.remove(studio))


@pytest.mark.parametrize("system", SYSTEMS)
def test_two_studios_have_entries_of_their_own(
    system: str, tmp_path: Path, runner: Runner, studio: Path
) -> None:
    one = scheduler(system, tmp_path, runner)
    first, second = one.install(studio), one.install(studio.with_name("other.studio"))
    assert not {path for path, _ in first.writes} & {path for path, _ in second.writes}


def test_systemd_gets_a_timer_and_a_service(
    tmp_path: Path, runner: Runner, studio: Path
) -> None:
    one = scheduler("linux", tmp_path, runner)
    one.carry_out(one.install(studio))
    folder = tmp_path / ".config" / "systemd" / "user"
    service, timer = sorted(folder.iterdir())
    assert runner.ran == [
        ("systemctl", "--user", "daemon-reload"),
        ("systemctl", "--user", "enable", "--now", timer.name),
    ]
    text = service.read_text(encoding="utf-8")
    quoted = str(studio).replace("%", "%%").replace("$", "$$")
    start = f'ExecStart="{PROGRAM[0]}" "-m" "studio_planner" "remind" "{quoted}" "--listen" '
    assert start in text
    assert "OnCalendar=minutely" in timer.read_text(encoding="utf-8")
    assert timer.stem == service.stem


def test_systemd_looks_where_the_maker_keeps_settings(
    tmp_path: Path, runner: Runner, studio: Path
) -> None:
    elsewhere = {"XDG_CONFIG_HOME": str(tmp_path / "settings")}
    errand = scheduler("linux", tmp_path, runner, elsewhere).install(studio)
    assert errand.writes[0][0].is_relative_to(tmp_path / "settings" / "systemd" / "user")


def test_launchd_gets_an_agent(tmp_path: Path, runner: Runner, studio: Path) -> None:
    one = scheduler("darwin", tmp_path, runner)
    one.carry_out(one.install(studio))
    (path,) = (tmp_path / "Library" / "LaunchAgents").iterdir()
    agent = plistlib.loads(path.read_bytes())
    assert agent["ProgramArguments"][:5] == [*PROGRAM, "remind", str(studio)]
    assert agent["StartInterval"] == 60
    assert runner.ran == [
        ("launchctl", "bootout", f"gui/1000/{agent['Label']}"),
        ("launchctl", "bootstrap", "gui/1000", str(path)),
    ]


def test_the_task_scheduler_gets_a_task(tmp_path: Path, runner: Runner, studio: Path) -> None:
    one = scheduler("win32", tmp_path, runner, {"LOCALAPPDATA": str(tmp_path / "local")})
    one.carry_out(one.install(studio))
    (path,) = (tmp_path / "local" / "studio-planner").iterdir()
    task = ET.fromstring(path.read_text(encoding="utf-16"))  # noqa: S314 - written here
    space = {"t": "http://schemas.microsoft.com/windows/2004/02/mit/task"}
    assert task.findtext(".//t:Command", namespaces=space) == PROGRAM[0]
    arguments = task.findtext(".//t:Arguments", namespaces=space) or ""
    assert f'remind "{studio}" --listen' in arguments
    assert task.findtext(".//t:Interval", namespaces=space) == "PT1M"
    assert runner.ran == [
        ("schtasks", "/Create", "/F", "/TN", path.stem, "/XML", str(path)),
    ]


@pytest.mark.parametrize(
    ("system", "word"), list(zip(SYSTEMS, ("enable", "bootstrap", "/Create"), strict=True))
)
def test_what_the_system_refuses_is_a_sentence_and_leaves_nothing(
    system: str, word: str, tmp_path: Path, runner: Runner, studio: Path
) -> None:
    runner.fails = {word}
    one = scheduler(system, tmp_path, runner)
    with pytest.raises(StudioError, match="failed: Access denied"):
        one.carry_out(one.install(studio))
    assert files(tmp_path) == []


def test_a_folder_that_cannot_be_written_is_a_sentence(
    tmp_path: Path, runner: Runner, studio: Path
) -> None:
    (tmp_path / ".config").write_text("a file", encoding="utf-8")
    one = scheduler("linux", tmp_path, runner)
    with pytest.raises(StudioError, match="cannot be written"):
        one.carry_out(one.install(studio))


def test_what_is_installed_stays_whole_when_it_cannot_be_written_again(
    tmp_path: Path, runner: Runner, studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    one = scheduler("linux", tmp_path, runner)
    one.carry_out(one.install(studio))
    before = {path: (tmp_path / path).read_bytes() for path in files(tmp_path)}

    def fills_the_disk(path: Path, content: bytes) -> int:
        with path.open("wb") as file:
            file.write(content[:10])
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "write_bytes", fills_the_disk)
    with pytest.raises(StudioError, match="no space left on device"):
        one.carry_out(one.install(studio))
    assert {path: (tmp_path / path).read_bytes() for path in files(tmp_path)} == before


def test_what_runs_is_not_ended_before_the_new_one_stands(
    tmp_path: Path, runner: Runner, studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    one = scheduler("darwin", tmp_path, runner)
    one.carry_out(one.install(studio))
    ended = [command for command in runner.ran if "bootout" in command]

    def full(path: Path, content: bytes) -> int:
        raise OSError(errno.ENOSPC, "No space left on device", str(path), len(content))

    monkeypatch.setattr(Path, "write_bytes", full)
    with pytest.raises(StudioError, match="no space left on device"):
        one.carry_out(one.install(studio))
    assert [command for command in runner.ran if "bootout" in command] == ended
    assert runner.ran[-1][1] == "bootstrap"


def test_what_was_installed_runs_on_where_the_new_one_is_refused(
    tmp_path: Path, runner: Runner, studio: Path
) -> None:
    one = scheduler("darwin", tmp_path, runner)
    one.carry_out(one.install(studio))
    (path,) = (tmp_path / "Library" / "LaunchAgents").iterdir()
    before = plistlib.loads(path.read_bytes()) | {"StartInterval": 30}
    path.write_bytes(plistlib.dumps(before))
    runner.fails, runner.ran = {"bootstrap"}, []
    with pytest.raises(StudioError, match="failed: Access denied"):
        one.carry_out(one.install(studio))
    assert plistlib.loads(path.read_bytes()) == before
    assert [command[1] for command in runner.ran] == ["bootout", "bootstrap", "bootstrap"]


def test_a_command_that_is_missing_ends_in_a_sentence() -> None:
    ran = run_command(["there-is-no-such-command"])
    assert (ran.code, ran.said) == (127, "this system has no there-is-no-such-command.")


def test_a_command_gives_its_code_and_what_it_said() -> None:
    import sys  # noqa: PLC0415 - only here

    ran = run_command([sys.executable, "-c", "import sys; print('hm'); sys.exit(3)"])
    assert (ran.code, ran.said.strip()) == (3, "hm")
