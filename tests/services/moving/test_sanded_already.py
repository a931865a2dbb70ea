"""A pour whose coat below was sanded already, held over another time."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.pieces import Joint
from studio_planner.planning.quick import quick_plan
from studio_planner.services.desk import DeskView
from studio_planner.services.moving.breaks import Rule
from studio_planner.services.moving.judging import Judge
from tests.planning.benchmark_studios import START, make_studio
from tests.services.moving.test_judging import STEP, rules, said


def _judge() -> tuple[Judge, LogEntry]:
    """A judge of the coat that was sanded for eight days after the pour below."""
    studio = make_studio(4, 1, 3, 1)
    piece = studio.pieces[0]
    pour = Poured(
        piece=piece.key,
        coat=piece.stack[0].key,
        start=START,
        end=START + timedelta(hours=1),
        spot=studio.spots[0].key,
    )
    now = START + timedelta(days=8)
    entry = LogEntry(
        number=1,
        kind=EntryKind.SANDED,
        at=now,
        written=now,
        piece=piece.key,
        coat=piece.stack[1].key,
    )
    minutes = replace(studio.settings, settle_minutes=600)
    studio = replace(studio, settings=minutes, poured=(pour,), log=(entry,))
    plan = quick_plan(studio, now)
    coat = next(one for one in plan.coats if one.coat == entry.coat)
    return Judge(DeskView(replace(studio, plan=plan), now), coat), entry


def test_it_may_move_though_its_window_has_closed_and_stays_scuffed() -> None:
    judge, _ = _judge()
    verdict = judge.at(judge.mix[0].start)
    assert verdict.allowed, said(verdict)
    assert [coat.joint for coat in verdict.coats] == [Joint.SCUFFED]
    assert Rule.WINDOW not in rules(judge.at(judge.mix[0].start + STEP))


def test_it_waits_for_the_dust() -> None:
    judge, entry = _judge()
    verdict = judge.at(entry.at + STEP)
    assert Rule.DUST in rules(verdict)
    assert said(verdict).count("Dust from sanding") == 1
