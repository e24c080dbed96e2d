"""The window of the guide in a real QGIS: a page changed in the layout designer, and the guide saved."""

import pypdf
import pytest
from test_pages_in_desktop import driven

pytestmark = pytest.mark.desktop


@pytest.fixture(scope="module")
def found(qgis_app, tmp_path_factory):
    return driven(tmp_path_factory.mktemp("guide"), "drive_guide.py")


def test_the_page_chosen_is_looked_at_and_what_is_missing_is_told(found):
    result = found[1]
    assert result["looked_at"] == "hole"
    assert "hole 1 has no description" in result["remarks"]
    assert "no image is chosen: the holes have no picture" in result["remarks"]


def test_a_page_is_changed_in_the_designer_and_the_guide_follows(found):
    folder, result = found
    template = folder / "Larkmere_guide" / "hole.qpt"
    assert "Burn" in result["name"] and result["part"] == "DrawnItem"
    assert 'position="30,12,mm"' in template.read_text("utf-8")
    assert result["planned_again"]


def test_the_guide_is_saved(found):
    folder, result = found
    assert result["saved"]
    reader = pypdf.PdfReader(str(folder / "guide.pdf"))
    assert "Larkmere" in reader.pages[0].extract_text()
    assert any("Burn" in page.extract_text() for page in reader.pages)
