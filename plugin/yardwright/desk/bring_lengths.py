"""Shows what the committee's lengths would become before any of them is taken over."""

from qgis.PyQt.QtWidgets import QDialog

from .committee_figures import GivenDialog
from .length_table import figure, verdict_text
from .words import tr


def ask_lengths(parent, in_hand, event, source):
    """``(Flights that are new, AskedLengths)`` of the committee that the user wants; both empty for none.

    source: the path of a file, or the text of copied rows.
    """
    good, bad, flights = read_given(in_hand, event, source)
    dialog = LengthsDialog(parent, good, bad, in_hand.course().settings.unit)
    if dialog.exec() != QDialog.DialogCode.Accepted:
        return (), []
    return flights, [asked for asked, _ in good]


def read_given(in_hand, event, source):
    """``(good, bad, flights)``: ``[(AskedLength, TeeSettingRow)]`` of what can be used, ``[(line, reason)]``
    of what cannot, and the Flights that the event does not have yet."""
    from dataclasses import replace

    from ..measure.tee_setting import flights_of, set_tees, tee_set_names
    from ..store.committee import read_lengths

    course = in_hand.course()
    rounds = [one.number for one in event.rounds] or None
    names = None
    if event.flights:
        names = [*tee_set_names(course), *(flight.name for flight in event.flights)]
    holes = [hole.number for hole in course.holes]
    lengths, bad = read_lengths(source, course.settings.unit, holes, rounds, names)
    lengths, not_played = (
        [one for one in lengths if event.plays(one.round, one.hole) is played] for played in (True, False)
    )
    bad = [*bad]
    for one in not_played:
        bad.append((one.line, tr("round {} does not play hole {}").format(one.round, one.hole)))
    known = {flight.name.casefold() for flight in event.flights}
    flights = flights_of(course, dict.fromkeys(a.flight for a in lengths if a.flight.casefold() not in known))
    lengths = sorted(lengths, key=lambda one: (one.round, one.flight, one.hole))
    rows = set_tees(course, replace(event, flights=(*event.flights, *flights)), lengths, in_hand.index())
    return list(zip(lengths, rows)), sorted(bad), flights


class LengthsDialog(GivenDialog):
    """Lists lengths and refused lines; they can be taken only when one can be taken over."""

    def __init__(self, parent, good, bad, unit):
        lines = []
        for asked, row in good:
            texts = (
                str(asked.round),
                asked.flight,
                str(asked.hole),
                figure(asked.length, unit),
                verdict_text(row, unit),
            )
            lines.append((asked.line or 0, texts, row.remark, False))
        for line, reason in bad:
            texts = ("", "", "", "", tr("left out: {}").format(reason))
            lines.append((line or 0, texts, reason, True))
        head = tr("{} lengths can be taken over, {} lines cannot. Nothing is written yet.")
        headings = [tr("Round"), tr("Flight"), tr("Hole"), tr("Length"), tr("Verdict")]
        title = tr("The committee’s lengths")
        super().__init__(parent, title, head.format(len(good), len(bad)), headings, lines)
        self.setObjectName("yardwright_bring_lengths")
        self.resize(620, 560)
        self.list.setAccessibleName(tr("Lengths read"))
        self.list.setWhatsThis(tr("What was read, line by line, and what the tee allows of it."))
        self.take.setText(tr("Take them over"))
        self.take.setToolTip(tr("Puts them into the table of lengths"))
        self.take.setEnabled(bool(good))
