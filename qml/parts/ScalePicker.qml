// A number from 0 to 10, one tap each, with words at both ends.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
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

            T.RadioButton {
                id: number

                required property int index
                readonly property bool chosen: picker.value === index

                width: picker.cell
                height: Math.max(Theme.target + Theme.space, number.implicitContentHeight + 2 * Theme.space)
                text: "%L1".arg(index)
                checked: chosen
                focusPolicy: Qt.StrongFocus
                hoverEnabled: false
                Accessible.role: Accessible.RadioButton
                Accessible.name: picker.label === "" ? text : qsTr("%1: %2").arg(picker.label).arg(text)
                Accessible.checkable: true
                Accessible.checked: chosen
                Accessible.onPressAction: picker.picked(number.index)
                Accessible.onToggleAction: picker.picked(number.index)
                Keys.onReturnPressed: picker.picked(number.index)
                Keys.onEnterPressed: picker.picked(number.index)
                onClicked: picker.picked(number.index)

                contentItem: ButtonFace {
                    text: number.text
                    textSize: Theme.heading
                    strong: true
                    words: number.chosen ? Theme.paper : Theme.ink
                    mark: -1
                    markInner: "transparent"
                    room: number.width
                }

                background: Rectangle {
                    radius: Theme.radius
                    color: number.chosen ? Theme.rail : Theme.sheet
                    border.width: number.down ? 4 : 2
                    border.color: number.down ? Theme.ink : number.chosen ? Theme.rail : Theme.soft

                    FocusRing {
                        target: number
                        visible: number.visualFocus
                    }
                }
            }
        }
    }
}
