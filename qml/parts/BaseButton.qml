// What all buttons share: size, wrapped words, keys, focus ring, the screen reader's press.
// Not used by itself: take PrimaryButton, SecondaryButton, QuietButton or StopButton.
import QtQuick
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

    implicitWidth: Math.max(least, row.implicitWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(least, label.implicitHeight + topPadding + bottomPadding)
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

    contentItem: Item {
        implicitWidth: row.implicitWidth
        implicitHeight: label.implicitHeight

        Row {
            id: row

            readonly property real markRoom: sign.visible ? sign.width + spacing : 0

            anchors.centerIn: parent
            spacing: Theme.space * 1.5

            Mark {
                id: sign

                anchors.verticalCenter: parent.verticalCenter
                visible: control.mark >= 0
                width: Math.round(control.textSize * 1.3)
                height: width
                shape: Math.max(0, control.mark)
                colour: label.color
                inner: control.markInner
            }

            Text {
                id: label

                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, control.availableWidth - row.markRoom)
                text: control.text
                textFormat: Text.PlainText
                color: control.enabled ? control.words : Theme.soft
                font.pixelSize: control.textSize
                font.bold: control.strong
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
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
