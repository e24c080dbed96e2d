"""The recovery copy: what is drawn or changed and not saved yet, in a file beside the course.

A copy is JSON of plain values: for each kind the rows added, and those changed or deleted together with what
they were when saved, so that putting them back sees whether the course has gone on meanwhile. Geometries are
WKB in hexadecimal, fields go by name. A copy that is being kept is locked; the lock of a process that is gone
counts for nothing.
"""

import hashlib
import json
import math
import os
import re
import time
from collections import Counter
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime, timezone

from qgis.core import NULL, QgsFeature, QgsFeatureRequest, QgsGeometry, QgsVectorLayer, QgsVectorLayerUtils
from qgis.PyQt.QtCore import QByteArray, QDate, QDateTime, QLockFile, QSysInfo, Qt, QTime

from ..model.errors import YardwrightError
from ..model.kinds import BY_NAME
from ..model.words import said, say

VERSION = 1
_MARK = "Yardwright: edits not saved"
_STARTED = time.time()
_MOST = 1000
"""So many copies of one course are looked for; nobody has as many."""

# Values


def plain(value):
    """The value of a field as JSON can hold it; ``value_of`` gives it back exactly.

    What no field of a course can hold becomes ``{"is": "other"}``, which cannot be given back.
    """
    if value is None or value == NULL:
        return None
    if isinstance(value, (bool, int, str)):
        return value
    if isinstance(value, float):
        return value if math.isfinite(value) else {"is": "number", "value": repr(value)}
    if isinstance(value, (list, tuple)):
        return [plain(one) for one in value]
    if isinstance(value, dict):
        return {"is": "map", "value": {str(name): plain(one) for name, one in value.items()}}
    if isinstance(value, (bytes, QByteArray)):
        return {"is": "bytes", "value": bytes(value).hex()}
    for name, (kind, form) in _TIMES.items():
        if isinstance(value, kind):
            text = value.toString(form)
            return {"is": name, "value": text} if text else None
    return {"is": "other", "value": str(value)}


_TIMES = {
    "datetime": (QDateTime, Qt.DateFormat.ISODateWithMs),
    "date": (QDate, Qt.DateFormat.ISODate),
    "time": (QTime, Qt.DateFormat.ISODateWithMs),
}


def value_of(value):
    """The value that ``plain`` made ``value`` of, NULL where there was none. Raises ValueError."""
    if value is None:
        return NULL
    if isinstance(value, (bool, int, float, str)):
        return value
    if isinstance(value, list):
        return [_inner(one) for one in value]
    if not isinstance(value, dict) or "value" not in value:
        raise ValueError("not a value of a copy")
    name, text = value.get("is"), value["value"]
    if name == "map" and isinstance(text, dict):
        return {key: _inner(one) for key, one in text.items()}
    if not isinstance(text, str):
        raise ValueError("not a value of a copy")
    if name == "number":
        return float(text)
    if name == "bytes":
        return QByteArray(bytes.fromhex(text))
    if name in _TIMES:
        kind, form = _TIMES[name]
        made = kind.fromString(text, form)
        if made.isValid():
            return made
    raise ValueError(f"a value of an unknown sort: {name}")


def _inner(value):
    """A value inside a list or a map, where QGIS has None for nothing."""
    return None if value is None else value_of(value)


def _geometry(feature):
    return bytes(feature.geometry().asWkb()).hex() if feature.hasGeometry() else None


def _shape(text):
    """The QgsGeometry of a row, a null one for None. Raises ValueError."""
    made = QgsGeometry()
    if text is not None:
        made.fromWkb(bytes.fromhex(text))
        if made.isNull():
            raise ValueError("not a geometry")
    return made


# Taking what is not saved


def _columns(layer):
    """``[(index, name)]`` of the fields that are kept: all that the layer owns but its key."""
    keys = set(layer.primaryKeyAttributes())
    own = set(layer.dataProvider().fields().names())
    buffer = layer.editBuffer()
    if buffer is not None:
        own.update(one.name() for one in buffer.addedAttributes())
    return [
        (index, one.name())
        for index, one in enumerate(layer.fields())
        if one.name() in own and index not in keys
    ]


def _row(feature, columns):
    values = feature.attributes()
    return {
        "geometry": _geometry(feature),
        "values": {name: plain(values[index]) for index, name in columns if index < len(values)},
    }


