// A ring that fills as the beat goes, and in it the number, to be read from across the room.
import QtQuick
import Newel.Parts

Item {
    id: count

    property string number: ""
    property alias fraction: ring.fraction
    property alias resting: ring.resting

    implicitWidth: 176
    implicitHeight: 176

    Ring {
        id: ring

        anchors.fill: parent
    }

    Text {
        anchors.centerIn: parent
        width: parent.width - 36
        height: parent.height - 36
        text: count.number
        color: Theme.ink
        font.pixelSize: Theme.numeral
        font.bold: true
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 40
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
