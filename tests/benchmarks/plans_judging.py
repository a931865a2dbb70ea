"""What is asked of plans at each size, and whether what was measured meets it."""

from __future__ import annotations

import statistics
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from tests.benchmarks.plans_best_known import ALIKE
from tests.benchmarks.plans_solving import proved, value

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from tests.benchmarks.plans_measuring import Anew, Measured

FIRST_SECONDS = {"M": 0.05, "X": 1.0}
ANEW_SECONDS = {"M": 0.2, "X": 2.0}
JOINTS_SECONDS, ALL_SECONDS = 3.0, 20.0
MOVES_FACTOR, MOVES_MORE = 1.25, 2
LATE_SHARE, LATE_HOURS = 0.10, 2.0
GAINED = 0.15
SHARING = 15
MEGABYTES = 600.0
FIVE_OF_SIX = 5 / 6


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the table."""

    size: str
    what: str
    asked: str
    measured: str
    met: bool


def rows_of(size: str, runs: Sequence[Measured], megabytes: float) -> list[Row]:
    """Judge all that was asked of one size; the most memory of the solving process is given."""
    judges: dict[str, tuple[Callable[[Sequence[Measured]], Row], ...]] = {
        "S": (_joints_proved, _all_proved),
        "M": (_first_plan, _as_early, _zero_proved, _sharing, _anew, _moves),
        "L": (_total_late,),
        "X": (_first_plan, _better_than_plain, _gained, _anew),
    }
    rows = [judge(runs) for judge in judges[size]]
    if size == "L":
        measured = f"{megabytes:.0f} MB"
        asked = f"under {MEGABYTES:.0f} MB"
        rows.append(Row(size, "memory of solving", asked, measured, megabytes < MEGABYTES))
    rows += [_start_up(runs), _late_seeds(runs), _kept_rules(runs), _true_bounds(runs)]
    return rows


def both(values: Iterable[float], form: str, *, least: bool = False) -> str:
    """The median and the worst: the most, or the least."""
    found = list(values)
    if not found:
        return "none"
    worst = min(found) if least else max(found)
    return f"{statistics.median(found):{form}} ({worst:{form}})"


def gained(run: Measured) -> float | None:
    """The share of the way from the quick plan to the bound that was gone; None for no way."""
    before = value(run.quick, Goal.LATENESS)
    way = before - run.solved.bound
    return None if way <= ALIKE else (before - run.solved.late) / way


def moves_kept(one: Anew) -> bool | None:
    """Whether the search moves few pours more than the least known; None if that is less late.

    Fewer hours late may have been worth more moves, so those are not compared.
    """
    if one.solved is None or one.known is None:
        return None
    found = (value(one.solved.plan, Goal.LEFT_OUT), one.solved.late)
    least = (one.known.left_out, one.known.late)
    if found > (least[0], least[1] + ALIKE):
        return None
    moved = value(one.solved.plan, Goal.MOVED)
    gained = found < (least[0], least[1] - ALIKE)
    return gained or moved <= MOVES_FACTOR * one.known.moved + MOVES_MORE


def _first_plan(runs: Sequence[Measured]) -> Row:
    asked = FIRST_SECONDS[runs[0].size]
    seconds = [run.again for run in runs]
    first = both((run.first for run in runs), ".3f")
    measured = f"{both(seconds, '.3f')} s; with clocks to build {first} s"
    met = statistics.median(seconds) < asked
    return Row(
        runs[0].size, "first plan, clocks built", f"median under {asked} s", measured, met
    )


def _joints_proved(runs: Sequence[Measured]) -> Row:
    return _all_within(
        runs,
        "lateness, joints proved",
        [run.solved.joints_proved for run in runs],
        JOINTS_SECONDS,
    )


def _all_proved(runs: Sequence[Measured]) -> Row:
    return _all_within(
        runs, "all goals proved", [run.solved.all_proved for run in runs], ALL_SECONDS
    )


def _all_within(
    runs: Sequence[Measured], what: str, seconds: Sequence[float | None], asked: float
) -> Row:
    done = [one for one in seconds if one is not None and one <= asked]
    known = [one for one in seconds if one is not None]
    measured = f"{len(done)} of {len(runs)}; of {len(known)} proved {both(known, '.1f')} s"
    met = len(done) == len(runs)
    return Row(runs[0].size, what, f"all within {asked:.0f} s of solving", measured, met)


def _as_early(runs: Sequence[Measured]) -> Row:
    known = [run for run in runs if run.known is not None]
    good = sum(run.solved.late <= run.known.late + ALIKE for run in known if run.known)
    measured = f"{good} of {len(runs)}" + _unknown(len(runs) - len(known))
    met = good >= FIVE_OF_SIX * len(runs)
    return Row(runs[0].size, "as early as best known", "5 of 6 in 5 s", measured, met)


def _zero_proved(runs: Sequence[Measured]) -> Row:
    zero = [run for run in runs if run.known is not None and run.known.late <= ALIKE]
    good = sum(proved(run.solved.plan, Goal.LEFT_OUT, Goal.LATENESS) for run in zero)
    lacking = sum(run.known is None for run in runs)
    measured = f"{good} of {len(zero)}" + _unknown(lacking)
    met = good == len(zero) and not lacking
    return Row(runs[0].size, "proved where best is zero", "all in 5 s", measured, met)


def _sharing(runs: Sequence[Measured]) -> Row:
    counts = [run.shared_for_nothing for run in runs]
    measured = f"{both(counts, '.0f', least=True)} of {len(runs[0].quick.coats)}"
    met = min(counts) >= SHARING
    return Row(runs[0].size, "coats sharing a mix", f"each {SHARING} of 100", measured, met)


def _anew(runs: Sequence[Measured]) -> Row:
    asked = ANEW_SECONDS[runs[0].size]
    seconds = [one.first for run in runs for one in run.anew.values()]
    met = statistics.median(seconds) < asked
    measured = both(seconds, ".3f") + " s, clocks and all"
    return Row(runs[0].size, "first plan anew", f"median under {asked} s", measured, met)


def _moves(runs: Sequence[Measured]) -> Row:
    made = [one for run in runs for one in run.anew.values()]
    kept = [moves_kept(one) for one in made]
    compared = [one for one in kept if one is not None]
    unknown = sum(one.known is None for one in made)
    later = len(made) - len(compared) - unknown
    measured = f"{sum(compared)} of {len(compared)}; {later} later, not compared"
    asked = f"{MOVES_FACTOR} x the least known + {MOVES_MORE}, all"
    met = all(compared) and bool(compared) and not unknown
    return Row(runs[0].size, "pours moved after 5 s", asked, measured + _unknown(unknown), met)


def _total_late(runs: Sequence[Measured]) -> Row:
    late = sum(run.solved.late for run in runs)
    known = [run.known.late for run in runs if run.known is not None]
    most = sum(known) + max(LATE_SHARE * sum(known), LATE_HOURS)
    measured = f"{late:.1f} h; best known {sum(known):.1f} h" + _unknown(len(runs) - len(known))
    met = len(known) == len(runs) and late <= most
    return Row(runs[0].size, "total hours late", "within max(10 %, 2 h)", measured, met)


def _gained(runs: Sequence[Measured]) -> Row:
    shares = [share for run in runs if (share := gained(run)) is not None]
    ways = [
        (before - run.solved.late, before - run.solved.bound)
        for run in runs
        if (before := value(run.quick, Goal.LATENESS)) - run.solved.bound > ALIKE
    ]
    whole = sum(way for _, way in ways)
    share = sum(gain for gain, _ in ways) / whole if whole else 1.0
    measured = f"{share:.1%} over all; each {both(shares, '.1%', least=True)}"
    asked = f"{GAINED:.0%} of the way, over all"
    return Row(runs[0].size, "quick plan to bound", asked, measured, share >= GAINED)


def _better_than_plain(runs: Sequence[Measured]) -> Row:
    good = 0
    for run in runs:
        assert run.plain is not None
        left_out, late = value(run.quick, Goal.LEFT_OUT), value(run.quick, Goal.LATENESS)
        good += (left_out, late + ALIKE) < (run.plain.left_out, run.plain.late)
    met = good >= FIVE_OF_SIX * len(runs)
    measured = f"{good} of {len(runs)}"
    return Row(runs[0].size, "quick before plain", "5 of 6 less late", measured, met)


def _start_up(runs: Sequence[Measured]) -> Row:
    starts = [run.solved.start_up for run in runs if run.solved.start_up is not None]
    waited = both((run.solved.seconds for run in runs), ".1f")
    measured = f"{both(starts, '.1f')} s; waited in all {waited} s"
    return Row(runs[0].size, "start-up of the search", "reported", measured, met=True)


def _late_seeds(runs: Sequence[Measured]) -> Row:
    """Dates are tight enough to tell plans apart, and not so tight that none is kept."""
    late = [run.solved.late if run.known is None else run.known.late for run in runs]
    count = sum(one > ALIKE for one in late)
    met = 2 / 6 * len(runs) <= count <= 4 / 6 * len(runs)
    load = f"load {both((run.load for run in runs), '.0%')}"
    window = f"windows {statistics.median(run.window for run in runs):.1f} h"
    measured = f"{count} of {len(runs)}; {load}; {window}"
    return Row(runs[0].size, "studios late at best", "2 to 4 of 6", measured, met)


def _kept_rules(runs: Sequence[Measured]) -> Row:
    broken = sum(run.all_broken for run in runs)
    return Row(runs[0].size, "rules broken", "none in any plan", f"{broken}", broken == 0)


def _true_bounds(runs: Sequence[Measured]) -> Row:
    """No plan gets below a bound: neither what is found now nor what is known."""
    known = [(run.solved, run.known) for run in runs if run.known is not None]
    false = sum(
        min(solved.late, best.late) + ALIKE < max(solved.bound, best.bound)
        for solved, best in known
    )
    return Row(runs[0].size, "bounds that a plan is below", "none", f"{false}", false == 0)


def _unknown(count: int) -> str:
    return f"; {count} without a best known value" if count else ""
