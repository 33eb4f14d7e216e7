// In place of the cue while paused: why, and the ways on. Nothing goes on by itself.
import QtQuick
import Newel.Parts

Item {
    id: paused

    required property PracticeFacts facts

    signal goOnPressed
    signal slowerPressed
    signal repeatPressed
    signal skipPressed

    Flickable {
        anchors.fill: parent
        contentHeight: column.height
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column

            width: parent.width
            topPadding: 4
            bottomPadding: 4
            spacing: Theme.space * 1.5

            Words {
                width: parent.width
                text: qsTr("Paused")
                font.pixelSize: Theme.title
                font.bold: true
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: paused.facts.pausedWhy
            }

            PrimaryButton {
                x: 4
                width: parent.width - 8
                text: qsTr("Go on")
                mark: Mark.Play
                onClicked: paused.goOnPressed()
            }

            SecondaryButton {
                x: 4
                width: parent.width - 8
                visible: paused.facts.canSlow
                text: qsTr("Go on, slower")
                onClicked: paused.slowerPressed()
            }

            SecondaryButton {
                x: 4
                width: parent.width - 8
                text: qsTr("Say it again")
                onClicked: paused.repeatPressed()
            }

            SecondaryButton {
                x: 4
                width: parent.width - 8
                text: qsTr("Leave this exercise out")
                onClicked: paused.skipPressed()
            }

            Words {
                width: parent.width
                visible: text !== ""
                text: paused.facts.cue
                color: Theme.soft
            }
        }
    }
}
