"""The readings of one place: typed, dropped as a logger's file, drawn, made a pattern of."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.errors import StudioError
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.into_sight import into_sight
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.room_pages.log_preview import LogPreview
from studio_planner.desktop.room_pages.log_work import LogWork
from studio_planner.desktop.room_pages.read_week import ReadWeek
from studio_planner.desktop.room_pages.readings_picture import ReadingsPicture
from studio_planner.desktop.room_pages.watch_row import WatchRow
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.room_logs import (
    LogFile,
    log_file,
    taken,
    typed_reading,
    without_last_reading,
    without_readings,
)

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.places import Place
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.room_logs import LogAsked, LogLook

_NARROWEST = 64
"""A field for a figure is at least so wide, however narrow the page."""


class ReadingsPanel(QWidget):
    """Nothing is kept before the maker has seen it."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._view: DeskView | None = None
        self._place: Place | None = None
        self._file: LogFile | None = None
        self._path: Path | None = None
        self._about = ""
        self.work = LogWork(self)
        self.title = Line(canvas, translate("room", "Readings"), self, font="clock")
        self.said = Line(canvas, "", self)
        self.warmth = NumberField(canvas, translate("room", "Now"), Quantity.TEMPERATURE)
        self.damp = NumberField(
            canvas,
            translate("room", "Humidity (may be empty)"),
            Quantity.PER_CENT,
            optional=True,
        )
        self.write = verb(translate("room", "Write it down"), self._write, self)
        self.choose_file = verb(translate("room", "Choose a logger's file"), self._choose, self)
        self.stop = verb(translate("room", "Stop reading"), self._let_go, self)
        self.progress = Line(canvas, "", self)
        self.preview = LogPreview(canvas, self)
        self.watching = WatchRow(desk, self)
        self.picture = ReadingsPicture(canvas, self)
        self.more = verb(translate("room", "Show all readings"), self._all_or_some, self)
        self.undo_last = verb(translate("room", "Take the last one back"), self._last, self)
        self.forget = verb(translate("room", "Remove all readings"), self._forget, self)
        self.week = ReadWeek(desk, self)
        for field in (self.warmth, self.damp):
            field.editor.setMinimumWidth(_NARROWEST)
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        layout.addWidget(self.title)
        layout.addWidget(self.said)
        typed, going, kept = Wrapping(), QHBoxLayout(), Wrapping()
        typed.add(self.warmth, self.damp, self.write, self.choose_file)
        going.addWidget(self.progress, 1)
        going.addWidget(self.stop)
        kept.add(self.more, self.undo_last, self.forget)
        layout.addLayout(typed)
        layout.addLayout(going)
        layout.addWidget(self.watching)
        layout.addWidget(self.preview)
        layout.addWidget(self.picture)
        layout.addLayout(kept)
        layout.addWidget(self.week)
        self.stop.hide()
        self.progress.say("")

    def _connect(self) -> None:
        self.work.found.connect(self._found)
        self.work.failed.connect(self._failed)
        self.work.going_on.connect(self._going_on)
        self.preview.asked_again.connect(self._look)
        self.preview.taken.connect(self._take)
        self.preview.watched.connect(self._watch)
        self.preview.left.connect(self._let_go)

    def show_place(self, view: DeskView, place: Place) -> None:
        """Show a place; a log that was being looked at for another one is let go."""
        self._view, self._place = view, place
        if self._about and self._about != place.key:
            self._let_go()
        units = view.studio.units
        for field in (self.warmth, self.damp):
            field.set_units(units)
        self.said.say(self._summary(view, place))
        self.picture.show_place(view.studio, place)
        for button in (self.more, self.undo_last, self.forget):
            button.setVisible(bool(place.readings))
        self.week.show_place(view.studio, place)
        self.watching.show_place(view.studio, place)

    def _summary(self, view: DeskView, place: Place) -> str:
        if not place.readings:
            return translate(
                "room",
                "Nothing was read yet. Type what the thermometer says now, or drop a "
                "logger's CSV file anywhere on this page.",
            )
        last, wall = place.readings[-1], words.wall_of(view.studio)
        damp = "" if last.humidity_pct is None else f", {last.humidity_pct:.0f} %"
        return translate(
            "room", "{count} readings; the last one {when}: {warmth}{damp}."
        ).format(
            count=f"{len(place.readings):,}",
            when=words.moment(last.when, wall),
            warmth=words.degrees(last.celsius, view.studio.units, decimals=1),
            damp=damp,
        )

    # One reading

    def _write(self) -> None:
        place = self._place
        figures = [self._figure(field) for field in (self.warmth, self.damp)]
        if place is None or not all(known for known, _ in figures):
            return
        (_, warmth), (_, damp) = figures
        if warmth is None:
            return
        now = self._desk.clock.now()
        try:
            self._desk.changes.make(typed_reading(place, now, warmth, damp))
        except StudioError as error:
            fields = {"celsius": self.warmth, "humidity_pct": self.damp}
            for rule in getattr(error, "broken", ()):
                fields.get(rule.field, self.warmth).say_wrong(rule.sentence)
            return
        self.warmth.show_value(None)
        self.damp.show_value(None)

    @staticmethod
    def _figure(field: NumberField) -> tuple[bool, float | None]:
        field.say_right()
        try:
            return True, field.value()
        except ValueError as error:
            field.say_wrong(str(error))
            return False, None

    # A log

    def _choose(self) -> None:
        path = self._desk.dialogs.readings(self, "")
        if path is not None:
            self.open_log(path)

    def open_log(self, path: Path) -> None:
        """Look at a file that the maker dropped or chose; the one before is let go."""
        if self._place is None:
            return
        self._let_go()
        try:
            file = log_file(path)
        except StudioError as error:
            self._failed(str(error))
            return
        self._file, self._path = file, path
        self._about = self._place.key
        self.preview.begin()
        self._look(self.preview.asked)

    def _look(self, asked: LogAsked) -> None:
        if self._file is None or self._view is None or self._place is None:
            return
        self.stop.show()
        self._going_on(0.0)
        zone = self._view.studio.time_zone
        now = self._desk.clock.now()
        self.work.begin(self._file, zone, self._place.readings, asked, now)

    def _going_on(self, seconds: float) -> None:
        if self._file is not None:
            self.progress.say(
                translate(
                    "room",
                    "Reading {name}, {lines} lines; {seconds} s so far. You can go on working.",
                ).format(
                    name=self._file.name,
                    lines=f"{self._file.lines:,}",
                    seconds=f"{seconds:.0f}",
                )
            )

    def _found(self, look: LogLook) -> None:
        self.stop.hide()
        self.progress.say("")
        if self._view is not None:
            first = self.preview.look is None
            self.preview.show_look(look, self._view.studio)
            if first:
                # It has its room once it is laid out.
                QTimer.singleShot(0, self, lambda: into_sight(self.preview))

    def _failed(self, sentence: str) -> None:
        self.stop.hide()
        self.progress.say(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}")
        QTimer.singleShot(0, self, lambda: into_sight(self.progress))

    def _let_go(self) -> None:
        self.work.let_go()
        self._file, self._about = None, ""
        self.preview.hide()
        self.stop.hide()
        self.progress.say("")

    def _take(self, look: LogLook) -> None:
        overlap = self.preview.asked.answers.overlap
        if self._place is not None and self._desk.changes.attempt(
            taken(self._place, look, overlap), long=True
        ):
            self._let_go()

    def _watch(self, look: LogLook) -> None:
        """Take what is there now where it brings anything, and watch for the rest."""
        place, path, asked = self._place, self._path, self.preview.asked
        if look.ready:
            self._take(look)
        else:
            self._let_go()
        if place is not None and path is not None and self._file is None:
            self._desk.reading_watch.start(place.key, path, asked)

    # What was read

    def _all_or_some(self) -> None:
        self.picture.show_everything(not self.picture.everything)
        self.more.setText(
            translate("room", "Show two weeks")
            if self.picture.everything
            else translate("room", "Show all readings")
        )

    def _last(self) -> None:
        if self._place is not None:
            self._desk.changes.attempt(without_last_reading(self._place))

    def _forget(self) -> None:
        if self._place is not None:
            self._desk.changes.attempt(without_readings(self._place))
