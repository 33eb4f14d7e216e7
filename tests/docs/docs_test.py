#!/usr/bin/env python3
"""What the documents say is so: links and pictures are there, commands and their options are known to the programs, and
the words that a guide quotes from a screen stand on that screen.

  docs_test.py --programs FOLDER [--top FOLDER]

Every *.md outside folders of builds is looked at. A line a fault; the last line counts what was looked at.
"""

import argparse
import os
import sys

import commands
import contracts
import links
import screen_words

# Fewer than these and the test has not looked: a folder moved, or a pattern fits nothing any more.
LEAST = {"links": 60, "commands": 50, "quoted words": 500, "calls and columns": 150}
SKIPPED = {"build", "out", "node_modules"}


def documents(top):
    for folder, names, files in os.walk(top):
        names[:] = sorted(name for name in names if name not in SKIPPED and not name.startswith("."))
        for file in sorted(files):
            if file.endswith(".md"):
                yield os.path.join(folder, file)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--programs", required=True, help="where newel, newel-hub, newel-desk and newel-home are")
    here = os.path.dirname(os.path.abspath(__file__))
    parser.add_argument("--top", default=os.path.dirname(os.path.dirname(here)), help="of the repository")
    arguments = parser.parse_args()

    faults = []
    looked_at = dict.fromkeys(LEAST, 0)
    programs = commands.Programs(arguments.programs, arguments.top)
    files = list(documents(arguments.top))
    for path in files:
        with open(path, encoding="utf-8") as file:
            text = file.read()
        for kind, (count, found) in {
            "links": links.check(path, text),
            "commands": commands.check(text, programs),
            "quoted words": screen_words.check(path, text, arguments.top),
        }.items():
            looked_at[kind] += count
            faults += [f"{os.path.relpath(path, arguments.top)}:{line}: {words}" for line, words in found]
    faults += screen_words.same_shape(arguments.top)
    looked_at["calls and columns"], found = contracts.check(arguments.top)
    faults += [f"{contracts.GUIDE}:{line}: {words}" for line, words in found]
    faults += [f"only {looked_at[kind]} {kind} were found: has something moved?" for kind, least in LEAST.items()
               if looked_at[kind] < least]
    for fault in faults:
        print(fault)
    counted = ", ".join(f"{count} {kind}" for kind, count in looked_at.items())
    print(f"{'failed' if faults else 'passed'}: {len(files)} documents, {counted}, {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
