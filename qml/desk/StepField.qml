// A number in steps: less, the value to type over, more. Up and down keys step too.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Column {
    id: stepper

    property string label: ""
    property string name: label // as the screen reader hears it: tells it from the others on the page
    property string unit: ""
    property int value: 0
    property int from: 0
    property int to: 10
    property int step: 1
    property string problem: ""

    signal changed(int value) // by the person; the owner sets `value`

    function ask(wanted: int): void {
        const kept = Math.max(from, Math.min(to, wanted));
        if (kept !== value)
            changed(kept);
    }

    spacing: 3

    Say {
        text: stepper.unit === "" ? stepper.label : stepper.label
        font.bold: true
        Accessible.ignored: true
    }

    Row {
        spacing: 4

        SmallButton {
            text: "−"
            width: 36
            leftPadding: 0
            rightPadding: 0
            height: field.height
            enabled: stepper.value > stepper.from
            Accessible.name: qsTr("Less: %1").arg(stepper.name)
            onClicked: stepper.ask(stepper.value - stepper.step)
        }

        T.TextField {
            id: field

            width: Math.max(52, Theme.small * 2.6)
            implicitHeight: Math.max(36, contentHeight + 12)
            leftPadding: 4
            rightPadding: 4
            horizontalAlignment: TextInput.AlignHCenter
            verticalAlignment: TextInput.AlignVCenter
            color: Theme.ink
            font.pixelSize: Theme.small
            font.bold: true
            inputMethodHints: Qt.ImhDigitsOnly
            validator: IntValidator {
                bottom: 0
                top: stepper.to
            }
            selectByMouse: true
            onActiveFocusChanged: {
                if (activeFocus)
                    selectAll();
            }
            onTextEdited: {
                if (text !== "" && Number(text) >= stepper.from)
                    stepper.ask(Number(text));
            }
            onEditingFinished: text = Qt.binding(() => stepper.value)
            Component.onCompleted: text = Qt.binding(() => stepper.value)
            Keys.onUpPressed: stepper.bump(stepper.step)
            Keys.onDownPressed: stepper.bump(-stepper.step)

            Accessible.role: Accessible.SpinBox
            Accessible.name: stepper.name
            Accessible.description: stepper.problem !== "" ? stepper.problem : stepper.value + " " + stepper.unit
            Accessible.onIncreaseAction: stepper.bump(stepper.step)
            Accessible.onDecreaseAction: stepper.bump(-stepper.step)

            background: Rectangle {
                color: Theme.sheet
                radius: Theme.radius
                border.width: stepper.problem !== "" ? 3 : 1
                border.color: stepper.problem !== "" ? Theme.stop : Theme.soft

                FocusRing {
                    target: field
                }
            }
        }

        SmallButton {
            text: "+"
            width: 36
            leftPadding: 0
            rightPadding: 0
            height: field.height
            enabled: stepper.value < stepper.to
            Accessible.name: qsTr("More: %1").arg(stepper.name)
            onClicked: stepper.ask(stepper.value + stepper.step)
        }

        Say {
            anchors.verticalCenter: parent.verticalCenter
            visible: stepper.unit !== ""
            text: stepper.unit
            color: Theme.soft
            Accessible.ignored: true
        }
    }

    Problem {
        width: 220
        text: stepper.problem
    }

    function bump(by: int): void {
        ask(value + by);
        field.text = Qt.binding(() => stepper.value);
    }
}
