from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.settings import MassUnit
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.log_book.weighings import next_batch
from studio_planner.services.studio_files import read_planned, read_studio
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal


def _joined(text: str) -> str:
    return " ".join(text.split())


def test_next_lists_what_needs_hands_sorted_by_deadline(
    terminal: Terminal, sample: Path
) -> None:
    found = terminal("next", sample, "--at", "2026-02-03T08:00", "--json").json
    assert found["at"] == "2026-02-03T08:00:00+01:00"
    assert found["hours"] == 12.0
    keys = {
        "what", "number", "piece", "piece_name", "coat", "start", "end", "opens", "deadline",
        "person", "spot", "if_left", "missed",
    }  # fmt: skip
    assert all(set(item) == keys for item in found["items"])
    deadlines = [datetime.fromisoformat(item["deadline"]) for item in found["items"]]
    assert deadlines == sorted(deadlines)
    assert {"weigh and pour", "last torch", "cover"} <= {i["what"] for i in found["items"]}


def test_next_is_asked_for_now_unless_told_otherwise(terminal: Terminal, sample: Path) -> None:
    assert terminal("next", sample, "--json").json["at"] == "2026-02-02T07:00:00+01:00"
    assert "weigh and pour" in terminal("next", sample).out


def test_when_nothing_is_near_the_next_thing_is_named(terminal: Terminal, sample: Path) -> None:
    early = terminal("next", sample, "--at", "2026-01-20 03:00").out
    assert "Nothing needs hands within 12 h" in early
    assert "The next thing is: " in early
    late = terminal("next", sample, "--at", "2027-01-01T00:00Z").out
    assert late == "Nothing needs hands within 12 h of Fri 1 Jan 01:00.\n"


def test_weigh_gives_parts_cups_and_what_the_scale_shows(
    terminal: Terminal, sample: Path
) -> None:
    coats = read_planned(sample)[1].coats
    number = next(c.number for c in coats if (c.piece, c.coat) == ("moss-table", "flood"))
    found = terminal("weigh", sample, str(number), "--json").json
    assert found["caution"] == DEFERRAL
    mix, other = found["mixes"]
    assert [(one["part"], one["parts"]) for one in (mix, other)] == [(1, 2), (2, 2)]
    own = ("part", "number", "cups", "order", "warnings")
    assert other | {key: mix[key] for key in own} == mix
    assert mix["number"] is other["number"] is None  # nothing is weighed yet
    assert set(mix) == {
        "mix", "part", "parts", "product", "coats", "spread_grams", "spread_parts",
        "total_grams", "a_grams", "b_grams", "scale", "cups", "out_of_cup_minutes", "order",
        "notes", "number", "start", "poured", "lots", "warnings",
    }  # fmt: skip
    assert mix["scale"] == [mix["a_grams"], mix["total_grams"]]
    assert abs(mix["a_grams"] + mix["b_grams"] - mix["total_grams"]) < 1e-6
    assert abs(mix["b_grams"] / mix["a_grams"] - 0.38) < 0.001
    assert abs(sum(cup["mix_grams"] for cup in mix["cups"]) - mix["total_grams"]) < 1e-6


def test_weigh_says_where_the_grams_go(terminal: Terminal, sample: Path) -> None:
    coats = read_planned(sample)[1].coats
    number = next(c.number for c in coats if (c.piece, c.coat) == ("moss-table", "flood"))
    mix, _ = terminal("weigh", sample, str(number), "--json").json["mixes"]
    assert list(mix["spread_parts"]) == ["film", "edges", "drips", "absorbed", "reserve"]
    assert sum(mix["spread_parts"].values()) == pytest.approx(mix["spread_grams"])
    said = _joined(terminal("weigh", sample, str(number)).out)
    assert f"Of it the coats take {mix['spread_grams']:.1f} g: 174.9 g on the faces, " in said
    assert "drunk" not in said


def test_what_is_said_about_amounts_ends_with_who_decides(
    terminal: Terminal, sample: Path
) -> None:
    every = [str(number) for number in range(1, 54)]
    said = terminal("weigh", sample, *every)
    assert said.code == 0
    assert _joined(said.out).endswith(DEFERRAL)
    assert "Fennel primer " in said.out
    assert "cup 2: foam" in said.out
    assert "portion 1 of 2: Tarn slow mix" in said.out
    assert said.out.startswith("Put the empty cup on the scale and set it to zero")
    assert "Leaf is laid, not weighed." in said.out


