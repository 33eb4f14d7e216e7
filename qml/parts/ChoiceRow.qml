// Any of several (with `many`): a whole row to press, with words and help. One of several: RadioRow.
import QtQuick
import Newel.Parts
import QtQuick.Templates as T

T.AbstractButton {
    id: control

    property bool many: false
    property string help: ""

    checkable: true
    autoExclusive: !many
    implicitWidth: 280
    implicitHeight: Math.max(Theme.target, implicitContentHeight + topPadding + bottomPadding)
    topPadding: Theme.space
    bottomPadding: Theme.space
    leftPadding: Theme.space
    rightPadding: Theme.space
    focusPolicy: Qt.StrongFocus

    Accessible.role: many ? Accessible.CheckBox : Accessible.RadioButton
    Accessible.name: text
    Accessible.description: help
    Accessible.checkable: true
    Accessible.checked: checked
    Accessible.onPressAction: control.press()
    Accessible.onToggleAction: control.press()
    Keys.onReturnPressed: control.press()
    Keys.onEnterPressed: control.press()

    function press(): void {
        if (!control.autoExclusive || !control.checked)
            control.toggle();
        control.clicked();
    }

    contentItem: ChoiceFace {
        text: control.text
        help: control.help
        many: control.many
        checked: control.checked
        mirrored: control.mirrored
    }

    background: Rectangle {
        color: "transparent"
        radius: Theme.radius

        FocusRing {
            target: control
            anchors.margins: -1
            visible: control.visualFocus
        }
    }
}
