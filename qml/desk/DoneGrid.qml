// Occasions by day: a row an exercise, a column a day, a shape for what became of it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: grid

    required property DoneModel done

    readonly property real titleWidth: Math.min(260 * Theme.scale, width * 0.3)
    readonly property real shareWidth: Math.min(190 * Theme.scale, width * 0.22)
    readonly property real cell: Math.max(26, (width - titleWidth - shareWidth) / Math.max(1, done.days.length))

    Row {
        x: grid.titleWidth

        Repeater {
            model: grid.done.days

            Column {
                id: day

                required property var modelData

                width: grid.cell

                Text {
                    width: parent.width
                    horizontalAlignment: Text.AlignHCenter
                    text: day.modelData.weekday
                    color: day.modelData.today ? Theme.ink : Theme.soft
                    font.bold: day.modelData.today
                    font.pixelSize: Math.min(Math.round(Theme.small * 0.85), grid.cell * 0.55)
                    Accessible.ignored: true
                }

                Text {
                    width: parent.width
                    horizontalAlignment: Text.AlignHCenter
                    text: day.modelData.date
                    color: day.modelData.today ? Theme.ink : Theme.soft
                    font.bold: day.modelData.today
                    font.pixelSize: Math.min(Math.round(Theme.small * 0.85), grid.cell * 0.55)
                    Accessible.ignored: true
                }
            }
        }
    }

    Repeater {
        model: grid.done.rows

        Item {
            id: row

            required property var modelData

            width: grid.width
            height: Math.max(36, title.implicitHeight + 8, share.implicitHeight + 8)

            Rectangle {
                width: parent.width
                height: 1
                color: Theme.groove
            }

            Say {
                id: title

                width: grid.titleWidth - Theme.space
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                text: row.modelData.title
                font.bold: true
            }

            Row {
                x: grid.titleWidth
                height: parent.height

                Repeater {
                    model: row.modelData.cells

                    DayMark {
                        required property var modelData
                        required property int index

                        width: grid.cell
                        height: row.height
                        states: modelData.states
                        Accessible.role: Accessible.Cell
                        Accessible.name: qsTr("%1, %2: %3").arg(row.modelData.title).arg(grid.done.days[index]?.day ?? "")
                            .arg(modelData.words)
                    }
                }
            }

            Say {
                id: share

                anchors.right: parent.right
                width: grid.shareWidth - Theme.space
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                text: [row.modelData.share, row.modelData.dose].filter(w => w !== "").join(" · ")
                color: Theme.soft
                Accessible.name: qsTr("%1: %2").arg(row.modelData.title).arg(text)
            }
        }
    }

    Flow {
        width: parent.width
        topPadding: Theme.space
        spacing: Theme.space * 2

        Repeater {
            model: [qsTr("done"), qsTr("part done"), qsTr("not done"), qsTr("excused"), qsTr("to come"), qsTr("no data")]

            Row {
                id: key

                required property string modelData
                required property int index

                spacing: 4

                DayMark {
                    width: 20
                    height: Theme.small * 1.4
                    states: [key.index]
                }

                Say {
                    text: key.modelData
                    color: Theme.soft
                }
            }
        }
    }
}
