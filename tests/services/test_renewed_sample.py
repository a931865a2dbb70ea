"""A sample that was made long ago: renewed where nobody has touched it, and left otherwise."""

from __future__ import annotations

import os
from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.services.sample import FILE_NAME, sample_file
from studio_planner.services.studio_files import create, read_studio
from studio_planner.storage.studio_file import open_studio
from tests.services.small_studios import DAY, kept, morning, planned_once, put_plan

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from studio_planner.craft.studio import Studio


@pytest.fixture
def made(tmp_path: Path) -> Path:
    """The folder of a maker who has opened the sample on its day."""
    create(tmp_path / FILE_NAME, planned_once())
    _written_on(tmp_path, morning(planned_once()))
    return tmp_path


def _written_on(folder: Path, when: datetime) -> None:
    os.utime(folder / FILE_NAME, (when.timestamp(), when.timestamp()))


def _later(days: int) -> datetime:
    return morning(planned_once()) + timedelta(days=days, hours=2)


def test_an_untouched_sample_whose_plan_has_gone_by_is_made_anew_for_today(made: Path) -> None:
    now = _later(60)
    found = read_studio(sample_file(made, now))
    today = now.astimezone(found.time_zone).date()
    assert kept(found).start.astimezone(found.time_zone).date() == today
    assert max(coat.end for coat in kept(found).coats) > now
    # And again, another two months later: a renewed sample is as untouched as a new one.
    again = now + timedelta(days=60)
    _written_on(made, now)
    assert kept(read_studio(sample_file(made, again))).start > now


@pytest.mark.parametrize("days", [0, 3, 8])
def test_a_sample_whose_plan_goes_on_is_left_as_it_is(made: Path, days: int) -> None:
    before = (made / FILE_NAME).read_bytes()
    sample_file(made, _later(days))
    assert (made / FILE_NAME).read_bytes() == before


def _rename(studio: Studio) -> Studio:
    return replace(studio, name="Our own workshop")


def _promise_later(studio: Studio) -> Studio:
    first = studio.orders[0]
    moved = replace(first, promised=first.promised + timedelta(days=1))
    return replace(studio, orders=(moved, *studio.orders[1:]))


def _plan_by_noon(studio: Studio) -> Studio:
    plan = kept(studio)
    return replace(studio, plan=replace(plan, made=plan.made + timedelta(hours=5)))


def _forget_the_plan(studio: Studio) -> Studio:
    return replace(studio, plan=None)


@pytest.mark.parametrize("change", [_rename, _promise_later, _plan_by_noon, _forget_the_plan])
def test_a_sample_that_the_maker_has_changed_is_never_made_anew(
    made: Path, change: Callable[[Studio], Studio]
) -> None:
    path = made / FILE_NAME
    with open_studio(path) as file:
        changed = change(file.read())
        file.write(changed)
    _written_on(made, morning(changed))
    assert read_studio(sample_file(made, _later(60))) == changed


def test_a_sample_that_the_maker_planned_again_is_theirs(made: Path) -> None:
    studio = planned_once()
    theirs = replace(kept(studio), made=_later(1), start=_later(1))
    put_plan(made / FILE_NAME, theirs)
    _written_on(made, morning(studio))
    assert kept(read_studio(sample_file(made, _later(60)))) == theirs


def test_a_file_that_is_no_studio_is_left_untouched(tmp_path: Path) -> None:
    path = tmp_path / FILE_NAME
    path.write_bytes(b"a shopping list")
    _written_on(tmp_path, datetime.combine(DAY, datetime.min.time()))
    assert sample_file(tmp_path, _later(60)) == path
    assert path.read_bytes() == b"a shopping list"
