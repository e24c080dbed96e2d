"""Model values into the course's layers: all of a change or nothing of it.

Where nobody is editing one of the layers, the change is one transaction of the file. Where somebody is,
it goes into the layers' edit buffers as one edit command each, to be saved or undone with the rest.
"""

import math
from contextlib import contextmanager

import numpy as np
from qgis.core import QgsFeature, QgsGeometry, QgsTransaction
from qgis.PyQt.QtCore import QDate, Qt

from ..model.errors import YardwrightError
from ..model.geometry import coordinates
from ..model.kinds import BOOLEAN, BY_NAME, DATE, INTEGER, REAL
from ..model.numbers import format_distances, format_holes
from ..model.words import said, say, to_say
from .reading import plain_value

_TRY_AGAIN = to_say("Close the course in other programs, or save or discard edits to it, and try again.")


def add_features(course_layers, features):
    """Add model Features (geometry in the course's CRS); their ids, in order.

    A multi-part geometry becomes a row a part, with an id each. A feature of kind ``hole`` whose number
    stands in the layer without a line gives its line to that row, and fills its empty fields, instead of
    making a second hole. Raises YardwrightError, with nothing added, for a kind, field or geometry the
    course has no place for.
    """
    rows = [(feature, part) for feature in features for part in parts_of(feature)]
    kinds = list(dict.fromkeys(feature.kind for feature, _ in rows))
    if not rows:
        return []
    with editing(course_layers, kinds) as edit:
        waiting = _holes_without_line(course_layers) if "hole" in kinds else {}
        fids = [None] * len(rows)
        new = {kind: [] for kind in kinds}
        for place, (feature, part) in enumerate(rows):
            row = waiting.pop(feature.get("number"), None) if feature.kind == "hole" and part else None
            if row is None:
                new[feature.kind].append((place, row_of(course_layers, feature, part)))
            else:
                _fill_hole(edit, course_layers, row, feature, part)
                fids[place] = row.id()
        for kind, places in new.items():
            ids = edit.add(kind, [row for _, row in places])
            for (place, _), fid in zip(places, ids):
                fids[place] = fid
    return fids


def set_holes(course_layers, kind, holes_by_id):
    """Say which holes features of one kind belong to: ``{feature id: (hole number, ...)}``.

    Kinds with a single ``hole`` take one number at most. Raises YardwrightError with nothing changed.
    """
    if not holes_by_id:
        return
    fields = {field.name for field in BY_NAME[kind].fields}
    changes = {}
    for fid, numbers in holes_by_id.items():
        numbers = tuple(numbers)
        if "holes" in fields:
            changes[fid] = {"holes": format_holes(numbers) or None}
        elif "hole" in fields and len(numbers) <= 1:
            changes[fid] = {"hole": numbers[0] if numbers else None}
        else:
            raise YardwrightError(
                say(
                    "A feature of kind “{kind}” cannot be given to holes {numbers}.",
                    kind=kind,
                    numbers=format_holes(numbers) or say("(none)"),
                ),
                say("Give it to one hole.") if "hole" in fields else say("Choose another kind."),
            )
    with editing(course_layers, [kind]) as edit:
        edit.change(kind, changes)


def replace_windows(course_layers, windows):
    """Put windows (model Features of kind ``window``) in place of those that show the same of the same hole.

    Returns the ids of the new rows, in order.
    """
    windows = list(windows)
    if not windows:
        return []
    replaced = {(window.get("hole"), window.get("shows")) for window in windows}
    with editing(course_layers, ["window"]) as edit:
        layer = course_layers.layers["window"]
        old = [
            row.id()
            for row in layer.getFeatures()
            if (plain_value(row["hole"]), plain_value(row["shows"])) in replaced
        ]
        edit.delete("window", old)
        rows = [row_of(course_layers, window, part) for window in windows for part in parts_of(window)]
        return edit.add("window", rows)


def write_settings(course_layers, settings, name=None):
    """Write a model Settings, and the course's name when given, into the course's row."""
    kind = BY_NAME["course_info"]
    values = {f.name: getattr(settings, f.name) for f in kind.fields if hasattr(settings, f.name)}
    values["layup_yd"] = format_distances(settings.layup_yd)
    if name is not None:
        values["name"] = name
    set_course_info(course_layers, values)


def set_course_info(course_layers, values):
    """Change fields of the course's row: ``{field: value}``."""
    row = next(course_layers.layers["course_info"].getFeatures(), None)
    if row is None:
        raise YardwrightError(
            say("The course has no row in its table course_info."), say("Start a new course.")
        )
    with editing(course_layers, ["course_info"]) as edit:
        edit.change("course_info", {row.id(): values})


