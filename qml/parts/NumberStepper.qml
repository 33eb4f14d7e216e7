// A number in steps, with its unit: two large buttons and the value between them. Up and down keys work too.
import QtQuick
import Newel.Parts

FocusScope {
    id: stepper

    property string label: ""
    property string unit: ""
    property string shown: "" // in place of the number and its unit: a time of day
    property real labelWidth: 0 // the label takes a new line at this width; 0: it stays on one
    property int value: 0
    property int from: 0
    property int to: 10
    property int step: 1

    readonly property string valueWords: shown !== "" ? shown : unit === "" ? "%L1".arg(value) : "%L1 %2".arg(value).arg(unit)

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
    Accessible.description: valueWords
    Accessible.onIncreaseAction: stepper.ask(stepper.value + stepper.step)
    Accessible.onDecreaseAction: stepper.ask(stepper.value - stepper.step)
    Keys.onUpPressed: stepper.ask(stepper.value + stepper.step)
    Keys.onDownPressed: stepper.ask(stepper.value - stepper.step)

    Column {
        id: column

        spacing: Theme.space / 2

        Words {
            width: stepper.labelWidth > 0 ? Math.min(implicitWidth, stepper.labelWidth) : implicitWidth
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
                id: number

                anchors.verticalCenter: parent.verticalCenter
                width: Math.max(Theme.target, implicitWidth)
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.NoWrap
                text: stepper.valueWords
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
