"""Room logs as loggers write them: read by evidence, or asked about, never guessed in silence.

The layouts are invented here after common practice of logger exports; no file of a real logger
is used. The clock changes of Europe/Berlin are those of the IANA time zone database: forward on
2030-03-31 at 01:00 UTC, back on 2030-10-27 at 01:00 UTC.
"""

from __future__ import annotations

from contextlib import suppress
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING, Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.places import PatternPoint, Place, Reading
from studio_planner.storage.log_merging import Overlap
from studio_planner.storage.log_preview import LogAnswers, LogUnit
from studio_planner.storage.log_stamps import DateOrder
from studio_planner.storage.room_log import preview_room_log

if TYPE_CHECKING:
    from studio_planner.storage.log_preview import RoomLogPreview

BERLIN = ZoneInfo("Europe/Berlin")
PLAIN = (
    "time,temperature_c,humidity_pct\n"
    "2030-01-01T00:00:00Z,20.5,51\n"
    "2030-01-01T02:00:00+01:00,20.25,\n"
    "2030-01-01T02:00:00Z,19,48.5\n"
)


def look(
    text: str,
    zone: ZoneInfo = BERLIN,
    codec: str = "utf-8",
    existing: tuple[Reading, ...] = (),
    **answers: Any,  # noqa: ANN401 - what LogAnswers takes
) -> RoomLogPreview:
    return preview_room_log(
        text.encode(codec), zone, existing=existing, answers=LogAnswers(**answers)
    )


def at(*parts: int) -> datetime:
    return datetime(*parts).replace(tzinfo=UTC)  # type: ignore[arg-type] # noqa: DTZ001


def hours(readings: tuple[Reading, ...]) -> list[float]:
    return [(r.when - readings[0].when) / timedelta(hours=1) for r in readings]


def wall_log(walls: list[str], zone: ZoneInfo = BERLIN, **answers: Any) -> RoomLogPreview:  # noqa: ANN401
    rows = "".join(f"{wall},20.{number}\n" for number, wall in enumerate(walls))
    return look("time,temperature_c\n" + rows, zone, **answers)


def test_the_plain_form_is_read_as_it_stands() -> None:
    preview = look(PLAIN)
    assert preview.readings == (
        Reading(when=at(2030, 1, 1), celsius=20.5, humidity_pct=51),
        Reading(when=at(2030, 1, 1, 1), celsius=20.25),
        Reading(when=at(2030, 1, 1, 2), celsius=19, humidity_pct=48.5),
    )
    assert (preview.delimiter, preview.decimal_mark, preview.encoding) == (
        "comma",
        ".",
        "UTF-8",
    )
    assert preview.zone == "written in every row"
    assert preview.local_rows == 0
    assert preview.unit is LogUnit.CELSIUS
    assert preview.heading_line == 1
    assert (preview.first, preview.last) == (at(2030, 1, 1), at(2030, 1, 1, 2))
    assert (preview.skipped, preview.questions, preview.gaps) == ((), (), ())


def test_humidity_may_be_missing() -> None:
    preview = look("time,temperature_c\n2030-01-01T00:00Z,20\n")
    assert preview.readings == (Reading(when=at(2030, 1, 1), celsius=20),)
    assert preview.humidity_column is None


@pytest.mark.parametrize(
    ("codec", "name"),
    [
        ("utf-8", "UTF-8"),
        ("utf-8-sig", "UTF-8"),
        ("utf-16", "UTF-16"),
        ("utf-16-le", "UTF-16"),
        ("utf-16-be", "UTF-16"),
        ("latin-1", "Latin-1"),
    ],
)
def test_the_encoding_is_found(codec: str, name: str) -> None:
    text = "Zeit;Temperatur (°C);Feuchte (%)\n" + "".join(
        f"05.11.2030 {hour:02d}:00;20,5;45\n" for hour in range(9, 12)
    )
    preview = look(text, codec=codec)
    assert preview.encoding == name
    assert preview.temperature_column == "Temperatur (°C)"
    assert preview.readings[0] == Reading(
        when=at(2030, 11, 5, 8), celsius=20.5, humidity_pct=45
    )


