"""What the kiosk's own text can start, load or reach: every such call is named here."""

from __future__ import annotations

import ast
import re
import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

import kiosk

PACKAGE = Path(kiosk.__file__).parent
FILES = sorted(PACKAGE.rglob("*.py"))
FOLDERS = sorted({path.relative_to(PACKAGE).parts[0] for path in FILES})

STARTED = {
    "checking/phonemes.py": ["subprocess.run"],  # this Python, for espeak-ng's phonemes
    "proof/beside.py": ["multiprocessing.get_context"],  # this Python, to prove on every core
    "speaking/aplay_player.py": ["subprocess.Popen", "subprocess.run"],  # aplay, a sound file
    "speaking/pyttsx3_driver.py": ["subprocess.run"],  # afconvert, on macOS
    "speaking/renderer.py": ["subprocess.Popen"],  # this Python, for the voice
}
"""Every process that is started, by file. Each is a list of words; no shell reads it."""

NETWORK = {
    "cli/serve.py": {"asyncio"},
    "crew/": {"asyncio"},  # to wait between what is played
    "fleet/": {"psycopg"},
    "cli/ship.py": {"psycopg"},
    "listening/download.py": {"http", "urllib"},  # a speech model, when somebody asks for one
    "serve/": {"aiohttp", "asyncio", "ssl"},
}
"""Every file, or folder, that can reach or serve a network."""
_NETWORK_MODULES = frozenset(
    {"socket", "ssl", "http", "urllib", "asyncio", "aiohttp", "psycopg", "requests", "httpx",
     "ftplib", "smtplib", "socketserver", "xmlrpc", "telnetlib"}
)  # fmt: skip

_PROCESS = frozenset(
    {"subprocess", "multiprocessing", "pty", "runpy", "code", "codeop", "concurrent.interpreters"}
)
_OS_STARTS = ("system", "popen", "exec", "spawn", "fork", "posix_spawn", "startfile")
_NEVER_CALLED = frozenset({"eval", "exec", "compile", "__import__", "input"})
_NEVER_IMPORTED = frozenset(
    {"pickle", "cPickle", "_pickle", "marshal", "shelve", "dill", "joblib", "cloudpickle", "imp",
     "runpy", "code", "codeop", "pty"}
)  # fmt: skip
_LOADS = frozenset({"import_module", "exec_module", "load_module", "spec_from_file_location"})


def name_of(path: Path) -> str:
    return path.relative_to(PACKAGE).as_posix()


def dotted(node: ast.expr) -> str:
    if isinstance(node, ast.Attribute):
        return f"{dotted(node.value)}.{node.attr}"
    return node.id if isinstance(node, ast.Name) else ""


@cache
def tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def calls(of: ast.AST) -> Iterator[tuple[str, ast.Call]]:
    for node in ast.walk(of):
        if isinstance(node, ast.Call):
            yield dotted(node.func), node


