// What all buttons share: size, wrapped words, keys, focus ring, the screen reader's press.
// Not used by itself: take PrimaryButton, SecondaryButton, QuietButton or StopButton.
import QtQuick
import Newel.Parts
import QtQuick.Templates as T

T.Button {
    id: control

    property color ground: "transparent"
    property color words: Theme.ink
    property color edge: "transparent"
    property int least: Theme.target
    property int mark: -1 // a Mark.Shape, or -1
    property color markInner: ground
    property int textSize: Theme.body
    property bool strong: true

    implicitWidth: Math.max(least, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(least, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: Theme.edge
    rightPadding: Theme.edge
    topPadding: Theme.space
    bottomPadding: Theme.space
    focusPolicy: Qt.StrongFocus
    hoverEnabled: false

    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.onPressAction: control.clicked()
    Keys.onReturnPressed: control.clicked()
    Keys.onEnterPressed: control.clicked()

    contentItem: ButtonFace {
        text: control.text
        textSize: control.textSize
        strong: control.strong
        words: control.words
        mark: control.mark
        markInner: control.markInner
        room: control.availableWidth
    }

    background: Rectangle {
        radius: Theme.radius
        color: control.enabled ? control.ground : "transparent"
        border.width: control.enabled ? (control.down ? 4 : 2) : 2
        border.color: control.enabled ? (control.down ? Theme.ink : control.edge) : Theme.groove

        FocusRing {
            target: control
            visible: control.visualFocus
        }
    }
}
