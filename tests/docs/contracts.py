"""The guide for integrators names every call of the services and every column of the CSV tables, and no others.

That csv_tables.h says what is written is for tests/sync/export to prove.
"""

import os
import re

from links import line_of

GUIDE = os.path.join("sync", "guides", "integrator.md")
ROW = re.compile(r"^\| `(\w+)` \| ((?:`\w+`(?:, | — )?)+) \|$", re.MULTILINE)


def read(*path):
    with open(os.path.join(*path), encoding="utf-8") as file:
        return file.read()


def columns_of_header(text):
    """Of the comment over csv_tables.h: a table's name at the edge, its columns beside and below it."""
    tables = {}
    name = None
    for line in text.partition("#pragma once")[0].splitlines():
        words = re.sub(r"^// ?", "", line)
        begun = re.match(r"([a-z_]+) +(?=[a-z])(.{2,})$", words)
        if begun and (re.match(r"[a-z_]+ {2}", words) or len(begun[1]) == 14):
            name = begun[1]
            tables[name] = begun[2]
        elif name and words.startswith(" " * 12):
            tables[name] += " " + words.strip()
        elif words.strip():
            name = None
    # What stands in brackets explains; a sentence behind the columns does, too.
    plain = {name: re.sub(r'\([^)]*\)|\. .*', "", columns) for name, columns in tables.items()}
    return {name: re.findall(r"[a-z][a-z0-9_]*", columns) for name, columns in plain.items()}


def check(top):
    """How many names were held against each other, and the faults as (line, words)."""
    text = read(top, GUIDE)
    faults = []
    calls = set()
    for proto in ("home_service.proto", "desk_service.proto"):
        calls |= set(re.findall(r"^  rpc (\w+)\(", read(top, "sync", "protocol", proto), re.MULTILINE))
    faults += [(1, f"the call {call} is not named") for call in sorted(calls) if f"`{call}`" not in text]

    tables = columns_of_header(read(top, "sync", "export", "csv_tables.h"))
    told = {match[1]: (re.findall(r"`(\w+)`", match[2]), line_of(text, match.start())) for match in ROW.finditer(text)}
    told = {name: told[name] for name in told if name in tables or len(told[name][0]) > 2}
    for name in sorted(set(tables) | set(told)):
        if name not in told:
            faults.append((1, f"the table {name} is not described"))
        elif told[name][0] != tables.get(name):
            faults.append((told[name][1], f"the table {name} has the columns {tables.get(name)}"))
    return len(calls) + sum(len(columns) for columns in tables.values()), faults
