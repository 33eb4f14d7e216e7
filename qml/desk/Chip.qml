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

    implicitWidth: implicitContentWidth + leftPadding + rightPadding
    implicitHeight: Math.max(32, implicitContentHeight + 8)
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

    contentItem: ChipFace {
        text: chip.text
        chosen: chip.chosen
        able: chip.enabled
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
