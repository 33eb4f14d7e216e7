// Everything else that can be pressed and is not the main action.
import QtQuick

BaseButton {
    ground: Theme.sheet
    words: Theme.ink
    edge: Theme.ink
}
