"""Where a rule is told away from its form, no name of the code is shown."""

from __future__ import annotations

import ast
from datetime import date
from pathlib import Path

import pytest

import studio_planner.craft
from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.field_words import WORDS
from studio_planner.craft.stock import Lot, LotPart
from studio_planner.craft.studio import Studio

_PLACE = {"require": 1, "between": 3, "named": 1, "wall_clock": 1}
"""Which argument of a rule is its field."""


def fields_of_rules() -> set[str]:
    """The fields of all rules of the craft that are written out."""
    (folder,) = studio_planner.craft.__path__
    found = set()
    for path in Path(folder).glob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
                place = _PLACE.get(node.func.attr, len(node.args))
                found |= {_end(argument) for argument in node.args[place : place + 1]}
    return found - {""}


def _end(argument: ast.expr) -> str:
    if isinstance(argument, ast.JoinedStr):
        argument = argument.values[-1]
    written = argument.value if isinstance(argument, ast.Constant) else ""
    return str(written).rpartition(", ")[2]


def test_every_field_that_a_rule_names_has_a_word() -> None:
    fields = fields_of_rules()
    assert len(fields) > 50
    assert fields <= set(WORDS)


def test_a_bottle_for_an_order_that_is_gone_is_said_in_the_makers_words() -> None:
    lot = Lot(
        key="k",
        product="tide",
        part=LotPart.A,
        label="WK-41",
        received=date(2031, 3, 4),
        new_g=1000.0,
        kept_for="moon",
    )
    with pytest.raises(InvalidEntry) as caught:
        Studio(name="Tallow", lots=(lot,))
    said = str(caught.value)
    assert "bottle WK-41, kept for an order: there is no order" in said
    assert "kept_for" not in said


@pytest.mark.parametrize(
    ("field", "shown"),
    [
        ("piece Moon, big, coat c1, film_mm", "piece Moon, big, coat c1, film"),
        ("log, entry 7", "log, entry 7"),
        ("row 3, mass_g", "row 3, mass_g"),
        ("pieces[2].film_mm", "pieces[2].film_mm"),
    ],
)
def test_a_place_in_a_file_stays_as_it_is_written_there(field: str, shown: str) -> None:
    assert str(BrokenRule(field, "no.")) == f"{shown}: no."
