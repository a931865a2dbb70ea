"""The backups of the studio: what is in each, and the way back to it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.desktop import words
from studio_planner.desktop.page import Page
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.backups import differences

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.backups import Backups, Difference, KeptBackup
    from studio_planner.services.desk import DeskView

_LIST_WIDTH, _WIDEST, _MOST_NAMED = 330, 900, 12
_WIDE = 640
"""From this width on the list stands beside its backup, else above it."""


class BackupsSection(Page):
    """All backups, newest first; the chosen one can be looked at and brought back."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        canvas = self.canvas
        self._view: DeskView | None = None
        self.kept: tuple[KeptBackup, ...] = ()
        self.where = Line(canvas, "", self, font="small", colour="quiet")
        self.make = verb(translate("backups", "Back up now"), desk.backups.make_now, self)
        self.list = QListWidget(self)
        self.list.setAccessibleName(translate("backups", "Backups"))
        self.list.setFrameShape(QListWidget.Shape.NoFrame)
        self.empty = Line(canvas, "", self)
        self.title = Line(canvas, "", self, font="bold")
        self.holds = Line(canvas, "", self)
        self.look = verb(translate("backups", "Look at it"), self._look, self)
        self.bring = verb(translate("backups", "Bring this one back"), self._bring, self)
        self.seen = Line(canvas, "", self)
        self._both = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self.list.currentRowChanged.connect(lambda _row: self._show_chosen())
        desk.backups.made.connect(self._show_all)
        canvas.recoloured.connect(self._recolour)
        self._recolour()

    def _lay_out(self) -> None:
        canvas = self.canvas
        said = translate(
            "backups",
            "The whole studio, plan included, is backed up once on each day on which it is "
            "opened, whenever you ask, and before one is brought back. The ten newest stay, "
            "and for thirty days the last of each day.",
        )
        beside = QVBoxLayout()
        beside.setSpacing(8)
        verbs = QHBoxLayout()
        verbs.setSpacing(6)
        verbs.addWidget(self.look)
        verbs.addWidget(self.bring)
        verbs.addStretch(1)
        beside.addWidget(self.title)
        beside.addWidget(self.holds)
        beside.addLayout(verbs)
        beside.addWidget(self.seen)
        beside.addStretch(1)
        self.list.setFixedWidth(_LIST_WIDTH)
        self._both.setSpacing(24)
        self._both.addWidget(self.list)
        self._both.addLayout(beside, 1)
        foot = QHBoxLayout()
        foot.addWidget(self.make)
        foot.addStretch(1)
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        layout = QVBoxLayout(column)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(Line(canvas, translate("backups", "Backups"), self, font="clock"))
        layout.addWidget(Line(canvas, said, self, colour="quiet"))
        layout.addWidget(self.where)
        layout.addLayout(foot)
        layout.addWidget(self.empty)
        layout.addLayout(self._both, 1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._both.setDirection(
            QBoxLayout.Direction.LeftToRight
            if self.width() >= _WIDE
            else QBoxLayout.Direction.TopToBottom
        )

    def _recolour(self) -> None:
        palette = self.canvas.theme.palette
        palette.setColor(palette.ColorRole.Base, self.canvas.theme.colour("paper"))
        self.list.setPalette(palette)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self.setEnabled(view is not None)
        self._show_all()

    def _show_all(self) -> None:
        backups = None if self._view is None else self.desk.backups.of_studio()
        self.make.setEnabled(backups is not None)
        was = self._chosen
        fault = ""
        try:
            self.kept = () if backups is None else backups.all()
        except StudioError as error:
            self.kept, fault = (), str(error)
        self._say_where(backups, fault)
        self._fill()
        kept = [one.path for one in self.kept]
        path = None if was is None else was.path
        self.list.setCurrentRow(kept.index(path) if path in kept else min(0, len(kept) - 1))
        self._show_chosen()

    def _say_where(self, backups: Backups | None, fault: str) -> None:
        folder = translate("backups", "They are in {folder}.")
        self.where.say("" if backups is None else folder.format(folder=backups.folder))
        if self.kept:
            self.empty.say("")
        elif fault:
            self.empty.say(f"\N{BLACK RIGHT-POINTING TRIANGLE} {fault}")
        elif backups is None:
            self.empty.say(translate("backups", "There is no folder here to keep backups in."))
        else:
            self.empty.say(translate("backups", "There is no backup of this studio yet."))
        self.list.setVisible(bool(self.kept))

    def _fill(self) -> None:
        self.list.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.list.clear()
        high = round(self.canvas.fonts.plain_height * 2 + 10)
        for kept in self.kept:
            item = QListWidgetItem(f"{self._when(kept)}\n{self._held(kept)}")
            item.setSizeHint(QSize(0, high))
            self.list.addItem(item)
        self.list.blockSignals(False)  # noqa: FBT003 - Qt's own

    @property
    def _chosen(self) -> KeptBackup | None:
        row = self.list.currentRow()
        return self.kept[row] if 0 <= row < len(self.kept) else None

    def _when(self, kept: KeptBackup) -> str:
        return "" if self._view is None else words.moment(kept.made, self.canvas.wall)

    def _held(self, kept: KeptBackup) -> str:
        if kept.holds is None:
            return translate("backups", "cannot be read")
        pieces, orders = kept.holds.pieces, kept.holds.orders
        planned = kept.holds.planned
        return ", ".join(
            (
                translate("backups", "1 piece")
                if pieces == 1
                else translate("backups", "{count} pieces").format(count=pieces),
                translate("backups", "1 order")
                if orders == 1
                else translate("backups", "{count} orders").format(count=orders),
                translate("backups", "not planned")
                if planned is None
                else translate("backups", "planned {when}").format(
                    when=words.moment(planned, self.canvas.wall)
                ),
            )
        )

    def _show_chosen(self) -> None:
        kept = self._chosen
        for button in (self.look, self.bring):
            button.setVisible(kept is not None)
            button.setEnabled(kept is not None and not kept.fault)
        self.seen.say("")
        self.title.say("" if kept is None else self._when(kept))
        self.holds.say("" if kept is None else self._whole(kept))

    def _whole(self, kept: KeptBackup) -> str:
        if kept.holds is None:
            return f"\N{BLACK RIGHT-POINTING TRIANGLE} {kept.fault}"
        return f"{kept.holds.name}: {self._held(kept)}."

    def _look(self) -> None:
        kept, view, backups = self._chosen, self._view, self.desk.backups.of_studio()
        if kept is None or view is None or backups is None:
            return
        try:
            studio = backups.studio_in(kept)
        except StudioError as error:
            self.seen.say(f"\N{BLACK RIGHT-POINTING TRIANGLE} {error}")
            return
        self.seen.say("\n\n".join((*_contents(studio), _compared(studio, view.studio))))

    def _bring(self) -> None:
        kept = self._chosen
        if kept is not None:
            self.desk.backups.bring_back(kept, self._when(kept))


def _contents(studio: Studio) -> list[str]:
    named = {
        translate("backups", "Pieces"): [words.piece_name(piece) for piece in studio.pieces],
        translate("backups", "Orders"): [order.name for order in studio.orders],
        translate("backups", "Products"): [product.name for product in studio.products],
        translate("backups", "Hands"): [person.name for person in studio.people],
        translate("backups", "Spots"): [spot.name for spot in studio.spots],
    }
    none = translate("backups", "none")
    return [f"{title}: {_listed(names) or none}." for title, names in named.items()]


def _compared(studio: Studio, now: Studio) -> str:
    found = differences(studio, now)
    if not found:
        if studio == now:
            return translate("backups", "It is the studio as it is now.")
        return translate("backups", "Pieces, orders, products and hands are as they are now.")
    return "\n".join(_difference(one) for one in found)


def _difference(one: Difference) -> str:
    noun = {
        "people": translate("backups", "Hands"),
        "places": translate("backups", "Places"),
        "products": translate("backups", "Products"),
        "pieces": translate("backups", "Pieces"),
        "orders": translate("backups", "Orders"),
    }[one.noun]
    parts = (
        (translate("backups", "would come back: {names}"), one.back),
        (translate("backups", "would go: {names}"), one.gone),
        (translate("backups", "would be as before: {names}"), one.other),
    )
    said = "; ".join(text.format(names=_listed(names)) for text, names in parts if names)
    return f"{noun} {said}."


def _listed(names: list[str] | tuple[str, ...]) -> str:
    if len(names) <= _MOST_NAMED:
        return ", ".join(names)
    more = translate("backups", "{names} and {count} more")
    return more.format(names=", ".join(names[:_MOST_NAMED]), count=len(names) - _MOST_NAMED)
