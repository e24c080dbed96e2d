"""A page of the guide as a layout of QGIS: a template, and what the course and the event put into it."""

import os
from dataclasses import dataclass, field

from qgis.core import QgsExpressionContextUtils, QgsLayoutItemLabel, QgsLayoutItemPicture

from ..compat import font_of_label, layout_millimetres, set_font_of_label
from ..model.errors import YardwrightError
from ..model.remarks import Remark
from ..model.words import say
from .drawn_item import DrawnItem
from .expressions import worked_out
from .page_templates import GIVEN, SIZE, empty_layout, items_of
from .text_room import fitting_size, missing_letters


@dataclass(frozen=True)
class PageContent:
    """What is put into a template.

    variables: ``{name: value}``, which labels read as ``@name``. pictures: ``{id: path}``, drawings: ``{id:
    Drawing}``; instead of either there may be a function of the part's width and height in mm that gives it,
    for a template says how large its parts are. about: what pictures and drawings are made from and
    labels look up, by which a page is known again without making it (see ``page_cache.page_key``).
    """

    variables: dict = field(default_factory=dict)
    pictures: dict = field(default_factory=dict)
    drawings: dict = field(default_factory=dict)
    about: object = None


def layout_of(project, template, content, remarks=None):
    """A QgsPrintLayout of a Template with a PageContent in it, its texts fitted into their boxes.

    It belongs to the caller and is in no list of the project. remarks: a list to which is added what a user
    should know: a text that is too long, letters that no font has, expressions that fail. To be called in
    QGIS's main thread. Raises YardwrightError when the template cannot be read.
    """
    try:
        layout = empty_layout(project, template)
    except ValueError as error:
        raise YardwrightError(
            say("The template “{path}” cannot be used: {reason}.", path=template.path, reason=error),
            say("Keep the page as the course’s template again, or take the built-in one."),
        ) from error
    fill(layout, content)
    told = fit_texts(layout)
    # What was put in is no step that a person could undo in the designer.
    layout.undoStack().stack().clear()
    if remarks is not None:
        remarks.extend([*template.remarks, *told])
    return layout


def fill(layout, content):
    """Put a PageContent into a layout: variables, pictures, drawings. Parts without any stay empty."""
    QgsExpressionContextUtils.setLayoutVariables(layout, dict(content.variables))
    # Before there is anything in it: QGIS writes every item down, thrice, as if somebody had changed it.
    layout.refresh()
    boxes = frames_of(layout)
    for picture in items_of(layout, QgsLayoutItemPicture):
        if picture.id() in content.pictures:
            path = _made(content.pictures[picture.id()], boxes[picture.id()])
            picture.setPicturePath(seen_anew(path) if path else "")
            picture.setCustomProperty(GIVEN, True)
    for item in items_of(layout, DrawnItem):
        if item.id() in content.drawings:
            item.drawing = _made(content.drawings[item.id()], boxes[item.id()])


def frames_of(layout):
    """``{id: (left, top, width, height)}`` in mm of the items that have an id, turned ones as if they were
    not."""
    unit = layout_millimetres()
    boxes = {}
    for item in items_of(layout):
        if item.id():
            values = item.pos().x(), item.pos().y(), item.rect().width(), item.rect().height()
            boxes[item.id()] = tuple(layout.convertFromLayoutUnits(value, unit).length() for value in values)
    return boxes


def fit_texts(layout):
    """Set each label as small as its text needs, down to 6 points; the Remarks on what is not right even so.

    code of a remark: ``long``, ``letters`` or ``expression``.
    """
    remarks = []
    boxes = frames_of(layout)
    for label in items_of(layout, QgsLayoutItemLabel):
        text, errors = worked_out(label.text(), label.createExpressionContext())
        remarks += [Remark(_on(label, error), "expression") for error in errors]
        remarks += _fit(label, text, boxes.get(label.id()) or _box(label))
    return tuple(remarks)


def texts_of(layout):
    """``{id: text}`` of the labels as they are printed."""
    return {
        label.id(): worked_out(label.text(), label.createExpressionContext())[0]
        for label in items_of(layout, QgsLayoutItemLabel)
    }


def _fit(label, text, box):
    remarks = []
    if label.mode() == QgsLayoutItemLabel.Mode.ModeFont and text:
        font = font_of_label(label)
        wish = float(label.customProperty(SIZE) or font.pointSizeF())
        room = box[2] - 2 * label.marginX(), box[3] - 2 * label.marginY()
        size, left = fitting_size(text, room, wish, font.bold())
        if size != wish or label.customProperty(SIZE) is not None:
            label.setCustomProperty(SIZE, wish)
            font.setPointSizeF(size)
            set_font_of_label(label, font)
        if left < 0:
            told = (
                say("the text is one line too long")
                if left == -1
                else say("the text is {count} lines too long", count=-left)
            )
            remarks.append(Remark(_on(label, told), "long"))
    lacking = missing_letters(text)
    if lacking:
        told = say("no font here has the letters {letters}", letters=" ".join(lacking[:20]))
        remarks.append(Remark(_on(label, told), "letters"))
    return remarks


def _on(label, told):
    return say("“{part}”: {told}", part=label.id() or label.displayName(), told=told)


def _box(label):
    return 0.0, 0.0, label.rect().width(), label.rect().height()


def _made(given, box):
    return given(box[2], box[3]) if callable(given) else given


_seen: dict = {}


def seen_anew(path):
    """The path of a picture, written in another way when the file has changed: QGIS shows what it has read
    under a path before, for a while."""
    path = os.path.abspath(path)
    try:
        state = os.stat(path)
    except OSError:
        return path
    stamp = state.st_mtime_ns, state.st_size
    times, last = _seen.get(path, (0, stamp))
    times += stamp != last
    _seen[path] = times, stamp
    folder, name = os.path.split(path)
    return os.path.join(folder, *["."] * times, name)