class SavedRows:
    """What of a layer is saved, read once for each feature that is changed; ``forget`` when it was saved."""

    def __init__(self, layer):
        self._layer = layer
        self.forget()

    def forget(self):
        """Read again from now on."""
        self._rows, self._newest, self._source = {}, None, None

    def rows(self, fids, columns):
        """``{fid: row}`` of features, without those that are not there."""
        missing = [fid for fid in fids if fid not in self._rows]
        if missing:
            request = QgsFeatureRequest().setFilterFids(missing)
            for feature in self._provider().getFeatures(request):
                self._rows[feature.id()] = _row(feature, columns)
        return {fid: self._rows[fid] for fid in fids if fid in self._rows}

    def newest(self):
        """The highest key saved so far, None where keys are not numbers or nothing is saved."""
        if self._newest is None:
            keys = self._layer.primaryKeyAttributes()
            highest = self._provider().maximumValue(keys[0]) if len(keys) == 1 else None
            self._newest = (highest if isinstance(highest, int) else None,)
        return self._newest[0]

    def _provider(self):
        if not writes_through(self._layer):
            return self._layer.dataProvider()
        if self._source is None:  # the layer's own provider shows what its open transaction has written
            options = QgsVectorLayer.LayerOptions()
            options.loadDefaultStyle = False
            layer = self._layer
            self._source = QgsVectorLayer(layer.source(), layer.name(), layer.providerType(), options)
        return self._source.dataProvider()


def writes_through(layer):
    """Whether edits of a layer go into an open transaction of its file at once, as a project may want it."""
    buffer = layer.editBuffer()
    return buffer is not None and buffer.metaObject().className() == "QgsVectorLayerEditPassthrough"


def unsaved(layer, saved):
    """What the edit buffer of a QgsVectorLayer holds, a plain value; None when there is nothing.

    saved: the SavedRows of the layer. The value has ``crs``, ``newest`` (the highest key saved), ``added``
    (rows in the order in which they were drawn), ``changed`` and ``deleted`` (each with ``fid`` and the row
    ``before``, None where it was not to be found; a changed one also with ``after``, what of it is changed).
    """
    buffer = layer.editBuffer()
    if buffer is None:
        return None
    added, deleted = buffer.addedFeatures(), sorted(buffer.deletedFeatureIds())
    shapes, values = buffer.changedGeometries(), buffer.changedAttributeValues()
    gone = {*deleted, *added}
    changed = sorted(fid for fid in {*shapes, *values} if fid not in gone)
    if not (added or deleted or changed):
        return None
    columns = _columns(layer)
    before = saved.rows([*changed, *deleted], columns)
    return {
        "crs": _crs_of(layer),
        "newest": saved.newest(),
        "added": [_row(added[fid], columns) for fid in sorted(added, key=abs)],
        "changed": [
            {
                "fid": fid,
                "before": before.get(fid),
                "after": _after(shapes.get(fid), values.get(fid, {}), columns),
            }
            for fid in changed
        ],
        "deleted": [{"fid": fid, "before": before.get(fid)} for fid in deleted],
    }


def _after(shape, values, columns):
    after = {"values": {name: plain(values[index]) for index, name in columns if index in values}}
    if shape is not None:
        after["geometry"] = None if shape.isNull() else bytes(shape.asWkb()).hex()
    return after


def _crs_of(layer):
    crs = layer.crs()
    return (crs.authid() or crs.toWkt()) if layer.isSpatial() else ""


def number_of(part):
    """How many things an ``unsaved`` value holds."""
    return sum(len(part[name]) for name in ("added", "changed", "deleted"))


# The file


@dataclass(frozen=True)
class Copy:
    """A copy that was read. course: the name of the course's file; written: a datetime with a zone;
    parts: ``{kind: what unsaved() gave}``."""

    path: str
    course: str
    written: datetime
    parts: dict

    @property
    def number(self):
        """How many things it holds."""
        return sum(number_of(part) for part in self.parts.values())


def as_text(part):
    """An ``unsaved`` value as ``write_copy`` takes it."""
    return json.dumps(part, separators=(",", ":"))


