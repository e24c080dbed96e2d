"""Starts a real QGIS desktop under a virtual screen, drives it with a script and brings back what it found.

``run_desktop`` is for tests. The script it runs inside QGIS uses ``desktop_drive``, which lies beside this.
"""

import json
import os
import shutil
import signal
import subprocess
from contextlib import contextmanager
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
PLUGIN_PATH = ROOT / "plugin"

SETTINGS = """[PythonPlugins]
yardwright={enabled}

[app]
askToSaveMemoryLayers=false

[qgis]
askToSaveProjectChanges=false
checkVersion=false
showTips=false
"""


class DesktopFailed(Exception):
    """The desktop did not come to the end of its script; says what it printed and where the picture is."""


@contextmanager
def virtual_screen(size="1400x900"):
    """A display of its own: yields its name (``:7``). The X server chooses a number that is free."""
    readable, writable = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writable), "-screen", "0", f"{size}x24", "-nolisten", "tcp"],
        pass_fds=[writable],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(writable)
    try:
        with os.fdopen(readable) as pipe:
            number = pipe.readline().strip()
        if not number:
            raise DesktopFailed("Xvfb did not start.")
        yield f":{number}"
    finally:
        server.terminate()
        server.wait(timeout=20)


def run_desktop(
    drive_script,
    folder,
    project=None,
    plugin_path=PLUGIN_PATH,
    timeout=120,
    enabled=True,
    size="1400x900",
    environment=None,
    arguments=(),
    killed=False,
):
    """Run QGIS with a fresh profile until ``drive_script`` ends; returns the folder with its results.

    drive_script: the path of a Python file that ends with ``desktop_drive.run(drive)``.
    folder: where ``result.json``, screenshots, the profile and QGIS's output go (a test's ``tmp_path``).
    project: a project file to open.  plugin_path: the folder that holds ``yardwright/``.
    enabled: whether QGIS loads the plugin at its start.  environment: more variables for the script.
    arguments: more of QGIS's command line, such as ``("--lang", "de")``.
    killed: whether the script is to end with ``desk.kill()``.
    Raises DesktopFailed with what was printed when the script fails or time runs out.
    """
    folder = Path(folder)
    profile = folder / "home" / "profiles" / "default" / "QGIS"
    profile.mkdir(parents=True)
    (profile / "QGIS3.ini").write_text(SETTINGS.format(enabled=str(enabled).lower()), encoding="utf-8")
    runtime = folder / "runtime"
    runtime.mkdir(mode=0o700)
    command = ["qgis", "--noversioncheck", "--nologo", "--profiles-path", str(folder / "home")]
    if project is not None:
        command += ["--project", str(project)]
    command += [*arguments, "--code", str(drive_script)]
    dropped = ("QT_QPA_PLATFORM", "VIRTUAL_ENV", "PYTHONHOME", "PYTHONPATH", "QGIS_CUSTOM_CONFIG_PATH")
    kept = {name: value for name, value in os.environ.items() if name not in dropped}
    with virtual_screen(size) as display, open(folder / "output.txt", "wb") as output:
        variables = {
            **kept,
            "DISPLAY": display,
            "HOME": str(folder / "home"),
            "XDG_RUNTIME_DIR": str(runtime),
            "LC_ALL": "C.UTF-8",
            "QGIS_PLUGINPATH": str(plugin_path),
            "PYTHONPATH": str(HERE),
            "PYTHONDONTWRITEBYTECODE": "1",
            "YARDWRIGHT_DRIVE_FOLDER": str(folder),
            **(environment or {}),
        }
        process = subprocess.Popen(
            command,
            env=variables,
            cwd=folder,
            stdout=output,
            stderr=subprocess.STDOUT,
            start_new_session=True,
        )
        try:
            code = process.wait(timeout=timeout)
        except subprocess.TimeoutExpired:
            _photograph(display, folder / "screen.png")
            raise DesktopFailed(_story(folder, f"QGIS did not finish within {timeout} s")) from None
        finally:
            _end(process)
    if code != (-signal.SIGKILL if killed else 0) or not (folder / "result.json").exists():
        raise DesktopFailed(_story(folder, f"QGIS ended with {code}"))
    return folder


def result_of(folder):
    """What the script reported, a dictionary."""
    return json.loads((Path(folder) / "result.json").read_text(encoding="utf-8"))


def _end(process):
    if process.poll() is None:
        os.killpg(process.pid, signal.SIGKILL)
        process.wait(timeout=20)


def _photograph(display, path):
    if shutil.which("import"):
        subprocess.run(["import", "-display", display, "-window", "root", str(path)], check=False, timeout=20)


def _story(folder, headline):
    printed = (folder / "output.txt").read_text(encoding="utf-8", errors="replace")
    return f"{headline}; pictures in {folder}.\n{printed[-6000:]}"
