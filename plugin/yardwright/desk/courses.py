"""Which courses a project holds and which holes they have, as QGIS knows it: nothing heavy is imported."""

from qgis.core import NULL

from ..store.layer_group import KIND_MARK, course_groups


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


def _plain(value):
    return None if value is None or value == NULL else value
