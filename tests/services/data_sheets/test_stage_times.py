"""Stage tables against published rules: sheets are returned exactly, q10 between figures."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.craft.local_time import zone_named
from studio_planner.craft.products import Product, SheetPoint
from studio_planner.craft.taught import TaughtStage
from studio_planner.science.history import History, constant_history
from studio_planner.science.stages import Basis, Stage
from studio_planner.services.data_sheets.sources import product_of_sheet, product_of_studio
from studio_planner.services.data_sheets.stage_times import (
    BEYOND_RECORD,
    StageTime,
    room_times,
    sheet_product,
    steady_times,
)
from studio_planner.services.room_records import room_record
from studio_planner.services.sample import sample_studio
from tests.services.small_studios import DAY

if TYPE_CHECKING:
    from pathlib import Path

POURED = datetime(2026, 2, 2, 18, 0, tzinfo=UTC)
UTC_ZONE = zone_named("UTC")


def point(stage: Stage, celsius: float, hours: float, grams: float | None = None) -> SheetPoint:
    return SheetPoint(stage=stage, celsius=celsius, from_hours=hours, mass_g=grams)


def sheet(minimum: float | None = None) -> Product:
    points = (
        point(Stage.CUP_LIFE, 20, 0.5, 100),
        point(Stage.WORKING_TIME, 20, 1.0),
        point(Stage.RECOAT_OPENS, 15, 8),
        point(Stage.RECOAT_OPENS, 25, 4),
        point(Stage.RECOAT_CLOSES, 20, 20),
    )
    return sheet_product("sheet.csv", points, minimum)


def row(rows: tuple[StageTime, ...], stage: Stage) -> StageTime:
    return next(one for one in rows if one.stage is stage)


def test_a_published_figure_is_returned_exactly() -> None:
    opens = row(steady_times(sheet(), 15.0), Stage.RECOAT_OPENS)
    assert opens.likely_hours == 8.0
    assert opens.basis is Basis.PUBLISHED


def test_between_figures_ln_t_runs_straight_over_the_reciprocal_temperature() -> None:
    # Arrhenius: ln t is linear in 1/T, worked here by hand for 20 °C.
    share = (1 / 293.15 - 1 / 288.15) / (1 / 298.15 - 1 / 288.15)
    expected = math.exp(math.log(8) + share * (math.log(4) - math.log(8)))
    opens = row(steady_times(sheet(), 20.0), Stage.RECOAT_OPENS)
    assert opens.likely_hours == pytest.approx(expected)
    assert opens.basis is Basis.BETWEEN


def test_only_stages_of_the_sheet_are_listed_in_one_order() -> None:
    stages = [one.stage for one in steady_times(sheet(), 20.0)]
    assert stages == [s for s in Stage if sheet().figures(s)]


def test_early_likely_and_late_never_cross() -> None:
    for celsius in (10.0, 15.0, 18.0, 25.0, 33.0):
        for one in steady_times(sheet(), celsius):
            assert one.early_hours is not None
            assert one.likely_hours is not None
            assert one.late_hours is not None
            assert one.early_hours <= one.likely_hours <= one.late_hours


def test_below_the_minimum_a_not_before_stage_is_never_reached_and_says_why() -> None:
    opens = row(steady_times(sheet(15.0), 12.0), Stage.RECOAT_OPENS)
    assert opens.likely_hours is None
    assert "minimum of 15 °C" in opens.reason


def test_below_the_minimum_a_window_still_closes_at_the_rate_at_the_minimum() -> None:
    cold, least = steady_times(sheet(15.0), 12.0), steady_times(sheet(15.0), 15.0)
    closes, at_least = row(cold, Stage.RECOAT_CLOSES), row(least, Stage.RECOAT_CLOSES)
    assert closes.early_hours == at_least.early_hours
    assert "minimum of 15 °C it has the hours it has there" in closes.note
    assert at_least.note == ""


def test_below_the_minimum_no_hours_are_called_published() -> None:
    points = (
        point(Stage.CUP_LIFE, 15, 1.0, 100),
        point(Stage.WORKING_TIME, 15, 1.5),
        point(Stage.RECOAT_OPENS, 15, 8),
        point(Stage.RECOAT_CLOSES, 15, 30),
        point(Stage.RECOAT_CLOSES, 25, 20),
    )
    cold = sheet_product("sheet.csv", points, 15.0)
    assert {one.basis for one in steady_times(cold, 15.0)} == {Basis.PUBLISHED}
    assert {one.basis for one in steady_times(cold, 14.0)} == {Basis.OUTSIDE}
    room = constant_history(14.0)
    assert {one.basis for one in room_times(cold, room, POURED)} == {Basis.OUTSIDE}


def test_a_cup_life_without_a_mass_is_marked_as_assumed() -> None:
    nameless = sheet_product("sheet.csv", (point(Stage.CUP_LIFE, 20, 0.5),), None)
    (one,) = steady_times(nameless, 20.0)
    assert (one.grams, one.likely_hours, one.basis) == (100.0, 0.5, Basis.ASSUMED)
    assert one.note == "the sheet does not say for which mass it holds; 100 g is assumed"


def test_cup_life_holds_for_the_mass_that_is_asked() -> None:
    # Heavier: assumed m^-0.6 above the sheet's mass (workshop rule, 0.5 to 0.7).
    plain = row(steady_times(sheet(), 20.0), Stage.CUP_LIFE)
    heavy = row(steady_times(sheet(), 20.0, 200.0), Stage.CUP_LIFE)
    assert (plain.grams, plain.likely_hours) == (100.0, 0.5)
    assert heavy.likely_hours == pytest.approx(0.5 * 2**-0.6)


def test_a_steady_recorded_room_gives_the_steady_table() -> None:
    room = History((0.0, 4e9), (20.0, 20.0), (0.0, 0.0), (None, None))
    steady = steady_times(sheet(), 20.0)
    for one, other in zip(room_times(sheet(), room, POURED), steady, strict=True):
        assert one.likely_hours == pytest.approx(other.likely_hours, abs=1e-3)
        assert one.late_hours == pytest.approx(other.late_hours, abs=1e-3)
        assert one.basis is other.basis


def test_a_stage_beyond_the_record_is_not_reached_within_it() -> None:
    start = POURED.timestamp()
    room = History((start, start + 5 * 3600.0), (20.0, 20.0), (0.3, 0.3), (None, None))
    opens = row(room_times(sheet(), room, POURED), Stage.RECOAT_OPENS)
    assert opens.late_hours is None
    assert opens.reason == BEYOND_RECORD
    assert opens.beyond_record


def test_a_pour_outside_the_record_is_refused() -> None:
    start = POURED.timestamp()
    room = History((start, start + 3600.0), (20.0, 20.0), (0.3, 0.3), (None, None))
    with pytest.raises(InvalidEntry, match="outside the room's record"):
        room_times(sheet(), room, POURED - timedelta(hours=1))


def test_the_basis_in_a_room_is_the_worst_that_was_met() -> None:
    start = POURED.timestamp()
    seconds = tuple(start + hour * 3600.0 for hour in (0, 4, 60))
    room = History(seconds, (20.0, 12.0, 12.0), (0.0,) * 3, (None,) * 3)
    assert row(room_times(sheet(), room, POURED), Stage.RECOAT_OPENS).basis is Basis.OUTSIDE
    warm_hours_only = room_times(sheet(16.0), room, POURED)
    assert row(warm_hours_only, Stage.RECOAT_OPENS).basis is Basis.BETWEEN


def test_a_room_always_below_the_minimum_never_gets_there() -> None:
    room = constant_history(10.0)
    opens = row(room_times(sheet(15.0), room, POURED), Stage.RECOAT_OPENS)
    assert opens.likely_hours is None


def test_a_temperature_that_no_law_covers_is_refused_in_words() -> None:
    with pytest.raises(InvalidEntry, match="outside the"):
        steady_times(sheet(), 250.0)


def test_a_sheet_whose_window_opens_after_it_closes_is_refused() -> None:
    points = (point(Stage.RECOAT_OPENS, 20, 12), point(Stage.RECOAT_CLOSES, 20, 8))
    with pytest.raises(InvalidEntry, match="opens after it closes"):
        sheet_product("sheet.csv", points, None)


def test_a_sheets_file_names_itself_in_what_is_wrong_with_it(tmp_path: Path) -> None:
    file = tmp_path / "tarn.csv"
    file.write_text("stage,temperature,unit,from,to,time_unit\nrecoat_opens,x,C,4,,h\n")
    with pytest.raises(InvalidEntry, match=r"tarn\.csv.*row 2, temperature"):
        product_of_sheet(file, None)
    file.write_text("nothing here\n")
    with pytest.raises(StudioFileError, match=r"tarn\.csv"):
        product_of_sheet(file, None)


def test_a_products_own_minimum_gives_way_to_the_one_that_is_asked() -> None:
    studio = sample_studio(DAY)
    assert product_of_studio(studio, "TARN SLOW MIX", None).minimum_celsius == 15
    assert product_of_studio(studio, "tarn", 17.0).minimum_celsius == 17.0


def test_across_a_long_gap_nobody_knows_the_room_well(tmp_path: Path) -> None:
    log = tmp_path / "room.csv"
    log.write_text(
        "time,temperature_c\n2026-02-02T18:00+01:00,20\n2026-02-02T19:00+01:00,20\n"
        "2026-02-03T06:00+01:00,17\n2026-02-03T07:00+01:00,17\n"
    )
    record = room_record(log, None, UTC_ZONE)
    room = record.history
    hours = [(end - start).total_seconds() / 3600 for start, end in record.gaps]
    assert hours == [11.0]
    middle = datetime(2026, 2, 2, 23, 0, tzinfo=UTC).timestamp()
    assert (room.band_at(middle), room.band_at(room.seconds[0])) == (2.0, 0.3)


def test_rows_that_give_no_reading_are_kept_with_their_reason(tmp_path: Path) -> None:
    # On 29 March 2026 the clocks of Vienna skip from 02:00 to 03:00 (tz database).
    log = tmp_path / "room.csv"
    log.write_text(
        "time,temperature_c\n2026-03-29T01:00,20\n2026-13-20T01:00,20\n2026-03-29T02:30,20\n"
        "2026-03-29T03:00,cold\n2026-03-29T03:30,900\n2026-03-29T04:00,20\n"
    )
    record = room_record(log, zone_named("Europe/Vienna"), UTC_ZONE)
    assert [(row.line, row.why) for row in record.skipped] == [
        (3, "there is no such date"),
        (4, "the clock in Europe/Vienna skips this time at the spring change"),
        (5, "it has no temperature (“cold”)"),
        (6, "900 is an error value or not a room's temperature"),
    ]
    assert record.history.extent[1] - record.history.extent[0] == 2 * 3600.0


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "is empty"),
        ("time,temperature_c\n2026-02-02T18:00,20\n", "have no zone"),
        ("time,temperature_c\n2026-02-02T18:00+01:00,warm\n", "no row of it could be read"),
        (
            "time,temperature\n2026-02-02T18:00+01:00,68\n2026-02-02T19:00+01:00,67\n",
            "question",
        ),
    ],
)
def test_a_log_that_cannot_be_used_says_why(tmp_path: Path, text: str, words: str) -> None:
    log = tmp_path / "room.csv"
    log.write_text(text)
    with pytest.raises(StudioFileError, match=words) as found:
        room_record(log, None, UTC_ZONE)
    assert str(log) in str(found.value)


def taught(product: Product, sheet_hours: float) -> Product:
    opens = TaughtStage(
        stage=Stage.RECOAT_OPENS,
        celsius=20.0,
        sheet_hours=sheet_hours,
        early_hours=6.0,
        likely_hours=6.5,
        late_hours=7.0,
        sheet_factor=1.1,
        band_left=0.8,
        tests=7,
        pours=1,
        at=POURED,
    )
    return replace(product, taught=(opens,))


def test_a_stage_that_touch_tests_taught_says_so_beside_the_sheet() -> None:
    law = sheet().sheet_law(Stage.RECOAT_OPENS)
    assert law is not None
    opens = row(steady_times(taught(sheet(), law.hours(20.0)), 20.0, None), Stage.RECOAT_OPENS)
    assert (opens.likely_hours, opens.basis) == (6.5, Basis.TAUGHT)
    assert opens.note == (
        "learned from 7 touch tests of 1 pour, which found 6.5 h at 20.0 °C, where the sheet "
        "says 5.6 h"
    )


def test_what_was_taught_of_another_sheet_is_left_out_and_said_to_be() -> None:
    opens = row(steady_times(taught(sheet(), 3.0), 20.0), Stage.RECOAT_OPENS)
    assert opens.basis is Basis.BETWEEN
    assert opens.note.startswith("the sheet has changed since touch tests taught it")
