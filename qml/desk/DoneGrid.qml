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
    // Too many days for a day's name above each: the weeks are named, and what was done in all stands below the title.
    readonly property bool tight: (width - titleWidth - shareWidth) / Math.max(1, done.days.length) < 26
    readonly property real cell: (width - titleWidth - (tight ? 0 : shareWidth)) / Math.max(1, done.days.length)

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
                    visible: !grid.tight
                    horizontalAlignment: Text.AlignHCenter
                    text: day.modelData.weekday
                    color: day.modelData.today ? Theme.ink : Theme.soft
                    font.bold: day.modelData.today
                    font.pixelSize: Math.min(Math.round(Theme.small * 0.85), grid.cell * 0.55)
                    Accessible.ignored: true
                }

                // From its Monday over the whole week, where days are too narrow.
                Item {
                    width: parent.width
                    height: monday.implicitHeight
                    visible: grid.tight

                    Text {
                        id: monday

                        width: grid.cell * 7
                        visible: day.modelData.monday
                        text: day.modelData.short
                        color: Theme.soft
                        font.pixelSize: Math.min(Math.round(Theme.small * 0.85), grid.cell * 1.9)
                        Accessible.ignored: true
                    }
                }

                Text {
                    width: parent.width
                    visible: !grid.tight
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
            height: grid.tight ? Math.max(36, title.implicitHeight + share.implicitHeight + 12)
                : Math.max(36, title.implicitHeight + 8, share.implicitHeight + 8)

            Rectangle {
                width: parent.width
                height: 1
                color: Theme.groove
            }

            Say {
                id: title

                y: grid.tight ? 4 : 0
                width: grid.titleWidth - Theme.space
                height: grid.tight ? implicitHeight : parent.height
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

                x: grid.tight ? 0 : parent.width - width
                y: grid.tight ? title.y + title.height : 0
                width: (grid.tight ? grid.titleWidth : grid.shareWidth) - Theme.space
                height: grid.tight ? implicitHeight : parent.height
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
