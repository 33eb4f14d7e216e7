"""Links and pictures of a document: what they lead to is there, and a picture says what it shows."""

import os
import re
import urllib.parse

LINK = re.compile(r"(!?)\[((?:[^\[\]]|\[[^\]]*\])*)\]\(([^)\s]+)(?:\s+\"[^\"]*\")?\)")
PICTURE = re.compile(r"!\[([^\]]*)\]\(([^)\s]+)\)")
FENCE = re.compile(r"^(```|~~~).*?^\1\s*$", re.MULTILINE | re.DOTALL)
CODE = re.compile(r"`[^`\n]*`")


def without_code(text):
    """The same text with code blanked out, line by line as long as before."""
    blank = lambda match: re.sub(r"[^\n]", " ", match[0])
    return CODE.sub(blank, FENCE.sub(blank, text))


def line_of(text, at):
    return text.count("\n", 0, at) + 1


def anchors(path):
    """What headings can be jumped to, by the rule that the usual hosts share."""
    found = set()
    with open(path, encoding="utf-8") as file:
        for heading in re.findall(r"^#+\s+(.+?)\s*$", FENCE.sub("", file.read()), re.MULTILINE):
            words = re.sub(r"[^\w\s-]", "", heading.lower())
            found.add(re.sub(r"\s", "-", words))
    return found


def fault_of(path, target):
    name, _, anchor = target.partition("#")
    if name.startswith("/"):
        return f"{target} is a place on one machine"
    there = os.path.normpath(os.path.join(os.path.dirname(path), urllib.parse.unquote(name))) if name else path
    if not os.path.exists(there):
        return f"{target} is not there"
    if anchor and anchor not in anchors(there):
        return f"{target}: no such heading"
    return None


def check(path, text):
    """How many links there are, and the faults as (line, words)."""
    faults = []
    count = 0
    plain = without_code(text)
    for match in LINK.finditer(plain):
        # A picture that is itself a link is inside the words of the link.
        targets = [match[3]] + [inner[2] for inner in PICTURE.finditer(match[2])]
        for target in targets:
            count += 1
            if re.match(r"[a-z][a-z0-9+.-]*:", target):
                continue
            fault = fault_of(path, target)
            if fault:
                faults.append((line_of(text, match.start()), fault))
        if match[1] and not match[2].strip():
            faults.append((line_of(text, match.start()), f"{match[3]}: what does the picture show?"))
    return count, faults
