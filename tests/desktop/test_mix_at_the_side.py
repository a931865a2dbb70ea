"""The side says of a chosen pour's mix how many cups, in what order, and what to mind."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.amounts import coat_grams
from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.mixes import MixedFor, WeighedColour, WeighedMix
from studio_planner.services.caution import deferral
from studio_planner.services.editing.changes import Change
from studio_planner.services.mixing.mix_sheet import mix_sheet
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow

_SECTION, _WORTH, _MIX = 0, 1, 2


def choose(desk: DeskWindow, piece: str, coat: str) -> Ribbon:
    lanes = desk.timeline.lanes
    for row, lane in enumerate(lanes.lanes):
        for column, bar in enumerate(lane.bars):
            if isinstance(bar, Ribbon) and (lane.piece.key, bar.coat.key) == (piece, coat):
                desk.timeline.setFocus()
                desk.timeline.setCurrentIndex(lanes.index(row, column))
                desk.parts.show_side()
                desk.parts.side.foot.later.finish()
                return bar
    pytest.fail(f"no bar of {piece}, {coat}")


def said(desk: DeskWindow) -> dict[str, str]:
    return {row.title: row.detail for row in desk.parts.side.foot.mix.rows.rows}  # type: ignore[union-attr]


def test_the_mix_of_the_chosen_pour_is_shown(desk: DeskWindow) -> None:
    foot = desk.parts.side.foot
    bar = choose(desk, "h1", "flood")
    foot.tabs.setCurrentIndex(_MIX)
    studio = bar.lane.studio
    assert studio.plan is not None
    sheet = mix_sheet(studio, studio.plan, bar.planned.mix)
    rows = said(desk)
    title = next(iter(rows))
    assert title == f"Slow flood (invented), {sheet.total_grams:.1f} g"
    assert "1 cup" in rows[title]
    assert "Harbour board 1" in rows[title]
    assert "clear: pour at minute" in rows["In this order"]
    assert "Harbour board 1: 1.6 mm deep" in rows["Depth"]
    assert rows["Before all"] == deferral()
    product = studio.product("slow")
    needed = coat_grams(bar.lane.piece, bar.coat, product, studio.settings)
    assert sheet.total_grams >= needed


def test_it_stays_in_view_from_bar_to_bar(desk: DeskWindow) -> None:
    choose(desk, "h1", "flood")
    desk.parts.side.foot.tabs.setCurrentIndex(_MIX)
    choose(desk, "f", "flood")
    assert desk.parts.side.foot.tabs.currentIndex() == _MIX
    assert "Fen clock" in str(said(desk))


def test_what_is_poured_has_no_mix_to_weigh(desk: DeskWindow) -> None:
    choose(desk, "k", "clear")
    desk.parts.side.foot.tabs.setCurrentIndex(_MIX)
    assert not desk.parts.side.foot.mix.rows.rows
    assert "Choose a pour that is still to come" in desk.parts.side.foot.mix.empty


def test_of_what_is_poured_is_said_what_was_really_weighed(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    desk.changes.make(Change("Weigh", weighed))
    choose(desk, "k", "clear")
    desk.parts.side.foot.tabs.setCurrentIndex(_MIX)
    (title, facts), (colours, shares) = said(desk).items()
    assert title.startswith("Mix 7, weighed ")
    assert facts == "Slow flood (invented), 100.0 g A, 40.0 g B, 2.8 g Chalk, B of lot B-12."
    assert (colours, shares) == ("Colours", "Chalk: 2\N{NO-BREAK SPACE}% of all of mix 7.")


def weighed(studio: Studio) -> Studio:
    """The studio with the mix that its poured board came from."""
    assert studio.plan is not None
    pour = next(one for one in studio.plan.coats if one.piece == "k")
    number = len(studio.log) + 1
    entry = LogEntry(
        number=number, kind=EntryKind.WEIGHED, at=pour.start, written=pour.start, batch=7
    )
    mix = WeighedMix(
        entry=number,
        batch=7,
        product="slow",
        at=pour.start,
        a_grams=100.0,
        b_grams=40.0,
        lot_b="B-12",
        colourants=(WeighedColour(name="Chalk", grams=2.8),),
        coats=(MixedFor(piece="k", coat="clear"),),
    )
    return replace(studio, log=(*studio.log, entry), mixes=(*studio.mixes, mix))


def test_the_section_comes_back_from_how_good(desk: DeskWindow) -> None:
    desk.parts.side.show_worth()
    choose(desk, "h1", "flood")
    assert desk.parts.side.foot.tabs.currentIndex() == _SECTION


def test_a_pour_is_weighed_from_its_menu_and_by_its_key(desk: DeskWindow) -> None:
    bar = choose(desk, "f", "flood")
    menu = desk.timeline.work.verbs.menu(bar)
    weigh = next(one for one in menu.actions() if "Weigh" in one.text())
    weigh.trigger()
    sheet = desk.others.scale.sheet
    assert sheet is not None
    assert [one.piece for one in sheet.coats] == ["f"]
    desk.others.scale.close()
    choose(desk, "h2", "flood")
    QTest.keyClick(desk, Qt.Key.Key_F12)
    sheet = desk.others.scale.sheet
    assert sheet is not None
    assert [one.piece for one in sheet.coats] == ["h2"]


def test_a_mix_with_something_to_mind_says_so_on_its_tab(desk: DeskWindow) -> None:
    foot = desk.parts.side.foot
    marked = set[bool]()
    for lane in desk.timeline.lanes.lanes:
        for bar in lane.bars:
            if isinstance(bar, Ribbon):
                choose(desk, lane.piece.key, bar.coat.key)
                minds = "Mind" in said(desk)
                assert foot.tabs.tabText(_MIX) == ("\N{BLACK RIGHT-POINTING TRIANGLE} Mix"
                                                  if minds else "Mix")  # fmt: skip
                marked.add(minds)
    assert marked == {True, False}
