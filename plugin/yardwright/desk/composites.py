"""Composites in a project: their layers in a group of their own, and how the dates panel sees them.

QGIS imports the desk at its start: nothing heavy is imported here.
"""

from dataclasses import dataclass

from qgis.core import QgsPalettedRasterRenderer, QgsRasterLayer
from qgis.PyQt import sip
from qgis.PyQt.QtGui import QColor

from ..model.errors import YardwrightError
from .dates import COMPOSITE_MARK
from .words import tr

SHOWS_MARK = "yardwright/composite_shows"
"""Custom property beside COMPOSITE_MARK: ``picture``, or ``date`` or ``how`` of the source raster."""
GROUP_MARK = "yardwright/composites"
"""Custom property of the group that holds composites: the folder they lie in."""
_OTHER_COLOURS = ("#5a5a5a", "#266ebe", "#de8c28", "#783c96", "#3c965a", "#c83c50", "#96823c", "#46aab4")

_SEEN_THROUGH = 0.55


@dataclass(frozen=True)
class CompositeOfDates:
    """The composites of one folder, as the dates panel lists them beside the dates.

    id: no date has it. base: the id of the date they are made on. layer_ids: of the pictures.
    """

    id: str
    base: str
    layer_ids: tuple

    taken = ""

    @property
    def title(self):
        return tr("Composite on {}").format(self.base)


def composites_of(project):
    """The CompositeOfDates of a project, topmost first."""
    found = []
    for group in project.layerTreeRoot().findGroups(True):
        folder = group.customProperty(GROUP_MARK)
        if not folder:
            continue
        pictures = [
            node.layer()
            for node in group.findLayers()
            if node.layer() is not None and node.layer().customProperty(SHOWS_MARK) == "picture"
        ]
        if pictures:
            base = str(pictures[0].customProperty(COMPOSITE_MARK))
            found.append(CompositeOfDates(f"composite:{folder}", base, tuple(one.id() for one in pictures)))
    return found


def add_composites(project, made, base, folder):
    """Add composites to a project, above its other images; the ids of the layers of their pictures.

    made: ``[(name, path of the picture, path of its source raster)]``. Those that are there already are read
    again and stay where they are. The source rasters are there too, not shown at first.
    """
    group = _group_for(project, base, folder)
    known = {}
    for node in group.findLayers():
        layer = node.layer()
        if layer is not None:
            known[layer.source(), layer.customProperty(SHOWS_MARK)] = layer
    pictures = []
    for name, path, source_path in made:
        for shows, source, title in (
            ("date", source_path, tr("{}: from which date").format(name)),
            ("how", source_path, tr("{}: lightened and invented").format(name)),
            ("picture", path, name),
        ):
            layer = known.get((source, shows))
            if layer is None:
                layer = _new_layer(source, title, base, shows)
                project.addMapLayer(layer, False)
                # Where a picture is from lies above all pictures, or it could not be seen.
                node = group.addLayer(layer) if shows == "picture" else group.insertLayer(0, layer)
                node.setItemVisibilityChecked(shows == "picture")
                node.setExpanded(False)
            else:
                layer.dataProvider().reloadData()
                layer.triggerRepaint()
            if shows != "picture":
                name_colours(layer, 1 if shows == "date" else 2)
            else:
                pictures.append(layer.id())
    return pictures


def _group_for(project, base, folder):
    root = project.layerTreeRoot()
    for group in root.findGroups(True):
        if group.customProperty(GROUP_MARK) == folder:
            return group
    rasters = [n for n, node in enumerate(root.children()) if _holds_raster(node)]
    place = rasters[0] if rasters else len(root.children())
    group = root.insertGroup(place, tr("Composite on {}").format(base))
    group.setCustomProperty(GROUP_MARK, folder)
    return group


def _holds_raster(node):
    layer = node.layer() if hasattr(node, "layer") else None
    return isinstance(layer, QgsRasterLayer) and not sip.isdeleted(layer)


def _new_layer(path, title, base, shows):
    layer = QgsRasterLayer(path, title)
    if not layer.isValid():
        raise YardwrightError(
            tr("“{}” cannot be opened.").format(path), tr("Check that it is there, and compose again.")
        )
    layer.setCustomProperty(COMPOSITE_MARK, base)
    layer.setCustomProperty(SHOWS_MARK, shows)
    return layer


def name_colours(layer, band):
    """Give a source raster the names and colours that its file says its values have. Band 1 tells the date,
    band 2 how; what is as photographed there stays clear."""
    classes = []
    for value, name, colour in named_values(layer.source(), band):
        if value or band == 1:
            classes.append(QgsPalettedRasterRenderer.Class(value, colour, name))
    renderer = QgsPalettedRasterRenderer(layer.dataProvider(), band, classes)
    if band == 1:
        renderer.setOpacity(_SEEN_THROUGH)
    layer.setRenderer(renderer)
    layer.triggerRepaint()


def named_values(path, band):
    """``[(value, name, QColor)]`` of a band of a source raster, those that have a name."""
    from osgeo import gdal

    source = gdal.Open(path)
    part = source.GetRasterBand(band)
    told = part.GetMetadata()
    found = []
    for value, name in enumerate(part.GetRasterCategoryNames() or []):
        if name:
            colour = [int(each) for each in told.get(f"COLOUR_{value}", "").split()]
            fallback = QColor(_OTHER_COLOURS[(value - 1) % len(_OTHER_COLOURS)])
            found.append((value, name, QColor(*colour) if len(colour) >= 3 else fallback))
    return found
