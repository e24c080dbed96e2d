"""What pages of a guide may not do: the Rules of Golf on pictures of greens, and the rights in images.

A rule that is broken names the page; the export stops for it unless it is said not to apply.
"""

from dataclasses import dataclass

from ..model.errors import YardwrightError
from ..model.words import say
from .sheet_cells import may_be_used
from .windows import GREEN_LIMIT

CARRIED = ("pages", "booklet")
"""Forms on paper, which are carried in play: Rule 4.3a limits their size. A screen has no page to measure."""

RULES = ("green_scale", "page_size")
"""The rules that an event may do without; that of the images always applies."""


@dataclass(frozen=True)
class Broken:
    """A rule that a page breaks. page: its title; rule: a key of RULES, or ``image``."""

    page: str
    rule: str
    what: str
    remedy: str


def green_scale(page, scale):
    """Broken where a green is shown larger than 1:480 (Rules of Golf, Rule 4.3a, interpretation on
    green-reading materials), a list. scale: the denominator, None without a green."""
    if scale is None or scale >= GREEN_LIMIT - 1e-6:
        return []
    what = say("“{page}” shows a green at 1:{scale}, larger than 1:480.", page=page, scale=f"{scale:g}")
    return [Broken(page, "green_scale", what, say("Show it smaller, or say that the rule does not apply."))]


def page_size(page, size, greens, form):
    """Broken where a page on paper with fewer than nine greens is larger than 4 1/4 x 7 in (the same
    interpretation), a list. size: (width, height) in mm; greens: how many it shows."""
    if form not in CARRIED or not greens or may_be_used(*size, greens):
        return []
    what = say(
        "“{page}” measures {width} x {height} mm; a page with a green may have no more than "
        "107.95 x 177.8 mm (4¼ x 7 in).",
        page=page,
        width=f"{size[0]:g}",
        height=f"{size[1]:g}",
    )
    remedy = say("Choose a smaller page, or say that the rule does not apply.")
    return [Broken(page, "page_size", what, remedy)]


def image_rights(image, pages, form):
    """Broken where an image that may not be printed would be, a list.

    image: its name; None where it may be printed. pages: the titles of the pages that show it.
    """
    if image is None or form not in CARRIED or not pages:
        return []
    what = say("The image “{image}” may not be printed, and “{page}” shows it.", image=image, page=pages[0])
    remedy = say("Choose another image, make a guide for the screen, or tick its leave to be printed.")
    return [Broken(pages[0], "image", what, remedy)]


def rights_not_said(image):
    """The remark on an image of the course of which nobody has said whether it may be printed."""
    return say("the course does not say whether the image “{image}” may be printed", image=image)


def stop_for(broken, off=()):
    """Raise YardwrightError for the first rule that is broken; off: the rules that do not apply."""
    counting = [one for one in broken if one.rule not in off or one.rule not in RULES]
    if not counting:
        return
    first = counting[0]
    pages = len({one.page for one in counting if one.rule == first.rule})
    more = say("So do {count} other pages.", count=pages - 1) if pages > 1 else ""
    raise YardwrightError(" ".join(filter(None, (first.what, more))), first.remedy)
