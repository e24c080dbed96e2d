"""The dates of a course's images: which raster layer shows which, and what was drawn from each.

QGIS imports the desk at its start: nothing heavy is imported here.
"""

import os
import re
from collections import Counter
from dataclasses import dataclass

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsDistanceArea,
    QgsExpression,
    QgsFeature,
    QgsFeatureRequest,
    QgsGeometry,
    QgsMapLayerStyle,
    QgsPointXY,
    QgsProviderRegistry,
    QgsRasterLayer,
    QgsReadWriteContext,
    QgsRectangle,
    QgsRuleBasedRenderer,
)
from qgis.PyQt.QtCore import QDate, Qt
from qgis.PyQt.QtXml import QDomDocument

from ..compat import attribution
from ..model.errors import YardwrightError
from ..model.kinds import FEATURE_KINDS
from ..store.reading import plain_value
from ..store.sources import kept_as, names_of
from .courses import other_layers
from .editing import checked, one_step
from .web_tiles import deepest_pixel
from .words import tr

IMAGE_MARK = "yardwright/image"
"""Custom property of a raster layer: the id of the date it shows, whatever its source is."""

COMPOSITE_MARK = "yardwright/composite"
"""Custom property of the raster layers of a composite: the id of its base; see ``composites``."""

OWN_SOURCE = "yardwright/own_source"
"""Custom property of a raster layer that shows a moved date by a virtual image: the source it had before."""

NOT_SAID = ""
"""In place of a date's id: the features that do not say which image they were drawn from."""

_DRAWN_BY = ("renderer-v2", "blendMode", "featureBlendMode", "layerOpacity")
"""What of a layer's style says how its features are drawn."""


@dataclass(frozen=True)
class DateOfImage:
    """One row of the layer “Image date”; ``layer_id`` names the raster layer that shows it, if one does.

    taken: ISO text, "" where unknown. gsd_m: metres on the ground that a pixel covers, None where unknown.
    print_allowed: None where nobody has said.
    rmse_m: how well it lies on the base, metres, None where nobody has said. moved: whether its picture is
    moved to lie on the ground.
    """

    id: str
    taken: str = ""
    credit: str = ""
    licence: str = ""
    print_allowed: bool = None
    gsd_m: float = None
    rmse_m: float = None
    moved: bool = False
    source: str = ""
    layer_id: str = None

    @property
    def title(self):
        """What a list calls it: the day, and the id where that says more."""
        if not self.taken or self.id in ("", self.taken):
            return self.taken or self.id or tr("without a day")
        return f"{self.taken} ({self.id})"

    @property
    def layer_ids(self):
        """The layers that show it, as a tuple; a composite has several."""
        return (self.layer_id,) if self.layer_id else ()

    @property
    def on_server(self):
        """Whether its image is fetched from a server."""
        from ..store.image_dates import is_fetched

        return is_fetched(self.source)

    @property
    def registered(self):
        """Whether somebody has laid it on another date."""
        return self.moved or self.rmse_m is not None


def dates_of(in_hand):
    """The course's dates, newest first, as a list of DateOfImage; those without a day come last."""
    rows, rasters = _rows(in_hand), rasters_of(in_hand.project)
    shown_by = matched(
        [(row.id, row.source) for row in rows], [known_as(one) for one in rasters], _folder(in_hand)
    )
    dates = [DateOfImage(**{**vars(row), "layer_id": found}) for row, found in zip(rows, shown_by)]
    return sorted(dates, key=lambda date: date.taken, reverse=True)


def rasters_without_date(in_hand):
    """The raster layers of the project that could be a date of the course and are none, top first.

    Heights (one band of signed or broken numbers) are no image.
    """
    names = set().union(*(names_of(row.source, _folder(in_hand)) for row in _rows(in_hand)), ())
    ids = {row.id for row in _rows(in_hand)}
    return [
        layer
        for layer in rasters_of(in_hand.project)
        if layer.isValid()
        and not _holds_heights(layer)
        and not layer.customProperty(COMPOSITE_MARK)
        and str(layer.customProperty(IMAGE_MARK, "")) not in ids
        and not names & known_as(layer)[2]
    ]


def rasters_of(project):
    """The raster layers of a project, topmost first."""
    return other_layers(project, {}, QgsRasterLayer)


def rasters_of_heights(project):
    """The raster layers of a project that hold heights, topmost first."""
    return [layer for layer in rasters_of(project) if layer.isValid() and _holds_heights(layer)]


