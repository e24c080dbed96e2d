"""All that belongs to an event in one ZIP that opens elsewhere: the course with this event alone, what lies
beside it, the image its pictures are cut from, photographs of its notes, and the guides that were made."""

import hashlib
import json
import os
import sqlite3
import tempfile
import zipfile
from contextlib import closing

from ..model.errors import Cancelled, YardwrightError
from ..model.words import said, say
from ..store.course_file import course_path, file_uri, open_course
from ..store.events import leave_event
from ..store.field_notes import read_notes
from ..store.files import written_beside
from ..store.image_dates import folder_of_dates, path_of
from ..store.reading import read_rows
from ..store.sources import names_of
from ..store.writing import editing
from .book_pages import CAUTIONS
from .page_templates import guide_folder

_DAY = (1980, 1, 1, 0, 0, 0)
"""The time of all files in it: the same contents give the same names, sizes and times."""
_CHUNK = 1 << 20
_MANIFEST, _README = "manifest.json", "read_me.txt"


def write_archive(place, event_name, images, guides, path, progress=None):
    """Write the archive of an event of the course at ``place`` to ``path``; ``(names in it, remarks)``.

    images: paths of images to go along; where one is a date of the course, the course in the archive finds it
    there. guides: paths of files to go along. progress: called with (done, total); False stops with
    Cancelled. Raises YardwrightError with nothing written.
    """
    with tempfile.TemporaryDirectory(prefix="yardwright-") as folder:
        remarks = []
        parts = _parts(place, event_name, images, guides, folder, remarks)
        try:
            with written_beside(path) as draft:
                _write(draft, parts, progress)
        except OSError as error:
            raise YardwrightError(
                say("“{path}” cannot be written ({reason}).", path=path, reason=error.strerror),
                say("Check that there is room on the disk, and that all files named can be read."),
            ) from error
    return [name for name, _ in parts], remarks


def _parts(place, event_name, images, guides, folder, remarks):
    """``[(name in the archive, path)]``, the course first."""
    own = course_path(place)
    copy = os.path.join(folder, os.path.basename(own))
    _copy_course(own, copy)
    parts = [(os.path.basename(own), copy)]
    for beside in (guide_folder(place), folder_of_dates(own)):
        parts += _below(beside, os.path.basename(beside))
    parts += _named("images", images)
    parts += _named("guides", guides)
    with closing(open_course(copy)) as layers:
        leave_event(layers, event_name)
        folder_of_course = os.path.dirname(os.path.abspath(own))
        _lead_to_images(layers, folder_of_course, dict(parts), remarks)
        parts += _photographs(layers, folder_of_course, remarks)
        text = _read_me(layers, event_name)
    _settle(own, copy)
    readme = os.path.join(folder, _README)
    with open(readme, "w", encoding="utf-8") as file:
        file.write(text)
    return [*parts, (_README, readme)]


def _copy_course(own, copy):
    """By SQLite's own backup: the file may be open."""
    try:
        uri = f"{file_uri(own)}?mode=ro"
        with closing(sqlite3.connect(uri, uri=True)) as old, closing(sqlite3.connect(copy)) as new:
            old.backup(new)
    except sqlite3.Error as error:
        raise YardwrightError(
            say("The course file “{path}” cannot be read ({reason}).", path=own, reason=error),
            say("Save the edits to it, and try again."),
        ) from error


def _settle(own, copy):
    """Take what was deleted out of the copy for good, and let its tables be as old as they are: a file that
    is passed on must not hold the pins of other events, and the same contents give the same bytes."""
    with closing(sqlite3.connect(f"{file_uri(own)}?mode=ro", uri=True)) as old:
        ages = old.execute("SELECT last_change, table_name FROM gpkg_contents").fetchall()
    with closing(sqlite3.connect(copy)) as new:
        new.execute("PRAGMA journal_mode = DELETE")
        new.executemany("UPDATE gpkg_contents SET last_change = ? WHERE table_name = ?", ages)
        new.commit()
        new.execute("VACUUM")


def _below(folder, name):
    """The files below a folder, ``[(name in the archive, path)]``; none where it is not there."""
    found = []
    for root, folders, files in os.walk(folder):
        folders.sort()
        for file in sorted(files):
            path = os.path.join(root, file)
            inner = os.path.relpath(path, folder).replace(os.sep, "/")
            if os.path.isfile(path) and not os.path.islink(path):
                found.append((f"{name}/{inner}", path))
    return found


