"""What touch tests in the log teach of a product, and how it is taken and left again.

The room stays at 20 °C, so that every share of a stage can be worked out by hand.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, Gone, GoneKind, LogEntry
from studio_planner.craft.mixes import MixedFor, WeighedMix
from studio_planner.craft.taught import TaughtStage
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.planning.checker import check_plan
from studio_planner.planning.checking.evidence import Clocks
from studio_planner.planning.quick import quick_plan
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.editing.changes import bears_on_plan
from studio_planner.services.teaching import lessons_of, use_sheet, use_tests
from studio_planner.services.teaching_films import MOST_TESTS, TouchedFilms, touched_films
from tests.services.log_book.logged_studio import NOW, ago
from tests.services.small_studios import morning, two_trays
from tests.services.touched_studio import (
    HANDLE,
    OPENS,
    PRINT_FREE,
    TACK_FREE,
    entry,
    logged,
    poured,
    taught_studio,
    touched,
)

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.services.teaching import StageLesson


def shares(one: Studio, stage: Stage = OPENS) -> list[tuple[float, bool]]:
    found = TouchedFilms(one).tests(one.products[0], stage)
    return [(round(test.share, 6), test.already) for test in found]


def test_a_touch_tells_how_far_the_sheet_thought_the_film_was() -> None:
    one = logged(poured(10), touched(7, Touch.STRING, Verdict.NOT_YET))
    assert shares(one) == [(0.75, False)]
    test = TouchedFilms(one).tests(one.products[0], OPENS)[0]
    assert test.celsius == pytest.approx(20.0)
    assert test.room_band == 0.0


def test_a_touch_may_tell_of_two_stages() -> None:
    one = logged(poured(40), touched(10, Touch.THUMBNAIL, Verdict.ALREADY))
    assert shares(one, PRINT_FREE) == [(0.75, True)]
    assert shares(one, HANDLE) == [(1.5, True)]
    assert shares(one, OPENS) == []


def test_a_film_in_the_warm_box_counts_faster_from_when_it_was_moved() -> None:
    moved = entry(EntryKind.MOVED, 8, spot="b1")
    one = logged(poured(10), moved, touched(7, Touch.TACK, Verdict.ALREADY))
    assert shares(one) == [(1.0, True)]


def test_a_spot_that_is_gone_is_taken_to_be_in_the_first_place() -> None:
    one = logged(poured(10, spot="old"), touched(7, Touch.TACK, Verdict.ALREADY))
    assert shares(one) == [(0.75, True)]


def test_what_was_corrected_does_not_count() -> None:
    wrong = touched(7, Touch.TACK, Verdict.ALREADY)
    right = touched(7, Touch.TACK, Verdict.NOT_YET, number=3, corrects=2)
    assert shares(logged(poured(10), wrong, right)) == [(0.75, False)]


@pytest.mark.parametrize("hours", [10.5, 9.99])
def test_a_touch_while_it_was_poured_says_nothing(hours: float) -> None:
    assert shares(logged(poured(10), touched(hours, Touch.STRING, Verdict.NOT_YET))) == []


def test_a_touch_of_what_nobody_wrote_down_as_poured_says_nothing() -> None:
    assert shares(logged(touched(7, Touch.TACK, Verdict.ALREADY))) == []


def test_a_piece_that_was_stripped_still_taught() -> None:
    one = logged(
        poured(30),
        touched(27, Touch.TACK, Verdict.ALREADY),
        entry(EntryKind.STRIPPED, 20),
        poured(10),
        touched(7, Touch.TACK, Verdict.NOT_YET),
    )
    assert shares(one) == [(0.75, True), (0.75, False)]
    assert len({film.pour for film in touched_films(one)}) == 2


def mixed(*names: str) -> tuple[LogEntry, WeighedMix]:
    weighed = entry(EntryKind.WEIGHED, 12, piece="", batch=7)
    coats = tuple(MixedFor(piece=name, coat="flood") for name in names)
    mix = WeighedMix(
        entry=1, batch=7, product="resin", at=ago(12), a_grams=100, b_grams=50, coats=coats
    )
    return weighed, mix


def test_pieces_of_one_mix_are_one_pour() -> None:
    weighed, mix = mixed("tray", "one")
    one = logged(
        weighed,
        poured(10, batch=7),
        poured(9.5, "one", batch=7),
        touched(7, Touch.TACK, Verdict.ALREADY),
        touched(7, Touch.TACK, Verdict.NOT_YET, "one"),
        mixes=(mix,),
    )
    assert {film.pour for film in touched_films(one)} == {"batch 7"}
    assert shares(one) == [(0.75, True), (0.625, False)]


def test_a_piece_that_is_gone_still_teaches_where_its_mix_is_known() -> None:
    weighed, mix = mixed("gone")
    told = touched(7, Touch.TACK, Verdict.ALREADY, "gone")
    gone = (Gone(kind=GoneKind.PIECE, key="gone", name="Gone tray"),)
    one = logged(weighed, poured(10, "gone", batch=7), told, mixes=(mix,), gone=gone)
    assert shares(one) == [(0.75, True)]
    assert shares(logged(poured(10, "gone"), told, gone=gone)) == []


def test_only_the_latest_tests_count() -> None:
    many = [touched(7 - n / 100, Touch.TACK, Verdict.ALREADY) for n in range(MOST_TESTS + 5)]
    found = shares(logged(poured(10), *many))
    assert len(found) == MOST_TESTS
    assert found[-1][0] == pytest.approx((3 + 0.64) / 4, abs=1e-3)


def lesson(one: Studio) -> StageLesson:
    (found,) = lessons_of(one, one.products[0], NOW)
    return found


def test_tests_teach_the_stage_that_they_are_about() -> None:
    found = lesson(taught_studio())
    assert (found.stage, found.used, found.holds) == (OPENS, None, False)
    assert found.sheet == pytest.approx((4 / 1.1, 4.0, 4 * 1.1))
    offered = found.shown
    assert (offered.tests, offered.pours, offered.at) == (10, 10, NOW)
    assert 4.1 < offered.likely_hours < 4.7
    assert offered.late_hours / offered.early_hours < 1.21


def test_where_nothing_was_touched_nothing_is_said() -> None:
    one = logged(poured(10))
    assert lessons_of(one, one.products[0], NOW) == ()


def used(one: Studio) -> Studio:
    offered = lesson(one).offered
    assert offered is not None
    return use_tests(one.products[0], offered).make(one)


def test_what_is_used_is_what_plans_and_their_checker_go_by() -> None:
    before = taught_studio()
    after = used(before)
    law = after.products[0].law(OPENS)
    assert law is not None
    assert law.hours(20.0) == pytest.approx(lesson(before).shown.likely_hours)
    checked = Clocks(after, NOW, NOW + timedelta(days=1)).law(after.products[0], OPENS)
    assert checked == law
    assert law.hours(20.0, Edge.LATE) == pytest.approx(lesson(before).shown.late_hours)
    assert bears_on_plan(before, after)


def test_what_is_used_is_not_offered_again() -> None:
    found = lesson(used(taught_studio()))
    assert found.offered is None
    assert found.holds
    assert found.shown is found.used


def test_newer_tests_are_offered_beside_what_is_used() -> None:
    one = used(taught_studio())
    number = len(one.log) + 1
    newer = (
        replace(poured(30, "tray"), number=number),
        replace(touched(25, Touch.TACK, Verdict.ALREADY), number=number + 1),
    )
    found = lesson(replace(one, log=(*one.log, *newer)))
    assert found.offered is not None
    assert found.offered.tests == 11
    assert found.shown is found.used


def test_going_back_to_the_sheet_leaves_the_tests_and_offers_them_again() -> None:
    before = taught_studio()
    back = use_sheet(before.products[0], OPENS).make(used(before))
    assert back == before
    assert lesson(back).offered is not None


def test_a_sheet_that_was_changed_since_is_gone_by_and_the_tests_are_read_anew() -> None:
    one = used(taught_studio())
    sheet = tuple(
        replace(point, from_hours=point.from_hours * 1.2) if point.stage is OPENS else point
        for point in one.products[0].sheet
    )
    changed = replace(one, products=(replace(one.products[0], sheet=sheet), one.products[1]))
    found = lesson(changed)
    assert not found.holds
    assert found.used is not None
    assert found.shown is found.offered
    assert found.sheet[1] == pytest.approx(4.8)
    law = changed.products[0].law(OPENS)
    assert law is not None
    assert law.hours(20.0) == pytest.approx(4.8)


def test_what_is_used_stays_where_the_tests_are_no_longer_there() -> None:
    one = replace(used(taught_studio()), log=())
    found = lesson(one)
    assert (found.offered, found.holds) == (None, True)


def test_stages_are_kept_in_the_order_of_the_sheet() -> None:
    one = used(taught_studio())
    taught = one.products[0].taught[0]
    free = replace(taught, stage=TACK_FREE)
    both = use_tests(one.products[0], free).make(one)
    again = use_tests(both.products[0], taught).make(both)
    assert [kept.stage for kept in again.products[0].taught] == [OPENS, TACK_FREE]


def test_each_change_says_what_it_is() -> None:
    one = taught_studio()
    offered = lesson(one).shown
    name = one.products[0].name
    assert use_tests(one.products[0], offered).words.startswith(name)
    assert use_sheet(one.products[0], OPENS).words.endswith("for recoat opens")


def slower(product: Product) -> Product:
    """The product as if touch tests had found that it opens later by a third."""
    law = product.sheet_law(OPENS)
    if law is None:
        return product
    said = law.hours(18.0)
    opens = TaughtStage(
        stage=OPENS,
        celsius=18.0,
        sheet_hours=said,
        early_hours=said * 1.25,
        likely_hours=said * 1.33,
        late_hours=said * 1.45,
        sheet_factor=1.1,
        band_left=0.9,
        tests=9,
        pours=5,
        at=NOW,
    )
    return replace(product, taught=(opens,))


def test_a_plan_by_the_sheet_breaks_the_window_that_tests_taught_and_a_new_one_does_not() -> (
    None
):
    by_sheet = two_trays()
    taught = replace(by_sheet, products=tuple(map(slower, by_sheet.products)))
    now = morning(taught)
    assert check_plan(taught, quick_plan(taught, now)).clean
    broken = check_plan(taught, quick_plan(by_sheet, now)).broken
    assert any("open" in str(finding) for finding in broken)