def write_copy(path, course, texts):
    """Write a copy; one that was there is replaced as a whole or not at all.

    course: the name of the course's file. texts: ``{kind: text}``, each from ``as_text``. It is not waited
    for the disk, for it is a program that ends at once that the copy is for. Raises OSError.
    """
    head = {
        "what": _MARK,
        "version": VERSION,
        "course": course,
        "written": datetime.now(timezone.utc).isoformat(timespec="seconds"),
        "by": {"pid": os.getpid(), "host": QSysInfo.machineHostName(), "started": round(_STARTED)},
    }
    layers = ",\n".join(f"{json.dumps(kind)}: {text}" for kind, text in texts.items())
    with open(_draft(path), "w", encoding="ascii") as file:
        file.write(f'{json.dumps(head)[:-1]}, "layers": {{\n{layers}\n}}}}\n')
    os.replace(_draft(path), path)


def _draft(path):
    return f"{path}part"


def read_copy(path):
    """The Copy at ``path``, checked.

    Raises YardwrightError. A copy that is damaged or is none of ours is then kept under another name; one
    of a newer Yardwright stays, for that one to find.
    """
    try:
        with open(path, encoding="utf-8") as file:
            whole = json.load(file)
        if not isinstance(whole, dict) or whole.get("what") != _MARK:
            raise ValueError("not a recovery copy")
        if not isinstance(whole["version"], int):
            raise ValueError("no version")
        if whole["version"] > VERSION:
            raise YardwrightError(
                say("The recovery copy “{path}” was written by a newer Yardwright.", path=path),
                say("Update the plugin, then open the course again."),
            )
        parts = {str(kind): _checked(part) for kind, part in whole["layers"].items()}
        written = datetime.fromisoformat(whole["written"])
        return Copy(path, str(whole["course"]), written.astimezone(timezone.utc), parts)
    except OSError as error:
        raise YardwrightError(
            say("The recovery copy “{path}” cannot be read ({reason}).", path=path, reason=error.strerror),
            say("Check that you may read it."),
        ) from error
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError) as error:
        raise YardwrightError(
            say("The recovery copy “{path}” is damaged or is none, and cannot be put back.", path=path),
            say("It is kept as “{path}”.", path=set_aside(path)),
        ) from error


def _checked(part):
    """An ``unsaved`` value as it stands in a file; ValueError, KeyError or TypeError when it is none."""
    if not (isinstance(part["crs"], str) and isinstance(part["newest"], (int, type(None)))):
        raise ValueError("neither a CRS nor a key")
    for row in part["added"]:
        _check_row(row, True)
    for change in (*part["changed"], *part["deleted"]):
        if not isinstance(change["fid"], int):
            raise ValueError("no key")
        if change["before"] is not None:
            _check_row(change["before"], True)
    for change in part["changed"]:
        _check_row(change["after"], False)
    return part


def _check_row(row, whole):
    if whole or "geometry" in row:
        _shape(row["geometry"])
    for value in row["values"].values():
        if not (isinstance(value, dict) and value.get("is") == "other"):
            value_of(value)


def set_aside(path):
    """Give a copy a name by which it is no longer found; the new path.

    Raises YardwrightError when that cannot be done.
    """
    stem = re.sub(r"(-\d+)?~$", "", path)
    for number in range(1, _MOST):
        kept = f"{stem}-kept~" if number == 1 else f"{stem}-kept-{number}~"
        if not os.path.lexists(kept):
            try:
                os.rename(path, kept)
            except OSError as error:
                raise YardwrightError(
                    say(
                        "“{path}” cannot be given another name ({reason}).", path=path, reason=error.strerror
                    ),
                    say("Move it away yourself."),
                ) from error
            return kept
    raise YardwrightError(
        say("Too many copies lie beside “{path}”.", path=path), say("Move some of them away.")
    )


# Where copies lie


def copy_stems(place, profile):
    """How the names of a course's copies begin, best place first: beside the course, then in the profile.

    place: the course's place. profile: the folder of the user's profile; the name there is made of the
    place, for a profile serves many courses. A course that is no file has its copies there only.
    """
    one_place = os.path.normcase(os.path.realpath(place)) if os.path.isfile(place) else place
    mark = hashlib.sha256(one_place.encode("utf-8", "surrogatepass")).hexdigest()[:20]
    there = os.path.join(profile, "yardwright", "unsaved", f"{mark}-unsaved")
    return [f"{os.path.abspath(place)}-unsaved", there] if os.path.isfile(place) else [there]


