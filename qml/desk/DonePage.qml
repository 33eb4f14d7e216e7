// What was done, entry by entry and day by day, with what adherence means beside every figure.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property DoneModel done: desk.done
    readonly property bool wide: width >= 1000 * Theme.scale

    Flickable {
        id: outer

        anchors.fill: parent
        contentHeight: all.height + 2 * Theme.edge
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: outer
        }

        Column {
            id: all

            x: Theme.edge * 1.5
            y: Theme.edge
            width: parent.width - 3 * Theme.edge
            spacing: Theme.space * 1.5

            Flow {
                width: parent.width
                spacing: Theme.space * 2

                Words {
                    width: Math.min(implicitWidth, all.width)
                    text: qsTr("What %1 did").arg(page.desk.person.name)
                    font.pixelSize: Theme.title
                    font.bold: true
                    Accessible.role: Accessible.Heading
                }

                Repeater {
                    model: [2, 4, 8]

                    Chip {
                        required property int modelData

                        text: qsTr("%1 weeks").arg(modelData)
                        group: qsTr("Show")
                        chosen: page.done.weeks === modelData
                        onClicked: page.done.weeks = modelData
                    }
                }

                SmallButton {
                    least: 32
                    text: qsTr("Report of these weeks")
                    onClicked: page.desk.openReport()
                }
            }

            Problem {
                width: parent.width
                text: page.done.problem
            }

            Words {
                width: parent.width
                text: page.done.overall
                font.bold: true
            }

            Say {
                width: parent.width
                text: qsTr("%1. %2").arg(page.done.period).arg(page.done.heard)
                color: Theme.soft
            }

            DoneGrid {
                width: parent.width
                visible: page.done.rows.length > 0
                done: page.done
            }

            Say {
                width: parent.width
                text: page.done.definition
                color: Theme.soft
                font.pixelSize: Math.round(Theme.small * 0.9)
            }

            Grid {
                id: shares

                readonly property real cell: columns === 2 ? (width - spacing) / 2 : width

                width: parent.width
                columns: page.wide ? 2 : 1
                spacing: Theme.space * 3

                Repeater {
                    model: [
                        {
                            "head": qsTr("By week"),
                            "rows": page.done.byWeek
                        },
                        {
                            "head": qsTr("By programme"),
                            "rows": page.done.byProgramme
                        }
                    ]

                    Column {
                        id: part

                        required property var modelData

                        width: shares.cell
                        spacing: 3

                        Heading {
                            width: parent.width
                            text: part.modelData.head
                        }

                        Repeater {
                            model: part.modelData.rows

                            Say {
                                required property var modelData

                                width: part.width
                                text: [modelData.label + ": " + modelData.share, modelData.dose].filter(w => w !== "").join(" · ")
                            }
                        }

                        Say {
                            visible: part.modelData.rows.length === 0
                            text: qsTr("Nothing yet.")
                            color: Theme.soft
                        }
                    }
                }
            }

            Heading {
                width: parent.width
                visible: page.done.wear.length > 0
                text: qsTr("Wearing time, newest first")
            }

            Repeater {
                model: page.done.wear

                Row {
                    id: worn

                    required property var modelData

                    width: all.width
                    spacing: Theme.space

                    UrgencyMark {
                        width: Math.round(Theme.small * 1.25)
                        height: width
                        y: 1
                        urgency: worn.modelData.bad ? 0 : 3
                    }

                    Say {
                        width: parent.width - Theme.small * 1.25 - Theme.space
                        text: qsTr("%1: %2").arg(worn.modelData.day).arg(worn.modelData.words)
                        font.bold: worn.modelData.bad
                    }
                }
            }

            Heading {
                width: parent.width
                text: qsTr("Notes about days")
            }

            Problem {
                width: parent.width
                text: page.desk.remarks.problem
            }

            RemarkPane {
                width: parent.width
                remarks: page.desk.remarks
                mayWrite: page.desk.mayWrite
            }

            Heading {
                width: parent.width
                text: page.done.practices.length === 0 ? qsTr("No practice reported in these weeks")
                    : page.done.practices.length === 1 ? qsTr("1 practice")
                                                       : qsTr("%1 practices, newest first").arg(page.done.practices.length)
            }

            Repeater {
                model: page.done.practices

                PracticeRow {
                    required property var modelData

                    width: all.width
                    practice: modelData
                    remarks: page.desk.remarks
                    mayWrite: page.desk.mayWrite
                }
            }
        }
    }
}
