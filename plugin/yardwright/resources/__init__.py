"""Icons, styles and page templates, by path."""

import os

FOLDER = os.path.dirname(__file__)


def icon_path(name):
    """The path of the icon ``name`` (without ``.svg``)."""
    return os.path.join(FOLDER, "icons", f"{name}.svg")


def icon(name):
    """The icon ``name`` as a QIcon."""
    from qgis.PyQt.QtGui import QIcon

    return QIcon(icon_path(name))
