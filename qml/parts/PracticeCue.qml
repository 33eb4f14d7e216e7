// The sentence and the number of the present beat. The sentence is as large as the room allows, never under
// the title size of 100 %.
import QtQuick
import Newel.Parts

Item {
    id: cue

    required property PracticeFacts facts

    readonly property bool stacked: width < 300 * Theme.scale - 40
    readonly property real ringSide: Math.max(132, Math.min(200, height * 0.46, width * 0.62))

    Text {
        id: sentence

        width: parent.width
        anchors.top: parent.top
        anchors.bottom: below.top
        anchors.bottomMargin: Theme.space
        text: cue.facts.cue
        textFormat: Text.PlainText
        color: Theme.ink
        font.pixelSize: Theme.title
        font.bold: true
        minimumPixelSize: 20
        fontSizeMode: Text.Fit
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignLeft
        verticalAlignment: Text.AlignVCenter
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }

    Item {
        id: below

        width: parent.width
        anchors.bottom: parent.bottom
        height: notes.implicitHeight + ring.height + Theme.space

        CountRing {
            id: ring

            anchors.left: parent.left
            width: cue.ringSide
            height: cue.ringSide
            number: cue.facts.number
            fraction: cue.facts.fraction
            resting: cue.facts.resting
            Accessible.role: Accessible.StaticText
            Accessible.name: cue.facts.number + " " + cue.facts.numberOf
        }

        Column {
            anchors.left: ring.right
            anchors.leftMargin: Theme.space * 1.5
            anchors.right: parent.right
            anchors.verticalCenter: ring.verticalCenter
            spacing: 2

            Words {
                width: parent.width
                text: cue.facts.numberOf
                font.bold: true
                font.pixelSize: Math.min(Theme.heading, 32)
                Accessible.ignored: true
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: cue.facts.setWords
                font.pixelSize: Math.min(Theme.body, 28)
                color: Theme.soft
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: cue.facts.sideWords
                font.pixelSize: Math.min(Theme.body, 28)
                font.bold: true
                color: Theme.brass
            }
        }

        Column {
            id: notes

            anchors.top: ring.bottom
            anchors.topMargin: Theme.space
            width: parent.width

            Words {
                width: parent.width
                visible: text !== ""
                text: cue.facts.next
                color: Theme.soft
                font.pixelSize: Math.min(Theme.small, 24)
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: cue.facts.soundNote
                color: Theme.brass
                font.pixelSize: Math.min(Theme.small, 24)
            }
        }
    }
}
