"""Symbols, forms and labels as the course file carries them to any QGIS."""

import re

import pytest
from yardwright.model.kinds import BY_NAME, KINDS, TABLES

from tests.loudly import left_over


@pytest.fixture
def plain(course_file, qgis_app):
    """The layers as a QGIS without our plugin opens them."""
    from qgis.core import QgsVectorLayer

    layers = {
        kind.name: QgsVectorLayer(f"{course_file}|layername={kind.name}", kind.name, "ogr")
        for kind in KINDS + TABLES
    }
    assert all(layer.isValid() for layer in layers.values())
    return layers


def test_forms(plain):
    for kind in KINDS + TABLES:
        fields = plain[kind.name].fields()
        assert plain[kind.name].editorWidgetSetup(fields.lookupField("fid")).type() == "Hidden"
        for field in kind.fields:
            place = fields.lookupField(field.name)
            widget = plain[kind.name].editorWidgetSetup(place)
            assert fields.at(place).alias() == field.title
            if field.values is not None:
                assert widget.type() == "ValueMap"
                listed = [value for entry in widget.config()["map"] for value in entry.values()]
                assert listed == list(field.values)
            elif field.type == "boolean":
                assert widget.type() == "CheckBox"
            elif field.type == "date":
                assert widget.type() == "DateTime"


@pytest.mark.parametrize(
    ("kind", "values", "doubted"),
    [
        ("hole", {"number": 7, "par": 4}, set()),
        ("hole", {"par": 7, "stroke_index": 0}, {"number", "par", "stroke_index"}),
        ("hole", {"number": 100}, {"number"}),
        ("plate", {"hole": 1}, {"tee_set"}),
        ("image", {"gsd_m": -1.0}, {"id", "gsd_m"}),
        ("marker", {"hole": 3, "states_yd": 150.0}, set()),
    ],
)
def test_constraints_warn_and_never_refuse(plain, kind, values, doubted):
    """QGIS's own check of a feature against the constraints that came with the file."""
    from qgis.core import QgsFeature, QgsFieldConstraints, QgsVectorLayerUtils

    layer = plain[kind]
    feature = QgsFeature(layer.fields())
    for name, value in values.items():
        feature.setAttribute(name, value)
    soft = QgsFieldConstraints.ConstraintStrength.ConstraintStrengthSoft
    hard = QgsFieldConstraints.ConstraintStrength.ConstraintStrengthHard
    found = set()
    for field in BY_NAME[kind].fields:
        place = layer.fields().lookupField(field.name)
        if not QgsVectorLayerUtils.validateAttribute(layer, feature, place, soft)[0]:
            found.add(field.name)
        assert QgsVectorLayerUtils.validateAttribute(layer, feature, place, hard)[0]
    assert found == doubted


def shown(layer):
    """``(aliases, choices by stored value, reasons of constraints, names of rules)`` of a layer."""
    fields = layer.fields()
    maps = [layer.editorWidgetSetup(place).config().get("map", ()) for place in range(fields.count())]
    rules = layer.renderer().rootRule().children() if layer.name() == "penalty_area" else ()
    return (
        [fields.at(place).alias() for place in range(fields.count())],
        {value: title for entries in maps for entry in entries for title, value in entry.items()},
        [layer.constraintDescription(place) for place in range(fields.count())],
        [rule.label() for rule in rules],
    )


def test_a_course_made_in_another_language(qgis_app, tmp_path, loudly):
    """Titles are said, stored values are the same."""
    from qgis.core import QgsVectorLayer
    from yardwright.store.course_file import create_course

    path = tmp_path / "ELSEWHERE.gpkg"
    create_course(str(path), "ELSEWHERE", "EPSG:32630")
    for kind in KINDS + TABLES:
        layer = QgsVectorLayer(f"{path}|layername={kind.name}", kind.name, "ogr")
        aliases, choices, reasons, rules = shown(layer)
        assert not left_over(" ".join([*aliases, *choices.values(), *reasons, *rules]))
        assert set(choices) == {value for field in kind.fields for value in field.values or ()}
        assert not left_over(re.sub('"[^"]*"|coalesce|represent_value|null', "", layer.displayExpression()))
        if layer.labelsEnabled():
            labels = re.sub(
                '"[^"]*"|coalesce|represent_value|to_string|round', "", layer.labeling().settings().fieldName
            )
            assert not left_over(labels)


