"""The words that a guide quotes from a screen, **in bold**, are words of that screen in the guide's language.

patient.md is held against the phone's words, therapist.md against the desk's, the phone's
and the sheets'. Where a screen fills
something in (%1), the guide may fill it in too.
"""

import glob
import os
import re
import xml.etree.ElementTree

from links import line_of, without_code

GUIDES = os.path.join("qml", "guides")
SCREENS = {"patient.md": ("home",), "therapist.md": ("desk", "home", "print")}
CATALOGUES = {"home": ("home", "newel"), "desk": ("desk", "newel_desk"), "print": ("print", "newel_print")}
BOLD = re.compile(r"\*\*(.+?)\*\*", re.DOTALL)
PLACE = re.compile(r"%(?:L?n|L?\d+)")
LEAST_LETTERS = 3  # of a sentence with places, that is not in them: less would fit anything
TRANSLATED = re.compile(r'\bqsTr\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)')

_known = {}


def read(path):
    with open(path, encoding="utf-8") as file:
        return file.read()


def catalogue(path, translated):
    """The sentences of a translation file: as the sources have them, or as they are in its language."""
    for message in xml.etree.ElementTree.fromstring(read(path)).iter("message"):
        translation = message.find("translation")
        forms = ["".join(form.itertext()) for form in translation.findall("numerusform")]
        if not translated:
            yield message.findtext("source")
        if translated or forms:
            yield from forms or ["".join(translation.itertext())]


def quoted(path):
    return re.findall(r'"((?:[^"\\]|\\.)+)"', read(path))


def sentences(top, language, screens):
    for screen in screens:
        folder, name = CATALOGUES[screen]
        words = os.path.join(top, "qml", folder, "i18n")
        if language == "en":
            # Every sentence of a screen is a source of the Spanish file (screen_words_test, desk_words_test); what
            # English has of its own are the plural forms.
            yield from catalogue(os.path.join(words, f"{name}_es.ts"), translated=False)
            own = os.path.join(words, f"{name}_en.ts")
            if os.path.exists(own):
                yield from catalogue(own, translated=True)
            for source in glob.glob(os.path.join(top, "qml", folder, "*.qml")):
                for literals in TRANSLATED.findall(read(source)):
                    yield "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', literals)).replace('\\"', '"')
        else:
            yield from catalogue(os.path.join(words, f"{name}_{language}.ts"), translated=True)
    # Questions before a practice, what rules say, exercises and cards.
    for path in glob.glob(os.path.join(top, "core", "library", "words", language, "**", "*.textproto"), recursive=True):
        yield from quoted(path)
    folders = ("questions", "rules") if language == "en" else (os.path.join("words", language),)
    for folder in folders:
        for path in glob.glob(os.path.join(top, "core", "safety", folder, "*.textproto")):
            yield from quoted(path)


def known(top, language, screens):
    """Sentences as they are, and patterns of those that something is filled into."""
    key = (top, language, screens)
    if key not in _known:
        exact = set()
        patterns = []
        for sentence in sentences(top, language, screens):
            text = " ".join((sentence or "").split())
            exact.add(text)
            parts = PLACE.split(text)
            if len(parts) > 1 and sum(c.isalpha() for part in parts for c in part) >= LEAST_LETTERS:
                patterns.append(".+".join(re.escape(part) for part in parts))
        _known[key] = exact, re.compile("|".join(f"(?:{pattern})" for pattern in sorted(set(patterns))))
    return _known[key]


def check(path, text, top):
    """How many words are quoted in a guide, and the faults as (line, words); nothing for other documents."""
    folder, name = os.path.split(os.path.relpath(path, top))
    parent, language = os.path.split(folder)
    if parent != GUIDES:
        return 0, []
    if name not in SCREENS:
        return 0, [(1, f"whose screens does {name} quote?")]
    exact, patterns = known(top, language, SCREENS[name])
    faults = []
    count = 0
    plain = without_code(text)
    for match in BOLD.finditer(plain):
        count += 1
        words = " ".join(match[1].split())
        if words not in exact and not patterns.fullmatch(words):
            faults.append((line_of(text, match.start()), f"no screen says: {words}"))
    return count, faults


def same_shape(top):
    """A guide has the same parts in each language."""
    faults = []
    shapes = {}
    for path in sorted(glob.glob(os.path.join(top, GUIDES, "*", "*.md"))):
        language, name = path.split(os.sep)[-2:]
        shapes.setdefault(name, {})[language] = [len(level) for level in
                                                 re.findall(r"^(#+) ", without_code(read(path)), re.MULTILINE)]
    for name, of_languages in shapes.items():
        for language, shape in of_languages.items():
            if shape != of_languages.get("en"):
                faults.append(f"{GUIDES}/{language}/{name}: has other parts than the English one")
    return faults
