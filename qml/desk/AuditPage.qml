// Who saw and changed what, newest first; and whether the chain of the trail holds. For looking only.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property AuditModel audit: desk.audit

    Shortcut {
        sequences: ["F5"]
        onActivated: page.audit.look()
    }

    Component.onCompleted: who.takeFocus()

    Pane {
        id: sheet

        anchors.fill: parent
        gap: Theme.space

        Words {
            width: parent.width
            text: page.audit.about === "" ? qsTr("Audit trail") : qsTr("Audit trail: %1").arg(page.audit.about)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Flow {
            width: parent.width
            spacing: Theme.space * 1.5

            LineField {
                id: who

                width: Math.min(parent.width, 280 * Theme.scale)
                label: qsTr("By or about which account")
                hint: qsTr("name or user name; empty: all")
                problem: page.audit.whoProblem
                text: page.audit.who
                onEdited: text => page.audit.who = text
                onAccepted: page.audit.look()
            }

            LineField {
                width: Math.min(parent.width, 170 * Theme.scale)
                label: qsTr("From day")
                hint: qsTr("2026-11-25")
                problem: page.audit.firstDayProblem
                text: page.audit.firstDay
                onEdited: text => page.audit.firstDay = text
                onAccepted: page.audit.look()
            }

            LineField {
                width: Math.min(parent.width, 170 * Theme.scale)
                label: qsTr("To day")
                hint: qsTr("2026-11-25")
                problem: page.audit.lastDayProblem
                text: page.audit.lastDay
                onEdited: text => page.audit.lastDay = text
                onAccepted: page.audit.look()
            }
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            SmallButton {
                text: page.audit.busy ? qsTr("Reading …") : qsTr("Look")
                Accessible.name: qsTr("Look at these lines")
                words: Theme.rail
                edge: Theme.rail
                enabled: !page.audit.busy
                onClicked: page.audit.look()
            }

            SmallButton {
                visible: page.audit.about !== ""
                text: qsTr("About everybody")
                enabled: !page.audit.busy
                onClicked: page.audit.aboutEverybody()
            }

            SmallButton {
                text: qsTr("Check the chain")
                enabled: !page.audit.busy
                onClicked: page.audit.check()
            }
        }

        Notice {
            width: parent.width
            visible: page.audit.chain !== ""
            kind: page.audit.chainBroken ? Notice.Stop : Notice.Good
            title: page.audit.chainBroken ? qsTr("The trail was changed") : qsTr("Nothing was changed")
            text: page.audit.chain
        }

        Problem {
            width: parent.width
            text: page.audit.problem
        }

        Say {
            width: parent.width
            visible: page.audit.lines.length === 0 && !page.audit.busy
            text: page.audit.more ? qsTr("Nothing in the newest part. Look further back.") : qsTr("There are no such lines.")
            color: Theme.soft
        }

        Repeater {
            model: page.audit.lines

            AuditLine {
                required property var modelData

                width: sheet.inner
                line: modelData
            }
        }

        SmallButton {
            visible: page.audit.more
            text: qsTr("Further back")
            enabled: !page.audit.busy
            onClicked: page.audit.lookFurther()
        }
    }
}
