// One exercise that suits a person: what it is for, its starting dose, and one click to add it.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Column {
    id: item

    required property var suggestion // see StartModel.suggestions
    required property bool taken

    signal added

    function takeFocus(): void {
        row.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: Theme.space

    Say {
        width: parent.width
        visible: item.suggestion.first
        topPadding: Theme.space
        text: item.suggestion.group
        color: Theme.rail
        font.bold: true
        Accessible.role: Accessible.Heading
    }

    T.AbstractButton {
        id: row

        width: parent.width
        implicitHeight: words.implicitHeight + Theme.space
        focusPolicy: Qt.StrongFocus
        onClicked: {
            if (!item.taken)
                item.added();
        }

        Accessible.role: Accessible.Button
        Accessible.name: item.taken ? qsTr("In the programme: %1").arg(item.suggestion.title) : qsTr("Add %1").arg(item.suggestion.title)
        Accessible.description: item.suggestion.why + " " + item.suggestion.dose
        Accessible.onPressAction: row.clicked()
        Keys.onReturnPressed: row.clicked()
        Keys.onEnterPressed: row.clicked()

        background: Rectangle {
            color: row.hovered || row.visualFocus ? Theme.sheet : "transparent"
            radius: Theme.radius
            border.width: 1
            border.color: Theme.groove

            FocusRing {
                target: row
                visible: row.visualFocus
            }
        }

        Column {
            id: words

            x: Theme.space
            y: Theme.space / 2
            width: parent.width - 2 * Theme.space

            Say {
                width: parent.width
                text: item.taken ? qsTr("%1 (in the programme)").arg(item.suggestion.title) : item.suggestion.title
                font.bold: !item.taken
                Accessible.ignored: true
            }

            Say {
                width: parent.width
                text: item.suggestion.why
                Accessible.ignored: true
            }

            Say {
                width: parent.width
                text: item.suggestion.dose
                color: Theme.soft
                Accessible.ignored: true
            }
        }
    }
}
