"""Runs inside QGIS: lets a script act step by step while the desktop stays alive.

    import desktop_drive

    def drive(desk):
        desk.shot("start")
        desk.click(some_widget)      # a real click of the mouse
        yield 300                    # let QGIS work for 300 ms
        desk.result["title"] = ...

    desktop_drive.run(drive)

A dialog that a click opens may be modal: the next step runs all the same. Open one by a click or
``desk.later(function)``, not by calling ``exec`` in a step.
"""

import json
import os
import signal
import subprocess
import sys
import traceback
from pathlib import Path

from qgis.PyQt.QtCore import QPoint, QTimer
from qgis.PyQt.QtWidgets import QApplication
from qgis.utils import iface

FOLDER = Path(os.environ["YARDWRIGHT_DRIVE_FOLDER"])


class Desk:
    """What a script has in hand. ``result`` becomes result.json."""

    def __init__(self):
        self.result = {}

    def shot(self, name, widget=None):
        """Save a picture of ``widget``, or of the main window, as NAME.png."""
        (widget or iface.mainWindow()).grab().save(str(FOLDER / f"{name}.png"))

    def screen_shot(self, name):
        """Save a picture of the whole screen, other windows and menus included, as NAME.png."""
        subprocess.Popen(["import", "-window", "root", str(FOLDER / f"{name}.png")])

    def later(self, function):
        """Call ``function`` from the event loop, so that it may open a modal dialog."""
        QTimer.singleShot(0, function)

    def click(self, widget, position=None, button=1, times=1):
        """Click with the real mouse on ``widget``: its middle, or ``position`` (x, y) in its pixels."""
        point = QPoint(*map(int, position)) if position else widget.rect().center()
        place = widget.mapToGlobal(point)
        click = ["click", "--repeat", str(times), "--delay", "40", str(button)]
        self._mouse("mousemove", str(place.x()), str(place.y()), *click)

    def move(self, widget, position):
        """Move the real mouse to ``position`` (x, y) in the pixels of ``widget``."""
        place = widget.mapToGlobal(QPoint(*map(int, position)))
        self._mouse("mousemove", str(place.x()), str(place.y()))

    def type(self, text):
        """Type ``text`` with the real keyboard into what has the focus."""
        self._mouse("type", "--delay", "10", text)

    def key(self, *names):
        """Press keys by xdotool's names, such as ``Return`` or ``ctrl+c``."""
        self._mouse("key", *names)

    def keep_result(self):
        """Write the result now, for a script that QGIS itself will end."""
        _write(self.result)

    def kill(self):
        """End QGIS as nobody can hinder: by SIGKILL, here and now. The result is written first."""
        self.keep_result()
        os.kill(os.getpid(), signal.SIGKILL)

    def top_window(self):
        """The modal dialog on top, or the active window."""
        return QApplication.activeModalWidget() or QApplication.activeWindow()

    def _mouse(self, *arguments):
        subprocess.run(["xdotool", *arguments], check=True, timeout=20)


def _write(result):
    beside = FOLDER / "result.part"
    beside.write_text(json.dumps(result, indent=1, default=str), encoding="utf-8")
    os.replace(beside, FOLDER / "result.json")


def _end(code):
    sys.stdout.flush()
    sys.stderr.flush()
    os._exit(code)


def run(drive):
    """Run the generator ``drive(desk)`` once QGIS has started; each value it yields is a pause in ms."""
    desk = Desk()
    steps = drive(desk)

    def step():
        try:
            pause = next(steps)
        except StopIteration:
            _write(desk.result)
            _end(0)
        except BaseException:
            traceback.print_exc()
            desk.shot("failed")
            _end(3)
        else:
            QTimer.singleShot(int(pause), step)

    QTimer.singleShot(500, step)
