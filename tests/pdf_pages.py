"""PDF pages for tests: made with Qt's QPdfWriter, and looked at from outside, with poppler's tools."""

import math
import subprocess
import zlib

import numpy as np

DPI = 254
"""Ten pixels a millimetre."""


def qt_page(path, number=1, size_mm=(100, 150), lossless=False, pages=1, colour="darkgreen"):
    """A page with all that a page of a guide may have on it: text, pictures, what shines through, patterns,
    gradients, a clip, a bar as long as its number. Its size is of whole points, rounded up."""
    from qgis.PyQt.QtCore import QMarginsF, QRectF, QSizeF, Qt
    from qgis.PyQt.QtGui import (
        QBrush,
        QColor,
        QFont,
        QLinearGradient,
        QPageSize,
        QPainter,
        QPainterPath,
        QPdfWriter,
    )

    points = QSizeF(*(math.ceil(side * 72 / 25.4 - 1e-6) for side in size_mm))
    writer = QPdfWriter(str(path))
    writer.setResolution(2540)
    writer.setPageSize(QPageSize(points, QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.ExactMatch))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    painter.setRenderHint(QPainter.RenderHint.LosslessImageRendering, lossless)
    for place in range(pages):
        if place:
            writer.newPage()
        painter.save()
        painter.scale(100, 100)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.drawImage(QRectF(10, 10, 60, 40), picture())
        painter.drawImage(QRectF(40, 30, 30, 30), veil())
        painter.fillRect(QRectF(10, 60, 30, 20), QBrush(QColor("blue"), Qt.BrushStyle.DiagCrossPattern))
        gradient = QLinearGradient(50, 60, 80, 80)
        gradient.setColorAt(0, QColor(255, 255, 0, 50))
        gradient.setColorAt(1, QColor("red"))
        painter.fillRect(QRectF(50, 60, 30, 20), gradient)
        path_ = QPainterPath()
        path_.addEllipse(QRectF(10, 90, 30, 30))
        painter.setOpacity(0.5)
        painter.setClipPath(path_)
        painter.fillRect(QRectF(5, 85, 40, 40), QColor(colour))
        painter.setClipping(False)
        painter.setOpacity(1)
        # A square whose place is known, and one that reaches over all edges of the page's corner.
        painter.fillRect(QRectF(50, 90, 10, 10), QColor("black"))
        painter.fillRect(QRectF(-5, -5, 11, 11), QColor("black"))
        painter.fillRect(QRectF(70, 105, number, 3), QColor("orange"))
        font = QFont("DejaVu Sans")
        font.setPixelSize(5)
        painter.setFont(font)
        painter.setPen(QColor("black"))
        painter.drawText(QRectF(10, 125, 85, 20), 0, f"Hole {number}: Bäche & Gräben")
        painter.restore()
    painter.end()
    return str(path)


def picture():
    from qgis.PyQt.QtGui import QImage

    y, x = np.mgrid[:80, :120]
    pixels = np.stack([(2 * x) % 256, (3 * y) % 256, (x * y) % 256, np.full_like(x, 255)], -1).astype(
        np.uint8
    )
    return QImage(pixels.tobytes(), 120, 80, QImage.Format.Format_RGBA8888).copy()


def veil():
    from qgis.PyQt.QtGui import QColor, QImage

    image = QImage(30, 30, QImage.Format.Format_ARGB32)
    image.fill(QColor(255, 0, 0, 100))
    return image


def plain_pdf(path, objects, trailer="", root=1):
    """A PDF of objects as they are given, numbered from 1: what Qt would not make."""
    data, places = b"%PDF-1.4\n", []
    for number, body in enumerate(objects, 1):
        places.append(len(data))
        data += b"%d 0 obj\n" % number + (body if isinstance(body, bytes) else body.encode()) + b"\nendobj\n"
    start = len(data)
    data += b"xref\n0 %d\n0000000000 65535 f \n" % (len(places) + 1)
    data += b"".join(b"%010d 00000 n \n" % place for place in places)
    ending = f"trailer\n<< /Size {len(places) + 1} /Root {root} 0 R {trailer} >>\nstartxref\n{start}\n%%EOF\n"
    path.write_bytes(data + ending.encode())
    return str(path)


def stream(data, entries=""):
    return f"<< /Length {len(data)} {entries} >>\nstream\n{data}\nendstream"


FLAG = "1 0 0 rg 10 20 60 30 re f 0 0 1 rg 10 20 20 10 re f"
"""A red box with a blue foot at its left, 60 by 30 points: it tells how it was turned and mirrored."""


