// One of several, or (with `many`) any of several: a whole row to press, with words and help.
import QtQuick
import QtQuick.Templates as T

T.AbstractButton {
    id: control

    property bool many: false
    property string help: ""

    checkable: true
    autoExclusive: !many
    implicitWidth: 280
    implicitHeight: Math.max(Theme.target, column.implicitHeight + topPadding + bottomPadding)
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

    contentItem: Item {
        implicitHeight: column.implicitHeight

        Rectangle {
            id: box

            anchors.verticalCenter: parent.verticalCenter
            x: control.mirrored ? parent.width - width : 0
            width: Math.round(Theme.body * 1.5)
            height: width
            radius: control.many ? 4 : width / 2
            color: Theme.sheet
            border.width: 2
            border.color: control.checked ? Theme.rail : Theme.soft

            Rectangle {
                anchors.centerIn: parent
                visible: control.checked && !control.many
                width: parent.width * 0.55
                height: width
                radius: width / 2
                color: Theme.rail
            }

            Mark {
                anchors.fill: parent
                visible: control.checked && control.many
                shape: Mark.Tick
                colour: Theme.rail
                inner: Theme.paper
            }
        }

        Column {
            id: column

            anchors.verticalCenter: parent.verticalCenter
            x: control.mirrored ? 0 : box.width + Theme.space * 1.5
            width: parent.width - box.width - Theme.space * 1.5

            Text {
                width: parent.width
                text: control.text
                textFormat: Text.PlainText
                color: control.enabled ? Theme.ink : Theme.soft
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignLeft
                Accessible.ignored: true
            }

            Text {
                width: parent.width
                visible: text !== ""
                text: control.help
                textFormat: Text.PlainText
                color: Theme.soft
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignLeft
                Accessible.ignored: true
            }
        }
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
