// Outcome measures: what was taken and what a change means, beside the form for the next one.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property MeasuresModel measures: desk.measures
    readonly property bool wide: width >= 900 * Theme.scale

    Flickable {
        id: outer

        anchors.fill: parent
        contentHeight: page.wide ? height : form.height + list.height
        interactive: !page.wide
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: outer
        }

        Pane {
            id: form

            width: page.wide ? Math.round(page.width * 0.42) : page.width
            height: page.wide ? outer.height : page.desk.mayWrite ? wanted : 0
            visible: page.desk.mayWrite
            scrolls: page.wide

            Words {
                width: parent.width
                text: qsTr("Measures of %1").arg(page.measures.name)
                font.pixelSize: Theme.title
                font.bold: true
                Accessible.role: Accessible.Heading
            }

            Words {
                width: parent.width
                text: page.measures.limbs
                font.bold: true
                color: Theme.brass
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 0.75

                Repeater {
                    model: page.measures.kinds

                    Chip {
                        required property var modelData

                        group: qsTr("Measure")
                        text: modelData.name
                        chosen: page.measures.kind === modelData.id
                        onClicked: page.measures.kind = modelData.id
                    }
                }
            }

            Say {
                width: parent.width
                text: page.measures.protocol
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 1.5

                LineField {
                    id: value

                    width: 160 * Theme.scale
                    label: qsTr("Value, %1").arg(page.measures.unit)
                    text: page.measures.value
                    problem: page.measures.valueProblem
                    onEdited: text => page.measures.value = text
                    onAccepted: page.measures.save()
                }

                LineField {
                    width: 160 * Theme.scale
                    label: qsTr("Day")
                    text: page.measures.day
                    problem: page.measures.dayProblem
                    onEdited: text => page.measures.day = text
                }

                LineField {
                    width: 200 * Theme.scale
                    visible: page.measures.aidRecorded
                    label: qsTr("Walking aid used")
                    hint: qsTr("none")
                    text: page.measures.aid
                    onEdited: text => page.measures.aid = text
                }
            }

            Flow {
                width: parent.width
                visible: page.measures.perSide
                spacing: Theme.space * 0.75

                Chip {
                    group: qsTr("Side")
                    text: qsTr("Left leg")
                    chosen: page.measures.side === 1
                    onClicked: page.measures.side = 1
                }

                Chip {
                    group: qsTr("Side")
                    text: qsTr("Right leg")
                    chosen: page.measures.side === 2
                    onClicked: page.measures.side = 2
                }
            }

            LineField {
                width: parent.width
                label: qsTr("Note")
                text: page.measures.note
                onEdited: text => page.measures.note = text
            }

            Say {
                width: parent.width
                visible: text !== ""
                text: page.measures.preview
                font.bold: true
            }

            Problem {
                width: parent.width
                text: page.measures.problem
            }

            MainButton {
                width: Math.min(implicitWidth, parent.width)
                enabled: page.measures.maySave
                text: page.measures.saving ? qsTr("Saving …") : qsTr("Save the measure")
                onClicked: page.measures.save()
            }

            Say {
                width: parent.width
                text: qsTr("The person sees value and day on the phone, without a verdict. A measure does not say a mobility level: that is yours.")
                color: Theme.soft
            }
        }

        Pane {
            id: list

            x: page.wide && form.visible ? form.width : 0
            y: page.wide || !form.visible ? 0 : form.height
            width: page.width - x
            height: page.wide ? outer.height : wanted
            scrolls: page.wide

            Say {
                width: parent.width
                visible: page.measures.taken.length === 0
                text: qsTr("Nothing was measured yet.")
            }

            Repeater {
                model: page.measures.taken

                Column {
                    id: kind

                    required property var modelData

                    width: list.inner
                    spacing: Theme.space / 2

                    Heading {
                        width: parent.width
                        text: kind.modelData.title
                    }

                    Words {
                        width: parent.width
                        text: kind.modelData.last
                        font.bold: true
                    }

                    Words {
                        width: parent.width
                        visible: text !== ""
                        text: kind.modelData.verdict === undefined ? "" : qsTr("%1: %2").arg(kind.modelData.change).arg(kind.modelData.verdict)
                    }

                    RatingChart {
                        width: parent.width
                        height: 150 * Theme.scale
                        visible: kind.modelData.points.length > 1
                        points: kind.modelData.points
                        least: kind.modelData.least
                        most: kind.modelData.most
                        band: kind.modelData.band
                        square: true
                        Accessible.role: Accessible.Graphic
                        Accessible.name: qsTr("%1. %2").arg(kind.modelData.title).arg(kind.modelData.change ?? kind.modelData.last)
                    }

                    Say {
                        width: parent.width
                        visible: kind.modelData.band.length > 0
                        text: qsTr("Shaded: within the error of the first value.")
                        color: Theme.soft
                    }

                    Repeater {
                        model: kind.modelData.studies.concat(kind.modelData.cutoffs)

                        Say {
                            required property string modelData

                            width: kind.width
                            text: modelData
                            color: Theme.soft
                        }
                    }

                    Repeater {
                        model: kind.modelData.values

                        Flow {
                            id: one

                            required property var modelData

                            width: kind.width
                            spacing: Theme.space

                            Say {
                                width: Math.min(implicitWidth, kind.width)
                                text: one.modelData.words
                            }

                            SmallButton {
                                least: 28
                                visible: page.desk.mayWrite
                                enabled: !page.measures.saving
                                text: qsTr("Entered by mistake")
                                Accessible.name: qsTr("Entered by mistake: %1").arg(one.modelData.words)
                                onClicked: page.measures.withdraw(one.modelData.id)
                            }
                        }
                    }
                }
            }
        }
    }
}
