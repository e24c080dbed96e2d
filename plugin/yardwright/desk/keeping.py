"""Keeps a recovery copy of what is not saved yet, and offers what a QGIS that was killed has left.

QGIS imports this at its start: what is heavy is imported where it is used.
"""

import os
from functools import partial

from qgis.core import Qgis, QgsApplication, QgsMessageLog, QgsVectorLayer
from qgis.PyQt.QtCore import QObject, QTimer

from ..model.errors import YardwrightError
from ..store.layer_group import KIND_MARK
from .words import tell, told_in, tr

_WAIT_MS = 50
"""An edit is in the copy so soon: nobody finishes another feature in that time, and a tool that makes many
edits at once has them written once."""
_AGAIN_MS = 2000
"""So long after a copy could not be written it is tried again."""
_MOST_NAMED = 6


class Keeping(QObject):
    """Watches the layers of all courses in the project, for as long as it is not ``let_go``.

    in_hand: the CourseInHand.
    """

    def __init__(self, in_hand):
        super().__init__(in_hand)
        self.in_hand = in_hand
        self.iface = in_hand.iface
        self._courses = {}
        self._offers = {}
        self._told = set()
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.write)
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.course_changed, self._look),
                (in_hand.project.layersWillBeRemoved, self._layers_go),
            )
        ]

    def let_go(self):
        """Write what waits and watch nothing any more; what is not saved keeps its copy."""
        if not self._connections:
            return
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        self.write()
        for path in list(self._offers):
            self._withdraw(path)
        for course in self._courses.values():
            course.leave()
        self._courses = {}

    # Watching

    def _look(self):
        """See which courses there are, and which of their layers."""
        with told_in(self.iface.messageBar()):
            groups = self.in_hand.groups
            for place in [place for place in self._courses if place not in groups]:
                self._courses.pop(place).leave()
                for path in [path for path, (whose, _) in self._offers.items() if whose == place]:
                    self._withdraw(path)
            for place, group in groups.items():
                course = self._courses.setdefault(place, _Course(place, self._soon, self.write))
                course.watch(_layers_of(group))
            self.write()
            for place, course in self._courses.items():
                if not course.looked_for_copies and course.layers:
                    course.looked_for_copies = True
                    self._look_for_copies(place, course)

    def _layers_go(self, layer_ids):
        """QGIS takes layers away; once it has, there is nobody to ask what they held."""
        self.write()
        for course in self._courses.values():
            for layer_id in layer_ids:
                course.gone(layer_id)

    def _soon(self):
        if self._connections and not (self._timer.isActive() and self._timer.interval() == _WAIT_MS):
            self._timer.start(_WAIT_MS)

    def write(self):
        """Bring the copies up to date at once; none is left where nothing is unsaved."""
        self._timer.stop()
        for place, course in self._courses.items():
            with told_in(self.iface.messageBar()):
                self._write(place, course)

    def _write(self, place, course):
        from ..store.recovery import copy_stems

        try:
            stems = copy_stems(place, QgsApplication.qgisSettingsDirPath())
            course.write(stems)
        except (OSError, YardwrightError) as error:
            why = error.what if isinstance(error, YardwrightError) else str(error.strerror or error)
            self._tell_once(
                ("failed", place, why),
                tr("What you draw in “{}” has no recovery copy: {}").format(os.path.basename(place), why),
                tr("Save often, and check that there is room on the disk."),
            )
            if self._connections:
                self._timer.start(_AGAIN_MS)
            return
        if course.held is not None and course.held.path.startswith(f"{stems[-1]}") and len(stems) > 1:
            self._note_once(place, course.held.path)

    def _note_once(self, place, path):
        if ("elsewhere", place) not in self._told:
            self._told.add(("elsewhere", place))
            QgsMessageLog.logMessage(
                tr("The folder of “{}” cannot be written to; its recovery copy is “{}”.").format(place, path),
                "Yardwright",
                Qgis.MessageLevel.Info,
            )

    def _tell_once(self, what, *texts):
        if what not in self._told:
            self._told.add(what)
            tell(self.iface.messageBar(), *texts)

    # What was left

    def _look_for_copies(self, place, course):
        """Offer the copies that nobody keeps any more; one of which all is saved goes away unasked."""
        from ..store.recovery import copies, copy_stems, hold, read_copy

        for path in copies(copy_stems(place, QgsApplication.qgisSettingsDirPath())):
            if self._offered(path) or (course.held is not None and course.held.path == path):
                continue
            with told_in(self.iface.messageBar()):
                held = hold(path)
                if held is None:
                    continue
                try:
                    copy = read_copy(path)
                    plans = self._plans(course, copy)
                    if all(plan.number == 0 and not plan.refused for plan in plans.values()):
                        held.remove()
                    else:
                        self._offer(place, copy, plans)
                finally:
                    held.release()

    def _plans(self, course, copy):
        from ..store.recovery import plan_for

        layers = {one.kind: one.layer for one in course.layers.values()}
        return {kind: plan_for(layers.get(kind), kind, part) for kind, part in copy.parts.items()}

    def _offer(self, place, copy, plans):
        from qgis.PyQt.QtCore import QDateTime, QLocale
        from qgis.PyQt.QtWidgets import QPushButton

        number = sum(plan.number + len(plan.refused) for plan in plans.values())
        when = QDateTime.fromSecsSinceEpoch(int(copy.written.timestamp()))
        bar = self.iface.messageBar()
        text = tr("One thing") if number == 1 else tr("{} things").format(number)
        course, _ = os.path.splitext(copy.course)
        item = bar.createMessage(
            "Yardwright",
            tr("{} of “{}” left unsaved, {}.").format(
                text, course, QLocale().toString(when, QLocale.FormatType.ShortFormat)
            ),
        )
        item.setToolTip(
            tr("QGIS ended before they were saved; the recovery copy “{}” has them.").format(copy.path)
        )
        for name, text, does in (
            ("put_back", tr("Put back"), self._put_back),
            ("later", tr("Later"), lambda place, path: self._withdraw(path)),
            ("throw_away", tr("Throw away…"), self._throw_away),
        ):
            button = QPushButton(text, item)
            button.setObjectName(f"yardwright_{name}")
            button.clicked.connect(lambda _=False, does=does: self._chosen(does, place, copy.path))
            item.layout().addWidget(button)
        self._offers[copy.path] = (place, item)
        bar.pushWidget(item, Qgis.MessageLevel.Warning)

    def _chosen(self, does, place, path):
        with told_in(self.iface.messageBar()):
            does(place, path)

    def _offered(self, path):
        """Whether the message that offers a copy is still there; its user may have closed it."""
        from qgis.PyQt import sip

        _, item = self._offers.get(path, (None, None))
        return item is not None and not sip.isdeleted(item)

    def _withdraw(self, path):
        offered = self._offered(path)
        _, item = self._offers.pop(path, (None, None))
        if offered:
            self.iface.messageBar().popWidget(item)

    def _hold(self, path):
        """Take hold of a copy that was offered. Raises YardwrightError when somebody else was first."""
        from ..store.recovery import hold

        self._withdraw(path)
        held = hold(path)
        if held is None:
            raise YardwrightError(
                tr("The copy “{}” is no longer there, or another QGIS has it.").format(path),
                tr("Look there, or open the course again."),
            )
        return held

    def _put_back(self, place, path):
        from ..store.recovery import put_back, read_copy, set_aside
        from .editing import one_step

        course = self._courses.get(place)
        if course is None:
            raise YardwrightError(
                tr("The course is no longer in this project."), tr("Open it again to have them put back.")
            )
        held = self._hold(path)
        try:
            copy = read_copy(path)
            plans = self._plans(course, copy)
            layers = {one.kind: one.layer for one in course.layers.values()}
            busy = {kind: plan for kind, plan in plans.items() if plan.number}
            with one_step(tr("Put back what was not saved"), *(layers[kind] for kind in busy)):
                for kind, plan in busy.items():
                    put_back(layers[kind], plan)
            self.write()  # before the old copy goes
            refused = [one for plan in plans.values() for one in plan.refused]
            if refused:
                path = set_aside(path)
            else:
                held.remove()
        finally:
            held.release()
        self._tell_what_came_back(plans, refused, path)

    def _tell_what_came_back(self, plans, refused, path):
        from ..model.kinds import BY_NAME

        counts = ", ".join(
            f"{tr(BY_NAME[kind].title)} {plan.number}"
            for kind, plan in plans.items()
            if plan.number and kind in BY_NAME
        )
        there = sum(plan.there for plan in plans.values())
        texts = [tr("Put back, not saved yet: {}.").format(counts) if counts else tr("Nothing was put back.")]
        if there:
            texts.append(tr("There already: {}.").format(there))
        if not refused:
            tell(self.iface.messageBar(), *texts[:1], " ".join(texts[1:]), Qgis.MessageLevel.Success)
            return
        named = "; ".join(f"{name}: {why}" for name, why in refused[:_MOST_NAMED])
        if len(refused) > _MOST_NAMED:
            named += tr(", and {} more").format(len(refused) - _MOST_NAMED)
        texts.append(tr("Not put back: {}.").format(named))
        tell(self.iface.messageBar(), " ".join(texts), tr("The copy is kept as “{}”.").format(path))

    def _throw_away(self, place, path):
        from qgis.PyQt.QtWidgets import QMessageBox

        buttons = QMessageBox.StandardButton
        said = QMessageBox.question(
            self.iface.mainWindow(),
            tr("Throw away"),
            tr("Throw away what was drawn and not saved? It cannot be brought back."),
            buttons.Yes | buttons.No,
            buttons.No,
        )
        if said == buttons.Yes:
            self._hold(path).remove()


