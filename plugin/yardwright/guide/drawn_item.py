"""A part of a page as an item of QGIS's layouts: a drawing in millimetres that the course gave, kept with the
layout, so that a layout that is opened again shows it without the course.

QGIS imports this at its start: what draws is imported where it is used.
"""

import json
from dataclasses import fields, is_dataclass

from qgis.core import (
    QgsApplication,
    QgsLayoutItem,
    QgsLayoutItemAbstractMetadata,
    QgsLayoutItemRegistry,
)
from qgis.PyQt.QtCore import QRectF, Qt
from qgis.PyQt.QtGui import QColor, QPen

from ..model.words import said, say, to_say
from ..resources import icon

TYPE = QgsLayoutItemRegistry.ItemType.PluginItem + 4117
"""The number by which layouts know this kind of item; it stands in saved layouts and must stay."""

PARTS = {
    "overlay": to_say("Figures over the hole’s picture"),
    "ladder": to_say("Distance ladder"),
    "green": to_say("The green at a true scale"),
    "notes": to_say("Legend, and lines for notes"),
    "scorecard": to_say("Scorecard"),
    "overview": to_say("Holes of the course"),
    "pins": to_say("Pins of a round"),
    "lines": to_say("Lines to write on"),
    "cover": to_say("Ground of the cover"),
    "head": to_say("Head of the hole’s page"),
    "foot": to_say("Foot of the hole’s page"),
    "flow": to_say("Text that flows over pages"),
}
"""What drawn parts show, by the id of their item; others are called by their id."""

_DRAWING, _SHAPE = "drawing", "keepsShape"
_NAME = "yardwright_drawn_item"
"""The property of the application that holds what was registered."""


_alive = {}
"""The items there are, by a number: nobody else in Python holds on to them when their layout is QGIS's own,
and one that Python has let go of paints nothing any more."""


