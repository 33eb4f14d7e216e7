// One person: what needs attention and what can be done about it, programmes and how far they got, messages,
// the record.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property PersonModel person: desk.person
    readonly property int columns: width >= 1150 * Theme.scale ? 3 : width >= 760 * Theme.scale ? 2 : 1
    readonly property bool own: columns > 1 // each column scrolls by itself

    Shortcut {
        sequences: ["F5"]
        onActivated: page.person.reload()
    }

    Flickable {
        id: outer

        anchors.fill: parent
        contentHeight: page.own ? height : first.height + messages.height + record.height
        interactive: !page.own
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: outer
        }

        Pane {
            id: first

            width: page.columns === 3 ? Math.round(page.width * 0.42) : page.columns === 2 ? Math.round(page.width * 0.56) : page.width
            height: page.own ? outer.height : wanted
            scrolls: page.own

            Words {
                width: parent.width
                text: page.person.loaded ? page.person.name : qsTr("Reading …")
                font.pixelSize: Theme.title
                font.bold: true
                Accessible.role: Accessible.Heading
            }

            Words {
                width: parent.width
                visible: page.person.loaded
                text: qsTr("%1 · %2").arg(page.person.limbs).arg(page.person.mobility)
            }

            Problem {
                width: parent.width
                text: page.person.problem
            }

            Column {
                width: parent.width
                visible: page.person.loaded
                spacing: 4

                Repeater {
                    model: page.person.attention

                    Row {
                        id: reason

                        required property var modelData

                        width: parent.width
                        spacing: Theme.space

                        UrgencyMark {
                            width: Math.round(Theme.small * 1.25)
                            height: width
                            y: 1
                            urgency: reason.modelData.urgency
                        }

                        Say {
                            width: parent.width - Theme.small * 1.25 - Theme.space
                            text: qsTr("%1: %2").arg(reason.modelData.urgencyWords).arg(reason.modelData.words)
                            font.bold: reason.modelData.urgency <= 1
                        }
                    }
                }

                Say {
                    width: parent.width
                    text: page.person.contact
                    color: Theme.soft
                }
            }

            Column {
                id: openings

                width: parent.width
                visible: page.person.openings.length > 0
                spacing: 4

                Repeater {
                    model: page.person.openings

                    Problem {
                        required property string modelData

                        width: openings.width
                        grave: false
                        text: modelData
                    }
                }
            }

            MainButton {
                visible: page.person.loaded && page.desk.mayWrite
                width: Math.min(implicitWidth, parent.width)
                text: page.person.hasProgramme ? qsTr("Write the next programme") : qsTr("Write the first programme")
                onClicked: page.desk.openProgramme()
            }

            Flow {
                width: parent.width
                visible: page.person.loaded
                spacing: Theme.space

                SmallButton {
                    text: qsTr("What was done")
                    onClicked: page.desk.openDone()
                }

                SmallButton {
                    text: qsTr("Progress")
                    visible: page.person.hasProgramme
                    onClicked: page.desk.openProgress()
                }

                SmallButton {
                    text: qsTr("What happened")
                    onClicked: page.desk.openTimeline()
                }

                SmallButton {
                    text: qsTr("Measures")
                    onClicked: page.desk.openMeasures()
                }

                SmallButton {
                    visible: page.desk.mayWrite
                    text: qsTr("Hold order")
                    words: Theme.stop
                    edge: Theme.stop
                    mark: Mark.Octagon
                    markInner: Theme.sheet
                    onClicked: page.desk.openHold()
                }

                SmallButton {
                    visible: page.desk.mayWrite
                    text: qsTr("Pair a phone")
                    onClicked: page.desk.openPairing()
                }

                SmallButton {
                    visible: page.desk.mayWrite
                    text: qsTr("Change the record")
                    onClicked: page.desk.openRecord()
                }

                SmallButton {
                    text: qsTr("Documents")
                    Accessible.name: qsTr("Documents: handout, report, card, calendar, exports")
                    onClicked: page.desk.openDocuments()
                }
            }

            Column {
                width: parent.width
                visible: page.person.holds.length > 0
                spacing: Theme.space

                Heading {
                    width: parent.width
                    text: qsTr("On hold")
                }

                Repeater {
                    model: page.person.holds

                    Rectangle {
                        id: holdRow

                        required property var modelData
                        required property int index

                        width: parent.width
                        height: holdColumn.implicitHeight + 2 * Theme.space
                        color: Theme.sheet
                        border.width: 2
                        border.color: Theme.stop
                        radius: Theme.radius

                        Column {
                            id: holdColumn

                            x: Theme.space * 1.5
                            y: Theme.space
                            width: parent.width - 2 * x
                            spacing: 4

                            Row {
                                width: parent.width
                                spacing: Theme.space

                                Mark {
                                    width: Theme.body
                                    height: width
                                    y: 2
                                    shape: Mark.Octagon
                                    colour: Theme.stop
                                    inner: Theme.sheet
                                }

                                Say {
                                    width: parent.width - Theme.body - Theme.space
                                    text: qsTr("Hold on %1, by %2: %3").arg(holdRow.modelData.what).arg(holdRow.modelData.by)
                                        .arg(holdRow.modelData.reason)
                                    font.bold: true
                                }
                            }

                            ReachedRow {
                                width: parent.width
                                item: holdRow.modelData
                                about: qsTr("Hold order")
                            }

                            SmallButton {
                                text: qsTr("Lift this hold")
                                Accessible.name: qsTr("Lift the hold on %1").arg(holdRow.modelData.what)
                                onClicked: page.desk.openLift(holdRow.modelData.id)
                            }
                        }
                    }
                }
            }

            Column {
                width: parent.width
                visible: page.person.loaded
                spacing: Theme.space

                Heading {
                    width: parent.width
                    text: qsTr("Done of due, by week")
                }

                WeekBars {
                    width: Math.min(320, parent.width)
                    height: 44
                    weeks: page.person.weeks
                    Accessible.role: Accessible.Chart
                    Accessible.name: page.person.weeksWords
                }

                Say {
                    width: parent.width
                    text: page.person.adherence
                }
            }

            Column {
                width: parent.width
                visible: page.person.loaded
                spacing: Theme.space

                Heading {
                    width: parent.width
                    text: qsTr("Programmes")
                }

                Say {
                    width: parent.width
                    visible: page.person.programmes.length === 0
                    text: qsTr("None yet.")
                    color: Theme.soft
                }

                Repeater {
                    model: page.person.programmes

                    Column {
                        id: programme

                        required property var modelData

                        width: parent.width
                        spacing: 2
                        bottomPadding: Theme.space

                        Say {
                            width: parent.width
                            text: qsTr("Programme %1%2, %3 exercises, by %4").arg(programme.modelData.number)
                                .arg(programme.modelData.current ? qsTr(" (the newest)") : "").arg(programme.modelData.entries)
                                .arg(programme.modelData.signer)
                            font.bold: programme.modelData.current
                        }

                        Say {
                            width: parent.width
                            text: programme.modelData.days
                            color: Theme.soft
                        }

                        ReachedRow {
                            width: parent.width
                            item: programme.modelData
                            about: qsTr("Programme %1").arg(programme.modelData.number)
                        }
                    }
                }
            }
        }

        Pane {
            id: messages

            x: page.columns === 1 ? 0 : first.width
            y: page.columns === 1 ? first.height : 0
            width: page.columns === 3 ? Math.round(page.width * 0.29) : page.width - x
            height: page.columns === 3 ? outer.height : page.columns === 2 ? Math.round(outer.height / 2) : wanted
            scrolls: page.own
            color: Theme.dark ? "transparent" : Qt.darker(Theme.paper, 1.02)

            MessagePane {
                width: parent.width
                visible: page.person.loaded
                person: page.person
                mayWrite: page.desk.mayWrite
                onMediaAsked: page.desk.openWriteTo()
            }
        }

        Pane {
            id: record

            x: page.columns === 1 ? 0 : page.columns === 2 ? first.width : messages.x + messages.width
            y: page.columns === 1 ? messages.y + messages.height : page.columns === 2 ? messages.height : 0
            width: page.width - x
            height: page.columns === 1 ? wanted : outer.height - y
            scrolls: page.own
            gap: Theme.space / 2

            Heading {
                width: parent.width
                visible: page.person.loaded
                text: page.person.missing === 0 ? qsTr("Record")
                    : page.person.missing === 1 ? qsTr("Record, 1 thing not known")
                                                : qsTr("Record, %1 things not known").arg(page.person.missing)
            }

            Repeater {
                model: page.person.record

                Item {
                    id: fact

                    required property var modelData

                    width: record.inner
                    height: Math.max(label.implicitHeight, value.implicitHeight) + 4

                    Say {
                        id: label

                        width: parent.width * 0.46
                        text: fact.modelData.label
                        color: Theme.soft
                    }

                    Mark {
                        id: gapSign

                        x: label.width + Theme.space
                        y: 3
                        visible: fact.modelData.missing
                        width: visible ? Theme.small : 0
                        height: Theme.small
                        shape: Mark.Triangle
                        colour: Theme.brass
                        inner: Theme.paper
                    }

                    Say {
                        id: value

                        x: gapSign.x + gapSign.width + (gapSign.visible ? 4 : 0)
                        width: parent.width - x
                        text: fact.modelData.value
                        color: fact.modelData.missing ? Theme.brass : Theme.ink
                        Accessible.name: qsTr("%1: %2").arg(fact.modelData.label).arg(text)
                    }
                }
            }

            Heading {
                width: parent.width
                visible: page.person.loaded
                topPadding: Theme.space
                text: qsTr("Phones")
            }

            Say {
                width: parent.width
                visible: page.person.loaded && page.person.devices.length === 0
                text: qsTr("None paired.")
                color: Theme.soft
            }

            SmallButton {
                visible: page.person.loaded
                width: Math.min(implicitWidth, parent.width)
                text: page.desk.mayManage ? qsTr("Phones and therapists") : qsTr("Phones")
                Accessible.name: page.desk.mayManage ? qsTr("Who has access: phones and therapists") : qsTr("Who has access: phones")
                onClicked: page.desk.openAccess()
            }

            SmallButton {
                visible: page.person.loaded && page.desk.maySeeAudit
                width: Math.min(implicitWidth, parent.width)
                text: qsTr("Who saw this record")
                onClicked: page.desk.openPersonAudit()
            }

            Repeater {
                model: page.person.devices

                Column {
                    id: device

                    required property var modelData

                    width: record.inner
                    spacing: 2
                    bottomPadding: Theme.space

                    Say {
                        width: parent.width
                        text: device.modelData.revoked ? qsTr("%1, access taken away").arg(device.modelData.name) : device.modelData.name
                        font.bold: !device.modelData.revoked
                    }

                    Say {
                        width: parent.width
                        text: qsTr("Paired %1; %2").arg(device.modelData.paired)
                            .arg(device.modelData.contact === "" ? qsTr("never heard from")
                                                                 : qsTr("last heard from %1").arg(device.modelData.contact))
                        color: Theme.soft
                    }
                }
            }
        }
    }
}