def matched(rows, rasters, folder):
    """The id of the raster that shows each row, None where none does.

    rows: ``[(id, source)]``. rasters: ``[(layer id, id it is marked with, set of its names)]``, of several
    that fit the first is taken; a mark counts before a source. folder: where relative sources begin.
    """
    found = []
    for own_id, source in rows:
        names = names_of(source, folder)
        marked = [layer_id for layer_id, mark, _ in rasters if mark and mark == own_id]
        alike = [layer_id for layer_id, mark, known in rasters if not mark and names & known]
        found.append(next(iter(marked + alike), None))
    return found


def known_as(layer):
    """A raster layer as ``matched`` takes it."""
    names = names_of(layer.source()) | names_of(layer.customProperty(OWN_SOURCE, ""))
    parts = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
    if parts.get("path") and not parts.get("layerName"):
        names |= names_of(parts["path"])
    return layer.id(), str(layer.customProperty(IMAGE_MARK, "")), names


def _folder(in_hand):
    """Where the relative sources of a course begin: beside its file."""
    place = in_hand.place or ""
    return os.path.dirname(place) if os.path.isfile(place) else in_hand.project.absolutePath()


def _rows(in_hand):
    """The rows of the layer “Image date” as DateOfImage without a layer."""
    layer = in_hand.layer("image")
    if layer is None or not layer.isValid():
        return []
    request = QgsFeatureRequest()
    request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
    rows = []
    for feature in layer.getFeatures(request):
        values = {
            field.name(): plain_value(value) for field, value in zip(layer.fields(), feature.attributes())
        }
        texts = {name: str(values.get(name) or "") for name in ("taken", "credit", "licence", "source")}
        gsd, rmse = values.get("gsd_m"), values.get("rmse_m")
        rows.append(
            DateOfImage(
                id=str(values.get("id") or "").strip(),
                **texts,
                print_allowed=_said(values.get("print_allowed")),
                gsd_m=gsd if isinstance(gsd, (int, float)) and gsd > 0 else None,
                rmse_m=rmse if isinstance(rmse, (int, float)) and rmse >= 0 else None,
                moved=any(values.get(name) for name in ("shift_e_m", "shift_n_m", "moved")),
            )
        )
    return rows


def _said(value):
    """A value of a yes or no, None where there is none."""
    return None if value is None else bool(value)


def _holds_heights(layer):
    provider = layer.dataProvider()
    if layer.bandCount() != 1 or provider.name() != "gdal":
        return False
    # By name, for the enum has moved within QGIS: Float32 and Float64, Int16 and Int32.
    whole = provider.dataType(1)
    kinds = type(whole)
    return whole in [
        getattr(kinds, name) for name in ("Float32", "Float64", "Int16", "Int32") if hasattr(kinds, name)
    ]


# Making a raster one of the dates


def day_in(layer):
    """The day that a raster layer's name or file speaks of, ISO text, "" where it speaks of none."""
    for text in (layer.name(), os.path.basename(layer.source().split("|")[0])):
        for year, month, day in re.findall(r"(?<!\d)((?:19|20)\d\d)[-_. ]?(\d\d)[-_. ]?(\d\d)(?!\d)", text):
            if QDate(int(year), int(month), int(day)).isValid():
                return f"{year}-{month}-{day}"
    return ""


def credit_of(layer):
    """Whom a raster layer's own description credits, "" where it says nothing."""
    # Of a web source, what its server asks for.
    return "; ".join(layer.metadata().rights()) or attribution(layer)


def licence_of(layer):
    """Under which licence a raster layer says it is, "" where it says nothing."""
    return "; ".join(layer.metadata().licenses())


def take_up(in_hand, layer, taken, credit=None, print_allowed=False, licence=None):
    """Make a raster layer of the project one of the course's dates; the id of the new row.

    taken: the day, ISO text. credit, licence: taken from the layer's description unless given. One step to
    undo in the layer “Image date”. Raises YardwrightError with nothing changed.
    """
    images = in_hand.layer("image")
    if images is None:
        raise YardwrightError(
            tr("The course has no layer “Image date”."), tr("Open the course again, which brings it back.")
        )
    day = QDate.fromString(str(taken), Qt.DateFormat.ISODate)
    if not day.isValid():
        raise YardwrightError(tr("“{}” is no date.").format(taken), tr("Give it as year-month-day."))
    if layer not in rasters_without_date(in_hand):
        raise YardwrightError(
            tr("“{}” cannot become a date of the course.").format(layer.name()),
            tr("Choose a raster image that is not one of its dates yet."),
        )
    row = QgsFeature(images.fields())
    new_id = _free_id(day.toString("yyyy-MM-dd"), {date.id for date in _rows(in_hand)})
    gsd, note = gsd_told(in_hand, layer)
    for name, value in (
        ("id", new_id),
        ("source", _source_for_course(layer, _folder(in_hand))),
        ("taken", day),
        ("gsd_m", gsd),
        ("credit", (credit_of(layer) if credit is None else credit) or None),
        ("licence", (licence_of(layer) if licence is None else licence) or None),
        ("print_allowed", bool(print_allowed)),
        ("note", note or None),
    ):
        row.setAttribute(name, value)
    row.setGeometry(_footprint(in_hand, layer, images.crs()))
    with one_step(tr("Make “{}” a date").format(layer.name()), images):
        checked(images.addFeature(row), images)
    return new_id


