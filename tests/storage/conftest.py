"""What the tests of this room share: studios, and a studio file."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.storage.studio_file import create_studio
from tests.storage.any_studio import any_studio
from tests.storage.full_studio import full_studio as make_full_studio

if TYPE_CHECKING:
    from pathlib import Path

    from hypothesis import strategies as st

    from studio_planner.craft.studio import Studio


@pytest.fixture(scope="session")
def studios() -> st.SearchStrategy[Studio]:
    """A strategy for studios of every kind."""
    return any_studio()


@pytest.fixture(scope="session")
def full_studio() -> Studio:
    """A studio in which every field of every noun is used."""
    return make_full_studio()


@pytest.fixture
def studio_path(tmp_path: Path, full_studio: Studio) -> Path:
    """A studio file on disk that nobody has open."""
    path = tmp_path / "full.studio"
    create_studio(path, full_studio).close()
    return path