def copies(stems):
    """The paths of all copies whose names begin so, kept by somebody or not."""
    found = []
    for stem in stems:
        folder, name = os.path.split(stem)
        pattern = re.compile(re.escape(name) + r"(?:-(\d{1,3}))?~")
        with suppress(OSError):
            matches = filter(None, map(pattern.fullmatch, os.listdir(folder)))
            numbered = sorted((int(match.group(1) or 1), match.group()) for match in matches)
            found += [os.path.join(folder, name) for _, name in numbered]
    return found


class Held:
    """A copy's place that this process alone writes to or reads, until ``release``."""

    def __init__(self, path, lock):
        self.path = path
        self._lock = lock

    def remove(self):
        """Delete the copy and let go of its place."""
        for path in (self.path, _draft(self.path)):
            with suppress(FileNotFoundError):
                os.remove(path)
        self.release()

    def release(self):
        """Let go of the place; a copy that lies there stays."""
        self._lock.unlock()


def hold(path):
    """Take hold of a copy that lies at ``path``; None while a living process has it, or when it is gone.

    Raises OSError where locks cannot be made.
    """
    held = _lock(path)
    if held is not None and not os.path.lexists(path):
        held.release()
        return None
    return held


def hold_new(stems):
    """Take hold of a place where no copy lies and that nobody has, the first that can be; a Held.

    Raises YardwrightError where nothing can be written.
    """
    for stem in stems:
        with suppress(OSError):
            os.makedirs(os.path.dirname(stem), exist_ok=True)
            for number in range(1, _MOST):
                held = _lock(f"{stem}~" if number == 1 else f"{stem}-{number}~")
                if held is not None and not os.path.lexists(held.path):
                    return held
                if held is not None:
                    held.release()
    raise YardwrightError(
        say("No recovery copy can be written, neither beside the course nor at “{path}”.", path=stems[-1]),
        say("Save often, and check that these folders may be written to."),
    )


def _lock(path):
    lock = QLockFile(f"{path}lock")
    lock.setStaleLockTime(0)  # never by its age, only when its process is gone
    if lock.tryLock(0):
        return Held(path, lock)
    if lock.error() != QLockFile.LockError.LockFailedError:
        raise PermissionError(path)
    return None


# Putting back


@dataclass
class Plan:
    """What putting a copy back into one layer means.

    ``add``: rows; ``change``: ``[(fid, after)]``; ``delete``: fids. ``there``: how many things are there
    already. ``refused``: ``[(thing's name, why)]`` of what cannot be put back.
    """

    add: list = field(default_factory=list)
    change: list = field(default_factory=list)
    delete: list = field(default_factory=list)
    there: int = 0
    refused: list = field(default_factory=list)

    @property
    def number(self):
        """How many things it puts back."""
        return len(self.add) + len(self.change) + len(self.delete)


def plan_for(layer, kind, part):
    """How ``part``, an ``unsaved`` value, is put back into a layer as it is now, its edits included; a Plan.

    layer: a QgsVectorLayer, None where the project has none of this kind. Nothing is changed.
    """
    plan = Plan()
    why = _why_not_at_all(layer, part)
    rows = [row for row in part["added"] if not _refused(plan, kind, row, why or _why_not(layer, row))]
    if rows:
        known = Counter(_alike(row) for row in _rows_since(layer, part["newest"]))
        for row in rows:
            if known[_alike(row)] > 0:  # saved before the end, or put back already
                known[_alike(row)] -= 1
                plan.there += 1
            else:
                plan.add.append(row)
    now = {} if why else _rows_now(layer, [one["fid"] for one in (*part["changed"], *part["deleted"])])
    for change in part["changed"]:
        _plan_change(plan, layer, kind, change, now.get(change["fid"]), why)
    for change in part["deleted"]:
        _plan_deletion(plan, kind, change, now.get(change["fid"]), why)
    return plan


def _why_not_at_all(layer, part):
    if layer is None:
        return say("its layer is not in the project")
    if _crs_of(layer) != part["crs"]:
        return say("its layer is in another coordinate reference system now")
    return ""


