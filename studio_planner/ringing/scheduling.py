"""The system's own scheduler runs `remind` each minute while no window is open.

What is written and run is made by pure functions; it is said before it is done. Formats:
systemd.timer(5) and systemd.service(5), launchd.plist(5), the task schema 1.2 of Windows.
"""

from __future__ import annotations

import hashlib
import plistlib
import subprocess
from dataclasses import dataclass
from typing import TYPE_CHECKING
from xml.sax.saxutils import escape

from studio_planner.craft.tongue import translate
from studio_planner.ringing.carrying import Carrying, Ran, run_command
from studio_planner.services.ports import Errand, Scheduler

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence
    from pathlib import Path

LISTENS_SECONDS = 45
"""How long `remind` waits for a button after it has rung, when the system runs it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Around:
    """Where a scheduler keeps its files, who it works for, and how this program is started."""

    home: Path
    environment: Mapping[str, str]
    user: int
    program: tuple[str, ...]


class _OwnScheduler(Carrying):
    """What the schedulers of all systems have in common."""

    def __init__(self, around: Around, run: Callable[[Sequence[str]], Ran]) -> None:
        """Run commands with `run`."""
        super().__init__(run)
        self._around = around

    def _command(self, studio: Path) -> tuple[str, ...]:
        listens = ("--listen", str(LISTENS_SECONDS))
        return (*self._around.program, "remind", str(studio.absolute()), *listens)


class Systemd(_OwnScheduler):
    """A timer of the maker's own systemd."""

    def install(self, studio: Path) -> Errand:
        """Say what makes the system remind of the studio file."""
        service, timer = self._units(studio)
        written = ((service, self._service(studio)), (timer, self._timer(studio)))
        return Errand(
            says=_installing(studio, [service, timer]),
            writes=tuple((path, text.encode()) for path, text in written),
            runs=(
                ("systemctl", "--user", "daemon-reload"),
                ("systemctl", "--user", "enable", "--now", timer.name),
            ),
        )

    def remove(self, studio: Path) -> Errand:
        """Say what undoes it."""
        service, timer = self._units(studio)
        return Errand(
            says=_removing(studio, [service, timer]),
            clears=(("systemctl", "--user", "disable", "--now", timer.name),),
            writes=((service, None), (timer, None)),
            runs=(("systemctl", "--user", "daemon-reload"),),
        )

    def _units(self, studio: Path) -> tuple[Path, Path]:
        around = self._around
        told = around.environment.get("XDG_CONFIG_HOME", "")
        settings = around.home / ".config"
        folder = (settings.parent / told if told else settings) / "systemd" / "user"
        name = f"studio-planner-{_mark(studio)}"
        return folder / f"{name}.service", folder / f"{name}.timer"

    def _service(self, studio: Path) -> str:
        words = " ".join(_systemd_word(word) for word in self._command(studio))
        return (
            "[Unit]\n"
            f"Description=Reminders of {_one_line(studio.name)}\n\n"
            "[Service]\n"
            "Type=oneshot\n"
            f"ExecStart={words}\n"
        )

    def _timer(self, studio: Path) -> str:
        return (
            "[Unit]\n"
            f"Description=Reminders of {_one_line(studio.name)}, each minute\n\n"
            "[Timer]\n"
            "OnCalendar=minutely\n"
            "AccuracySec=10s\n"
            "Persistent=true\n\n"
            "[Install]\n"
            "WantedBy=timers.target\n"
        )


class Launchd(_OwnScheduler):
    """An agent of the maker's own launchd."""

    def install(self, studio: Path) -> Errand:
        """Say what makes the system remind of the studio file."""
        path, label = self._agent(studio)
        agent = {
            "Label": label,
            "ProgramArguments": list(self._command(studio)),
            "StartInterval": 60,
            "RunAtLoad": True,
            "ProcessType": "Background",
        }
        domain = f"gui/{self._around.user}"
        return Errand(
            says=_installing(studio, [path]),
            clears=(("launchctl", "bootout", f"{domain}/{label}"),),
            writes=((path, plistlib.dumps(agent)),),
            runs=(("launchctl", "bootstrap", domain, str(path)),),
        )

    def remove(self, studio: Path) -> Errand:
        """Say what undoes it."""
        path, label = self._agent(studio)
        return Errand(
            says=_removing(studio, [path]),
            clears=(("launchctl", "bootout", f"gui/{self._around.user}/{label}"),),
            writes=((path, None),),
        )

    def _agent(self, studio: Path) -> tuple[Path, str]:
        label = f"studio-planner.{_mark(studio)}"
        return self._around.home / "Library" / "LaunchAgents" / f"{label}.plist", label


