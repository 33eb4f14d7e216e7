// One practice as it was performed: each exercise with its dose, sets, pain, effort, and why it stopped.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Rectangle {
    id: row

    required property var practice
    required property RemarksModel remarks
    property bool mayWrite: true

    implicitHeight: column.implicitHeight + 2 * Theme.space
    color: Theme.sheet
    radius: Theme.radius
    border.width: practice.stopped ? 2 : 1
    border.color: practice.redFlag ? Theme.stop : practice.stopped ? Theme.brass : Theme.groove

    Column {
        id: column

        x: Theme.space * 1.5
        y: Theme.space
        width: parent.width - 2 * x
        spacing: 3

        Row {
            width: parent.width
            spacing: Theme.space

            Mark {
                width: Math.round(Theme.small * 1.25)
                height: width
                y: 1
                shape: row.practice.redFlag ? Mark.Alarm : row.practice.stopped ? Mark.Triangle : Mark.Tick
                colour: row.practice.redFlag ? Theme.stop : row.practice.stopped ? Theme.brass : Theme.good
                inner: Theme.sheet
            }

            Say {
                width: parent.width - Theme.small * 1.25 - Theme.space
                text: qsTr("%1: %2").arg(row.practice.day).arg(row.practice.end)
                font.bold: true
            }
        }

        Say {
            width: parent.width
            text: row.practice.known
            color: Theme.soft
        }

        Problem {
            width: parent.width
            text: row.practice.flags
        }

        Say {
            width: parent.width
            visible: row.practice.note !== ""
            text: qsTr("They wrote: \"%1\"").arg(row.practice.note)
        }

        Problem {
            width: parent.width
            grave: false
            text: row.practice.doubts === "" ? "" : qsTr("Times in doubt: %1").arg(row.practice.doubts)
        }

        Repeater {
            model: row.practice.entries

            Column {
                id: entry

                required property var modelData

                width: column.width
                topPadding: 4

                Say {
                    width: parent.width
                    text: qsTr("%1: %2").arg(entry.modelData.title).arg(entry.modelData.dose)
                }

                Say {
                    width: parent.width
                    text: [entry.modelData.pain, entry.modelData.effort, entry.modelData.sets].filter(w => w !== "").join(" · ")
                    color: Theme.soft
                }

                Problem {
                    width: parent.width
                    grave: false
                    text: entry.modelData.skipped
                }
            }
        }

        RemarkPane {
            width: parent.width
            remarks: row.remarks
            practiceId: row.practice.id
            day: row.practice.localDay
            about: row.practice.day
            mayWrite: row.mayWrite
        }
    }
}