def _why_not(layer, row):
    names = set(layer.fields().names())
    for name, value in row["values"].items():
        if name not in names:
            return say("its layer has no field “{name}”", name=name)
        if isinstance(value, dict) and value.get("is") == "other":
            return say("its field “{name}” holds what a copy cannot keep", name=name)
    return ""


def _refused(plan, kind, row, why):
    if why:
        plan.refused.append((name_of(kind, row), why))
    return bool(why)


def _plan_change(plan, layer, kind, change, now, why):
    before, after = change["before"], change["after"]
    why = why or _why_not(layer, after)
    if not why and (now is None or before is None):
        why = say("it is no longer in the course")
    if not why:
        pieces = [
            (now["values"].get(name), before["values"].get(name), value)
            for name, value in after["values"].items()
        ]
        if "geometry" in after:
            pieces.append((now["geometry"], before["geometry"], after["geometry"]))
        if all(current == wanted for current, _, wanted in pieces):
            plan.there += 1
            return
        if any(current not in (saved, wanted) for current, saved, wanted in pieces):
            why = say("it was changed in the course meanwhile")
    if not _refused(plan, kind, before or change["after"], why):
        plan.change.append((change["fid"], after))


def _plan_deletion(plan, kind, change, now, why):
    if not why and now is None:
        plan.there += 1
        return
    if not why and (change["before"] is None or _alike(now) != _alike(change["before"])):
        why = say("it was to be deleted, but was changed in the course meanwhile")
    if not _refused(plan, kind, change["before"] or {"values": {}}, why):
        plan.delete.append(change["fid"])


def _rows_now(layer, fids):
    columns = _columns(layer)
    request = QgsFeatureRequest().setFilterFids(fids)
    return {feature.id(): _row(feature, columns) for feature in layer.getFeatures(request)} if fids else {}


def _rows_since(layer, newest):
    """The rows of a layer that were not saved yet when the highest key saved was ``newest``."""
    columns = _columns(layer)
    since = math.inf if newest is None and layer.primaryKeyAttributes() == [] else newest or 0
    return [_row(one, columns) for one in layer.getFeatures() if one.id() < 0 or one.id() > since]


def _alike(row):
    """What two rows have in common that hold the same; a number is one number, whole or not."""
    values = (
        (name, json.dumps(value, sort_keys=True) if isinstance(value, (list, dict)) else value)
        for name, value in row["values"].items()
    )
    return row["geometry"], frozenset((name, value) for name, value in values if value is not None)


def name_of(kind, row):
    """A thing by its title and what it is called or where it belongs.

    >>> name_of("bunker", {"values": {"label": "Ness", "holes": "1"}})
    'Bunker “Ness”'
    >>> name_of("green", {"values": {"holes": "2"}})
    'Green (2)'
    """
    title = said(BY_NAME[kind].title) if kind in BY_NAME else kind
    values = row["values"]
    called = next((values[one] for one in ("label", "name", "id") if values.get(one)), None)
    if called:
        return f"{title} “{called}”"
    number = next((values[one] for one in ("number", "hole", "holes") if values.get(one)), None)
    return f"{title} ({number})" if number else title


def put_back(layer, plan):
    """Do in the edit buffer of a layer that is being edited what a Plan says.

    Raises YardwrightError when the layer does not take it; it is for the caller to undo what is done by then.
    """
    indices = {name: index for index, name in _columns(layer)}
    new = [_feature(layer, row, indices) for row in plan.add]
    done = not new or layer.addFeatures(new)
    for fid, after in plan.change:
        if "geometry" in after:
            done = layer.changeGeometry(fid, _shape(after["geometry"])) and done
        values = {indices[name]: value_of(value) for name, value in after["values"].items()}
        done = (not values or layer.changeAttributeValues(fid, values)) and done
    done = (not plan.delete or layer.deleteFeatures(plan.delete)) and done
    if not done:
        raise YardwrightError(
            say("The layer “{name}” did not take what was to be put back.", name=layer.name()),
            say("Save or undo what is being edited there, then try again."),
        )


def _feature(layer, row, indices):
    # It is made by QGIS for the sake of its key; what would be proposed for empty fields is not wanted.
    made = QgsVectorLayerUtils.createFeature(layer, _shape(row["geometry"]))
    feature = QgsFeature(made)
    for name, index in indices.items():
        feature.setAttribute(index, value_of(row["values"].get(name)))
    return feature
