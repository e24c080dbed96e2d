"""Changes of the project's own layers, each one step that can be undone, kept in QGIS's edit buffers.

Nothing here saves: the user does, with QGIS's own tools.
"""

from contextlib import contextmanager

from qgis.core import QgsProject
from qgis.PyQt import sip

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
    """All that is changed inside is one Step, undone itself on any exception; the Step is given.

    text: what the list of steps calls it. A layer that is not being edited is from now on. Raises
    YardwrightError when a layer cannot be edited.
    """
    begun, step = [], Step()
    try:
        for layer in layers:
            begin_editing(layer)
            layer.beginEditCommand(text)
            begun.append(layer)
        yield step
    except BaseException:
        for layer in reversed(begun):
            layer.destroyEditCommand()
        raise
    for layer in reversed(begun):
        layer.endEditCommand()
        layer.triggerRepaint()
    step.tie(begun)


class Step:
    """One change of several layers. QGIS keeps a list of steps a layer: undone or redone in one of them, by
    whatever means, it is undone or redone in the others too, unless something was changed there since."""

    def __init__(self):
        self._parts = []

    def tie(self, layers):
        """Take the last step of each of the layers as parts of this one."""
        self._parts = [_Part(layer) for layer in layers]
        if len(self._parts) > 1:
            for part in self._parts:
                part.watch(self._moved)

    def may_undo(self):
        """Whether it is the last step in all of its layers."""
        return bool(self._parts) and all(part.is_last() for part in self._parts)

    def undo(self):
        """Undo it in all of its layers. Raises YardwrightError with nothing undone where that is too late."""
        if not self.may_undo():
            raise YardwrightError(
                tr("This can no longer be undone from here."),
                tr("Something was changed or saved since: undo step by step in the layers themselves."),
            )
        self._parts[0].stack.undo()

    def _moved(self, moved, done):
        """One of the layers has undone or redone its part: the others follow where they can; done None: its
        part is no more, for it was saved or thrown away."""
        parts = self._parts
        if done is None:
            self._parts = []
            for part in parts:
                part.let_go()
        for part in self._parts:
            if part is not moved:
                part.follow(done)


class _Part:
    """The last step in one layer's list of the project."""

    def __init__(self, layer):
        # By its id, for a layer that is gone, with its list, is not to be touched any more.
        self.layer_id = layer.id()
        self.end = self.index = layer.undoStack().index()
        self.known_by = self._signs()
        self.moved = self.connection = None

    @property
    def stack(self):
        """The layer's QUndoStack, None once the layer is gone."""
        layer = QgsProject.instance().mapLayer(self.layer_id)
        return None if layer is None else layer.undoStack()

    def watch(self, moved):
        """Have ``moved(part, done)`` called when it is undone, redone or gone."""
        self.moved = moved
        if self.stack is not None:
            # A lambda, which the connection keeps alive: nobody else holds a step that is done.
            self.connection = self.stack.indexChanged.connect(lambda index: self._index_changed(index))

    def let_go(self):
        """Listen no more."""
        if self.connection is not None and self.stack is not None:
            self.stack.indexChanged.disconnect(self.connection)
        self.connection = None

    def is_last(self):
        """Whether it is done, and nothing after it."""
        return self._is_there() and self.stack.index() == self.end

    def follow(self, done):
        """Undo or redo it, if it comes next."""
        if not self._is_there():
            return
        if done and self.stack.index() == self.end - 1:
            self.stack.redo()
        elif not done and self.stack.index() == self.end:
            self.stack.undo()

    def _index_changed(self, index):
        before, self.index = self.index, index
        if not self._is_there():
            self.moved(self, None)
        elif before >= self.end > index:
            self.moved(self, False)
        elif before < self.end <= index:
            self.moved(self, True)

    def _is_there(self):
        """A step that was undone goes when another one is taken in its place."""
        return self.known_by is not None and self._signs() == self.known_by

    def _signs(self):
        """What the step is known by, None where the list has none there."""
        stack = self.stack
        if stack is None or stack.count() < self.end or not self.end:
            return None
        command = stack.command(self.end - 1)
        return sip.unwrapinstance(command), command.text()


def checked(done, layer):
    """Pass on what a change of a layer returned; YardwrightError where it says that it failed."""
    if not done:
        raise YardwrightError(
            tr("The layer “{}” did not take the change.").format(layer.name()),
            tr("Save or undo what is being edited there, then try again."),
        )
    return done
