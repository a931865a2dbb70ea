"""Sheets for paper on the command line: which one, where to, and what can go wrong."""

from __future__ import annotations

import errno
import os
from pathlib import Path
from typing import TYPE_CHECKING

import pypdfium2
import pytest

from studio_planner.craft.errors import StudioError
from studio_planner.services.studio_files import read_studio
from tests.architecture.checkout import run
from tests.services.small_studios import DAY, kept

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.services.paper.pages import Sheet
    from tests.terminal.conftest import Terminal


def texts(path: Path) -> list[str]:
    return path.read_text(encoding="utf-8").splitlines()


def test_a_day_a_mix_a_week_an_order_and_the_stock_are_drawn(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    coat = next(one for one in kept(read_studio(sample)).coats if not one.poured)
    for number, (words, title) in enumerate(
        (
            (("--day", DAY.isoformat()), "Pour sheet, Mon 2 Feb 2026"),
            (("--mix", str(coat.number)), "Pour sheet, Mon 2 Feb 2026"),
            (("--day", "today"), "Pour sheet, Mon 2 Feb 2026"),
            (("--day", "Tomorrow"), "Pour sheet, Tue 3 Feb 2026"),
            (("--week", "2026-02-05"), "Week from Mon 2 Feb 2026"),
            (("--order", "Quay winter market"), "Order Quay winter market"),
            (("--stock",), "Stock, Mon 2 Feb 2026"),
        )
    ):
        target = tmp_path / f"{number}.pdf"
        answer = terminal("sheet", sample, target, *words)
        assert (answer.code, answer.err) == (0, "")
        assert f"{title}, A" in answer.out.replace("\n", " ")
        assert title in texts(target)
        assert texts(target)[0] == terminal.now.isoformat()
    assert sorted(path.name for path in tmp_path.iterdir()) == [
        *(f"{number}.pdf" for number in range(7)),
        "sample.studio",
    ]


def test_a_sheet_is_in_the_language_that_is_asked_for(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    assert (
        terminal("sheet", sample, tmp_path / "a.pdf", "--stock", "--language", "de").code == 0
    )
    assert "Bestand, Mo 2. Feb 2026" in texts(tmp_path / "a.pdf")
    assert terminal("sheet", sample, tmp_path / "b.pdf", "--stock").code == 0
    assert "Stock, Mon 2 Feb 2026" in texts(tmp_path / "b.pdf")
    answer = terminal("sheet", sample, tmp_path / "c.pdf", "--stock", "--language", "xx")
    assert answer.code == 2
    assert "--language xx is not known" in answer.one_sentence


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--order", "nobody"), "There is no order called “nobody”"),
        (("--day", "2026-03-03"), "Nothing is to be poured on Tue 3 Mar"),
        (("--day", "soon"), "--day “soon” is not a date"),
        (("--week", "2026-06-03"), "Nothing is planned in the week from Mon 1 Jun 2026"),
        (("--week", "2026-02-30"), "--week “2026-02-30” is not a date"),
        (("--mix", "none"), "--mix “none” is not a whole number"),
        (
            ("--mix", "999999"),
            "There is no coat 999999 in the kept plan that is still to be poured",
        ),
        ((), "--day --mix --week --order --stock is required"),
        (("--stock", "--week", "2026-02-02"), "not allowed with argument"),
    ],
)
def test_what_cannot_be_drawn_is_told_in_a_sentence_and_nothing_is_there(
    terminal: Terminal, sample: Path, tmp_path: Path, words: tuple[str, ...], said: str
) -> None:
    answer = terminal("sheet", sample, tmp_path / "a.pdf", *words)
    assert answer.code == 2
    assert said in answer.one_sentence
    assert [path.name for path in tmp_path.iterdir()] == ["sample.studio"]


def test_a_studio_without_a_plan_has_no_day_but_an_order(
    terminal: Terminal, unplanned: Path, tmp_path: Path
) -> None:
    for words in (("--day", DAY.isoformat()), ("--week", DAY.isoformat()), ("--mix", "1")):
        answer = terminal("sheet", unplanned, tmp_path / "a.pdf", *words)
        assert answer.code == 1
        assert "keeps no plan yet" in answer.out.replace("\n", " ")
    assert terminal("sheet", unplanned, tmp_path / "a.pdf", "--order", "market").code == 0


def test_a_file_that_is_there_is_replaced_only_when_told_so(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    target = tmp_path / "a.pdf"
    target.write_text("mine")
    answer = terminal("sheet", sample, target, "--stock")
    assert answer.code == 2
    assert "is there already" in answer.one_sentence
    assert "--overwrite" in answer.one_sentence
    assert target.read_text() == "mine"
    assert terminal("sheet", sample, target, "--stock", "--overwrite").code == 0
    assert "Stock, Mon 2 Feb 2026" in texts(target)


def test_a_folder_that_is_none_or_gone_is_told(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    gone = terminal("sheet", sample, tmp_path / "gone" / "a.pdf", "--stock")
    assert gone.code == 2
    assert "there is no folder" in gone.one_sentence
    for words in ((), ("--overwrite",)):
        answer = terminal("sheet", sample, tmp_path, "--stock", *words)
        assert answer.code == 2
        assert "is a folder; give the name of a file" in answer.one_sentence


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes in folders")
def test_what_is_no_plain_file_is_never_put_out_of_its_place(
    terminal: Terminal, sample: Path, tmp_path: Path
) -> None:
    os.mkfifo(tmp_path / "pipe")
    answer = terminal("sheet", sample, tmp_path / "pipe", "--stock", "--overwrite")
    assert answer.code == 2
    assert "is no plain file" in answer.one_sentence
    assert (tmp_path / "pipe").is_fifo()


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EACCES])
def test_a_disk_that_takes_no_more_leaves_what_was_there(
    terminal: Terminal,
    sample: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    number: int,
) -> None:
    target = tmp_path / "a.pdf"
    target.write_text("mine")
    write = Path.write_bytes

    def half(path: Path, data: bytes) -> int:
        write(path, data[: len(data) // 2])
        raise OSError(number, os.strerror(number), str(path))

    monkeypatch.setattr(Path, "write_bytes", half)
    answer = terminal("sheet", sample, target, "--stock", "--overwrite")
    assert answer.code == 2
    assert "cannot be written" in answer.one_sentence
    assert target.read_text() == "mine"
    assert sorted(path.name for path in tmp_path.iterdir()) == ["a.pdf", "sample.studio"]


def test_a_sheet_that_cannot_be_drawn_leaves_nothing(
    terminal: Terminal, sample: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(_sheet: Sheet, _made: datetime) -> bytes:
        raise StudioError("No font was found to write with.")

    monkeypatch.setattr(terminal, "draw", broken)
    answer = terminal("sheet", sample, tmp_path / "a.pdf", "--stock")
    assert answer.code == 2
    assert answer.one_sentence == "No font was found to write with."
    assert [path.name for path in tmp_path.iterdir()] == ["sample.studio"]


@pytest.mark.journey
def test_the_real_program_draws_a_pdf_without_a_screen(
    sample: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    target = tmp_path / "pours.pdf"
    words = (
        "-m",
        "studio_planner",
        "sheet",
        str(sample),
        str(target),
        "--day",
        DAY.isoformat(),
    )
    code, said = run(*words)
    assert (code, " ".join(said.split())) == (0, f"{target}: Pour sheet, Mon 2 Feb 2026, A5.")
    pages = pypdfium2.PdfDocument(target.read_bytes())
    assert "A meets B" in pages[0].get_textpage().get_text_range()
