from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.services.caution import DEFERRAL
from studio_planner.services.teaching import lessons_of, use_tests
from studio_planner.storage.studio_file import create_studio
from tests.services.touched_studio import taught_studio

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal

POURED = datetime(2031, 3, 4, tzinfo=UTC)
HEAD = "stage,temperature,unit,from,to,time_unit,mass_g\n"
SHEET = HEAD + (
    "cup_life,20,C,45,,min,100\n"
    "recoat_opens,59,F,8,,h,\n"
    "recoat_opens,25,C,4,,h,\n"
    "recoat_closes,20,C,1,,d,\n"
    "handle,20,C,20,24,h,\n"
)


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    path = tmp_path / "sheet.csv"
    path.write_text(SHEET, encoding="utf-8")
    return path


@pytest.fixture
def room(tmp_path: Path) -> Path:
    path = tmp_path / "room.csv"
    start = datetime(2026, 2, 2, 12, 0, tzinfo=UTC)
    rows = [
        f"{(start + timedelta(hours=h)).isoformat()},{20 if h < 8 else 15},50"
        for h in range(30)
    ]
    path.write_text(
        "time,temperature_c,humidity_pct\n" + "\n".join(rows) + "\n", encoding="utf-8"
    )
    return path


def _stage(rows: list[dict[str, object]], name: str) -> dict[str, object]:
    return next(row for row in rows if row["stage"] == name)


def test_stages_prints_exactly_the_keys_that_are_promised(
    terminal: Terminal, sheet: Path
) -> None:
    answer = terminal("stages", "--sheet", sheet, "--at", "20C", "--json")
    assert answer.code == 0
    assert set(answer.json) == {"stages"}
    keys = {"stage", "early_h", "likely_h", "late_h", "basis"}
    assert all(set(row) == keys for row in answer.json["stages"])
    assert _stage(answer.json["stages"], "recoat_closes")["likely_h"] == 24.0
    assert _stage(answer.json["stages"], "handle")["basis"] == "published"


def test_fahrenheit_and_celsius_say_the_same(terminal: Terminal, sheet: Path) -> None:
    # 68 °F is 20 °C exactly.
    one = terminal("stages", "--sheet", sheet, "--at", "68F", "--json").json
    assert one == terminal("stages", "--sheet", sheet, "--at", "20C", "--json").json
    opens = terminal("stages", "--sheet", sheet, "--at", "15 °C", "--json").json["stages"]
    assert _stage(opens, "recoat_opens")["likely_h"] == pytest.approx(8.0)


def test_a_heavier_cup_lives_shorter(terminal: Terminal, sheet: Path) -> None:
    words = ("stages", "--sheet", sheet, "--at", "20C", "--json", "--mass")
    light, heavy = (terminal(*words, mass).json["stages"] for mass in ("100", "300g"))
    assert _stage(light, "cup_life")["likely_h"] == 0.75
    assert _stage(heavy, "cup_life")["likely_h"] == pytest.approx(0.75 * 3**-0.6, abs=1e-6)


def test_a_stage_that_is_never_reached_is_null_with_a_reason(
    terminal: Terminal, sheet: Path
) -> None:
    words = ("stages", "--sheet", sheet, "--at", "10C", "--minimum", "15C")
    row = _stage(terminal(*words, "--json").json["stages"], "recoat_opens")
    assert row["early_h"] is row["likely_h"] is row["late_h"] is None
    assert "minimum of 15 °C" in str(row["reason"])
    said = terminal(*words).out
    assert "never" in said
    said = " ".join(said.split())
    assert said.count("recoat opens, handle: colder than the product's minimum of 15 °C") == 1
    assert said.count("its hours do not count") == 1
    assert "recoat closes: colder than the product's minimum of 15 °C it has the hours" in said


def test_the_words_for_the_basis_are_explained_once(terminal: Terminal, sheet: Path) -> None:
    said = " ".join(terminal("stages", "--sheet", sheet, "--at", "20C").out.split())
    assert "Basis: published - a figure of the sheet; between - between two of its" in said
    assert "outside -" not in said


