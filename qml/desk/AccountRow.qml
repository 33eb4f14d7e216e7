// One account in the list: who, which role, whether it is in use, whether it has a second factor.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

T.AbstractButton {
    id: row

    required property var account
    property bool chosen: false
    readonly property string factorWords: account.factor ? qsTr("second factor in use") : qsTr("no second factor")

    implicitHeight: column.implicitHeight + 2 * Theme.space
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Account of %1").arg(account.name)
    Accessible.description: qsTr("%1, user name %2, %3, %4").arg(account.role).arg(account.userName).arg(account.state).arg(factorWords)
    Accessible.onPressAction: row.clicked()
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    background: Rectangle {
        color: row.chosen || row.hovered || row.down ? Theme.sheet : "transparent"

        Rectangle {
            width: 4
            height: parent.height
            visible: row.chosen
            color: Theme.rail
        }

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.groove
        }

        FocusRing {
            target: row
            anchors.margins: 1
            visible: row.visualFocus
        }
    }

    Column {
        id: column

        x: Theme.space * 1.5
        y: Theme.space
        width: row.width - 2 * x
        spacing: 2

        Words {
            width: parent.width
            text: row.account.mine ? qsTr("%1 (you)").arg(row.account.name) : row.account.name
            font.bold: true
            color: row.account.off ? Theme.soft : Theme.ink
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            text: qsTr("%1 · %2 · %3").arg(row.account.role).arg(row.account.userName).arg(row.account.state)
            color: row.account.off ? Theme.stop : Theme.soft
            Accessible.ignored: true
        }

        Row {
            width: parent.width
            spacing: Theme.space / 2

            Mark {
                y: 3
                width: Theme.small
                height: width
                shape: row.account.factor ? Mark.Tick : Mark.Square
                colour: row.account.factor ? Theme.good : Theme.soft
                inner: Theme.paper
            }

            Say {
                width: parent.width - Theme.small - Theme.space / 2
                text: row.factorWords
                color: Theme.soft
                Accessible.ignored: true
            }
        }
    }
}
