"""What all tests share."""

import pytest


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
