// The number with a bar below instead of a ring around it, for large text on a small screen.
import QtQuick
import Newel.Parts

Item {
    id: count

    property alias number: numeral.text
    property real fraction: 0
    property bool resting: false
    property real grow: 1 // 1 on a phone, more on a larger screen

    implicitWidth: Math.round(118 * grow)
    implicitHeight: Math.round(74 * grow) + 16

    CountNumber {
        id: numeral

        width: parent.width
        height: Math.round(74 * count.grow)
        font.pixelSize: Math.round(Theme.numeral * count.grow)
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
