// Reasons, one tap each; two beside each other where the words leave room, and then as tall as each other.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Grid {
    id: grid

    required property var reasons
    property int made: 0 // buttons so far: each looks for the one beside it again

    signal picked(int reason)

    columns: width >= 300 * Theme.scale ? 2 : 1
    spacing: Theme.space * 1.5

    Repeater {
        id: buttons

        model: grid.reasons
        onItemAdded: grid.made += 1

        SecondaryButton {
            required property var modelData
            required property int index
            readonly property Item mate: grid.columns === 2 && grid.made > 0 ? buttons.itemAt(index % 2 === 0 ? index + 1 : index - 1) : null

            width: (grid.width - (grid.columns - 1) * grid.spacing) / grid.columns
            height: Math.max(implicitHeight, Theme.target + Theme.space, mate?.implicitHeight ?? 0)
            text: modelData.words
            onClicked: grid.picked(modelData.id)
        }
    }
}