class DrawnItem(QgsLayoutItem):
    """Paints a Drawing (width, height, items and places in millimetres, see ``sheet_parts``).

    The drawing is stretched to the item, as the picture beneath it is; one that ``keeps_shape`` is laid in
    the item's middle as large as it goes, its proportions kept: a green must not be wider than it is.
    """

    def __init__(self, layout):
        super().__init__(layout)
        self._drawing = None
        self._text = ""
        self._keeps_shape = False
        number = id(self)
        _alive[number] = self
        self.destroyed.connect(lambda: _alive.pop(number, None))

    @property
    def drawing(self):
        """The drawing; None without one."""
        return self._drawing

    @drawing.setter
    def drawing(self, drawing):
        self._drawing, self._text = drawing, ""
        self.invalidateCache()
        self.update()

    @property
    def keeps_shape(self):
        """Whether its proportions are kept."""
        return self._keeps_shape

    @keeps_shape.setter
    def keeps_shape(self, keeps):
        self._keeps_shape = bool(keeps)
        self.invalidateCache()
        self.update()

    @property
    def what(self):
        """What it shows, in a few words."""
        return said(PARTS.get(self.id(), "")) or self.id() or say("A drawn part")

    def type(self):
        return TYPE

    def icon(self):
        return icon("yardwright")

    def displayName(self):
        return self.what

    def draw(self, context):
        rendering = context.renderContext()
        painter = rendering.painter()
        dpi = rendering.scaleFactor() * 25.4
        # Letters have a size in points, which Qt turns into dots by what the painter's device says of itself;
        # in the designer that is the screen, whatever the layout is magnified to.
        own = painter.device().logicalDpiY()
        size = self.rect().size()
        painter.save()
        painter.scale(dpi / own, dpi / own)
        if self._drawing is not None:
            self._draw(painter, own, size)
        elif self.layout().renderContext().isPreviewRender():
            self._say_what(painter, own, size)
        painter.restore()

    def _draw(self, painter, dpi, size):
        from .painted_sheets import paint

        drawing = self._drawing
        across, down = size.width() / drawing.width, size.height() / drawing.height
        if self._keeps_shape:
            across = down = min(across, down)
        per_mm = dpi / 25.4
        painter.translate(
            (size.width() - across * drawing.width) / 2 * per_mm,
            (size.height() - down * drawing.height) / 2 * per_mm,
        )
        painter.scale(across, down)
        paint(drawing, painter, dpi)

    def _say_what(self, painter, dpi, size):
        from .lettering import font_of
        from .sheet_parts import HAIR, SOFT

        per_mm = dpi / 25.4
        frame = QRectF(0.0, 0.0, size.width() * per_mm, size.height() * per_mm)
        pen = QPen(QColor(HAIR), 0.3 * per_mm, Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.drawRect(frame)
        painter.setPen(QPen(QColor(SOFT)))
        painter.setFont(font_of(8.0))
        text = say("{part}: drawn when the page is made", part=self.what)
        painter.drawText(frame, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, text)

    def writePropertiesToElement(self, element, document, context):
        element.setAttribute(_SHAPE, "1" if self._keeps_shape else "0")
        if self._drawing is not None:
            # QGIS asks for it at every step that can be undone.
            self._text = self._text or as_text(self._drawing)
            element.setAttribute(_DRAWING, self._text)
        return True

    def readPropertiesFromElement(self, element, document, context):
        self._keeps_shape = element.attribute(_SHAPE, "0") == "1"
        self._text = ""
        try:
            self._drawing = from_text(element.attribute(_DRAWING)) if element.hasAttribute(_DRAWING) else None
        except ValueError:
            # Made by another version, or by hand: the page is drawn anew from the course anyway.
            self._drawing = None
        return True


def as_text(drawing):
    """A drawing as JSON; what a drawing is made of is told by the names of ``sheet_parts``."""
    return json.dumps(
        {
            "width": drawing.width,
            "height": drawing.height,
            "items": [_plain(item) for item in drawing.items],
            "places": [_plain(place) for place in drawing.places],
        },
        ensure_ascii=False,
        separators=(",", ":"),
    )


def from_text(text):
    """The drawing of ``as_text``, as a ``sheet_parts.Page``. Raises ValueError when it is none."""
    from . import sheet_parts

    kinds = {name: kind for name, kind in vars(sheet_parts).items() if is_dataclass(kind)}
    try:
        read = json.loads(text)
        width, height = float(read["width"]), float(read["height"])
        items, places = (tuple(_value(kinds, one) for one in read[name]) for name in ("items", "places"))
    except (KeyError, TypeError, AttributeError, ValueError) as error:
        raise ValueError("not a drawing") from error
    if not (width > 0 and height > 0):
        raise ValueError("not a drawing")
    return sheet_parts.Page(width, height, items, places)


def _plain(item):
    return {"is": type(item).__name__, **{one.name: getattr(item, one.name) for one in fields(item)}}


def _value(kinds, read):
    values = {name: _in_tuples(value) for name, value in read.items() if name != "is"}
    return kinds[read["is"]](**values)


def _in_tuples(value):
    return tuple(_in_tuples(one) for one in value) if isinstance(value, list) else value


class _Metadata(QgsLayoutItemAbstractMetadata):
    """How QGIS makes such an item, ``makes(layout)``."""

    def __init__(self, makes):
        super().__init__(TYPE, say("Part of a yardage guide"))
        self.makes = makes

    def createItem(self, layout):
        return self.makes(layout)


def register_drawn_item():
    """Let QGIS's layouts know of the item.

    QGIS has no way to take a kind of item away again, and need not have: an open layout would lose its parts.
    What was registered stays, therefore, and makes the items of the version of the plugin loaded last.
    """
    application = QgsApplication.instance()
    registered = application.property(_NAME)
    if registered is not None:
        registered.makes = DrawnItem
        return
    metadata = _Metadata(DrawnItem)
    if QgsApplication.layoutItemRegistry().addLayoutItemType(metadata):
        application.setProperty(_NAME, metadata)
