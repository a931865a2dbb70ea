"""What holds for every test: no real screen, no chance on a build machine, no lost warning."""

from __future__ import annotations

import logging
import os
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, settings

if TYPE_CHECKING:
    from collections.abc import Iterator

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

for name, examples in (("quick", 30), ("ci", 40), ("wild", 2000)):
    settings.register_profile(
        name,
        max_examples=examples,
        deadline=None,
        derandomize=name == "ci",
        print_blob=True,
        suppress_health_check=[HealthCheck.too_slow],
    )
settings.load_profile("ci" if os.environ.get("CI") else "quick")

NEEDS_A_WINDOW = {"qapp", "qtbot"}


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark each test that opens a window, so that ``-m "not gui"`` leaves it out."""
    for item in items:
        if NEEDS_A_WINDOW.intersection(getattr(item, "fixturenames", ())):
            item.add_marker("gui")


@pytest.fixture(autouse=True)
def _no_unexpected_warning_in_the_log(
    request: pytest.FixtureRequest, caplog: pytest.LogCaptureFixture
) -> Iterator[None]:
    yield
    if request.node.get_closest_marker("logs"):
        return
    records = [*caplog.get_records("setup"), *caplog.get_records("call")]
    loud = [record.getMessage() for record in records if record.levelno >= logging.WARNING]
    if loud:
        pytest.fail("\n".join(["Unexpected in the log (mark the test `logs`?):", *loud]))
