"""The environment is made once, mended after a kill, and never at the cost of another one."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest
from bootstrap.environment import Environment
from bootstrap.machine import Answer, Trouble

from tests.packaging.bare_machine import BareMachine

LOCKS = ("requirements.lock", "pyproject.toml", "tests/requirements.lock")
EVERY_STEP = 5


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A checkout with its lock files."""
    for name in LOCKS:
        path = tmp_path / name
        path.parent.mkdir(exist_ok=True)
        path.write_text(name, encoding="utf-8")
    return tmp_path


def made(root: Path, machine: BareMachine) -> list[str]:
    """What ``machine`` runs to make the environment of the tests now."""
    machine.ran.clear()
    environment = Environment(root, machine)
    environment.make()
    environment.make_for_tests()
    environment.prove_qt()
    return list(machine.ran)


def test_everything_is_made_in_order(root: Path) -> None:
    create, packages, project, tests, probe = made(root, BareMachine())
    assert create.endswith(f"-m venv {root / '.venv'}")
    assert packages.endswith(f"--only-binary=:all: -r {root / 'requirements.lock'}")
    assert "--require-hashes --no-deps" in packages
    assert project.endswith(f"--no-deps --no-index --no-build-isolation --editable {root}")
    assert tests.endswith(f"--use-pep517 -r {root / 'tests/requirements.lock'}")
    assert "--require-hashes --no-deps" in tests
    assert probe.startswith(f"{root / '.venv/bin/python'} -c ")


def test_a_second_start_makes_nothing(root: Path) -> None:
    machine = BareMachine()
    made(root, machine)
    assert made(root, machine) == []


@pytest.mark.parametrize(
    ("changed", "steps"),
    [("requirements.lock", EVERY_STEP), ("pyproject.toml", 1), ("tests/requirements.lock", 1)],
)
def test_a_changed_file_makes_again_what_rests_on_it(
    root: Path, changed: str, steps: int
) -> None:
    machine = BareMachine()
    made(root, machine)
    (root / changed).write_text("changed", encoding="utf-8")
    assert len(made(root, machine)) == steps


def test_another_python_makes_everything_again(root: Path) -> None:
    machine = BareMachine()
    made(root, machine)
    machine.python = "/usr/bin/python3.12 3.12.1"
    assert len(made(root, machine)) == EVERY_STEP


@pytest.mark.parametrize("step", ["-m venv", "requirements.lock", "--editable", "tests/", "-c"])
def test_after_a_kill_the_next_start_ends_the_work(root: Path, step: str) -> None:
    machine = BareMachine(answers={step: Answer(1, "Killed")})
    with pytest.raises(Trouble):
        made(root, machine)
    machine.answers.clear()
    assert made(root, machine)
    assert made(root, machine) == []


@pytest.mark.parametrize("step", ["--only-binary", "--editable", "tests/"])
def test_half_a_package_is_never_trusted(root: Path, step: str) -> None:
    machine = BareMachine(answers={step: Answer(-9, "")})
    with pytest.raises(Trouble):
        made(root, machine)
    machine.answers.clear()
    assert len(made(root, machine)) == EVERY_STEP


def test_a_half_made_environment_is_removed_first(root: Path) -> None:
    machine = BareMachine(answers={"-m venv": Answer(1, "Killed")})
    with pytest.raises(Trouble):
        made(root, machine)
    half = root / ".venv" / "lib" / "half"
    half.parent.mkdir()
    half.touch()
    machine.answers.clear()
    made(root, machine)
    assert not half.exists()


def test_an_environment_of_somebody_else_is_left_alone(root: Path) -> None:
    theirs = root / ".venv" / "pyvenv.cfg"
    theirs.parent.mkdir()
    theirs.touch()
    with pytest.raises(Trouble, match="was made by something else and is left alone: move it"):
        made(root, BareMachine())
    assert theirs.exists()


def test_an_empty_folder_is_nobodys(root: Path) -> None:
    (root / ".venv").mkdir()
    assert made(root, BareMachine())


@pytest.mark.parametrize(
    ("machine", "cure"),
    [
        (
            BareMachine(modules={"venv"}, commands={"apt-get"}),
            r"run sudo apt-get install -y python3\.\d+-venv$",
        ),
        (
            BareMachine(modules=set(), commands={"apt-get"}, is_root=True),
            r"run apt-get install -y python3\.\d+-venv$",
        ),
        (BareMachine(modules={"venv"}), r"install the whole of Python 3\.11 or newer"),
    ],
)
def test_without_venv_it_names_the_package(root: Path, machine: BareMachine, cure: str) -> None:
    with pytest.raises(Trouble, match=cure):
        made(root, machine)
    assert machine.ran == []


def test_a_venv_that_lacks_its_other_half_is_named_too(root: Path) -> None:
    half = "The virtual environment was not created: ensurepip is not available."
    machine = BareMachine(answers={"-m venv": Answer(1, half)}, commands={"apt-get"})
    with pytest.raises(Trouble, match=r"run sudo apt-get install -y python3\.\d+-venv$"):
        made(root, machine)


def test_a_folder_that_cannot_be_written_is_named(root: Path) -> None:
    (root / ".venv").touch()  # a file where the folder should be
    with pytest.raises(Trouble, match=r"can't be made in .*remove its \.venv first"):
        made(root, BareMachine())


def test_windows_keeps_its_python_in_scripts(root: Path) -> None:
    assert Path(Environment(root, BareMachine(system="win32")).python).parent.name == "Scripts"


def test_the_lock_files_list_all_that_their_packages_ask_for() -> None:
    asked = [sys.executable, "-m", "pip", "check"]
    answer = subprocess.run(asked, capture_output=True, text=True, check=False)  # noqa: S603 - pip itself
    assert answer.returncode == 0, answer.stdout
