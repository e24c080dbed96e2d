"""The pages a course or an event wants in its guide: rows of the table guide_page <-> model GuidePages."""

from ..model.course import Feature
from ..model.guide_pages import PAGE_KINDS, GuidePage
from ..model.kinds import BY_NAME
from ..model.words import say
from .reading import left_out, read_rows
from .writing import editing, row_of

_FIELDS = ("title", "text", "source", "event", "note")


def read_guide_pages(course_layers, problems=None):
    """All GuidePages that the layers say at this moment, a tuple, each list in its order.

    Texts on rows that were left out are appended to the list ``problems``.
    """
    kind, problems = BY_NAME["guide_page"], [] if problems is None else problems
    found = []
    for fid, values, _ in read_rows(course_layers, kind.name, problems):
        if values.get("kind") not in PAGE_KINDS:
            problems.append(left_out(kind, fid, say("it does not say which kind of page it is")))
            continue
        texts = {name: values.get(name, "") for name in _FIELDS}
        page = GuidePage(values["kind"], shown=values.get("shown") is not False, **texts)
        found.append((page.event, values.get("sort", 0), fid, page))
    return tuple(page for *_, page in sorted(found, key=lambda one: one[:3]))


def write_guide_pages(course_layers, event_name, pages):
    """Put the pages in place of those of an event's list, "" the course's own; () takes the list away.

    One step that can be undone. Raises YardwrightError with nothing changed.
    """
    with editing(course_layers, ["guide_page"]) as edit:
        old = [
            fid
            for fid, values, _ in read_rows(course_layers, "guide_page", [])
            if values.get("event", "") == event_name
        ]
        edit.delete("guide_page", old)
        rows = []
        for sort, page in enumerate(pages, 1):
            values = {"event": event_name, "sort": sort, "kind": page.kind, "shown": page.shown}
            values.update({name: getattr(page, name) for name in ("title", "text", "source", "note")})
            values = {name: value for name, value in values.items() if value != ""}
            rows.append(row_of(course_layers, Feature("guide_page", None, None, attributes=values), None))
        edit.add("guide_page", rows)
