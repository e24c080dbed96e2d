"""The symbol of each kind: our own drawings, made to be read over aerial images, bright or dark.

Each line is a light core on a dark casing, so that it stands out whatever lies below, and each kind has
a pattern or a shape of its own, so that it is known without its colour. Areas stay open: an outline, and
a sparse pattern where the outline does not tell enough.
"""

import base64
import os

from qgis.core import (
    QgsFillSymbol,
    QgsLinePatternFillSymbolLayer,
    QgsLineSymbol,
    QgsMapUnitScale,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPointPatternFillSymbolLayer,
    QgsProperty,
    QgsRuleBasedRenderer,
    QgsSimpleFillSymbolLayer,
    QgsSimpleLineSymbolLayer,
    QgsSimpleMarkerSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSvgMarkerSymbolLayer,
    QgsSymbolLayer,
    QgsUnitTypes,
)
from qgis.PyQt.QtGui import QColor

from ..model.words import said, to_say
from ..resources import FOLDER

INK = "#14181c"
WHITE = "#ffffff"
CREAM = "#f6ecd2"
ICE = "#a9ecff"
SAND = "#ffd98f"
LILAC = "#e7c2ff"
MIST = "#d4d6d8"
LEAF = "#e3eeb6"
WATER = "#6cc0ff"
AMBER = "#ffb627"
ROSE = "#ff8fc7"
YELLOW = "#ffe24a"
RED = "#ff6152"


def renderer_of(kind):
    """A new QgsFeatureRenderer for a kind's name; None for a table."""
    if kind == "penalty_area":
        return _penalty_areas()
    make = _SYMBOLS.get(kind)
    return QgsSingleSymbolRenderer(make()) if make else None


def colour_text(colour, opacity=1.0):
    """A colour as symbol properties write it: ``r,g,b,a``."""
    colour = QColor(colour)
    return f"{colour.red()},{colour.green()},{colour.blue()},{round(255 * opacity)}"


def _symbol(of_type, layers):
    """A symbol of some layers, lowest first. Built this way for the constructor does not keep them alive."""
    symbol = of_type()
    symbol.changeSymbolLayer(0, layers[0])
    for layer in layers[1:]:
        symbol.appendSymbolLayer(layer)
    return symbol


def _core(colour, width, dash=None, offset=0.0, cap="flat"):
    properties = {
        "line_color": colour_text(colour),
        "line_width": str(width),
        "line_width_unit": "MM",
        "joinstyle": "round",
        "capstyle": cap,
        "offset": str(offset),
        "offset_unit": "MM",
    }
    if dash:
        properties.update(use_custom_dash="1", customdash=dash, customdash_unit="MM")
    return QgsSimpleLineSymbolLayer.create(properties)


def _casing(width, opacity=0.72, offset=0.0):
    layer = _core(INK, width, offset=offset, cap="round")
    layer.setColor(QColor.fromRgbF(*QColor(INK).getRgbF()[:3], opacity))
    return layer


def _tint(colour, opacity):
    return QgsSimpleFillSymbolLayer.create({"color": colour_text(colour, opacity), "outline_style": "no"})


def _marker(shape, colour, size, outline=0.3):
    return QgsSimpleMarkerSymbolLayer.create(
        {
            "name": shape,
            "color": colour_text(colour),
            "outline_color": colour_text(INK, 0.85),
            "outline_width": str(outline),
            "size": str(size),
        }
    )


def _drawing(name, colour, size):
    """One of our SVG drawings, held in the style itself so that a course file needs no other file."""
    with open(os.path.join(FOLDER, "symbols", f"{name}.svg"), "rb") as file:
        content = base64.b64encode(file.read()).decode("ascii")
    layer = QgsSvgMarkerSymbolLayer(f"base64:{content}", size)
    layer.setFillColor(QColor(colour))
    layer.setStrokeColor(QColor(INK))
    return layer