def test_a_cup_life_without_a_mass_says_that_the_mass_is_assumed(
    terminal: Terminal, tmp_path: Path
) -> None:
    path = tmp_path / "no_mass.csv"
    path.write_text("stage,temperature,unit,from,to,time_unit\ncup_life,20,C,45,,min\n")
    (row,) = terminal("stages", "--sheet", path, "--at", "20C", "--json").json["stages"]
    assert (row["basis"], row["likely_h"]) == ("assumed", 0.75)
    assert row["note"] == "the sheet does not say for which mass it holds; 100 g is assumed"
    said = terminal("stages", "--sheet", path, "--at", "20C").out
    assert "cup life: the sheet does not say for which mass it holds" in said


def test_below_zero_is_read_as_a_temperature_and_not_as_an_option(
    terminal: Terminal, sheet: Path
) -> None:
    assert terminal("stages", "--sheet", sheet, "--at", "-5C").code == 0
    assert terminal("stages", "--sheet", sheet, "--at=-5C").code == 0


def test_a_film_in_a_recorded_room_is_followed_through_its_temperatures(
    terminal: Terminal, sheet: Path, room: Path
) -> None:
    words = ("stages", "--sheet", sheet, "--room", room, "--poured", "2026-02-02T18:00Z")
    rows = terminal(*words, "--json").json["stages"]
    likely = _stage(rows, "recoat_opens")["likely_h"]
    # At 20 °C it would take 5.6 h, at 15 °C 8 h; the room falls after two hours.
    assert 5.7 < float(str(likely)) < 8.0
    closes = _stage(rows, "handle")
    assert closes["late_h"] is None
    assert closes["reason"] == "not reached within this record"
    said = terminal(*words)
    assert "Likely at, UTC" in said.out
    assert "never" not in said.out
    (line,) = [one for one in said.out.splitlines() if one.startswith("handle ")]
    assert "after the record" in line


def test_clock_times_are_rounded_as_the_hours_are(terminal: Terminal, tmp_path: Path) -> None:
    # 3 h at 20 °C, in a room that is 20 °C throughout: 10:00 and 3 h are 13:00.
    figures, room = tmp_path / "three.csv", tmp_path / "even.csv"
    figures.write_text("stage,temperature,unit,from,to,time_unit\nhandle,20.1,C,3,,h\n")
    rows = [f"2026-02-0{day}T{hour:02}:00Z,20.1" for day in (2, 3) for hour in range(24)]
    room.write_text("\n".join(["time,temperature_c", *rows]) + "\n")
    words = ("stages", "--sheet", figures, "--room", room, "--poured", "2026-02-02T10:00Z")
    (line,) = [one for one in terminal(*words).out.splitlines() if one.startswith("handle")]
    assert "3 h 00 min" in line
    assert line.endswith("Mon 2 Feb 13:00")


def test_what_was_done_to_a_rooms_file_is_said(
    terminal: Terminal, sheet: Path, tmp_path: Path
) -> None:
    room = tmp_path / "room.csv"
    rows = ["2026-02-02T10:00Z,20", "2026-02-02T11:00Z,cold", "2026-02-02T12:00Z,900"]
    rows += ["2026-02-02T13:00Z,20", "2026-02-06T13:00Z,18", "2026-02-06T14:00Z,"]
    rows += ["2026-02-06T15:00Z,-", "2026-02-06T16:00Z,18"]
    room.write_text("\n".join(["time,temperature_c", *rows]) + "\n")
    words = ("stages", "--sheet", sheet, "--room", room, "--poured", "2026-02-02T11:00Z")
    skipped, bridged = terminal(*words, "--json").json["notes"]
    assert skipped == (
        "4 rows are left out (line 3: it has no temperature (“cold”); line 4: 900 is an error "
        "value or not a room's temperature; line 7: it has no temperature; and 1 more)."
    )
    assert bridged == (
        "nothing was recorded from Mon 2 Feb 13:00 to Fri 6 Feb 13:00 (4 d 0 h); a straight "
        "line is taken across, known to within 2 °C."
    )
    said = " ".join(terminal(*words).out.split())
    assert f"Note: {skipped}" in said
    assert f"Note: {bridged}" in said


def test_a_pour_outside_the_record_is_told_on_the_studios_clock(
    terminal: Terminal, sample: Path, room: Path
) -> None:
    words = ("stages", sample, "tarn", "--room", room, "--poured", "2026-01-02T19:00")
    answer = terminal(*words)
    assert answer.code == 2
    assert answer.one_sentence == (
        f"--poured 2026-01-02T19:00 is outside the record of {room}, which runs from "
        "Mon 2 Feb 13:00 to Tue 3 Feb 18:00 (Europe/Vienna); choose a time inside it."
    )


