#!/usr/bin/env python3
"""clang-tidy over every source of core, sync, qml and platform, on every core of the machine.

A file is looked at again only when something it is made of has changed: itself, a header it includes, how it is
compiled, the rules (.clang-tidy) or clang-tidy itself. What was clean before is remembered under the user's cache
folder; findings are never remembered.

    platform/linux/tidy.py build/dev [PATH...]     the build folder must be built; PATHs narrow the choice
"""

import concurrent.futures
import functools
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys

TOP = pathlib.Path(__file__).resolve().parents[2]
OURS = re.compile(r"^(core|sync|qml|platform)/.*\.cpp$")
TIDY = ["clang-tidy", "-quiet", "-extra-arg=-Wno-unknown-warning-option"]


def output(*command, where=TOP):
    return subprocess.run(command, cwd=where, text=True, capture_output=True, check=True).stdout


@functools.lru_cache(maxsize=None)
def content(path):
    """A digest of one file; files of the system are told by size and time, which is enough for packages."""
    try:
        if TOP in path.parents:
            return hashlib.sha256(path.read_bytes()).hexdigest()
        status = path.stat()
        return f"{status.st_size} {status.st_mtime_ns}"
    except OSError:
        return "gone"


def made_of(build):
    """Object file -> the files it was compiled from, as the build recorded them."""
    parts = {}
    current = None
    for line in output("ninja", "-t", "deps", where=build).splitlines():
        if line and not line.startswith(" "):
            current = parts.setdefault(line.split(":")[0], [])
        elif line.strip():
            current.append((build / line.strip()).resolve())
    return parts


def rules_for(source):
    """The rule files that clang-tidy may read for this source."""
    return [folder / ".clang-tidy" for folder in source.parents if folder == TOP or TOP in folder.parents]


def digest(entry, source, parts, version):
    told = [version, entry["command"], str(source.relative_to(TOP))]
    told += [content(path) for path in rules_for(source)]
    told += [f"{path} {content(path)}" for path in sorted(parts)]
    told = [line.replace(str(TOP), "") for line in told]
    return hashlib.sha256("\n".join(told).encode()).hexdigest()


def look(build, source):
    done = subprocess.run([*TIDY, "-p", str(build), str(source)], cwd=TOP, text=True, capture_output=True, check=False)
    return done.returncode == 0, done.stdout + ("" if done.returncode == 0 else done.stderr)


def main():
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    build = pathlib.Path(sys.argv[1]).resolve()
    chosen = [pathlib.Path(path).resolve() for path in sys.argv[2:]]
    cache = pathlib.Path(os.environ.get("XDG_CACHE_HOME") or pathlib.Path.home() / ".cache") / "newel-tidy"
    cache.mkdir(parents=True, exist_ok=True)
    version = output("clang-tidy", "--version")
    parts = made_of(build)
    todo, known = [], 0
    for entry in json.loads((build / "compile_commands.json").read_text()):
        source = pathlib.Path(entry["file"]).resolve()
        if TOP not in source.parents or not OURS.match(str(source.relative_to(TOP))):
            continue
        if chosen and not any(source == path or path in source.parents for path in chosen):
            continue
        name = re.search(r" -o (\S+)", entry["command"]).group(1)
        stamp = cache / digest(entry, source, parts.get(name, []), version)
        if name in parts and stamp.exists():
            known += 1
        else:
            todo.append((source, stamp))
    print(f"clang-tidy: {len(todo)} to look at, {known} unchanged since they were clean", flush=True)
    bad = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        runs = {pool.submit(look, build, source): (source, stamp) for source, stamp in todo}
        for count, run in enumerate(concurrent.futures.as_completed(runs), 1):
            source, stamp = runs[run]
            clean, words = run.result()
            if clean:
                stamp.touch()
            else:
                bad += 1
                print(f"{source.relative_to(TOP)}:\n{words}", flush=True)
            if count % 25 == 0:
                print(f"clang-tidy: {count} of {len(todo)}", flush=True)
    print(f"clang-tidy: {bad} files with findings")
    sys.exit(1 if bad else 0)


main()
