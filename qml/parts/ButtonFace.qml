// The mark and the words on a button.
import QtQuick
import Newel.Parts

Item {
    id: face

    required property string text
    required property int textSize
    required property bool strong
    required property color words
    required property int mark
    required property color markInner
    required property real room // for mark and words together

    readonly property real natural: Math.ceil(Math.max(metrics.advanceWidth, metrics.boundingRect.width) * 1.03) + 2 // unwrapped, whatever room there is

    implicitWidth: natural + row.markRoom
    implicitHeight: label.implicitHeight

    TextMetrics {
        id: metrics

        font: label.font
        text: face.text
    }

    Row {
        id: row

        readonly property real markRoom: sign.visible ? sign.width + spacing : 0

        anchors.centerIn: parent
        spacing: Theme.space * 1.5

        Mark {
            id: sign

            anchors.verticalCenter: parent.verticalCenter
            visible: face.mark >= 0
            width: Math.round(face.textSize * 1.3)
            height: width
            shape: Math.max(0, face.mark)
            colour: label.color
            inner: face.markInner
        }

        Text {
            id: label

            anchors.verticalCenter: parent.verticalCenter
            width: Math.max(0, Math.min(face.natural, face.room - row.markRoom))
            text: face.text
            textFormat: Text.PlainText
            color: face.enabled ? face.words : Theme.soft
            font.pixelSize: face.textSize
            font.bold: face.strong
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
}
