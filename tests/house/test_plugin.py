"""Adding to QGIS and taking away, where the desktop is not needed to tell."""

import pytest
from qgis.core import QgsApplication
from yardwright import classFactory


def test_processing_alone_needs_no_desktop(qgis_app):
    registry = QgsApplication.processingRegistry()
    plugin = classFactory(None)
    plugin.initProcessing()
    assert registry.providerById("yardwright") is not None
    plugin.unload()
    assert registry.providerById("yardwright") is None


def test_unload_goes_on_after_a_failure_and_from_the_end(qgis_app):
    plugin = classFactory(None)
    done = []
    plugin._undo = [lambda: done.append("first"), lambda: 1 / 0, lambda: done.append("third")]
    plugin.unload()
    plugin.unload()
    assert done == ["third", "first"]


def test_a_failed_start_leaves_nothing_behind(qgis_app, monkeypatch):
    registry = QgsApplication.processingRegistry()

    def fail(*_):
        raise RuntimeError("no room")

    monkeypatch.setattr("yardwright.plugin.missing_libraries", fail)
    # Other tests of this process go on with the modules they hold.
    monkeypatch.setattr("yardwright.plugin._forget_modules", lambda: None)
    plugin = classFactory(None)
    with pytest.raises(RuntimeError, match="no room"):
        plugin.initGui()
    assert registry.providerById("yardwright") is None
