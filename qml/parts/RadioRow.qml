// One of several: a whole row to press, with words and help. A RadioButton of its own, since Qt 6.4 shows a screen
// reader any other checkable button as a check box, whatever role it is given.
import QtQuick
import Newel.Parts
import QtQuick.Templates as T

T.RadioButton {
    id: control

    property string help: ""

    implicitWidth: 280
    implicitHeight: Math.max(Theme.target, implicitContentHeight + topPadding + bottomPadding)
    topPadding: Theme.space
    bottomPadding: Theme.space
    leftPadding: Theme.space
    rightPadding: Theme.space
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.description: help
    Accessible.checkable: true
    Accessible.checked: checked
    Accessible.onPressAction: control.press()
    Accessible.onToggleAction: control.press()
    Keys.onReturnPressed: control.press()
    Keys.onEnterPressed: control.press()

    function press(): void {
        if (!control.checked)
            control.toggle();
        control.clicked();
    }

    contentItem: ChoiceFace {
        text: control.text
        help: control.help
        many: false
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
