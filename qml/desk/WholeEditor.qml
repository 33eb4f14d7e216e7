// What belongs to the programme as a whole: its days, the limits for pain, advice.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: whole

    required property DraftModel draft

    signal entryChosen(int row)
    spacing: Theme.space * 1.5

    Heading {
        width: parent.width
        text: qsTr("Dates, advice, limits")
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 1.5

        LineField {
            width: 200 * Theme.scale
            label: qsTr("First day")
            hint: qsTr("2026-11-25")
            text: whole.draft.effectiveDay
            problem: whole.draft.effectiveDayProblem
            onEdited: text => whole.draft.setEffectiveDay(text)
        }

        LineField {
            width: 200 * Theme.scale
            label: qsTr("Last day")
            hint: qsTr("2026-12-22")
            text: whole.draft.endDay
            problem: whole.draft.endDayProblem
            onEdited: text => whole.draft.setEndDay(text)
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        Repeater {
            model: [1, 2, 4, 6, 8]

            SmallButton {
                required property int modelData

                least: 32
                text: modelData === 1 ? qsTr("1 week") : qsTr("%1 weeks").arg(modelData)
                Accessible.name: qsTr("Length: %1").arg(text)
                onClicked: whole.draft.setWeeks(modelData)
            }
        }
    }

    PainLimits {
        width: parent.width
        about: qsTr("whole programme")
        stopValue: whole.draft.painStop
        riseValue: whole.draft.painRise
        onStopChanged: value => whole.draft.setPainStop(value)
        onRiseChanged: value => whole.draft.setPainRise(value)
    }

    AreaField {
        id: advice

        width: parent.width
        label: qsTr("General advice")
        hint: qsTr("Shown and printed above the exercises")
        lines: 4
        text: whole.draft.advice
        onEdited: text => whole.draft.setAdvice(text)

        Connections {
            target: whole.draft

            function onChanged(): void {
                if (advice.text !== whole.draft.advice && !advice.editing)
                    advice.text = whole.draft.advice;
            }
        }
    }

    AdviceCards {
        width: parent.width
        draft: whole.draft
    }

    Heading {
        width: parent.width
        text: qsTr("Against the last programme")
    }

    Repeater {
        model: whole.draft.changes

        Say {
            required property string modelData

            width: whole.width
            text: modelData
        }
    }

    Heading {
        width: parent.width
        text: qsTr("What a full report would lack (CERT)")
    }

    Say {
        width: parent.width
        text: whole.draft.reportWords
        color: Theme.soft
    }

    Repeater {
        model: whole.draft.reportLacks

        Flow {
            id: lack

            required property var modelData

            width: whole.width
            spacing: Theme.space

            Say {
                width: Math.min(implicitWidth, whole.width - (open.visible ? open.width + Theme.space : 0))
                height: Math.max(32, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                text: lack.modelData.lacks === "" ? lack.modelData.words : qsTr("%1. %2").arg(lack.modelData.words).arg(lack.modelData.lacks)
            }

            SmallButton {
                id: open

                visible: lack.modelData.row >= 0
                least: 32
                text: qsTr("Write it")
                Accessible.name: qsTr("Write it: %1").arg(lack.modelData.lacks)
                onClicked: whole.entryChosen(lack.modelData.row)
            }
        }
    }
}
