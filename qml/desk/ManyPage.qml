// One message, photo, clip or hold order to several people: written once, looked at once more, and then who has it.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property ManyModel many: desk.many

    Shortcut {
        sequences: ["F5"]
        enabled: page.many.begun
        onActivated: page.many.look()
    }

    Column {
        id: upper

        x: Math.max(Theme.edge, (page.width - width) / 2)
        y: Theme.edge
        width: Math.min(page.width - 2 * Theme.edge, 900 * Math.min(1.6, Theme.scale))
        spacing: Theme.space

        Words {
            width: parent.width
            text: page.many.count === 1 ? (page.many.hold ? qsTr("Hold order for one person") : qsTr("Message to one person")) : page.many.hold ? qsTr("Hold order for %L1 people").arg(page.many.count) : qsTr("Message to %L1 people").arg(page.many.count)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Say {
            width: parent.width
            visible: !page.many.begun
            text: page.many.names
        }

        Say {
            width: parent.width
            visible: page.many.begun
            text: page.many.progress
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }

        Flow {
            width: parent.width
            visible: page.many.begun
            spacing: Theme.space

            SmallButton {
                visible: page.many.sending
                text: qsTr("Stop sending")
                onClicked: page.many.stop()
            }

            SmallButton {
                visible: !page.many.sending && page.many.failures > 0
                text: qsTr("Send to those it did not reach (%L1)").arg(page.many.failures)
                words: Theme.rail
                edge: Theme.rail
                onClicked: page.many.send()
            }

            SmallButton {
                text: qsTr("Look again")
                Accessible.name: qsTr("Look again how far it got")
                onClicked: page.many.look()
            }
        }
    }

    Pane {
        id: form

        anchors.top: upper.bottom
        anchors.bottom: parent.bottom
        x: upper.x - padding
        width: upper.width + 2 * padding
        visible: !page.many.begun
        padding: Theme.edge / 2

        Column {
            width: parent.width
            visible: !page.many.reviewing
            spacing: Theme.space * 1.5

            ChipStrip {
                width: parent.width
                label: qsTr("What")
                options: [
                    {
                        "value": false,
                        "text": qsTr("Message")
                    },
                    {
                        "value": true,
                        "text": qsTr("Hold order: stop everything now")
                    }
                ]
                value: page.many.hold
                onPicked: value => page.many.hold = value
            }

            Say {
                width: parent.width
                visible: page.many.hold
                text: qsTr("A hold stops a practice under way as soon as it arrives, and lets none begin. It stays until you lift it for each of them.")
            }

            AreaField {
                width: parent.width
                label: page.many.hold ? qsTr("Why, in words for them") : qsTr("Your words to them")
                name: page.many.hold ? qsTr("Reason for the people") : label
                hint: qsTr("Everybody reads the same words: no names, nothing about one of them")
                lines: 4
                text: page.many.text
                onEdited: text => page.many.text = text
            }

            Chip {
                visible: !page.many.hold
                width: Math.min(implicitWidth, parent.width)
                text: qsTr("Urgent: must be seen before the next practice")
                many: true
                chosen: page.many.urgent
                onClicked: page.many.urgent = !chosen
            }

            Column {
                width: parent.width
                visible: !page.many.hold
                spacing: Theme.space

                LineField {
                    id: path

                    width: parent.width
                    visible: page.many.mediaName === ""
                    label: qsTr("Photo or clip (may be left out)")
                    hint: qsTr("Path of a file on this computer, or drop it here")
                    problem: page.many.mediaProblem
                    onAccepted: page.many.attach(path.text)

                    DropArea {
                        anchors.fill: parent
                        onDropped: drop => {
                            if (drop.hasUrls)
                                page.many.attach(String(drop.urls[0]));
                        }
                    }
                }

                Flow {
                    width: parent.width
                    spacing: Theme.space

                    SmallButton {
                        visible: page.many.mediaName === ""
                        text: qsTr("Take this file")
                        enabled: path.text.trim() !== ""
                        onClicked: page.many.attach(path.text)
                    }

                    SmallButton {
                        visible: page.many.mediaName === ""
                        text: qsTr("Choose a file …")
                        Accessible.name: qsTr("Choose a photo or a clip")
                        onClicked: {
                            chooser.source = "";
                            chooser.setSource("MessageFileDialog.qml", {
                                "many": page.many
                            });
                        }
                    }

                    Say {
                        height: Math.max(36, implicitHeight)
                        verticalAlignment: Text.AlignVCenter
                        visible: page.many.mediaName !== ""
                        text: page.many.isClip ? qsTr("Clip: %1").arg(page.many.mediaName) : qsTr("Photo: %1").arg(page.many.mediaName)
                    }

                    SmallButton {
                        visible: page.many.mediaName !== ""
                        text: qsTr("Take it out")
                        Accessible.name: qsTr("Take the photo or the clip out")
                        onClicked: page.many.detach()
                    }
                }

                Loader {
                    id: chooser
                }

                Image {
                    width: Math.min(parent.width, 320, implicitWidth)
                    visible: page.many.photo !== ""
                    fillMode: Image.PreserveAspectFit
                    source: page.many.photo
                    Accessible.role: Accessible.Graphic
                    Accessible.name: page.many.mediaWords
                }

                AreaField {
                    width: parent.width
                    visible: page.many.mediaName !== ""
                    label: page.many.isClip ? qsTr("What the clip shows") : qsTr("What the photo shows")
                    hint: qsTr("One sentence, for who does not see it. Needed.")
                    lines: 1
                    text: page.many.mediaWords
                    onEdited: text => page.many.mediaWords = text
                }

                AreaField {
                    width: parent.width
                    visible: page.many.isClip
                    label: qsTr("What is said in the clip")
                    hint: qsTr("Word for word, for who does not hear it. Empty when nothing is said.")
                    text: page.many.captions
                    onEdited: text => page.many.captions = text
                }
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 2

                MainButton {
                    text: qsTr("Look once more")
                    enabled: page.many.whyNot === ""
                    Accessible.description: page.many.whyNot
                    onClicked: page.many.review()
                }

                Say {
                    width: Math.min(implicitWidth, parent.width)
                    text: page.many.whyNot
                    color: Theme.brass
                }
            }
        }

        Column {
            width: parent.width
            visible: page.many.reviewing
            spacing: Theme.space * 1.5

            Words {
                width: parent.width
                text: page.many.hold ? qsTr("%L1 people stop everything.").arg(page.many.count) : page.many.urgent ? qsTr("Urgent: nobody can begin a practice before it is seen.") : qsTr("Each of them gets it as a message of yours.")
                font.bold: true
            }

            Say {
                width: parent.width
                text: qsTr("They will read: \"%1\"").arg(page.many.text)
            }

            Say {
                width: parent.width
                visible: page.many.mediaName !== "" && !page.many.hold
                text: page.many.isClip ? qsTr("With the clip: %1").arg(page.many.mediaWords) : qsTr("With the photo: %1").arg(page.many.mediaWords)
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 2

                BaseButton {
                    text: page.many.hold ? qsTr("Send %L1 hold orders").arg(page.many.count) : qsTr("Send to %L1").arg(page.many.count)
                    least: Theme.target
                    ground: page.many.hold ? Theme.stop : Theme.rail
                    edge: ground
                    words: Theme.paper
                    mark: page.many.hold ? Mark.Octagon : -1
                    onClicked: page.many.send()
                }

                SmallButton {
                    text: qsTr("Change it")
                    onClicked: page.many.change()
                }
            }
        }
    }

    ListView {
        id: list

        anchors.top: upper.bottom
        anchors.topMargin: Theme.space
        anchors.bottom: parent.bottom
        x: upper.x
        width: upper.width
        visible: page.many.begun
        clip: true
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        model: page.many.begun ? page.many.people : []
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Who has it, those first who do not")
        T.ScrollBar.vertical: ThinBar {}

        delegate: Item {
            id: one

            required property var modelData
            readonly property bool bad: modelData.state === ManyModel.Failed

            width: list.width
            height: Math.max(36, lines.implicitHeight + Theme.space)
            Accessible.role: Accessible.ListItem
            Accessible.name: qsTr("%1: %2").arg(modelData.name).arg(modelData.words)

            Mark {
                id: sign

                y: Theme.space / 2 + 3
                width: Theme.small
                height: width
                shape: one.bad ? Mark.Triangle : one.modelData.state === ManyModel.Seen ? Mark.Tick : Mark.Square
                colour: one.bad ? Theme.stop : one.modelData.state === ManyModel.Seen ? Theme.good : Theme.brass
                inner: Theme.paper
            }

            Column {
                id: lines

                x: sign.width + Theme.space
                y: Theme.space / 2
                width: parent.width - x - Theme.space

                Say {
                    width: parent.width
                    text: qsTr("%1 · %2").arg(one.modelData.name).arg(one.modelData.limbs)
                    font.bold: true
                    Accessible.ignored: true
                }

                Say {
                    width: parent.width
                    visible: text !== ""
                    text: one.modelData.words
                    color: one.bad ? Theme.stop : Theme.ink
                    Accessible.ignored: true
                }
            }
        }
    }
}
