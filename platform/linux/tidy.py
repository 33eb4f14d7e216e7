#!/usr/bin/env python3
"""clang-tidy over every source of core, sync, qml and platform, on every core of the machine.

A file is looked at again only when something it is made of has changed: itself, a header of ours that it includes,
how it is compiled, the rules (.clang-tidy) or clang-tidy itself. What was clean before is remembered under the user's
cache folder; findings are never remembered.

    platform/linux/tidy.py build/dev [PATH...]     the build folder must be built; PATHs narrow the choice
        --seconds N   begin no file after N seconds. Files that changed themselves come first, then those of which only
                      a header did; how many were left is said, and they are looked at next time.
"""

import argparse
import concurrent.futures
import functools
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys
import time

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


def sealed(lines):
    told = [line.replace(str(TOP), "") for line in lines]
    return hashlib.sha256("\n".join(told).encode()).hexdigest()


def digest(entry, source, parts, version, build):
    """Of all that a source is made of; what protoc wrote counts by its name, for no finding stands in it."""
    told = [version, entry["command"], str(source.relative_to(TOP))]
    told += [content(path) for path in rules_for(source)]
    told += [str(path) if build in path.parents else f"{path} {content(path)}" for path in sorted(parts)]
    return sealed(told)


def own_digest(source, version):
    """Of the source itself and the header of its name."""
    told = ["own", version, str(source.relative_to(TOP)), content(source), content(source.with_suffix(".h"))]
    return sealed(told + [content(path) for path in rules_for(source)])


def look(build, source):
    done = subprocess.run([*TIDY, "-p", str(build), str(source)], cwd=TOP, text=True, capture_output=True, check=False)
    return done.returncode == 0, done.stdout + ("" if done.returncode == 0 else done.stderr)


def asked():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("build", type=lambda path: pathlib.Path(path).resolve())
    parser.add_argument("paths", nargs="*", type=lambda path: pathlib.Path(path).resolve())
    parser.add_argument("--seconds", type=float, default=float("inf"))
    return parser.parse_args()


def find(options, cache):
    """What is to be looked at, most urgent first, as (source, stamps); and how many need not be."""
    version = output("clang-tidy", "--version")
    parts = made_of(options.build)
    changed, affected, known = [], [], 0
    for entry in json.loads((options.build / "compile_commands.json").read_text()):
        source = pathlib.Path(entry["file"]).resolve()
        if TOP not in source.parents or not OURS.match(str(source.relative_to(TOP))):
            continue
        if options.paths and not any(source == path or path in source.parents for path in options.paths):
            continue
        name = re.search(r" -o (\S+)", entry["command"]).group(1)
        whole = cache / digest(entry, source, parts.get(name, []), version, options.build)
        own = cache / own_digest(source, version)
        if name in parts and whole.exists():
            known += 1
        else:
            (affected if own.exists() else changed).append((source, (whole, own)))
    return changed + affected, known


def main():
    options = asked()
    cache = pathlib.Path(os.environ.get("XDG_CACHE_HOME") or pathlib.Path.home() / ".cache") / "newel-tidy"
    cache.mkdir(parents=True, exist_ok=True)
    todo, known = find(options, cache)
    print(f"clang-tidy: {len(todo)} to look at, {known} unchanged since they were clean", flush=True)
    end = time.monotonic() + options.seconds
    bad, left, seen = 0, 0, 0

    def work(source):
        return None if time.monotonic() > end else look(options.build, source)

    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        runs = {pool.submit(work, source): (source, stamps) for source, stamps in todo}
        for run in concurrent.futures.as_completed(runs):
            source, stamps = runs[run]
            if run.result() is None:
                left += 1
                continue
            clean, words = run.result()
            if clean:
                for stamp in stamps:
                    stamp.touch()
            else:
                bad += 1
                print(f"{source.relative_to(TOP)}:\n{words}", flush=True)
            seen += 1
            if seen % 25 == 0:
                print(f"clang-tidy: {seen} of {len(todo)}", flush=True)
    if left:
        print(f"clang-tidy: {left} files skipped, for lack of time; they are looked at next time")
    print(f"clang-tidy: {bad} files with findings")
    sys.exit(1 if bad else 0)


main()
