"""Studio files as a maker handles them: read, export, import, create."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.errors import InvalidEntry, StudioError, StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.exchange import studio_from_json, studio_to_json
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.placing import placed
from studio_planner.storage.studio_file import create_studio, open_studio

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

LARGEST_EXCHANGE_BYTES = 256 * 2**20
"""Larger exchange files are refused; ten years of readings every minute are smaller."""


class NoKeptPlan(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """The studio file holds no plan yet; nothing is broken."""


def no_kept_plan(path: Path) -> NoKeptPlan:
    """What to say of a studio file without a plan."""
    return NoKeptPlan(
        f"{path} keeps no plan yet; make one with: studio-planner plan {path} --keep"
    )


def read_studio(path: Path) -> Studio:
    """Read a studio file; StudioFileError in one sentence when it cannot be read."""
    with open_studio(path) as file:
        return file.read()


def read_planned(path: Path) -> tuple[Studio, Plan]:
    """Read a studio file and the plan it keeps; NoKeptPlan when it keeps none."""
    studio = read_studio(path)
    if studio.plan is None:
        raise no_kept_plan(path)
    return studio, studio.plan


def create(path: Path, studio: Studio) -> None:
    """Make a new studio file; StudioFileError when the name is taken."""
    create_studio(path, studio).close()


def export_studio(path: Path, target: Path) -> Studio:
    """Write a studio as exchange JSON to a new file, and give it.

    StudioFileError when the name is taken.
    """
    studio = read_studio(path)
    text = studio_to_json(studio)
    with told_about(target), placed(target) as temporary:
        temporary.write_text(text, encoding="utf-8", newline="\n")
    return studio


def import_studio(source: Path, path: Path) -> Studio:
    """Make a new studio file from exchange JSON; nothing is made when the JSON is refused.

    InvalidEntry names the rules of the craft that it breaks, StudioFileError says of anything
    else why it cannot be read or written.
    """
    data = read_bytes(source, LARGEST_EXCHANGE_BYTES)
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise StudioFileError(
            translate("files", "{source} is not UTF-8 text; export it again.").format(
                source=source
            )
        ) from error
    try:
        studio = studio_from_json(text)
    except InvalidEntry as error:
        raise InvalidEntry(str(source), error.broken) from error
    except StudioFileError as error:
        raise StudioFileError(
            translate("files", "{source}: {error}").format(source=source, error=error)
        ) from error
    create(path, studio)
    return studio


def read_bytes(path: Path, largest: int) -> bytes:
    """Read a whole file of up to `largest` bytes; StudioFileError when that is not possible."""
    try:
        with path.open("rb") as source:
            data = source.read(largest + 1)
    except OSError as error:
        raise StudioFileError(
            translate("files", "{path} cannot be read: {error}.").format(
                path=path, error=_cause(error)
            )
        ) from error
    if len(data) > largest:
        raise StudioFileError(
            translate("files", "{path} is larger than {size} MiB, which is too large.").format(
                path=path, size=largest // 2**20
            )
        )
    return data


def _cause(error: OSError) -> str:
    return (error.strerror or "the system refuses it").lower()
