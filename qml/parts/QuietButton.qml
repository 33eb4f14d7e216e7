// A small way to somewhere else, such as Help in a page's head. Still 48 high.
import QtQuick
import Newel.Parts

BaseButton {
    words: Theme.rail
    leftPadding: Theme.space
    rightPadding: Theme.space
}
