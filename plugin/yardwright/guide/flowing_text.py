"""Markdown that flows over pages: set by Qt's own text documents in our lettering, so that right-to-left
texts and those written without spaces are broken as they should be.

Lengths within a document are its units, ``_UNITS`` to the millimetre. Needs a QGuiApplication.
"""

import os
from dataclasses import dataclass, replace

from qgis.PyQt.QtCore import QRectF, QSizeF, Qt, QUrl
from qgis.PyQt.QtGui import (
    QAbstractTextDocumentLayout,
    QColor,
    QImageReader,
    QPalette,
    QTextBlockFormat,
    QTextCharFormat,
    QTextCursor,
    QTextDocument,
    QTextFormat,
    QTextFrameFormat,
    QTextImageFormat,
    QTextLength,
    QTextOption,
    QTextTable,
)

from .lettering import MM_PER_POINT, font_of
from .pdf_join import Link
from .sheet_parts import HAIR, INK, LEAST_SIZE, Flow

_UNITS = 20.0
_HEADINGS = {1: 1.5, 2: 1.22, 3: 1.08}
"""How much larger than the text headings are set, by their level."""
_LEADING = 122.0
_LINK = "#1d4e6b"
_DOTS = 300.0
"""Dots per inch that pictures in a text are shown at, as long as they are no wider than it."""


@dataclass(frozen=True)
class Flowed:
    """A text laid out. flows: a Flow a page; links: of each page, ``pdf_join.Link``s about its frame's top
    left corner; lacking: names of pictures that cannot be read; letters: the text as it is read, for who
    looks whether there are fonts for it."""

    flows: tuple
    links: tuple
    lacking: tuple
    letters: str


