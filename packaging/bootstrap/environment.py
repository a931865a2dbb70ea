"""The environment in ``.venv``, made in steps; each step leaves a stamp when it is done.

A step is done again when its stamp does not say what it should: after a kill half-way, or
when a lock file, the Python or the place of the checkout has changed.
"""

from __future__ import annotations

import hashlib
import shutil
import sys
from typing import TYPE_CHECKING

from bootstrap.complaints import disk_sentence, pip_sentence, qt_sentence
from bootstrap.machine import Trouble

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from bootstrap.machine import Answer, Machine

_LOCKED = ("--require-hashes", "--no-deps")
"""Just what a lock file lists, which is everything: an older pip that looks for what packages
ask for meets newer versions than the listed ones as soon as they are out, and refuses them."""

PROBE = "from PySide6.QtWidgets import QApplication; QApplication([])"


class Environment:
    """The environment of one checkout: ``root`` is its top folder."""

    def __init__(self, root: Path, machine: Machine) -> None:
        """Describe the environment; nothing is made yet."""
        self.root = root
        self.machine = machine
        self.folder = root / ".venv"
        self.stamps = self.folder / "made-by-start"
        self.unfinished = self.stamps / "unfinished"
        self.lock = root / ".venv.lock"

    @property
    def python(self) -> str:
        """The environment's own Python."""
        windows = self.machine.system == "win32"
        return str(self.folder / ("Scripts/python.exe" if windows else "bin/python"))

    def make(self) -> None:
        """Have the program and all that it needs at run time."""
        lock = self._digest("requirements.lock")
        place = f"{self.root} {self.machine.python} {lock}"
        self._step("environment", place, self._create)
        self._step("packages", lock, self._install_packages)
        self._step("project", self._digest("pyproject.toml"), self._install_project)

    def make_for_tests(self) -> None:
        """Have what the tests need besides."""
        lock = self._digest("tests/requirements.lock")
        self._step("test-packages", lock, self._install_test_packages)

    def prove_qt(self) -> None:
        """See once that a window system can be opened in this environment.

        Raises
        ------
        Trouble
            Qt does not start; the sentence has what the loader or Qt said.
        """
        self._step("qt", self.python, self._probe)

    def _step(self, name: str, stamp: str, action: Callable[[], None]) -> None:
        path = self.stamps / name
        try:
            if self._is_done(path, stamp):
                return
            path.unlink(missing_ok=True)
            action()
            path.write_text(stamp, encoding="utf-8")
        except OSError as error:
            raise Trouble(disk_sentence(self.root, error)) from error

    def _is_done(self, path: Path, stamp: str) -> bool:
        if self.unfinished.exists():  # pip may take half a package for a whole one
            return False
        return path.is_file() and path.read_text(encoding="utf-8") == stamp

    def _digest(self, name: str) -> str:
        return hashlib.sha256((self.root / name).read_bytes()).hexdigest()

    def _create(self) -> None:
        if not (self.machine.has_module("venv") and self.machine.has_module("ensurepip")):
            raise Trouble(self._venv_sentence())
        self._clear()
        self.stamps.mkdir(parents=True)
        print(f"Making an environment in {self.folder} ...", flush=True)
        made = self.machine.ask([sys.executable, "-m", "venv", str(self.folder)])
        if "ensurepip is not available" in made.text:
            raise Trouble(self._venv_sentence())
        self._demand(made, lambda text: disk_sentence(self.root, OSError(text)))

    def _venv_sentence(self) -> str:
        if self.machine.has_command("apt-get"):
            sudo = "" if self.machine.is_root else "sudo "
            package = "python{}.{}-venv".format(*sys.version_info)
            cure = f"run {sudo}apt-get install -y {package}"
        else:
            cure = "install the whole of Python 3.11 or newer, with venv and ensurepip"
        return f"This Python can't make an environment, its venv is missing: {cure}"

    def _clear(self) -> None:
        if not self.folder.exists():
            return
        if not self.stamps.exists() and any(self.folder.iterdir()):
            alone = f"{self.folder} was made by something else and is left alone"
            raise Trouble(f"{alone}: move it away, then run the same command again.")
        for entry in self.folder.iterdir():
            if entry.is_dir() and not entry.is_symlink() and entry != self.stamps:
                shutil.rmtree(entry)
        shutil.rmtree(self.folder)  # the stamps last: they tell that it is ours to remove

    def _install_packages(self) -> None:
        print("Fetching the packages, about 150 MB, once ...", flush=True)
        self._pip(*_LOCKED, "--only-binary=:all:", "-r", self._lock())

    def _install_project(self) -> None:
        self._pip(
            "--no-deps", "--no-index", "--no-build-isolation", "--editable", str(self.root)
        )

    def _install_test_packages(self) -> None:
        print("Fetching what the tests need, about 130 MB, once ...", flush=True)
        built_here = ("--no-build-isolation", "--use-pep517")
        self._pip(*_LOCKED, *built_here, "-r", self._lock("tests"))

    def _pip(self, *arguments: str) -> None:
        quiet = () if sys.stdout.isatty() else ("--quiet",)
        pip = [self.python, "-m", "pip", "install", "--no-input", *quiet, *arguments]
        self.unfinished.touch()
        answer = self.machine.show(pip)
        if answer.code >= 0:  # ended by itself, not killed
            self.unfinished.unlink()
        self._demand(answer, pip_sentence)

    def _lock(self, folder: str = ".") -> str:
        return str(self.root / folder / "requirements.lock")

    def _probe(self) -> None:
        offscreen = {"QT_QPA_PLATFORM": "offscreen"}
        self._demand(self.machine.ask([self.python, "-c", PROBE], offscreen), qt_sentence)

    def _demand(self, answer: Answer, sentence: Callable[[str], str]) -> None:
        if answer.code:
            raise Trouble(sentence(answer.text))
