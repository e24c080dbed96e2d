"""A planned guide brought to paper: page by page through QGIS's layouts, painted anew only where something
changed, then joined or imposed."""

import tempfile
from contextlib import contextmanager
from dataclasses import dataclass, replace

from qgis.core import QgsLayoutExporter, QgsProject
from qgis.PyQt.QtCore import QSize

from ..imagery.image import OutsideImage
from ..imagery.margins import KINDS as OUTLINED
from ..imagery.margins import STRENGTH
from ..measure.hole import CourseIndex
from ..model.errors import Cancelled, YardwrightError
from ..model.guide_pages import pages_for
from ..model.remarks import Remark
from ..model.words import say
from .book import course_key, plan_book
from .book_figures import BookFigures, made_of
from .drawing import BARE, Plate
from .expressions import add_expressions, global_context, worked_out
from .hole_page import frames_in_pixels
from .page_cache import Bytes, PageCache, key_of, page_key
from .page_design import parts_of
from .page_layouts import PageContent, frames_of, layout_of
from .page_painting import FORMS, paint_page
from .page_templates import empty_layout, guide_folder, template_of
from .pdf_join import BookInfo, Leaf, fit, impose, join
from .pictures_ahead import PicturesAhead
from .retouching import Retouch
from .rules import stop_for
from .sponsor_pages import no_larger

KINDS = ("cover", "scorecard", "overview", "hole", "pins", "notes", "text", "sponsor")
"""The kinds of pages that a guide has."""

_HOLE_PARTS = ("picture", "overlay", "ladder", "green", "head", "notes", "foot")


_measured = {}
"""``{key of a course: {hole: its tables}}`` of one course."""


@dataclass(frozen=True)
class Binding:
    """How pages are put together. marks: crop marks; paper_mm: thickness of the paper of a booklet; flip: the
    edge its sheets are turned about, ``short`` or ``long``. language: such as ``en``."""

    marks: bool = False
    paper_mm: float = 0.0
    flip: str = "short"
    language: str = ""


