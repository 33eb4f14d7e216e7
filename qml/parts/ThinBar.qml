// A scroll bar that is there whenever there is more to see.
import QtQuick
import Newel.Parts
import QtQuick.Templates as T

T.ScrollBar {
    id: bar

    policy: T.ScrollBar.AsNeeded
    visible: size < 1
    implicitWidth: 8
    padding: 2
    minimumSize: 0.1
    Accessible.ignored: true

    contentItem: Rectangle {
        implicitWidth: 4
        radius: 2
        color: Theme.soft
    }
}
