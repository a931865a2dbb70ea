"""Times inside pasted lines: fractions, what is none, and ranges that can be read two ways."""

from __future__ import annotations

import pytest

from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.figures import read_figures
from tests.services.data_sheets.read_rows import figures


@pytest.mark.parametrize(
    "line",
    [
        "Recoat time 4-24 h",
        "Recoat 4-24 h",
        "Recoatable 4 h - 24 h",
        "Überarbeitbar 4-24 h",
        "Überarbeitung: 4 h bis 24 h",
        "Stage\t20 °C\nRecoat\t4-24 h",
    ],
)
def test_a_range_beside_recoat_alone_is_asked_about(line: str) -> None:
    sheet = read_figures(line, 20)
    assert not sheet.points
    (left,) = sheet.unread
    assert "it can be read two ways; write “Recoat window 4-24 h” if" in left.reason
    assert "or “Recoat after 4-24 h” if" in left.reason


@pytest.mark.parametrize(
    ("phrases", "found"),
    [
        (
            ("Recoat window", "Überarbeitungsfenster"),
            [
                (Stage.RECOAT_OPENS, 20, 4, None, None),
                (Stage.RECOAT_CLOSES, 20, 24, None, None),
            ],
        ),
        (("Recoat after", "Überarbeitbar ab"), [(Stage.RECOAT_OPENS, 20, 4, 24, None)]),
    ],
)
def test_what_is_to_be_written_instead_is_read_as_it_is_meant(
    phrases: tuple[str, ...], found: list[tuple[object, ...]]
) -> None:
    for phrase in phrases:
        assert figures(f"{phrase} 4-24 h at 20 °C") == found


def test_a_range_is_when_it_opens_where_another_line_closes_the_window_later() -> None:
    assert figures("Recoat time 4-6 h\nMaximum recoat 24 h", 20) == [
        (Stage.RECOAT_OPENS, 20, 4, 6, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
    ]
    sheet = read_figures("Recoat time 4-24 h\nMaximum recoat 24 h", 20)
    assert [point.stage for point in sheet.points] == [Stage.RECOAT_CLOSES]
    assert "two ways" in sheet.unread[0].reason


@pytest.mark.parametrize(
    ("line", "start", "end"),
    [
        ("Recoat: 3 1/2 h at 20 °C", 3.5, None),
        ("Recoat 1 1/2 h at 20 °C", 1.5, None),
        ("Recoat 4 1/2 hours at 20 °C", 4.5, None),
        ("Recoat 4½ hours at 20 °C", 4.5, None),
        ("Recoat 1/2 h at 20 °C", 0.5, None),
        ("Recoat ½ h at 20 °C", 0.5, None),
        ("Recoat 1:30 h at 20 °C", 1.5, None),
        ("Recoat 1h30min at 20 °C", 1.5, None),
        ("Recoat 1 day 12 h at 20 °C", 36, None),
        ("Recoat at 20 °C/4 h", 4, None),
    ],
)
def test_a_time_in_a_line_is_read_from_its_first_figure(
    line: str, start: float, end: float | None
) -> None:
    assert figures(line) == [(Stage.RECOAT_OPENS, 20, start, end, None)]


@pytest.mark.parametrize("line", ["Recoat window: 3 1/2 h to 24 h", "Recoat 3½ h/1 day"])
def test_a_window_that_opens_in_halves_of_an_hour_is_read(line: str) -> None:
    assert figures(line, 20) == [
        (Stage.RECOAT_OPENS, 20, 3.5, None, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
    ]


@pytest.mark.parametrize(
    "time",
    [
        "4/24 h",
        "3 1/3 h",
        "3⅓ h",
        "3⁄2 h",  # noqa: RUF001 - a fraction slash
        "1.2.3 h",
        "3  1/2 h",
        "3  ½ h",
        "20:90 h",
    ],
)
def test_no_time_is_read_from_the_middle_of_what_is_not_understood(time: str) -> None:
    sheet = read_figures(f"Recoat {time} to 30 h at 20 °C")
    assert not sheet.points
    assert "is not a time" in sheet.unread[0].reason


@pytest.mark.parametrize("time", ["4h30", "24h7d"])
def test_a_time_that_goes_on_without_a_known_unit_is_none(time: str) -> None:
    sheet = read_figures(f"Tack free {time} at 20 °C")
    assert not sheet.points
    assert "no time with a unit" in sheet.unread[0].reason


@pytest.mark.parametrize("time", ["1 h 30", "4 h 20."])
def test_a_time_is_not_read_without_the_number_that_may_belong_to_it(time: str) -> None:
    sheet = read_figures(f"Tack free at 20 °C: {time}")
    assert not sheet.points
    assert "no time with a unit" in sheet.unread[0].reason


def test_halves_are_read_in_a_table_too() -> None:
    text = "Stage\t20 °C\nTack free (h)\t3 1/2\nRecoat window\t4 1/2 h / 24 h\nSandable\t½ d"
    assert figures(text) == [
        (Stage.TACK_FREE, 20, 3.5, None, None),
        (Stage.RECOAT_OPENS, 20, 4.5, None, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
        (Stage.SANDABLE, 20, 12, None, None),
    ]