def _named(folder, paths):
    """Files under a folder of the archive, each by a name of its own."""
    found, taken = [], set()
    for path in dict.fromkeys(map(os.path.abspath, paths)):
        stem, ending = os.path.splitext(os.path.basename(path))
        name, number = f"{folder}/{stem}{ending}", 1
        while name.casefold() in taken:
            number += 1
            name = f"{folder}/{stem}-{number}{ending}"
        taken.add(name.casefold())
        if not os.path.isfile(path):
            raise YardwrightError(say("“{path}” is not there.", path=path), say("Choose a file that is."))
        found.append((name, path))
        if os.path.isfile(path + ".aux.xml"):
            found.append((name + ".aux.xml", path + ".aux.xml"))
    return found


def _lead_to_images(layers, folder, parts, remarks):
    """Let the dates lead to the images in the archive; say which are not in it."""
    inside = {}
    for name, path in parts.items():
        for known in names_of(path):
            inside[known] = name
    changes = {}
    for fid, values, _ in read_rows(layers, "image", []):
        path = path_of(values.get("source", ""), folder)
        found = next((inside[one] for one in names_of(path) if one in inside), None)
        if found is not None:
            changes[fid] = {"source": found}
            if values.get("print_allowed") is False:
                licence = values.get("licence", "") or say("no licence is named")
                remarks.append(
                    say(
                        "the image “{image}” may not be printed ({licence}): see that it may be passed on",
                        image=values.get("id", ""),
                        licence=licence,
                    )
                )
        elif os.path.isfile(path):
            remarks.append(say("the image “{image}” is not in the archive", image=values.get("id", "")))
    if changes:
        with editing(layers, ["image"]) as edit:
            edit.change("image", changes)


def _photographs(layers, folder, remarks):
    """The photographs of the notes, and the notes led to them."""
    paths = {}
    for note in read_notes(layers):
        if note.picture:
            paths[note.picture] = os.path.join(folder, note.picture)
    lost = [picture for picture, path in paths.items() if not os.path.isfile(path)]
    remarks += [say("the photograph “{file}” is not there", file=picture) for picture in lost]
    there = {picture: path for picture, path in paths.items() if picture not in lost}
    parts = _named("photographs", there.values())
    names = {path: name for name, path in parts}
    changes = {}
    for fid, values, _ in read_rows(layers, "field_note", []):
        name = names.get(os.path.abspath(there.get(values.get("picture", ""), "")))
        if name:
            changes[fid] = {"picture": name}
    if changes:
        with editing(layers, ["field_note"]) as edit:
            edit.change("field_note", changes)
    return parts


def _read_me(layers, event_name):
    """What the archive is, whose images it holds, and the cautions."""
    lines = [say("The yardage guide of “{event}”: all that it is made from.", event=event_name), ""]
    lines.append(say("Unpack it into a folder and open the course file in QGIS with Yardwright."))
    credits = []
    for _, values, _ in read_rows(layers, "image", []):
        named = ", ".join(filter(None, (values.get("credit", ""), values.get("licence", ""))))
        credits.append(f"{values.get('id', '')}: {named or say('nobody is named')}")
    if credits:
        lines += ["", say("Images:"), *credits]
    lines += ["", *map(said, CAUTIONS), ""]
    return "\n".join(lines)


def _write(draft, parts, progress):
    total = sum(os.path.getsize(path) for _, path in parts) or 1
    done, sums = 0, {}
    with zipfile.ZipFile(draft, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        for name, path in parts:
            digest = hashlib.sha256()
            entry = zipfile.ZipInfo(name, _DAY)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            with open(path, "rb") as source, archive.open(entry, "w", force_zip64=True) as target:
                while True:
                    chunk = source.read(_CHUNK)
                    if not chunk:
                        break
                    digest.update(chunk)
                    target.write(chunk)
                    done += len(chunk)
                    if progress is not None and progress(done, total) is False:
                        raise Cancelled
            sums[name] = digest.hexdigest()
        text = json.dumps(
            {"made_with": "Yardwright", "sha256": sums}, indent=1, ensure_ascii=False, sort_keys=True
        )
        archive.writestr(zipfile.ZipInfo(_MANIFEST, _DAY), text)
