"""The log and tracing, as a maker types them."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.services.log_book.pours import with_pour
from studio_planner.services.studio_files import create, read_studio
from tests.services.questions.steady import steady_studio

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal

TIDE, COAT = "tide-tray", "flood"


def words(text: str) -> str:
    return " ".join(text.split())


def listed(terminal: Terminal, path: Path) -> list[dict[str, Any]]:
    entries: list[dict[str, Any]] = terminal("log", path, "--json").json["entries"]
    return entries


@pytest.fixture
def next_pour(sample: Path) -> tuple[str, str, str]:
    """Number, piece and coat of the next coat of the sample's plan whose below is poured."""
    studio = read_studio(sample)
    assert studio.plan is not None
    for coat in studio.plan.coats:
        stack = studio.piece(coat.piece).stack
        if not coat.poured and len(studio.pours_of(coat.piece)) == stack.index(
            studio.piece(coat.piece).coat(coat.coat)
        ):
            return str(coat.number), coat.piece, coat.coat
    raise AssertionError


def test_an_empty_log_says_how_to_write_in_it(terminal: Terminal, unplanned: Path) -> None:
    studio = read_studio(unplanned)
    unplanned.unlink()
    create(unplanned, replace(studio, log=(), poured=()))
    assert "Nothing is written down yet." in terminal("log", unplanned).out
    assert listed(terminal, unplanned) == []