def _layers_of(group):
    """``[(kind, QgsVectorLayer)]`` of a course's group, one a kind."""
    from qgis.PyQt import sip

    found = {}
    for node in [] if sip.isdeleted(group) else group.findLayers():
        layer = node.layer()
        if isinstance(layer, QgsVectorLayer) and layer.isValid() and layer.customProperty(KIND_MARK):
            found.setdefault(str(layer.customProperty(KIND_MARK)), layer)
    return list(found.items())


class _Course:
    """The layers of one course and the copy of what they hold unsaved.

    ``layers``: ``{id: _Watched}``. ``held``: the place of the copy, None while nothing is unsaved.
    soon, now: callables that have the copy written soon, or at once.
    """

    def __init__(self, place, soon, now):
        self.place = place
        self.layers = {}
        self.held = None
        self.looked_for_copies = False
        self._soon, self._now = soon, now

    def watch(self, layers):
        """Watch these layers, ``[(kind, QgsVectorLayer)]``, and no others."""
        ids = {layer.id() for _, layer in layers}
        for layer_id in [one for one in self.layers if one not in ids]:
            self.gone(layer_id)
        for kind, layer in layers:
            if layer.id() not in self.layers:
                gone = partial(self.gone, layer.id())
                self.layers[layer.id()] = _Watched(kind, layer, self._soon, self._now, gone)

    def gone(self, layer_id):
        """A layer leaves the project: what of it is not saved stays in the copy for the next to open it."""
        watched = self.layers.pop(layer_id, None)
        if watched is None:
            return
        watched.let_go()
        self.looked_for_copies = False
        if watched.text is not None:
            self._abandon()

    def _abandon(self):
        if self.held is not None:
            self.held.release()
            self.held = None
            for watched in self.layers.values():
                watched.touched = True
            self._soon()

    def leave(self):
        """Watch nothing any more; the copy stays where something is unsaved."""
        while self.layers:
            self.layers.popitem()[1].let_go()
        if self.held is not None:
            self.held.release()
            self.held = None

    def write(self, stems):
        """Write the copy if something has changed. Raises OSError or YardwrightError."""
        from ..store.recovery import hold_new, write_copy

        touched = [one for one in self.layers.values() if one.touched]
        if not touched:
            return
        for watched in touched:
            watched.take()
        texts = {one.kind: one.text for one in self.layers.values() if one.text is not None}
        try:
            if texts:
                if self.held is None:
                    self.held = hold_new(stems)
                write_copy(self.held.path, os.path.basename(self.place), texts)
            elif self.held is not None:
                held, self.held = self.held, None
                held.remove()
        except BaseException:
            for watched in touched:
                watched.touched = True
            raise


