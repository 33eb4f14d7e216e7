// The number with a bar below instead of a ring around it, for large text on a small screen.
import QtQuick
import Newel.Parts

Item {
    id: count

    property alias number: numeral.text
    property real fraction: 0
    property bool resting: false

    implicitWidth: 118
    implicitHeight: 90

    CountNumber {
        id: numeral

        width: parent.width
        height: 74
    }

    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 8
        radius: 4
        color: Theme.groove

        Rectangle {
            x: count.LayoutMirroring.enabled ? parent.width - width : 0
            width: parent.width * count.fraction
            height: parent.height
            radius: 4
            color: count.resting ? Theme.soft : Theme.rail
        }
    }
}
