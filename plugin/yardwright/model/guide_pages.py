"""The pages of a guide in their order, as plain frozen values: what a course or an event wants."""

from dataclasses import dataclass

from .remarks import Remark
from .words import said, say, to_say


@dataclass(frozen=True)
class PageKind:
    """What a kind of page is. once: it may stand in a guide once only. needs: the field of a GuidePage
    without which there is nothing to show, "" where the course and the event say it all. always: it may not
    be left out."""

    title: str
    once: bool = True
    needs: str = ""
    always: bool = False


PAGE_KINDS = {
    "cover": PageKind(to_say("Cover")),
    "notices": PageKind(to_say("Notices to players"), False, "text"),
    "local_rules": PageKind(to_say("Local Rules"), False, "text"),
    "event": PageKind(to_say("The event")),
    "scorecard": PageKind(to_say("Scorecard")),
    "overview": PageKind(to_say("The course")),
    "holes": PageKind(to_say("Holes")),
    "pins": PageKind(to_say("Pins")),
    "sponsor": PageKind(to_say("Page of a sponsor"), False, "source"),
    "text": PageKind(to_say("Page of text"), False, "text"),
    "notes": PageKind(to_say("Notes"), False),
    "imprint": PageKind(to_say("Imprint"), always=True),
}
"""Every kind, in the order in which they usually stand."""


@dataclass(frozen=True)
class GuidePage:
    """A page, or a run of pages, that a guide shall have.

    kind: of PAGE_KINDS. title: in place of the usual one, "" for that. text: Markdown. source: an image or a
    PDF, absolute or from the course's folder of the guide. event: whose list it is in, "" for the course's
    own, which events without a list of theirs use.
    """

    kind: str
    title: str = ""
    text: str = ""
    source: str = ""
    shown: bool = True
    event: str = ""
    note: str = ""

    @property
    def called(self):
        """Its title, else that of its kind."""
        return self.title.strip() or said(PAGE_KINDS[self.kind].title)

    @property
    def lacking(self):
        """Whether that is missing which it shows."""
        needs = PAGE_KINDS[self.kind].needs
        return bool(needs) and not getattr(self, needs).strip()


USUAL = tuple(
    GuidePage(kind) for kind in ("cover", "event", "scorecard", "overview", "holes", "pins", "imprint")
)
"""The pages of a guide of which nobody has said what it shall have."""


def pages_for(pages, event_name=""):
    """The list an event's guide follows, a tuple: its own, else the course's, else the usual one.

    pages: all GuidePages of a course file, in their order.
    """
    for name in dict.fromkeys((event_name, "")):
        own = tuple(page for page in pages if page.event == name)
        if own:
            return own
    return USUAL


def moved(pages, place, to):
    """The pages with the one at ``place`` taken out and put in so that it stands at ``to``.

    >>> [page.kind for page in moved(USUAL[:3], 0, 2)]
    ['event', 'scorecard', 'cover']
    """
    rest = [*pages[:place], *pages[place + 1 :]]
    return (*rest[:to], pages[place], *rest[to:])


def in_order(pages):
    """The pages that are shown, in order; the imprint, which holds the cautions and the credits, comes last
    where it is left out."""
    shown = [page for page in pages if page.shown or PAGE_KINDS[page.kind].always]
    have = {page.kind for page in shown}
    return (*shown, *(GuidePage(kind) for kind, one in PAGE_KINDS.items() if one.always and kind not in have))


def problems_of(pages):
    """What a list of pages lacks or has too much of, ``[(place or None, Remark)]``."""
    found, seen = [], set()
    for place, page in enumerate(pages):
        kind = PAGE_KINDS[page.kind]
        if kind.always and not page.shown:
            text = say("“{page}” holds the cautions and the credits and stays in", page=page.called)
            found.append((place, Remark(text, "page_stays")))
        if not page.shown:
            continue
        if kind.once and page.kind in seen:
            text = say("“{page}” stands in the guide once; the second one is left out", page=page.called)
            found.append((place, Remark(text, "page_twice")))
        if page.lacking and kind.needs == "text":
            found.append((place, Remark(say("“{page}” has no text", page=page.called), "no_text")))
        if page.lacking and kind.needs == "source":
            found.append((place, Remark(say("“{page}” names no file", page=page.called), "no_file")))
        seen.add(page.kind)
    if not any(PAGE_KINDS[page.kind].always for page in pages):
        text = say("the imprint holds the cautions and the credits and comes last")
        found.append((None, Remark(text, "page_stays")))
    return found
