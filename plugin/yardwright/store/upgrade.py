"""A course file of an older version brought up to date, on a copy that takes its place once it is sound."""

import os
import shutil
import sqlite3
from contextlib import closing, contextmanager
from itertools import count

from ..model.errors import YardwrightError
from ..model.kinds import KINDS, SCHEMA_VERSION, TABLES
from ..model.words import say
from .course_file import (
    OlderCourse,
    add_layer,
    check_course_file,
    column_of,
    course_path,
    file_uri,
    gdal_errors,
    lacking_layers,
    leave_write_ahead,
    take_a_backup,
)
from .files import written_beside

_NEW_IN = {2: ("event_flight", "pin_decision"), 4: ("field_note", "guide_page")}
"""The layers and tables that came with a version. Other ones that are missing were taken away."""


def upgrade_course(place):
    """Bring the course file at ``place`` up to date; the path the old file is kept at.

    That is NAME-1.gpkg, or the next free name, beside it. Missing tables and columns are added, with their
    styles; rows stay as they are. None where the file is up to date already. Raises YardwrightError with
    the file as it was; its own layers must not be in editing meanwhile.
    """
    path = os.path.realpath(course_path(place))  # a link stays one, and what it leads to is replaced
    try:
        check_course_file(path)
        return None
    except OlderCourse:
        leave_write_ahead(path)
    kept = None
    try:
        with written_beside(path) as draft:
            with _held(path) as database:
                database.backup_to(draft)
                with gdal_errors(path):
                    before = _rows(draft)
                    _bring_up(path, draft, database.version())
                    after = _rows(draft)
                _check(path, draft, before, after)
            shutil.copymode(path, draft)
            kept = _keep(path)
    except BaseException:
        if kept is not None:
            os.remove(kept)
        raise
    return kept


class _Old:
    """The old file, of which nothing changes while this is open."""

    def __init__(self, path):
        self._uri = f"{file_uri(path)}?mode=ro"

    def version(self):
        with closing(sqlite3.connect(self._uri, uri=True)) as database:
            return database.execute("SELECT schema_version FROM course_info").fetchone()[0]

    def backup_to(self, draft):
        # By SQLite and not as a copy of the file: closing a file lets go of all locks a process has on it.
        with closing(sqlite3.connect(self._uri, uri=True)) as old, closing(sqlite3.connect(draft)) as new:
            old.backup(new)


@contextmanager
def _held(path):
    """Give an _Old, with the file locked against all who would write to it."""
    try:
        uri = f"{file_uri(path)}?mode=rw"
        with closing(sqlite3.connect(uri, uri=True, timeout=1, isolation_level=None)) as database:
            mode = database.execute("PRAGMA journal_mode").fetchone()[0]
            if mode != "delete":
                raise sqlite3.OperationalError(mode)
            database.execute("BEGIN IMMEDIATE")
            yield _Old(path)
            database.execute("ROLLBACK")
    except sqlite3.Error as error:
        raise YardwrightError(
            say("The file “{path}” is damaged or in use ({reason}).", path=path, reason=error),
            say("Save or discard the edits to it, close it in other programs, then try again."),
        ) from error


def _bring_up(path, draft, version):
    """Add what the file lacks: tables, columns, the styles of both, and the version."""
    from osgeo import gdal

    from .styling import save_style, save_styles

    dataset = gdal.OpenEx(draft, gdal.OF_VECTOR | gdal.OF_UPDATE)
    if dataset is None:
        raise RuntimeError(gdal.GetLastErrorMsg() or say("GDAL gave no reason"))
    try:
        missing = [kind for kind in KINDS + TABLES if dataset.GetLayerByName(kind.name) is None]
        new = {name for since, names in _NEW_IN.items() if since > version for name in names}
        lost = [kind.name for kind in missing if kind.name not in new]
        if lost:
            raise lacking_layers(path, lost)
        dataset.StartTransaction()
        reference = dataset.GetLayerByName("hole").GetSpatialRef()
        for kind in missing:
            add_layer(dataset, kind, reference)
        grown = [kind for kind in KINDS + TABLES if kind not in missing and _add_columns(dataset, kind)]
        crs = _crs_text(reference)
        styles = dataset.GetLayerByName("layer_styles")
        if styles is None:
            save_styles(dataset, crs)
        else:
            for kind in [*missing, *grown]:
                save_style(styles, kind, crs)
        _set_all(dataset, "course_info", "schema_version", SCHEMA_VERSION)
        if dataset.CommitTransaction() != 0:
            raise RuntimeError(gdal.GetLastErrorMsg() or say("the last step failed"))
    finally:
        styles = dataset = None  # closes the file


