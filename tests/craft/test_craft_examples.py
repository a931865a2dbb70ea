"""Every worked example in the docstrings of the craft room is true."""

from __future__ import annotations

import doctest
import importlib
import pkgutil

import pytest

from studio_planner import craft

MODULES = [found.name for found in pkgutil.iter_modules(craft.__path__)]


@pytest.mark.parametrize("name", MODULES)
def test_the_examples_of_a_module_are_true(name: str) -> None:
    module = importlib.import_module(f"studio_planner.craft.{name}")
    assert doctest.testmod(module).failed == 0