@contextmanager
def editing(course_layers, kinds):
    """One change of several layers, kept when the block ends well and undone on any exception.

    Gives an object with ``add(kind, [QgsFeature]) -> ids``, ``change(kind, {id: {field: value}})``,
    ``reshape(kind, {id: QgsGeometry})`` and ``delete(kind, ids)``; each raises YardwrightError.
    """
    for kind in kinds:
        if kind not in course_layers.layers:
            raise _no_layer(kind)
    layers = {kind: course_layers.layers[kind] for kind in kinds}
    how = _buffered if any(layer.isEditable() for layer in layers.values()) else _transaction
    with how(layers) as edit:
        yield edit


@contextmanager
def _buffered(layers):
    """Edits in the edit buffers; layers not being edited are put into editing."""
    opened = []
    begun = []
    try:
        for layer in layers.values():
            if not layer.isEditable():
                if not layer.startEditing():
                    raise YardwrightError(
                        say("The layer “{layer}” cannot be edited.", layer=layer.name()), said(_TRY_AGAIN)
                    )
                opened.append(layer)
            layer.beginEditCommand("Yardwright")
            begun.append(layer)
        yield _Edit(layers, buffered=True)
    except BaseException:
        for layer in begun:
            layer.destroyEditCommand()
        for layer in opened:
            layer.rollBack()
        raise
    for layer in begun:
        layer.endEditCommand()


@contextmanager
def _transaction(layers):
    """One transaction of the file through the layers' data providers."""
    providers = [layer.dataProvider() for layer in layers.values()]
    entered = []
    transaction = None
    try:
        for layer, provider in zip(layers.values(), providers):
            # Without this QGIS has the file open for reading and makes no transaction.
            if not provider.enterUpdateMode():
                raise YardwrightError(
                    say("The layer “{layer}” cannot be written to.", layer=layer.name()), said(_TRY_AGAIN)
                )
            entered.append(provider)
        transaction = QgsTransaction.create(set(layers.values()))
        begun, reason = transaction.begin() if transaction else (False, say("no transaction"))
        if not begun:
            transaction = None
            raise YardwrightError(
                say("The course cannot be written to ({reason}).", reason=reason), said(_TRY_AGAIN)
            )
        yield _Edit(layers, buffered=False)
        kept, reason = transaction.commit()
        if not kept:
            raise YardwrightError(
                say("The change could not be saved ({reason}).", reason=reason), said(_TRY_AGAIN)
            )
        transaction = None
    except BaseException:
        if transaction is not None:
            transaction.rollback()
        raise
    finally:
        transaction = None
        for provider in entered:
            provider.leaveUpdateMode()
    for layer in layers.values():
        layer.updateExtents()
        layer.triggerRepaint()


class _Edit:
    """Adds, changes and deletes rows through the layers' edit buffers or through their providers."""

    def __init__(self, layers, buffered):
        self._layers = layers
        self._buffered = buffered

    def add(self, kind, rows):
        if not rows:
            return []
        if self._buffered:
            # One by one, for only so does the layer number the rows it was given.
            self._check(all(self._layers[kind].addFeature(row) for row in rows), kind)
            return [row.id() for row in rows]
        done, added = self._layers[kind].dataProvider().addFeatures(rows)
        self._check(done, kind)
        return [row.id() for row in added]

    def change(self, kind, changes):
        layer = self._layers[kind]
        known = self._known(kind, changes)
        by_place = {
            fid: {
                layer.fields().lookupField(name): _stored(BY_NAME[kind].field(name), value)
                for name, value in values.items()
            }
            for fid, values in changes.items()
        }
        self._check(known, kind)
        if self._buffered:
            self._check(
                all(layer.changeAttributeValues(fid, values) for fid, values in by_place.items()), kind
            )
        else:
            self._check(layer.dataProvider().changeAttributeValues(by_place), kind)

    def reshape(self, kind, geometries):
        layer = self._layers[kind]
        if self._buffered:
            done = all(layer.changeGeometry(fid, geometry) for fid, geometry in geometries.items())
        else:
            done = layer.dataProvider().changeGeometryValues(geometries)
        self._check(done, kind)

    def delete(self, kind, fids):
        if fids:
            layer = self._layers[kind]
            target = layer if self._buffered else layer.dataProvider()
            self._check(target.deleteFeatures(list(fids)), kind)

    def _known(self, kind, fids):
        return {row.id() for row in self._layers[kind].getFeatures(list(fids))} == set(fids)

    def _check(self, done, kind):
        if not done:
            raise YardwrightError(
                say("A change of the layer “{kind}” was refused; nothing was changed.", kind=kind),
                said(_TRY_AGAIN),
            )