@pytest.mark.parametrize("ending", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize(
    ("delimiter", "name"), [(",", "comma"), (";", "semicolon"), ("\t", "tab")]
)
def test_the_delimiter_is_found(delimiter: str, name: str, ending: str) -> None:
    rows = [["time", "temp °C", "rh %"], ["2030-01-01 10:00", "20.5", "45"]]
    preview = look(ending.join(delimiter.join(row) for row in rows) + ending)
    assert preview.delimiter == name
    assert preview.readings == (Reading(when=at(2030, 1, 1, 9), celsius=20.5, humidity_pct=45),)


def test_decimal_commas_are_read_with_semicolons_and_in_quotes() -> None:
    for text in (
        "time;temp °C\n2030-01-01 10:00;-3,25\n",
        'time,temp °C\n2030-01-01 10:00,"-3,25"\n',
    ):
        preview = look(text)
        assert preview.decimal_mark == ","
        assert preview.readings[0].celsius == -3.25


def test_decimal_commas_between_commas_are_refused() -> None:
    with pytest.raises(StudioFileError, match="commas seem to stand for decimals"):
        look("time,temp °C,rh %\n" + "2030-01-01 10:00,20,5,45,1\n" * 3)


@pytest.mark.parametrize(
    "heading",
    ["Temp (°F)", "Temp, °F", "Temperature [F]", "temperature_f", "Temp deg F", "T Fahrenheit"],
)
def test_fahrenheit_in_the_heading_is_converted(heading: str) -> None:
    preview = look(f'time,"{heading}"\n2030-01-01T00:00Z,68\n2030-01-01T01:00Z,77\n')
    assert preview.unit is LogUnit.FAHRENHEIT
    assert [reading.celsius for reading in preview.readings] == pytest.approx([20, 25])


def test_a_unit_in_the_cells_is_converted() -> None:
    preview = look("time;temp;rh\n2030-01-01T00:00Z;68.0 °F;45 %\n2030-01-01T01:00Z;77.0 °F;\n")
    assert [reading.celsius for reading in preview.readings] == pytest.approx([20, 25])
    assert preview.readings[0].humidity_pct == 45


def test_warm_figures_without_a_unit_are_asked_about() -> None:
    text = "time,temp\n2030-01-01T00:00Z,68\n2030-01-01T01:00Z,77\n"
    asked = look(text)
    assert asked.questions == ("The heading names no unit; are the temperatures °C or °F?",)
    assert asked.readings == asked.merged == ()
    answered = look(text, unit=LogUnit.FAHRENHEIT)
    assert [r.celsius for r in answered.readings] == pytest.approx([20, 25])
    assert not answered.questions


def test_ordinary_figures_without_a_unit_are_celsius_with_a_note() -> None:
    preview = look("time,temp\n2030-01-01T00:00Z,21\n")
    assert preview.readings[0].celsius == 21
    assert any("no unit" in note for note in preview.notes)


@pytest.mark.parametrize(
    "written",
    [
        "2030-02-01 13:05:00",
        "2030-02-01T13:05",
        "2030/02/01 13:05",
        "01.02.2030 13:05",
        "01.02.30 13:05:00",
        "1 Feb 2030 13:05",
        "Feb 1, 2030 1:05 PM",
        "20300201T130500",
        "2030-02-01 01:05:00 p.m.",
        "2030-02-01T12:05Z",
        "2030-02-01T13:05:00.000+0100",
        "2030-02-01 14:05 UTC+2",
        "1896177900",
        "1896177900000",
    ],
)
def test_a_time_may_be_written_in_many_ways(written: str) -> None:
    # 1896177900 is 2030-02-01 12:05 UTC: 21946 days of 86400 s and 43500 s since 1970.
    preview = look(f'time,temp °C\n"{written}",20\n')
    assert preview.questions == ()
    assert [reading.when for reading in preview.readings] == [at(2030, 2, 1, 12, 5)]


def test_date_and_time_may_stand_in_two_columns() -> None:
    preview = look("No.,Date,Time,Temp °C\n1,2030-01-01,10:00,20\n2,2030-01-01,11:00,21\n")
    assert preview.time_column == "Date and Time"
    assert hours(preview.readings) == [0, 1]
    assert preview.readings[0].when == at(2030, 1, 1, 9)


def test_midnight_may_be_written_as_the_end_of_the_day() -> None:
    assert wall_log(["2030-01-01 24:00"]).readings[0].when == at(2030, 1, 1, 23)


@pytest.mark.parametrize(
    ("dates", "expected"),
    [
        (["03/04/2030", "13/04/2030"], DateOrder.DAY_FIRST),
        (["03/04/2030", "03/14/2030"], DateOrder.MONTH_FIRST),
        (["01/04/2030", "02/04/2030", "03/04/2030"], DateOrder.DAY_FIRST),
        (["04/01/2030", "04/02/2030", "04/03/2030"], DateOrder.MONTH_FIRST),
        (["05/05/2030"], DateOrder.DAY_FIRST),
    ],
)
def test_the_order_of_day_and_month_follows_from_the_evidence(
    dates: list[str], expected: DateOrder
) -> None:
    preview = wall_log([f"{date} 12:00" for date in dates])
    assert preview.questions == ()
    assert preview.date_order == expected
    assert len(preview.readings) == len(dates)


def test_an_order_that_nothing_decides_is_asked_about() -> None:
    walls = [f"03/04/2030 {hour:02d}:00" for hour in range(5)]
    asked = wall_log(walls)
    assert len(asked.questions) == 1
    assert "03/04/2030" in asked.questions[0]
    assert asked.readings == ()
    day = wall_log(walls, date_order=DateOrder.DAY_FIRST)
    month = wall_log(walls, date_order=DateOrder.MONTH_FIRST)
    assert (day.readings[0].when.month, month.readings[0].when.month) == (4, 3)


@pytest.mark.parametrize("step", [5, 15, 30, 60])
@pytest.mark.parametrize("direction", [1, -1])
def test_the_doubled_hour_is_read_in_both_passings(step: int, direction: int) -> None:
    start = at(2030, 10, 26, 22)
    moments = [start + timedelta(minutes=step * n) for n in range(6 * 60 // step)]
    walls = [f"{moment.astimezone(BERLIN):%Y-%m-%d %H:%M}" for moment in moments]
    assert len(set(walls)) < len(walls)
    preview = wall_log(walls[::direction])
    assert [reading.when for reading in preview.readings] == moments
    assert preview.skipped == ()


def test_a_row_written_twice_in_the_doubled_hour_is_not_an_hour_later() -> None:
    walls = ["01:55", "02:00", "02:05", "02:05", "02:10", "02:15"]
    preview = wall_log([f"2030-10-27 {wall}" for wall in walls])
    assert hours(preview.readings) == pytest.approx([0, 5 / 60, 10 / 60, 15 / 60, 20 / 60])
    assert len(preview.skipped) == 1


def test_a_time_in_the_missing_hour_is_skipped_with_the_reason() -> None:
    preview = wall_log([f"2030-03-31 0{hour}:30" for hour in (1, 2, 3)])
    assert hours(preview.readings) == [0, 1]
    assert [row.line for row in preview.skipped] == [3]
    assert "skips this time" in preview.skipped[0].why


def test_a_logger_that_keeps_an_offset_says_so_in_its_heading() -> None:
    walls = [f"2030-03-31 0{hour}:30" for hour in (1, 2, 3)]
    text = '"Date Time, GMT+01:00","Temp, °C"\n' + "".join(f"{wall},20\n" for wall in walls)
    preview = look(text)
    assert [reading.when.hour for reading in preview.readings] == [0, 1, 2]
    assert preview.zone == "UTC+01:00, from the heading"


def test_lines_above_the_heading_are_passed_over() -> None:
    preview = look(
        "sep=;\nPlot title: shelf\nSerial;20301234\n\n"
        "Time;Temperature;Humidity;Dew point\n;°C;%RH;°C\n"
        "2030-01-01 10:00;20,5;45;8,1\n2030-01-01 10:10;20,6;45;8,1\n"
    )
    assert len(preview.readings) == 2
    assert preview.temperature_column == "Temperature °C"
    assert preview.humidity_column == "Humidity %RH"
    assert preview.heading_line == 5


def test_a_log_without_a_heading_is_read_by_what_is_in_it() -> None:
    preview = look("1,2030-01-01 10:00,20.5,45\n2,2030-01-01 11:00,20.6,46\n")
    assert preview.readings[1] == Reading(
        when=at(2030, 1, 1, 10), celsius=20.6, humidity_pct=46
    )
    assert preview.heading_line is None
    assert any("no heading" in note for note in preview.notes)


def test_two_temperatures_are_asked_about() -> None:
    text = "time,Temp 1 °C,Temp 2 °C\n2030-01-01T00:00Z,20,25\n"
    asked = look(text)
    assert asked.questions == (
        "Which column is the room's temperature: “Temp 1 °C”, “Temp 2 °C”?",
    )
    assert look(text, temperature_column="temp 2 °c").readings[0].celsius == 25
    assert look(text, temperature_column="2").readings[0].celsius == 20
    with pytest.raises(StudioFileError, match="has no column “roof”"):
        look(text, temperature_column="roof")


def test_a_heading_that_names_no_temperature_is_asked_about() -> None:
    text = "time,inside,moist\n2030-01-01T00:00Z,20,50\n"
    assert "which column" in look(text).questions[0]
    preview = look(text, temperature_column="inside", humidity_column="moist")
    assert preview.readings == (Reading(when=at(2030, 1, 1), celsius=20, humidity_pct=50),)


@pytest.mark.parametrize(
    "value",
    ["", "n/a", "---", "NaN", "ERR", "-999", "-999.9", "-127", "85.0", "327.67", "1e999"],
)
def test_an_error_value_is_skipped_with_the_reason(value: str) -> None:
    preview = look(f"time,temp °C\n2030-01-01T00:00Z,20\n2030-01-01T01:00Z,{value}\n")
    assert len(preview.readings) == 1
    assert [row.line for row in preview.skipped] == [3]
    assert preview.skipped[0].why
    assert preview.skipped[0].text.startswith("2030-01-01T01:00Z")


@pytest.mark.parametrize("value", ["", "n/a", "0", "-999", "120"])
def test_a_bad_humidity_leaves_the_temperature(value: str) -> None:
    preview = look(f"time,temp °C,rh\n2030-01-01T00:00Z,20,50\n2030-01-01T01:00Z,21,{value}\n")
    assert [reading.humidity_pct for reading in preview.readings] == [50, None]
    assert preview.notes == ("1 readings have no usable humidity.",)


def test_rows_with_and_without_a_zone_may_be_mixed() -> None:
    preview = wall_log(["2030-01-01T10:00Z", "2030-01-01 12:00"])
    assert hours(preview.readings) == [0, 1]
    assert (preview.local_rows, preview.zone) == (1, "Europe/Berlin, local times")


def test_unsorted_and_doubled_rows_are_put_right_and_told() -> None:
    preview = wall_log(
        ["2030-01-01 10:00", "2030-01-01 12:00", "2030-01-01 11:00", "2030-01-01 12:00"]
    )
    assert hours(preview.readings) == [0, 1, 2]
    assert [(row.line, row.why) for row in preview.skipped] == [(5, "line 3 has the same time")]
    assert any("sorted" in note for note in preview.notes)


def test_rows_that_are_no_readings_are_skipped_with_the_reason() -> None:
    preview = look(
        "time,temp °C\n2030-01-01T00:00Z,20\nLogger stopped,\n2030-02-30T00:00Z,20\n"
        "2030-01-01T25:00Z,20\n0001-01-01T00:00+14:00,20\n2030-01-01T01:00Z,20\n"
    )
    assert len(preview.readings) == 2
    assert [(row.line, row.why) for row in preview.skipped] == [
        (3, "its time cannot be read"),
        (4, "there is no such date"),
        (5, "its time cannot be read"),
        (6, "there is no such date"),
    ]


def test_gaps_are_named() -> None:
    preview = wall_log([f"2030-01-01 {hour:02d}:00" for hour in (0, 1, 2, 3, 9, 10)])
    assert [(gap.start.hour, gap.end.hour) for gap in preview.gaps] == [(2, 8)]


def existing_log() -> tuple[Reading, ...]:
    return tuple(
        Reading(when=at(2030, 1, 1, hour), celsius=10) for hour in (8, 9, 10, 20, 21, 22)
    )


def test_where_both_logs_have_readings_the_present_one_stays() -> None:
    preview = wall_log(
        [f"2030-01-01 {hour:02d}:30" for hour in range(9, 14)], existing=existing_log()
    )
    # 08:30 and 09:30 UTC lie between readings that are there; 10:30 and later fill the gap.
    assert preview.overlapping == 2
    assert [(r.when.hour, r.celsius >= 20) for r in preview.merged] == [
        (8, False),
        (9, False),
        (10, False),
        (10, True),
        (11, True),
        (12, True),
        (20, False),
        (21, False),
        (22, False),
    ]


def test_or_the_new_one_if_the_maker_says_so() -> None:
    preview = wall_log(
        [f"2030-01-01 {hour:02d}:30" for hour in range(9, 14)],
        existing=existing_log(),
        overlap=Overlap.NEW_WINS,
    )
    assert [(r.when.hour, r.celsius >= 20) for r in preview.merged] == [
        (8, False),
        (8, True),
        (9, True),
        (10, True),
        (11, True),
        (12, True),
        (20, False),
        (21, False),
        (22, False),
    ]


def test_a_log_read_twice_changes_nothing() -> None:
    first = look(PLAIN)
    again = look(PLAIN, existing=first.merged)
    assert again.merged == first.merged
    assert again.overlapping == 3


def test_the_merged_log_fits_a_place() -> None:
    preview = look(PLAIN, existing=existing_log())
    place = Place(
        key="room",
        name="Room",
        pattern=(PatternPoint(at=datetime(2030, 1, 1, 7).time(), celsius=20),),  # noqa: DTZ001
        readings=preview.merged,
    )
    assert len(place.readings) == 9


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"hello",
        b"a,b,c\n1,2,3\n",
        b"\x89PNG\r\n\x1a\n" + bytes(range(256)),
        b"time,temperature_c\n",
        b'"' + b"x" * 200_000,
        b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n1 0 obj\n",
    ],
)
def test_what_is_no_log_is_refused_in_a_sentence(data: bytes) -> None:
    with pytest.raises(StudioFileError, match="room log") as told:
        preview_room_log(data, BERLIN)
    assert "\n" not in str(told.value)


def test_a_log_that_is_too_large_is_refused() -> None:
    with pytest.raises(StudioFileError, match="64 MiB"):
        preview_room_log(bytes(64 * 2**20 + 1), BERLIN)


@given(st.binary(max_size=300))
def test_noise_never_raises_anything_but_a_sentence(data: bytes) -> None:
    for head in (b"", PLAIN.encode(), b"time;temp\n01/02/2030 10:00;"):
        with suppress(StudioFileError):
            preview = preview_room_log(head + data, BERLIN)
            whens = [reading.when for reading in preview.readings]
            assert whens == sorted(set(whens))


@given(
    start=st.datetimes(
        datetime(2029, 1, 1),  # noqa: DTZ001 - the strategy wants it naive
        datetime(2032, 1, 1),  # noqa: DTZ001 - likewise
        timezones=st.just(UTC),
    ).map(lambda moment: moment.replace(second=0, microsecond=0)),
    step=st.sampled_from([10, 30, 60]),
    zone=st.sampled_from(["Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "UTC"]),
)
def test_local_times_of_any_log_are_read_right(start: datetime, step: int, zone: str) -> None:
    place = ZoneInfo(zone)
    moments = [start + timedelta(minutes=step * n) for n in range(40)]
    preview = wall_log([f"{m.astimezone(place):%Y-%m-%d %H:%M}" for m in moments], place)
    assert [reading.when for reading in preview.readings] == moments