def imports(of: ast.AST) -> Iterator[tuple[str, str]]:
    """Yield the module and, from it, the name of each import of something outside the package."""
    for node in ast.walk(of):
        if isinstance(node, ast.Import):
            yield from ((one.name, "") for one in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            yield from ((node.module, one.name) for one in node.names)


def starts(of: ast.AST) -> list[str]:
    """Return what starts a process: the calls, and what is taken out of a module that can."""
    taken = (f"{module}.{name}" for module, name in imports(of) if name)
    return sorted(
        [one for one in taken if one.split(".")[0] in _PROCESS]
        + [
            called
            for called, _ in calls(of)
            if called.split(".")[0] in _PROCESS
            or (called.startswith("os.") and called.removeprefix("os.").startswith(_OS_STARTS))
            or called.startswith("asyncio.create_subprocess")
        ]
    )


def test_every_process_that_is_started_is_named_here():
    found = {name_of(path): starts(tree(path)) for path in FILES}
    assert {name: called for name, called in found.items() if called} == STARTED


def test_a_process_is_started_by_a_module_that_keeps_its_own_name():
    # 'from os import system' or 'import subprocess as sp' would hide a call from the test above.
    hidden = [
        (name_of(path), name)
        for path in FILES
        for module, name in imports(tree(path))
        if module == "os" and name.startswith(_OS_STARTS)
    ]
    renamed = [
        name_of(path)
        for path in FILES
        for node in ast.walk(tree(path))
        if isinstance(node, ast.Import)
        for one in node.names
        if one.name.split(".")[0] in {*_PROCESS, "os"} and one.asname
    ]
    assert hidden == []
    assert renamed == []


@pytest.mark.parametrize("folder", FOLDERS)
def test_no_shell_no_pickle_no_eval(folder):
    for path in FILES:
        if name_of(path).partition("/")[0] == folder:
            check(path)


def check(path: Path) -> None:
    of = tree(path)
    assert not {module.split(".")[0] for module, _ in imports(of)} & _NEVER_IMPORTED
    for called, node in calls(of):
        where = f"line {node.lineno}"
        assert called not in _NEVER_CALLED or _asks_a_person(path, called), (called, where)
        given = {word.arg: word.value for word in node.keywords}
        assert "shell" not in given, where
        if called.split(".")[0] == "subprocess":
            assert None not in given, where
        last = called.rsplit(".", 1)[-1]
        if called in ("np.load", "numpy.load"):
            allowed = given["allow_pickle"]
            assert isinstance(allowed, ast.Constant), where
            assert allowed.value is False, where
        if called.startswith("yaml."):
            # compose builds nodes, not objects: a tag can name a class, and makes none of it.
            # safe_dump reads nothing, and writes plain values alone.
            assert last in ("compose", "safe_dump"), (called, where)
        if last in _LOADS:
            # Only modules that this text names itself.
            assert name_of(path) in ("report/fonts.py",), (called, where)
        assert last not in ("enable_load_extension", "load_extension"), where


def _asks_a_person(path: Path, called: str) -> bool:
    return called == "input" and name_of(path).startswith("cli/")


def test_every_file_that_reaches_a_network_is_named_here():
    for path in FILES:
        name = name_of(path)
        reached = {
            module.split(".")[0]
            for module, _ in imports(tree(path))
            if module.split(".")[0] in _NETWORK_MODULES and module not in ("urllib.parse",)
        }
        may = {one for place, known in NETWORK.items() if name.startswith(place) for one in known}
        assert reached <= may, name


def test_every_statement_of_sql_takes_its_values_apart():
    """A value of a person or a file goes in by a mark; what is written in is the text's own."""
    written_in = [
        f"{name_of(path)}:{node.lineno}"
        for path in FILES
        for called, node in calls(tree(path))
        if called.endswith((".execute", ".executemany"))
        and node.args
        and isinstance(node.args[0], ast.BinOp)
    ]
    assert written_in == []


def test_the_page_on_threats_names_what_this_file_names():
    said = (PACKAGE / "THREATS.md").read_text(encoding="utf-8")
    assert [name for name in (*STARTED, *NETWORK) if f"`{name}`" not in said] == []
    root = PACKAGE.parent
    named = set(re.findall(r"`(tests/\S+\.py)`", said))
    assert named
    assert [name for name in named if not (root / name).exists()] == []


def test_the_page_on_threats_names_every_dependency():
    said = (PACKAGE / "THREATS.md").read_text(encoding="utf-8")
    project = tomllib.loads((PACKAGE.parent / "pyproject.toml").read_text("utf-8"))["project"]
    extras = project["optional-dependencies"]
    wanted = [one for name, listed in extras.items() if name != "test" for one in listed]
    names = [re.split(r"[^\w.-]", one)[0] for one in (*project["dependencies"], *wanted)]
    assert [name for name in names if f"| {name} |" not in said] == []
