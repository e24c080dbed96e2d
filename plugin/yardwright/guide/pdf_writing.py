"""A PDF as it is written: its objects, each stored once, and copies of what other PDFs hold."""

import hashlib
import zlib

from .pdf_objects import Reference, Stream

_LEFT_OUT = (b"/PieceInfo", b"/Metadata", b"/LastModified", b"/StructParent", b"/StructParents", b"/OC")
"""What programs keep beside what is shown, and what points into tables that are not copied."""
_FILTERS = (b"/Filter", b"/DecodeParms")
_DEEPEST = 150


def serialised(value):
    """A value as it stands in a PDF: those of ``pdf_objects``, int, float and str (a text).

    >>> serialised({b"/Size": [1, 2.5], b"/Title": "7th"})
    b'<</Size [1 2.5]/Title (7th)>>'
    """
    if isinstance(value, Reference):
        return b"%d %d R" % value
    if isinstance(value, bytes):
        return value
    if isinstance(value, str):
        return text_string(value)
    if isinstance(value, dict):
        return b"<<" + b"".join(key + b" " + serialised(one) for key, one in value.items()) + b">>"
    if isinstance(value, (list, tuple)):
        return b"[" + b" ".join(serialised(one) for one in value) + b"]"
    return as_number(value)


def as_number(value):
    """A number with six decimals at most: so many for scales, which are multiplied by a page’s points."""
    if isinstance(value, int):
        return b"%d" % value
    # Adding nothing makes zero of minus zero.
    return f"{round(value, 6) + 0.0:.6f}".rstrip("0").rstrip(".").encode()


def text_string(text):
    """A text for people: as it is where it is plain English, else in UTF-16."""
    if text.isascii() and text.isprintable():
        plain = text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)")
        return b"(" + plain.encode() + b")"
    return b"<FEFF" + text.encode("utf-16-be", "replace").hex().upper().encode() + b">"


