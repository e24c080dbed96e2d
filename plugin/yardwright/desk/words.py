"""Texts in the user's language, and what goes wrong told in a message bar."""

from contextlib import contextmanager

from qgis.core import Qgis, QgsMessageLog
from qgis.PyQt.QtCore import QCoreApplication

from .. import how_to_get, missing_libraries
from ..model.errors import YardwrightError

_READ_S = 20
"""So long a message stays that offers something, seconds."""


def tr(text):
    """``text``, a literal, in the user's language; ``.format`` comes after."""
    return QCoreApplication.translate("Yardwright", text)


def with_keys(text, keys):
    """A tip with the keys that do the same, as this computer writes them."""
    from qgis.PyQt.QtGui import QKeySequence

    return f"{text} ({QKeySequence(keys).toString(QKeySequence.SequenceFormat.NativeText)})"


@contextmanager
def told_in(bar):
    """Whatever fails inside is told in ``bar`` (a QgsMessageBar): what happened, and what to do.

    An error nobody foresaw is told too, and its traceback goes to the log of QGIS under “Yardwright”.
    """
    try:
        yield
    except YardwrightError as error:
        tell(bar, error.what, error.remedy)
    except Exception as error:
        missing = missing_libraries()
        if missing:
            tell(bar, *how_to_get(missing))
            return
        import traceback

        QgsMessageLog.logMessage(traceback.format_exc(), "Yardwright", Qgis.MessageLevel.Critical)
        tell(
            bar,
            tr("Yardwright could not do that: {}.").format(str(error).rstrip(".") or type(error).__name__),
            tr(
                "Try again; if it happens again, report it with what the log of QGIS says under “Yardwright”."
            ),
            Qgis.MessageLevel.Critical,
        )


def telling(bar, slot):
    """A slot for a signal, whose arguments are passed over: what fails in ``slot`` is told in ``bar``."""

    def run(*_):
        with told_in(bar):
            slot()

    return run


def tell_saved(bar, text, path):
    """Good news in ``bar`` about a file, with a button that opens it."""
    from qgis.PyQt.QtCore import QUrl
    from qgis.PyQt.QtGui import QDesktopServices
    from qgis.PyQt.QtWidgets import QPushButton

    bar.clearWidgets()
    item = bar.createMessage("Yardwright", text)
    opener = QPushButton(tr("Open"), item)
    opener.setToolTip(path)
    opener.clicked.connect(lambda: QDesktopServices.openUrl(QUrl.fromLocalFile(path)))
    item.layout().addWidget(opener)
    bar.pushWidget(item, Qgis.MessageLevel.Success, 0)


def size_called(name, width, height):
    """A size of pages, in mm, as people choose it: by its name and its measures."""
    known = {"pocket": tr("Pocket"), "phone": tr("Phone")}
    return tr("{}, {} × {} mm").format(known.get(name, name), f"{width:g}", f"{height:g}")


def tell_done(bar, what, remedy, step):
    """Good news in ``bar`` about a Step of ``editing``, with a button that undoes it."""
    from qgis.PyQt.QtWidgets import QPushButton

    item = bar.createMessage("Yardwright", f"{what} {remedy}".strip())
    button = QPushButton(tr("Undo"), item)

    def undo():
        bar.popWidget(item)
        with told_in(bar):
            step.undo()

    button.clicked.connect(undo)
    item.layout().addWidget(button)
    bar.pushWidget(item, Qgis.MessageLevel.Success, _READ_S)


def tell(bar, what, remedy="", level=Qgis.MessageLevel.Warning):
    """A message of two parts, which stays until it is closed unless it is good news."""
    lasting = 0 if level != Qgis.MessageLevel.Success else 8
    bar.pushMessage("Yardwright", f"{what} {remedy}".strip(), level, lasting)
