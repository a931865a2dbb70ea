"""Photos kept with a piece: dropped or chosen, worded, opened large, removed."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeySequence, QPixmap, QShortcut
from PySide6.QtWidgets import (
    QFileDialog,
    QGridLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from studio_planner.craft.errors import StudioError
from studio_planner.desktop import words
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.piece_pages.picture_files import (
    BrokenPicture,
    kept_picture,
    picture_from,
    taken_at,
)
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing import photos
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from PySide6.QtGui import QImage

    from studio_planner.craft.pieces import Photo, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.page import PageDesk

_THUMB = 168
_IN_A_ROW = 3


def ask_pictures(parent: QWidget) -> list[Path]:
    """Ask the maker for picture files."""
    kinds = translate("pieces", "Pictures (*.jpg *.jpeg *.png *.webp *.bmp);;All files (*)")
    names, _ = QFileDialog.getOpenFileNames(
        parent, translate("pieces", "Photos to keep"), "", kinds
    )
    return [Path(name) for name in names]


class PhotoCard(QWidget):
    """One photo: its picture as a button, its words, its date, and the verb to remove it."""

    def __init__(self, canvas: Canvas, photo: Photo, image: QImage, date: str) -> None:
        """Show a photo."""
        super().__init__()
        self.photo = photo
        self.open_button = QToolButton(self)
        self.open_button.setFixedSize(_THUMB, round(_THUMB * 0.75))
        self.open_button.setAutoRaise(True)
        said = photo.words or translate("pieces", "without words")
        name = translate("pieces", "Open the photo of {date}, {words}")
        self.open_button.setAccessibleName(name.format(date=date, words=said))
        if image.isNull():
            self.open_button.setText(translate("pieces", "The picture is damaged."))
        else:
            self.open_button.setIcon(QPixmap.fromImage(_small(image)))
            self.open_button.setIconSize(QSize(_THUMB - 6, round(_THUMB * 0.75) - 6))
        self.words = QLineEdit(photo.words, self)
        self.words.setAcceptDrops(False)  # a picture falls upon the page, not into its words
        self.words.setPlaceholderText(translate("pieces", "words"))
        self.words.setAccessibleName(
            translate("pieces", "Words of the photo of {date}").format(date=date)
        )
        self.date = Line(canvas, date, self, font="small", colour="quiet")
        self.remove_button = verb(translate("pieces", "Remove"), lambda: None, self, about=name)
        self.remove_button.setAccessibleName(
            translate("pieces", "Remove the photo of {date}").format(date=date)
        )
        self.setFixedWidth(_THUMB)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 8)
        for widget in (self.open_button, self.words, self.date, self.remove_button):
            layout.addWidget(widget)


def _small(image: QImage) -> QImage:
    """As large as a card needs it on a screen of twice the plain scale."""
    side = 2 * _THUMB
    return image.scaled(
        side,
        side,
        Qt.AspectRatioMode.KeepAspectRatio,
        Qt.TransformationMode.SmoothTransformation,
    )


class LargePhoto(QScrollArea):
    """One photo as large as it fits, in a window of its own; Escape closes it."""

    def __init__(self, image: QImage, title: str, parent: QWidget) -> None:
        """Show a picture."""
        super().__init__(parent)
        self.setWindowFlag(Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.setAccessibleName(title)
        label = QLabel(self)
        label.setAlignment(Qt.AlignmentFlag.AlignCenter)
        label.setAccessibleName(title)
        label.setPixmap(QPixmap.fromImage(image))
        self.setWidget(label)
        self.resize(min(image.width() + 4, 1200), min(image.height() + 4, 800))
        QShortcut(QKeySequence("Escape"), self).activated.connect(self.close)


class PhotoPanel(QWidget):
    """The photos of one piece; files can be dropped on it.

    `ask` asks the maker for files; tests put their own answer in.
    """

    def __init__(
        self,
        desk: PageDesk,
        parent: QWidget | None = None,
        ask: Callable[[QWidget], Sequence[Path]] = ask_pictures,
    ) -> None:
        """Show no piece yet."""
        super().__init__(parent)
        self._desk = desk
        self._piece: Piece | None = None
        self._shown: tuple[str, tuple[Photo, ...]] = ("", ())
        self.ask = ask
        self.cards: list[PhotoCard] = []
        self.large: LargePhoto | None = None
        self.choose_button = verb(
            translate("pieces", "Choose photos…"), self.choose_files, self
        )
        self.empty = Line(
            desk.canvas,
            translate(
                "pieces",
                "No photo yet. Drop pictures here or choose them: what it looked like is "
                "the best recipe.",
            ),
            self,
            colour="quiet",
        )
        self.wrong = Line(desk.canvas, "", self, colour="now")
        self.wrong.hide()
        self._grid = QGridLayout()
        self._grid.setSpacing(16)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.choose_button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(self.wrong)
        layout.addWidget(self.empty)
        layout.addLayout(self._grid)
        layout.addStretch(1)

    def show_piece(self, studio: Studio, piece: Piece) -> None:
        """Show the photos of a piece."""
        if self._piece is None or piece.key != self._piece.key:
            self.wrong.say("")
        self._piece = piece
        self.empty.setVisible(not piece.photos)
        if self._shown == (piece.key, piece.photos):
            return
        self._shown = (piece.key, piece.photos)
        self._deal(studio, piece)

    def _deal(self, studio: Studio, piece: Piece) -> None:
        take_out(self._grid, *self.cards)
        self.cards = [self._card(studio, photo) for photo in piece.photos]
        for number, card in enumerate(self.cards):
            self._grid.addWidget(card, number // _IN_A_ROW, number % _IN_A_ROW)
        self._grid.setColumnStretch(_IN_A_ROW, 1)

    def _card(self, studio: Studio, photo: Photo) -> PhotoCard:
        date = words.moment(photo.taken, words.wall_of(studio))
        card = PhotoCard(self._desk.canvas, photo, self._image(photo.key), date)
        card.open_button.clicked.connect(lambda _on=False: self.open_large(photo, date))
        card.remove_button.clicked.connect(lambda _on=False: self._remove(photo.key))
        card.words.editingFinished.connect(lambda: self._reword(card))
        return card

    def _image(self, key: str) -> QImage:
        return kept_picture(self._desk, key)

    # Verbs

    def choose_files(self) -> None:
        """Ask for files and keep them."""
        self.keep(self.ask(self))

    def keep(self, paths: Sequence[Path]) -> None:
        """Keep every picture among some files; what is none is said."""
        broken = []
        for path in paths:
            try:
                self._keep(path)
            except (BrokenPicture, StudioError) as error:
                broken.append(str(error))
        self.wrong.say(" ".join(broken))

    def _keep(self, path: Path) -> None:
        piece, session = self._piece, self._desk.session
        if piece is None or session is None:
            return
        key, jpeg = picture_from(path)
        session.add_photo(key, jpeg)
        taken = taken_at(path, self._desk.clock.now())
        said = translate("pieces", "{piece}, keep a photo").format(piece=piece.name)
        self._desk.changes.attempt(
            Change(said, lambda now: photos.with_photo(now, piece.key, key, taken, path.stem))
        )

    def _remove(self, key: str) -> None:
        piece = self._piece
        if piece is not None:
            said = translate("pieces", "{piece}, remove a photo").format(piece=piece.name)
            self._desk.changes.attempt(
                Change(said, lambda now: photos.without_photo(now, piece.key, key))
            )

    def _reword(self, card: PhotoCard) -> None:
        piece, new = self._piece, card.words.text().strip()
        if piece is None or new == card.photo.words:
            return
        said = translate("pieces", "{piece}, words of a photo").format(piece=piece.name)
        key = card.photo.key
        self._desk.changes.attempt(
            Change(said, lambda now: photos.with_words(now, piece.key, key, new))
        )

    def open_large(self, photo: Photo, date: str) -> None:
        """Show a photo large."""
        image = self._image(photo.key)
        if image.isNull():
            self.wrong.say(translate("pieces", "The picture is damaged and can't be shown."))
            return
        title = f"{photo.words}, {date}" if photo.words else date
        self.large = LargePhoto(image, title, self)
        self.large.show()
