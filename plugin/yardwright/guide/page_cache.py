"""Pages that were painted before, known again by all that goes into them."""

import hashlib
import os
import shutil
from dataclasses import dataclass, fields, is_dataclass

from qgis.core import Qgis, QgsSettings
from qgis.PyQt.QtCore import QLocale, QStandardPaths, qVersion

from ..model.errors import YardwrightError
from ..model.words import say
from ..store.files import written_beside
from .book_figures import book_in_hand
from .lettering import font_of

LOOK = 1
"""Raised when the same content is painted otherwise than before."""

_MOST_BYTES = 1_000_000_000


@dataclass(frozen=True)
class Bytes:
    """A file that goes into a page: its bytes count, not where it lies."""

    path: str


def page_key(template, content, form):
    """What a page of a Template, a PageContent and a ``page_painting.PageForm`` is known by; a text.

    Where the content is ``about`` something, that stands for its pictures and drawings, which may be
    functions then, and for all figures that its labels look up. Otherwise pictures and drawings are taken as
    they are, and the whole course and the events of the book in hand, wherever in it figures may come from.
    """
    made = content.about
    if made is None:
        made = {name: Bytes(path) for name, path in content.pictures.items()}, content.drawings, _book()
    return key_of(template.key, content.variables, made, form, *_surroundings())


def _book():
    try:
        book = book_in_hand()
    except YardwrightError:
        return None
    return book.course, book.events


def key_of(*parts):
    """A text that tells values from all others: numbers, texts, bytes, days, lists, dicts, dataclasses,
    geometries, arrays and ``Bytes`` of files. Raises TypeError for what cannot be told apart."""
    digest = hashlib.sha256()
    for part in parts:
        _take(digest.update, part)
    return digest.hexdigest()


class PageCache:
    """A folder of painted pages. folder: None, the user's own for what can be made again. most: bytes it may
    grow to; the pages not used for longest go first."""

    def __init__(self, folder=None, most=_MOST_BYTES):
        self.folder = folder or os.path.join(
            QStandardPaths.writableLocation(QStandardPaths.StandardLocation.GenericCacheLocation),
            "yardwright",
            "pages",
        )
        self._most = most
        self._used = set()
        self.made = 0
        self.found = 0

    def page(self, key, make):
        """The path of a page; ``make(path)`` writes it when it is not there yet.

        Raises what ``make`` raises, and YardwrightError when the folder cannot be written to; a page is there
        as a whole or not at all.
        """
        path = os.path.join(self.folder, f"{key}.pdf")
        self._used.add(f"{key}.pdf")
        try:
            os.utime(path)
        except OSError:
            self._make(path, make)
            self.made += 1
        else:
            self.found += 1
        return path

    def has(self, key):
        """Whether a page is there."""
        return os.path.exists(os.path.join(self.folder, f"{key}.pdf"))

    def forget(self):
        """Take all pages away."""
        shutil.rmtree(self.folder, ignore_errors=True)

    def keep_small(self):
        """Take away the pages not used for longest until the folder is as small as it may be; what was asked
        for of this object stays."""
        try:
            entries = [(entry.stat(), entry) for entry in os.scandir(self.folder) if entry.is_file()]
        except OSError:
            return
        total = sum(state.st_size for state, _ in entries)
        for state, entry in sorted(entries, key=lambda one: one[0].st_mtime_ns):
            if total <= self._most:
                break
            if entry.name not in self._used:
                os.unlink(entry.path)
                total -= state.st_size

    def _make(self, path, make):
        try:
            os.makedirs(self.folder, exist_ok=True)
        except OSError as error:
            raise YardwrightError(
                say(
                    "The folder “{folder}” cannot be made ({reason}).",
                    folder=self.folder,
                    reason=error.strerror,
                ),
                say("Check that there is room on the disk and that you may write there."),
            ) from error
        with written_beside(path) as draft:
            make(draft)


def _surroundings():
    """What else the look of a page depends on."""
    # The family is what the system gives for it, and the language is in the words of the templates.
    return (
        LOOK,
        Qgis.QGIS_VERSION,
        qVersion(),
        font_of(10.0).family(),
        QLocale().name(),
        str(QgsSettings().value("locale/userLocale", "")),
    )


def _take(update, value):
    """Give a value to a digest so that no two values give the same bytes."""
    if isinstance(value, Bytes):
        update(f"file {_of(value.path)}\n".encode())
    elif value is None or isinstance(value, (bool, int, float)):
        update(f"{type(value).__name__} {value!r}\n".encode())
    elif isinstance(value, (str, bytes)):
        data = value if isinstance(value, bytes) else value.encode("utf-8", "surrogatepass")
        update(f"{type(value).__name__} {len(data)} ".encode() + data)
    elif isinstance(value, (list, tuple, set, frozenset)):
        ones = value if isinstance(value, (list, tuple)) else sorted(value)
        update(f"list {len(ones)}\n".encode())
        for one in ones:
            _take(update, one)
    elif hasattr(value, "items") and hasattr(value, "keys"):
        update(f"dict {len(value)}\n".encode())
        for name in sorted(value, key=lambda one: (type(one).__name__, one)):
            _take(update, name)
            _take(update, value[name])
    elif is_dataclass(value) and not isinstance(value, type):
        update(f"of {type(value).__qualname__}\n".encode())
        for one in fields(value):
            _take(update, one.name)
            _take(update, getattr(value, one.name))
    else:
        _take_other(update, value)


def _take_other(update, value):
    if hasattr(value, "wkb") and hasattr(value, "geom_type"):
        _take(update, ("geometry", value.wkb))
    elif hasattr(value, "tobytes") and hasattr(value, "dtype"):
        _take(update, ("array", str(value.dtype), list(value.shape), value.tobytes()))
    elif hasattr(value, "isoformat"):
        _take(update, ("day", value.isoformat()))
    else:
        raise ValueError(f"a page cannot be known by {type(value).__name__}")


def _of(path):
    digest = hashlib.sha256()
    with open(path, "rb") as file:
        for part in iter(lambda: file.read(1 << 20), b""):
            digest.update(part)
    return digest.hexdigest()
