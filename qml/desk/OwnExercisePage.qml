// The clinic's own exercises: the list of them, and the form to write or revise one.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property OwnExerciseModel own: desk.ownExercises

    Shortcut {
        sequences: ["Ctrl+S"]
        enabled: page.own.writing
        onActivated: page.own.save()
    }

    Pane {
        width: Math.min(parent.width, 860 * Math.min(1.6, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: page.own.writing ? page.own.heading : qsTr("Our exercises")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Column {
            width: parent.width
            visible: !page.own.writing
            spacing: Theme.space * 1.5

            Say {
                width: parent.width
                text: qsTr("Exercises that this clinic wrote. A revision never changes a programme that is signed already.")
                color: Theme.soft
            }

            Repeater {
                model: page.own.list

                Flow {
                    id: row

                    required property var modelData

                    width: parent.width
                    spacing: Theme.space

                    Say {
                        height: 36
                        width: Math.min(implicitWidth, parent.width)
                        verticalAlignment: Text.AlignVCenter
                        text: row.modelData.title
                        font.bold: true
                    }

                    Say {
                        height: 36
                        width: Math.min(implicitWidth, parent.width)
                        verticalAlignment: Text.AlignVCenter
                        text: row.modelData.facts
                        color: Theme.soft
                    }

                    SmallButton {
                        text: qsTr("Revise")
                        Accessible.name: qsTr("Revise %1").arg(row.modelData.title)
                        onClicked: page.own.revise(row.modelData.id)
                    }
                }
            }

            Say {
                width: parent.width
                visible: page.own.list.length === 0
                text: qsTr("None yet.")
            }

            Heading {
                width: parent.width
                text: qsTr("Write a new one: how does it move?")
            }

            Repeater {
                model: page.own.movements

                SmallButton {
                    required property var modelData

                    width: Math.min(implicitWidth, parent.width)
                    text: modelData.text
                    onClicked: page.own.beginNew(modelData.value)
                }
            }
        }

        OwnExerciseForm {
            width: parent.width
            visible: page.own.writing
            own: page.own
        }
    }
}
