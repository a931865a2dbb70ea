"""What the bench shows, and what a tap on it writes down."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from studio_planner.craft.orders import Gate
from studio_planner.craft.pins import Pin
from studio_planner.craft.plans import Plan, Readiness
from studio_planner.services.bench import bench_of
from studio_planner.services.log_book.pours import with_pour
from tests.desktop import scenes


def test_tasks_come_in_the_order_to_do_them_and_count_to_their_start_or_their_end() -> None:
    studio = scenes.planned()
    # Two pours have begun by then.
    now = scenes.NOW + timedelta(hours=14)
    tasks = bench_of(studio, studio.plan, now).tasks
    assert [task.begun for task in tasks[:3]] == [True, True, False]
    for task in tasks:
        item = task.item
        assert task.begun == (item.start <= now)
        assert task.counts_to == (max(item.deadline, item.end) if task.begun else item.start)
    coming = [task.item.start for task in tasks if not task.item.missed]
    assert coming == sorted(coming)


def test_all_pieces_of_a_mix_are_one_task() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    apart = bench_of(studio, plan, scenes.NOW).tasks
    one, other = (task.item for task in apart if task.item.start == apart[2].item.start)
    mix = next(coat.mix for coat in plan.coats if coat.number == one.number)
    coats = tuple(
        replace(coat, mix=mix) if coat.number == other.number else coat for coat in plan.coats
    )
    together = bench_of(studio, replace(plan, coats=coats), scenes.NOW).tasks
    assert len(together) == len(apart) - 1
    (task,) = (task for task in together if len(task.pieces) > 1)
    assert set(task.pieces) == {one.piece, other.piece}


def test_without_a_plan_the_bench_is_empty() -> None:
    assert not bench_of(scenes.planned(), None, scenes.NOW).tasks


def test_what_cannot_be_saved_comes_before_what_can_be_sanded() -> None:
    studio = scenes.planned()
    now = scenes.NOW + timedelta(hours=6)
    sooner, later = bench_of(studio, studio.plan, now).closing
    assert sooner.saved_by_sanding
    assert later.saved_by_sanding
    assert now < sooner.closes <= later.closes
    piece = studio.piece(later.piece)
    below = piece.below(piece.position(later.coat))
    assert below is not None
    stack = tuple(
        replace(coat, sandable=False) if place == below else coat
        for place, coat in enumerate(piece.stack)
    )
    hard = tuple(
        replace(one, stack=stack) if one.key == piece.key else one for one in studio.pieces
    )
    first, second = bench_of(replace(studio, pieces=hard), studio.plan, now).closing
    assert (first.piece, first.saved_by_sanding) == (later.piece, False)
    assert second == sooner


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