def test_the_style_of_an_english_course_is_said_and_what_somebody_wrote_stays(plain, loudly):
    from yardwright.store.styling import say_style

    layer = plain["penalty_area"]
    label = layer.fields().lookupField("label")
    layer.setFieldAlias(label, "our name for it")
    say_style(layer, BY_NAME["penalty_area"])
    aliases, choices, reasons, rules = shown(layer)
    assert left_over(" ".join([*aliases, *choices.values(), *reasons, *rules])) == [
        "our",
        "name",
        "for",
        "it",
    ]
    tree = plain["tree"]
    say_style(tree, BY_NAME["tree"])
    assert "CROWN RADIUS (M): AT LEAST 0 AND AT MOST 50" in shown(tree)[2]
    assert choices["yellow"] == "YELLOW" and rules[0] == "YELLOW STAKES"


def test_a_window_is_named_by_hole_and_what_it_shows(plain):
    from qgis.core import QgsExpression, QgsExpressionContext, QgsExpressionContextUtils, QgsFeature

    layer = plain["window"]
    feature = QgsFeature(layer.fields())
    feature["hole"], feature["shows"] = 7, "green"
    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    context.setFeature(feature)
    for expression in (layer.displayExpression(), layer.labeling().settings().fieldName):
        assert QgsExpression(expression).evaluate(context) == "Hole 7, green"


def test_defaults(plain):
    from qgis.core import QgsGeometry, QgsVectorLayerUtils

    point = QgsGeometry.fromWkt("Point (0 0)")
    for kind in KINDS + TABLES:
        feature = QgsVectorLayerUtils.createFeature(plain[kind.name], point)
        for field in kind.fields:
            if field.default is not None:
                assert feature[field.name] == field.default, (kind.name, field.name)


def test_every_kind_has_its_own_symbol(plain):
    drawn = {}
    for kind in KINDS:
        text = re.sub(r'(id|name)="[^"]*"', "", _style_text(plain[kind.name]))
        drawn[kind.name] = re.search(r"<renderer-v2.*</renderer-v2>", text, re.DOTALL).group()
        assert "Yardwright" in plain[kind.name].listStylesInDatabase()[2]
    assert len(set(drawn.values())) == len(KINDS)
    for table in TABLES:
        assert "Yardwright" in plain[table.name].listStylesInDatabase()[2]


def _style_text(layer):
    from qgis.core import QgsReadWriteContext
    from qgis.PyQt.QtXml import QDomDocument

    document = QDomDocument()
    layer.exportNamedStyle(document, QgsReadWriteContext())
    return document.toString()


def test_drawings_travel_with_the_file(plain):
    """No style names a file: each SVG is inside it."""
    for kind in KINDS:
        text = _style_text(plain[kind.name])
        assert ".svg" not in text
        for path in re.findall(r'name="name"[^>]*value="(base64:[^"]*)"|k="name" v="(base64:[^"]*)"', text):
            assert len("".join(path)) > 100
    assert "base64:" in _style_text(plain["pin"])


def test_labels_are_shown_by_scale(plain):
    for name in ("hole", "tee", "marker"):
        settings = plain[name].labeling().settings()
        assert plain[name].labelsEnabled() and settings.scaleVisibility
        assert settings.minimumScale > 1000


def label_text(layer, **values):
    from qgis.core import QgsExpression, QgsExpressionContext, QgsFeature

    feature = QgsFeature(layer.fields())
    for name, value in values.items():
        feature.setAttribute(name, value)
    context = QgsExpressionContext()
    context.setFeature(feature)
    context.setFields(layer.fields())
    expression = QgsExpression(layer.labeling().settings().fieldName)
    text = expression.evaluate(context)
    assert not expression.hasEvalError()
    return text


def test_some_font_of_the_labels_is_on_every_computer(plain, tmp_path):
    """Read again by itself, no label says that its font is missing: QGIS would tell it for every layer."""
    from qgis.core import QgsReadWriteContext, QgsTextFormat
    from qgis.PyQt.QtXml import QDomDocument

    for layer in plain.values():
        for provider in filter(None, [layer.labeling()]):
            for name in provider.subProviders():
                written = provider.settings(name).format().writeXml(QDomDocument(), QgsReadWriteContext())
                context = QgsReadWriteContext()
                QgsTextFormat().readXml(written, context)
                assert [message.message() for message in context.takeMessages()] == []
                families = provider.settings(name).format().families()
                # Windows, macOS and Linux have these; common practice, no source.
                assert {"Segoe UI", "Helvetica", "DejaVu Sans"} <= set(families)


