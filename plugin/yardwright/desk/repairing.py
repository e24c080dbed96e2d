"""A repair that a check proposes, done in the project's layers as one step that can be undone."""

from qgis.core import QgsGeometry

from ..model.errors import YardwrightError
from .editing import checked, one_step
from .words import tr


def repair(in_hand, finding):
    """Do what the ``repair`` of a Finding says, in the edit buffers of the layers it concerns.

    in_hand: the CourseInHand whose course was checked. Raises YardwrightError, with nothing changed, when a
    feature is gone or is no longer as it was when it was checked, or a layer does not take the change.
    """
    proposed = finding.repair
    if proposed is None:
        raise YardwrightError(
            tr("There is no repair for this that is safe."), tr("Mend it with QGIS’s own tools.")
        )
    layers = {change.kind: _layer(in_hand, change.kind) for change in proposed.changes}
    _still_so(in_hand.course(), proposed.before)
    rows = [_row(layers[change.kind], change) for change in proposed.changes]
    if not proposed.before and any(row.hasGeometry() and not row.geometry().isEmpty() for row in rows):
        raise _changed()
    shapes = [_geometry(layers[change.kind], change) for change in proposed.changes]
    with one_step(proposed.text, *layers.values()):
        for change, shape in zip(proposed.changes, shapes):
            _apply(layers[change.kind], change, shape)


def _layer(in_hand, kind):
    layer = in_hand.layer(kind)
    if layer is None:
        raise YardwrightError(
            tr("The course’s layer “{}” is not in the project.").format(kind), tr("Open the course again.")
        )
    return layer


def _changed():
    return YardwrightError(
        tr("What was to be repaired has been changed or deleted since it was checked."),
        tr("Check again and look at what is found now."),
    )


def _still_so(course, before):
    """Whether the course holds all of ``before`` (model Features and Holes) exactly as they were."""
    now = {}
    for feature in course.features:
        now.setdefault((feature.kind, feature.fid), []).append(feature)
    holes = {hole.fid: hole for hole in course.holes}
    for was in before:
        kind = getattr(was, "kind", None)
        same = holes.get(was.fid) == was if kind is None else was in now.get((kind, was.fid), ())
        if not same:
            raise _changed()


def _row(layer, change):
    row = layer.getFeature(change.fid)
    if not row.isValid():
        raise _changed()
    return row


def _geometry(layer, change):
    """The QgsGeometry of a Change in the layer's own type, None where the geometry stays."""
    if change.geometry is None:
        return None
    made = QgsGeometry()
    made.fromWkb(change.geometry.wkb)
    parts = made.coerceToType(layer.wkbType())
    if len(parts) != 1:
        raise YardwrightError(
            tr("The layer “{}” has no room for the repaired outline.").format(layer.name()),
            tr("Mend it with QGIS’s own tools."),
        )
    return parts[0]


def _apply(layer, change, shape):
    if change.delete:
        checked(layer.deleteFeature(change.fid), layer)
        return
    if shape is not None:
        checked(layer.changeGeometry(change.fid, shape), layer)
    for name, value in (change.fields or {}).items():
        checked(layer.changeAttributeValue(change.fid, layer.fields().lookupField(name), value), layer)
