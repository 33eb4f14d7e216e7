// Reasons, one tap each; two beside each other where the words leave room.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Grid {
    id: grid

    required property var reasons

    signal picked(int reason)

    // All as tall as the tallest, so that none looks more or less likely.
    readonly property real tallest: {
        let least = Theme.target + Theme.space;
        for (let i = 0; columns === 2 && i < children.length; ++i)
            least = Math.max(least, children[i].implicitHeight);
        return least;
    }

    columns: width >= 300 * Theme.scale ? 2 : 1
    spacing: Theme.space * 1.5

    Repeater {
        model: grid.reasons

        SecondaryButton {
            required property var modelData

            width: (grid.width - (grid.columns - 1) * grid.spacing) / grid.columns
            height: Math.max(implicitHeight, grid.tallest)
            text: modelData.words
            onClicked: grid.picked(modelData.id)
        }
    }
}
