// The box or circle, the words and the help of a choice.
import QtQuick
import Newel.Parts

Item {
    id: face

    required property string text
    required property string help
    required property bool many
    required property bool checked
    required property bool mirrored

    implicitHeight: column.implicitHeight

    Rectangle {
        id: box

        anchors.verticalCenter: parent.verticalCenter
        x: face.mirrored ? parent.width - width : 0
        width: Math.round(Theme.body * 1.5)
        height: width
        radius: face.many ? 4 : width / 2
        color: Theme.sheet
        border.width: 2
        border.color: face.checked ? Theme.rail : Theme.soft

        Rectangle {
            anchors.centerIn: parent
            visible: face.checked && !face.many
            width: parent.width * 0.55
            height: width
            radius: width / 2
            color: Theme.rail
        }

        Mark {
            anchors.fill: parent
            visible: face.checked && face.many
            shape: Mark.Tick
            colour: Theme.rail
            inner: Theme.paper
        }
    }

    Column {
        id: column

        anchors.verticalCenter: parent.verticalCenter
        x: face.mirrored ? 0 : box.width + Theme.space * 1.5
        width: parent.width - box.width - Theme.space * 1.5

        Text {
            width: parent.width
            text: face.text
            textFormat: Text.PlainText
            color: face.enabled ? Theme.ink : Theme.soft
            font.pixelSize: Theme.body
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignLeft
            Accessible.ignored: true
        }

        Text {
            width: parent.width
            visible: text !== ""
            text: face.help
            textFormat: Text.PlainText
            color: Theme.soft
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignLeft
            Accessible.ignored: true
        }
    }
}