def test_weigh_gives_the_order_of_cups_and_their_minutes(
    terminal: Terminal, sample: Path
) -> None:
    coats = read_planned(sample)[1].coats
    number = next(c.number for c in coats if (c.piece, c.coat) == ("tide-tray", "colour"))
    mix, *_ = terminal("weigh", sample, str(number), "--json").json["mixes"]
    minutes = [one["pour_minute"] for one in mix["order"]]
    assert minutes == sorted(minutes)
    assert all(one["pour_minute"] < one["out_by_minute"] for one in mix["order"])
    said = _joined(terminal("weigh", sample, str(number)).out)
    assert "Pour in this order: deep water at minute" in said


def test_a_mix_has_the_bottles_that_its_paper_has_and_a_number_once_it_is_weighed(
    terminal: Terminal, sample: Path
) -> None:
    _, plan = read_planned(sample)
    coat = next(c for c in plan.coats if (c.piece, c.coat) == ("moss-table", "flood"))
    mix, _ = terminal("weigh", sample, str(coat.number), "--json").json["mixes"]
    assert set(mix["lots"]) == {"A", "B"}
    said = _joined(terminal("weigh", sample, str(coat.number)).out)
    assert "Mix, portion 1 of 2: " in said
    assert f"for {coat.number} " in said
    assert f"A: {mix['lots']['A']}" in said
    grams = (str(mix["a_grams"]), str(mix["b_grams"]))
    whom = f"{coat.piece}/{coat.coat}"
    assert terminal("log", sample, "weighed", mix["product"], *grams, "--for", whom).code == 0
    first, second = terminal("weigh", sample, str(coat.number), "--json").json["mixes"]
    assert (first["number"], second["number"]) == (next_batch(read_studio(sample)) - 1, None)
    poured = next(c for c in plan.coats if c.poured)
    assert "It is poured" in terminal("weigh", sample, str(poured.number)).out


def test_one_colour_stays_in_the_cup_it_was_mixed_in(terminal: Terminal, sample: Path) -> None:
    coats = read_planned(sample)[1].coats
    numbers = {(c.piece, c.coat): str(c.number) for c in coats}
    clear = terminal("weigh", sample, numbers["tide-tray", "flood"]).out
    assert "cup 1:" not in clear
    (portion,) = terminal("weigh", sample, numbers["night-sky", "colour"], "--json").json[
        "mixes"
    ]
    (cup,) = portion["cups"]
    said = terminal("weigh", sample, numbers["night-sky", "colour"]).out
    assert "cup 1:" not in said
    line = f" paste {cup['colourant_grams']:.1f} g {cup['reads_grams']:.1f} g"
    assert line in _joined(said)
    assert cup["mix_grams"] == portion["total_grams"]


def test_a_studio_that_weighs_in_ounces_reads_ounces_that_add_up(
    terminal: Terminal, sample: Path
) -> None:
    with open_studio(sample) as file:
        whole = file.read()
        file.write(replace(whole, units=replace(whole.units, mass=MassUnit.OUNCE)))
    said = terminal("weigh", sample, "9").out
    assert not re.search(r"\d g\b", said)
    a, b = (re.search(rf"{part}: \S+ +(\S+) oz +(\S+) oz", said) for part in "AB")
    assert a is not None
    assert b is not None
    assert float(a[2]) + float(b[1]) == pytest.approx(float(b[2]))


def test_a_coat_is_asked_for_by_its_number(terminal: Terminal, sample: Path) -> None:
    wrong = terminal("weigh", sample, "flood")
    assert (wrong.code, wrong.one_sentence) == (
        2,
        "COAT “flood” is not a whole number from 1 to 999999.",
    )
    far = terminal("weigh", sample, "999")
    assert far.code == 2
    assert far.one_sentence == "There is no coat 999 in the kept plan; it has 1 to 53."


def test_a_time_that_the_clock_leaves_out_or_shows_twice_is_refused_with_both_readings(
    terminal: Terminal, sample: Path
) -> None:
    # Clocks in Vienna change on 29 March and 25 October 2026 (directive 2000/84/EC).
    missing = terminal("next", sample, "--at", "2026-03-29T02:30")
    assert missing.code == 2
    assert "is left out" in missing.one_sentence
    assert "2026-03-29T01:30+01:00 or 2026-03-29T03:30+02:00" in missing.one_sentence
    twice = terminal("next", sample, "--at", "2026-10-25T02:30")
    assert twice.code == 2
    assert "comes twice" in twice.one_sentence
    assert "2026-10-25T02:30+02:00 or 2026-10-25T02:30+01:00" in twice.one_sentence
    assert terminal("next", sample, "--at", "2026-10-25T02:30+01:00").code == 0
