"""The pour sheet: numbers, clock, spots, boxes; only what is still to be poured."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.mixes import MixedFor, WeighedMix
from studio_planner.craft.settings import ClockForm, Units
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.desk import DeskView
from studio_planner.services.mixing.mix_sheet import mix_sheet
from studio_planner.services.paper.batch_numbers import batch_numbers
from studio_planner.services.paper.cup_clock import cup_clock
from studio_planner.services.paper.pages import Fields, LargeNumber, NothingForPaper
from studio_planner.services.paper.pour_sheet import (
    pour_days,
    pour_sheet_of_day,
    pour_sheet_of_mix,
    pours_on,
)
from tests.services.mixing.bench_mixes import (
    FLOOD,
    START,
    bench,
    coasters,
    flood_coat,
    plan_of,
    poured,
)
from tests.services.paper.printed import DAY, NOW, blocks, seen, tables
from tests.services.small_studios import kept, morning, planned_once

LATER = timedelta(days=1)


def numbers(view: DeskView) -> list[str]:
    sheet = pour_sheet_of_day(view, DAY)
    return [one.number for one in blocks(sheet) if isinstance(one, LargeNumber)]


def weighed(entry: int, batch: int, piece: str) -> tuple[LogEntry, WeighedMix]:
    at = NOW + timedelta(minutes=entry)
    mix = WeighedMix(
        entry=entry, batch=batch, product="flood", at=at, a_grams=100, b_grams=44,
        coats=(MixedFor(piece=piece, coat="flood"),),
    )  # fmt: skip
    return LogEntry(number=entry, kind=EntryKind.WEIGHED, at=at, written=at, batch=batch), mix


def names(view: DeskView) -> list[str]:
    """What the sheet of the day calls its mixes beside the place for their numbers."""
    sheet = pour_sheet_of_day(view, DAY)
    return [one.beside[0] for one in blocks(sheet) if isinstance(one, LargeNumber)]


def test_until_a_mix_is_weighed_there_is_room_for_its_number() -> None:
    assert numbers(seen()) == [""]
    assert names(seen()) == ["Pour 1: Flood"]


def test_a_sheet_that_was_printed_stays_true_when_another_mix_is_weighed_first() -> None:
    two = bench(coasters("set", 6, flood_coat()), coasters("next", 6, flood_coat()))
    pours = (poured(1), poured(2, "next", 2))
    entry, mix = weighed(1, 1, "next")
    before = seen(two, *pours)
    after = seen(replace(two, log=(entry,), mixes=(mix,)), *pours)
    assert names(before) == names(after) == ["Pour 1: Flood", "Pour 2: Flood"]
    assert (numbers(before), numbers(after)) == (["", ""], ["", "1"])
    running = {part.running for part in pour_sheet_of_day(after, DAY).parts}
    assert running == {"Pour 1", "Pour 2", "Pour 1, 2"}


def test_what_is_weighed_already_keeps_its_number() -> None:
    entry, mix = weighed(1, 41, "set")
    two = bench(coasters("set", 6, flood_coat()), coasters("next", 6, flood_coat()))
    two = replace(two, log=(entry,), mixes=(mix,))
    second = poured(2, "next", 2, start=START + LATER, end=START + LATER * 1.05)
    view = seen(two, poured(1), second)
    assert batch_numbers(view.studio, kept(view.studio)) == {1: (41,), 2: ()}
    assert numbers(view) == ["41"]


def test_each_portion_is_weighed_under_a_number_of_its_own() -> None:
    small = replace(FLOOD, cup_limit_g=120)
    entry, mix = weighed(1, 41, "set")
    alone = bench(coasters("set", 6, flood_coat()), product=small)
    view = seen(replace(alone, log=(entry,), mixes=(mix,)), poured(1))
    assert numbers(view) == ["41", ""]
    assert len(set(names(view))) == 1


def test_portions_begin_one_after_the_other_over_the_block_that_is_planned_for_them() -> None:
    small = replace(FLOOD, cup_limit_g=60)
    view = seen(bench(coasters("set", 6, flood_coat()), product=small))
    begins = [
        table.rows[0].cells[0] for table in tables(pour_sheet_of_day(view, DAY), "The cup")
    ]
    assert begins == ["18:00", "18:26", "18:52"]


def test_the_clock_runs_from_a_meets_b_to_what_is_gone() -> None:
    """By hand: one clear cup is gone after one and a half times the minutes to be out by."""
    view = seen(bench(coasters("set", 6, flood_coat())))
    (time,) = mix_sheet(view.studio, kept(view.studio), 1).times
    lines = cup_clock(view.studio, time, START)
    assert [line.words.split(":")[0] for line in lines] == [
        "A meets B",
        "pour",
        "pour by",
        "gone",
    ]
    out_by = time.portion.out_of_cup_minutes
    assert out_by is not None
    assert [line.minute for line in lines] == [
        "0",
        "6",
        str(int(out_by)),
        str(int(out_by / SHARE_TO_USE)),
    ]
    assert lines[-1].when == START + timedelta(minutes=int(out_by / SHARE_TO_USE))


def test_the_cups_of_a_divided_mix_each_have_their_minute() -> None:
    sheet = pour_sheet_of_day(seen(), DAY)
    (table,) = tables(sheet, "The cup's clock")
    words = [row.cells[2] for row in table.rows]
    for number, colour in enumerate(("white", "pearl", "gold"), start=1):
        assert any(one.startswith(f"pour cup {number}, {colour}") for one in words)
    minutes = [int(row.cells[1]) for row in table.rows]
    assert minutes == sorted(minutes)
    assert words[-1].startswith("gone")


def test_a_sheet_has_room_for_what_really_happens_and_the_caution() -> None:
    sheet = pour_sheet_of_day(seen(), DAY)
    fields, *_ = (one for one in blocks(sheet) if isinstance(one, Fields))
    assert {"room °C", "humidity %", "lot of A", "lot of B"} <= set(fields.labels)
    (clock,) = tables(sheet, "The cup's clock")
    assert clock.columns[-1].write
    assert clock.rows[0].cells[2] == "A meets B"
    assert tables(sheet, "Touch: string / tape-tack / no mark / thumbnail no mark")
    assert sheet.caution == DEFERRAL


def test_only_what_is_still_to_be_poured_is_on_a_sheet() -> None:
    two = bench(coasters("set", 6, flood_coat()), coasters("next", 6, flood_coat()))
    first, second = poured(1), poured(2, "next", 2)
    view = seen(two, first, second)
    assert len(numbers(view)) == 2
    pour = Poured(piece="set", coat="flood", start=START, end=first.end, spot="s1")
    done = replace(view.studio, poured=(pour,))
    assert len(numbers(DeskView(done, NOW))) == 1
    with pytest.raises(NothingForPaper, match="no mix 1 in the plan"):
        pour_sheet_of_mix(DeskView(done, NOW), 1)
    assert pour_sheet_of_mix(DeskView(done, NOW), 2).file_name == "pour-2026-02-02-2"


def test_a_day_without_pours_names_the_next_one() -> None:
    with pytest.raises(NothingForPaper, match="next pours are on Mon 2 Feb"):
        pour_sheet_of_day(seen(), DAY - LATER)
    with pytest.raises(NothingForPaper, match="nor planned for later; plan again"):
        pour_sheet_of_day(seen(), DAY + LATER)
    with pytest.raises(NothingForPaper):
        pour_sheet_of_day(DeskView(bench(), NOW), DAY)


def test_a_pour_after_midnight_belongs_to_the_day_on_the_studios_wall() -> None:
    late = poured(1, start=START.replace(hour=23, minute=30), end=START + timedelta(hours=7))
    studio = replace(bench(), zone="Europe/Berlin", plan=plan_of(late))
    assert pour_days(DeskView(studio, NOW)) == (DAY + LATER,)


def test_times_are_in_the_studios_own_form() -> None:
    studio = replace(bench(), units=Units(clock=ClockForm.HOURS_12))
    assert any(
        "6:00 pm to 7:20 pm" in text for text in pour_sheet_of_day(seen(studio), DAY).texts
    )


def test_the_sample_has_a_sheet_for_every_day_that_pours_and_its_leaf_is_laid() -> None:
    studio = planned_once()
    view = DeskView(studio, morning(studio))
    texts: list[str] = []
    for day in pour_days(view):
        sheet = pour_sheet_of_day(view, day)
        assert all(part.blocks for part in sheet.parts)
        texts += sheet.texts
    assert "Lay the leaf" in texts
    # By hand: 240 cm² and a fifth on top are 1.47 leaves of 14 cm.
    assert "Lay out 2 leaves: some of it overlaps or tears." in texts
    assert any(text.startswith("recoat opens: ") for text in texts)
    assert any(text.startswith("recoat closes: ") for text in texts)
    assert any(text.startswith("cover: ") for text in texts)


def test_where_a_leaf_has_no_size_its_sheet_counts_none() -> None:
    studio = planned_once()
    products = tuple(replace(one, leaf_mm=None) for one in studio.products)
    view = DeskView(replace(studio, products=products), morning(studio))
    texts = [text for day in pour_days(view) for text in pour_sheet_of_day(view, day).texts]
    assert "Lay the leaf" in texts
    assert not any(text.startswith("Lay out") for text in texts)


def test_what_follows_names_the_pour_by_the_number_that_the_plan_has_for_it() -> None:
    view = DeskView(planned_once(), morning(planned_once()))
    (table,) = tables(pour_sheet_of_day(view, pour_days(view)[0]), "After the pour")
    firsts: dict[int, int] = {}
    for coat in pours_on(view, pour_days(view)[0]):
        firsts[coat.mix] = min(coat.number, firsts.get(coat.mix, coat.number))
    assert table.columns[1].head == "Pour"
    assert {int(row.cells[1]) for row in table.rows} <= set(firsts.values())


def test_windows_are_printed_on_the_safe_side_of_the_minute() -> None:
    studio = planned_once()
    view = DeskView(studio, morning(studio))
    ribbon = next(bar for lane in view.lanes for bar in lane.bars
                  if getattr(bar, "doorway", None) and bar.start > view.now)  # fmt: skip
    opens = ribbon.doorway.opens  # type: ignore[union-attr]
    mix = ribbon.planned.mix  # type: ignore[union-attr]
    sheet = pour_sheet_of_mix(view, mix)
    (table,) = tables(sheet, "After the pour")
    shown = next(row.cells[0] for row in table.rows if "recoat opens" in row.cells[2])
    hour, minute = (int(part) for part in shown.split(" ")[-1].split(":"))
    local = opens.astimezone(studio.time_zone)
    assert (hour * 60 + minute) * 60 >= local.hour * 3600 + local.minute * 60 + local.second