def gsd_told(in_hand, layer):
    """``(metres on the ground that a pixel of a raster covers, what is to be noted where that is unknown)``.

    Of an image, as ``ground_sample_distance`` has it; of tiles, that of their deepest zoom level where the
    course lies. (None, a note) for a service that does not say how deep it goes.
    """
    if layer.dataProvider().name() != "wms":
        return ground_sample_distance(layer), ""
    pixel = deepest_pixel(layer.source(), layer.dataProvider().nativeResolutions())
    if pixel is not None and layer.crs().isValid():
        crs = in_hand.layer("image").crs()
        to_layer = QgsCoordinateTransform(crs, layer.crs(), in_hand.project)
        try:
            middle = to_layer.transform(ground_of_course(in_hand, crs).center())
        except QgsCsException:
            middle = None
        if middle is not None:
            return _square_on_ground(layer, middle, pixel, pixel), ""
    return None, tr("The service does not say what a pixel covers on the ground.")


def ground_sample_distance(layer):
    """Metres on the ground that a pixel in the middle of a raster covers, to a tenth of a millimetre.

    The side of the square that is as large as the pixel on the ellipsoid; None for maps that have no pixels
    of their own (tiles and map servers) and for layers that lie nowhere.
    """
    across, up = abs(layer.rasterUnitsPerPixelX()), abs(layer.rasterUnitsPerPixelY())
    if layer.dataProvider().name() == "wms" or not layer.crs().isValid() or not across or not up:
        return None
    return _square_on_ground(layer, layer.extent().center(), across, up)


def _square_on_ground(layer, place, across, up):
    """The side, metres, of the square that is as large on the ellipsoid as so much of a layer's CRS."""
    tape = QgsDistanceArea()
    tape.setSourceCrs(layer.crs(), layer.transformContext())
    tape.setEllipsoid(layer.crs().ellipsoidAcronym() or "EPSG:7030")
    try:
        width = tape.measureLine(place, QgsPointXY(place.x() + across, place.y()))
        height = tape.measureLine(place, QgsPointXY(place.x(), place.y() + up))
    except QgsCsException:
        return None
    return round((width * height) ** 0.5, 4) or None


def _free_id(wanted, taken_ids):
    number, free = 1, wanted
    while free in taken_ids:
        number += 1
        free = f"{wanted}-{number}"
    return free


def _source_for_course(layer, folder):
    """The source as the course keeps it: relative where the file lies beneath the course's folder."""
    parts = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
    path = parts.get("path")
    if not path or parts.get("layerName") or "://" in path or not os.path.exists(path):
        return layer.source()
    return kept_as(path, folder)


def _footprint(in_hand, layer, crs):
    """What a raster covers as a polygon in ``crs``; of one without end, or too wide for it, the course."""
    if not layer.crs().isValid():
        raise YardwrightError(
            tr("“{}” does not say where on Earth it lies.").format(layer.name()),
            tr("Set its coordinate reference system in its properties, then try again."),
        )
    if layer.dataProvider().name() != "wms":
        # Edges that are straight in one system are bent in another.
        outline = QgsGeometry.fromRect(layer.extent()).densifyByCount(15 if layer.crs() != crs else 0)
        try:
            outline.transform(QgsCoordinateTransform(layer.crs(), crs, in_hand.project))
        except QgsCsException:
            outline = QgsGeometry()
        if not outline.isEmpty() and outline.boundingBox().isFinite():
            return outline
    return QgsGeometry.fromRect(ground_of_course(in_hand, crs))


def ground_of_course(in_hand, crs, wider=200.0):
    """The QgsRectangle about the course's features, so much wider; without any, what the map shows."""
    ground = None
    for layer in course_layers(in_hand):
        # One by one: the counts and extents that a layer keeps leave out what is not saved yet, and after
        # another layer of its file was saved the count is -1 for a while.
        request = QgsFeatureRequest()
        request.setSubsetOfAttributes([])
        for feature in layer.getFeatures(request):
            if feature.hasGeometry() and not feature.geometry().isEmpty():
                box = feature.geometry().boundingBox()
                if ground is None:
                    ground = QgsRectangle(box)
                ground.combineExtentWith(box)
    if ground is not None:
        return ground.buffered(wider)
    canvas = in_hand.iface.mapCanvas()
    to_course = QgsCoordinateTransform(
        canvas.mapSettings().destinationCrs() or QgsCoordinateReferenceSystem(crs), crs, in_hand.project
    )
    try:
        return to_course.transformBoundingBox(canvas.extent())
    except QgsCsException as error:
        raise YardwrightError(
            tr("Where the course lies is not known yet."),
            tr("Zoom the map to the course, then try again."),
        ) from error


