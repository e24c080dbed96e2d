"""Changes of the project's own layers, each one step that can be undone, kept in QGIS's edit buffers.

Nothing here saves: the user does, with QGIS's own tools.
"""

from contextlib import contextmanager

from ..model.errors import YardwrightError
from .words import tr


def begin_editing(layer):
    """Let a layer be edited, if it is not already. Raises YardwrightError when it cannot be."""
    if not layer.isEditable() and not layer.startEditing():
        raise YardwrightError(
            tr("The layer “{}” cannot be edited.").format(layer.name()),
            tr("Check that its file may be written to and is open in no other program."),
        )


@contextmanager
def one_step(text, *layers):
    """All that is changed inside is one step to undo in each of the layers; undone itself on any exception.

    text: what the list of steps calls it. A layer that is not being edited is from now on. Raises
    YardwrightError when a layer cannot be edited.
    """
    begun = []
    try:
        for layer in layers:
            begin_editing(layer)
            layer.beginEditCommand(text)
            begun.append(layer)
        yield
    except BaseException:
        for layer in reversed(begun):
            layer.destroyEditCommand()
        raise
    for layer in reversed(begun):
        layer.endEditCommand()
        layer.triggerRepaint()


def checked(done, layer):
    """Pass on what a change of a layer returned; YardwrightError where it says that it failed."""
    if not done:
        raise YardwrightError(
            tr("The layer “{}” did not take the change.").format(layer.name()),
            tr("Save or undo what is being edited there, then try again."),
        )
    return done