def test_label_texts(plain):
    assert label_text(plain["hole"], number=7, par=4) == "7 · par 4"
    assert label_text(plain["hole"], number=7) == "7"
    assert label_text(plain["marker"], states_yd=150.0) == "150"
    assert label_text(plain["marker"], states_m=137.5) == "137.5 m"
    assert label_text(plain["tee"], tee_set="Heron") == "Heron"


SHAPES = {
    "Point": "Point (50 50)",
    "LineString": "LineString (5 20, 50 80, 95 30)",
    "Polygon": "Polygon ((15 15, 85 15, 85 85, 15 85, 15 15))",
}


def picture(layer, ground):
    """The layer at 1:1500, 192 dpi, over one colour, as grey values 0 to 255 (ITU-R BT.601 luma)."""
    import numpy as np
    from qgis.core import QgsMapRendererSequentialJob, QgsMapSettings, QgsRectangle
    from qgis.PyQt.QtCore import QSize
    from qgis.PyQt.QtGui import QColor, QImage

    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setExtent(QgsRectangle(0, 0, 100, 100))
    settings.setOutputSize(QSize(504, 504))
    settings.setOutputDpi(192)
    settings.setBackgroundColor(QColor(*ground))
    job = QgsMapRendererSequentialJob(settings)
    job.start()
    job.waitForFinished()
    image = job.renderedImage().convertToFormat(QImage.Format.Format_RGB888)
    bits = image.constBits()
    bits.setsize(image.sizeInBytes())
    rows = np.frombuffer(bits, np.uint8).reshape(504, image.bytesPerLine())[:, : 504 * 3]
    return rows.reshape(504, 504, 3).astype(float) @ (0.299, 0.587, 0.114)


BRIGHT, DARK, GRASS = (226, 218, 190), (34, 46, 32), (104, 124, 78)


@pytest.mark.parametrize("kind", [kind.name for kind in KINDS])
def test_legible_without_colour_on_any_ground(plain, kind):
    """In grey values alone each kind shows on bright, dark and middling ground: parts of it are at least
    50 of 255 lighter or darker than the ground, 2 sq mm of them and more. No source: our own floor."""
    from qgis.core import QgsFeature, QgsGeometry

    layer = plain[kind]
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromWkt(SHAPES[BY_NAME[kind].geometry]))
    layer.dataProvider().addFeatures([feature])
    for ground in (BRIGHT, DARK, GRASS):
        grey = picture(layer, ground)
        level = grey[0, 0]
        marked = abs(grey - level) >= 50
        assert marked.sum() * (25.4 / 192) ** 2 >= 2, (kind, ground, int(marked.sum()))
        # Areas and lines leave the image to be seen.
        assert marked.mean() < 0.35, (kind, ground)


def test_kinds_are_told_apart_without_colour(plain):
    """What two kinds of one geometry draw lighter than grass differs in a fifth or more of it, in grey."""
    from qgis.core import QgsFeature, QgsGeometry

    pictures = {}
    for kind in KINDS:
        layer = plain[kind.name]
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt(SHAPES[kind.geometry]))
        layer.dataProvider().addFeatures([feature])
        layer.setLabelsEnabled(False)
        grey = picture(layer, GRASS)
        pictures[kind.name] = grey - grey[0, 0] >= 40
    for one in KINDS:
        for other in KINDS:
            if one.name < other.name and one.geometry == other.geometry:
                a, b = pictures[one.name], pictures[other.name]
                assert (a ^ b).sum() >= 0.2 * (a | b).sum(), (one.name, other.name)


def test_stakes_differ_in_shape(plain):
    """Yellow and red stakes, grey: their posts are round and square."""
    from qgis.core import QgsFeature, QgsGeometry

    layer = plain["penalty_area"]
    pictures = []
    for stakes in ("yellow", "red"):
        feature = QgsFeature(layer.fields())
        feature.setAttribute("stakes", stakes)
        feature.setGeometry(QgsGeometry.fromWkt(SHAPES["Polygon"]))
        _, (added,) = layer.dataProvider().addFeatures([feature])
        pictures.append(picture(layer, DARK) > 60)
        layer.dataProvider().deleteFeatures([added.id()])
    assert (pictures[0] ^ pictures[1]).sum() >= 240
