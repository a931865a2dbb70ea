"""The shape of the checkout: what lies where, how long it is, and words that are not used."""

from __future__ import annotations

import ast
import re
from typing import TYPE_CHECKING

import pytest

from tests.architecture.checkout import PACKAGE, ROOT, is_ignored, own_files

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

TOP = {
    "DEVELOPERS.md",
    "README.md",
    "packaging",
    "pyproject.toml",
    "requirements.lock",
    "resources",
    "studio_planner",
    "tests",
}
HOMELESS = re.compile(r"(?:^|_)(?:util|common|helper|core|manager|misc)s?(?:_|$)")
# Brackets keep each pattern from finding itself.
REGISTRY = re.compile(
    r"\bpyp[i]\.(?:org|python)|python[h]osted|registry\.n[p]mjs|crates[.]io|conda\.ana[c]onda"
)
MACHINE = re.compile(r"(?<![\w.])/(?:w[o]rk|ro[o]t|ho[m]e/\w+)/")
CLAIM = re.compile(r"food[- ]safe|heat[- ]?proof|scratch[- ]?proof|non-?toxic", re.IGNORECASE)
DENIED = re.compile(r"\b(?:never|not|no claim|forbid\w*|banned)\b", re.IGNORECASE)
LONGEST_MODULE = {"studio_planner": 300, "packaging": 300, "tests": 500}
LONGEST_FUNCTION = 60


def lines_of(*folders: str) -> Iterator[tuple[Path, str]]:
    """Every line of the checkout's own text files, with its file."""
    for path in own_files(*folders):
        for line in path.read_text(encoding="utf-8").splitlines():
            yield path.relative_to(ROOT), line


def modules(*folders: str) -> list[Path]:
    """Every Python module in ``folders``."""
    return [path for path in own_files(*folders) if path.suffix == ".py"]


def test_the_top_level_holds_nothing_else() -> None:
    names = {entry.name for entry in ROOT.iterdir() if not is_ignored(entry.name)}
    assert {name for name in names if not name.startswith(".")} <= TOP


def test_every_module_has_a_name_of_its_own_craft() -> None:
    paths = [path.relative_to(ROOT) for path in modules("studio_planner", "tests", "packaging")]
    assert not [
        path for path in paths if any(map(HOMELESS.search, (*path.parts[:-1], path.stem)))
    ]


def test_no_file_names_the_host_of_a_package_registry() -> None:
    assert not [found for found in lines_of() if REGISTRY.search(found[1])]


def test_no_file_names_a_path_of_one_machine() -> None:
    assert not [found for found in lines_of() if MACHINE.search(found[1])]


def test_nothing_is_claimed_about_food_heat_or_health() -> None:
    shown = lines_of("studio_planner", "resources", "README.md")
    claims = [(path, line) for path, line in shown if CLAIM.search(line)]
    assert not [(path, line) for path, line in claims if not DENIED.search(line)]


@pytest.mark.parametrize("pattern", [REGISTRY, MACHINE, CLAIM, HOMELESS])
def test_each_pattern_finds_what_it_is_for(pattern: re.Pattern[str]) -> None:
    planted = [
        "https://pyp" + "i.org/simple",
        "see /wo" + "rk/x",
        "a food" + "-safe coat",
        "utils",
    ]
    assert any(map(pattern.search, planted))


@pytest.mark.parametrize("folder", LONGEST_MODULE)
def test_every_module_is_short_enough_to_read(folder: str) -> None:
    paths = modules(folder)
    lengths = {path: len(path.read_text(encoding="utf-8").splitlines()) for path in paths}
    longest = LONGEST_MODULE[folder]
    assert not {path: length for path, length in lengths.items() if length > longest}


def test_every_function_is_short_enough_to_read() -> None:
    long = [
        f"{path.relative_to(ROOT)}: {function.name} has {body_lines(function)} lines"
        for path in modules("studio_planner", "packaging")
        for function in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(function, ast.FunctionDef) and body_lines(function) > LONGEST_FUNCTION
    ]
    assert not long


def body_lines(function: ast.FunctionDef) -> int:
    """How many lines a function has, without its head and docstring."""
    documented = ast.get_docstring(function) is not None
    body = function.body[1:] if documented else function.body
    return (body[-1].end_lineno or 0) - body[0].lineno + 1 if body else 0


def test_the_build_machine_runs_what_the_readme_says() -> None:
    command = "python3 packaging/start.py test"
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert f"    {command}\n" in readme
    assert command in (ROOT / ".ci" / "run").read_text(encoding="utf-8")


def test_every_room_says_what_it_is_and_imports_nothing() -> None:
    for path in (PACKAGE / "__init__.py", *PACKAGE.glob("*/__init__.py")):
        body = ast.parse(path.read_text(encoding="utf-8")).body
        assert len(body) == 1, path
