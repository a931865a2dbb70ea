"""Pictures that are dropped on a widget, wherever on it."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Signal
from PySide6.QtGui import QDropEvent, QImageReader
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtCore import QMimeData
    from PySide6.QtWidgets import QWidget

_ENTERS = {QEvent.Type.DragEnter, QEvent.Type.DragMove}


class PictureDrops(QObject):
    """Watches a widget for files that look like pictures by their names.

    Signals:
        dropped: the paths, as a list of Path.
    """

    dropped = Signal(list)

    def __init__(self, watched: QWidget) -> None:
        """Watch a widget from now on."""
        super().__init__(watched)
        watched.setAcceptDrops(True)
        watched.installEventFilter(self)

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() not in _ENTERS and event.type() is not QEvent.Type.Drop:
            return False
        if not isinstance(event, QDropEvent):
            return False
        paths = pictures_in(event.mimeData())
        if not paths:
            return False
        event.acceptProposedAction()
        if event.type() is QEvent.Type.Drop:
            self.dropped.emit(paths)
        return True


def pictures_in(data: QMimeData) -> list[Path]:
    """The files among some data that look like pictures by their names."""
    known = {
        bytes(form.data()).decode().lower() for form in QImageReader.supportedImageFormats()
    }
    paths = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
    return [path for path in paths if path.suffix.removeprefix(".").lower() in known]