def _along(marker_layer, interval=None, place="interval", offset=0.0, rotate=True):
    """A marker along a line: every ``interval`` mm, or at ``place`` (``vertex``, ``firstvertex``...)."""
    line = QgsMarkerLineSymbolLayer.create(
        {
            "placement": place,
            "interval": str(interval or 3),
            "interval_unit": "MM",
            "offset": str(offset),
            "offset_unit": "MM",
            "rotate": "1" if rotate else "0",
        }
    )
    line.setSubSymbol(_symbol(QgsMarkerSymbol, [marker_layer]))
    return line


def _dots(marker_layer, across, down, shifted=True):
    """A sparse pattern of markers over an area, every other row shifted by half; distances in mm."""
    pattern = QgsPointPatternFillSymbolLayer()
    pattern.setDistanceX(across)
    pattern.setDistanceY(down)
    pattern.setDisplacementX(across / 2 if shifted else 0)
    pattern.setSubSymbol(_symbol(QgsMarkerSymbol, [marker_layer]))
    return pattern


def _hatch(colour, angle, distance, width=0.3, casing=0.0):
    pattern = QgsLinePatternFillSymbolLayer()
    pattern.setLineAngle(angle)
    pattern.setDistance(distance)
    layers = [_casing(casing, 0.55)] if casing else []
    pattern.setSubSymbol(_symbol(QgsLineSymbol, [*layers, _core(colour, width)]))
    return pattern


def _hole():
    return _symbol(
        QgsLineSymbol,
        [
            _casing(1.25),
            _core(WHITE, 0.5, cap="round"),
            _along(_marker("circle", INK, 1.9, 0.0), place="vertex"),
            _along(_marker("circle", WHITE, 1.2, 0.0), place="vertex"),
            _along(_marker("square", WHITE, 2.3, 0.45), place="firstvertex"),
            _along(_marker("circle", WHITE, 2.9, 0.45), place="lastvertex"),
            _along(_marker("circle", INK, 1.1, 0.0), place="lastvertex"),
        ],
    )


def _tee():
    return _symbol(QgsFillSymbol, [_hatch(LILAC, 45, 1.3, 0.22, 0.5), _casing(1.1), _core(LILAC, 0.5)])


def _plate():
    return _symbol(QgsMarkerSymbol, [_drawing("plate", LILAC, 4.6)])


def _green():
    return _symbol(
        QgsFillSymbol,
        [
            _tint(ICE, 0.10),
            _casing(1.0, offset=0.0),
            _casing(0.8, offset=1.0),
            _core(ICE, 0.5),
            _core(ICE, 0.25, offset=1.0),
        ],
    )


def _apron():
    return _symbol(QgsFillSymbol, [_casing(1.0, 0.6), _core(ICE, 0.5, "0.02;1.1", cap="round")])


def _fairway():
    return _symbol(QgsFillSymbol, [_casing(1.0, 0.62), _core(CREAM, 0.4)])


def _bunker():
    return _symbol(
        QgsFillSymbol,
        [
            _tint(SAND, 0.12),
            _dots(_marker("circle", SAND, 0.75, 0.22), 1.9, 1.6),
            _casing(1.0),
            _core(SAND, 0.45),
        ],
    )


def _rough():
    return _symbol(QgsFillSymbol, [_casing(0.8, 0.5), _core(MIST, 0.35, "3.4;1.8")])


def _trees():
    return _symbol(
        QgsFillSymbol, [_tint(LEAF, 0.07), _along(_drawing("scallop", LEAF, 2.6), 2.15, offset=0.0)]
    )


def _tree():
    crown = _drawing("tree", LEAF, 6)
    crown.setSizeUnit(QgsUnitTypes.RenderUnit.RenderMetersInMapUnits)
    limits = QgsMapUnitScale()
    limits.minSizeMMEnabled = True
    limits.minSizeMM = 2.2
    crown.setSizeMapUnitScale(limits)
    crown.setDataDefinedProperty(
        QgsSymbolLayer.Property.PropertySize,
        QgsProperty.fromExpression('if("crown_radius_m" > 0, 2 * "crown_radius_m", 6)'),
    )
    return _symbol(QgsMarkerSymbol, [crown])


def _path():
    return _symbol(QgsLineSymbol, [_casing(1.15, 0.6), _core(MIST, 0.6, "1.5;0.8")])


