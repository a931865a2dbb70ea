"""What the bench shows, and what a tap on it writes down."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from studio_planner.craft.orders import Gate
from studio_planner.craft.pins import Pin
from studio_planner.craft.plans import Plan, Readiness
from studio_planner.services.bench import bench_of
from studio_planner.services.hands_items import HandsKind
from studio_planner.services.log_book.pours import mix_of, with_pour
from tests.desktop import scenes


def test_tasks_come_in_the_order_to_do_them_and_count_to_their_start_or_their_end() -> None:
    studio = scenes.planned()
    bench = bench_of(studio, studio.plan, scenes.NOW)
    assert bench.tasks
    for task in bench.tasks:
        assert task.begun == (task.item.start <= scenes.NOW)
        if not task.begun:
            assert task.counts_to == task.item.start
        else:
            assert task.counts_to >= task.item.deadline
    coming = [task.item.start for task in bench.tasks if not task.item.missed]
    assert coming == sorted(coming)


def test_all_pieces_of_a_mix_are_one_task() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    for task in bench_of(studio, plan, scenes.NOW).tasks:
        if task.item.kind is HandsKind.POUR:
            coat = next(c for c in plan.coats if c.number == task.item.number)
            assert set(task.pieces) == {c.piece for c in mix_of(plan, coat)}


def test_without_a_plan_the_bench_is_empty() -> None:
    assert not bench_of(scenes.planned(), None, scenes.NOW).tasks


def test_what_cannot_be_saved_comes_before_what_can_be_sanded() -> None:
    studio = scenes.planned()
    closing = bench_of(studio, studio.plan, scenes.NOW).closing
    assert [row.saved_by_sanding for row in closing] == sorted(
        row.saved_by_sanding for row in closing
    )
    assert all(row.closes > scenes.NOW for row in closing)


def test_a_piece_is_ready_once_all_its_coats_are_done_and_a_gate_is_passed() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    piece = plan.coats[0].piece
    last = max(coat.end for coat in plan.coats if coat.piece == piece)
    ready = (
        Readiness(piece=piece, stage=Gate.DISPLAY.stage, likely=None, safe=last),
        Readiness(piece=piece, stage=Gate.PACK.stage, likely=None, safe=last + timedelta(5)),
    )
    changed: Plan = replace(plan, ready=ready)
    before = bench_of(studio, changed, last - timedelta(minutes=5))
    after = bench_of(studio, changed, last + timedelta(hours=1))
    assert not before.ready
    assert [(row.piece, row.gate) for row in after.ready] == [(piece, Gate.DISPLAY)]


def test_a_pour_is_written_down_with_what_lies_under_it() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    piece = max(studio.pieces, key=lambda one: sum(c.piece == one.key for c in plan.coats))
    coats = sorted((c for c in plan.coats if c.piece == piece.key), key=lambda c: c.start)
    last = coats[-1]
    bare = replace(
        studio,
        poured=(),
        pins=(Pin(piece=piece.key, coat=last.coat, start=last.start.replace(minute=0)),),
    )
    start, end = last.start, last.start + timedelta(minutes=47)
    after = with_pour(bare, (last,), start, end)
    rows = after.pours_of(piece.key)
    assert [row.coat for row in rows] == [coat.coat for coat in coats]
    assert (rows[-1].start, rows[-1].end, rows[-1].spot) == (start, end, last.spot)
    assert [(r.start, r.end) for r in rows[:-1]] == [(c.start, c.end) for c in coats[:-1]]
    assert not after.pins


def test_what_is_written_down_already_stays_as_it_is() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    coat = plan.coats[0]
    once = with_pour(studio, (coat,), coat.start, coat.end)
    again = with_pour(once, (coat,), coat.start, coat.end + timedelta(hours=1))
    assert again.poured == once.poured
