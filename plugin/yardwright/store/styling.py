"""What a layer of the course file looks like and how its form asks: from ``model.kinds`` and ``symbols``."""

from qgis.core import (
    QgsDefaultValue,
    QgsEditorWidgetSetup,
    QgsFieldConstraints,
    QgsPalLayerSettings,
    QgsReadWriteContext,
    QgsTextBackgroundSettings,
    QgsTextBufferSettings,
    QgsTextFormat,
    QgsUnitTypes,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QSizeF
from qgis.PyQt.QtGui import QColor
from qgis.PyQt.QtXml import QDomDocument

from ..compat import background_shape, label_placement, label_quadrant
from ..model.kinds import BOOLEAN, DATE, INTEGER, KINDS, REAL, TABLES
from ..model.words import and_list, said, say
from .symbols import INK, WHITE, renderer_of, say_renderer

STYLE_NAME = "Yardwright"
_MEMORY_TYPES = {INTEGER: "integer", REAL: "double", BOOLEAN: "boolean", DATE: "date"}


def style_layer(layer, kind):
    """Give a layer that has the fields of ``kind`` (a model Kind) its symbol, labels and form."""
    renderer = renderer_of(kind.name)
    if renderer is not None:
        layer.setRenderer(renderer)
    labels = _LABELS.get(kind.name)
    if labels is not None:
        layer.setLabeling(QgsVectorLayerSimpleLabeling(labels()))
        layer.setLabelsEnabled(True)
    layer.setDisplayExpression(_display(kind))
    hidden = layer.fields().lookupField("fid")
    if hidden >= 0:
        layer.setEditorWidgetSetup(hidden, QgsEditorWidgetSetup("Hidden", {}))
    for field in kind.fields:
        _ask(layer, layer.fields().lookupField(field.name), field)


def say_style(layer, kind):
    """Say what a layer's style says in English in the user's language: a course may have been made elsewhere.

    What somebody has written otherwise stays.
    """
    for field in kind.fields:
        place = layer.fields().lookupField(field.name)
        if place >= 0:
            _say_field(layer, place, field)
    say_renderer(layer.renderer())


def _say_field(layer, place, field):
    title, choices, widget = said(field.title), _choices(field), layer.editorWidgetSetup(place)
    if widget.config() == _choices(field, lambda value: value):
        widget = QgsEditorWidgetSetup("ValueMap", choices)
    if title != field.title and layer.fields().at(place).alias() == field.title:
        layer.setFieldAlias(place, title)
    if layer.editorWidgetSetup(place).config() != widget.config():
        # Another alias takes a field's widget away on QGIS 3.22.
        layer.setEditorWidgetSetup(place, widget)
    expression, reason = _constraint(field)
    if expression and expression == layer.constraintExpression(place):
        layer.setConstraintExpression(place, expression, reason)


def style_text(kind, crs):
    """The style of a kind as QML, the form QGIS keeps it in."""
    columns = "".join(
        f"&field={field.name}:{_MEMORY_TYPES.get(field.type, 'string')}" for field in kind.fields
    )
    geometry = f"{kind.geometry}?crs={crs}" if kind.geometry else "NoGeometry?"
    layer = QgsVectorLayer(f"{geometry}&field=fid:integer{columns}", said(kind.title), "memory")
    style_layer(layer, kind)
    document = QDomDocument()
    layer.exportNamedStyle(document, QgsReadWriteContext())
    return document.toString(-1)


def save_styles(dataset, crs):
    """Put the style of every layer into a GeoPackage open with GDAL, as the one QGIS takes by itself.

    The table ``layer_styles`` is a convention of QGIS: its columns are those its own “Save as default in
    the data source” makes.
    """
    from osgeo import ogr

    texts = ("f_table_catalog", "f_table_schema", "f_table_name", "f_geometry_column", "styleName")
    table = dataset.CreateLayer("layer_styles", None, ogr.wkbNone, ["FID=id"])
    for name in (*texts, "styleQML", "styleSLD"):
        table.CreateField(ogr.FieldDefn(name, ogr.OFTString))
    default = ogr.FieldDefn("useAsDefault", ogr.OFTInteger)
    default.SetSubType(ogr.OFSTBoolean)
    table.CreateField(default)
    for name in ("description", "owner", "ui"):
        table.CreateField(ogr.FieldDefn(name, ogr.OFTString))
    updated = ogr.FieldDefn("update_time", ogr.OFTDateTime)
    updated.SetDefault("CURRENT_TIMESTAMP")
    table.CreateField(updated)
    for kind in KINDS + TABLES:
        save_style(table, kind, crs)


def save_style(table, kind, crs):
    """Put the style of a kind into the table of styles, an OGR layer, in place of the one of that name."""
    from osgeo import gdal, ogr

    table.SetAttributeFilter(f"f_table_name = '{kind.name}' AND styleName = '{STYLE_NAME}'")
    old = [row.GetFID() for row in table]
    table.SetAttributeFilter(None)
    for fid in old:
        table.DeleteFeature(fid)
    row = ogr.Feature(table.GetLayerDefn())
    row.SetField("f_table_catalog", "")
    row.SetField("f_table_schema", "")
    row.SetField("f_table_name", kind.name)
    row.SetField("f_geometry_column", "geom" if kind.geometry else "")
    row.SetField("styleName", STYLE_NAME)
    row.SetField("styleQML", style_text(kind, crs))
    row.SetField("useAsDefault", 1)
    row.SetField("description", said(kind.title))
    row.SetField("owner", "")
    if table.CreateFeature(row) != 0:
        raise RuntimeError(gdal.GetLastErrorMsg() or say("a style was refused"))


def _ask(layer, place, field):
    """How the form asks for a field: title, widget, default, and limits that warn and never refuse."""
    layer.setFieldAlias(place, said(field.title))
    if field.values is not None:
        layer.setEditorWidgetSetup(place, QgsEditorWidgetSetup("ValueMap", _choices(field)))
    elif field.type == BOOLEAN:
        layer.setEditorWidgetSetup(place, QgsEditorWidgetSetup("CheckBox", {}))
    elif field.type == DATE:
        layer.setEditorWidgetSetup(
            place,
            QgsEditorWidgetSetup(
                "DateTime",
                {
                    "display_format": "yyyy-MM-dd",
                    "field_format": "yyyy-MM-dd",
                    "calendar_popup": True,
                    "allow_null": True,
                },
            ),
        )
    elif field.name in ("note", "description", "text", "host"):
        layer.setEditorWidgetSetup(place, QgsEditorWidgetSetup("TextEdit", {"IsMultiline": True}))
    if field.default is not None:
        layer.setDefaultValueDefinition(place, QgsDefaultValue(_literal(field.default)))
    expression, reason = _constraint(field)
    if expression:
        layer.setConstraintExpression(place, expression, reason)
        layer.setFieldConstraint(
            place,
            QgsFieldConstraints.Constraint.ConstraintExpression,
            QgsFieldConstraints.ConstraintStrength.ConstraintStrengthSoft,
        )


def _choices(field, called=said):
    """The allowed values of a field as the widget ValueMap takes them."""
    return {"map": [{called(value): value} for value in field.values or ()]}


def _literal(value):
    if isinstance(value, bool):
        return "true" if value else "false"
    return f"'{value}'" if isinstance(value, str) else str(value)


def _constraint(field):
    """``(expression, reason)`` of a field's limits; two empty texts when it has none."""
    name = f'"{field.name}"'
    tests, words = [], []
    if field.low is not None:
        tests.append(f"{name} >= {field.low}")
        words.append(say("at least {limit}", limit=field.low))
    if field.high is not None:
        tests.append(f"{name} <= {field.high}")
        words.append(say("at most {limit}", limit=field.high))
    limits = " and ".join(tests)
    title, within = said(field.title), and_list(words)
    if field.needed and limits:
        return f"{name} is not null and {limits}", say(
            "{field} is needed: {limits}", field=title, limits=within
        )
    if field.needed:
        return f"{name} is not null", say("{field} is needed", field=title)
    if limits:
        return f"{name} is null or ({limits})", say("{field}: {limits}", field=title, limits=within)
    return "", ""


def _display(kind):
    """The expression that names a row in lists."""
    names = [field.name for field in kind.fields]
    shown = {"hole": _hole_named("number"), "window": _window_named()}.get(kind.name)
    if shown is None:
        first = next(
            (name for name in ("label", "tee_set", "name", "id", "states_yd") if name in names), None
        )
        shown = f'"{first}"' if first else "null"
    return (
        f'coalesce({shown}, {_text_literal(said(kind.title) + " ")} || "fid")'
        if "fid" not in names
        else shown
    )


def _text_literal(text):
    """A text within an expression of QGIS."""
    return "'" + text.replace("'", "''") + "'"


def _hole_named(field):
    """The expression for a hole by the number in a field."""
    return f'{_text_literal(say("Hole") + " ")} || "{field}"'


def _window_named():
    return f"{_hole_named('hole')} || ', ' || represent_value(\"shows\")"


# Labels

_FAMILIES = ["Open Sans", "Noto Sans", "DejaVu Sans", "Segoe UI", "Helvetica", "Arial", "Sans Serif"]
"""The first of these that a computer has is used: QGIS warns of every layer whose one font is not there."""


def _text(size, colour=WHITE, bold=False):
    """White figures with a dark rim: legible on grass, sand, water and shade."""
    text = QgsTextFormat()
    font = text.font()
    font.setFamily(_FAMILIES[0])
    font.setBold(bold)
    text.setFont(font)
    text.setFamilies(_FAMILIES)
    text.setSize(size)
    text.setSizeUnit(QgsUnitTypes.RenderUnit.RenderPoints)
    text.setColor(QColor(colour))
    rim = QgsTextBufferSettings()
    rim.setEnabled(True)
    rim.setSize(0.7)
    rim.setColor(QColor(INK))
    rim.setOpacity(0.8)
    text.setBuffer(rim)
    return text


def _tablet(size):
    """White figures on a dark tablet with rounded corners."""
    text = _text(size, bold=True)
    plain = QgsTextBufferSettings()
    plain.setEnabled(False)
    text.setBuffer(plain)
    tablet = QgsTextBackgroundSettings()
    tablet.setEnabled(True)
    tablet.setType(background_shape("ShapeRectangle"))
    tablet.setSize(QSizeF(1.3, 0.6))
    tablet.setSizeUnit(QgsUnitTypes.RenderUnit.RenderMillimeters)
    tablet.setRadii(QSizeF(1.2, 1.2))
    tablet.setRadiiUnit(QgsUnitTypes.RenderUnit.RenderMillimeters)
    tablet.setFillColor(QColor(INK))
    tablet.setStrokeColor(QColor(WHITE))
    tablet.setStrokeWidth(0.25)
    tablet.setOpacity(0.9)
    text.setBackground(tablet)
    return text


def _labels(expression, text, smallest_scale, placement):
    labels = QgsPalLayerSettings()
    labels.fieldName = expression
    labels.isExpression = True
    labels.setFormat(text)
    labels.placement = label_placement(placement)
    labels.scaleVisibility = True
    labels.minimumScale = smallest_scale
    labels.maximumScale = 0
    return labels


def _hole_labels():
    """Number and par, on the line of play a third of the way along: clear of tees and green."""
    par = _text_literal(f" · {say('par')} ")
    labels = _labels(f'"number" || coalesce({par} || "par", \'\')', _tablet(9), 20000, "OverPoint")
    labels.geometryGeneratorEnabled = True
    labels.geometryGenerator = "line_interpolate_point($geometry, 0.3 * length($geometry))"
    labels.geometryGeneratorType = QgsWkbTypes.GeometryType.PointGeometry
    labels.quadOffset = label_quadrant("QuadrantOver")
    return labels


def _beside_point(expression, size, scale):
    def make():
        labels = _labels(expression, _text(size, bold=True), scale, "OverPoint")
        labels.quadOffset = label_quadrant("QuadrantRight")
        labels.xOffset = 2.4
        return labels

    return make


def _inside(expression, size, scale):
    return lambda: _labels(expression, _text(size), scale, "Horizontal")


def _outside(expression, size, scale):
    return lambda: _labels(expression, _text(size), scale, "OutsidePolygons")


def _beside_line(expression, size, scale):
    return lambda: _labels(expression, _text(size), scale, "Line")


_LABELS = {
    "hole": _hole_labels,
    "tee": _outside('"tee_set"', 7.5, 3000),
    "plate": _beside_point('"tee_set"', 7.5, 1000),
    "marker": _beside_point(
        'coalesce(to_string(round("states_yd", 1)), to_string(round("states_m", 1)) || \' m\')', 8.5, 3500
    ),
    "target": _beside_point('"label"', 7.5, 4000),
    "tree": _beside_point('"label"', 7.5, 2500),
    "bunker": _outside('"label"', 7.5, 4000),
    "penalty_area": _inside('"label"', 7.5, 6000),
    "fairway": _inside('"label"', 7.5, 4000),
    "trees": _inside('"label"', 7.5, 4000),
    "path": _beside_line('"label"', 7, 2500),
    "boundary": _beside_line('"label"', 7, 6000),
    "window": lambda: _beside_line(_window_named(), 7, 20000)(),
    "image": _beside_line('"id"', 7, 50000),
    "pin": lambda: _beside_point(f'{_text_literal(say("Round") + " ")} || "round"', 7.5, 2000)(),
}