class PdfWriting:
    """Writes objects to a binary file open for writing and reading, one after the other; ``finish`` ends it.

    The same objects in the same order give the same bytes. Raises OSError when the disk is full.
    """

    def __init__(self, file):
        self._file = file
        self._place = 0
        self._places = [None]
        self._values, self._streams = {}, {}
        self._name, self._sum = hashlib.sha256(), 0
        self._write(b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n")

    def reserve(self):
        """A Reference to an object that is put later."""
        self._places.append(None)
        return Reference(len(self._places) - 1, 0)

    def put(self, value, reference=None):
        """Store a value, as the object of a reserved Reference or a new one; returns that."""
        return self._put(serialised(value), reference)

    def put_once(self, value):
        """The same, but a value that is stored already is not stored again."""
        data = serialised(value)
        if data not in self._values:
            self._values[data] = self._put(data)
        return self._values[data]

    def put_stream(self, dictionary, chunks, length, reference=None):
        """Store a stream: its dictionary (without its length), its data in pieces, their length in bytes."""
        return self._put_stream(self._head(dictionary, length), chunks, reference)[0]

    def put_stream_once(self, dictionary, chunks, length):
        """The same, but what is stored already is not stored again. chunks: a function that gives them."""
        head = self._head(dictionary, length)
        stored = self._streams.setdefault(head, [])
        for reference, place in stored:
            if self._is_at(place, chunks()):
                return reference
        stored.append(self._put_stream(head, chunks()))
        return stored[-1][0]

    def finish(self, root, info):
        """Write the table of contents. root, info: References."""
        start = self._place
        self._write(b"xref\n0 %d\n0000000000 65535 f \n" % len(self._places))
        for place in self._places[1:]:
            self._write(b"%010d 00000 n \n" % place)
        # It names the file by what is in it, so that the same book has the same name whenever it is written.
        self._name.update(b"%d" % self._sum)
        name = b"<" + self._name.hexdigest()[:32].upper().encode() + b">"
        trailer = {b"/Size": len(self._places), b"/Root": root, b"/Info": info, b"/ID": [name, name]}
        self._write(b"trailer\n" + serialised(trailer) + b"\nstartxref\n%d\n%%%%EOF\n" % start)

    def _head(self, dictionary, length):
        return serialised({**dictionary, b"/Length": length})

    def _put(self, data, reference=None):
        reference = self._begin(reference)
        self._write(data + b"\nendobj\n")
        return reference

    def _put_stream(self, head, chunks, reference=None):
        """``(reference, place of the data)``."""
        reference = self._begin(reference)
        self._write(head + b"\nstream\n")
        start = self._place
        for chunk in chunks:
            self._sum = zlib.crc32(chunk, self._sum)
            self._file.write(chunk)
            self._place += len(chunk)
        self._write(b"\nendstream\nendobj\n")
        return reference, start

    def _is_at(self, place, chunks):
        """Whether this data has been written at a place."""
        self._file.seek(place)
        same = all(self._file.read(len(chunk)) == chunk for chunk in chunks)
        self._file.seek(self._place)
        return same

    def _begin(self, reference):
        reference = reference or self.reserve()
        self._places[reference.number] = self._place
        self._write(b"%d %d obj\n" % reference)
        return reference

    def _write(self, data):
        self._file.write(data)
        self._place += len(data)
        self._name.update(data)


class Copier:
    """Copies objects of a PdfFile into a PdfWriting; what is there already, from any file, is not stored
    again. Streams keep their bytes."""

    def __init__(self, source, writing):
        self.source, self.writing = source, writing
        self._copied = {}
        self._begun = []
        self._depth = 0

    def value(self, value):
        """A value with all its References as they are in the book."""
        self._depth += 1
        if self._depth > _DEEPEST:
            raise self.source.damaged()
        made = self._value(value)
        self._depth -= 1
        return made

    def _value(self, value):
        if isinstance(value, Reference):
            return self._reference(value)
        if isinstance(value, dict):
            if value.get(b"/Type") in (b"/Page", b"/Pages"):
                # A part of a page may point back to its page; what is copied here is no part of one.
                return b"null"
            return {key: self.value(one) for key, one in value.items() if key not in _LEFT_OUT}
        if isinstance(value, list):
            return [self.value(one) for one in value]
        return value

    def form(self, contents, dictionary):
        """The Reference of a picture (Form XObject) of a page's contents, as one stream.

        contents: the page's ``/Contents`` or None; dictionary: the picture's own, its References the book's.
        """
        streams = self._streams(contents)
        if len(streams) == 1:
            filters = {key: one for key, one in streams[0].dictionary.items() if key in _FILTERS}
            return self._stream(streams[0], {**dictionary, **self.value(filters)})
        data = zlib.compress(b"\n".join(map(self.source.unpacked, streams)))
        packed = {**dictionary, b"/Filter": b"/FlateDecode"}
        return self.writing.put_stream_once(packed, lambda: [data], len(data))

    def contents(self, contents):
        """The References of a page's content streams."""
        return [self._stream(stream, self._dictionary(stream)) for stream in self._streams(contents)]

    def _streams(self, contents):
        contents = self.source.get(contents)
        parts = contents if isinstance(contents, list) else [contents]
        streams = [part for part in map(self.source.get, parts) if part not in (None, b"null")]
        if not all(isinstance(stream, Stream) for stream in streams):
            raise self.source.damaged()
        return streams

    def _reference(self, reference):
        if reference in self._begun:
            # It leads back to itself: it is given its place now, and cannot be one that is stored already.
            if reference not in self._copied:
                self._copied[reference] = self.writing.reserve()
            return self._copied[reference]
        if reference in self._copied:
            return self._copied[reference]
        self._begun.append(reference)
        found = self.source.get(reference)
        made = self._dictionary(found) if isinstance(found, Stream) else self.value(found)
        self._begun.pop()
        place = self._copied.get(reference)
        if isinstance(found, Stream):
            self._copied[reference] = self._stream(found, made, place)
        elif place:
            self.writing.put(made, place)
        else:
            self._copied[reference] = self.writing.put_once(made)
        return self._copied[reference]

    def _dictionary(self, stream):
        """The copied dictionary of a stream, without its length: that is written as a plain number."""
        return self.value({key: one for key, one in stream.dictionary.items() if key != b"/Length"})

    def _stream(self, stream, dictionary, place=None):
        """Store a stream under a copied dictionary."""
        if place:
            return self.writing.put_stream(dictionary, self.source.chunks(stream), stream.length, place)
        return self.writing.put_stream_once(dictionary, lambda: self.source.chunks(stream), stream.length)
