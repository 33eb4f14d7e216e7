// Exercises that nothing speaks against for this person, by purpose, each one click away from the draft.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: list

    required property StartModel start
    required property DraftModel draft

    function takeFocus(): void {
        const first = rows.itemAt(0) as SuggestionRow;
        if (first !== null)
            first.takeFocus();
    }

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("What suits this person")
    }

    Say {
        width: parent.width
        text: rows.count === 0 ? qsTr("No exercise is free of questions for this person. The catalogue says what each one needs.") : qsTr("Usual for the level and the mobility, and no rule asks or refuses. Each comes with its starting dose.")
        color: Theme.soft
    }

    Repeater {
        id: rows

        model: list.start.suggestions

        SuggestionRow {
            required property var modelData

            width: list.width
            suggestion: modelData
            taken: list.start.taken.includes(modelData.exerciseId)
            onAdded: list.draft.add(modelData.exerciseId)
        }
    }
}