class GuideMaker:
    """Makes the guide of a Course whose file lies at ``place``, in QGIS's main thread.

    event: a model Event or None. image: a ``book_image.BookImage`` or None. cache: a PageCache, None for the
    user's own. pages: all GuidePages that the course file keeps. After ``write``, remarks holds what was
    found out while pages were made.
    """

    def __init__(self, course, place, event=None, image=None, cache=None, pages=()):
        self.course, self.place, self.event, self.image = course, place, event, image
        self.cache = PageCache() if cache is None else cache
        self.pages = pages_for(pages, "" if event is None else event.name)
        self.index = CourseIndex(course)
        self.key = course_key(course)
        self.figures = BookFigures(course, () if event is None else (event,), self.index, _tables(self.key))
        self.remarks = []
        self._of_course = None

    def plan(self, wanted, progress=None):
        """The Book, as ``book.plan_book`` has it, with the course's own templates; without pages that are
        wanted, of those that the course file keeps."""
        templates = {kind: self._template(kind, wanted) for kind in KINDS}
        boxes = {
            kind: frames_of(empty_layout(QgsProject.instance(), template))
            for kind, template in templates.items()
            if template.data
        }
        with self._expressions():
            descriptions, told = self._descriptions()
            pages, more = self._texts(wanted.pages or self.pages)
            folder = guide_folder(self.place)
            book = plan_book(
                self.course,
                self.event,
                replace(wanted, descriptions=descriptions, pages=pages, folder=folder),
                self.figures,
                self.image,
                boxes,
                self.index,
                progress,
                self.key,
            )
        kept = [remark for template in templates.values() for remark in template.remarks]
        remarks = tuple(dict.fromkeys([*kept, *told, *more, *book.remarks]))
        return replace(book, remarks=remarks, templates=templates)

    def write(self, book, path, binding=None, rules_off=(), progress=None):
        """Write a planned Book as a PDF; what was at ``path`` stays until all is there.

        rules_off: keys of ``rules.RULES`` that do not apply, beside those of the event. progress: called with
        (done, total) pages; when it returns False, Cancelled is raised. Raises YardwrightError for a rule
        that is broken, and when the file cannot be written.
        """
        own = () if self.event is None else self.event.rules_off
        stop_for(book.broken, (*rules_off, *own))
        self.remarks = []
        leaves = []
        total = len(book.pages) + 1
        with self._expressions():
            keyed = [None if page.given_page else self._keyed(book, page) for page in book.pages]
            with PicturesAhead(self._cut, self._to_cut(book.pages, keyed), progress) as ahead:
                for page, known in zip(book.pages, keyed):
                    _go_on(progress, len(leaves), total)
                    leaves.append(self._leaf(book, page, known, ahead, progress))
        _go_on(progress, len(leaves), total)
        self._bind(book, leaves, path, binding or Binding(), _going(progress))
        self.cache.keep_small()

    def shown(self, book, page, width):
        """A page of a planned Book as a QImage about so many pixels wide, painted by the layout that the book
        is; None of a page taken from another's PDF, which is not painted here."""
        if page.given_page:
            return None
        dpi = width / book.wanted.size[0] * 25.4
        with self._expressions(), tempfile.TemporaryDirectory(prefix="yardwright-") as folder:
            layout = self._laid_out(book, page, folder)
            return QgsLayoutExporter(layout).renderPageToImage(0, QSize(), dpi)

    def layout(self, book, page, folder):
        """The QgsPrintLayout of a page of a planned Book, for the current project; its picture is written
        into a folder, which has to outlive it. None of a page taken from another's PDF."""
        if page.given_page:
            return None
        with self._expressions():
            return self._laid_out(book, page, folder)

    def _laid_out(self, book, page, folder):
        template = book.templates[page.kind]
        content = self._filled(template, self._content(template, page), page, folder, None)
        return layout_of(QgsProject.instance(), template, content)

    def shown_key(self, book, page, width):
        """What the picture of a page is known by: one that is the same need not be painted again."""
        template = book.templates[page.kind]
        key = page_key(template, self._content(template, page), FORMS[book.wanted.form])
        return key_of(key, page.given, page.given_page, width)

    def _bind(self, book, leaves, path, binding, progress):
        info = BookInfo(
            title=say("{title}: yardage guide", title=book.title),
            subject=self.course.name,
            language=binding.language,
        )
        if book.wanted.form == "booklet":
            creep, flip = binding.paper_mm, binding.flip
            impose(leaves, path, info, None, creep, flip, binding.marks, progress)
        else:
            join(leaves, path, info, binding.marks, progress)

    # Pages

    def _to_cut(self, pages, keyed):
        """The pages whose pictures can be cut in another thread, and have to be: they are not kept."""
        if self.image is None or not self.image.cut_anywhere:
            return []
        pictured = [
            (page, known) for page, known in zip(pages, keyed) if page.hole is not None and page.pictured
        ]
        return [page for page, (_, _, key) in pictured if not self.cache.has(key)]

    def _keyed(self, book, page):
        """``(template, content without its picture, key)`` of a page."""
        template = book.templates[page.kind]
        content = self._content(template, page)
        return template, content, page_key(template, content, FORMS[book.wanted.form])

    def _leaf(self, book, page, known, ahead, progress):
        form = FORMS[book.wanted.form]
        if page.given_page:
            try:
                return self._given_leaf(book, page, form)
            except YardwrightError as error:
                # The page says what it lacks.
                page = replace(page, variables=self._lacking(page, error), given="", given_page=0)
                known = self._keyed(book, page)
        template, content, key = known

        def make(path):
            self._paint(template, content, page, form, path, ahead, progress)

        before = self.cache.made
        path = self.cache.page(key, make)
        if self.cache.made == before:
            # What is wrong with its texts is told again, though nothing is painted.
            layout_of(QgsProject.instance(), template, PageContent(content.variables), self.remarks)
        return Leaf(
            path,
            page.title,
            page.level,
            page.name,
            page.links,
            form.bleed_mm,
            tuple(book.wanted.size),
        )

    def _given_leaf(self, book, page, form):
        """A page of another's PDF. Raises YardwrightError where it turns out to be damaged."""
        size = tuple(book.wanted.size)
        key = key_of("given", Bytes(page.given), page.given_page, size, form)
        path = self.cache.page(
            key, lambda draft: fit(page.given, draft, size, form.bleed_mm, page.given_page)
        )
        return Leaf(path, page.title, page.level, page.name, page.links, form.bleed_mm, size)

    def _lacking(self, page, error):
        """The variables of a page whose file cannot be used; it is told too."""
        self.remarks.append(Remark(say("“{page}”: {told}", page=page.title, told=error.what), "file"))
        return {**page.variables, "caption": error.what}

    def _content(self, template, page):
        own = key_of(self.course, self.event) if template.data else ""
        # As text, for that is many times quicker than to take drawings apart.
        about = repr(sorted(page.drawings.items())), own
        if page.given and not page.given_page:
            about = (*about, Bytes(page.given))
        if page.hole is not None and page.pictured:
            plan = page.hole.plan
            grid = plan.grid
            about = (
                *about,
                (grid.geotransform, grid.width, grid.height, plan.panel.dpi, self.image.stamp, STRENGTH),
                [(one.kind, one.geometry) for one in self._outlined(plan)],
            )
        return PageContent(page.variables, {}, page.drawings, about)

    def _outlined(self, plan):
        corners = plan.grid.corners()
        within = self.index.within((*corners.min(axis=0), *corners.max(axis=0)))
        return [one for one in within if one.kind in OUTLINED]

    def _paint(self, template, content, page, form, path, ahead, progress):
        with tempfile.TemporaryDirectory(prefix="yardwright-") as folder:
            if page in ahead:
                content = self._pictured(content, page, lambda: ahead.picture(page))
            else:
                content = self._filled(template, content, page, folder, progress)
            layout = layout_of(QgsProject.instance(), template, content, self.remarks)
            paint_page(layout, path, form)

    def _filled(self, template, content, page, folder, progress):
        """A page's content with its picture, if it has one."""
        if page.hole is not None:
            return self._pictured(content, page, lambda: self._cut(page, folder, _going(progress)))
        if page.given and not page.given_page:
            return self._given(template, content, page, folder)
        return content

    def _cut(self, page, folder, progress):
        """``(path, remarks)`` of a hole's picture, in any thread if the image lets. Raises OutsideImage."""
        plan = page.hole.plan
        retouch = Retouch(STRENGTH).of(plan, self._outlined(plan), ())
        return self.image.picture(plan, folder, retouch, progress)

    def _pictured(self, content, page, cut):
        """A hole's content with its picture, which ``cut()`` gives, or with a word that there is none."""
        if page.pictured:
            try:
                made, told = cut()
            except OutsideImage as error:
                self.remarks.append(Remark(f"{page.title}: {error}", "no_picture"))
            else:
                self.remarks += [Remark(f"{page.title}: {remark}", "image") for remark in told]
                return replace(content, pictures={"picture": made})
        overlay = content.drawings["overlay"]
        plate = Plate(((BARE, say("no image of this hole")),), 7.0)
        items = (*overlay.items, *plate.items(overlay.width / 2, overlay.height - 6.0, "lacking"))
        drawings = {**content.drawings, "overlay": replace(overlay, items=items)}
        return replace(content, drawings=drawings)

    def _given(self, template, content, page, folder):
        """A sponsor's content with the image, or with a word that it cannot be read."""
        box = next(one.box for one in parts_of("sponsor", template.size) if one.id == "picture")
        try:
            return replace(content, pictures={"picture": no_larger(page.given, box[2:], folder)})
        except YardwrightError as error:
            return replace(content, variables=self._lacking(page, error))

    def _template(self, kind, wanted):
        frames = None
        if kind == "hole":
            found = frames_in_pixels(wanted.size, wanted.form, wanted.dpi)
            frames = {name: found[name] for name in _HOLE_PARTS}
        return template_of(kind, self.place, wanted.size, frames)

    # Expressions

    @contextmanager
    def _expressions(self):
        """While it runs, expressions know the functions, and look into this course."""
        take_away = add_expressions()
        try:
            with made_of(self.figures):
                yield
        finally:
            take_away()

    def _texts(self, pages):
        """``(pages, remarks)``, the figures in their texts worked out."""
        context, made, remarks = global_context(), [], []
        for page in pages:
            text, errors = worked_out(page.text, context)
            made.append(replace(page, text=text))
            remarks += [
                Remark(say("“{page}”: {told}", page=page.called, told=error), "expression")
                for error in errors
            ]
        return tuple(made), remarks

    def _descriptions(self):
        """``({hole: text}, remarks)``, the figures in them worked out."""
        context, made, remarks = global_context(), {}, []
        for hole in self.course.holes:
            made[hole.number], errors = worked_out(hole.description, context)
            remarks += [
                Remark(say("hole {number}: {error}", number=hole.number, error=error), "expression")
                for error in errors
            ]
        return made, remarks


def _tables(key):
    """The tables of the course that was made a guide of last, for the next one of it."""
    if key not in _measured:
        _measured.clear()
    return _measured.setdefault(key, {})


def _go_on(progress, done, total):
    if progress is not None and progress(done, total) is False:
        raise Cancelled


def _going(progress):
    """The progress of a picture, which only asks whether to go on."""
    return None if progress is None else lambda done, total: progress(None, None) is not False
