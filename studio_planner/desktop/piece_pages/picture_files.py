"""Pictures from files: read, turned upright, scaled down, and written as JPEG."""

from __future__ import annotations

from datetime import UTC, datetime
from hashlib import sha256
from typing import TYPE_CHECKING

from PySide6.QtCore import QBuffer, QByteArray, QFileInfo, QIODevice, Qt
from PySide6.QtGui import QImage, QImageReader

from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.photos import LONGEST_SIDE

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.desktop.page import PageDesk

_QUALITY = 86


class BrokenPicture(ValueError):  # noqa: N818 - reads as a sentence where it is raised
    """A file holds no picture that can be read; the sentence says which."""


def picture_from(path: Path) -> tuple[str, bytes]:
    """Read a picture and give its key and its JPEG; BrokenPicture when it is none."""
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    image = reader.read()
    if image.isNull():
        sentence = translate(
            "pieces", "{name} is no picture that can be read; choose a JPEG or PNG file."
        )
        raise BrokenPicture(sentence.format(name=path.name))
    jpeg = _jpeg(_scaled(image))
    return sha256(jpeg).hexdigest(), jpeg


def taken_at(path: Path, now: datetime) -> datetime:
    """When a picture was taken, as far as its file says it; never later than now."""
    stamp = QFileInfo(str(path)).lastModified().toSecsSinceEpoch()
    return min(datetime.fromtimestamp(stamp, UTC), now)


def image_of(jpeg: bytes | None) -> QImage:
    """A kept picture; an empty image where it is missing or damaged."""
    return QImage() if jpeg is None else QImage.fromData(jpeg)


def kept_picture(desk: PageDesk, key: str) -> QImage:
    """The picture of a photo that the studio of a window keeps; empty where there is none."""
    return image_of(desk.session.photo(key) if desk.session else None)


def _scaled(image: QImage) -> QImage:
    if max(image.width(), image.height()) > LONGEST_SIDE:
        return image.scaled(
            LONGEST_SIDE,
            LONGEST_SIDE,
            Qt.AspectRatioMode.KeepAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )
    return image


def _jpeg(image: QImage) -> bytes:
    flat = QImage(image.size(), QImage.Format.Format_RGB32)
    flat.fill(Qt.GlobalColor.white)
    for_paper = image.convertToFormat(QImage.Format.Format_RGB32) if _opaque(image) else None
    if for_paper is None:
        from PySide6.QtGui import QPainter  # noqa: PLC0415 - only for pictures with holes

        with QPainter(flat) as painter:
            painter.drawImage(0, 0, image)
        for_paper = flat
    kept = QByteArray()
    buffer = QBuffer(kept)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    for_paper.save(buffer, "JPEG", _QUALITY)  # type: ignore[call-overload]
    buffer.close()
    return bytes(kept.data())


def _opaque(image: QImage) -> bool:
    return not image.hasAlphaChannel()
