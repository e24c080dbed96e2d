"""The objects of a PDF, read one at a time; its streams are never held whole.

This reads what Qt's QPdfWriter makes (Qt 5.15 and 6) and what other programs make, with plain or packed
cross-reference tables, but nothing that is locked. A value is

- ``bytes``: a name, number, string or keyword as it stands in the file, ``b"/Page"``, ``b"12.5"``, ``b"(a)"``
- ``list`` and ``dict``, a dict's keys being names, ``b"/Type"``
- ``Reference`` to an object, and ``Stream``.
"""

import math
import os
import re
from dataclasses import dataclass
from typing import NamedTuple

from ..model.errors import YardwrightError
from ..model.words import say
from .pdf_unpacking import TooLarge, foretold, inflated

_SPACE = rb"\0\t\n\f\r "
_PLAIN = rb"[^\0\t\n\f\r ()<>\[\]{}/%]"
_GAP = rb"(?:[" + _SPACE + rb"]|%[^\r\n]*[\r\n])*"
_TOKEN = re.compile(
    _GAP + rb"(<<|>>|[\[\](]|/" + _PLAIN + rb"*|<[0-9A-Fa-f" + _SPACE + rb"]*>|" + _PLAIN + rb"+)"
)
_REFERENCE = re.compile(rb"[" + _SPACE + rb"]+(\d{1,10})[" + _SPACE + rb"]+R(?!" + _PLAIN + rb")")
_ESCAPE_OR_BRACKET = re.compile(rb"\\.|[()]", re.DOTALL)
_ENTRY = re.compile(rb"(\d{10}) (\d{5}) ([nf])[" + _SPACE + rb"]*")
_SECTION = re.compile(rb"[" + _SPACE + rb"]*(\d{1,10})[" + _SPACE + rb"]+(\d{1,10})[" + _SPACE + rb"]*")
_STARTXREF = re.compile(rb"startxref[" + _SPACE + rb"]+(\d{1,20})[" + _SPACE + rb"]+%%EOF")
_NUMBER = re.compile(rb"[+-]?(\d+\.?\d*|\.\d+)")

_FIRST_WINDOW = 1 << 10
_LARGEST_WINDOW = 1 << 25
_CHUNK = 1 << 18
_AHEAD = 64
"""So many bytes of a window are kept for looking ahead; a token that reaches into them is read in a larger
window."""
_PACKS_KEPT = 8
_DEEPEST = 64
_TAIL = 2048


class Reference(NamedTuple):
    number: int
    generation: int


@dataclass(frozen=True)
class Stream:
    """A stream's dictionary, and where in the file its data lies, packed as it is."""

    dictionary: dict
    start: int
    length: int


class _Packed(NamedTuple):
    """Where an object lies that is in a stream with others."""

    stream: int
    index: int


class _Cut(Exception):
    """The window ended before the value did."""


class _Wrong(Exception):
    """What is written is no PDF."""


class _Window:
    """Reads values from a piece of a file. place: where it begins there; final: whether the file ends with
    it."""

    def __init__(self, data, place, final):
        self.data, self.place, self.final = data, place, final
        self.at = 0

    def token(self):
        found = _TOKEN.match(self.data, self.at)
        if found is None:
            raise _Wrong if self.final else _Cut
        self._goto(found.end())
        return found[1]

    def value(self, depth=0):
        token = self.token()
        if token == b"<<":
            return self._dictionary(depth + 1)
        if token == b"[":
            return self._array(depth + 1)
        if token == b"(":
            return self._string()
        if token in (b">>", b"]"):
            raise _Wrong
        if token.isdigit() and len(token) <= 10:
            found = _REFERENCE.match(self.data, self.at)
            if found:
                self._goto(found.end())
                return Reference(int(token), int(found[1]))
        return token

    def _goto(self, place):
        if not self.final and place > len(self.data) - _AHEAD:
            raise _Cut
        self.at = place

    def _peek(self):
        before = self.at
        token = self.token()
        return token, before

    def _dictionary(self, depth):
        made = {}
        for key in self._until(b">>", depth):
            if not isinstance(key, bytes) or key[:1] != b"/":
                raise _Wrong
            made[key] = self.value(depth)
        return made

    def _array(self, depth):
        return [*self._until(b"]", depth)]

    def _until(self, end, depth):
        if depth > _DEEPEST:
            raise _Wrong
        while True:
            token, before = self._peek()
            if token == end:
                return
            self.at = before
            yield self.value(depth)

    def _string(self):
        start, open_brackets, place = self.at - 1, 1, self.at
        while open_brackets:
            found = _ESCAPE_OR_BRACKET.search(self.data, place)
            if found is None:
                raise _Wrong if self.final else _Cut
            place = found.end()
            open_brackets += {b"(": 1, b")": -1}.get(found[0], 0)
        self._goto(place)
        return self.data[start:place]