def _boundary():
    return _symbol(
        QgsLineSymbol,
        [
            _casing(0.95),
            _core(WHITE, 0.3),
            _along(_marker("cross2", INK, 1.9, 0.9), 8),
            _along(_white_cross(1.5), 8),
        ],
    )


def _white_cross(size):
    cross = _marker("cross2", WHITE, size, 0.4)
    cross.setStrokeColor(QColor(WHITE))
    return cross


def _distance_marker():
    return _symbol(QgsMarkerSymbol, [_drawing("marker", WHITE, 5)])


def _target():
    return _symbol(QgsMarkerSymbol, [_drawing("target", AMBER, 5.2)])


def _field_note():
    return _symbol(QgsMarkerSymbol, [_drawing("field_note", MIST, 5.0)])


def _image():
    return _symbol(QgsFillSymbol, [_casing(0.75, 0.65), _core(WHITE, 0.3, "5;1;0.4;1")])


def _patch():
    return _symbol(
        QgsFillSymbol, [_hatch(WHITE, 135, 6, 0.15, 0.4), _casing(0.75, 0.65), _core(WHITE, 0.3, "1;1")]
    )


def _window():
    return _symbol(
        QgsFillSymbol,
        [
            _casing(0.8),
            _core(AMBER, 0.35, "6;1.5"),
            _along(_marker("square", AMBER, 1.6, 0.35), place="vertex"),
        ],
    )


def _pin():
    flag = _drawing("pin", ROSE, 7)
    # The drawing's foot, not its middle, stands on the point.
    flag.setVerticalAnchorPoint(QgsSvgMarkerSymbolLayer.VerticalAnchorPoint.Bottom)
    return _symbol(QgsMarkerSymbol, [flag])


def _penalty_area(colour, post):
    """Waves where it is water, wide level lines where not; posts along the edge of a shape by stakes."""
    wave = _dots(_drawing("wave", WATER, 4.2), 8.0, 4.6)
    lines = _hatch(colour, 0, 3.2, 0.3, 0.7)
    for layer, when in ((wave, 'coalesce("water", true)'), (lines, 'not coalesce("water", true)')):
        layer.setDataDefinedProperty(
            QgsSymbolLayer.Property.PropertyLayerEnabled, QgsProperty.fromExpression(when)
        )
    edge = [_casing(1.15), _core(colour, 0.45, "4;1.2")]
    posts = [_along(_marker(post, colour, 2.1, 0.4), 9)] if post else []
    return _symbol(QgsFillSymbol, [wave, lines, *edge, *posts])


_STAKES = (
    (to_say("Yellow stakes"), YELLOW, "circle", "\"stakes\" = 'yellow'"),
    (to_say("Red stakes"), RED, "square", "\"stakes\" = 'red'"),
    (to_say("Stakes not known"), WATER, None, "ELSE"),
)


def _penalty_areas():
    """By their stakes: the rules' two colours, which the posts' shapes tell apart too."""
    root = QgsRuleBasedRenderer.Rule(None)
    for label, colour, post, when in _STAKES:
        symbol = _penalty_area(colour, post)
        root.appendChild(QgsRuleBasedRenderer.Rule(symbol, filterExp=when, label=said(label)))
    return QgsRuleBasedRenderer(root)


def say_renderer(renderer):
    """Say the English names of its rules, if it has any of ours, in the user's language."""
    ours = {label for label, *_ in _STAKES}
    for rule in renderer.rootRule().children() if isinstance(renderer, QgsRuleBasedRenderer) else ():
        if rule.label() in ours:
            rule.setLabel(said(rule.label()))


_SYMBOLS = {
    "hole": _hole,
    "tee": _tee,
    "plate": _plate,
    "green": _green,
    "apron": _apron,
    "fairway": _fairway,
    "bunker": _bunker,
    "rough": _rough,
    "trees": _trees,
    "tree": _tree,
    "path": _path,
    "boundary": _boundary,
    "marker": _distance_marker,
    "target": _target,
    "image": _image,
    "patch": _patch,
    "window": _window,
    "pin": _pin,
    "field_note": _field_note,
}
