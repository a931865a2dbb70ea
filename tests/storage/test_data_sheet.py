"""Data sheets as CSV: every figure as printed, every bad cell named."""

from __future__ import annotations

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.craft.products import SheetPoint
from studio_planner.science.stages import Stage
from studio_planner.storage.data_sheet import read_data_sheet

HEAD = "stage,temperature,unit,from,to,time_unit,mass_g\n"


def read(rows: str, head: str = HEAD) -> tuple[SheetPoint, ...]:
    return read_data_sheet((head + rows).encode())


def test_units_become_celsius_and_hours() -> None:
    # 77 °F is 25 °C, 68 °F is 20 °C by the definition of the scales.
    assert read(
        "cup_life,77,F,30,40,min,100\nrecoat_opens,68,F,4,6,h,\nfull_cure,20,C,7,,d,\n"
    ) == (
        SheetPoint(
            stage=Stage.CUP_LIFE, celsius=25, from_hours=0.5, to_hours=40 / 60, mass_g=100
        ),
        SheetPoint(stage=Stage.RECOAT_OPENS, celsius=20, from_hours=4, to_hours=6),
        SheetPoint(stage=Stage.FULL_CURE, celsius=20, from_hours=168),
    )


@pytest.mark.parametrize("stage", list(Stage))
def test_every_stage_can_be_written(stage: Stage) -> None:
    assert read(f"{stage},20,C,1,2,h,\n")[0].stage is stage


def test_the_mass_column_may_be_missing() -> None:
    head = "stage,temperature,unit,from,to,time_unit\n"
    assert read("handle,20,C,24,,h\n", head)[0].mass_g is None


def test_columns_may_come_in_any_order_with_semicolons_and_decimal_commas() -> None:
    data = "time_unit;to;from;unit;temperature;stage\nh;;1,5;c;20,5;handle\n"
    assert read_data_sheet(data.encode()) == (
        SheetPoint(stage=Stage.HANDLE, celsius=20.5, from_hours=1.5),
    )


@pytest.mark.parametrize("codec", ["utf-8", "utf-8-sig", "utf-16", "latin-1"])
def test_any_usual_encoding_will_do(codec: str) -> None:
    data = (HEAD + "handle,20,°C,24,,h,\n").encode(codec)
    assert read_data_sheet(data)[0].celsius == 20


def test_rows_are_neither_sorted_nor_merged() -> None:
    rows = "handle,20,C,24,,h,\nhandle,10,C,8,,h,\nhandle,20,C,30,,h,\n"
    assert [(p.celsius, p.from_hours) for p in read(rows)] == [(20, 24), (10, 8), (20, 30)]


def test_every_bad_cell_is_named_with_its_row_and_column() -> None:
    rows = (
        "hanle,20,C,24,,h,\n"
        "\n"
        "handle,warm,K,24,,h,\n"
        "handle,20,C,,1,weeks,\n"
        "handle,20,C,6,4,h,\n"
        "handle,20,C,nan,1e999,h,-3\n"
        "handle,500,C,1,,h,\n"
        "handle,20,C,1,2,h,,extra\n"
        "handle,20\n"
    )
    with pytest.raises(InvalidEntry) as told:
        read(rows)
    assert [rule.field for rule in told.value.broken] == [
        "row 2, stage",
        "row 4, temperature",
        "row 4, unit",
        "row 5, from",
        "row 5, time_unit",
        "row 6, to",
        "row 7, from",
        "row 7, to",
        "row 8, temperature",
        "row 9, columns",
        "row 10, unit",
        "row 10, from",
        "row 10, time_unit",
    ]


def test_stages_and_units_may_be_spelled_as_people_spell_them() -> None:
    rows = "Recoat Opens,20,C,4,6,hours,\nPRINT-FREE,20,C,1,,Day,\nhandle,20,C,90,,minutes,\n"
    rows += "sandable,20,C,9,,hrs.,\nfull cure,20,C,7,,days,\ntack free,20,C,5,,hour,\n"
    assert [(point.stage, point.from_hours) for point in read(rows)] == [
        (Stage.RECOAT_OPENS, 4.0),
        (Stage.PRINT_FREE, 24.0),
        (Stage.HANDLE, 1.5),
        (Stage.SANDABLE, 9.0),
        (Stage.FULL_CURE, 168.0),
        (Stage.TACK_FREE, 5.0),
    ]


def test_the_stages_that_there_are_are_listed_once_under_many_bad_ones() -> None:
    with pytest.raises(InvalidEntry) as told:
        read("hanle,20,C,24,,h,\nharden,20,C,24,,h,\nhandel,20,C,24,,h,\n")
    assert str(told.value).count("print_free") == 1
    assert str(told.value).count("is not a stage") == 3


def test_a_range_that_runs_backwards_is_said_as_such() -> None:
    with pytest.raises(InvalidEntry, match="row 2, to: it is less than from"):
        read("handle,20,C,6,4,h,\n")


@pytest.mark.parametrize(
    ("data", "match"),
    [
        (b"", "is empty"),
        (b"  \n", "is empty"),
        (HEAD.encode(), "no figures"),
        (b"hello\nworld\n", "stage is missing"),
        (b"stage,temperature,unit,from,to,time_unit,colour\n", "'colour' is not known"),
        (b"stage,stage,temperature,unit,from,to,time_unit\n", "named twice"),
        (b"\x00\x01\x02\x03", "not text"),
        (b"x" * (5 * 2**20), "larger than 4 MiB"),
        (HEAD.encode() + b'"' + b"x" * 200_000, "cannot be read at line"),
        (b"\xff\xfea", "cut short or damaged"),
    ],
)
def test_what_is_no_sheet_is_refused_in_a_sentence(data: bytes, match: str) -> None:
    with pytest.raises(StudioFileError, match=match) as told:
        read_data_sheet(data)
    assert "\n" not in str(told.value)


@given(st.binary(max_size=200))
def test_noise_never_raises_anything_but_a_sentence(data: bytes) -> None:
    for head in (b"", HEAD.encode()):
        with suppress(InvalidEntry, StudioFileError):
            assert read_data_sheet(head + data)
