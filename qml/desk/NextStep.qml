// The next step of an exercise: what its rule says of the practices so far, its ladder, and the rule itself.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: pane

    required property NextStepModel step
    property string about: ""
    property bool open: false // the rule's own numbers

    function named(what: string): string {
        return what + ", " + pane.about;
    }

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("Next step")
    }

    Say {
        width: parent.width
        visible: text !== ""
        text: pane.step.adviceWords
        font.bold: true
        color: pane.step.advice === 3 ? Theme.brass : pane.step.advice === 2 ? Theme.good : Theme.ink
    }

    Repeater {
        model: pane.step.evidence

        Say {
            required property var modelData

            width: pane.width
            text: modelData.good ? qsTr("for: %1").arg(modelData.words) : qsTr("against: %1").arg(modelData.words)
            color: Theme.soft
        }
    }

    SmallButton {
        visible: pane.step.stepWords !== ""
        width: Math.min(implicitWidth, pane.width)
        text: pane.step.stepWords
        words: Theme.rail
        edge: Theme.rail
        Accessible.name: pane.named(text)
        onClicked: pane.step.takeStep()
    }

    ChipStrip {
        width: parent.width
        visible: pane.step.rungs.length > 0
        label: qsTr("Ladder, lowest step first")
        group: pane.named(label)
        options: pane.step.rungs
        value: pane.step.rung
        onPicked: value => pane.step.setRung(value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("When it may be ready")
        group: pane.named(label)
        options: pane.step.presets
        value: pane.step.preset
        onPicked: value => pane.step.setPreset(value)
    }

    Say {
        width: parent.width
        visible: text !== ""
        text: pane.step.ruleWords
        color: Theme.soft
    }

    SmallButton {
        visible: pane.step.fields.length > 0
        text: pane.open ? qsTr("Hide the rule's numbers") : qsTr("The rule's numbers")
        Accessible.name: pane.named(text)
        onClicked: pane.open = !pane.open
    }

    Flow {
        width: parent.width
        visible: pane.open && pane.step.fields.length > 0
        spacing: Theme.space * 1.5

        Repeater {
            model: pane.open ? pane.step.fields : []

            StepField {
                required property var modelData

                label: modelData.label
                name: pane.named(modelData.label)
                from: modelData.from
                to: modelData.to
                value: pane.step.values[modelData.key] ?? 0
                onChanged: value => pane.step.setField(modelData.key, value)
            }
        }
    }

    Chip {
        visible: pane.open && pane.step.fields.length > 0
        width: Math.min(implicitWidth, pane.width)
        text: qsTr("A missed day begins the row anew")
        group: pane.about
        many: true
        chosen: pane.step.nothingMissed
        onClicked: pane.step.setNothingMissed(!chosen)
    }
}