class _Watched:
    """A layer of a course, and what it holds unsaved as the copy has it: ``text``, None for nothing."""

    def __init__(self, kind, layer, soon, now, gone):
        self.kind = kind
        self.layer = layer
        self.text = None
        self.touched = layer.isEditable()
        self._saved = None
        self._soon, self._now = soon, now
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (layer.layerModified, self._edited),
                (layer.editCommandEnded, self._edited),
                (layer.undoStack().indexChanged, self._edited),
                (layer.beforeCommitChanges, self._saving),
                (layer.afterCommitChanges, self._ended),
                (layer.afterRollBack, self._ended),
                (layer.editingStopped, self._ended),
                (layer.willBeDeleted, gone),
            )
        ]

    def let_go(self):
        """Watch it no more."""
        from qgis.PyQt import sip

        for signal, connection in [] if sip.isdeleted(self.layer) else self._connections:
            signal.disconnect(connection)
        self._connections = []

    def take(self):
        """Look what it holds now."""
        from qgis.PyQt import sip

        from ..store.recovery import SavedRows, as_text, unsaved

        self.touched = False
        if sip.isdeleted(self.layer):
            return
        if self._saved is None:
            self._saved = SavedRows(self.layer)
        part = unsaved(self.layer, self._saved)
        self.text = None if part is None else as_text(part)

    def _edited(self, *_):
        self.touched = True
        self._soon()

    def _saving(self, *_):
        # Should it fail halfway, other rows are the saved ones, and the copy is of what is left.
        self._saved = None
        self._edited()

    def _ended(self, *_):
        """Saved or given up: the copy follows at once, for QGIS may be ending."""
        self._saved = None
        self.touched = True
        self._now()
