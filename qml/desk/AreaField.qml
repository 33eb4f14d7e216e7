// Some lines to type in. Grows with what is typed.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Column {
    id: entry

    property string label: ""
    property string name: label
    property string hint: ""
    property string problem: ""
    property int lines: 2
    property alias text: field.text
    property alias readOnly: field.readOnly
    readonly property alias editing: field.activeFocus

    signal edited(string text)

    spacing: 3

    Say {
        width: parent.width
        visible: entry.label !== ""
        text: entry.label
        font.bold: true
        Accessible.ignored: true
    }

    T.TextArea {
        id: field

        property string said: ""

        width: parent.width
        implicitHeight: Math.max(Theme.small * 1.4 * entry.lines + 14, contentHeight + 14)
        leftPadding: Theme.space
        rightPadding: Theme.space
        topPadding: 7
        bottomPadding: 7
        color: Theme.ink
        selectionColor: Theme.rail
        selectedTextColor: Theme.paper
        font.pixelSize: Theme.small
        wrapMode: TextEdit.Wrap
        textFormat: TextEdit.PlainText
        selectByMouse: true
        // Tab goes on to the next control rather than into the text.
        KeyNavigation.priority: KeyNavigation.BeforeItem
        KeyNavigation.tab: field.nextItemInFocusChain(true)
        KeyNavigation.backtab: field.nextItemInFocusChain(false)
        onTextChanged: {
            if (activeFocus && text !== said) {
                said = text;
                entry.edited(text);
            }
        }

        Accessible.role: Accessible.EditableText
        Accessible.name: entry.name
        Accessible.description: entry.problem !== "" ? entry.problem : entry.hint
        Accessible.multiLine: true

        Text {
            anchors.fill: parent
            leftPadding: Theme.space
            rightPadding: Theme.space
            topPadding: 7
            visible: field.text === "" && !field.activeFocus
            text: entry.hint
            textFormat: Text.PlainText
            wrapMode: Text.Wrap
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

            FocusRing {
                target: field
            }
        }
    }

    Problem {
        width: parent.width
        text: entry.problem
    }
}
