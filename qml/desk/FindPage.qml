// Finding somebody who is not in one's own list, and, when it cannot wait, opening their record by a written
// reason.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property FindModel find: desk.find

    Component.onCompleted: family.takeFocus()

    // Not by visibility: what is written stays under a locked desk's cover.
    Connections {
        target: page.find

        function onAskedChanged(): void {
            reason.text = "";
        }
    }

    Pane {
        id: sheet

        width: Math.min(parent.width, 860 * Math.min(1.6, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("Find a person")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Say {
            width: parent.width
            text: qsTr("By the whole family name. It shows who somebody is and nothing else, and each search is written into the audit trail.")
            color: Theme.soft
        }

        LineField {
            id: family

            width: Math.min(parent.width, 420 * Theme.scale)
            label: qsTr("Family name")
            name: qsTr("Whole family name")
            problem: page.find.nameProblem
            text: page.find.familyName
            onEdited: text => page.find.familyName = text
            onAccepted: page.find.find()
        }

        SmallButton {
            text: page.find.busy ? qsTr("Looking …") : qsTr("Find")
            words: Theme.rail
            edge: Theme.rail
            enabled: !page.find.busy
            onClicked: page.find.find()
        }

        Problem {
            width: parent.width
            text: page.find.problem
        }

        Say {
            width: parent.width
            visible: text !== ""
            text: page.find.foundWords
            Accessible.role: Accessible.AlertMessage
        }

        Repeater {
            model: page.find.asked === "" ? page.find.found : []

            Item {
                id: person

                required property var modelData

                width: sheet.inner
                height: Math.max(who.height, open.height) + Theme.space

                Column {
                    id: who

                    width: parent.width - open.width - Theme.space

                    Words {
                        width: parent.width
                        text: person.modelData.name
                        font.bold: true
                    }

                    Say {
                        width: parent.width
                        text: person.modelData.born
                        color: Theme.soft
                    }
                }

                SmallButton {
                    id: open

                    anchors.right: parent.right
                    width: Math.min(implicitWidth, parent.width * 0.5)
                    text: !page.find.seesRecords ? qsTr("Phones and therapists") : person.modelData.open ? qsTr("Open")
                                                                                                          : qsTr("Open by a written reason")
                    Accessible.name: qsTr("%1: %2, %3").arg(text).arg(person.modelData.name).arg(person.modelData.born)
                    onClicked: {
                        if (!page.find.seesRecords)
                            page.desk.openFoundAccess(person.modelData.id);
                        else if (person.modelData.open)
                            page.desk.openPerson(person.modelData.id);
                        else
                            page.find.ask(person.modelData.id);
                    }
                }

                Rectangle {
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: 1
                    color: Theme.groove
                }
            }
        }

        Notice {
            width: parent.width
            visible: page.find.asked !== ""
            kind: Notice.Attention
            title: qsTr("%1 is not assigned to you").arg(page.find.asked)
            text: qsTr("Open this record only when it cannot wait for whoever looks after them. Your name, the time and what you look at are written into the audit trail. Your reason is shown for a week to everybody who sees this person. The record closes by itself after a time that the bar at the top then shows.")

            AreaField {
                id: reason

                width: parent.width
                label: qsTr("Why it cannot wait")
                hint: qsTr("for example: their therapist is ill, and they phoned about a fall")
                problem: page.find.reasonProblem
                lines: 2
            }

            Flow {
                width: parent.width
                spacing: Theme.space

                SmallButton {
                    text: page.find.busy ? qsTr("Opening …") : qsTr("Open the record and write it down")
                    words: Theme.stop
                    edge: Theme.stop
                    enabled: !page.find.busy
                    onClicked: page.find.openFor(reason.text)
                }

                SmallButton {
                    text: qsTr("Do not open it")
                    enabled: !page.find.busy
                    onClicked: page.find.ask("")
                }
            }
        }
    }
}
