// What a Chip shows: its tick where it is chosen, and its words.
import QtQuick
import Newel.Desk
import Newel.Parts

Item {
    id: face

    required property string text
    required property bool chosen
    required property bool able
    readonly property real lead: chosen ? tick.width + Theme.space / 2 : 0

    // Measured apart from the text that is shown, whose own measure changes with the width it is given.
    implicitWidth: Math.ceil(Math.max(measure.advanceWidth, measure.boundingRect.width)) + 2 + lead
    implicitHeight: label.implicitHeight

    TextMetrics {
        id: measure

        font: label.font
        text: face.text
    }

    Mark {
        id: tick

        anchors.verticalCenter: parent.verticalCenter
        visible: face.chosen
        width: Math.round(Theme.small * 0.9)
        height: width
        shape: Mark.Tick
        colour: Theme.paper
        inner: Theme.rail
    }

    Text {
        id: label

        anchors.verticalCenter: parent.verticalCenter
        x: face.lead
        width: parent.width - x
        text: face.text
        textFormat: Text.PlainText
        color: !face.able ? Theme.soft : face.chosen ? Theme.paper : Theme.ink
        font.pixelSize: Theme.small
        font.bold: face.chosen
        wrapMode: Text.Wrap
        Accessible.ignored: true
    }
}
