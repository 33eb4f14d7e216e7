// A number from 0 to 10, one tap each, with words at both ends.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Parts

Column {
    id: picker

    property string label: ""
    property string lowWords: ""
    property string highWords: ""
    property int value: -1 // -1: not answered

    signal picked(int value)

    readonly property real cell: Math.floor((width - 3 * Theme.space) / 4)

    spacing: Theme.space

    Heading {
        width: parent.width
        visible: text !== ""
        text: picker.label
    }

    Words {
        width: parent.width
        visible: picker.lowWords !== ""
        text: qsTr("0 is %1. 10 is %2.").arg(picker.lowWords).arg(picker.highWords)
        color: Theme.soft
    }

    Grid {
        columns: 4
        spacing: Theme.space

        Repeater {
            model: 11

            BaseButton {
                id: number

                required property int index
                readonly property bool chosen: picker.value === index

                width: picker.cell
                height: Math.max(Theme.target + Theme.space, implicitHeight)
                text: "%L1".arg(index)
                textSize: Theme.heading
                leftPadding: 0
                rightPadding: 0
                ground: chosen ? Theme.rail : Theme.sheet
                words: chosen ? Theme.paper : Theme.ink
                edge: chosen ? Theme.rail : Theme.soft
                Accessible.role: Accessible.RadioButton
                Accessible.name: picker.label === "" ? text : qsTr("%1: %2").arg(picker.label).arg(text)
                Accessible.checkable: true
                Accessible.checked: chosen
                onClicked: picker.picked(index)
            }
        }
    }
}