def flowed(text, width, height, size, folder=""):
    """The Flowed of a Markdown text in frames of a width and height in mm.

    size: points of its letters, 6 at least. folder: where the names of pictures count from.
    """
    stamps = _stamps(text, folder)
    one = Flow(0.0, 0.0, width, height, text, max(size, LEAST_SIZE), 0, folder, stamps)
    document, lacking = _document(one)
    count = max(document.pageCount(), 1)
    flows = tuple(replace(one, page=page) for page in range(count))
    links = [[] for _ in range(count)]
    for box, to in _anchors(document):
        page = min(int(box.top() // (height * _UNITS)), count - 1)
        top = box.top() / _UNITS - page * height
        links[page].append(
            Link((box.left() / _UNITS, top, box.right() / _UNITS, top + box.height() / _UNITS), to)
        )
    return Flowed(flows, tuple(map(tuple, links)), lacking, document.toPlainText())


def paint_flow(item, painter, per_mm):
    """Paint the page of a Flow with a QPainter. per_mm: dots of its device."""
    document, _ = _document(item)
    painter.save()
    painter.translate(item.x * per_mm, item.y * per_mm)
    painter.scale(per_mm / _UNITS, per_mm / _UNITS)
    top = item.page * item.height * _UNITS
    painter.translate(0.0, -top)
    context = QAbstractTextDocumentLayout.PaintContext()
    context.palette.setColor(QPalette.ColorRole.Text, QColor(INK))
    frame = QRectF(0.0, top, item.width * _UNITS, item.height * _UNITS)
    painter.setClipRect(frame)
    # Qt draws each line that reaches into the clip: one that barely does is another page's last or first.
    slack = 0.35 * item.size * MM_PER_POINT * _UNITS
    context.clip = frame.adjusted(0.0, slack, 0.0, -slack)
    document.documentLayout().draw(painter, context)
    painter.restore()


def plain(text):
    """A text as Markdown that shows it letter by letter, on one line.

    >>> plain("*2 # 3*")
    '\\\\*2 \\\\# 3\\\\*'
    """
    made = "".join("\\" + one if one in "\\`*_{}[]()#+-.!|<>~" else one for one in str(text))
    return " ".join(made.split())


# A document


def _stamps(text, folder):
    """What tells the pictures of a text from what they were, by which a page is known again."""
    if "![" not in text or not folder:
        return ()
    found = []
    for root, _, files in os.walk(folder):
        for name in files:
            if name in text:
                state = os.stat(os.path.join(root, name))
                found.append((name, state.st_size, state.st_mtime_ns))
    return tuple(sorted(found))


def _document(flow):
    """``(QTextDocument, names of pictures that cannot be read)`` of a Flow, all its pages. Not kept: a
    document must not outlive the application."""
    document = QTextDocument()
    document.setUndoRedoEnabled(False)
    document.setUseDesignMetrics(True)
    document.setDocumentMargin(0.0)
    document.setIndentWidth(1.6 * flow.size * MM_PER_POINT * _UNITS)
    document.setDefaultFont(_font(flow.size))
    option = QTextOption()
    option.setTextDirection(Qt.LayoutDirection.LayoutDirectionAuto)
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    document.setDefaultTextOption(option)
    if flow.folder:
        document.setBaseUrl(QUrl.fromLocalFile(os.path.join(flow.folder, "")))
    document.setMarkdown(flow.text)
    lacking = _set(document, flow.width * _UNITS, flow.size, flow.folder)
    document.setPageSize(QSizeF(flow.width * _UNITS, flow.height * _UNITS))
    _keep_headings(document, flow.height * _UNITS)
    _part_at_pages(document, flow.height * _UNITS)
    return document, lacking


def _font(size, bold=False):
    font = font_of(size, bold)
    # Letters are measured and painted in the document's units, whatever the device's dots are.
    font.setPixelSize(max(round(size * MM_PER_POINT * _UNITS), 1))
    return font


def _set(document, width, size, folder):
    """Give each paragraph its letters and its room; the names of pictures that cannot be read."""
    lacking = []
    em = size * MM_PER_POINT * _UNITS
    block = document.begin()
    while block.isValid():
        level = block.blockFormat().headingLevel()
        large = size * _HEADINGS.get(level, 1.0)
        made = QTextBlockFormat()
        made.setLineHeight(_LEADING if not level else 108.0, _proportional())
        in_list = block.textList() is not None
        first = block == document.begin()
        made.setTopMargin(0.0 if first else (0.9 if level else 0.12 if in_list else 0.0) * em)
        made.setBottomMargin((0.3 if level else 0.18 if in_list else 0.55) * em)
        cursor = QTextCursor(block)
        if isinstance(cursor.currentTable(), QTextTable):
            made.setTopMargin(0.1 * em)
            made.setBottomMargin(0.1 * em)
        cursor.mergeBlockFormat(made)
        lacking += _letters(document, block, large, bool(level), width, folder)
        block = block.next()
    for frame in document.rootFrame().childFrames():
        if isinstance(frame, QTextTable):
            _set_table(frame, width, em)
    return tuple(dict.fromkeys(lacking))


def _letters(document, block, size, bold, width, folder):
    """The letters of a paragraph, run by run: bold and slanted ones stay so."""
    runs = []
    at = block.begin()
    while not at.atEnd():
        fragment = at.fragment()
        if fragment.isValid():
            runs.append((fragment.position(), fragment.length(), fragment.charFormat()))
        at += 1
    lacking = []
    for position, length, old in runs:
        cursor = QTextCursor(document)
        cursor.setPosition(position)
        cursor.setPosition(position + length, QTextCursor.MoveMode.KeepAnchor)
        if old.isImageFormat():
            lacking += _set_image(cursor, old.toImageFormat(), width, folder)
            continue
        font = _font(size, bold or old.fontWeight() > 50)
        font.setItalic(old.fontItalic())
        made = QTextCharFormat()
        made.setFont(font)
        made.setForeground(QColor(_LINK if old.isAnchor() else INK))
        if old.isAnchor():
            made.setAnchor(True)
            made.setAnchorHref(old.anchorHref())
        if old.fontStrikeOut():
            made.setFontStrikeOut(True)
        cursor.setCharFormat(made)
    plain_run = QTextCharFormat()
    plain_run.setFont(_font(size, bold))
    QTextCursor(block).mergeBlockCharFormat(plain_run)
    return lacking


def _set_image(cursor, image, width, folder):
    """A picture in the text no wider than it; its name where it cannot be read."""
    path = image.name()
    path = path if os.path.isabs(path) else os.path.join(folder, path)
    size = QImageReader(path).size()
    if not size.isValid() or size.isEmpty():
        name = image.name()
        cursor.insertText(f"[{name}]")
        return [name]
    wide = min(size.width() / _DOTS * 25.4 * _UNITS, width)
    made = QTextImageFormat(image)
    made.setName(path)
    made.setWidth(wide)
    made.setHeight(wide * size.height() / size.width())
    cursor.setCharFormat(made)
    return []


def _set_table(table, width, em):
    made = table.format()
    made.setWidth(QTextLength(QTextLength.Type.PercentageLength, 100))
    made.setBorder(0.14 * _UNITS)
    made.setBorderBrush(QColor(HAIR))
    made.setBorderStyle(QTextFrameFormat.BorderStyle.BorderStyle_Solid)
    made.setBorderCollapse(True)
    made.setCellSpacing(0.0)
    made.setCellPadding(0.32 * em)
    made.setTopMargin(0.35 * em)
    made.setBottomMargin(0.7 * em)
    table.setFormat(made)


def _keep_headings(document, height):
    """Have no heading as the last line of a page."""
    layout, before = document.documentLayout(), QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore
    for _ in range(document.blockCount()):
        block = document.begin()
        moved = False
        while block.isValid() and block.next().isValid():
            if block.blockFormat().headingLevel():
                own, following = (layout.blockBoundingRect(one) for one in (block, block.next()))
                ends = following.top() + min(following.height(), 2.2 * own.height())
                breaks = block.blockFormat().pageBreakPolicy()
                parted = int(own.top() // height) != int(ends // height) and own.top() % height > 1.0
                if parted and breaks != before:
                    made = QTextBlockFormat()
                    made.setPageBreakPolicy(before)
                    QTextCursor(block).mergeBlockFormat(made)
                    moved = True
                    break
            block = block.next()
        if not moved:
            return


def _part_at_pages(document, height):
    """Part each paragraph that runs on from page to page at the line where it does, which leaves its lines as
    they are. Of one on two pages Qt would draw a line too much on the second, out of sight but there for
    whoever copies or reads out the text."""
    layout = document.documentLayout()
    block = document.begin()
    while block.isValid():
        at = _first_on_next_page(block, layout.blockBoundingRect(block).top(), height)
        if at is not None and QTextCursor(block).currentTable() is None:
            upper, lower = (QTextBlockFormat(block.blockFormat()) for _ in range(2))
            upper.setBottomMargin(0.0)
            lower.setTopMargin(0.0)
            lower.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_Auto)
            if block.textList() is not None:
                # What goes on has no mark of its own.
                lower.setObjectIndex(-1)
                lower.setIndent(block.textList().format().indent())
            cursor = QTextCursor(block)
            cursor.setBlockFormat(upper)
            cursor.setPosition(block.position() + at)
            cursor.insertBlock(lower)
        block = block.next()


def _first_on_next_page(block, top, height):
    """Where the text begins that lies on another page than the paragraph's first line; None of none."""
    lines = [block.layout().lineAt(number) for number in range(block.layout().lineCount())]
    pages = [int((top + line.y() + 1.0) // height) for line in lines]
    return next((line.textStart() for line, page in zip(lines, pages) if page != pages[0]), None)


def _anchors(document):
    """``(QRectF, address)`` of each line of each link."""
    layout = document.documentLayout()
    block = document.begin()
    while block.isValid():
        corner = layout.blockBoundingRect(block).topLeft()
        at = block.begin()
        while not at.atEnd():
            fragment = at.fragment()
            if fragment.isValid() and fragment.charFormat().isAnchor():
                yield from _boxes(block, corner, fragment)
            at += 1
        block = block.next()


def _boxes(block, corner, fragment):
    start = fragment.position() - block.position()
    end = start + fragment.length()
    for number in range(block.layout().lineCount()):
        line = block.layout().lineAt(number)
        first, last = max(start, line.textStart()), min(end, line.textStart() + line.textLength())
        if first >= last:
            continue
        left, right = sorted(_across(line, place) for place in (first, last))
        box = QRectF(left, line.y(), right - left, line.height()).translated(corner)
        yield box, fragment.charFormat().anchorHref()


def _across(line, place):
    x = line.cursorToX(place)
    return x[0] if isinstance(x, tuple) else x


def _proportional():
    kinds = QTextBlockFormat.LineHeightTypes
    value = kinds.ProportionalHeight
    return int(value.value if hasattr(value, "value") else value)
