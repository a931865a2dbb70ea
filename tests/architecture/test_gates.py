"""Lint, form and types: the tools' own verdict, as tests like all others."""

from __future__ import annotations

import pytest

from tests.architecture.checkout import run


def test_the_linter_finds_nothing() -> None:
    code, text = run("-m", "ruff", "check", "--quiet")
    assert code == 0, text


def test_the_code_is_in_the_formatters_form() -> None:
    code, text = run("-m", "ruff", "format", "--check", "--quiet")
    assert code == 0, text


@pytest.mark.slow
def test_the_types_hold_strictly() -> None:
    code, text = run("-m", "mypy")
    assert code == 0, text
