from __future__ import annotations

import json
import shutil
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.services.sample import sample_studio
from studio_planner.services.studio_files import create
from studio_planner.terminal.entry import run
from studio_planner.terminal.screens import Screen
from studio_planner.terminal.surroundings import Surroundings
from tests.services.small_studios import DAY, StoppedClock, morning, planned_once, two_trays
from tests.terminal.found_plans import looks

__all__ = ["looks"]

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.services.paper.pages import Sheet


@dataclass(frozen=True)
class Answer:
    """What a command gave back."""

    code: int
    out: str
    err: str

    @property
    def json(self) -> Any:  # noqa: ANN401 - whatever was printed
        return json.loads(self.out)

    @property
    def one_sentence(self) -> str:
        """The error output, which is one line and no trace."""
        assert self.out == ""
        assert self.err.count("\n") == 1
        assert "Traceback" not in self.err
        return self.err.strip()


class Terminal:
    """Runs commands as a maker would, at a moment of the test's choosing."""

    def __init__(self, capsys: pytest.CaptureFixture[str], folder: Path) -> None:
        self._capsys = capsys
        self.folder = folder
        self.screen = Screen(answers=False)
        self.opened: list[Path] = []
        self.now = morning(sample_studio(DAY))

    def __call__(self, *words: str | Path) -> Answer:
        around = Surroundings(
            clock=StoppedClock(self.now),
            screen=lambda: self.screen,
            data_folder=lambda: self.folder / "data",
            open_desk=self._open,
            draw_sheet=self.draw,
        )
        code = run([str(word) for word in words], around)
        printed = self._capsys.readouterr()
        return Answer(code, printed.out, printed.err)

    def draw(self, sheet: Sheet, made: datetime) -> bytes:
        """In place of a PDF: the sheet's texts, one under the other."""
        return "\n".join([made.isoformat(), *sheet.texts]).encode()

    def _open(self, path: Path) -> int:
        self.opened.append(path)
        return 0


@pytest.fixture
def terminal(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> Terminal:
    return Terminal(capsys, tmp_path)


@pytest.fixture(scope="session")
def sample_made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The sample's file with its plan, made once."""
    path = tmp_path_factory.mktemp("sample") / "sample.studio"
    create(path, planned_once())
    return path


@pytest.fixture
def sample(sample_made: Path, tmp_path: Path) -> Path:
    """A copy of the planned sample that a test may change."""
    return Path(shutil.copy(sample_made, tmp_path / "sample.studio"))


@pytest.fixture
def unplanned(tmp_path: Path) -> Path:
    """A small studio that keeps no plan."""
    path = tmp_path / "two.studio"
    create(path, two_trays())
    return path
