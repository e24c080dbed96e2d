"""The one error of the program, what happened and what to do about it, and the word for a user's stop."""


class YardwrightError(Exception):
    """A failure a user can do something about.

    ``what`` says what happened, ``remedy`` what to do; ``str()`` gives both as one text, so that a
    message bar, a Processing log and a terminal all show the same words.
    """

    def __init__(self, what, remedy):
        super().__init__(f"{what} {remedy}")
        self.what = what
        self.remedy = remedy


class Cancelled(Exception):
    """The user stopped the work."""
