// One line to type in, with its label above and its error below, in words.
import QtQuick
import Newel.Parts
import QtQuick.Templates as T

Item {
    id: entry

    property string label: ""
    property string help: ""
    property string error: ""
    property bool secret: false
    property alias text: field.text
    property alias inputMethodHints: field.inputMethodHints
    property alias maximumLength: field.maximumLength
    property alias readOnly: field.readOnly

    signal accepted

    function takeFocus(): void {
        field.forceActiveFocus();
    }

    implicitWidth: 280
    implicitHeight: column.implicitHeight

    Column {
        id: column

        width: parent.width
        spacing: Theme.space / 2

        Words {
            width: parent.width
            text: entry.label
            font.bold: true
            Accessible.ignored: true
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: entry.help
            color: Theme.soft
            font.pixelSize: Theme.small
        }

        // The field clips its text, so the ring lies beside it.
        Item {
            width: parent.width
            height: field.height

            FocusRing {
                target: field
            }

            T.TextField {
                id: field

                width: parent.width
                implicitHeight: Math.max(Theme.target, contentHeight + topPadding + bottomPadding)
                leftPadding: Theme.space * 1.5
                rightPadding: Theme.space * 1.5
                topPadding: Theme.space
                bottomPadding: Theme.space
                verticalAlignment: TextInput.AlignVCenter
                color: Theme.ink
                selectionColor: Theme.rail
                selectedTextColor: Theme.paper
                font.pixelSize: Theme.body
                echoMode: entry.secret ? TextInput.Password : TextInput.Normal
                selectByMouse: true
                clip: true
                onAccepted: entry.accepted()

                Accessible.role: Accessible.EditableText
                Accessible.name: entry.label
                Accessible.description: entry.error !== "" ? entry.error : entry.help

                background: Rectangle {
                    color: Theme.sheet
                    radius: Theme.radius
                    border.width: entry.error !== "" ? 3 : 2
                    border.color: entry.error !== "" ? Theme.stop : Theme.soft
                }
            }
        }

        Row {
            width: parent.width
            visible: entry.error !== ""
            spacing: Theme.space

            Mark {
                width: Theme.body
                height: Theme.body
                y: 3
                shape: Mark.Triangle
                colour: Theme.stop
                inner: Theme.paper
            }

            Words {
                width: parent.width - Theme.body - Theme.space
                text: entry.error
                color: Theme.stop
                Accessible.role: Accessible.AlertMessage
            }
        }
    }
}
