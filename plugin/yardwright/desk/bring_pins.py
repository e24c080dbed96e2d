"""Shows what the committee's figures would become before any of it is written."""

from qgis.PyQt.QtWidgets import QDialog

from .committee_figures import GivenDialog
from .pin_table import side_word
from .words import tr


def ask_pins(parent, in_hand, event, source):
    """``[(Pin, (x, y) in the course's CRS)]`` of the committee's figures that the user wants placed.

    source: the path of a file, or the text of copied rows. Empty when nobody wants them.
    """
    good, bad = read_given(in_hand, event, source)
    dialog = PinsDialog(parent, good, bad, in_hand.course().settings.unit)
    return good if dialog.exec() == QDialog.DialogCode.Accepted else []


def read_given(in_hand, event, source):
    """``(good, bad)``: ``[(Pin, point)]`` of what can be placed, ``[(line, reason)]`` of what cannot."""
    from dataclasses import replace

    from ..measure.pins import pin_rows
    from ..store.committee import read_pins

    course = in_hand.course()
    rounds = [one.number for one in event.rounds] or None
    holes = [hole.number for hole in course.holes]
    pins, bad = read_pins(source, course.settings.unit, event.name, holes, rounds)
    rows, _ = pin_rows(course, replace(event, pins=pins), in_hand.index())
    placed = {(row.round, row.hole): row for row in rows}
    good, bad = [], list(bad)
    for pin in pins:
        row = placed[pin.round, pin.hole]
        if row.x is None:
            bad.append((pin.line, row.remark))
        elif not event.plays(pin.round, pin.hole):
            bad.append((pin.line, tr("round {} does not play hole {}").format(pin.round, pin.hole)))
        else:
            good.append((pin, (row.x, row.y)))
    return good, sorted(bad)


class PinsDialog(GivenDialog):
    """Lists pins and refused lines; they can be taken only when one can be placed."""

    def __init__(self, parent, good, bad, unit):
        from ..measure.units import to_unit

        lines = []
        for pin, _ in good:
            figures = tr("{} on, {} from {}").format(
                f"{to_unit(pin.on, unit):g}", f"{to_unit(pin.off, unit):g}", side_word(pin.off_from)
            )
            lines.append((pin.line or 0, (str(pin.round), str(pin.hole), figures), "", False))
        for line, reason in bad:
            lines.append((line or 0, ("", "", tr("left out: {}").format(reason)), "", True))
        head = tr("{} pins can be placed, {} lines cannot. Nothing is written yet.")
        headings = [tr("Round"), tr("Hole"), tr("Figures")]
        title = tr("The committee’s pins")
        super().__init__(parent, title, head.format(len(good), len(bad)), headings, lines)
        self.setObjectName("yardwright_bring_pins")
        self.resize(560, 560)
        self.take.setText(tr("Place them"))
        self.take.setEnabled(bool(good))
