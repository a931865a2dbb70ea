"""The list of texts: it holds every text of the source, each translated, with its places."""

from __future__ import annotations

import ast
import re
import shutil
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
import translations

LISTS = sorted(translations.TEXTS.glob("*.ts"))
PLACE = re.compile(r"\{[^{}]*\}")

needs_tools = pytest.mark.skipif(
    not (Path(translations.tool("lupdate")).exists()),
    reason="Qt's own lupdate and lrelease are not in this installation of PySide6.",
)


def texts_of(path: Path) -> dict[tuple[str, str], ET.Element]:
    """Every message of a list, by its context and its English text."""
    found = {}
    for context in ET.parse(path).getroot().iter("context"):  # noqa: S314 - our own file
        name = context.findtext("name") or ""
        for message in context.iter("message"):
            found[name, message.findtext("source") or ""] = message
    return found


def translated(message: ET.Element) -> str:
    return message.findtext("translation") or ""


@needs_tools
@pytest.mark.parametrize("texts", LISTS, ids=lambda path: path.stem)
def test_the_list_holds_the_texts_of_the_source_and_no_others(
    texts: Path, tmp_path: Path
) -> None:
    fresh = tmp_path / texts.name
    shutil.copyfile(texts, fresh)
    translations.update(fresh)
    kept, found = set(texts_of(texts)), set(texts_of(fresh))
    assert not found - kept, "run packaging/translations.py and translate what is new"
    assert not kept - found, "run packaging/translations.py to take out what is gone"


GERMAN = translations.TEXTS / "studio_planner_de.ts"


def test_german_texts_have_german_quotation_marks() -> None:
    for key, message in texts_of(GERMAN).items():
        said = "".join(message.find("translation").itertext())  # type: ignore[union-attr]
        assert not re.search(r"[\"\u201d\u00ab\u00bb\u2018\u2019]|(?<!\w)'|'(?!\w)", said), key
        opened, closed = said.count("\u201e"), said.count("\u201c")
        assert opened == closed, key


def test_quotation_marks_stand_only_in_texts_that_are_translated() -> None:
    for path in translations.SOURCE.rglob("*.py"):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        said = {
            inner
            for call in ast.walk(tree)
            if isinstance(call, ast.Call) and getattr(call.func, "id", "") == "translate"
            for inner in ast.walk(call)
        }
        for node in set(ast.walk(tree)) - said:
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                assert not re.search(r"[\u201c\u201d]", node.value), (path, node.lineno)


@pytest.mark.parametrize("texts", LISTS, ids=lambda path: path.stem)
def test_every_text_is_translated(texts: Path) -> None:
    unfinished = [
        key
        for key, message in texts_of(texts).items()
        if message.find("translation[@type]") is not None or not translated(message)
    ]
    assert not unfinished


@pytest.mark.parametrize("texts", LISTS, ids=lambda path: path.stem)
def test_a_translation_has_the_places_and_the_edges_of_its_text(texts: Path) -> None:
    for (context, text), message in texts_of(texts).items():
        said = translated(message)
        where = f"{context}: {text}"
        assert sorted(PLACE.findall(text)) == sorted(PLACE.findall(said)), where
        assert text[:1].isspace() == said[:1].isspace(), where
        assert text[-1:].isspace() == said[-1:].isspace(), where
        assert text.count("&") == said.count("&"), where


@needs_tools
@pytest.mark.parametrize("texts", LISTS, ids=lambda path: path.stem)
def test_what_the_program_reads_is_made_of_the_list(texts: Path, tmp_path: Path) -> None:
    made = tmp_path / "made.qm"
    translations.release(texts, made)
    assert made.read_bytes() == texts.with_suffix(".qm").read_bytes()


def test_nothing_is_translated_while_a_module_is_loaded() -> None:
    # The language is chosen later; a table of a module marks its texts and says them later.
    early = [
        f"{path.name}:{call.lineno}"
        for path in sorted(translations.SOURCE.rglob("*.py"))
        for call in _calls_at_load(ast.parse(path.read_text(encoding="utf-8")))
    ]
    assert not early


def _calls_at_load(node: ast.AST) -> list[ast.Call]:
    found = []
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda):
            continue
        if isinstance(child, ast.Call) and getattr(child.func, "id", "") == "translate":
            found.append(child)
        found += _calls_at_load(child)
    return found


def test_every_place_of_a_text_is_filled_where_it_is_said() -> None:
    wrong = [
        f"{path.name}:{call.lineno}"
        for path in sorted(translations.SOURCE.rglob("*.py"))
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(call, ast.Call) and _filled(call) != _places(call)
    ]
    assert not wrong


def _filled(call: ast.Call) -> set[str]:
    """The places that translate(...).format(...) fills."""
    return {one.arg for one in call.keywords if one.arg} if _text_of(call) else set()


def _places(call: ast.Call) -> set[str]:
    return {re.split(r"[!:]", place[1:-1])[0] for place in PLACE.findall(_text_of(call))}


def _text_of(call: ast.Call) -> str:
    """The text of translate(...).format(...); empty where a call is another one."""
    made = call.func
    if not isinstance(made, ast.Attribute) or made.attr != "format":
        return ""
    inner = made.value
    if not isinstance(inner, ast.Call) or getattr(inner.func, "id", "") != "translate":
        return ""
    text = inner.args[1]
    return text.value if isinstance(text, ast.Constant) and isinstance(text.value, str) else ""