class TaskScheduler(_OwnScheduler):
    """A task of the maker's own Task Scheduler on Windows."""

    def install(self, studio: Path) -> Errand:
        """Say what makes the system remind of the studio file."""
        path, name = self._task(studio)
        return Errand(
            says=_installing(studio, [path]),
            writes=((path, self._xml(studio).encode("utf-16")),),
            runs=(("schtasks", "/Create", "/F", "/TN", name, "/XML", str(path)),),
        )

    def remove(self, studio: Path) -> Errand:
        """Say what undoes it."""
        path, name = self._task(studio)
        return Errand(
            says=_removing(studio, [path]),
            clears=(("schtasks", "/Delete", "/F", "/TN", name),),
            writes=((path, None),),
        )

    def _task(self, studio: Path) -> tuple[Path, str]:
        told = self._around.environment.get("LOCALAPPDATA", "")
        folder = self._around.home / "AppData" / "Local"
        folder = (folder.parent / told if told else folder) / "studio-planner"
        name = f"studio-planner-{_mark(studio)}"
        return folder / f"{name}.xml", name

    def _xml(self, studio: Path) -> str:
        program, *words = self._command(studio)
        arguments = escape(subprocess.list2cmdline(words))
        return (
            '<?xml version="1.0" encoding="UTF-16"?>\n'
            '<Task version="1.2" '
            'xmlns="http://schemas.microsoft.com/windows/2004/02/mit/task">\n'
            "  <Triggers><TimeTrigger>\n"
            "    <Repetition><Interval>PT1M</Interval></Repetition>\n"
            "    <StartBoundary>2020-01-01T00:00:00</StartBoundary>\n"
            "  </TimeTrigger></Triggers>\n"
            '  <Principals><Principal id="Author">\n'
            "    <LogonType>InteractiveToken</LogonType>\n"
            "    <RunLevel>LeastPrivilege</RunLevel>\n"
            "  </Principal></Principals>\n"
            "  <Settings>\n"
            "    <MultipleInstancesPolicy>IgnoreNew</MultipleInstancesPolicy>\n"
            "    <DisallowStartIfOnBatteries>false</DisallowStartIfOnBatteries>\n"
            "    <StopIfGoingOnBatteries>false</StopIfGoingOnBatteries>\n"
            "    <StartWhenAvailable>true</StartWhenAvailable>\n"
            "    <ExecutionTimeLimit>PT5M</ExecutionTimeLimit>\n"
            "  </Settings>\n"
            '  <Actions Context="Author"><Exec>\n'
            f"    <Command>{escape(program)}</Command>\n"
            f"    <Arguments>{arguments}</Arguments>\n"
            "  </Exec></Actions>\n"
            "</Task>\n"
        )


def scheduler_of(
    system: str, around: Around, run: Callable[[Sequence[str]], Ran] | None = None
) -> Scheduler:
    """The scheduler of a system (as `sys.platform` names it)."""
    run = run or run_command
    if system == "darwin":
        return Launchd(around, run)
    return TaskScheduler(around, run) if system == "win32" else Systemd(around, run)


def _mark(studio: Path) -> str:
    """What tells the entries of one studio file from those of another."""
    return hashlib.blake2b(str(studio.absolute()).encode(), digest_size=6).hexdigest()


def _systemd_word(word: str) -> str:
    plain = word.replace("\\", "\\\\").replace('"', '\\"')
    return '"' + plain.replace("%", "%%").replace("$", "$$").replace("\n", "\\n") + '"'


def _one_line(text: str) -> str:
    return " ".join(text.split()).replace("%", "%%")


def _installing(studio: Path, paths: Sequence[Path]) -> str:
    return translate(
        "ringing",
        "The system will run this program each minute while you are logged in: it looks into "
        "{studio}, rings what is due, and ends. For that it writes {paths}. Taken away again "
        "with: studio-planner remind {studio} --remove",
    ).format(studio=studio, paths=", ".join(map(str, paths)))


def _removing(studio: Path, paths: Sequence[Path]) -> str:
    return translate(
        "ringing",
        "The system will no longer remind of {studio} while no window is open. What was "
        "written for that is taken away: {paths}.",
    ).format(studio=studio, paths=", ".join(map(str, paths)))
