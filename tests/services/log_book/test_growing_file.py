"""A logger's file is watched while it grows: nothing twice, nothing lost, half lines wait."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.places import PatternPoint, Place
from studio_planner.services.log_book.growing_file import WatchedFile, grown, taken_growth
from studio_planner.services.room_logs import LogAsked
from tests.services.log_book.logged_studio import studio

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.places import Reading
    from studio_planner.services.log_book.growing_file import Growth

BERLIN = ZoneInfo("Europe/Berlin")
START = datetime(2031, 1, 5, 6, tzinfo=UTC)
HEADING = "time,temperature_c,humidity_pct\n"


def at(minutes: int) -> datetime:
    return START + timedelta(minutes=minutes)


def rows(*minutes: int) -> str:
    return "".join(f"{at(m):%Y-%m-%dT%H:%M:00Z},{18 + m % 100 / 100:.2f},50\n" for m in minutes)


class Desk:
    """Whoever watches: it takes what came and keeps what is known."""

    def __init__(self, path: Path, asked: LogAsked | None = None) -> None:
        self.watched = WatchedFile(path=path, asked=asked or LogAsked())
        self.studio = studio(
            places=(Place(key="room", name="Room", pattern=(_WARM,)),), pieces=(), orders=()
        )

    @property
    def readings(self) -> tuple[Reading, ...]:
        return self.studio.places[0].readings

    def look(self) -> Growth:
        growth = grown(self.watched, BERLIN, self.readings)
        if growth.look is not None and growth.look.ready:
            change = taken_growth(self.studio.places[0], self.watched, growth)
            self.studio = change.make(self.studio)
        self.watched = growth.watched
        return growth

    @property
    def minutes(self) -> list[float]:
        return [(one.when - START) / timedelta(minutes=1) for one in self.readings]


_WARM = PatternPoint(at=START.time(), celsius=20)


def append(path: Path, text: str, encoding: str = "utf-8") -> None:
    with path.open("ab") as out:
        out.write(text.encode(encoding))


def test_only_what_was_appended_is_taken_and_a_half_line_waits(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(0, 10, 20))
    desk = Desk(path)
    assert desk.look().anew
    assert desk.minutes == [0, 10, 20]
    assert desk.look().look is None
    append(path, rows(30) + rows(40)[:12])
    growth = desk.look()
    assert (growth.anew, desk.minutes) == (False, [0, 10, 20, 30])
    append(path, rows(40)[12:])
    desk.look()
    assert desk.minutes == [0, 10, 20, 30, 40]
    assert desk.watched.lines == 6
    assert desk.watched.offset == path.stat().st_size


def test_a_long_file_is_not_read_again(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(*range(0, 60_000, 10)))
    desk = Desk(path)
    desk.look()
    assert len(desk.readings) == 6000
    append(path, rows(60_000))
    growth = desk.look()
    assert growth.look is not None
    # Heading, what is read again to understand the new line, and that line.
    assert len(growth.look.new) < 1500
    assert len(desk.readings) == 6001


@pytest.mark.parametrize("encoding", ["utf-16-le", "utf-16-be"])
@pytest.mark.parametrize("heading", [HEADING, ""])
def test_wide_characters_are_cut_at_their_lines(
    tmp_path: Path, encoding: str, heading: str
) -> None:
    path = tmp_path / "logger.csv"
    append(path, "\ufeff" + heading + rows(*range(0, 20_000, 10)), encoding)
    desk = Desk(path)
    desk.look()
    whole = rows(20_000).encode(encoding)
    with path.open("ab") as out:
        out.write(whole[:-1])
    assert desk.look().look is None
    with path.open("ab") as out:
        out.write(whole[-1:])
    assert not desk.look().anew
    assert desk.minutes[-1] == 20_000
    assert len(desk.readings) == 2001


def test_another_file_under_the_same_name_is_read_from_its_beginning(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(0, 10))
    desk = Desk(path)
    desk.look()
    path.write_text(HEADING + rows(100, 110), encoding="utf-8")
    assert desk.look().anew
    path.write_text(HEADING, encoding="utf-8")
    with pytest.raises(StudioFileError, match=r"logger\.csv"):
        desk.look()
    append(path, rows(200))
    assert desk.look().anew
    assert desk.minutes == [0, 10, 100, 110, 200]


def test_a_gap_stays_a_gap(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(0, 10, 20))
    desk = Desk(path)
    desk.look()
    append(path, rows(500, 510))
    growth = desk.look()
    assert growth.look is not None
    assert [(gap.start, gap.end) for gap in growth.look.found.gaps] == [(at(20), at(500))]
    assert desk.minutes == [0, 10, 20, 500, 510]


def test_nonsense_is_left_out_with_its_line_and_the_rest_is_taken(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(0, 10) + "2031-01-05T06:20:00Z,oops,50\n")
    desk = Desk(path)
    assert [row.line for row in desk.look().skipped] == [4]
    append(path, "2031-01-05T06:30:00Z,200,50\n")
    growth = desk.look()
    assert growth.look is None
    assert [(row.line, "200" in row.why) for row in growth.skipped] == [(5, True)]
    append(path, rows(40))
    assert desk.look().skipped == ()
    assert desk.minutes == [0, 10, 40]


def test_what_was_found_out_at_first_holds_for_what_comes(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    # Which comes first, day or month, can be told from the first rows, not from the last one.
    first = "".join(f"{day:02}.01.2031 12:00;68.0\n" for day in range(1, 32))
    append(path, "Zeit;Temperatur °F\n" + first)
    desk = Desk(path)
    growth = desk.look()
    assert growth.look is not None
    assert not growth.look.questions
    append(path, "01.02.2031 12:00;50.0\n")
    desk.look()
    last = desk.readings[-1]
    assert (last.when, round(last.celsius)) == (datetime(2031, 2, 1, 11, tzinfo=UTC), 10)


def test_a_file_with_questions_is_not_taken_until_they_are_answered(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, "time,value\n2031-01-05T06:00:00Z,68\n2031-01-05T06:10:00Z,69\n")
    desk = Desk(path)
    growth = desk.look()
    assert growth.look is not None
    assert growth.look.questions
    assert (desk.readings, desk.watched.offset) == ((), 0)


def test_a_thinned_log_stays_thinned_but_its_last_reading_is_always_there(
    tmp_path: Path,
) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(0, 4, 8, 12, 16))
    desk = Desk(path, LogAsked(thin=True))
    desk.look()
    assert desk.minutes == [0, 12, 16]
    for minute in (18, 22, 24):
        append(path, rows(minute))
        desk.look()
    assert desk.minutes == [0, 12, 22, 24]


def test_what_is_no_log_or_not_there_is_said_and_nothing_is_lost(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    desk = Desk(path)
    with pytest.raises(StudioFileError, match="cannot be read"):
        desk.look()
    path.write_bytes(b"%PDF-1.7\n")
    with pytest.raises(StudioFileError, match="PDF"):
        desk.look()
    path.write_bytes(b"")
    assert desk.look().look is None
    path.write_text(HEADING + rows(0), encoding="utf-8")
    desk.look()
    assert desk.minutes == [0]
    append(path, "no,row,of,this\n")
    assert desk.look().look is None
    append(path, rows(10))
    desk.look()
    assert desk.minutes == [0, 10]


def test_growing_is_one_change_with_the_file_in_its_words(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    append(path, HEADING + rows(0))
    desk = Desk(path)
    growth = grown(desk.watched, BERLIN, ())
    change = taken_growth(desk.studio.places[0], desk.watched, growth)
    assert change.words == "Room, readings of logger.csv"
    nothing = grown(growth.watched, BERLIN, ())
    same = taken_growth(desk.studio.places[0], growth.watched, nothing).make(desk.studio)
    assert same == desk.studio
