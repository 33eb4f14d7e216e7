#!/usr/bin/env python3
"""Each kind of fault that docs_test.py looks for is found in a document that has it, and in none that has not.

  faults_test.py --programs FOLDER
"""

import argparse
import os
import sys

import commands
import contracts
import links
import screen_words

HERE = os.path.dirname(os.path.abspath(__file__))
TOP = os.path.dirname(os.path.dirname(HERE))
GUIDE = os.path.join(TOP, "qml", "guides", "en", "patient.md")
SPANISH = os.path.join(TOP, "qml", "guides", "es", "therapist.md")
README = os.path.join(TOP, "README.md")

GOOD_LINKS = ["[a](DEVELOPERS.md)", "[a](DEVELOPERS.md#the-map)", "[a](https://example.org/x)",
              "![What it shows](tests/walkthrough/pictures/phone-today.png)", "`[a](nowhere.md)`"]
BAD_LINKS = ["[a](nowhere.md)", "[a](DEVELOPERS.md#no-such-part)", "[a](/DEVELOPERS.md)", "[a](#no-such-part)",
             "![](tests/walkthrough/pictures/phone-today.png)", "![What it shows](tests/walkthrough/pictures/none.png)"]

GOOD_COMMANDS = ["newel-hub backup --data FOLDER --to FILE", "newel-hub init --store ...", "newel --help",
                 "NEWEL_PASSWORD=x sudo -u newel newel-hub user add --data F --name n   # a comment",
                 "newel-hub serve --data F \\\n  --listen 127.0.0.1:7443", "ExecStart=/usr/bin/newel-hub serve --data F",
                 "systemctl stop newel-hub", "newel-desk --hub h:1 --fingerprint x", "platform/linux/run --build-only"]
BAD_COMMANDS = ["newel-hub bakcup --data F --to G", "newel-hub backup --data F --onto G", "newel-hub backup --data F",
                "newel-hub backup --to G", "newel-hub fingerprint --data F --store postgres://x/y", "newel-hub user",
                "true && newel-hub user ad --data F", "newel-home --no-such-option", "platform/linux/run --no-such-option",
                "platform/linux/no-such-script", "sudo -u newel newel-hub certificate renew --data F",
                "ExecStart=/usr/bin/newel-hub serve --data F --phonehost h"]

GOOD_WORDS = [(GUIDE, "**Support is there: start**"), (GUIDE, "**Step 2 of 7**"), (GUIDE, "**Leave this\nexercise out**"),
              (SPANISH, "**Revisar y firmar**"), (README, "**anything at all**")]
BAD_WORDS = [(GUIDE, "**Support is there: begin**"), (GUIDE, "**Revisar y firmar**"), (GUIDE, "**Step two**"),
             (GUIDE, "**start**"), (SPANISH, "**Review and sign**")]


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--programs", required=True)
    programs = commands.Programs(parser.parse_args().programs, TOP)

    def of_command(line):
        return commands.check(f"```\n{line}\n```\n", programs)

    wrong = []
    tries = 0
    for cases, of, found in ((GOOD_LINKS, lambda text: links.check(README, text), False),
                             (BAD_LINKS, lambda text: links.check(README, text), True),
                             (GOOD_COMMANDS, of_command, False),
                             (BAD_COMMANDS, of_command, True),
                             (GOOD_WORDS, lambda case: screen_words.check(*case, TOP), False),
                             (BAD_WORDS, lambda case: screen_words.check(*case, TOP), True)):
        for case in cases:
            tries += 1
            _, faults = of(case)
            if bool(faults) != found:
                wrong.append(f"{case!r}: {'nothing was found' if found else faults}")
    tables = contracts.columns_of_header("// one            a, b (of c)\n//                [, d]. More words\n//\n// last           e, f\n#pragma once")
    if tables != {"one": ["a", "b", "d"], "last": ["e", "f"]}:
        wrong.append(f"the columns of two tables were read as {tables}")
    for words in wrong:
        print(words)
    print(f"{'failed' if wrong else 'passed'}: {tries} documents tried")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
