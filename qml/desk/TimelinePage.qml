// What happened between the clinic and one person, by date, newest first, and how far each thing got.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property TimelineModel timeline: desk.timeline

    Shortcut {
        sequences: ["F5"]
        onActivated: page.desk.person.reload()
    }

    Pane {
        id: sheet

        width: Math.min(parent.width, 900 * Math.min(1.5, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter

        Words {
            width: parent.width
            text: qsTr("What happened: %1").arg(page.timeline.name)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        ChipStrip {
            width: parent.width
            group: qsTr("What to look at")
            options: page.timeline.kinds
            value: page.timeline.wanted
            onPicked: value => page.timeline.wanted = value
        }

        Say {
            width: parent.width
            visible: page.timeline.rows.length === 0
            text: qsTr("Nothing yet.")
            color: Theme.soft
        }

        Repeater {
            model: page.timeline.rows

            Column {
                id: row

                required property var modelData

                width: sheet.inner
                spacing: 3

                Words {
                    width: parent.width
                    visible: row.modelData.firstOfDay
                    topPadding: Theme.space
                    text: row.modelData.day
                    font.pixelSize: Theme.body
                    font.bold: true
                    color: Theme.rail
                    Accessible.role: Accessible.Heading
                }

                Row {
                    width: parent.width
                    spacing: Theme.space

                    // A shape of its own for each kind, so that the list is read without colour.
                    Mark {
                        width: Math.round(Theme.small * 1.1)
                        height: width
                        y: 3
                        shape: row.modelData.kind === TimelineModel.Holds ? Mark.Octagon : row.modelData.kind === TimelineModel.Messages ? Mark.Letter : row.modelData.kind === TimelineModel.Measures ? Mark.Bars : Mark.Lines
                        colour: row.modelData.kind === TimelineModel.Holds ? Theme.stop : Theme.ink
                        inner: Theme.paper
                    }

                    Say {
                        width: parent.width - Math.round(Theme.small * 1.1) - Theme.space
                        text: row.modelData.title
                        font.bold: true
                        Accessible.name: row.modelData.kindWords + ": " + row.modelData.title
                    }
                }

                Say {
                    width: parent.width
                    visible: text !== ""
                    text: row.modelData.text
                }

                ReachedRow {
                    width: parent.width
                    visible: row.modelData.tracked
                    item: row.modelData
                    about: row.modelData.title
                }

                Say {
                    width: parent.width
                    visible: !row.modelData.tracked
                    text: row.modelData.sent
                    color: Theme.soft
                }
            }
        }
    }
}
