// Short lines, one below the other, each with a stroke before it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Column {
    id: list

    property string heading: ""
    property var lines: []

    visible: lines.length > 0
    spacing: Theme.space / 2

    Words {
        width: parent.width
        visible: text !== ""
        text: list.heading
        font.bold: true
    }

    Repeater {
        model: list.lines

        Item {
            id: line

            required property string modelData

            width: list.width
            implicitHeight: words.implicitHeight

            Rectangle {
                x: list.LayoutMirroring.enabled ? parent.width - width : 0
                y: Theme.body * 0.65
                width: 10
                height: 3
                color: Theme.rail
            }

            Words {
                id: words

                anchors.right: parent.right
                width: parent.width - 20
                text: line.modelData
            }
        }
    }
}
