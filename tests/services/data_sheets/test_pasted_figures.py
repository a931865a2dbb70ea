"""Figures read from pasted sheets: printed forms, tables either way, and what is refused."""

from __future__ import annotations

import csv
import math
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from studio_planner.craft.products import SheetPoint
from studio_planner.craft.tongue import speak_with
from studio_planner.science.laws import stage_law
from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.figures import read_figures
from studio_planner.services.data_sheets.times import (
    PrintedTime,
    printed_time,
    shown_time,
    time_words,
)
from tests.services.data_sheets.read_rows import figures

SHEET_BITS = (
    "recoat", "window", "tack free", "cup life", "A:B = 2:1", "100:45", "by weight", "4-6 h",
    "30", "3 1/2 h", "½", "/",
    "min", "°C", "20 °C", "68 °F", "(100 g)", "-", ":", ".", ";", ",", "\t", "|", "\n",
)  # fmt: skip

PUBLISHED = Path(__file__).resolve().parents[3] / "resources" / "published" / "cure_times.csv"


@pytest.mark.parametrize(
    ("text", "start", "end"),
    [
        ("4-6 h", 4, 6),
        ("4 to 6", 4, 6),
        ("4–6 hrs", 4, 6),  # noqa: RUF001 - a dash as it is printed
        ("30 min", 0.5, None),
        ("24 hours", 24, None),
        ("3 d", 72, None),
        ("7 days", 168, None),
        ("1.5", 1.5, None),
        ("1,5 h", 1.5, None),
        ("1 h 30 min", 1.5, None),
        ("1:30 h", 1.5, None),
        ("36 h - 3 d", 36, 72),
        ("approx. 4 hours", 4, None),
        ("1 week", 168, None),
        ("3 1/2 h", 3.5, None),
        ("3\N{NO-BREAK SPACE}1/2 h", 3.5, None),
        ("3½ h", 3.5, None),
        ("3 ½ h", 3.5, None),
        ("3/4 h", 0.75, None),
        ("¼ h", 0.25, None),
        ("1/2 - 3/4 h", 0.5, 0.75),
        ("3 1/2 to 4 1/4 hours", 3.5, 4.25),
        ("½ day", 12, None),
        ("1 day 12 h", 36, None),
        ("1 Tag und 12 Stunden", 36, None),
        ("1 week 1 day", 192, None),
        ("1h30min", 1.5, None),
        ("1 h 30′", 1.5, None),  # noqa: RUF001 - a prime as it is printed
        ("1 day 12 h to 2 days", 36, 48),
    ],
)
def test_a_time_is_read_as_sheets_print_it(text: str, start: float, end: float | None) -> None:
    assert printed_time(text) == PrintedTime(start, end)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (">24 h", "only one side"),
        ("more than 2 d", "only one side"),
        ("overnight", "is not a time"),
        ("0 h", "more than nothing"),
        ("6-4 h", "short end first"),
        ("1,000 h", "two ways"),
        ("9000 d", "longer than any cure"),
        ("1/3 h", "is not a time"),
        ("3⅓ h", "is not a time"),
        ("4/24 h", "is not a time"),
        ("3-1/2 h", "short end first"),
        ("40 20 min", "is not a time"),
        ("30 min 15 min", "is not a time"),
        ("1 h 30 s", "is not a time"),
    ],
)
def test_what_is_no_time_is_refused_in_a_sentence(text: str, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        printed_time(text)


hours = st.one_of(
    st.integers(1, 5000).map(lambda minutes: minutes / 60),
    st.floats(0.01, 9000, allow_nan=False),
)


@given(hours, st.one_of(st.none(), st.floats(1, 2)))
def test_a_time_that_is_said_reads_back(start: float, factor: float | None) -> None:
    time = PrintedTime(start, None if factor is None else start * factor)
    again = printed_time(time_words(time))
    assert math.isclose(again.from_hours, time.from_hours, rel_tol=1e-9)
    assert (again.to_hours is None) == (time.to_hours is None)
    assert math.isclose(again.to_hours or 1, time.to_hours or 1, rel_tol=1e-9)


def test_days_are_said_as_the_language_has_them_and_read_back_either_way() -> None:
    week = PrintedTime(168.0)
    assert shown_time(week) == "7 d"
    speak_with(lambda _context, text: {"d": "T", "1,000.5": "1.000,5"}.get(text, text))
    try:
        assert shown_time(week) == "7 T"
        assert shown_time(PrintedTime(2.5)) == "2,5 h"
    finally:
        speak_with(None)
    assert printed_time("7 T") == printed_time("7 d") == printed_time("7 Tage") == week
    assert printed_time("5-7 T") == PrintedTime(120.0, 168.0)


points = st.builds(
    lambda stage, celsius, start, longer, grams: SheetPoint(
        stage=stage,
        celsius=round(celsius, 2),
        from_hours=start,
        to_hours=None if longer is None else start * longer,
        mass_g=grams if stage is Stage.CUP_LIFE else None,
    ),
    st.sampled_from(Stage),
    st.floats(-20, 90),
    hours,
    st.one_of(st.none(), st.floats(1.1, 2)),
    st.one_of(st.none(), st.integers(1, 5000).map(float)),
)


def _key(point: SheetPoint) -> tuple[object, ...]:
    return (point.stage, point.celsius, point.mass_g)


def _line(point: SheetPoint) -> str:
    """A figure as a sheet may print it, such as tack free 8 h at 20 °C."""
    mass = "" if point.mass_g is None else f" ({_plain(point.mass_g)} g)"
    name = point.stage.value.replace("_", " ")
    time = time_words(PrintedTime(point.from_hours, point.to_hours))
    return f"{name}{mass} {time} at {_plain(point.celsius)} °C"


def _plain(value: float) -> str:
    return f"{value:.12f}".rstrip("0").rstrip(".")


@given(st.lists(points, max_size=12, unique_by=_key))
def test_figures_that_are_written_read_back(sheet: list[SheetPoint]) -> None:
    found = read_figures("\n".join(map(_line, sheet)))
    assert not found.unread
    assert [_key(point) for point in found.points] == [_key(point) for point in sheet]
    for read, written in zip(found.points, sheet, strict=True):
        assert math.isclose(read.from_hours, written.from_hours, rel_tol=1e-9)
        assert math.isclose(read.to_hours or 1, written.to_hours or 1, rel_tol=1e-9)


@example("\x0c", None)  # a page that ends and holds nothing else
@given(
    st.text(max_size=200) | st.lists(st.sampled_from(SHEET_BITS), max_size=30).map(" ".join),
    st.one_of(st.none(), st.floats(-10, 60)),
)
def test_no_text_breaks_the_reading_and_a_reason_is_given_for_a_line_that_is_there(
    text: str, celsius: float | None
) -> None:
    found = read_figures(text, celsius)
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    for one in found.unread:
        assert lines[one.number - 1].strip()
        assert one.reason
    assert len({(p.stage, p.celsius, p.mass_g) for p in found.points}) == len(found.points)


def test_a_recoat_window_in_a_line_opens_and_closes() -> None:
    assert figures("Recoat window 4-6 h to 24 h at 20 °C") == [
        (Stage.RECOAT_OPENS, 20, 4, 6, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
    ]
    assert figures("Recoat window: 4 - 24 h @ 68°F") == [
        (Stage.RECOAT_OPENS, 20, 4, None, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
    ]


def test_a_temperature_on_a_line_of_its_own_holds_below() -> None:
    text = "All values at 23 °C\nPot life (100 g): 40 min\nDust free: 3 h, tack-free 8 h"
    assert figures(text) == [
        (Stage.CUP_LIFE, 23, pytest.approx(2 / 3), None, 100),
        (Stage.COVER, 23, 3, None, None),
        (Stage.TACK_FREE, 23, 8, None, None),
    ]


def test_times_pair_with_temperatures_or_masses_in_order() -> None:
    assert figures("Tack free: 8 h at 15 °C, 4 h at 25 °C") == [
        (Stage.TACK_FREE, 15, 8, None, None),
        (Stage.TACK_FREE, 25, 4, None, None),
    ]
    assert figures("Pot life at 20 °C: 100 g 30 min, 200 g 15 min") == [
        (Stage.CUP_LIFE, 20, 0.5, None, 100),
        (Stage.CUP_LIFE, 20, 0.25, None, 200),
    ]


def test_what_is_not_understood_is_listed_with_its_reason() -> None:
    text = (
        "Full cure 7 days at 20-25 °C\nFull cure 7 days\nGloss: high\n"
        "Full cure > 7 days at 20 °C\nTack free 4 h 6 h at 20 °C"
    )
    found = read_figures(text)
    assert not found.points
    reasons = [one.reason for one in found.unread]
    parts = ("range of temperatures", "no temperature", "no stage", "only one side", "pair up")
    assert [one.number for one in found.unread] == [1, 2, 3, 4, 5]
    for reason, part in zip(reasons, parts, strict=True):
        assert part in reason


def test_the_makers_temperature_holds_where_none_is_named() -> None:
    assert figures("Full cure 7 days", 21) == [(Stage.FULL_CURE, 21, 168, None, None)]


@pytest.mark.parametrize("mark", ["\t", ";", " | ", "    "])
def test_a_table_of_stages_by_temperatures_is_read(mark: str) -> None:
    rows = (
        ("Stage", "15 °C", "77 °F"),
        ("Working time (min)", "60", "30"),
        ("Recoat window", "6-30 h", "4 h / 24 h"),
        ("Full cure (days)", "10", "5-7"),
    )
    text = "\n".join(mark.join(row) for row in rows)
    assert figures(text) == [
        (Stage.WORKING_TIME, 15, 1, None, None),
        (Stage.WORKING_TIME, 25, 0.5, None, None),
        (Stage.RECOAT_OPENS, 15, 6, None, None),
        (Stage.RECOAT_CLOSES, 15, 30, None, None),
        (Stage.RECOAT_OPENS, 25, 4, None, None),
        (Stage.RECOAT_CLOSES, 25, 24, None, None),
        (Stage.FULL_CURE, 15, 240, None, None),
        (Stage.FULL_CURE, 25, 120, 168, None),
    ]


def test_a_table_of_temperatures_by_stages_is_read() -> None:
    text = "temp °C;tack free (h);Full cure (d)\n15;12;10\n25;6;-"
    assert figures(text) == [
        (Stage.TACK_FREE, 15, 12, None, None),
        (Stage.FULL_CURE, 15, 240, None, None),
        (Stage.TACK_FREE, 25, 6, None, None),
    ]


def test_rows_of_an_exchanged_sheet_are_read_one_by_one() -> None:
    text = (
        "stage,temperature,unit,from,to,time_unit,mass_g\n"
        "recoat opens,68,F,4,6,h,\ngloss,20,C,1,,h,\ncup life,20,C,30,,min,100"
    )
    found = read_figures(text)
    assert figures(text) == [
        (Stage.RECOAT_OPENS, 20, 4, 6, None),
        (Stage.CUP_LIFE, 20, 0.5, None, 100),
    ]
    assert [one.number for one in found.unread] == [3]


def test_two_lines_that_say_otherwise_are_not_both_taken() -> None:
    found = read_figures("Tack free 8 h at 20 °C\nTack free 9 h at 20 °C")
    assert [point.from_hours for point in found.points] == [8]
    assert "otherwise" in found.unread[0].reason


def _published() -> list[tuple[str, str, str, float, str, float]]:
    with PUBLISHED.open(encoding="utf-8", newline="") as file:
        return [
            (
                row["record"],
                row["material"],
                row["read_as"],
                float(row["temperature_c"]),
                row["published"],
                float(row["hours"]),
            )
            for row in csv.DictReader(file)
        ]


def test_published_times_are_read_as_their_tables_were() -> None:
    read, refused = 0, []
    for _, _, _, _, text, expected in _published():
        try:
            time = printed_time(text)
        except ValueError:
            refused.append(text)
            continue
        middle = (time.from_hours + (time.to_hours or time.from_hours)) / 2
        # The tables were rounded to five figures.
        assert middle == pytest.approx(expected, rel=2e-3), text
        read += 1
    assert read > 3 * len(refused), refused


def test_an_entered_published_point_is_returned_exactly() -> None:
    tables: dict[tuple[str, str], list[SheetPoint]] = {}
    for record, _, stage, celsius, _, published in _published():
        if stage in set(Stage):
            point = SheetPoint(stage=Stage(stage), celsius=celsius, from_hours=published)
            tables.setdefault((record, stage), []).append(point)
    assert len(tables) > 10
    for (_, stage), sheet in tables.items():
        law = stage_law(Stage(stage), [point.figure for point in sheet])
        for point in sheet:
            assert law.hours(point.celsius) == point.from_hours


def test_a_german_sheet_is_read_too() -> None:
    text = (
        "Bei 20 °C\nTopfzeit (100 g): 45 Minuten\nVerarbeitungszeit 60 min\n"
        "Staubtrocken 3 Std.\n"
        "Klebfrei nach 8 Stunden\nÜberarbeitbar ab 4 bis 6 h, überarbeitbar bis 24 h\n"
        "Grifffest 24 h\nDurchgehärtet 7 Tage"
    )
    assert not read_figures(text).unread
    assert figures(text) == [
        (Stage.CUP_LIFE, 20, 0.75, None, 100),
        (Stage.WORKING_TIME, 20, 1, None, None),
        (Stage.COVER, 20, 3, None, None),
        (Stage.TACK_FREE, 20, 8, None, None),
        (Stage.RECOAT_OPENS, 20, 4, 6, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
        (Stage.HANDLE, 20, 24, None, None),
        (Stage.FULL_CURE, 20, 168, None, None),
    ]


def test_a_whole_sheet_on_one_line_gives_all_its_figures_and_its_ratio() -> None:
    sheet = read_figures(
        "Slow clear epoxy. Mix ratio 100:45 by weight. Pot life 100 g at 20 C: 40 min. "
        "Working time 20 C 55 min. Recoat window 6-8 h to 24 h at 20 C, 4-5 h to 16 h at 25 C. "
        "Sandable 24 h at 20C. Handling strength 24 h at 20 C. Full cure 7 days at 20 C."
    )
    assert len(sheet.points) == 9
    assert sheet.ratio is not None
    assert (sheet.ratio.a, sheet.ratio.b, sheet.ratio.by.value) == (100, 45, "weight")
    assert sheet.name == "Slow clear epoxy"
    assert not sheet.unread


def test_what_follows_a_semicolon_belongs_to_the_same_stage() -> None:
    sheet = read_figures("Recoat window 6-8 h to 24 h at 20 C; 4-5 h to 16 h at 25 C")
    assert len(sheet.points) == 4
    assert not sheet.unread


# The ratio


RATIOS = {
    "Mix ratio 100:45 by weight": (100, 45, "weight"),
    "Mix ratio by weight: 100 : 45": (100, 45, "weight"),
    "100:45 by weight": (100, 45, "weight"),
    "2 parts A : 1 part B": (2, 1, "assumed"),
    "2 parts of resin with 1 part of hardener by volume": (2, 1, "volume"),
    "Part A: 100 parts, part B: 45 parts by weight": (100, 45, "weight"),
    "A:B = 100:45": (100, 45, "assumed"),
    "B : A = 45 : 100 by weight": (100, 45, "weight"),
    "Mischungsverhältnis 2:1": (2, 1, "assumed"),
    "Mischungsverhältnis 100:60 nach Gewicht": (100, 60, "weight"),
    "Mischungsverhältnis (Volumen) 2 : 1": (2, 1, "volume"),
    "2 Teile A : 1 Teil B nach Volumen": (2, 1, "volume"),
    "2 Gewichtsteile Harz auf 1 Gewichtsteil Härter": (2, 1, "weight"),
    "Harz : Härter = 100 : 62,5 (Gewichtsteile)": (100, 62.5, "weight"),
    "Mixing ratio A/B 100/38 pbw": (100, 38, "weight"),
    "Mix ratio 2:1 by volume, 100:44 by weight": (100, 44, "weight"),
    "1:1 v/v": (1, 1, "volume"),
    "Mix ratio 2 1/2 : 1 by volume": (2.5, 1, "volume"),
    "Mix ratio A/B 1/2 by weight": (1, 2, "weight"),
}


@pytest.mark.parametrize("line", RATIOS)
def test_a_ratio_is_read_as_sheets_print_it(line: str) -> None:
    sheet = read_figures(f"{line}\nFull cure 7 d at 20 °C")
    assert sheet.ratio is not None
    assert (sheet.ratio.a, sheet.ratio.b, sheet.ratio.by.value) == RATIOS[line]
    assert (len(sheet.points), sheet.unread) == (1, ())


@pytest.mark.parametrize(
    "line", ["2:1", "Recoat 12:30 h at 20 °C", "Recoat window 4 to 6 h at 20 °C"]
)
def test_numbers_that_are_not_said_to_be_a_ratio_are_none(line: str) -> None:
    assert read_figures(line).ratio is None


def test_a_ratio_by_weight_is_taken_before_one_by_volume_and_another_one_is_listed() -> None:
    sheet = read_figures(
        "Mix ratio 2:1 by volume\nMix ratio 100:44 by weight\nMix ratio 100:50 by weight"
    )
    assert sheet.ratio is not None
    assert (sheet.ratio.a, sheet.ratio.b, sheet.ratio.by.value) == (100, 44, "weight")
    assert [one.number for one in sheet.unread] == [3]


def test_half_a_fraction_is_no_part_of_a_ratio() -> None:
    assert read_figures("Mix ratio 1/2 : 1 by weight").ratio is None


def test_a_ratio_beside_a_stage_leaves_the_stage() -> None:
    sheet = read_figures("Full cure 7 d at 20 °C, mix ratio 2:1 by volume")
    assert sheet.ratio is not None
    assert [point.stage for point in sheet.points] == [Stage.FULL_CURE]


def test_parts_that_cannot_be_are_no_ratio() -> None:
    sheet = read_figures("Mix ratio 0:1 by weight")
    assert sheet.ratio is None
    assert [one.number for one in sheet.unread] == [1]


# The name


@pytest.mark.parametrize(
    ("head", "name"),
    [
        ("Slow mix 40", "Slow mix 40"),
        ("Slow mix 40 - Technical Data Sheet", "Slow mix 40"),
        ("Technical Data Sheet\n\nSlow mix 40", "Slow mix 40"),
        ("Technisches Merkblatt\nProdukt: Gießharz langsam", "Gießharz langsam"),
        ("Tack free 8 h", ""),
        ("At 20 °C", ""),
        ("temp °C;tack free (h)", ""),
        ("", ""),
        ("12345", ""),
        ("A" * 70, ""),
    ],
)
def test_a_sheet_is_headed_with_the_name(head: str, name: str) -> None:
    sheet = read_figures(f"{head}\nFull cure 7 d at 20 °C")
    assert sheet.name == name
    assert [point.stage for point in sheet.points][-1:] in ([Stage.FULL_CURE], [])


def test_lines_keep_their_numbers_under_a_head() -> None:
    sheet = read_figures("Data sheet\nSlow mix\n\nIt smells of plums\nFull cure 7 d at 20 °C")
    assert [(one.number, one.line) for one in sheet.unread] == [(4, "It smells of plums")]