# What was drawn from which date


def course_layers(in_hand):
    """The course's layers whose features say from which image they were drawn."""
    layers = [in_hand.layer(kind) for kind in FEATURE_KINDS]
    return [layer for layer in layers if layer is not None and layer.isValid() and _says(layer)]


def _says(layer):
    return all(layer.fields().lookupField(name) >= 0 for name in ("seen_in", "view"))


def expression_of(seen_in=None, partly_hidden=False):
    """The expression of QGIS for features drawn from an image; "" for all.

    seen_in: an id, NOT_SAID, or None for any. partly_hidden: only what is marked so.
    """
    parts = []
    if seen_in == NOT_SAID:
        parts.append("coalesce(\"seen_in\", '') = ''")
    elif seen_in is not None:
        parts.append('"seen_in" = ' + QgsExpression.quotedString(seen_in))
    if partly_hidden:
        parts.append("\"view\" = 'partly hidden'")
    return " AND ".join(parts)


def counts(layers, expression):
    """``(features that an expression lets through, all features)`` of layers, unsaved ones included."""
    shown = every = 0
    for layer in layers:
        count = _counted(layer, "")
        every += count
        shown += _counted(layer, expression) if expression else count
    return shown, every


def drawn_from(layers):
    """How many features of layers were drawn from which image: ``{id or NOT_SAID: count}``, unsaved ones
    included."""
    found = Counter()
    for layer in layers:
        field = layer.fields().lookupField("seen_in")
        request = QgsFeatureRequest()
        request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
        request.setSubsetOfAttributes([field])
        found.update(str(plain_value(one[field]) or NOT_SAID) for one in layer.getFeatures(request))
    return found


def default_base(in_hand, ids):
    """The date that most is drawn from; where nothing is, the first of ``ids``, which come newest first."""
    drawn = drawn_from(course_layers(in_hand))
    return max(ids, key=lambda one: drawn.get(one, 0), default="")


def _counted(layer, expression):
    """Counted one by one: the count that a layer keeps is -1 for a while after its file was saved."""
    request = QgsFeatureRequest()
    request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
    if expression:
        request.setFilterExpression(expression)
    else:
        request.setSubsetOfAttributes([])
    return sum(1 for _ in layer.getFeatures(request))


def drawn_only(layer, expression):
    """The style, as QGIS writes it, that draws only those features of a layer; "" where there is none.

    It is for ``QgsMapCanvas.setLayerStyleOverrides``, which wears it only while it draws: neither the
    layer's own style nor its edits nor its provider's filter is touched. Labels follow what is drawn. A
    renderer that makes one picture of all features (a heat map) cannot leave any out.
    """
    renderer = layer.renderer()
    rules = QgsRuleBasedRenderer.convertFromRenderer(renderer, layer) if renderer is not None else None
    if rules is None:
        return ""
    only = QgsRuleBasedRenderer.Rule(None, 0, 0, expression)
    root = rules.rootRule()
    for rule in list(root.children()):
        only.appendChild(rule.clone())
        root.removeChild(rule)
    root.appendChild(only)

    return drawn_by(layer, rules)


def drawn_by(layer, renderer, labeling=None):
    """A layer's style, as QGIS writes it, with another renderer and, where it is given, other labels; see
    ``drawn_only``."""
    style = QgsMapLayerStyle()
    style.readFromLayer(layer)
    page, context = QDomDocument(), QgsReadWriteContext()
    page.setContent(style.xmlData())
    top = page.documentElement()
    top.replaceChild(renderer.save(page, context), top.firstChildElement("renderer-v2"))
    kept, categories = _DRAWN_BY, "Symbology"
    if labeling is not None:
        top.replaceChild(labeling.save(page, context), top.firstChildElement("labeling"))
        kept, categories = (*_DRAWN_BY, "labeling"), "Symbology|Labeling"
    # QGIS reads it at every drawing of the map: what says nothing of drawing would cost time.
    top.setAttribute("styleCategories", categories)
    part = top.firstChildElement()
    while not part.isNull():
        part, this = part.nextSiblingElement(), part
        if this.tagName() not in kept:
            top.removeChild(this)
    return page.toString()
