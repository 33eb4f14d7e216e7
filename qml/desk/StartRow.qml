// One beginning of a programme: what it is called, for whom, what it brings and what it leaves out here.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

T.AbstractButton {
    id: row

    property string title: ""
    property string about: ""
    property string brings: ""
    property string facts: ""
    property string leftOut: ""
    readonly property var told: [about, brings, facts, leftOut]

    implicitHeight: column.implicitHeight + Theme.space * 1.5
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Start from %1").arg(title)
    Accessible.description: told.filter(w => w !== "").join(". ")
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
        id: column

        x: Theme.space
        y: Theme.space * 0.75
        width: parent.width - 2 * Theme.space

        Say {
            width: parent.width
            text: row.title
            font.bold: true
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            visible: text !== ""
            text: row.about
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            visible: text !== ""
            text: row.brings
            color: Theme.rail
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            visible: text !== ""
            text: row.facts
            color: Theme.soft
            Accessible.ignored: true
        }

        Row {
            width: parent.width
            visible: row.leftOut !== ""
            spacing: Theme.space

            EffectMark {
                width: Math.round(Theme.small * 1.2)
                height: width
                y: 2
                effect: 1
            }

            Say {
                width: parent.width - Theme.small * 1.2 - Theme.space
                text: row.leftOut
                color: Theme.stop
                Accessible.ignored: true
            }
        }
    }
}
