// A number in steps, with its unit: two large buttons and the value between them. Up and down keys work too.
import QtQuick
import Newel.Parts

FocusScope {
    id: stepper

    property string label: ""
    property string unit: ""
    property int value: 0
    property int from: 0
    property int to: 10
    property int step: 1

    signal changed(int value) // by the person; the owner sets `value`

    function ask(wanted: int): void {
        const kept = Math.max(from, Math.min(to, wanted));
        if (kept !== value)
            changed(kept);
    }

    implicitWidth: column.implicitWidth
    implicitHeight: column.implicitHeight
    Accessible.role: Accessible.SpinBox
    Accessible.name: label
    Accessible.description: "%L1 %2".arg(value).arg(unit)
    Accessible.onIncreaseAction: stepper.ask(stepper.value + stepper.step)
    Accessible.onDecreaseAction: stepper.ask(stepper.value - stepper.step)
    Keys.onUpPressed: stepper.ask(stepper.value + stepper.step)
    Keys.onDownPressed: stepper.ask(stepper.value - stepper.step)

    Column {
        id: column

        spacing: Theme.space / 2

        Words {
            text: stepper.label
            font.bold: true
            Accessible.ignored: true
        }

        Row {
            spacing: Theme.space

            SecondaryButton {
                text: "−"
                enabled: stepper.value > stepper.from
                textSize: Theme.heading
                Accessible.name: qsTr("Less: %1").arg(stepper.label)
                onClicked: stepper.ask(stepper.value - stepper.step)
            }

            Words {
                id: shown

                anchors.verticalCenter: parent.verticalCenter
                width: Math.max(Theme.target, implicitWidth)
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.NoWrap
                text: stepper.unit === "" ? "%L1".arg(stepper.value) : "%L1 %2".arg(stepper.value).arg(stepper.unit)
                font.bold: true
                Accessible.ignored: true
            }

            SecondaryButton {
                text: "+"
                enabled: stepper.value < stepper.to
                textSize: Theme.heading
                Accessible.name: qsTr("More: %1").arg(stepper.label)
                onClicked: stepper.ask(stepper.value + stepper.step)
            }
        }
    }
}
