// One of a few choices side by side. Chosen: filled and ticked, so that it shows without colour.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

T.AbstractButton {
    id: chip

    property bool chosen: false
    property bool many: false
    property string group: "" // the question it answers, for the screen reader

    implicitWidth: label.implicitWidth + leftPadding + rightPadding + (chosen ? tick.width + Theme.space / 2 : 0)
    implicitHeight: Math.max(32, label.implicitHeight + 8)
    leftPadding: Theme.space * 1.25
    rightPadding: Theme.space * 1.25
    focusPolicy: Qt.StrongFocus

    Accessible.role: many ? Accessible.CheckBox : Accessible.RadioButton
    Accessible.name: group === "" ? text : group + ": " + text
    Accessible.checkable: true
    Accessible.checked: chosen
    Accessible.onPressAction: chip.clicked()
    Accessible.onToggleAction: chip.clicked()
    Keys.onReturnPressed: chip.clicked()
    Keys.onEnterPressed: chip.clicked()

    contentItem: Item {
        Mark {
            id: tick

            anchors.verticalCenter: parent.verticalCenter
            visible: chip.chosen
            width: Math.round(Theme.small * 0.9)
            height: width
            shape: Mark.Tick
            colour: Theme.paper
            inner: Theme.rail
        }

        Text {
            id: label

            anchors.verticalCenter: parent.verticalCenter
            x: chip.chosen ? tick.width + Theme.space / 2 : 0
            width: parent.width - x
            text: chip.text
            textFormat: Text.PlainText
            color: !chip.enabled ? Theme.soft : chip.chosen ? Theme.paper : Theme.ink
            font.pixelSize: Theme.small
            font.bold: chip.chosen
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
    }

    background: Rectangle {
        radius: Theme.radius
        color: chip.chosen ? Theme.rail : Theme.sheet
        border.width: chip.down ? 3 : 1
        border.color: chip.chosen ? Theme.rail : Theme.soft

        FocusRing {
            target: chip
            visible: chip.visualFocus
        }
    }
}