def test_a_product_of_a_studio_is_asked_by_name_on_the_studios_clock(
    terminal: Terminal, sample: Path, room: Path
) -> None:
    words = ("stages", sample, "Tarn slow mix", "--room", room, "--poured", "2026-02-02T19:00")
    said = terminal(*words)
    assert said.code == 0
    assert "Likely at" in said.out
    assert "UTC" not in said.out
    assert " ".join(said.out.split()).endswith(DEFERRAL)


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        ([], "give --sheet SHEET.csv, or FILE and PRODUCT"),
        (["a.studio"], "give --sheet SHEET.csv, or FILE and PRODUCT"),
        (["a.studio", "--sheet", "b.csv"], "not both"),
        (["--sheet", "SHEET"], "give either --at TEMP or --room ROOM.csv"),
        (["--sheet", "SHEET", "--at", "20C", "--room", "ROOM"], "give either --at TEMP"),
        (["--sheet", "SHEET", "--room", "ROOM"], "go together"),
        (["--sheet", "SHEET", "--at", "20C", "--poured", "x"], "go together"),
        (["--sheet", "SHEET", "--at", "20"], "--at “20” is not a temperature; write it as 20C"),
        (["--sheet", "SHEET", "--at", "900F"], "not a temperature of a room"),
        (["--sheet", "SHEET", "--at", "20C", "--mass", "0"], "is not a mass in grams"),
        (["--sheet", "SHEET", "--at", "20C", "--mass", "x"], "is not a mass in grams"),
        (["--sheet", "SHEET", "--at", "20C", "--mass", "nan"], "is not a mass in grams"),
        (["--sheet", "SHEET", "--at", "20C", "--minimum", "cold"], "--minimum “cold”"),
        (["--sheet", "none.csv", "--at", "20C"], "none.csv cannot be read"),
        (["--sheet", "ROOM", "--at", "20C"], "must name the columns"),
        (["--sheet", "SHEET", "--room", "SHEET", "--poured", "2026-02-02T18:00Z"], "sheet.csv"),
        (["--sheet", "SHEET", "--room", "ROOM", "--poured", "2026-02-02T18:00"], "has no zone"),
        (["--sheet", "SHEET", "--room", "ROOM", "--poured", "noon"], "is not a time"),
        (
            ["--sheet", "SHEET", "--room", "ROOM", "--poured", "0001-01-01T00:00"],
            "outside 1980 to 2150",
        ),
        (["--sheet", "SHEET", "--room", "ROOM", "--poured", "2030-02-02T18:00Z"], "outside"),
        (["--sheet", "SHEET", "--at"], "expected one argument"),
    ],
)
def test_what_cannot_be_used_is_told_in_one_sentence(
    terminal: Terminal, sheet: Path, room: Path, words: list[str], sentence: str
) -> None:
    files = {"SHEET": str(sheet), "ROOM": str(room)}
    answer = terminal("stages", *(files.get(word, word) for word in words))
    assert answer.code == 2
    assert sentence in answer.one_sentence


def test_a_product_that_is_not_there_is_answered_with_those_that_are(
    terminal: Terminal, sample: Path
) -> None:
    answer = terminal("stages", sample, "honey", "--at", "20C")
    assert answer.code == 2
    assert "There is no product called “honey”" in answer.one_sentence


def test_a_stage_that_touch_tests_taught_says_so(terminal: Terminal, tmp_path: Path) -> None:
    path = tmp_path / "touched.studio"
    studio = taught_studio()
    (lesson,) = lessons_of(studio, studio.products[0], POURED)
    create_studio(path, use_tests(studio.products[0], lesson.shown).make(studio)).close()
    answer = terminal("stages", path, "resin", "--at", "20C")
    assert answer.code == 0
    assert "taught - learned from your own touch tests" in answer.out
    assert "recoat opens: learned from 10 touch tests of 10 pours" in answer.out
    shown = terminal("stages", path, "resin", "--at", "20C", "--json").json["stages"]
    assert _stage(shown, "recoat_opens")["basis"] == "taught"
