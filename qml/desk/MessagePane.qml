// Words between clinic and person, oldest first, with how far each got; and room to write.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: pane

    required property PersonModel person
    property bool mayWrite: true

    signal mediaAsked // to write with a photo or a clip

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("Messages")
    }

    Say {
        width: parent.width
        visible: pane.person.messages.length === 0
        text: qsTr("None yet.")
        color: Theme.soft
    }

    Repeater {
        model: pane.person.messages

        Rectangle {
            id: bubble

            required property var modelData

            width: pane.width
            height: words.implicitHeight + Theme.space * 1.5
            color: Theme.sheet
            radius: Theme.radius
            border.width: 1
            border.color: bubble.modelData.mine ? Theme.groove : Theme.rail

            Column {
                id: words

                x: Theme.space
                y: Theme.space * 0.75
                width: parent.width - 2 * Theme.space

                Say {
                    width: parent.width
                    text: qsTr("%1, %2%3").arg(bubble.modelData.from).arg(bubble.modelData.when)
                        .arg(bubble.modelData.urgent ? qsTr(" · urgent") : "")
                    color: Theme.soft
                }

                Say {
                    width: parent.width
                    text: bubble.modelData.text
                }

                Say {
                    width: parent.width
                    visible: text !== ""
                    text: bubble.modelData.media
                    font.italic: true
                }

                Say {
                    width: parent.width
                    visible: text !== ""
                    text: bubble.modelData.state
                    color: Theme.soft
                }
            }
        }
    }

    AreaField {
        id: field

        width: parent.width
        name: qsTr("Message to %1").arg(pane.person.givenName)
        hint: qsTr("Write to %1").arg(pane.person.givenName)
    }

    Flow {
        width: parent.width
        spacing: Theme.space

        Chip {
            id: urgent

            text: qsTr("Urgent: must be seen before the next practice")
            width: Math.min(implicitWidth, parent.width)
            many: true
            onClicked: chosen = !chosen
        }

        SmallButton {
            text: pane.person.sending ? qsTr("Sending …") : qsTr("Send message")
            enabled: !pane.person.sending && field.text.trim() !== ""
            onClicked: pane.person.send(field.text, urgent.chosen)
        }

        SmallButton {
            visible: pane.mayWrite
            text: qsTr("With a photo or a clip …")
            onClicked: pane.mediaAsked()
        }
    }

    Say {
        width: parent.width
        text: qsTr("Nobody reads messages at once. For anything that cannot wait, phone.")
        color: Theme.soft
    }

    Problem {
        width: parent.width
        text: pane.person.sendProblem
    }

    Connections {
        target: pane.person

        function onSent(): void {
            field.text = "";
            urgent.chosen = false;
        }
    }
}
