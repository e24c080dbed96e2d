"""The algorithms through ``qgis_process``, without a desktop, with a fresh profile."""

import json
import os
import shutil
import subprocess

import pytest
from desktop import PLUGIN_PATH

pytestmark = pytest.mark.desktop


@pytest.fixture
def qgis_process(tmp_path):
    """Runs ``qgis_process`` with the arguments given; the finished process."""
    # Debian 12 wraps qgis_process in a script that breaks arguments; the program itself lies beside it.
    program = shutil.which("qgis_process.bin") or shutil.which("qgis_process")
    dropped = ("VIRTUAL_ENV", "PYTHONHOME", "PYTHONPATH", "QGIS_OPTIONS_PATH", "DISPLAY")
    environment = {name: value for name, value in os.environ.items() if name not in dropped}
    environment.update(
        QT_QPA_PLATFORM="offscreen",
        QGIS_PLUGINPATH=str(PLUGIN_PATH),
        QGIS_CUSTOM_CONFIG_PATH=str(tmp_path / "profile"),
        PYTHONDONTWRITEBYTECODE="1",
    )
    (tmp_path / "profile").mkdir()

    def call(*arguments):
        return subprocess.run(
            [program, *arguments],
            env=environment,
            cwd=tmp_path,
            capture_output=True,
            text=True,
            timeout=120,
            check=False,
        )

    done = call("plugins", "enable", "yardwright")
    assert done.returncode == 0, done.stdout + done.stderr
    return call


def test_course_made_and_measured(qgis_process, tmp_path):
    (tmp_path / "card.csv").write_text(
        "hole,par,stroke_index,name,White,Red\n1,4,2,Burn,398,350\n2,3,1,Dyke,170,131\n", encoding="utf-8"
    )
    course = ["COURSE=links.gpkg", "NAME=Harrow Links", "CRS=EPSG:32630", "SCORECARD=card.csv"]
    made = qgis_process("--json", "run", "yardwright:startcourse", "--", *course)
    assert made.returncode == 0, made.stdout + made.stderr
    assert (tmp_path / "links.gpkg").is_file()

    measured = qgis_process(
        "--json", "run", "yardwright:measurecourse", "--", "COURSE=links.gpkg", "HOLES=1-2", "OUTPUT=tables"
    )
    assert measured.returncode == 0, measured.stdout + measured.stderr
    results = json.loads(measured.stdout)["results"]
    lengths = (tmp_path / "tables" / "lengths.csv").read_text(encoding="utf-8").splitlines()
    assert os.path.samefile(results["LENGTHS"], tmp_path / "tables" / "lengths.csv")
    assert lengths[0].startswith("hole,tee_set,length_yd,plus_minus_yd,scorecard_yd")


def test_a_mistake_is_told_in_two_sentences(qgis_process, tmp_path):
    done = qgis_process("run", "yardwright:measurecourse", "--", "COURSE=none.gpkg", "OUTPUT=tables")
    said = done.stdout + done.stderr
    assert done.returncode != 0
    assert "There is no file" in said and "Check the path" in said
    assert "Traceback" not in said
    assert not (tmp_path / "tables").exists()


def test_a_german_profile_gets_german(qgis_process, tmp_path):
    (settings,) = (tmp_path / "profile").rglob("QGIS3.ini")
    with open(settings, "a", encoding="utf-8") as file:
        file.write("\n[locale]\noverrideFlag=true\nuserLocale=de_AT\n")
    done = qgis_process("help", "yardwright:measurecourse")
    assert done.returncode == 0, done.stderr
    assert "Platz messen" in done.stdout and "Ordner für die Ergebnisse" in done.stdout


def test_help_names_every_parameter(qgis_process):
    done = qgis_process("help", "yardwright:measurecourse")
    assert done.returncode == 0, done.stderr
    for name in ("COURSE", "HOLES", "OUTPUT", "FORMS"):
        assert name in done.stdout
