"""What is in the bottles and what things cost, on the command line."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.services.studio_files import create, read_studio

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal


def _joined(text: str) -> str:
    return " ".join(text.split())


def test_stock_says_what_runs_out_at_which_pour_and_by_when_to_order(
    terminal: Terminal, sample: Path
) -> None:
    found = terminal("stock", sample, "--json").json
    row = next(one for one in found["parts"] if (one["product"], one["part"]) == ("tarn", "A"))
    assert row["left_grams"] + row["coming_grams"] < row["planned_grams"]
    assert row["short_grams"] > 0.0
    assert row["order_by"] < row["runs_out"]["at"]
    said = _joined(terminal("stock", sample).out)
    assert f"runs out at pour {row['runs_out']['number']} " in said
    assert found["caution"] in said


def test_a_bottle_is_reserved_for_orders_and_never_for_more_than_is_in_it(
    terminal: Terminal, sample: Path
) -> None:
    for bottle in terminal("stock", sample, "--json").json["bottles"]:
        reserved = sum(one["grams"] for one in bottle["reserved"])
        assert reserved <= bottle["left_grams"] + 1e-6
        assert bottle["free_grams"] == pytest.approx(bottle["left_grams"] - reserved)
    leaf = next(
        one
        for one in terminal("stock", sample, "--json").json["bottles"]
        if one["label"] == "WK-41"
    )
    assert (leaf["product"], leaf["part"]) == ("wick", None)
    assert [one["order"] for one in leaf["reserved"]] == ["atrium"]


def test_stock_of_a_studio_without_bottles_says_what_the_plan_takes(
    terminal: Terminal, unplanned: Path
) -> None:
    assert terminal("stock", unplanned).out == "No bottle is entered and nothing is planned.\n"
    assert terminal("plan", unplanned, "--keep").code == 0
    said = _joined(terminal("stock", unplanned).out)
    assert "not entered" in said
    assert "is entered; the plan takes" in said


def test_the_kinds_of_a_cost_add_up_to_it(terminal: Terminal, sample: Path) -> None:
    for name in ("market", "Tide coasters"):
        found = terminal("cost", sample, name, "--json").json
        assert sum(found["amounts"].values()) == pytest.approx(found["cost"])
        assert sum(found["minutes"].values()) == pytest.approx(found["attended_minutes"])
        assert found["price"] >= found["floor"] >= found["cost"]


def test_the_lines_of_a_cost_add_up_to_the_cent(terminal: Terminal, sample: Path) -> None:
    for name in ("market", "harbour", "atrium", "birthday", "tide-coasters"):
        first, *lines = terminal("cost", sample, name).out.splitlines()
        rows = lines[1 : lines.index(next(one for one in lines if "Attended" in one))]
        cents = [round(100 * float(row.split()[-2])) for row in rows]
        assert sum(cents) == round(100 * float(first.split()[-2]))


def test_an_order_that_was_agreed_on_below_its_floor_price_says_so(
    terminal: Terminal, sample: Path
) -> None:
    found = terminal("cost", sample, "birthday", "--json").json
    assert found["agreed"] < found["floor"]
    assert found["agreed_margin"] < 0.0
    assert found["rush"]["cost"] > 0.0
    assert found["scuffed"]["minutes"] > 0.0
    said = _joined(terminal("cost", sample, "Birthday board for Oda").out)
    assert found["warnings"][0] in said
    assert "Agreed: 110.00 EUR. " in said
    assert "A rush would add" in said
    assert "scuffed joint" in said


def test_what_an_order_costs_is_told_piece_by_piece(terminal: Terminal, sample: Path) -> None:
    found = terminal("cost", sample, "atrium", "--json").json
    assert sum(one["cost"] for one in found["pieces"]) == pytest.approx(found["cost"])
    assert found["amounts"]["leaf"] > 0.0
    said = _joined(terminal("cost", sample, "atrium").out)
    assert " leaf 0." in said
    assert "Agreed: 480.00 EUR, of which " in said


def test_a_piece_has_a_cost_and_no_price_agreed(terminal: Terminal, sample: Path) -> None:
    said = _joined(terminal("cost", sample, "tide-tray").out)
    assert "Price by your rule:" in said
    assert " %) stay." in said
    assert "Agreed" not in said


def test_a_cost_without_prices_says_what_is_missing(
    terminal: Terminal, unplanned: Path
) -> None:
    found = terminal("cost", unplanned, "tide-tray", "--json").json
    assert found["missing"]
    assert found["missing"][0] in _joined(terminal("cost", unplanned, "tide-tray").out)


def test_a_name_of_two_pieces_is_refused_with_what_tells_them_apart(
    terminal: Terminal, unplanned: Path, tmp_path: Path
) -> None:
    studio = read_studio(unplanned)
    first = studio.pieces[0]
    twin, loose = replace(first, key="twin"), replace(first, key="loose")
    order = replace(studio.orders[0], pieces=(first.key, twin.key))
    path = tmp_path / "twins.studio"
    create(path, replace(studio, pieces=(*studio.pieces, twin, loose), orders=(order,)))
    keys = ", ".join(f"{key} (of the order {order.name})" for key in (first.key, twin.key))
    for words in (("cost",), ("log", "poured"), ("log", "spoiled")):
        command, *what = words
        answer = terminal(command, path, *what, first.name.upper())
        assert answer.code == 2
        assert answer.one_sentence.endswith(
            f"There are 3 pieces called “{first.name.upper()}”; use the key of one: "
            f"{keys}, loose (of no order)."
        )
    assert terminal("cost", path, twin.key).code == 0


def test_a_cost_of_nothing_that_is_there_is_refused(terminal: Terminal, sample: Path) -> None:
    answer = terminal("cost", sample, "zeppelin")
    assert answer.code == 2
    assert "“zeppelin” is no order and no piece of this studio" in answer.one_sentence
