// A ring that fills as the beat goes, and in it the number.
import QtQuick
import Newel.Parts

Item {
    id: count

    property alias number: numeral.text
    property alias fraction: ring.fraction
    property alias resting: ring.resting

    implicitWidth: 176
    implicitHeight: 176

    Ring {
        id: ring

        anchors.fill: parent
    }

    CountNumber {
        id: numeral

        anchors.centerIn: parent
        width: parent.width - 36
        height: parent.height - 20
    }
}
