"""Commands of our programs in a document, held against what the programs say of themselves with --help."""

import os
import re
import shlex
import subprocess

from links import line_of

NAMES = ("newel", "newel-hub", "newel-desk", "newel-home")
FENCE = re.compile(r"^```[^\n]*\n(.*?)^```\s*$", re.MULTILINE | re.DOTALL)
INLINE = re.compile(r"(?<!`)`([^`]+)`(?!`)")
OPTION = re.compile(r"--?[A-Za-z][\w-]*")
ASSIGNMENT = re.compile(r"[A-Za-z_][A-Za-z0-9_]*=")


class Help:
    """One program's or subcommand's own words about itself."""

    def __init__(self, text):
        self.subcommands = set()
        self.options = set()
        self.required = set()
        part = ""
        for line in text.splitlines():
            stripped = line.strip()
            if stripped.endswith(":") and not stripped.startswith("-"):
                part = stripped
            if part == "Subcommands:" and re.match(r"  [a-z]", line):
                self.subcommands.add(stripped.split()[0])
            named = re.match(r"(?:--?[A-Za-z][\w-]*(?:,\s*)?)+", stripped)
            if named:
                names = set(OPTION.findall(named[0]))
                self.options |= names
                if " REQUIRED" in stripped:
                    self.required |= names
        # Of the options that stand behind these words, one is needed.
        group = text.partition("Exactly 1 of the following options is required")[2]
        self.one_of = set(re.findall(r"^\s*(--[\w-]+)", group, re.MULTILINE))


class Programs:
    def __init__(self, folder, top):
        self.folder = folder
        self.top = top
        self.known = {}

    def help(self, words):
        """Of ("newel-hub", "user", "add"), asked once."""
        if words not in self.known:
            environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"}
            said = subprocess.run([os.path.join(self.folder, words[0]), *words[1:], "--help"], capture_output=True,
                                  text=True, timeout=60, env=environment, check=False)
            self.known[words] = Help(said.stdout) if said.returncode == 0 else None
        return self.known[words]


def simple_commands(line):
    """The words of each command of a line, as a shell would split it; nothing of what is no shell line."""
    lexer = shlex.shlex(line, posix=True, punctuation_chars="|&;<>()")
    lexer.whitespace_split = True
    lexer.commenters = "#"
    try:
        words = list(lexer)
    except ValueError:
        return
    command = []
    for word in words:
        if word and set(word) <= set("|&;()"):
            yield command
            command = []
        else:
            command.append(word)
    yield command


def ours(words):
    """The command from our program's name on, behind sudo and assignments; None: it is none of ours."""
    at = 0
    while at < len(words):
        word = words[at].removeprefix("ExecStart=")
        if ASSIGNMENT.match(word) and not words[at].startswith("ExecStart="):
            at += 1
        elif word in ("sudo", "runuser"):
            at += 1
            while at < len(words) and words[at].startswith("-"):
                at += 2 if words[at] in ("-u", "-g") else 1
        else:
            name = os.path.basename(word)
            return [name, *words[at + 1:]] if name in NAMES or word.startswith("platform/linux/") else None
    return None


def fault_of_script(words, top):
    """A script of ours: it is there, and what it is told stands in it."""
    path = os.path.join(top, "platform", "linux", words[0])
    if not os.path.isfile(path):
        return f"platform/linux/{words[0]} is not there"
    with open(path, encoding="utf-8") as file:
        text = file.read()
    for word in words[1:]:
        if word.startswith("--") and word not in text:
            return f"platform/linux/{words[0]} does not know {word}"
    return None


def fault_of(words, programs, whole):
    """`whole`: a command to be typed as it is, so that what it needs has to be there."""
    path = (words[0],)
    if words[0] not in NAMES:
        return fault_of_script(words, programs.top)
    told = programs.help(path)
    if told is None:
        return f"{words[0]} is not there, or has no help"
    options = set(told.options)
    given = set()
    for word in words[1:]:
        if word in (">", "<", "2>"):
            break
        name = word.split("=", 1)[0]
        if word == "..." or word == "…":
            whole = False
        elif OPTION.fullmatch(name):
            if name not in options:
                return f"{' '.join(path)} does not know {name}"
            given.add(name)
        elif told.subcommands:
            if word not in told.subcommands:
                return f"{' '.join(path)} does not know {word}"
            path = (*path, word)
            told = programs.help(path)
            if told is None:
                return f"{' '.join(path)} has no help"
            options |= told.options
    if not whole or given & {"--help", "--version", "-h"}:
        return None
    if told.subcommands:
        return f"{' '.join(path)} needs one of: {', '.join(sorted(told.subcommands))}"
    missing = told.required - given
    if missing:
        return f"{' '.join(path)} needs {', '.join(sorted(missing))}"
    if told.one_of and len(told.one_of & given) != 1:
        return f"{' '.join(path)} needs exactly one of {', '.join(sorted(told.one_of))}"
    return None


def check(text, programs):
    """How many commands of ours there are, and the faults as (line, words)."""
    faults = []
    count = 0
    lines = []
    for block in FENCE.finditer(text):
        first = line_of(text, block.start(1))
        joined = re.sub(r"\\\n", lambda _: "\\\0", block[1])
        for number, line in enumerate(joined.split("\n")):
            before = joined.split("\n")[:number]
            lines.append((first + number + sum(part.count("\0") for part in before), line.replace("\\\0", " "), True))
    for code in INLINE.finditer(FENCE.sub(lambda block: re.sub(r"[^\n]", " ", block[0]), text)):
        words = " ".join(code[1].split())
        if re.match(rf"({'|'.join(NAMES)}) (--)?[a-z]", words):
            # <id> is a place to fill in, and no redirection.
            lines.append((line_of(text, code.start()), re.sub(r"<[^>]*>", "X", words), False))
    for number, line, whole in lines:
        for words in simple_commands(line):
            command = ours(words)
            if command is None:
                continue
            count += 1
            fault = fault_of(command, programs, whole)
            if fault:
                faults.append((number, fault))
    return count, faults
