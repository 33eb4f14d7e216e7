// Why and until when somebody's row can wait. What is more urgent, of another kind or newer ends it by itself.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Rectangle {
    id: form

    required property CaseloadModel model
    property string untilDay: ""

    implicitHeight: column.implicitHeight + 2 * Theme.space * 1.5
    radius: Theme.radius
    color: Theme.sheet
    border.width: 1
    border.color: Theme.rail
    onVisibleChanged: {
        if (!visible)
            return;
        form.untilDay = form.model.waitDays[1].value;
        why.text = "";
        why.takeFocus();
    }
    Keys.onEscapePressed: form.model.askWait("")

    Column {
        id: column

        x: Theme.edge
        y: Theme.space * 1.5
        width: parent.width - 2 * Theme.edge
        spacing: Theme.space

        Say {
            width: parent.width
            text: qsTr("%1 can wait. Colleagues see this; anything new or more urgent brings the row back at once.").arg(form.model.waitName)
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        LineField {
            id: why

            width: Math.min(parent.width, 640 * Theme.scale)
            label: qsTr("Why it can wait")
            maximumLength: 140
            onAccepted: form.model.letWait(why.text, form.untilDay)
        }

        ChipStrip {
            width: parent.width
            label: qsTr("Until")
            options: form.model.waitDays
            value: form.untilDay
            problem: form.model.waitProblem
            onPicked: value => form.untilDay = value
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            MainButton {
                text: qsTr("Let it wait")
                onClicked: form.model.letWait(why.text, form.untilDay)
            }

            SmallButton {
                text: qsTr("Cancel")
                Accessible.name: qsTr("Cancel waiting")
                onClicked: form.model.askWait("")
            }
        }
    }
}
