"""The locks say all that pip must know, and a built wheel holds all that the program needs."""

from __future__ import annotations

import re
import tomllib
import zipfile
from pathlib import Path

import pytest

from tests.architecture.checkout import ROOT, run

LOCKS = (ROOT / "requirements.lock", ROOT / "tests" / "requirements.lock")
PIN = re.compile(r"^([a-z0-9][a-z0-9-]*)==(\S+)(?: ; (.+?))? \\$")
SHOW = (
    "import studio_planner.craft.resources as found;"
    "print(found.__file__); print(found.resource_path('published/cure_times.csv'))"
)


def pins(lock: Path) -> dict[tuple[str, str], str]:
    """The version of each package of ``lock``, by name and marker."""
    lines = lock.read_text(encoding="utf-8").splitlines()
    found = [match.groups("") for match in map(PIN.match, lines) if match]
    return {(name, marker): version for name, version, marker in found}


def normal(requirement: str) -> str:
    """The name of a requirement, as locks spell it."""
    return re.split(r"[^\w.-]", requirement)[0].lower().replace("_", "-")


@pytest.mark.parametrize("lock", LOCKS, ids=["runtime", "tests"])
def test_a_lock_pins_every_package_by_hash_and_nothing_else(lock: Path) -> None:
    text = re.sub(r"(?m)^ *#.*\n", "", lock.read_text(encoding="utf-8"))
    blocks = re.findall(r"(?m)^\S.*(?:\n    --hash=sha256:[0-9a-f]{64}(?: \\)?)+", text)
    assert "\n".join(blocks) == text.strip()
    assert all(PIN.match(block.splitlines()[0]) for block in blocks)


@pytest.mark.parametrize("lock", LOCKS, ids=["runtime", "tests"])
def test_a_lock_says_which_command_makes_it(lock: Path) -> None:
    command = lock.read_text(encoding="utf-8").splitlines()[1]
    assert command.startswith("#    uv pip compile --universal --generate-hashes")
    assert command.endswith(f"-o {lock.relative_to(ROOT).as_posix()}")


def test_everything_that_is_asked_for_is_locked() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    groups = project["dependency-groups"]
    runtime, tests = ({name for name, _ in pins(lock)} for lock in LOCKS)
    assert set(map(normal, project["project"]["dependencies"] + groups["build"])) <= runtime
    assert set(map(normal, groups["test"])) <= tests


def test_the_two_locks_agree() -> None:
    runtime, tests = map(pins, LOCKS)
    shared = {name for name, _ in runtime} & {name for name, _ in tests}
    assert shared
    for name in shared:
        versions = [{v for (n, _), v in lock.items() if n == name} for lock in (runtime, tests)]
        assert versions[0] == versions[1], name


@pytest.mark.slow
def test_a_wheel_carries_its_resources(tmp_path: Path) -> None:
    code, text = run("-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path))
    assert code == 0, text
    (wheel,) = tmp_path.glob("*.whl")
    site = tmp_path / "site"
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(site)
    code, text = run("-c", SHOW, folder=site)
    assert code == 0, text
    assert all(Path(line).is_relative_to(site) for line in text.splitlines())
