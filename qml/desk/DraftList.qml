// The draft at a glance: its entries, the minutes of the week, what the rules say of the whole, signing.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: list

    required property DeskModel desk
    required property string shown // "start", "entry", "catalogue", "suggestions", "whole" or "wear"
    readonly property DraftModel draft: desk.draft
    readonly property bool begun: draft.entries.count > 0

    signal entryChosen(int row)
    signal catalogueChosen
    signal wholeChosen
    signal wearChosen
    signal startChosen
    signal suggestionsChosen

    spacing: Theme.space

    Words {
        width: parent.width
        text: qsTr("Programme %1, %2").arg(list.draft.number).arg(list.draft.name)
        font.pixelSize: Theme.heading
        font.bold: true
        Accessible.role: Accessible.Heading
    }

    Say {
        width: parent.width
        text: qsTr("%1 · draft, %2").arg(list.draft.limbs).arg(list.draft.basis)
        color: Theme.soft
    }

    Problem {
        width: parent.width
        text: list.draft.notice
        grave: false
    }

    Problem {
        width: parent.width
        text: list.draft.saveProblem
    }

    Say {
        width: parent.width
        visible: text !== ""
        text: list.desk.start.tookWords
        color: Theme.soft
    }

    Repeater {
        model: list.desk.start.leftOut

        Row {
            id: first

            required property var modelData

            width: list.width
            spacing: Theme.space

            EffectMark {
                width: Math.round(Theme.small * 1.25)
                height: width
                y: 2
                effect: 1
            }

            Say {
                width: first.width - Theme.small * 1.25 - Theme.space
                text: qsTr("Not taken: %1. %2").arg(first.modelData.title).arg(first.modelData.why)
                color: Theme.stop
            }
        }
    }

    Repeater {
        model: list.draft.entries

        EntryRow {
            width: list.width
            chosen: list.shown === "entry" && list.draft.selected === index
            onClicked: list.entryChosen(index)
        }
    }

    Say {
        width: parent.width
        visible: list.draft.entries.count === 0
        text: qsTr("No exercise yet. Start from a template, or pick one from the catalogue.")
        color: Theme.soft
    }

    Flow {
        width: parent.width
        spacing: Theme.space

        SmallButton {
            text: qsTr("Add exercise")
            words: Theme.rail
            edge: Theme.rail
            onClicked: list.catalogueChosen()
        }

        SmallButton {
            text: qsTr("What suits")
            edge: list.shown === "suggestions" ? Theme.rail : Theme.soft
            Accessible.name: qsTr("What suits this person")
            onClicked: list.suggestionsChosen()
        }

        SmallButton {
            text: qsTr("Dates, advice, limits")
            edge: list.shown === "whole" ? Theme.rail : Theme.soft
            onClicked: list.wholeChosen()
        }

        SmallButton {
            text: qsTr("Wearing time, measures")
            edge: list.shown === "wear" ? Theme.rail : Theme.soft
            onClicked: list.wearChosen()
        }

        SmallButton {
            text: qsTr("Undo")
            enabled: list.draft.canUndo
            onClicked: list.draft.undo()
        }

        SmallButton {
            text: qsTr("Redo")
            enabled: list.draft.canRedo
            onClicked: list.draft.redo()
        }

        SmallButton {
            text: qsTr("Start from …")
            edge: list.shown === "start" ? Theme.rail : Theme.soft
            onClicked: list.startChosen()
        }
    }

    // With nothing to count and nothing to sign, where to begin lies right below.
    Say {
        width: parent.width
        visible: list.begun
        text: qsTr("Minutes a day: %1").arg(list.draft.minutesWords)
        font.bold: true
    }

    WeekMinutes {
        width: parent.width
        visible: list.begun
        minutes: list.draft.minutes
    }

    Say {
        width: parent.width
        visible: list.begun && text !== ""
        text: list.draft.loadWords
        color: Theme.soft
    }

    Say {
        width: parent.width
        visible: list.begun
        text: list.draft.changesBrief
        Accessible.name: qsTr("Against the last programme: %1").arg(text)
    }

    Repeater {
        model: list.draft.findings

        FindingRow {
            required property var modelData

            width: list.width
            finding: modelData
            about: qsTr("whole programme")
            reason: list.draft.reasons[modelData.ruleId] ?? ""
            onReasoned: text => list.draft.setReason(modelData.ruleId, text)
            onFixed: index => list.draft.applyFix(modelData.ruleId, index)
        }
    }

    MainButton {
        width: parent.width
        visible: list.begun
        text: qsTr("Review and sign")
        onClicked: list.desk.openSign()
    }

    Say {
        width: parent.width
        visible: list.begun && text !== ""
        text: list.draft.whyNot
        color: Theme.brass
        Accessible.name: qsTr("In the way of signing: %1").arg(text)
    }
}
