"""Bring the list of texts up to date with the source, and make what the program reads of it.

    python packaging/translations.py

Run it with the project's own Python. New texts come into resources/translations/*.ts as
unfinished; write their translation there, in any editor or with Qt's linguist, and run it
again.
"""

from __future__ import annotations

import ast
import json
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING, Final

import PySide6

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT: Final = Path(__file__).resolve().parents[1]
TEXTS: Final = ROOT / "resources" / "translations"
SOURCE: Final = ROOT / "studio_planner"
_END: Final = ".exe" if sys.platform == "win32" else ""
_READ: Final = (
    *("-extensions", "py", "-tr-function-alias", "translate+=marked"),
    *("-no-obsolete", "-locations", "none", "-silent"),
    *("-disable-heuristic", "sametext", "-disable-heuristic", "similartext"),
)

_MADE_OF: Final = {
    "said": ("said", 0),
    "not_known": ("said", 0),
    "_nobody": ("said", 0),
    "Question": ("questions", 1),
    "WhatIf": ("questions", 1),
    "Parameter": ("questions", 1),
}
"""What makes a sentence or a question of a text: its context, and which argument that is."""


def tool(name: str) -> str:
    """Where one of Qt's own programs lies: lupdate, or lrelease."""
    return str(Path(PySide6.__file__).parent / f"{name}{_END}")


def update(texts: Path) -> None:
    """Bring every text of the source into the list `texts`, and take out what is gone."""
    with TemporaryDirectory() as folder:
        listed = Path(folder) / "sentences.py"
        listed.write_text("".join(map(_call, _sentences())), encoding="utf-8")
        program = [tool("lupdate"), *_READ, str(SOURCE), str(listed), "-ts", str(texts)]
        subprocess.run(program, check=True)


def _call(found: tuple[str, str]) -> str:
    context, text = (json.dumps(one, ensure_ascii=False) for one in found)
    return f"translate({context}, {text})\n"


def _sentences() -> list[tuple[str, str]]:
    """Context and text of everything that sayings, questions and sentences are made of."""
    found: dict[tuple[str, str], None] = {}
    for path in sorted(SOURCE.rglob("*.py")):
        source = path.read_text(encoding="utf-8")
        services = SOURCE / "services" in path.parents
        if any(f"{name}(" in source for name in ("saying", "said", "Parameter")):
            for node in ast.walk(ast.parse(source)):
                found.update(dict.fromkeys(_kept_in(node)))
                found.update(dict.fromkeys(_texts_of(node) if services else ()))
    return list(found)


def _kept_in(node: ast.AST) -> Iterator[tuple[str, str]]:
    """What a call of `saying` is made of: Qt's own program reads no call with named facts."""
    if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "saying":
        context, text = node.args
        if isinstance(context, ast.Constant):
            yield from ((str(context.value), said) for said in _whole_texts(text))


def _texts_of(node: ast.AST) -> Iterator[tuple[str, str]]:
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
        context, place = _MADE_OF.get(node.func.id, ("", 0))
        if context and len(node.args) > place:
            yield from ((context, text) for text in _whole_texts(node.args[place]))
    elif isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name):
        named = node.targets[0].id == "text"
        yield from (("said", text) for text in (_whole_texts(node.value) if named else ()))


def _whole_texts(node: ast.expr) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from _whole_texts(node.body)
        yield from _whole_texts(node.orelse)


def release(texts: Path, made: Path) -> str:
    """Make what the program reads; give what Qt says of it.

    A program that runs reads the old one to its end: a map of a file that shrinks ends it.
    """
    beside = made.with_name(f"{made.name}.new")
    program = [tool("lrelease"), str(texts), "-qm", str(beside)]
    said = subprocess.run(program, check=True, capture_output=True, text=True).stdout
    beside.replace(made)
    return said


def main() -> int:
    """Do both for every language; 1 when a text has no translation yet."""
    unfinished = 0
    for texts in sorted(TEXTS.glob("*.ts")):
        update(texts)
        print(release(texts, texts.with_suffix(".qm")).strip())
        unfinished += texts.read_text(encoding="utf-8").count('type="unfinished"')
    print(f"{unfinished} texts have no translation yet.")
    return 1 if unfinished else 0


if __name__ == "__main__":
    sys.exit(main())