class PdfFile:
    """A PDF open for reading; to be used in a ``with``.

    Raises YardwrightError when there is none, when it is damaged, and when it is of a kind that is not read
    here, such as a locked one.
    """

    def __init__(self, path):
        self.path = path
        try:
            self._file = open(path, "rb")  # noqa: SIM115 - closed by the ``with`` this is used in
            self._size = os.fstat(self._file.fileno()).st_size
        except OSError as error:
            raise self._unread(error) from error
        self._places = {}
        self._packs = {}
        self._opening = False
        self.trailer = {}
        try:
            self._read_tables()
        except BaseException:
            self._file.close()
            raise

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self._file.close()

    # Objects

    def get(self, value):
        """A value itself, an object for a Reference to it; ``b"null"`` for a reference to nothing."""
        for _ in range(_DEEPEST):
            if not isinstance(value, Reference):
                return value
            value = self._object(value)
        raise self.damaged()

    def number(self, value):
        """A value as a float."""
        value = self.get(value)
        if not isinstance(value, bytes) or not _NUMBER.fullmatch(value):
            raise self.damaged()
        number = float(value)
        if not math.isfinite(number):
            raise self.damaged()
        return number

    def dictionary(self, value):
        value = self.get(value)
        if not isinstance(value, dict):
            raise self.damaged()
        return value

    def chunks(self, stream):
        """The data of a Stream, piece by piece."""
        place, end = stream.start, stream.start + stream.length
        while place < end:
            piece = self._bytes(place, min(_CHUNK, end - place))
            yield piece
            place += len(piece)

    def unpacked(self, stream):
        """The data of a Stream, unpacked, as a whole."""
        filters, settings = (self._only(stream.dictionary.get(key)) for key in (b"/Filter", b"/DecodeParms"))
        if filters not in (b"null", b"/FlateDecode"):
            raise self.unknown(say("a part of it is packed in an unusual way"))
        data = b"".join(self.chunks(stream))
        try:
            if filters == b"/FlateDecode":
                data = inflated(data)
            return foretold(data, *self._predictor(settings)) if isinstance(settings, dict) else data
        except ValueError as error:
            raise self.damaged() from error
        except TooLarge as error:
            raise self.unknown(say("a part of it is too large")) from error

    def _predictor(self, settings):
        """``(kind, columns)`` of what was done before a stream was packed."""
        kind, columns, colours, bits = (
            int(self.number(settings.get(key, usual)))
            for key, usual in (
                (b"/Predictor", b"1"),
                (b"/Columns", b"1"),
                (b"/Colors", b"1"),
                (b"/BitsPerComponent", b"8"),
            )
        )
        if kind != 1 and (kind < 10 or colours != 1 or bits != 8):
            raise self.unknown(say("a part of it is packed in an unusual way"))
        return kind, columns

    def _only(self, value):
        """A value, or the only one of a list; ``b"null"`` for none."""
        value = self.get(value)
        if isinstance(value, list):
            value = self.get(value[0]) if len(value) == 1 else value or b"null"
        return b"null" if value is None else value

    def page(self, number=None):
        """The dictionary of a page, counted from 1, with what it inherits; None: of the only page.

        Raises YardwrightError when there is no such page, or more than one where one is wanted.
        """
        pages = self._all_pages()
        if number is not None:
            if not 1 <= number <= len(pages):
                raise YardwrightError(
                    say("“{path}” has no page {number}.", path=self.path, number=number),
                    say("Choose one of its {count} pages.", count=len(pages)),
                )
            return pages[number - 1]
        if len(pages) > 1:
            raise YardwrightError(
                say("“{path}” has {count} pages where one is wanted.", path=self.path, count=len(pages)),
                say("Save the page you want as a PDF of its own."),
            )
        return pages[0]

    def page_count(self):
        """How many pages it has, one at least."""
        return len(self._all_pages())

    def _all_pages(self):
        tree = self.dictionary(self.dictionary(self.trailer.get(b"/Root")).get(b"/Pages"))
        pages = [*self._pages(tree, {}, set(), 0)]
        if not pages:
            raise self.damaged()
        return pages

    def _pages(self, node, inherited, seen, depth):
        own = {
            key: node[key] for key in (b"/Resources", b"/MediaBox", b"/CropBox", b"/Rotate") if key in node
        }
        inherited = {**inherited, **own}
        if b"/Kids" not in node:
            yield {**node, **inherited}
            return
        kids = self.get(node[b"/Kids"])
        if depth > _DEEPEST or not isinstance(kids, list):
            raise self.damaged()
        for kid in kids:
            if not isinstance(kid, Reference) or kid in seen:
                raise self.damaged()
            seen.add(kid)
            yield from self._pages(self.dictionary(kid), inherited, seen, depth + 1)

    def _object(self, reference):
        window, value = self._parsed(reference)
        if isinstance(value, dict) and window.token() == b"stream":
            return self._stream(value, window)
        return value

    def _parsed(self, reference):
        """``(window, value)`` of an object, what follows the value still to come."""
        generation, place = self._places.get(reference.number, (0, None))
        if place is None or generation != reference.generation:
            return None, b"null"
        if isinstance(place, _Packed):
            return self._from_pack(place)
        return self._at(place, lambda window: self._numbered(window, reference))

    def _from_pack(self, place):
        """``(window, value)`` of an object that lies with others in a stream. The last such are kept."""
        if place.stream not in self._packs:
            if self._opening:
                # What is needed to open it lies within it.
                raise self.damaged()
            self._opening = True
            stream = self._object(Reference(place.stream, 0))
            if not isinstance(stream, Stream):
                raise self.damaged()
            if len(self._packs) >= _PACKS_KEPT:
                del self._packs[next(iter(self._packs))]
            self._packs[place.stream] = self._with_places(stream)
            self._opening = False
        data, places = self._packs[place.stream]
        if not place.index < len(places) or places[place.index] > len(data):
            raise self.damaged()
        window = _Window(data, 0, True)
        window.at = places[place.index]
        try:
            value = window.value()
        except _Wrong as error:
            raise self.damaged() from error
        # Streams never lie within others, but a dictionary may be followed by anything.
        return _Window(b"endobj", 0, True), value

    def _with_places(self, stream):
        """``(data, places)`` of the objects in a stream of them."""
        data = self.unpacked(stream)
        count, first = (int(self.number(stream.dictionary.get(key))) for key in (b"/N", b"/First"))
        head = data[: max(first, 0)].split()
        if not 0 <= 2 * count <= len(head) or not all(word.isdigit() and len(word) < 11 for word in head):
            raise self.damaged()
        return data, [first + int(place) for place in head[1 : 2 * count : 2]]

    def _numbered(self, window, reference):
        head = window.token(), window.token(), window.token()
        if head != (b"%d" % reference.number, b"%d" % reference.generation, b"obj"):
            raise _Wrong
        value = window.value()
        before = window.at
        # What follows is read here too, so that the window is surely large enough for it.
        if window.token() not in (b"stream", b"endobj"):
            raise _Wrong
        window.at = before
        return value

    def _stream(self, dictionary, window):
        if b"/F" in dictionary:
            raise self.unknown(say("a part of it lies in another file"))
        ahead = window.data[window.at : window.at + 2]
        start = window.place + window.at + (2 if ahead == b"\r\n" else 1)
        length = dictionary.get(b"/Length")
        if isinstance(length, Reference):
            # Not by way of ``get``: a length that is a stream itself could lead back here without end.
            _, length = self._parsed(length)
        if isinstance(length, Reference):
            raise self.damaged()
        length = int(self.number(length))
        if not 0 <= length < self._size or not self._bytes(start + length, 32).lstrip().startswith(
            b"endstream"
        ):
            raise self.damaged()
        return Stream(dictionary, start, length)

    # The file

    def _at(self, place, read):
        """``(window, value)``: what ``read(window)`` makes of the file from a place on."""
        size = _FIRST_WINDOW
        while size <= _LARGEST_WINDOW:
            data = self._bytes(place, size)
            window = _Window(data, place, place + len(data) >= self._size)
            try:
                return window, read(window)
            except _Cut:
                size *= 8
            except _Wrong as error:
                raise self.damaged() from error
        raise self.damaged()

    def _bytes(self, place, size):
        if not 0 <= place < self._size:
            raise self.damaged()
        try:
            self._file.seek(place)
            data = self._file.read(size)
        except OSError as error:
            raise self._unread(error) from error
        if not data:
            raise self.damaged()
        return data

    def _read_tables(self):
        if not self._size or not self._bytes(0, 8).startswith(b"%PDF-"):
            raise YardwrightError(
                say("“{path}” is no PDF.", path=self.path),
                say("Choose a PDF file, or make the page anew."),
            )
        tail = self._bytes(max(0, self._size - _TAIL), _TAIL)
        found = [*_STARTXREF.finditer(tail)]
        if not found:
            raise self.damaged()
        place, seen = int(found[-1][1]), set()
        while place is not None:
            if place in seen or place >= self._size:
                raise self.damaged()
            seen.add(place)
            older = self._read_table(place)
            self.trailer = {**older, **self.trailer}
            if b"/Encrypt" in older:
                raise self.unknown(say("it is locked"))
            place = int(self.number(older[b"/Prev"])) if b"/Prev" in older else None

    def _read_table(self, place):
        """Read the table at a place into ``_places``, newer entries going before; returns its trailer."""
        window, word = self._at(place, _Window.token)
        if word.isdigit():
            return self._read_packed_table(place)
        if word != b"xref":
            raise self.damaged()
        # Its end is read first: a packed table may stand beside it, and goes before it.
        sections, place = [], place + window.at
        while True:
            found = _SECTION.match(self._bytes(place, _AHEAD))
            if found is None:
                break
            entries, place = self._section(place + found.end(), int(found[1]), int(found[2]))
            sections.append(entries)
        _, (word, trailer) = self._at(place, lambda window: (window.token(), window.value()))
        if word != b"trailer" or not isinstance(trailer, dict):
            raise self.damaged()
        if b"/XRefStm" in trailer:
            self._read_packed_table(int(self.number(trailer[b"/XRefStm"])))
        for entries in sections:
            self._take(entries)
        return trailer

    def _read_packed_table(self, place):
        """The same of a table that is a stream; its dictionary is the trailer."""
        stream = self._table_stream(place)
        trailer = stream.dictionary
        widths, parts = (
            self.get(trailer.get(b"/W")),
            self.get(trailer.get(b"/Index", [b"0", trailer.get(b"/Size")])),
        )
        if not isinstance(widths, list) or len(widths) != 3 or not isinstance(parts, list):
            raise self.damaged()
        widths, parts = ([int(self.number(one)) for one in numbers] for numbers in (widths, parts))
        if min(widths) < 0 or not 0 < sum(widths) < 32:
            raise self.damaged()
        data, at, entries = self.unpacked(stream), 0, {}
        for first, count in zip(parts[::2], parts[1::2]):
            for number in range(first, min(first + count, first + len(data))):
                fields = []
                for width in widths:
                    fields.append(int.from_bytes(data[at : at + width], "big"))
                    at += width
                if at > len(data):
                    raise self.damaged()
                kind = fields[0] if widths[0] else 1
                if kind == 2:
                    entries[number] = 0, _Packed(fields[1], fields[2])
                else:
                    entries[number] = fields[2], fields[1] if kind == 1 else None
        self._take(entries)
        return trailer

    def _take(self, entries):
        for number, entry in entries.items():
            self._places.setdefault(number, entry)

    def _table_stream(self, place):
        def read(window):
            number, generation = window.token(), window.token()
            if not (number.isdigit() and generation.isdigit() and max(len(number), len(generation)) < 11):
                raise _Wrong
            window.at = 0
            return self._numbered(window, Reference(int(number), int(generation)))

        window, dictionary = self._at(place, read)
        if not isinstance(dictionary, dict) or window.token() != b"stream":
            raise self.damaged()
        return self._stream(dictionary, window)

    def _section(self, place, first, count):
        """``(entries, where they end)``."""
        if count * 18 > self._size:
            raise self.damaged()
        data = self._bytes(place, count * 20 + _AHEAD) if count else b""
        at, entries = 0, {}
        for number in range(first, first + count):
            found = _ENTRY.match(data, at)
            if found is None:
                raise self.damaged()
            at = found.end()
            entries[number] = int(found[2]), int(found[1]) if found[3] == b"n" else None
        return entries, place + at

    # What is wrong

    def damaged(self):
        return YardwrightError(
            say("“{path}” is damaged: it is not whole, or was not written as a PDF is.", path=self.path),
            say("Make the page anew, or take another copy of the file."),
        )

    def unknown(self, reason):
        return YardwrightError(
            say(
                "“{path}” is a kind of PDF that a book cannot take in: {reason}.",
                path=self.path,
                reason=reason,
            ),
            say("Print it to a new PDF from the program that shows it, and choose that one."),
        )

    def _unread(self, error):
        return YardwrightError(
            say("“{path}” cannot be read ({reason}).", path=self.path, reason=error.strerror),
            say("Check that the file is there and that you may read it."),
        )
