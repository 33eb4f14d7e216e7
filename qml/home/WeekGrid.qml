// Weeks as rows of seven days: a shape for what became of what was due, and the same in words below it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Column {
    id: grid

    required property HistoryModel history

    readonly property real cell: Math.floor(Math.min(width / 7, 64))
    readonly property real shape: Math.min(cell - 12, 28)

    spacing: Theme.space * 1.5

    Row {
        LayoutMirroring.childrenInherit: true

        Repeater {
            model: grid.history.dayNames

            Text {
                required property string modelData

                width: grid.cell
                text: modelData
                color: Theme.soft
                horizontalAlignment: Text.AlignHCenter
                font.pixelSize: Math.min(Theme.small, grid.cell * 0.6)
                Accessible.ignored: true
            }
        }
    }

    Repeater {
        model: grid.history.weeks

        Column {
            id: week

            required property var modelData

            width: grid.width
            spacing: Theme.space / 2
            Accessible.role: Accessible.ListItem
            Accessible.name: modelData.title + ": " + modelData.words

            Words {
                width: parent.width
                text: week.modelData.title
                font.bold: true
                Accessible.ignored: true
            }

            Row {
                Repeater {
                    model: week.modelData.states

                    Rectangle {
                        id: day

                        required property var modelData

                        width: grid.cell
                        height: grid.shape + 12
                        color: Theme.sheet
                        border.color: Theme.groove
                        border.width: 1

                        DayMark {
                            anchors.fill: parent
                            most: grid.shape
                            states: day.modelData
                        }
                    }
                }
            }

            Words {
                width: parent.width
                text: week.modelData.words
                color: Theme.soft
                Accessible.ignored: true
            }
        }
    }

    Heading {
        width: parent.width
        text: qsTr("What the signs mean")
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Repeater {
            // In the order of DayMark's numbers.
            model: [qsTr("all done"), qsTr("done in part"), qsTr("not done"), qsTr("excused: nothing was expected of you"), qsTr("still to come"), qsTr("not known: this phone was not there yet")]

            Item {
                id: key

                required property string modelData
                required property int index

                width: grid.width
                implicitHeight: Math.max(sign.height, meaning.implicitHeight)

                DayMark {
                    id: sign

                    x: key.LayoutMirroring.enabled ? parent.width - width : 0
                    width: grid.shape + 12
                    height: grid.shape + 12
                    most: grid.shape
                    states: [key.index]
                }

                Words {
                    id: meaning

                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width - sign.width - Theme.space
                    text: key.modelData
                }
            }
        }

        Words {
            width: parent.width
            text: qsTr("An empty box: nothing was due that day.")
        }
    }
}
