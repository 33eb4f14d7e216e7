// A hold order, or lifting one: what, why, and one more look before it counts.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property HoldModel hold: desk.hold

    Pane {
        id: sheet

        width: Math.min(parent.width, 760 * Math.min(1.6, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: page.hold.lifting ? qsTr("Lift a hold for %1").arg(page.hold.name)
                : page.hold.reviewing ? qsTr("Look once more") : qsTr("Hold order for %1").arg(page.hold.name)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Words {
            width: parent.width
            text: page.hold.limbs
            font.bold: true
            color: Theme.brass
        }

        Column {
            width: parent.width
            visible: !page.hold.reviewing
            spacing: Theme.space * 1.5

            Say {
                width: parent.width
                visible: !page.hold.lifting
                text: qsTr("A hold stops a practice under way as soon as it arrives, and lets none begin. It stays until you lift it.")
            }

            Column {
                width: parent.width
                visible: !page.hold.lifting
                spacing: Theme.space

                Chip {
                    text: qsTr("Hold everything")
                    chosen: page.hold.everything
                    onClicked: page.hold.everything = true
                }

                Flow {
                    width: parent.width
                    spacing: Theme.space * 0.75

                    Repeater {
                        model: page.hold.entries

                        Chip {
                            required property var modelData

                            width: Math.min(implicitWidth, sheet.inner)
                            text: modelData.title
                            group: qsTr("Hold")
                            many: true
                            chosen: !page.hold.everything && page.hold.chosen.indexOf(modelData.id) >= 0
                            onClicked: page.hold.toggle(modelData.id)
                        }
                    }
                }
            }

            AreaField {
                width: parent.width
                label: page.hold.lifting ? qsTr("Why it may go on, in words for them") : qsTr("Why, in words for them")
                name: qsTr("Reason for the person")
                lines: 3
                text: page.hold.reason
                onEdited: text => page.hold.reason = text
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 2

                MainButton {
                    text: qsTr("Look once more")
                    enabled: page.hold.whyNot === ""
                    Accessible.description: page.hold.whyNot
                    onClicked: page.hold.review()
                }

                Say {
                    width: Math.min(implicitWidth, parent.width)
                    text: page.hold.whyNot
                    color: Theme.brass
                }
            }
        }

        Column {
            width: parent.width
            visible: page.hold.reviewing
            spacing: Theme.space * 1.5

            Words {
                width: parent.width
                text: page.hold.lifting ? qsTr("%1 may practise again.").arg(page.hold.name)
                                        : qsTr("%1 stops: %2.").arg(page.hold.name).arg(page.hold.what)
                font.bold: true
            }

            Say {
                width: parent.width
                text: qsTr("They will read: \"%1\"").arg(page.hold.reason)
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 2

                BaseButton {
                    text: page.hold.sending ? qsTr("Sending …") : page.hold.lifting ? qsTr("Lift the hold") : qsTr("Send hold order")
                    least: Theme.target
                    ground: page.hold.lifting ? Theme.rail : Theme.stop
                    edge: ground
                    words: Theme.paper
                    mark: page.hold.lifting ? -1 : Mark.Octagon
                    enabled: !page.hold.sending
                    onClicked: page.hold.send()
                }

                SmallButton {
                    text: qsTr("Change it")
                    enabled: !page.hold.sending
                    onClicked: page.hold.change()
                }
            }
        }

        Problem {
            width: parent.width
            text: page.hold.problem
        }
    }
}
