"""The command sheet: a pour sheet, a week, an order slip or the stock as a PDF."""

from __future__ import annotations

import os
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.services.desk import DeskView
from studio_planner.services.naming import find_named
from studio_planner.services.paper.order_slip import order_slip
from studio_planner.services.paper.placing import place_sheet, refuse_irreplaceable
from studio_planner.services.paper.pour_sheet import (
    pour_sheet_of_day,
    pour_sheet_of_mix,
    still_to_pour,
)
from studio_planner.services.paper.stock_list import stock_list
from studio_planner.services.paper.wall_words import local_day
from studio_planner.services.paper.week_sheet import week_sheet
from studio_planner.services.speaking import ENGLISH, speak
from studio_planner.services.studio_files import read_planned, read_studio
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import day_of, whole_number
from studio_planner.terminal.writing import say_wrapped

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from studio_planner.services.paper.pages import Sheet
    from studio_planner.terminal.surroundings import Surroundings

_LARGEST_NUMBER = 999_999
_DAYS = {"today": 0, "tomorrow": 1}


def sheet(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Draw one sheet into a new PDF; one that is there is replaced only with --overwrite."""
    target = Path(arguments.target)
    refuse_irreplaceable(target)
    if os.path.lexists(target) and not arguments.overwrite:
        raise BadInput(
            f"{target} is there already; choose another name, or replace it with --overwrite."
        )
    if not speak(arguments.language or ENGLISH):
        raise BadInput(f"--language {arguments.language} is not known; use en or de.")
    try:
        made = _sheet(arguments, around)
        draw = around.draw_sheet
        now = around.clock.now()
        place_sheet(draw, made, now, target, overwrite=arguments.overwrite)
    finally:
        speak(ENGLISH)
    say_wrapped(f"{target}: {made.title}, {made.paper}.")
    return 0


def _sheet(arguments: argparse.Namespace, around: Surroundings) -> Sheet:
    file, now = Path(arguments.file), around.clock.now()
    if arguments.stock or arguments.order is not None:
        view = DeskView(read_studio(file), now)
        if arguments.order is None:
            return stock_list(view)
        order = find_named(view.studio.orders, arguments.order, "order")
        return order_slip(view, order.key)
    studio, _ = read_planned(file)
    view = DeskView(studio, now)
    today = local_day(studio, now)
    if arguments.day is not None:
        return pour_sheet_of_day(view, _day(arguments.day, "--day", today))
    if arguments.week is not None:
        return week_sheet(view, _day(arguments.week, "--week", today))
    number = whole_number(arguments.mix, "--mix", _LARGEST_NUMBER)
    return pour_sheet_of_mix(view, _mix_of(view, number))


def _day(text: str, what: str, today: date) -> date:
    """A day as it is typed, or in a word."""
    word = text.strip().lower()
    return today + timedelta(days=_DAYS[word]) if word in _DAYS else day_of(text, what)


def _mix_of(view: DeskView, number: int) -> int:
    """The mix of the plan that a coat of that number is poured from; BadInput without one."""
    mixes = {one.number: one.mix for one in still_to_pour(view)}
    if number in mixes:
        return mixes[number]
    said = "none is left"
    if mixes:
        said = f"those to come are {min(mixes)} to {max(mixes)}"
    raise BadInput(
        f"There is no coat {number} in the kept plan that is still to be poured; {said}."
    )
