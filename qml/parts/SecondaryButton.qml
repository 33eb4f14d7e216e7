// Everything else that can be pressed and is not the main action.
import QtQuick
import Newel.Parts

BaseButton {
    ground: Theme.sheet
    words: Theme.ink
    edge: Theme.ink
}
