"""What all tests share."""

import pytest

from tests.loudly import loud


@pytest.fixture(scope="module")
def provider(qgis_app):
    """The Yardwright provider, registered with Processing while the tests of a file run."""
    from qgis.core import QgsApplication
    from yardwright.processing.provider import YardwrightProvider

    registry = QgsApplication.processingRegistry()
    provider = YardwrightProvider()
    registry.addProvider(provider)
    yield provider
    registry.removeProvider(provider)


@pytest.fixture
def loudly():
    """Everything is said in capitals, see ``tests.loudly``."""
    from yardwright.model.words import speak

    speak(loud)
    yield
    speak()
