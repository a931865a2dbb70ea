"""How a calendar file gets onto a phone, step by step, for each family of phones.

Common practice; what menus are called differs between versions. What phones leave out was read
in the public trackers of calendar programs: some update an event only when it is imported into
the same calendar, and calendars that are subscribed to often drop the alarms.
"""

from __future__ import annotations

from dataclasses import dataclass

from studio_planner.craft.tongue import marked, translate


@dataclass(frozen=True, slots=True)
class PhoneFamily:
    """A family of phones and the steps on it, in the language that is spoken."""

    name: str
    steps: tuple[str, ...]


_FAMILIES = (
    (
        marked("phones", "iPhone and iPad"),
        (
            marked("phones", "Send the file to yourself, by mail or through a shared folder."),
            marked("phones", "Tap it and choose to add all events."),
            marked("phones", "Choose a calendar of its own, such as Studio: make it first."),
            marked(
                "phones",
                "After the plan has changed, do the same again into the same calendar. Where "
                "old events stay, delete that calendar and import once more.",
            ),
        ),
    ),
    (
        marked("phones", "Android, with a calendar on the phone"),
        (
            marked("phones", "Copy the file to the phone and tap it."),
            marked("phones", "Choose to import it, into a calendar of its own."),
            marked("phones", "Look that its notifications are on in the calendar's settings."),
            marked(
                "phones",
                "After the plan has changed, import again; where events come twice, delete "
                "that calendar first.",
            ),
        ),
    ),
    (
        marked("phones", "Android, with a calendar in an account"),
        (
            marked("phones", "On a computer, open that account's calendar in the browser."),
            marked("phones", "Make a calendar of its own, and import the file into it."),
            marked(
                "phones",
                "Set that calendar's own default notification: alarms of a file are often "
                "dropped there.",
            ),
            marked("phones", "On the phone, switch that calendar on and let it synchronise."),
        ),
    ),
)
_FIRST = marked("phones", "First try the test event: it shows whether this phone rings at all.")


def phone_families() -> tuple[PhoneFamily, ...]:
    """Every family of phones, with its steps."""
    return tuple(
        PhoneFamily(
            translate("phones", name),
            (translate("phones", _FIRST), *(translate("phones", step) for step in steps)),
        )
        for name, steps in _FAMILIES
    )
