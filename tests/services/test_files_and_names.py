from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import InvalidEntry, NoPlanPossible, StudioFileError
from studio_planner.services import plan_again as module
from studio_planner.services import studio_files
from studio_planner.services.checking import CheckReport, Finding
from studio_planner.services.keeping import FileToPlan
from studio_planner.services.naming import UnknownName, find_named
from studio_planner.services.plan_again import plan_again
from studio_planner.services.promises import promises_of
from studio_planner.services.studio_files import (
    NoKeptPlan,
    create,
    export_studio,
    import_studio,
    read_planned,
    read_studio,
)
from tests.services.small_studios import cut_down, morning, two_trays

if TYPE_CHECKING:
    from pathlib import Path


def test_a_thing_is_found_by_key_or_name_in_any_case() -> None:
    products = two_trays().products
    assert find_named(products, " TARN ", "product").key == "tarn"
    assert find_named(products, "beck quick MIX", "product").key == "beck"


def test_a_name_that_is_not_there_is_answered_with_those_that_are() -> None:
    with pytest.raises(UnknownName, match=r"no product called “x”.*Tarn slow mix \(tarn\)"):
        find_named(two_trays().products, "x", "product")
    with pytest.raises(UnknownName, match="called “x”; the studio has no orders"):
        find_named((), "x", "order")


def test_a_name_that_two_things_share_asks_for_the_key() -> None:
    twice = two_trays().products[:1] * 2
    with pytest.raises(UnknownName, match="There are 2 products called"):
        find_named(twice, "tarn slow mix", "product")


def test_planning_again_changes_no_file_until_the_plan_is_kept(tmp_path: Path) -> None:
    path = tmp_path / "two.studio"
    create(path, two_trays())
    with pytest.raises(NoKeptPlan, match="keeps no plan yet"):
        read_planned(path)
    studio = read_studio(path)
    made = plan_again(studio, morning(studio))
    assert read_studio(path).plan is None
    assert FileToPlan(path).keep(made) == made
    assert read_planned(path)[1] == made.plan


def test_nothing_starts_after_the_days_that_were_asked_for() -> None:
    studio = two_trays()
    start = morning(studio)
    made = plan_again(studio, start, start + timedelta(days=1))
    assert all(coat.start < start + timedelta(days=1) for coat in made.plan.coats)


def test_a_plan_that_the_checker_refuses_is_never_used(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    wrong = Finding.__new__(Finding)
    object.__setattr__(wrong, "words", "Two coats lie on one spot.")
    report = CheckReport(broken=(wrong,), warnings=())
    monkeypatch.setattr(module, "checked", lambda *_: report)
    with pytest.raises(NoPlanPossible, match="Two coats lie on one spot"):
        plan_again(two_trays(), morning(two_trays()))


def test_promises_come_in_the_order_of_their_dates_and_say_how_they_stand() -> None:
    studio = two_trays()
    plan = plan_again(studio, morning(studio)).plan
    (one,) = promises_of(studio, plan)
    assert one.word == "in time"
    assert promises_of(studio, plan, "quay winter market") == (one,)
    empty = cut_down(studio)
    assert promises_of(empty, plan) == ()


def test_what_is_exported_comes_back_the_same(tmp_path: Path) -> None:
    path, target, again = (tmp_path / name for name in ("a.studio", "a.json", "b.studio"))
    create(path, two_trays())
    export_studio(path, target)
    import_studio(target, again)
    assert read_studio(again) == two_trays()


def test_an_export_never_writes_over_a_file(tmp_path: Path) -> None:
    path, target = tmp_path / "a.studio", tmp_path / "a.json"
    create(path, two_trays())
    target.write_text("mine")
    with pytest.raises(StudioFileError, match="is there already"):
        export_studio(path, target)
    assert target.read_text() == "mine"


@pytest.mark.parametrize(
    ("data", "kind", "words"),
    [
        (b"\xff\xfe\x00", StudioFileError, "not UTF-8"),
        (b"{", StudioFileError, r"in\.json"),
        (b'{"format": "x"}', StudioFileError, r"in\.json"),
    ],
)
def test_an_import_that_is_refused_makes_no_file(
    tmp_path: Path, data: bytes, kind: type[Exception], words: str
) -> None:
    source, path = tmp_path / "in.json", tmp_path / "a.studio"
    source.write_bytes(data)
    with pytest.raises(kind, match=words):
        import_studio(source, path)
    assert not path.exists()


def test_an_import_names_the_place_of_what_is_wrong(tmp_path: Path) -> None:
    path, target = tmp_path / "a.studio", tmp_path / "a.json"
    create(path, two_trays())
    export_studio(path, target)
    broken = target.read_text(encoding="utf-8").replace('"film_mm": 1.8', '"film_mm": -1', 1)
    target.write_text(broken, encoding="utf-8")
    with pytest.raises(InvalidEntry, match=r"a\.json.*film_mm"):
        import_studio(target, tmp_path / "b.studio")


def test_a_file_that_is_missing_or_too_large_is_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with pytest.raises(StudioFileError, match="cannot be read"):
        import_studio(tmp_path / "none.json", tmp_path / "a.studio")
    large = tmp_path / "large.json"
    large.write_text("0123456789")
    monkeypatch.setattr(studio_files, "LARGEST_EXCHANGE_BYTES", 4)
    with pytest.raises(StudioFileError, match="too large"):
        import_studio(large, tmp_path / "a.studio")
