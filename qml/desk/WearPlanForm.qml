// The wear plan of a draft: what it begins from, its steps, and what red skin means in it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: form

    required property WearDraftModel wear

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("Wear plan")
    }

    Say {
        width: parent.width
        text: form.wear.state
        color: Theme.soft
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        Repeater {
            model: form.wear.examples

            SmallButton {
                required property var modelData

                least: 32
                text: modelData.name
                Accessible.name: qsTr("Begin the wear plan from: %1").arg(modelData.name)
                Accessible.description: modelData.when
                onClicked: form.wear.startFrom(modelData.id)
            }
        }

        SmallButton {
            least: 32
            visible: form.wear.planned
            text: qsTr("No wear plan")
            onClicked: form.wear.clear()
        }
    }

    Repeater {
        model: form.wear.examples

        Say {
            required property var modelData

            width: form.width
            visible: !form.wear.planned
            text: qsTr("%1. %2 Source: %3").arg(modelData.name).arg(modelData.when).arg(modelData.sources)
            color: Theme.soft
        }
    }

    Repeater {
        model: form.wear.steps

        Column {
            id: step

            required property int index
            required property var modelData

            width: form.width
            spacing: Theme.space / 2

            Say {
                width: parent.width
                text: qsTr("Step %1: %2%3").arg(step.index + 1).arg(step.modelData.words).arg(step.modelData.first ? qsTr(", begins here") : "")
                font.bold: true
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 1.5

                StepField {
                    visible: !step.modelData.allDay
                    label: qsTr("Times a day")
                    name: qsTr("Times a day, step %1").arg(step.index + 1)
                    value: step.modelData.blocks
                    from: 1
                    to: 6
                    onChanged: value => form.wear.setBlocks(step.index, value)
                }

                StepField {
                    visible: !step.modelData.allDay
                    label: qsTr("Each")
                    name: qsTr("Minutes each, step %1").arg(step.index + 1)
                    unit: qsTr("min")
                    value: step.modelData.minutes
                    from: 5
                    to: 720
                    step: 15
                    onChanged: value => form.wear.setMinutes(step.index, value)
                }

                StepField {
                    label: qsTr("Good days before the next")
                    name: qsTr("Good days, step %1").arg(step.index + 1)
                    value: step.modelData.days
                    from: 1
                    to: 30
                    onChanged: value => form.wear.setDays(step.index, value)
                }
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 0.75

                SmallButton {
                    least: 32
                    visible: !step.modelData.first
                    text: qsTr("Begin here")
                    Accessible.name: qsTr("Begin at step %1").arg(step.index + 1)
                    onClicked: form.wear.beginAt(step.index)
                }

                SmallButton {
                    least: 32
                    visible: !step.modelData.allDay
                    text: qsTr("Once more")
                    Accessible.name: qsTr("Step %1 once more").arg(step.index + 1)
                    onClicked: form.wear.repeatStep(step.index)
                }

                SmallButton {
                    least: 32
                    visible: form.wear.steps.length > 1
                    text: qsTr("Leave out")
                    Accessible.name: qsTr("Leave out step %1").arg(step.index + 1)
                    onClicked: form.wear.removeStep(step.index)
                }
            }
        }
    }

    Flow {
        width: parent.width
        visible: form.wear.planned
        spacing: Theme.space * 1.5

        StepField {
            label: qsTr("Off between two times, at least")
            unit: qsTr("min")
            value: form.wear.offMinutes
            from: 0
            to: 480
            step: 15
            onChanged: value => form.wear.setOffMinutes(value)
        }

        StepField {
            label: qsTr("Red skin may stay")
            unit: qsTr("min")
            value: form.wear.rednessMinutes
            from: 5
            to: 60
            step: 5
            onChanged: value => form.wear.setRednessMinutes(value)
        }
    }

    Flow {
        width: parent.width
        visible: form.wear.planned
        spacing: Theme.space * 0.75

        Chip {
            group: qsTr("When it stays red for longer")
            text: qsTr("Leave it off and call")
            chosen: form.wear.staysOff
            onClicked: form.wear.setStaysOff(true)
        }

        Chip {
            group: qsTr("When it stays red for longer")
            text: qsTr("No more than now, and call")
            chosen: !form.wear.staysOff
            onClicked: form.wear.setStaysOff(false)
        }
    }

    Repeater {
        model: form.wear.planned ? form.wear.published : []

        Say {
            required property string modelData

            width: form.width
            text: qsTr("Published: %1").arg(modelData)
            color: Theme.soft
        }
    }

    LineField {
        width: parent.width
        visible: form.wear.planned
        label: qsTr("To the person, about wearing")
        text: form.wear.note
        onEdited: text => form.wear.setNote(text)
    }

    Heading {
        width: parent.width
        text: qsTr("To be measured by the end")
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        Repeater {
            model: form.wear.measures

            Chip {
                required property var modelData

                many: true
                group: qsTr("Measure by the end")
                text: modelData.name
                chosen: modelData.byDay !== ""
                onClicked: form.wear.toggleMeasure(modelData.id)
            }
        }
    }
}
