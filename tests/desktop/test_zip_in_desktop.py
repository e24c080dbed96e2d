"""The installable zip, in a real QGIS desktop with a fresh profile."""

import importlib.util
import zipfile

import pytest
from desktop import ROOT, result_of, run_desktop

pytestmark = pytest.mark.desktop

# The names of the public face.
IDS = [
    f"yardwright:{name}"
    for name in ("checkmarkers", "exportwindows", "importfeatures", "measurecourse", "startcourse")
]


@pytest.fixture(scope="module")
def installed(tmp_path_factory):
    """The plugin as QGIS would install it: the zip built and unpacked into a folder of plugins."""
    spec = importlib.util.spec_from_file_location("package", ROOT / "tools" / "package.py")
    package = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(package)
    folder = tmp_path_factory.mktemp("plugins")
    with zipfile.ZipFile(package.build(tmp_path_factory.mktemp("dist"))) as archive:
        archive.extractall(folder)
    return folder


def test_loads_at_start_with_its_algorithms(installed, tmp_path):
    found = result_of(
        run_desktop(ROOT / "tests" / "desktop" / "drive_started.py", tmp_path, plugin_path=installed)
    )
    assert found["plugin"]
    assert set(IDS) <= set(found["algorithms"])
    assert found["icon"]
    assert all(may_run for may_run, _ in found["runnable"].values()), found["runnable"]
    assert (tmp_path / "started.png").stat().st_size > 10_000


def test_twice_in_and_out_leaves_nothing_behind(installed, tmp_path):
    drive = ROOT / "tests" / "desktop" / "drive_load_unload.py"
    found = result_of(run_desktop(drive, tmp_path, plugin_path=installed, enabled=False))
    assert found["file"].startswith(str(installed))
    assert not found["before"]["plugin"]
    assert "yardwright" not in found["before"]["providers"]
    for turn in (1, 2):
        assert found[f"loaded_{turn}"]
        assert found[f"unloaded_{turn}"]
        loaded = found[f"with_{turn}"]
        assert set(IDS) <= set(loaded["algorithms"])
        new_toolbars = set(loaded["toolbars"]) - set(found["before"]["toolbars"])
        assert any("yardwright" in name.lower() for name in new_toolbars), loaded["toolbars"]
        assert found[f"after_{turn}"] == found["before"]
    assert found["with_1"] == found["with_2"]
    assert found["modules"] == []


def test_a_missing_library_is_named_and_how_to_get_it(installed, tmp_path):
    drive = ROOT / "tests" / "desktop" / "drive_missing_library.py"
    found = result_of(run_desktop(drive, tmp_path, plugin_path=installed, enabled=False))
    for turn in ("left", "closed"):
        assert found[f"started_{turn}"] and found[f"unloaded_{turn}"]
        (said,) = set(found[f"with_{turn}"]) - set(found["before"])
        assert "lacks shapely" in said and "apt install python3-shapely" in said
        may_run, reason = found[f"runnable_{turn}"]
        assert not may_run and "lacks shapely" in reason
        assert found[f"after_{turn}"] == found["before"]
    assert found["clicked"] == found["before"]
    assert found["logged"] == []