def test_a_whole_mix_of_the_plan_is_poured_by_one_number(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    number, piece, coat = next_pour
    answer = terminal("log", sample, "poured", number)
    assert answer.code == 0
    assert "Written down as entry" in answer.out
    assert "plan FILE --keep plans again" in words(answer.out)
    studio = read_studio(sample)
    pour = studio.pours_of(piece)[-1]
    assert pour.coat == coat
    assert pour.end == terminal.now


def test_what_is_carried_into_the_warm_box_says_how_its_window_moves(
    terminal: Terminal, tmp_path: Path
) -> None:
    studio = steady_studio()
    assert studio.plan is not None
    seal = next(c for c in studio.plan.coats if (c.piece, c.coat) == ("h1", "seal"))
    path = tmp_path / "steady.studio"
    create(path, with_pour(studio, (seal,), seal.start, seal.end))
    terminal.now = seal.end + timedelta(hours=1)
    answer = terminal("log", path, "moved", "h1", "W1")
    assert answer.code == 0
    assert "The window of Harbour board 1, flood moved. It opens" in words(answer.out)
    assert "The window of" not in terminal("log", path, "moved", "h2", "W1").out


def test_a_pour_a_touch_test_and_a_correction_are_listed_as_they_stand(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    _, piece, coat = next_pour
    name = read_studio(sample).piece(piece).name
    assert terminal("log", sample, "poured", name, coat, "--at", "2026-02-02T05:00").code == 0
    assert terminal("log", sample, "touched", piece, coat, "tack", "not-yet").code == 0
    number = next(e["number"] for e in listed(terminal, sample) if e["coat"] == coat)
    done = terminal(
        "log", sample, "correct", str(number), "--at", "2026-02-02T05:10", "--words", "late"
    )
    assert done.code == 0
    entries = [e for e in listed(terminal, sample) if e["coat"] == coat]
    assert [(e["kind"], e["stands"], e["corrects"]) for e in entries] == [
        ("poured", False, None), ("touched", True, None), ("poured", True, number),
    ]  # fmt: skip
    assert set(entries[0]) == {
        "number", "kind", "at", "end", "written", "piece", "coat", "order", "spot", "joint",
        "batch", "touch", "verdict", "words", "corrects", "about", "says", "stands",
    }  # fmt: skip
    table = words(terminal("log", sample).out)
    assert f"corrects {number}" in table
    assert f"see {entries[2]['number']}" in table
    assert "1 earlier entries" not in table
    few = terminal("log", sample, "--last", "1").out
    assert "earlier entries are not shown" in few


def test_what_is_weighed_is_traced_both_ways(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    _, piece, coat = next_pour
    studio = read_studio(sample)
    product = studio.product(studio.piece(piece).coat(coat).product)
    grams = ("100", "50") if product.ratio is not None else ("100",)
    weighed = terminal(
        "log", sample, "weighed", product.key, *grams, "--for", f"{piece}/{coat}",
        "--lot-a", "L 7", "--at", "2026-02-02T04:55", "--json",
    ).json  # fmt: skip
    batch = weighed["entries"][0]["batch"]
    assert batch == max(mix.batch for mix in studio.mixes) + 1
    terminal("log", sample, "poured", piece, coat, "--at", "2026-02-02T05:00")
    text = terminal("trace", sample, piece).out
    assert f"Mix {batch}, Mon 2 Feb 04:55: 100 g A" in text
    assert "A of lot L 7" in text
    found = terminal("trace", sample, "l 7", "--json").json
    assert [(one["piece"], one["coat"]) for one in found["coats"]] == [(piece, coat)]
    assert found["mixes"][0]["lot_a"] == "L 7"
    assert terminal("trace", sample, str(batch), "--json").json == found
    assert "same mix" in terminal("trace", sample, f"#{batch}").out
    assert terminal("trace", sample, f"mix {batch}", "--json").json == found
    pours = terminal("trace", sample, piece, "--json").json["pieces"][0]["pours"]
    assert [one["batch"] for one in pours[-1]["mixes"]] == [batch]


def test_what_can_hardly_be_right_is_written_down_and_said(
    terminal: Terminal, unplanned: Path
) -> None:
    studio = read_studio(unplanned)
    product = next(one for one in studio.products if one.ratio is not None)
    told = ("log", unplanned, "weighed", product.key, "80", "2")
    answer = terminal(*told)
    assert answer.code == 0
    assert "Written down as entry" in answer.out
    assert f"% too little B for {product.name}" in words(answer.out)
    found = terminal(*told, "--json").json
    assert len(found["entries"]) == 1
    assert "too little B" in found["doubts"][0]


def test_an_order_is_traced_to_all_its_pieces(terminal: Terminal, sample: Path) -> None:
    order = read_studio(sample).orders[0]
    found = terminal("trace", sample, order.name, "--json").json["pieces"]
    assert [one["piece"] for one in found] == list(order.pieces)
    assert terminal("trace", sample, order.key).code == 0


def test_steps_are_written_down_by_their_words(terminal: Terminal, sample: Path) -> None:
    studio = read_studio(sample)
    poured = studio.poured[0]
    spot = studio.spots[0].key
    for told in (
        ("taped", poured.piece, poured.coat),
        ("turned", poured.piece),
        ("sanded", poured.piece, studio.piece(poured.piece).stack[-1].key),
        ("moved", poured.piece, spot),
        ("spoiled", poured.piece, "--words", "fish eyes"),
        ("stripped", poured.piece),
        ("shipped", studio.orders[0].key),
    ):
        assert terminal("log", sample, *told).err == ""
    kinds = [e["kind"] for e in listed(terminal, sample)]
    assert {"tape pulled", "turned over", "washed and sanded", "moved", "spoiled"} <= set(kinds)
    assert "shipped" in kinds
    assert read_studio(sample).pours_of(poured.piece) == ()


def test_a_withdrawn_entry_is_kept_and_marked(terminal: Terminal, sample: Path) -> None:
    piece = read_studio(sample).pieces[0].key
    told = terminal("log", sample, "turned", piece, "--json").json["entries"]
    number = told[-1]["number"]
    assert terminal("log", sample, "withdraw", str(number)).code == 0
    assert [e["stands"] for e in listed(terminal, sample)][-2:] == [False, False]
    assert f"see {number + 1}" in terminal("log", sample).out


@pytest.mark.parametrize(
    ("told", "sentence"),
    [
        (("danced", "x"), "nothing that can be written down"),
        (("poured",), "write the number of a coat in the plan, or PIECE COAT"),
        (("poured", "998"), "is not in the kept plan"),
        (("poured", "nobody", "flood"), "There is no piece called 'nobody'"),
        (("poured", TIDE, "moon"), "There is no coat of Tide tray called 'moon'"),
        (("poured", TIDE, COAT, "--at", "2036-01-01T10:00"), "it lies ahead"),
        (("poured", TIDE, COAT, "--batch", "9"), "no mix 9 was weighed"),
        (("touched", TIDE, COAT, "nose"), "'nose' is not a touch test"),
        (("touched", TIDE, COAT, "tack", "perhaps"), "'perhaps' is not an answer"),
        (("taped", TIDE), "write PIECE COAT"),
        (("moved", TIDE, "moon"), "There is no spot called 'moon'"),
        (("shipped", "nobody"), "There is no order called 'nobody'"),
        (("weighed", "nothing", "1"), "There is no product called 'nothing'"),
        (("withdraw", "99"), "no entry 99"),
        (("correct", "99"), "ENTRY 99 is not in the log"),
        (("correct", "x"), "not a whole number"),
    ],
)
def test_what_cannot_be_written_down_is_told_in_a_sentence(
    terminal: Terminal, sample: Path, told: tuple[str, ...], sentence: str
) -> None:
    before = read_studio(sample)
    answer = terminal("log", sample, *told)
    assert answer.code == 2
    assert sentence in answer.one_sentence
    assert read_studio(sample) == before


def test_a_weighing_needs_coats_that_are_named_whole_and_is_not_corrected(
    terminal: Terminal, sample: Path
) -> None:
    studio = read_studio(sample)
    product = studio.product(studio.piece(TIDE).coat(COAT).product).key
    bad = terminal("log", sample, "weighed", product, "1", "1", "--for", TIDE)
    assert "write it as PIECE/COAT" in bad.one_sentence
    assert terminal("log", sample, "weighed", product, "100", "50").code == 0
    assert "written down anew" in terminal("log", sample, "correct", "1").one_sentence


def test_a_name_that_leads_nowhere_is_told(terminal: Terminal, sample: Path) -> None:
    assert "is no piece, order" in terminal("trace", sample, "nobody").one_sentence
    assert "is no piece, order" in terminal("trace", sample, "77").one_sentence


def test_a_piece_of_which_nothing_was_poured_says_so(terminal: Terminal, sample: Path) -> None:
    studio = read_studio(sample)
    piece = next(one for one in studio.pieces if not studio.pours_of(one.key))
    assert "Nothing of it was poured." in terminal("trace", sample, piece.key).out
