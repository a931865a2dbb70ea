"""What a maker has typed and what was wrong with it, kept while another coat is looked at."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.piece_pages.colours_field import ColoursField

if TYPE_CHECKING:
    from studio_planner.desktop.forms.field import Field
    from studio_planner.desktop.forms.form import Form


@dataclass(frozen=True, slots=True)
class Typed:
    """The fields of a form as typed, each with what is said to be wrong with it."""

    fields: dict[str, tuple[Any, str]]


def typed_in(form: Form) -> Typed | None:
    """What stands in a form; None when nothing of it is wrong."""
    if not any(field.wrong for field in form.fields.values()):
        return None
    return Typed({name: (_raw(field), field.wrong) for name, field in form.fields.items()})


def type_again(form: Form, typed: Typed) -> None:
    """Put what was typed back into a form, and what was wrong with it."""
    for name, (raw, wrong) in typed.fields.items():
        field = form.fields[name]
        _put(field, raw)
        if wrong:
            field.say_wrong(wrong)


def _raw(field: Field) -> Any:  # noqa: ANN401 - each field has its own kind of value
    if isinstance(field, NumberField):
        return field.editor.text()
    return field.texts if isinstance(field, ColoursField) else field.value()


def _put(field: Field, raw: Any) -> None:  # noqa: ANN401 - likewise
    if isinstance(field, NumberField):
        field.editor.setText(raw)
    elif isinstance(field, ColoursField):
        field.show_texts(raw)
    else:
        field.show_value(raw)
