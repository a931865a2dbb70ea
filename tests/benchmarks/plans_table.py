"""The table of plans as text, and the copy that is kept beside the benchmark."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from tests.benchmarks.plans_growth import ALL
from tests.benchmarks.plans_solving import sharing_coats, value
from tests.planning.benchmark_studios import SIZES

if TYPE_CHECKING:
    from collections.abc import Sequence

    from tests.benchmarks.plans_judging import Row
    from tests.benchmarks.plans_measuring import Anew, Measured

PATH = Path(__file__).with_name("plans.txt")
COMMAND = "python -m tests.benchmarks.plans --keep"
HEADER = """\
{command}
Two cores, medians (worst) over seeds 0 to 5; sizes: {sizes}.
Seconds of quick plans are those of one core; S, M, L and X search 25, 5, 60 and 60 s, all in.
"""


def row_line(row: Row) -> str:
    """One row of the table."""
    met = "met" if row.met else "NOT MET"
    return f"{row.size:4} {row.what:27} {row.asked:31} {met:8} {row.measured}"


def details(run: Measured) -> list[str]:
    """What was found in one studio: a line for its plan, and one for each event."""
    known, solved = run.known, run.solved
    best = "none"
    if known is not None:
        best = f"{known.late:.1f} (bound {known.bound:.1f}, {known.seconds:.0f} s)"
    plain = "" if run.plain is None else f", earliest promise first {run.plain.late:.1f}"
    name = f"{run.size:4} seed {run.seed}"
    quick = value(run.quick, Goal.LATENESS)
    scuffed, tested = (value(solved.plan, goal) for goal in (Goal.SCUFFED, Goal.TESTED))
    line = (
        f"{name}  load {run.load:.0%}, windows {run.window:.1f} h; hours late: quick "
        f"{quick:.1f}{plain}, found {solved.late:.1f} (bound {solved.bound:.1f}), "
        f"best known {best}; scuffed {scuffed:.0f}, to test {tested:.0f}, "
        f"coats sharing a mix {sharing_coats(solved.plan)}"
    )
    return [line, *(_event(name, event, one) for event, one in run.anew.items())]


def _event(name: str, event: str, one: Anew) -> str:
    """What a plan made anew moves, and how late it is."""
    line = f"{name}  {event}: moved {one.moved:.0f}, late {one.late:.1f}"
    if one.solved is None:
        return line
    found = one.solved
    line += f"; after 5 s {value(found.plan, Goal.MOVED):.0f}, {found.late:.1f}"
    known = one.known
    least = "none" if known is None else f"{known.moved}, {known.late:.1f}"
    return f"{line}; least known {least}"


def keep(rows: Sequence[str], details: Sequence[str], path: Path = PATH) -> None:
    """Put lines into the kept table, in place of those that are of the same sizes."""
    old_rows, old_details = _kept(path)
    sizes = ", ".join(
        f"{name} {size.pieces} pieces x {size.coats} coats in {size.weeks} weeks"
        for name, size in SIZES.items()
    )
    parts = [
        HEADER.format(command=COMMAND, sizes=sizes),
        "\n".join(_merged(old_rows, rows)) + "\n",
        "\n".join(_merged(old_details, details)) + "\n",
    ]
    path.write_text("\n".join(parts), encoding="utf-8")


def _kept(path: Path) -> tuple[list[str], list[str]]:
    """The lines of the table and of its details; none when there is no table yet."""
    if not path.exists():
        return [], []
    _, rows, details = path.read_text(encoding="utf-8").split("\n\n")
    return rows.splitlines(), details.splitlines()


def _merged(old: Sequence[str], new: Sequence[str]) -> list[str]:
    """The new lines with the old ones of other sizes, in the order of the sizes."""
    anew = {_size(line) for line in new}
    lines = [*(line for line in old if _size(line) not in anew), *new]
    order = [*SIZES, ALL]
    return sorted(lines, key=lambda line: order.index(_size(line)))


def _size(line: str) -> str:
    return line.split(maxsplit=1)[0]
