// One line to type in, as tall as a button: label above, what is wrong below.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Item {
    id: entry

    property string label: ""
    property string name: label // as the screen reader hears it
    property string hint: ""
    property string problem: ""
    property bool secret: false
    property alias text: field.text
    property alias inputMethodHints: field.inputMethodHints
    property alias maximumLength: field.maximumLength
    readonly property alias editing: field.activeFocus

    signal edited(string text)   // by the person, with each key
    signal accepted

    function takeFocus(): void {
        field.forceActiveFocus(Qt.TabFocusReason);
        field.selectAll();
    }

    implicitWidth: 220
    implicitHeight: column.implicitHeight

    Column {
        id: column

        width: parent.width
        spacing: 3

        Say {
            width: parent.width
            visible: entry.label !== ""
            text: entry.label
            font.bold: true
            Accessible.ignored: true
        }

        Item {
            width: parent.width
            height: field.height

            // Qt 6.4 withholds the name of a password field from the screen reader; the group around it has it.
            Accessible.role: Accessible.Grouping
            Accessible.name: entry.secret ? entry.name : ""
            Accessible.ignored: !entry.secret

            FocusRing {
                target: field
            }

            T.TextField {
                id: field

                width: parent.width
                implicitHeight: Math.max(36, contentHeight + 12)
                leftPadding: Theme.space
                rightPadding: Theme.space
                verticalAlignment: TextInput.AlignVCenter
                color: Theme.ink
                selectionColor: Theme.rail
                selectedTextColor: Theme.paper
                font.pixelSize: Theme.small
                echoMode: entry.secret ? TextInput.Password : TextInput.Normal
                selectByMouse: true
                clip: true
                onTextEdited: entry.edited(text)
                onAccepted: entry.accepted()

                Accessible.role: Accessible.EditableText
                Accessible.name: entry.name
                Accessible.description: entry.problem !== "" ? entry.problem : entry.secret ? entry.name : entry.hint

                Text {
                    anchors.fill: parent
                    leftPadding: Theme.space
                    rightPadding: Theme.space
                    verticalAlignment: Text.AlignVCenter
                    visible: field.text === "" && !field.activeFocus
                    text: entry.hint
                    textFormat: Text.PlainText
                    elide: Text.ElideRight
                    color: Theme.soft
                    font.pixelSize: Theme.small
                    Accessible.ignored: true
                }

                background: Rectangle {
                    color: Theme.sheet
                    radius: Theme.radius
                    border.width: entry.problem !== "" ? 3 : 1
                    border.color: entry.problem !== "" ? Theme.stop : Theme.soft
                }
            }
        }

        Problem {
            width: parent.width
            text: entry.problem
        }
    }
}
