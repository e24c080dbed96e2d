"""Templates of the guide's pages: built in, or the course's own, layouts of QGIS kept beside the course."""

import hashlib
import os
import shutil
from dataclasses import dataclass

from qgis.core import (
    QgsLayoutItem,
    QgsLayoutItemLabel,
    QgsLayoutItemPicture,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsPathResolver,
    QgsPrintLayout,
    QgsProject,
    QgsReadWriteContext,
)
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor
from qgis.PyQt.QtXml import QDomDocument

from ..compat import font_of_label, layout_millimetres, set_font_of_label
from ..model.errors import YardwrightError
from ..model.remarks import Remark
from ..model.words import and_list, say
from ..store.course_file import course_path
from ..store.files import written_beside
from .drawn_item import DrawnItem, register_drawn_item
from .lettering import font_of
from .page_design import KINDS, DrawnPart, PicturePart, TextPart, parts_of, title_of

DESIGN = 1
"""Raised when the built-in pages look otherwise than before."""

KIND, SIZE, GIVEN = "yardwright/kind", "yardwright/size", "yardwright/given"
"""Custom properties: the kind of a layout; the size a label is set at where there is room; an item of which
something was given by the course, and is not the template's own."""

_SLACK = 0.2
"""A template is taken for one of a page's size when it is so many millimetres off."""

_ALIGN = {
    "left": Qt.AlignmentFlag.AlignLeft,
    "centre": Qt.AlignmentFlag.AlignHCenter,
    "right": Qt.AlignmentFlag.AlignRight,
}
_LEVEL = {
    "top": Qt.AlignmentFlag.AlignTop,
    "middle": Qt.AlignmentFlag.AlignVCenter,
    "bottom": Qt.AlignmentFlag.AlignBottom,
}


@dataclass(frozen=True)
class Template:
    """What pages of a kind are made from. size: (width, height) mm of the trimmed page. path: of the course's
    own, "" built in. data: its bytes, b"" built in. frames: see ``page_design.parts_of``. remarks: why the
    course's own is not used."""

    kind: str
    size: tuple
    path: str = ""
    data: bytes = b""
    frames: tuple = ()
    remarks: tuple = ()

    @property
    def key(self):
        """What tells it from other templates, whatever they are called."""
        own = hashlib.sha256(self.data).hexdigest() if self.path else ("built-in", DESIGN, self.frames)
        return self.kind, self.size, own


def built_in(kind, size, frames=None, remarks=()):
    """The built-in Template; frames: a dict of boxes."""
    return Template(kind, tuple(size), frames=tuple(sorted((frames or {}).items())), remarks=tuple(remarks))


def template_path(kind, place):
    """Where a course keeps its own template of a kind of page."""
    return os.path.join(guide_folder(place), f"{kind}.qpt")


def guide_folder(place):
    """Where what belongs to a course's guide is kept, beside the course file; it need not be there."""
    return os.path.splitext(course_path(place))[0] + "_guide"


def template_of(kind, place, size, frames=None):
    """The course's own Template of a kind of page, else the built-in one.

    A template that cannot be used is told in the remarks of the built-in one, which is taken instead.
    """
    path = template_path(kind, place)
    try:
        with open(path, "rb") as file:
            data = file.read()
    except FileNotFoundError:
        return built_in(kind, size, frames)
    except OSError as error:
        return built_in(kind, size, frames, [_unused(path, error.strerror)])
    own = Template(kind, tuple(size), path, data)
    try:
        lacking = _unfit(own)
    except ValueError as error:
        lacking = str(error)
    return built_in(kind, size, frames, [_unused(path, lacking)]) if lacking else own


def empty_layout(project, template):
    """A QgsPrintLayout of a template, nothing filled in. Raises ValueError when it cannot be read."""
    register_drawn_item()
    layout = QgsPrintLayout(project)
    if template.path:
        _read(layout, template)
    else:
        _build(layout, template)
    layout.setCustomProperty(KIND, template.kind)
    return layout


def keep_template(layout, kind, place):
    """Keep a layout as the course's own template of a kind of page; its path.

    What the page shows of the course is left out: drawings, pictures given, variables. Raises YardwrightError
    when parts are lacking that such a page needs, or the file cannot be written; the old one stays then.
    """
    lacking = _lacking(layout, kind)
    if lacking:
        raise YardwrightError(
            say("The page lacks {parts}.", parts=and_list(lacking)),
            say("Undo what took them away, or give other items these ids."),
        )
    path = template_path(kind, place)
    bare = layout.clone()
    _empty(bare)
    bare.setCustomProperty(KIND, kind)
    bare.setName(title_of(kind))
    context = QgsReadWriteContext()
    context.setPathResolver(QgsPathResolver(path))
    made = not os.path.isdir(os.path.dirname(path))
    try:
        os.makedirs(os.path.dirname(path), exist_ok=True)
        with written_beside(path) as draft:
            if not bare.saveAsTemplate(draft, context) or not _whole(draft):
                raise _unwritable(path, say("the disk may be full"))
    except OSError as error:
        raise _unwritable(path, error.strerror) from error
    except YardwrightError:
        if made:
            shutil.rmtree(os.path.dirname(path), ignore_errors=True)
        raise
    return path


