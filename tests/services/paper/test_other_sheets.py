"""The week for the door, the slip with its care card, the stock, and what can be chosen."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, timedelta

import pytest

from studio_planner.craft.orders import ContactClaim, Order, Promise
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Outcome, Readiness, StepKind, Trust, Window
from studio_planner.craft.plans import PlannedStep as Step
from studio_planner.craft.settings import Units
from studio_planner.craft.stock import LotPart
from studio_planner.science.stages import Stage
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.steps import shipped
from studio_planner.services.paper.care_card import contact_words
from studio_planner.services.paper.choosing import SheetKind, choices, sheet_of
from studio_planner.services.paper.order_slip import order_slip
from studio_planner.services.paper.pages import Day, Mark, NothingForPaper, PaperSize
from studio_planner.services.paper.stock_list import stock_list
from studio_planner.services.paper.week_sheet import week_sheet
from tests.services.mixing.bench_mixes import START, bench, plan_of, poured
from tests.services.paper.printed import DAY, NOW, blocks, grams, seen, tables
from tests.services.small_studios import morning, planned_once
from tests.services.stocks.bottles import lot, nightly, stocked

CLAIM = re.compile(r"\bsafe\b|proof|approved|toxic|certified")
ORDER = Order(key="o", name="Harbour office", pieces=("set",), promised=date(2026, 2, 13))


def planned_week() -> DeskView:
    """A pour, a step and a pick-up on the Monday, and the window that the pour is in."""
    window = Window(opens=START, closes=START + timedelta(hours=5), trust=Trust.SAFE)
    coat = poured(1, joint=Joint.IN_WINDOW, window=window)
    plan = replace(
        plan_of(coat),
        steps=(
            Step(kind=StepKind.SAND, piece="set", start=START - timedelta(hours=4),
                 end=START - timedelta(hours=3, minutes=40), person="ilka", coat="flood"),
        ),
        outcomes=(Outcome(order="o", due=START, leaves=START + timedelta(days=2)),),
        ready=(Readiness(piece="set", stage=Stage.HANDLE, likely=START,
                         safe=START + timedelta(days=1, seconds=1)),),
    )  # fmt: skip
    return DeskView(replace(bench(), orders=(ORDER,), plan=plan), NOW)


def days(view: DeskView, day: date = DAY) -> list[Day]:
    return [one for one in blocks(week_sheet(view, day)) if isinstance(one, Day)]


def test_a_week_has_seven_days_from_the_studios_own_first() -> None:
    view = planned_week()
    assert days(view)[0].weekday == "Monday"
    sunday = replace(view.studio, units=Units(week_starts=6))
    assert sunday.units.first_of_week(DAY) == date(2026, 2, 1)
    assert [one.date for one in days(DeskView(sunday, NOW))][:2] == ["1 Feb", "2 Feb"]
    assert len(days(view)) == 7
    assert week_sheet(view, DAY).paper is PaperSize.A4


@pytest.mark.parametrize(
    ("after", "said"),
    [
        (timedelta(hours=5), "closes 23:00"),
        (timedelta(hours=10), "closes Tue 04:00"),
        (timedelta(days=7), "closes Mon 9 Feb 18:00"),
    ],
)
def test_a_window_that_closes_on_another_day_names_it(after: timedelta, said: str) -> None:
    windows = [Window(opens=START, closes=START + one, trust=Trust.SAFE)
               for one in (after, timedelta(days=9))]  # fmt: skip
    view = seen(bench(), *(poured(number, window=one) for number, one in enumerate(windows, 1)))
    assert days(view)[0].lines[0].closes == said


def test_a_day_tells_pours_steps_and_pick_ups_in_order() -> None:
    monday, _, wednesday, *_ = days(planned_week())
    assert [(one.mark, one.clock, one.what) for one in monday.lines] == [
        (Mark.STEP, "14:00 to 14:20", "Wash and sand"),
        (Mark.POUR, "18:00 to 19:20", "Flood"),
    ]
    assert (monday.lines[1].whom, monday.lines[1].closes) == ("Set (Spot 1)", "closes 23:00")
    assert [(one.mark, one.whom) for one in wednesday.lines] == [
        (Mark.LEAVES, "Harbour office")
    ]


def test_what_has_left_is_not_picked_up_any_more() -> None:
    studio = planned_week().studio
    gone = shipped(studio, "o", START, START).make(studio)
    _, _, wednesday, *_ = days(DeskView(gone, NOW))
    assert not wednesday.lines


def test_a_gate_is_printed_on_the_safe_side_of_the_minute() -> None:
    (table,) = tables(week_sheet(planned_week(), DAY), "May be handled")
    assert table.rows[0].cells == ("Set", "Tue 3 Feb 18:01", "", "", "Harbour office")


def test_only_what_is_begun_and_not_long_cured_has_gates_on_the_week() -> None:
    view = planned_week()
    plan = view.plan
    assert plan is not None
    assert len(tables(week_sheet(view, DAY), "May be handled")) == 1
    before = replace(plan.ready[0], safe=START - timedelta(days=3))
    cured = DeskView(replace(view.studio, plan=replace(plan, ready=(before,))), NOW)
    assert not tables(week_sheet(cured, DAY), "May be handled")
    step = replace(plan.steps[0], start=START - timedelta(days=7),
                   end=START - timedelta(days=7) + timedelta(minutes=20))  # fmt: skip
    early = DeskView(replace(view.studio, plan=replace(plan, steps=(step,))), NOW)
    assert not tables(week_sheet(early, DAY - timedelta(days=7)), "May be handled")


def test_a_week_in_which_nothing_is_planned_says_so_and_what_the_plan_reaches() -> None:
    with pytest.raises(NothingForPaper, match="week from Mon 2 Mar 2026") as said:
        week_sheet(planned_week(), date(2026, 3, 3))
    assert "from Mon 2 Feb 2026 to Wed 4 Feb 2026" in str(said.value)
    with pytest.raises(NothingForPaper, match=r"2026\.$"):
        week_sheet(DeskView(replace(bench(), plan=plan_of()), NOW), DAY)


def test_a_week_without_a_plan_or_with_an_old_one_says_so() -> None:
    view = planned_week()
    old = DeskView(replace(view.studio, plan_outdated=True), NOW)
    assert any("plan again" in text for text in week_sheet(old, DAY).texts)
    none = DeskView(bench(), NOW)
    with pytest.raises(NothingForPaper, match="no plan yet"):
        week_sheet(none, DAY)
    assert not any("plan again" in text for text in week_sheet(view, DAY).texts)


def test_what_is_poured_is_told_as_poured() -> None:
    view = seen(bench(), poured(1, poured=True))
    assert days(view)[0].lines[0].what == "Poured: flood"


def test_a_slip_names_pieces_gate_and_promise() -> None:
    sheet = order_slip(planned_week(), "o")
    (table,) = tables(sheet, "Pieces")
    assert table.rows[0].cells == ("Set ×6", "", "not planned", "")  # noqa: RUF001
    assert "Ship by Fri 13 Feb 2026" in sheet.texts
    assert sheet.caution == DEFERRAL
    assert sheet.paper is PaperSize.A5
    with pytest.raises(KeyError):
        order_slip(planned_week(), "nobody")


def test_a_slip_of_what_will_be_late_says_so() -> None:
    view = planned_week()
    assert view.plan is not None
    assert not any("too late" in text for text in order_slip(view, "o").texts)
    due = ORDER.due(view.studio.time_zone)
    late = Outcome(order="o", due=due, leaves=due + timedelta(hours=1))
    studio = replace(view.studio, plan=replace(view.plan, outcomes=(late,)))
    texts = order_slip(DeskView(studio, NOW), "o").texts
    assert any(text.endswith("too late for the promise.") for text in texts)


def test_a_market_says_when_it_opens() -> None:
    view = planned_week()
    market = replace(ORDER, promise=Promise.MARKET)
    sheet = order_slip(DeskView(replace(view.studio, orders=(market,)), NOW), "o")
    assert "Market Fri 13 Feb 2026, opens 09:00" in sheet.texts


@pytest.mark.parametrize("contact", list(ContactClaim))
def test_a_care_card_says_one_of_three_things_of_food(contact: ContactClaim) -> None:
    view = planned_week()
    order = replace(ORDER, contact=contact)
    texts = order_slip(DeskView(replace(view.studio, orders=(order,)), NOW), "o").texts
    said = [one for one in ContactClaim if contact_words(one) in texts]
    assert said == [contact]
    assert ("declaration number" in texts) is (contact is ContactClaim.DECLARED)


@pytest.mark.parametrize("contact", list(ContactClaim))
def test_no_sheet_claims_what_nobody_can_promise(contact: ContactClaim) -> None:
    view = planned_week()
    order = replace(ORDER, contact=contact)
    view = DeskView(replace(view.studio, orders=(order,)), NOW)
    for kind in SheetKind:
        for choice in choices(view, kind):
            text = " ".join(sheet_of(view, kind, choice.key).texts).casefold()
            assert not CLAIM.search(text)


def test_a_care_card_knows_when_the_last_piece_is_cured() -> None:
    view = planned_week()
    plan = view.plan
    assert plan is not None
    cured = Readiness(piece="set", stage=Stage.FULL_CURE, likely=START,
                      safe=START + timedelta(days=9))  # fmt: skip
    known = replace(view.studio, plan=replace(plan, ready=(*plan.ready, cured)))
    assert any(
        "until Wed 11 Feb 2026" in text for text in order_slip(DeskView(known, NOW), "o").texts
    )
    assert any("for weeks" in text for text in order_slip(view, "o").texts)


def test_a_stock_list_adds_up() -> None:
    studio = stocked(lot("a", grams=900.0), lot("a2", grams=200.0), lot("b", LotPart.B, 400.0))
    view = DeskView(replace(studio, plan=plan_of(*nightly("one", "two"))), NOW)
    sheet = stock_list(view)
    (rows,) = tables(sheet, "What is left")
    for row in rows.rows:
        _, left, takes, after, *_ = row.cells
        assert grams(after) == pytest.approx(grams(left) - grams(takes), abs=0.051)
    (bottles,) = tables(sheet, "Bottles of Invented flood")
    there = [grams(row.cells[2]) for row in bottles.rows if row.cells[1] == "A"]
    assert sum(there) == pytest.approx(grams(rows.rows[0].cells[1]))
    free = sum(grams(row.cells[3]) for row in bottles.rows if row.cells[1] == "A")
    assert free == pytest.approx(grams(rows.rows[0].cells[3]), abs=0.11)


def test_a_stock_list_has_the_pigments_in_one_table_after_the_bottles() -> None:
    studio = planned_once()
    sheet = stock_list(DeskView(studio, morning(studio)))
    (pigments,) = tables(sheet, "Pigments")
    assert [row.cells[1] for row in pigments.rows] == [one.name for one in studio.pigments]


def test_an_empty_stock_says_so() -> None:
    assert any("nothing to list" in text for text in stock_list(DeskView(bench(), NOW)).texts)


def test_there_is_a_choice_of_days_weeks_and_orders() -> None:
    view = planned_week()
    day, mix = choices(view, SheetKind.POURS)
    assert day.words == "Mon 2 Feb: 1 mix"
    assert mix.words == "Mon 2 Feb 18:00: flood, Set"
    assert sheet_of(view, SheetKind.POURS, mix.key).file_name == "pour-2026-02-02-1"
    assert sheet_of(view, SheetKind.POURS, day.key).file_name == "pours-2026-02-02"
    assert [one.key for one in choices(view, SheetKind.WEEK)] == ["2026-02-02"]
    later = DeskView(view.studio, NOW + timedelta(days=7))
    assert [one.key for one in choices(later, SheetKind.WEEK)] == ["2026-02-09"]
    none = DeskView(bench(), NOW)
    assert [one.key for one in choices(none, SheetKind.WEEK)] == ["2026-02-02"]
    assert [one.key for one in choices(view, SheetKind.ORDER)] == ["o"]
    assert [one.words for one in choices(view, SheetKind.STOCK)] == ["everything"]
