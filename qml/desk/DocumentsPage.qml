// What of a person's record leaves the desk: which document, what is in it, where it goes. Made beside the screen.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property DocumentsModel documents: desk.documents

    Shortcut {
        sequences: ["Ctrl+S"]
        enabled: page.documents.whyNot === "" && !page.documents.making
        onActivated: page.documents.make()
    }

    Component.onCompleted: which.forceActiveFocus(Qt.TabFocusReason)

    Pane {
        id: sheet

        width: Math.min(parent.width, 900 * Math.min(1.6, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("Documents of %1").arg(page.documents.name)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        FocusScope {
            id: which

            width: parent.width
            height: strip.implicitHeight

            ChipStrip {
                id: strip

                width: parent.width
                focus: true
                label: qsTr("Which document")
                options: page.documents.kinds
                value: page.documents.kind
                onPicked: value => page.documents.kind = value
            }
        }

        Say {
            width: parent.width
            text: page.documents.about
            color: Theme.soft
        }

        ChipStrip {
            width: parent.width
            visible: page.documents.hasLayout
            label: qsTr("Layout")
            options: page.documents.layouts
            value: page.documents.layout
            onPicked: value => page.documents.layout = value
        }

        ChipStrip {
            width: parent.width
            visible: page.documents.hasLanguage
            label: qsTr("Language")
            options: page.documents.languages
            value: page.documents.language
            onPicked: value => page.documents.language = value
        }

        ChipStrip {
            width: parent.width
            visible: page.documents.hasPaper
            label: qsTr("Paper")
            options: page.documents.papers
            value: page.documents.paper
            onPicked: value => page.documents.paper = value
        }

        Flow {
            width: parent.width
            visible: page.documents.hasDays
            spacing: Theme.space * 1.5

            LineField {
                width: Math.min(parent.width, 220 * Theme.scale)
                label: qsTr("From day")
                hint: qsTr("2026-11-25")
                problem: page.documents.firstDayProblem
                text: page.documents.firstDay
                onEdited: text => page.documents.firstDay = text
            }

            LineField {
                width: Math.min(parent.width, 220 * Theme.scale)
                label: qsTr("To day")
                hint: qsTr("2026-11-25")
                problem: page.documents.lastDayProblem
                text: page.documents.lastDay
                onEdited: text => page.documents.lastDay = text
            }
        }

        ChipStrip {
            width: parent.width
            visible: page.documents.extras.length > 0
            label: qsTr("Also")
            many: true
            options: page.documents.extras
            chosen: page.documents.chosenExtras
            onPicked: value => page.documents.toggleExtra(value)
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            LineField {
                id: folder

                width: Math.min(parent.width, 620 * Theme.scale)
                label: qsTr("Folder")
                name: qsTr("Folder that the document goes into")
                text: page.documents.folder
                onEdited: text => page.documents.folder = text

                DropArea {
                    anchors.fill: parent
                    onDropped: drop => {
                        if (drop.hasUrls)
                            page.documents.folder = String(drop.urls[0]);
                    }
                }
            }

            SmallButton {
                text: qsTr("Choose a folder …")
                onClicked: {
                    chooser.source = "";
                    chooser.setSource("FolderChooser.qml", {
                        "documents": page.documents
                    });
                }
            }
        }

        Loader {
            id: chooser
        }

        Flow {
            width: parent.width
            spacing: Theme.space * 2

            MainButton {
                text: qsTr("Make and save")
                enabled: page.documents.whyNot === "" && !page.documents.making
                Accessible.description: page.documents.whyNot
                onClicked: page.documents.make()
            }

            SmallButton {
                visible: page.documents.making
                text: qsTr("Give it up")
                Accessible.name: qsTr("Give up making this document")
                onClicked: page.documents.cancel()
            }

            Say {
                width: Math.min(implicitWidth, parent.width)
                text: page.documents.whyNot
                color: Theme.brass
            }
        }

        Column {
            width: parent.width
            visible: page.documents.making
            spacing: Theme.space / 2

            Say {
                width: parent.width
                text: page.documents.makingWords
            }

            T.ProgressBar {
                id: bar

                width: Math.min(parent.width, 420)
                height: 12
                from: 0
                to: 100
                value: page.documents.percent
                Accessible.role: Accessible.ProgressBar
                Accessible.name: page.documents.makingWords
                background: Rectangle {
                    radius: Theme.radius
                    color: Theme.groove
                }
                contentItem: Item {
                    Rectangle {
                        width: bar.visualPosition * parent.width
                        height: parent.height
                        radius: Theme.radius
                        color: Theme.rail
                    }
                }
            }

            Say {
                width: parent.width
                text: qsTr("You can go on with something else meanwhile.")
                color: Theme.soft
            }
        }

        Problem {
            width: parent.width
            text: page.documents.problem
        }

        Column {
            width: parent.width
            visible: page.documents.made.length > 0
            spacing: Theme.space / 2

            Heading {
                width: parent.width
                text: qsTr("Saved just now")
            }

            Repeater {
                model: page.documents.made

                Say {
                    required property string modelData

                    width: sheet.inner
                    text: modelData
                    wrapMode: Text.WrapAnywhere
                }
            }
        }

        Say {
            width: parent.width
            text: qsTr("Each document is written into the clinic's audit trail before it is there.")
            color: Theme.soft
        }
    }

    // What is typed breaks a binding; a folder that was chosen sets it anew.
    Connections {
        target: page.documents

        function onChanged(): void {
            if (!folder.editing && folder.text !== page.documents.folder)
                folder.text = page.documents.folder;
        }
    }
}
