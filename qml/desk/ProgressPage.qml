// What the rules say of each exercise, with the evidence, and the draft that would follow: one click makes it, only
// signing sends it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property ProgressModel progress: desk.progress

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
            text: qsTr("Progress: %1").arg(page.progress.name)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Say {
            width: parent.width
            text: page.progress.about
            color: Theme.soft
        }

        Problem {
            width: parent.width
            text: page.progress.problem
        }

        MainButton {
            visible: page.desk.mayWrite && page.progress.rows.length > 0
            width: Math.min(implicitWidth, parent.width)
            text: page.progress.draftWords
            onClicked: page.desk.draftFromProgress()
        }

        Say {
            width: parent.width
            visible: page.progress.rows.length > 0
            text: qsTr("A draft is yours to change. The person gets nothing before you sign.")
            color: Theme.soft
        }

        Repeater {
            model: page.progress.rows

            Column {
                id: row

                required property var modelData

                width: sheet.inner
                topPadding: Theme.space
                spacing: 3

                Words {
                    width: parent.width
                    text: row.modelData.title
                    font.pixelSize: Theme.heading
                    font.bold: true
                    Accessible.role: Accessible.Heading
                }

                Row {
                    width: parent.width
                    spacing: Theme.space

                    // A shape of its own for each answer, so that the list is read without colour.
                    Mark {
                        width: Math.round(Theme.small * 1.1)
                        height: width
                        y: 3
                        shape: row.modelData.advice === 2 ? Mark.Tick : row.modelData.advice === 3 ? Mark.Octagon : Mark.Lines
                        colour: row.modelData.advice === 2 ? Theme.good : row.modelData.advice === 3 ? Theme.stop : Theme.ink
                        inner: Theme.paper
                    }

                    Say {
                        width: parent.width - Math.round(Theme.small * 1.1) - Theme.space
                        text: row.modelData.adviceWords
                        font.bold: true
                    }
                }

                Say {
                    width: parent.width
                    text: qsTr("Now: %1.").arg(row.modelData.dose)
                }

                Say {
                    width: parent.width
                    visible: text !== ""
                    text: row.modelData.step
                    color: row.modelData.moves ? Theme.rail : Theme.ink
                    font.bold: row.modelData.moves
                }

                Repeater {
                    model: row.modelData.evidence

                    Say {
                        required property var modelData

                        width: row.width
                        text: modelData.good ? qsTr("for: %1").arg(modelData.words) : qsTr("against: %1").arg(modelData.words)
                        color: Theme.soft
                    }
                }

                Say {
                    width: parent.width
                    text: row.modelData.pain
                    color: Theme.soft
                }
            }
        }
    }
}
