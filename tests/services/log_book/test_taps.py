"""What one tap writes down, which taps make sense, and how the log is read again."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.corrections import corrected, withdrawn
from studio_planner.services.log_book.log_rows import LogWanted, log_rows, wanted_rows
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.taps import (
    due_taps,
    may_happen,
    tap_for,
    tap_words,
    tapped,
    usual_coat,
    what_words,
)
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from tests.desktop import scenes
from tests.services.log_book.logged_studio import NOW, ago, pour, sentences, studio, with_pours


def test_a_tapped_pour_ended_now_and_took_its_usual_time() -> None:
    tap = tap_for(studio(), EntryKind.POURED, "tray")
    after = tapped(studio(), replace(tap), NOW, NOW)
    assert sentences(after, studio()) == {"spot": "say on which spot it lies."}
    whole = with_pours(pour())
    tap = tap_for(whole, EntryKind.POURED, "tray")
    assert tap.coats == (("tray", "flood"),)
    (row,) = [p for p in tapped(whole, tap, NOW, NOW).make(whole).poured if p.coat == "flood"]
    flood = whole.piece("tray").coat("flood")
    assert row.end == NOW
    minutes = flood.setup_minutes + flood.piece_minutes
    assert row.end - row.start == timedelta(minutes=minutes)


def test_what_is_tapped_belongs_to_the_coat_that_is_meant() -> None:
    whole = with_pours(pour())
    assert usual_coat(whole, EntryKind.TOUCHED, "tray") == "seal"
    assert usual_coat(whole, EntryKind.TURNED, "tray") == "flood"
    assert usual_coat(whole, EntryKind.PACKED, "tray") == ""
    assert usual_coat(whole, EntryKind.POURED, "nothing") == ""
    tap = tap_for(whole, EntryKind.TOUCHED, "tray", Touch.TACK, Verdict.ALREADY)
    assert what_words(whole, tap) == "Tape-tack, already: seal"
    assert tap_words(whole, tap) == "Tape-tack, already: seal (Tray)"
    (entry,) = [e for e in tapped(whole, tap, NOW, NOW).make(whole).log if e.touch]
    assert (entry.coat, entry.verdict) == ("seal", Verdict.ALREADY)


def test_only_what_can_happen_to_a_piece_is_offered() -> None:
    bare, whole = studio(), with_pours(pour())
    assert EntryKind.TOUCHED not in may_happen(bare, "tray")
    assert EntryKind.STRIPPED not in may_happen(bare, "tray")
    assert EntryKind.TOUCHED in may_happen(whole, "tray")
    spoiled = told(whole, StepTold(kind=EntryKind.SPOILED, pieces=("tray",), at=NOW), NOW)
    assert may_happen(spoiled.make(whole), "tray") == (EntryKind.STRIPPED,)
    tap = tap_for(whole, EntryKind.SHIPPED, "tray")
    gone = tapped(whole, tap, NOW, NOW).make(whole)
    assert gone.standing[-1].order == "ines"
    assert may_happen(gone, "tray") == (EntryKind.SPOILED, EntryKind.STRIPPED)


def test_what_is_due_by_the_plan_can_be_tapped_for_its_whole_mix() -> None:
    scene = scenes.planned()
    taps = due_taps(DeskView(scene, scenes.NOW))
    words = [tap_words(scene, tap) for tap in taps]
    assert "Poured: seal (Harbour board 1)" in words
    assert len(words) == len(set(words))


def test_without_a_plan_nothing_is_due() -> None:
    assert due_taps(DeskView(studio(), NOW)) == ()


def test_the_log_is_read_newest_first_with_what_was_corrected_beside_it() -> None:
    whole = with_pours(pour())
    old = whole.log[0]
    right = replace(old, end=ago(48.5))
    whole = corrected(whole, old.number, right, NOW).make(whole)
    turned = StepTold(kind=EntryKind.TURNED, pieces=("tray",), at=ago(1))
    whole = told(whole, turned, NOW).make(whole)
    first, second = log_rows(whole, NOW)
    assert first.entry.kind is EntryKind.TURNED
    assert second.former == (old,)
    assert second.stands
    whole = withdrawn(whole, first.entry.number, NOW).make(whole)
    first, _ = log_rows(whole, NOW)
    assert not first.stands
    assert first.entry.kind is EntryKind.TURNED


def test_the_log_is_narrowed_by_piece_order_kind_day_and_words() -> None:
    whole = with_pours(pour(), pour(piece="one", coat="flood", hours=30, words="too thin"))
    mix = WeighingTold(
        product="resin", at=ago(30), a_grams=30, b_grams=15, coats=(("one", "flood"),)
    )
    whole = weighed(whole, mix, NOW).make(whole)
    whole = shipped(whole, "fair", ago(1), NOW).make(whole)

    def kinds(**asked: object) -> list[tuple[EntryKind, str]]:
        wanted = LogWanted(**asked)  # type: ignore[arg-type]
        rows = wanted_rows(whole, log_rows(whole, NOW), wanted)
        return [(row.entry.kind, row.entry.piece) for row in rows]

    assert kinds(piece="tray") == [(EntryKind.POURED, "tray")]
    assert (EntryKind.WEIGHED, "") in kinds(piece="one")
    assert len(kinds(order="fair")) == 4
    assert kinds(order="ines") == [(EntryKind.POURED, "tray")]
    assert kinds(kind=EntryKind.WEIGHED) == [(EntryKind.WEIGHED, "")]
    assert kinds(day=ago(50).date()) == [(EntryKind.POURED, "tray")]
    assert kinds(text="TOO thin") == [(EntryKind.POURED, "one")]
    assert kinds(text="nowhere") == []
    assert (EntryKind.WEIGHED, "") not in kinds(piece="tray")
    assert len(kinds()) == len(log_rows(whole, NOW))


def test_a_pour_that_is_older_than_the_log_is_read_too() -> None:
    whole = replace(with_pours(pour()), log=())
    (row,) = log_rows(whole, NOW)
    assert row.older_than_log
    assert row.entry.coat == "seal"
