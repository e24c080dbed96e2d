"""The course's group of layers in a QGIS project, known by its mark and never by its name."""

import os

from qgis.core import QgsDataProvider, QgsLayerTreeGroup, QgsProviderRegistry

from ..model.errors import YardwrightError
from ..model.kinds import BY_NAME, KINDS, TABLES
from ..model.words import said, say
from .course_file import CourseLayers
from .styling import say_style

COURSE_MARK = "yardwright/course"
"""Custom property of a group: the place of its course when it was opened; see ``place_of_group``."""
KIND_MARK = "yardwright/kind"
"""Custom property of a layer: the name of its kind."""


def add_course_group(project, course_layers):
    """The group of a course in ``project`` (a QgsProject), made if it is not there; a QgsLayerTreeGroup.

    The project takes over the layers it needs from ``course_layers``. A group that lacks layers, because
    somebody removed them, gets them back. In a project without layers the project takes the course's CRS.
    """
    place = course_layers.place
    if not project.mapLayers():
        project.setCrs(course_layers.crs, True)  # True: the ellipsoid too, which would be NONE otherwise
    group = _find(project, place)
    if group is None:
        group = project.layerTreeRoot().insertGroup(0, _title(course_layers))
        group.setCustomProperty(COURSE_MARK, place)
    present = _layers_by_kind(group)
    for row, kind in enumerate(sorted(KINDS, key=lambda kind: -kind.drawn_over)):
        if kind.name not in present:
            _add(project, group, row, course_layers, kind)
    tables = next((child for child in group.children() if isinstance(child, QgsLayerTreeGroup)), None)
    if tables is None:
        tables = group.addGroup(say("Tables"))
    for row, kind in enumerate(TABLES):
        if kind.name not in present:
            _add(project, tables, row, course_layers, kind)
    tables.setExpanded(False)
    return group


def course_groups(project):
    """``{place: QgsLayerTreeGroup}`` of the courses in ``project``."""
    groups = {}
    for group in project.layerTreeRoot().findGroups(True):
        if group.customProperty(COURSE_MARK):
            groups.setdefault(place_of_group(group), group)
    return groups


def place_of_group(group):
    """The place of the course that a marked group holds.

    Where its layers lie counts, for these move with a project that is moved; the mark names the place of a
    group that has no layer left.
    """
    layer = next(iter(_layers_by_kind(group).values()), None)
    if layer is not None:
        path = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source()).get("path")
        if path:
            return str(path)
    return str(group.customProperty(COURSE_MARK))


def course_layers_of(group):
    """CourseLayers of a course's group, made of the project's own layers (closing it closes none of them).

    Raises YardwrightError when layers are missing or cannot be read.
    """
    present = _layers_by_kind(group)
    missing = [
        kind.name for kind in KINDS + TABLES if kind.name not in present or not present[kind.name].isValid()
    ]
    if missing:
        raise YardwrightError(
            say(
                "The course “{name}” lacks these layers: {layers}.",
                name=group.name(),
                layers=", ".join(missing),
            ),
            say("Open the course again, or check that its file is still where it was."),
        )
    return CourseLayers(place_of_group(group), present["hole"].crs(), present)


def reopen_layers(project, place):
    """Let the layers of a course in the project read its file anew, where another file has taken its place.

    A layer whose table has columns that it did not know takes the style that the file has for it.
    """
    group = _find(project, place)
    for name, layer in _layers_by_kind(group).items() if group is not None else ():
        known = layer.fields().names()
        source, options = layer.source(), QgsDataProvider.ProviderOptions()
        layer.setDataSource(source, layer.name(), layer.providerType(), options)
        if layer.fields().names() != known and name in BY_NAME:
            layer.loadDefaultStyle()
            say_style(layer, BY_NAME[name])


def _find(project, place):
    wanted = _same(place)
    return next((group for known, group in course_groups(project).items() if _same(known) == wanted), None)


def _same(place):
    """A place as it is compared: one file has one."""
    return os.path.normcase(os.path.realpath(place))


def _title(course_layers):
    row = next(course_layers.layers["course_info"].getFeatures(), None)
    name = row["name"] if row is not None else None
    return str(name) if name else say("Course")


def _layers_by_kind(group):
    layers = {}
    for node in group.findLayers():
        layer = node.layer()
        if layer is not None and layer.customProperty(KIND_MARK):
            layers.setdefault(str(layer.customProperty(KIND_MARK)), layer)
    return layers


def _add(project, group, row, course_layers, kind):
    layer = course_layers.layers[kind.name]
    layer.loadDefaultStyle()
    say_style(layer, kind)
    layer.setName(said(kind.title))
    layer.setCustomProperty(KIND_MARK, kind.name)
    project.addMapLayer(layer, False)
    node = group.insertLayer(row, layer)
    node.setExpanded(False)
