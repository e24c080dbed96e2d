"""Files written beside their place and then moved there, so that nothing is ever half-written."""

import os
import shutil
import tempfile
from contextlib import contextmanager

from ..model.errors import YardwrightError
from ..model.words import say


@contextmanager
def written_beside(path):
    """Give a path to write to; once the block has ended well, the file there becomes ``path``.

    The path given lies in a hidden folder beside ``path`` (so the move is one step of the file system)
    and has the same name. When the block raises, what was at ``path`` stays as it was. Raises
    YardwrightError when the folder is missing or may not be written to.
    """
    path = os.path.abspath(path)
    folder, name = os.path.split(path)
    try:
        beside = tempfile.mkdtemp(prefix=".yardwright-", dir=folder)
    except OSError as error:
        raise _refused(path, error) from error
    try:
        draft = os.path.join(beside, name)
        yield draft
        try:
            os.replace(draft, path)
        except OSError as error:
            raise _refused(path, error) from error
    finally:
        shutil.rmtree(beside, ignore_errors=True)


def _refused(path, error):
    return YardwrightError(
        say("“{path}” cannot be written ({reason}).", path=path, reason=error.strerror),
        say("Choose a folder that exists and that you may write to, and close the file in other programs."),
    )
