// Shows where the keyboard is. Lies around its parent; two lines, so that it stands out on any ground.
import QtQuick
import Newel.Parts

Rectangle {
    required property Item target

    anchors.fill: parent
    anchors.margins: -4
    visible: target.activeFocus
    color: "transparent"
    radius: Theme.radius + 4
    border.width: 3
    border.color: Theme.ink
    z: 1
}
