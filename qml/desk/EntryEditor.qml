// The selected entry: what the rules say first, then its dose, support and days.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: editor

    required property EntryModel entry
    required property EntryMediaModel media
    required property DraftModel draft
    required property NextStepModel step

    // Names every control by its exercise, so that a screen reader tells two exercises apart.
    function named(what: string): string {
        return what + ", " + editor.entry.title;
    }

    spacing: Theme.space * 1.5

    Flow {
        width: parent.width
        spacing: Theme.space

        Words {
            width: Math.min(implicitWidth, editor.width)
            text: editor.entry.title
            font.pixelSize: Theme.heading
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        SmallButton {
            text: qsTr("Up")
            enabled: editor.draft.selected > 0
            Accessible.name: editor.named(qsTr("Move up"))
            onClicked: editor.draft.moveSelected(-1)
        }

        SmallButton {
            text: qsTr("Down")
            enabled: editor.draft.selected < editor.draft.entries.count - 1
            Accessible.name: editor.named(qsTr("Move down"))
            onClicked: editor.draft.moveSelected(1)
        }

        SmallButton {
            text: qsTr("Remove")
            words: Theme.stop
            Accessible.name: editor.named(qsTr("Remove"))
            onClicked: editor.draft.removeSelected()
        }
    }

    Say {
        width: parent.width
        text: editor.entry.minutesWords
    }

    Problem {
        width: parent.width
        text: editor.entry.problem
    }

    Repeater {
        model: editor.entry.findings

        FindingRow {
            required property var modelData

            width: editor.width
            finding: modelData
            about: editor.entry.title
            reason: editor.entry.reasons[modelData.ruleId] ?? ""
            onReasoned: text => editor.entry.setReason(modelData.ruleId, text)
            onFixed: index => editor.entry.applyFix(modelData.ruleId, index)
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 1.5

        Repeater {
            model: editor.entry.doseFields

            StepField {
                required property var modelData

                label: modelData.label
                name: editor.named(modelData.label)
                unit: modelData.unit
                from: modelData.from
                to: modelData.to
                step: modelData.step
                value: editor.entry.dose[modelData.key] ?? 0
                onChanged: value => editor.entry.setDose(modelData.key, value)
            }
        }
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Support")
        group: editor.named(label)
        options: editor.entry.supports
        value: editor.entry.support
        onPicked: value => editor.entry.setSupport(value)
    }

    ChipStrip {
        width: parent.width
        visible: editor.entry.sidePolicies.length > 1
        label: qsTr("Sides")
        group: editor.named(label)
        options: editor.entry.sidePolicies
        value: editor.entry.sidePolicy
        onPicked: value => editor.entry.setSidePolicy(value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Prosthesis")
        group: editor.named(label)
        options: editor.entry.prosthesisUses
        value: editor.entry.prosthesis
        onPicked: value => editor.entry.setProsthesis(value)
    }

    EntryDays {
        width: parent.width
        entry: editor.entry
        several: editor.draft.entries.count > 1
    }

    NextStep {
        width: parent.width
        step: editor.step
        about: editor.entry.title
    }

    AreaField {
        id: note

        width: parent.width
        label: qsTr("Note to the person")
        name: editor.named(label)
        hint: qsTr("Shown and printed with this exercise")
        text: editor.entry.note
        onEdited: text => editor.entry.setNote(text)

        Connections {
            target: editor.entry

            function onChanged(): void {
                if (note.text !== editor.entry.note && !note.editing)
                    note.text = editor.entry.note;
            }
        }
    }

    MediaFields {
        width: parent.width
        media: editor.media
        about: editor.entry.title
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Pace")
        group: editor.named(label)
        options: [
            {
                "value": 1,
                "text": qsTr("timed")
            },
            {
                "value": 2,
                "text": qsTr("each move waits for a tap")
            }
        ]
        value: editor.entry.pacing
        onPicked: value => editor.entry.setPacing(value)
    }

    Chip {
        text: qsTr("Own limits for pain")
        group: editor.entry.title
        many: true
        chosen: editor.entry.ownThresholds
        onClicked: editor.entry.setOwnThresholds(!chosen)
    }

    PainLimits {
        width: parent.width
        visible: editor.entry.ownThresholds
        about: editor.entry.title
        stopValue: editor.entry.painStop
        riseValue: editor.entry.painRise
        onStopChanged: value => editor.entry.setPainStop(value)
        onRiseChanged: value => editor.entry.setPainRise(value)
    }
}
