"""What the bootstrap asks of the machine it runs on, behind one port that tests replace."""

from __future__ import annotations

import ctypes
import importlib.util
import os
import platform
import shutil
import subprocess
import sys
from dataclasses import dataclass
from typing import TYPE_CHECKING, NoReturn, Protocol

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path

NO_SUCH_COMMAND = 127


class Trouble(Exception):  # noqa: N818 - it is the user's trouble, and its text is for them
    """The bootstrap can't go on; the text is one sentence that says what to do."""


@dataclass(frozen=True, slots=True)
class Answer:
    """How a command ended: its exit code, and all that it printed where that was kept."""

    code: int
    text: str = ""


class Machine(Protocol):
    """The operating system, as far as the bootstrap needs it."""

    @property
    def system(self) -> str:
        """``linux``, ``darwin`` or ``win32``."""

    @property
    def python(self) -> str:
        """The Python that runs the bootstrap: path, version and build, in one line."""

    @property
    def is_root(self) -> bool:
        """Whether system packages may be installed without asking for a password."""

    @property
    def glibc(self) -> tuple[int, ...] | None:
        """The version of the GNU C library; None where there is another one."""

    @property
    def environment(self) -> Mapping[str, str]:
        """The environment variables."""

    def has_module(self, name: str) -> bool:
        """Whether the Python that runs the bootstrap can import ``name``."""

    def has_command(self, name: str) -> bool:
        """Whether ``name`` is on the search path."""

    def has_library(self, name: str) -> bool:
        """Whether the loader finds the shared library ``name``."""

    def ask(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        """Run ``command`` to its end and keep what it prints."""

    def show(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        """As `ask`, but ordinary output goes to the terminal; only complaints are kept."""

    def become(self, command: Sequence[str], folder: Path | None = None) -> int:
        """Go on as ``command``; returns its exit code where a process can't be replaced."""


class ThisMachine:
    """The machine that we really run on."""

    system = sys.platform
    python = f"{sys.executable} {sys.version}"

    @property
    def is_root(self) -> bool:
        """Whether this user may install system packages."""
        return sys.platform != "win32" and os.geteuid() == 0

    @property
    def glibc(self) -> tuple[int, ...] | None:
        """The version of the GNU C library."""
        name, version = platform.libc_ver()
        return tuple(int(part) for part in version.split(".")) if name == "glibc" else None

    @property
    def environment(self) -> Mapping[str, str]:
        """The variables of this process, less those that would lead Python or pip astray."""
        astray = ("PYTHONHOME", "PYTHONPATH", "PIP_TARGET", "PIP_PREFIX", "VIRTUAL_ENV")
        kept = {name: value for name, value in os.environ.items() if name not in astray}
        return kept | {"PIP_USER": "0", "PIP_DISABLE_PIP_VERSION_CHECK": "1"}

    def has_module(self, name: str) -> bool:
        """Whether this Python can import ``name``."""
        return importlib.util.find_spec(name) is not None

    def has_command(self, name: str) -> bool:
        """Whether ``name`` is on the search path."""
        return shutil.which(name) is not None

    def has_library(self, name: str) -> bool:
        """Whether the loader finds the shared library ``name``."""
        try:
            ctypes.CDLL(name)
        except OSError:
            return False
        return True

    def ask(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        """Run ``command`` and keep what it prints."""
        return self._run(command, extra, subprocess.PIPE, subprocess.STDOUT)

    def show(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        """Run ``command``; only its complaints are kept."""
        return self._run(command, extra, None, subprocess.PIPE)

    def become(self, command: Sequence[str], folder: Path | None = None) -> int:
        """Go on as ``command``."""
        environment = dict(self.environment)
        if self.system == "win32":  # exec there gives the prompt back before the program ends
            return subprocess.run(command, env=environment, cwd=folder, check=False).returncode
        return self._replace(command, environment, folder)

    def _replace(
        self, command: Sequence[str], environment: Mapping[str, str], folder: Path | None
    ) -> NoReturn:
        if folder is not None:
            os.chdir(folder)
        sys.stdout.flush()
        os.execve(command[0], list(command), environment)

    def _run(
        self,
        command: Sequence[str],
        extra: Mapping[str, str] | None,
        output: int | None,
        complaints: int,
    ) -> Answer:
        try:
            ended = subprocess.run(
                command,
                env={**self.environment, **(extra or {})},
                stdin=subprocess.DEVNULL,
                stdout=output,
                stderr=complaints,
                encoding="utf-8",
                errors="replace",
                check=False,
            )
        except OSError as error:
            return Answer(NO_SUCH_COMMAND, str(error))
        return Answer(ended.returncode, (ended.stdout or "") + (ended.stderr or ""))
