// One entry of a draft: what and how much, how long, what the rules say.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

T.AbstractButton {
    id: row

    required property int index
    required property string entryId
    required property string title
    required property string dose
    required property string details
    required property string minutes
    required property int worst
    required property string worstWords
    required property bool changed
    property bool chosen: false
    readonly property var told: [dose, details, minutes, worstWords, changed ? qsTr("changed") : ""]

    implicitHeight: column.implicitHeight + Theme.space * 1.5
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.ListItem
    Accessible.name: qsTr("Edit %1").arg(title)
    Accessible.description: told.filter(w => w !== "").join(". ")
    Accessible.selected: chosen
    Accessible.onPressAction: row.clicked()
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    background: Rectangle {
        color: row.chosen ? Theme.sheet : "transparent"
        radius: Theme.radius
        border.width: row.chosen ? 2 : 1
        border.color: row.chosen ? Theme.rail : Theme.groove

        FocusRing {
            target: row
            visible: row.visualFocus
        }
    }

    Column {
        id: column

        x: Theme.space
        y: Theme.space * 0.75
        width: parent.width - 2 * Theme.space

        Item {
            width: parent.width
            height: Math.max(name.implicitHeight, sign.height)

            Say {
                id: name

                width: parent.width - minutesWords.width - sign.width - Theme.space
                text: (row.index + 1) + ". " + row.title
                font.bold: true
                Accessible.ignored: true
            }

            EffectMark {
                id: sign

                anchors.right: minutesWords.left
                anchors.rightMargin: visible ? Theme.space / 2 : 0
                width: visible ? Math.round(Theme.small * 1.2) : 0
                height: Math.round(Theme.small * 1.2)
                effect: row.worst
            }

            Say {
                id: minutesWords

                anchors.right: parent.right
                wrapMode: Text.NoWrap
                text: row.minutes
                color: Theme.soft
                Accessible.ignored: true
            }
        }

        Say {
            width: parent.width
            text: row.changed ? qsTr("%1 (changed)").arg(row.dose) : row.dose
            font.bold: row.changed
            color: row.changed ? Theme.brass : Theme.ink
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            text: row.details
            color: Theme.soft
            Accessible.ignored: true
        }
    }
}
