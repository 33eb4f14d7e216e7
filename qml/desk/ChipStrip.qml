// A question with its few answers side by side, one or many of them chosen, and what is wrong below.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: strip

    property string label: ""
    property string group: label     // as the screen reader hears it: must tell this question from others
    property var options: []         // {value, text}
    property var value: undefined
    property var chosen: []          // with many
    property bool many: false
    property string problem: ""

    signal picked(var value)

    spacing: Theme.space / 2

    Say {
        width: parent.width
        visible: strip.label !== ""
        text: strip.label
        font.bold: true
        Accessible.ignored: true
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        Repeater {
            model: strip.options

            Chip {
                required property var modelData

                width: Math.min(implicitWidth, strip.width)
                text: modelData.text
                group: strip.group
                many: strip.many
                chosen: strip.many ? strip.chosen.indexOf(modelData.value) >= 0 : strip.value === modelData.value
                onClicked: strip.picked(modelData.value)
            }
        }
    }

    Problem {
        width: parent.width
        text: strip.problem
    }
}