def flag_pdf(path, page="", content=None, box="0 0 200 100", trailer=""):
    """A page of 200 by 100 points with FLAG on it. page: further entries of its dictionary."""
    content = content if content is not None else stream(FLAG)
    return plain_pdf(
        path,
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            f"<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [{box}] >>",
            f"<< /Type /Page /Parent 2 0 R /Contents 4 0 R {page} >>",
            content,
        ],
        trailer,
    )


def said_by(*command):
    done = subprocess.run(command, capture_output=True, text=True, timeout=120, check=True)
    # Poppler complains there of what is wrong with a file.
    assert not done.stderr, done.stderr
    return done.stdout


def words_on(path, page):
    return " ".join(said_by("pdftotext", "-f", str(page), "-l", str(page), str(path), "-").split())


def rendered(path, page=1, dpi=DPI):
    """A page as ``(rows, columns, 3)`` of bytes."""
    command = ["pdftoppm", "-cropbox", "-r", str(dpi), "-f", str(page), "-l", str(page), str(path)]
    done = subprocess.run(command, capture_output=True, timeout=120, check=True)
    assert not done.stderr, done.stderr
    _, size, _, pixels = done.stdout.split(b"\n", 3)
    columns, rows = map(int, size.split())
    return np.frombuffer(pixels, np.uint8).reshape(rows, columns, 3)


def assert_same_picture(one, other, folder, apart=0, share=0.0):
    """Two pictures of one size are alike: no more than a share of pixels more than so many levels apart.

    Where they are not, both and their difference are written to the folder.
    """
    assert one.shape == other.shape
    difference = np.abs(one.astype(float) - other).max(axis=2)
    wrong = (difference > apart).mean()
    if wrong > share:
        for name, pixels in (("one", one), ("other", other), ("difference", np.dstack([difference] * 3))):
            head = b"P6\n%d %d\n255\n" % one.shape[1::-1]
            (folder / f"{name}.ppm").write_bytes(head + pixels.astype(np.uint8).tobytes())
    assert wrong <= share, f"{wrong:.3%} of the pixels differ, the most by {difference.max()}: see {folder}"


def coarse(pixels, size=5):
    """A picture of the means of squares of pixels, for an edge may fall to either side of a pixel."""
    rows, columns = pixels.shape[0] // size, pixels.shape[1] // size
    whole = pixels[: rows * size, : columns * size]
    return whole.reshape(rows, size, columns, size, 3).mean(axis=(1, 3))


def dark_box(pixels):
    """Left, top, right, bottom of what is black, in mm."""
    rows, columns = np.nonzero(pixels.max(axis=2) < 60)
    return np.array([columns.min(), rows.min(), columns.max() + 1, rows.max() + 1]) * 25.4 / DPI


def packed_pdf(path, objects, beside=(), predictor=True, level=9):
    """A PDF as PDF 1.5 has it: ``objects``, numbered from 1, together in a stream, those ``beside`` (which are
    streams) after them, and the table of all in a stream. The first object is the catalogue."""
    first, head, body = b"%PDF-1.5\n", b"", b""
    for number, one in enumerate(objects, 1):
        head += b"%d %d " % (number, len(body))
        body += one.encode() + b" "
    pack = zlib.compress(head + body, level)
    count = len(objects)
    entries = f"/Type /ObjStm /N {count} /First {len(head)} /Filter /FlateDecode"
    bodies = [one.encode() for one in beside] + [_binary(pack, entries)]
    places = []
    for number, one in enumerate(bodies, count + 1):
        places.append(len(first))
        first += b"%d 0 obj\n" % number + one + b"\nendobj\n"
    pack_number, table_number = count + len(bodies), count + len(bodies) + 1
    rows = [(0, 0, 65535)] + [(2, pack_number, index) for index in range(count)]
    rows += [(1, place, 0) for place in [*places, len(first)]]
    table = [bytes([kind]) + place.to_bytes(4, "big") + last.to_bytes(2, "big") for kind, place, last in rows]
    entries = f"/Type /XRef /Size {len(rows)} /Root 1 0 R /W [1 4 2] /Filter [/FlateDecode]"
    if predictor:
        table = _up(table)
        entries += " /DecodeParms [<< /Predictor 12 /Columns 7 >>]"
    data = first + b"%d 0 obj\n" % table_number + _binary(zlib.compress(b"".join(table), level), entries)
    path.write_bytes(data + b"\nendobj\nstartxref\n%d\n%%%%EOF\n" % len(first))
    return str(path)


def _up(rows):
    above, made = bytes(len(rows[0])), []
    for row in rows:
        made.append(b"\2" + bytes((one - up) & 255 for one, up in zip(row, above)))
        above = row
    return made


def _binary(data, entries):
    return f"<< /Length {len(data)} {entries} >>\nstream\n".encode() + data + b"\nendstream"