def _crs_text(reference):
    authority, code = reference.GetAuthorityName(None), reference.GetAuthorityCode(None)
    return f"{authority}:{code}" if authority and code else ""


def _add_columns(dataset, kind):
    """Add the columns that a kind's table lacks, with their defaults in every row; whether it lacked any."""
    layer = dataset.GetLayerByName(kind.name)
    known = layer.GetLayerDefn()
    missing = [field for field in kind.fields if known.GetFieldIndex(field.name) < 0]
    for field in missing:
        layer.CreateField(column_of(field))
    for field in missing:
        if field.default is not None:
            _set_all(dataset, kind.name, field.name, field.default)
    return bool(missing)


def _set_all(dataset, table, column, value):
    """Set a column of a table in every row."""
    layer = dataset.GetLayerByName(table)
    for row in list(layer):
        row.SetField(column, int(value) if isinstance(value, bool) else value)
        layer.SetFeature(row)


def _rows(path):
    """All that a course file holds, by table and id: ``({column: text}, geometry)``."""
    from osgeo import gdal

    dataset = gdal.OpenEx(path, gdal.OF_VECTOR)
    try:
        layers = {kind.name: dataset.GetLayerByName(kind.name) for kind in KINDS + TABLES}
        return {
            name: {row.GetFID(): (_texts(row), _shape(row)) for row in layer}
            for name, layer in layers.items()
            if layer is not None
        }
    finally:
        layers = dataset = None  # closes the file


def _texts(row):
    names = [row.GetFieldDefnRef(place).GetName() for place in range(row.GetFieldCount())]
    return {name: row.GetFieldAsString(name) for name in names if not row.IsFieldNull(name)}


def _shape(row):
    shape = row.GetGeometryRef()
    return None if shape is None else bytes(shape.ExportToIsoWkb())


def _check(path, draft, before, after):
    """Raise YardwrightError unless the draft is a sound course file with the rows of the old one."""
    check_course_file(draft)
    with closing(sqlite3.connect(f"{file_uri(draft)}?mode=ro", uri=True)) as database:
        (sound,) = database.execute("PRAGMA integrity_check").fetchone()
    if sound != "ok":
        raise _failed(path, sound)
    for name, rows in before.items():
        for fid, (texts, shape) in rows.items():
            texts.pop("schema_version", None)
            new_texts, new_shape = after[name].get(fid, ({}, None))
            if shape != new_shape or not texts.items() <= new_texts.items():
                raise _failed(path, name)
        if len(after[name]) != len(rows):
            raise _failed(path, name)


def _failed(path, reason):
    return YardwrightError(
        say("The course file “{path}” could not be brought up to date ({reason}).", path=path, reason=reason),
        take_a_backup(),
    )


def _keep(path):
    """Give the file a second name, NAME-1 or the next free one; that path."""
    stem, ending = os.path.splitext(path)
    names = (f"{stem}-{number}{ending}" for number in count(1))
    kept = next(name for name in names if not os.path.lexists(name))
    try:
        os.link(path, kept)
    except OSError:  # a file system where no file has two names
        with written_beside(kept) as copy:
            shutil.copy2(path, copy)
    return kept
