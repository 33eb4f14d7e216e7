"""What a screen reader gets of the phone's program: its tree, read over the system's own accessibility bus.

    dbus-run-session -- python3 accessibility_bus.py <newel-home> <folder>

Starts a display and an accessibility bus of its own, the real program on it, and walks the first pages with
nothing but what assistive technology has: names, roles, states, actions. Ends with 77 (skipped) where this
machine has no Xvfb or no pyatspi."""

import os
import shutil
import subprocess
import sys
import tempfile
import time

try:
    import pyatspi
except ImportError:
    pyatspi = None

LAUNCHER = "/usr/libexec/at-spi-bus-launcher"
PRESSED = ("push button", "radio button", "check box", "toggle button", "text", "entry")


def skipped(why):
    print(f"skipped: {why}")
    sys.exit(77)


def wait_for(what, test, seconds=20):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        try:
            found = test()
        except Exception:  # the tree changes while it is read
            found = None
        if found:
            return found
        time.sleep(0.1)
    raise AssertionError(f"waited in vain for {what}")


def display():
    """A display of our own; its process and its name."""
    reader, writer = os.pipe()
    process = subprocess.Popen(["Xvfb", "-displayfd", str(writer), "-screen", "0", "800x1000x24", "-noreset",
                                "-nolisten", "tcp"],
                               pass_fds=[writer], stderr=subprocess.DEVNULL)
    os.close(writer)
    with os.fdopen(reader) as numbers:
        return process, f":{numbers.readline().strip()}"


def nodes(accessible):
    yield accessible
    for child in accessible:
        if child is not None:
            yield from nodes(child)


def shown(node):
    states = node.getState()
    return states.contains(pyatspi.STATE_SHOWING) and states.contains(pyatspi.STATE_VISIBLE)


class Program:
    def __init__(self, path, folder, display_name):
        environment = dict(os.environ, DISPLAY=display_name, QT_QPA_PLATFORM="xcb", QT_QUICK_BACKEND="software",
                           QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1", LANG="C.UTF-8")
        self.process = subprocess.Popen([path, "--data", folder, "--key-in-file"], env=environment)
        self.pid = self.process.pid

    def tree(self):
        for application in pyatspi.Registry.getDesktop(0):
            if application is not None and application.get_process_id() == self.pid:
                return [node for node in nodes(application) if shown(node) and node.name]
        return []

    def page(self, title):
        """What is on the page of that title, once its title has the focus."""
        def there():
            tree = self.tree()
            heads = [n for n in tree if n.getRoleName() == "heading" and n.name == title]
            return tree if heads and heads[0].getState().contains(pyatspi.STATE_FOCUSED) else None
        return wait_for(f"the page '{title}' with the focus on its title", there)

    def press(self, name):
        node = next(n for n in self.tree() if n.name == name and n.getRoleName() in PRESSED)
        action = node.queryAction()
        names = [action.getName(i).lower() for i in range(action.nActions)]
        assert any(n in ("press", "toggle") for n in names), f"'{name}' cannot be pressed: {names}"
        time.sleep(0.5)  # a page just shown takes no press at once
        action.doAction(next(i for i, n in enumerate(names) if n in ("press", "toggle")))


def check_page(tree, title):
    """Every control has a name and a size, and nothing of another page is left."""
    headings = [n.name for n in tree if n.getRoleName() == "heading"]
    assert headings[0] == title, f"the first heading is '{headings[0]}', not '{title}'"
    for node in tree:
        if node.getRoleName() not in PRESSED:
            continue
        box = node.queryComponent().getExtents(pyatspi.WINDOW_COORDS)
        assert node.name.strip(), f"a {node.getRoleName()} without a name on '{title}'"
        assert box.width > 0 and box.height > 0, f"'{node.name}' has no size"


def unnamed(program):
    for application in pyatspi.Registry.getDesktop(0):
        if application is None or application.get_process_id() != program.pid:
            continue
        return [n.getRoleName() for n in nodes(application) if shown(n) and n.getRoleName() in PRESSED and not n.name]
    return ["no program"]


def walk(program):
    tree = program.page("Your language")
    check_page(tree, "Your language")
    choices = [n for n in tree if n.getRoleName() == "radio button"]
    assert {n.name for n in choices} >= {"English", "Español"}, [n.name for n in choices]
    chosen = [n.name for n in choices if n.getState().contains(pyatspi.STATE_CHECKED)]
    assert chosen == ["English"], chosen
    assert tree[-1].name == "Next", f"the way on comes last, not '{tree[-1].name}'"
    assert not unnamed(program), unnamed(program)

    program.press("Next")
    tree = program.page("How large should words be?")
    check_page(tree, "How large should words be?")
    names = [n.name for n in tree]
    assert "Your language" not in names, "the page before is still there"
    assert "More: Size of text" in names and "Less: Size of text" in names, names
    program.press("More: Size of text")
    value = wait_for("the larger size", lambda: next(
        (n for n in program.tree() if n.name == "Size of text" and "125" in n.description), None))
    assert value.getRoleName() == "spin button", value.getRoleName()

    program.press("More contrast")
    wait_for("the tick", lambda: next((n for n in program.tree() if n.name == "More contrast"
                                       and n.getState().contains(pyatspi.STATE_CHECKED)), None))
    program.press("Next")
    check_page(program.page("Can you hear the phone?"), "Can you hear the phone?")
    program.press("Next")
    tree = program.page("Connect this phone to your clinic")
    check_page(tree, "Connect this phone to your clinic")
    fields = [n.name for n in tree if n.getRoleName() in ("text", "entry")]
    assert fields[:2] == ["Address of the clinic", "Code"], fields
    assert not unnamed(program), unnamed(program)

    program.press("Help")
    check_page(program.page("Help"), "Help")
    program.press("Back")
    program.page("Connect this phone to your clinic")


def main():
    path, base = sys.argv[1:3]
    if pyatspi is None:
        skipped("python3-pyatspi is not here")
    if shutil.which("Xvfb") is None or not os.path.exists(LAUNCHER):
        skipped("Xvfb or at-spi2-core is not here")
    os.makedirs(base, exist_ok=True)
    running = []
    with tempfile.TemporaryDirectory(dir=base) as folder:
        try:
            screen, name = display()
            running.append(screen)
            os.environ["DISPLAY"] = name
            running.append(subprocess.Popen([LAUNCHER, "--launch-immediately"], stderr=subprocess.DEVNULL))
            program = Program(path, folder, name)
            running.append(program.process)
            walk(program)
            print("the accessibility bus: 5 pages walked")
        finally:
            for process in reversed(running):
                process.terminate()
                process.wait(timeout=10)


if __name__ == "__main__":
    main()
