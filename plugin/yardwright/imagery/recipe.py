"""What a composite was made of, kept beside it: the same recipe makes the same picture again."""

import json
from dataclasses import asdict, dataclass

from ..model.errors import YardwrightError
from ..model.words import say

VERSION = 1


@dataclass(frozen=True)
class Options:
    """How a composite is made.

    keep_m: nothing is invented nearer than that to a hazard, the margin of a green or a tee. largest_m2: a
    larger thing that hides is not filled from its surroundings. block: pixels to a side of what is held in
    memory at once.
    """

    keep_m: float = 3.0
    largest_m2: float = 14.0
    block: int = 1024


PLAIN = Options()


@dataclass(frozen=True)
class Recipe:
    """base: the id of the base. dates: the ids of all, the base first, as the source raster counts them from
    1. patches: ``(id, WKB as hex)`` of what a person wants from a date. masks: ``(id, path)`` of the masks
    corrected by hand. windows: ``(name, geotransform, width, height)`` of the pictures. credits: ``(id,
    credit, licence)``.
    """

    base: str
    dates: tuple
    crs: str = ""
    windows: tuple = ()
    patches: tuple = ()
    masks: tuple = ()
    credits: tuple = ()
    options: Options = PLAIN
    version: int = VERSION

    def text(self):
        """As JSON."""
        return json.dumps(asdict(self), indent=1, ensure_ascii=False) + "\n"


def recipe_of(text):
    """The Recipe that ``Recipe.text`` wrote. Raises YardwrightError where it is none, or a later one."""
    try:
        kept = json.loads(text)
        options = Options(**kept.pop("options"))
        made = Recipe(options=options, **{name: _tuples(value) for name, value in kept.items()})
        if made.version > VERSION:
            raise ValueError(say("a newer Yardwright wrote it"))
        return made
    except (TypeError, ValueError, AttributeError, KeyError) as error:
        raise YardwrightError(
            say("The recipe of the composite cannot be read ({reason}).", reason=error),
            say("Compose the pictures again."),
        ) from error


def _tuples(value):
    return tuple(map(_tuples, value)) if isinstance(value, list) else value
