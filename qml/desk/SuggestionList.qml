// Exercises that nothing speaks against for this person, by purpose, each one click away from the draft.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Column {
    id: list

    required property StartModel start
    required property DraftModel draft

    function takeFocus(): void {
        if (rows.count > 0)
            rows.itemAt(0).takeFocus();
    }

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("What suits this person")
    }

    Say {
        width: parent.width
        text: rows.count === 0 ? qsTr("No exercise is free of questions for this person. The catalogue says what each one needs.") : qsTr("Usual for the level and the mobility, and no rule asks or refuses. Each comes with its starting dose.")
        color: Theme.soft
    }

    Repeater {
        id: rows

        model: list.start.suggestions

        Column {
            id: item

            required property var modelData
            readonly property bool taken: list.start.taken.includes(modelData.exerciseId)

            function takeFocus(): void {
                row.forceActiveFocus(Qt.TabFocusReason);
            }

            width: list.width
            spacing: Theme.space

            Say {
                width: parent.width
                visible: item.modelData.first
                topPadding: Theme.space
                text: item.modelData.group
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
                        list.draft.add(item.modelData.exerciseId);
                }

                Accessible.role: Accessible.Button
                Accessible.name: item.taken ? qsTr("In the programme: %1").arg(item.modelData.title) : qsTr("Add %1").arg(item.modelData.title)
                Accessible.description: item.modelData.why + " " + item.modelData.dose
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
                        text: item.taken ? qsTr("%1 (in the programme)").arg(item.modelData.title) : item.modelData.title
                        font.bold: !item.taken
                        Accessible.ignored: true
                    }

                    Say {
                        width: parent.width
                        text: item.modelData.why
                        Accessible.ignored: true
                    }

                    Say {
                        width: parent.width
                        text: item.modelData.dose
                        color: Theme.soft
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