def drop_template(kind, place):
    """Take the built-in page of a kind again; the course's own is kept beside it as ``….qpt~``. Whether there
    was one."""
    path = template_path(kind, place)
    try:
        os.replace(path, path + "~")
    except FileNotFoundError:
        return False
    except OSError as error:
        raise _unwritable(path, error.strerror) from error
    return True


def items_of(layout, kind=QgsLayoutItem):
    """The layout's items of a class."""
    return [item for item in layout.items() if isinstance(item, kind)]


# Reading


def _read(layout, template):
    document = QDomDocument()
    done = document.setContent(template.data)
    if not (done[0] if isinstance(done, tuple) else bool(done)):
        raise ValueError(say("it is no whole XML file"))
    context = QgsReadWriteContext()
    context.setPathResolver(QgsPathResolver(template.path))
    items, done = layout.loadFromTemplate(document, context)
    if not done or not layout.pageCollection().pageCount():
        raise ValueError(say("it is no layout of QGIS"))


def _unfit(template):
    """Why a template of the course's own cannot be used, "" when it can."""
    project = QgsProject()  # outlives the layout, which looks at it to its end
    layout = empty_layout(project, template)
    lacking, size = _lacking(layout, template.kind), page_size(layout)
    del layout
    if lacking:
        return say("it lacks {parts}", parts=and_list(lacking))
    if any(abs(own - asked) > _SLACK for own, asked in zip(size, template.size)):
        return say(
            "it is made for pages of {own}, and these are {asked}",
            own=_said(size),
            asked=_said(template.size),
        )
    return ""


def page_size(layout):
    """(width, height) of a layout's first page, mm."""
    size = layout.pageCollection().page(0).rect()
    return tuple(
        layout.convertFromLayoutUnits(side, layout_millimetres()).length()
        for side in (size.width(), size.height())
    )


def _lacking(layout, kind):
    """The ids of what such a page needs and has not, as it is needed: a picture, a drawing, a label."""
    there = {
        class_: {item.id() for item in items_of(layout, class_)}
        for class_ in (QgsLayoutItemPicture, DrawnItem, QgsLayoutItemLabel)
    }
    built = {part.id: type(part) for part in parts_of(kind, (107.95, 177.8))}
    return [f"“{name}”" for name in KINDS[kind].needs if name not in there[_ITEM[built[name]]]]


def _whole(path):
    with open(path, "rb") as file:
        document = QDomDocument()
        done = document.setContent(file.read())
    return done[0] if isinstance(done, tuple) else bool(done)


def _empty(layout):
    for item in items_of(layout):
        if isinstance(item, DrawnItem):
            item.drawing = None
        elif isinstance(item, QgsLayoutItemPicture) and item.customProperty(GIVEN):
            item.setPicturePath("")
        elif isinstance(item, QgsLayoutItemLabel) and item.customProperty(SIZE) is not None:
            font = font_of_label(item)
            font.setPointSizeF(float(item.customProperty(SIZE)))
            set_font_of_label(item, font)
            item.removeCustomProperty(SIZE)
        item.removeCustomProperty(GIVEN)
    for name in ("variableNames", "variableValues"):
        layout.removeCustomProperty(name)


def _said(size):
    return say("{width} x {height} mm", width=f"{size[0]:.1f}", height=f"{size[1]:.1f}")


def _unused(path, reason):
    return Remark(
        say(
            "The course’s own template “{path}” is not used: {reason}. The built-in page is taken.",
            path=path,
            reason=reason,
        ),
        "template",
    )


def _unwritable(path, reason):
    return YardwrightError(
        say("“{path}” cannot be written ({reason}).", path=path, reason=reason),
        say("Check that there is room on the disk, and that you may write beside the course."),
    )


# Building


def _build(layout, template):
    layout.initializeDefaults()
    unit = layout_millimetres()
    layout.pageCollection().page(0).setPageSize(QgsLayoutSize(*template.size, unit))
    for part in parts_of(template.kind, template.size, dict(template.frames)):
        item = _BUILD[type(part)](layout, part)
        item.setId(part.id)
        left, top, width, height = part.box
        item.attemptMove(QgsLayoutPoint(left, top, unit))
        item.attemptResize(QgsLayoutSize(width, height, unit))
        ground = getattr(part, "ground", "")
        item.setBackgroundEnabled(bool(ground))
        if ground:
            item.setBackgroundColor(QColor(ground))
        item.setFrameEnabled(False)
        layout.addLayoutItem(item)


def _label(layout, part):
    label = QgsLayoutItemLabel(layout)
    label.setText(part.text)
    set_font_of_label(label, font_of(part.size, part.bold), QColor(part.tone))
    label.setHAlign(_ALIGN[part.align])
    label.setVAlign(_LEVEL[part.level])
    label.setMarginX(0.0)
    label.setMarginY(0.0)
    return label


def _picture(layout, part):
    picture = QgsLayoutItemPicture(layout)
    mode = QgsLayoutItemPicture.ResizeMode
    picture.setResizeMode(mode.Stretch if part.stretched else mode.Zoom)
    picture.setPictureAnchor(QgsLayoutItem.ReferencePoint.Middle)
    return picture


def _drawn(layout, part):
    item = DrawnItem(layout)
    item.keeps_shape = part.keeps_shape
    return item


_BUILD = {TextPart: _label, PicturePart: _picture, DrawnPart: _drawn}
_ITEM = {TextPart: QgsLayoutItemLabel, PicturePart: QgsLayoutItemPicture, DrawnPart: DrawnItem}
