// "What they will see": the phone's own practice screen at one beat of the selected entry, and every beat in the
// words that the phone shows and says.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Column {
    id: pane

    required property DraftModel draft
    required property PreviewModel preview
    property real listHeight: 260

    readonly property var now: preview.facts
    readonly property real phoneWidth: 412  // dp, a common phone, from memory
    readonly property real phoneHeight: 780
    readonly property real zoom: Math.min(0.62, (width - 2) / phoneWidth)

    spacing: Theme.space

    Say {
        width: parent.width
        text: qsTr("What %1 will see, %2").arg(pane.draft.givenName).arg(pane.preview.language)
        color: Theme.soft
        visible: pane.preview.count > 0
    }

    Problem {
        width: parent.width
        text: pane.preview.problem
    }

    // The beats stand beside the phone where there is room, else below.
    Flow {
        width: parent.width
        spacing: Theme.space * 2

        Rectangle {
            id: phone

            width: Math.floor(pane.phoneWidth * pane.zoom) + 2
            height: Math.floor(pane.phoneHeight * pane.zoom) + 2
            visible: pane.preview.count > 0
            color: Theme.paper
            border.width: 1
            border.color: Theme.groove
            clip: true
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The phone's screen: %1 %2 %3").arg(pane.now.cue ?? "").arg(pane.now.number ?? "").arg(pane.now.numberOf ?? "")

            // A picture of the screen: nothing in it can be pressed or reached here.
            Item {
                x: 1
                y: 1
                width: pane.phoneWidth
                height: pane.phoneHeight
                scale: pane.zoom
                transformOrigin: Item.TopLeft

                PhoneScreen {
                    anchors.fill: parent
                    now: pane.preview.facts
                    labels: pane.preview.labels
                    figure: pane.preview.figure
                    rightToLeft: pane.preview.rightToLeft
                    textPercent: pane.preview.textPercent
                    dark: Theme.dark
                }

                MouseArea {
                    anchors.fill: parent
                    acceptedButtons: Qt.AllButtons
                }
            }
        }

        Column {
            id: side

            readonly property real beside: pane.width - phone.width - Theme.space * 2

            width: beside >= 280 * Theme.scale ? beside : pane.width
            spacing: Theme.space

            Flow {
                width: parent.width
                visible: pane.preview.count > 0
                spacing: Theme.space

                SmallButton {
                    least: 32
                    text: pane.preview.playing ? qsTr("Pause") : qsTr("Play")
                    Accessible.name: pane.preview.playing ? qsTr("Pause the preview") : qsTr("Play the preview in time")
                    onClicked: pane.preview.playing = !pane.preview.playing
                }

                SmallButton {
                    least: 32
                    text: qsTr("Before")
                    Accessible.name: qsTr("Beat before")
                    enabled: pane.preview.at > 0
                    onClicked: pane.preview.at -= 1
                }

                SmallButton {
                    least: 32
                    text: qsTr("Next")
                    Accessible.name: qsTr("Next beat")
                    enabled: pane.preview.at < pane.preview.count - 1
                    onClicked: pane.preview.at += 1
                }

                Say {
                    height: Math.max(32, implicitHeight)
                    verticalAlignment: Text.AlignVCenter
                    text: qsTr("%1 of %2").arg(pane.preview.at + 1).arg(pane.preview.count)
                    color: Theme.soft
                }
            }

            Say {
                width: parent.width
                visible: pane.preview.count > 0
                text: pane.preview.textWords
                color: Theme.soft
            }

            ChipStrip {
                width: parent.width
                visible: pane.preview.count > 0
                group: qsTr("Size of text on the phone")
                options: pane.preview.textSizes
                value: pane.preview.textPercent
                onPicked: value => pane.preview.textPercent = value
            }

            ListView {
                id: beats

                width: parent.width
                height: Math.max(pane.listHeight, side.beside === side.width ? phone.height - y : 0)
                visible: pane.preview.count > 0
                clip: true
                model: pane.preview
                currentIndex: pane.preview.at
                activeFocusOnTab: true
                keyNavigationEnabled: false
                boundsBehavior: Flickable.StopAtBounds
                highlightMoveDuration: 0
                Keys.onUpPressed: pane.preview.at -= 1
                Keys.onDownPressed: pane.preview.at += 1
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Every beat, as the phone shows it")
                T.ScrollBar.vertical: ThinBar {}

                FocusRing {
                    target: beats
                    anchors.margins: 0
                }

                delegate: T.AbstractButton {
                    id: beat

                    required property int index
                    required property string start
                    required property string words
                    required property string what

                    width: beats.width
                    implicitHeight: lines.implicitHeight + 6
                    focusPolicy: Qt.NoFocus
                    onClicked: pane.preview.at = index
                    Accessible.role: Accessible.ListItem
                    Accessible.name: qsTr("Beat %1: %2").arg(index + 1).arg(words)
                    Accessible.description: start + ", " + what

                    background: Rectangle {
                        color: beat.index === pane.preview.at ? Theme.sheet : "transparent"

                        Rectangle {
                            width: 3
                            height: parent.height
                            visible: beat.index === pane.preview.at
                            color: Theme.rail
                        }
                    }

                    Column {
                        id: lines

                        x: Theme.space
                        y: 3
                        width: parent.width - 2 * Theme.space

                        Say {
                            width: parent.width
                            text: beat.words
                            font.bold: beat.index === pane.preview.at
                            Accessible.ignored: true
                        }

                        Say {
                            width: parent.width
                            text: qsTr("%1 · %2").arg(beat.start).arg(beat.what)
                            color: Theme.soft
                            font.pixelSize: Math.round(Theme.small * 0.85)
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
}
