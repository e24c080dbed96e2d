"""Which courses a project holds and which holes they have, as QGIS knows it: nothing heavy is imported."""

import os

from qgis.core import (
    NULL,
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
)
from qgis.PyQt.QtCore import QStandardPaths

from ..model.errors import YardwrightError
from ..store.layer_group import KIND_MARK, course_groups
from .words import tr


def courses_in(project):
    """``{place: QgsLayerTreeGroup}`` of the courses in a project, in the order of its layers."""
    return course_groups(project)


def place_of(groups, layer):
    """The place of the course that a layer belongs to; None for a layer of none, or for None."""
    if layer is None:
        return None
    return next((place for place, group in groups.items() if group.findLayer(layer.id()) is not None), None)


def layer_of(group, kind):
    """The layer of a kind in a course's group, None when it is not there."""
    for node in group.findLayers():
        layer = node.layer()
        if layer is not None and layer.customProperty(KIND_MARK) == kind:
            return layer
    return None


def holes_of(group):
    """``[(number, name, par)]`` of the course's holes in order, one a number; "" and None where unknown."""
    layer = layer_of(group, "hole")
    holes = {}
    if layer is None or not layer.isValid():
        return []
    for feature in layer.getFeatures():
        number, name, par = (_plain(feature[field]) for field in ("number", "name", "par"))
        if isinstance(number, int) and number > 0:
            holes.setdefault(number, (number, str(name or ""), par))
    return [holes[number] for number in sorted(holes)]


def hole_text(number, name, par):
    """A hole as it is named in lists: number, name and par, as far as known."""
    par_text = tr("par {}").format(par) if par else ""
    return "  ".join(filter(None, (str(number), name, par_text)))


def other_layers(project, groups, of_type):
    """The layers of a type (QgsVectorLayer, QgsRasterLayer) that belong to none of the courses, top first."""
    layers = [node.layer() for node in project.layerTreeRoot().findLayers()]
    return [one for one in layers if isinstance(one, of_type) and place_of(groups, one) is None]


def suggested_start(project, canvas):
    """What a new course may begin with, ``{parameter: value}``: a file beside the project that is not there
    yet and, where the map shows something, the UTM zone of its middle."""
    from ..store.course_file import default_crs

    documents = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    folders = (project.absolutePath(), documents, os.path.expanduser("~"))
    folder = next((one for one in folders if one and os.path.isdir(one)), "")
    names = (f"course{number}.gpkg" for number in ("", *range(2, 1000)))
    paths = (os.path.join(folder, name) for name in names)
    found = {"COURSE": next(path for path in paths if not os.path.exists(path))}
    if canvas.layers():
        degrees = QgsCoordinateReferenceSystem("EPSG:4326")
        to_degrees = QgsCoordinateTransform(canvas.mapSettings().destinationCrs(), degrees, project)
        try:
            middle = to_degrees.transform(canvas.center())
            found["CRS"] = QgsCoordinateReferenceSystem(default_crs(middle.x(), middle.y()))
        except (QgsCsException, YardwrightError):
            pass  # The map shows no place on Earth: the user names the system.
    return found


def _plain(value):
    return None if value is None or value == NULL else value
