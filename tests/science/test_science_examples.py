"""Every worked example in the science room's docstrings runs, and every function has one."""

from __future__ import annotations

import doctest
import importlib
import inspect
import pkgutil

import pytest

from studio_planner import science

MODULES = [f"{science.__name__}.{m.name}" for m in pkgutil.iter_modules(science.__path__)]


@pytest.mark.parametrize("name", MODULES)
def test_the_worked_examples_of_a_module_hold(name: str) -> None:
    failed, _ = doctest.testmod(importlib.import_module(name))
    assert failed == 0


@pytest.mark.parametrize("name", MODULES)
def test_every_public_function_has_a_worked_example(name: str) -> None:
    module = importlib.import_module(name)
    for title, function in inspect.getmembers(module, inspect.isfunction):
        if function.__module__ == name and not title.startswith("_"):
            assert ">>>" in (function.__doc__ or ""), f"{name}.{title} has no example"


def test_the_science_room_reads_no_clock_and_no_calendar() -> None:
    for name in MODULES:
        source = inspect.getsource(importlib.import_module(name))
        assert "import datetime" not in source
        assert "import time" not in source
