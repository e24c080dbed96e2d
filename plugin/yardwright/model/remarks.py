"""Texts for the user that the program knows again whatever language they are in."""


class Remark(str):
    """A text with ``code``, by which it is told from others; "" where nobody asks."""

    __slots__ = ("code",)

    def __new__(cls, text, code=""):
        made = super().__new__(cls, text)
        made.code = code
        return made


class Problem(Remark):
    """What a row of a layer or table is not right in.

    code: ``empty`` (it has no geometry), ``second`` (another hole has its number) or ``left_out``: the row is
    missing from the course; "" where it was only doubted. kind, fid: the layer and the row. reason: the text
    without these two and without a full stop. other: of a second hole the number and the row that was kept.
    """

    __slots__ = ("fid", "kind", "other", "reason")

    def __new__(cls, text, code, kind, fid, reason, other=None):
        made = super().__new__(cls, text, code)
        made.kind, made.fid, made.reason, made.other = kind, fid, reason, other
        return made