def _no_layer(kind):
    return YardwrightError(say("A course has no layer “{kind}”.", kind=kind), say("Choose another kind."))


def parts_of(feature):
    """The geometries of the rows a feature becomes: checked, of the layer's type; [None] for none."""
    if feature.kind not in BY_NAME:
        raise _no_layer(feature.kind)
    wanted = BY_NAME[feature.kind].geometry
    if feature.geometry is None:
        if feature.kind == "hole" or wanted is None:
            return [None]
        raise YardwrightError(
            say("A feature of kind “{kind}” has no geometry.", kind=feature.kind), say("Leave it out.")
        )
    parts = list(getattr(feature.geometry, "geoms", [feature.geometry]))
    for part in parts:
        if part.geom_type != wanted or part.is_empty:
            raise YardwrightError(
                say(
                    "A {geometry} cannot be a feature of kind “{kind}”.",
                    geometry=part.geom_type,
                    kind=feature.kind,
                ),
                say("That kind needs a {geometry}.", geometry=wanted),
            )
        if not np.isfinite(coordinates(part)).all():
            raise YardwrightError(
                say("A feature of kind “{kind}” has a coordinate that is not a number.", kind=feature.kind),
                say("Leave it out."),
            )
    return parts


def row_of(course_layers, feature, part):
    """The QgsFeature of a model Feature, with one of its geometries."""
    kind = BY_NAME[feature.kind]
    row = QgsFeature(course_layers.layers[feature.kind].fields())
    for name, value in _values(kind, feature).items():
        row.setAttribute(name, _stored(kind.field(name), value))
    if part is not None:
        row.setGeometry(qgis_geometry(part))
    return row


def _values(kind, feature):
    """``{field: value}`` of a model Feature, with the fields' defaults where it says nothing."""
    names = {field.name for field in kind.fields}
    values = {field.name: field.default for field in kind.fields if field.default is not None}
    values.update({"label": feature.label, "seen_in": feature.seen_in, "view": feature.view})
    if feature.holes:
        values["holes"] = format_holes(feature.holes)
        values["hole"] = feature.holes[0]
    values.update(feature.attributes)
    unknown = set(feature.attributes) - names
    if unknown:
        raise YardwrightError(
            say("The layer “{layer}” has no field “{field}”.", layer=kind.name, field=sorted(unknown)[0]),
            say("Leave that field out."),
        )
    return {name: value for name, value in values.items() if name in names}


def _stored(field, value):
    """A value as the layer keeps it; None and an empty text are NULL (None)."""
    if value is None or value == "":
        return None
    try:
        if field.type == INTEGER:
            return int(value)
        if field.type == REAL:
            if math.isfinite(float(value)):
                return float(value)
        elif field.type == BOOLEAN:
            return bool(value)
        elif field.type == DATE:
            date = QDate.fromString(str(value)[:10], Qt.DateFormat.ISODate)
            if date.isValid():
                return date
        else:
            return str(value)
    except (TypeError, ValueError, OverflowError) as error:
        raise _refused_value(field, value) from error
    raise _refused_value(field, value)


def _refused_value(field, value):
    return YardwrightError(
        say("“{value}” is no value for the field “{field}”.", value=value, field=field.name),
        say("Leave it empty or mend it."),
    )


def qgis_geometry(shape):
    geometry = QgsGeometry()
    geometry.fromWkb(shape.wkb)
    return geometry


def _holes_without_line(course_layers):
    """``{number: row}`` of the holes that have no line yet; not for a number that has one elsewhere."""
    rows, drawn = {}, set()
    for row in course_layers.layers["hole"].getFeatures():
        number = plain_value(row["number"])
        if row.geometry().isNull() or row.geometry().isEmpty():
            rows.setdefault(number, row)
        else:
            drawn.add(number)
    return {number: row for number, row in rows.items() if number is not None and number not in drawn}


def _fill_hole(edit, course_layers, row, feature, part):
    """Give a hole's row the line, and values where it has none; how the line was seen goes with the line."""
    values = _values(BY_NAME["hole"], feature)
    empty = {
        name: value
        for name, value in values.items()
        if value not in (None, "") and (plain_value(row[name]) in (None, "") or name in ("view", "seen_in"))
    }
    edit.reshape("hole", {row.id(): qgis_geometry(part)})
    if empty:
        edit.change("hole", {row.id(): empty})
