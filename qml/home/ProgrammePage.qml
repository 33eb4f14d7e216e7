pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: models.programme.title
    over: models.programme.signedBy
    canGoBack: true

    // Taken once: showing it makes it seen.
    property bool fresh: false

    Component.onCompleted: {
        fresh = models.programme.fresh;
        models.programme.shown();
    }
    Component.onDestruction: models.clips.stop()

    Notice {
        width: parent.width
        visible: page.models.programme.changes !== ""
        kind: page.fresh ? Notice.New : Notice.Note
        title: qsTr("What is new")
        text: page.models.programme.changes
    }

    Notice {
        width: parent.width
        visible: page.models.programme.advice !== ""
        title: qsTr("For all exercises")
        text: page.models.programme.advice
    }

    Notice {
        width: parent.width
        visible: page.models.wear.planned
        title: qsTr("Wearing time")
        text: page.models.wear.plan

        SecondaryButton {
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            text: qsTr("See and tell")
            onClicked: page.models.app.show(AppModel.Wear)
        }
    }

    Repeater {
        model: page.models.programme.entries

        Rectangle {
            id: card

            required property var modelData

            width: parent.width
            implicitHeight: column.implicitHeight + 2 * Theme.edge
            color: Theme.sheet
            radius: Theme.radius

            Column {
                id: column

                x: Theme.edge
                y: Theme.edge
                width: parent.width - 2 * Theme.edge
                spacing: Theme.space

                Heading {
                    width: parent.width
                    text: card.modelData.title
                }

                Words {
                    width: parent.width
                    visible: card.modelData.otherLanguage ?? false
                    text: qsTr("These words are not in your language yet.")
                    color: Theme.soft
                    font.pixelSize: Theme.small
                }

                Row {
                    id: stills

                    readonly property FigureSource figure: card.modelData.figure ?? null
                    readonly property int count: figure !== null ? figure.stills : 0

                    width: parent.width
                    visible: count > 0
                    spacing: Theme.space / 2

                    Repeater {
                        model: stills.count

                        FigureView {
                            required property int index

                            width: (stills.width - (stills.count - 1) * stills.spacing) / stills.count
                            height: Math.min(220, width / (stills.figure?.aspect ?? 1))
                            source: stills.figure
                            still: index
                            Accessible.ignored: true
                        }
                    }
                }

                Image {
                    width: Math.min(parent.width, 400)
                    visible: (card.modelData.picture ?? "") !== ""
                    fillMode: Image.PreserveAspectFit
                    source: card.modelData.picture ?? ""
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Photo of the exercise, from your clinic")
                }

                EntryMedia {
                    width: parent.width
                    media: card.modelData.media ?? ({})
                    player: page.models.clips
                }

                Words {
                    width: parent.width
                    text: card.modelData.dose + "\n" + card.modelData.rhythm + "\n" + qsTr("%1, %2").arg(card.modelData.hands).arg(card.modelData.prosthesis)
                }

                Words {
                    width: parent.width
                    visible: text !== ""
                    text: card.modelData.note !== "" ? qsTr("From your therapist: %1").arg(card.modelData.note) : ""
                    color: Theme.brass
                    font.bold: true
                }

                Words {
                    width: parent.width
                    visible: text !== ""
                    text: card.modelData.purpose ?? ""
                    color: Theme.soft
                }

                BulletList {
                    width: parent.width
                    heading: qsTr("How you begin")
                    lines: card.modelData.start ? [card.modelData.start] : []
                }

                BulletList {
                    width: parent.width
                    heading: qsTr("Done well")
                    lines: card.modelData.good ?? []
                }

                BulletList {
                    width: parent.width
                    heading: qsTr("Take care")
                    lines: card.modelData.cautions ?? []
                }

                BulletList {
                    width: parent.width
                    heading: qsTr("Stop if")
                    lines: card.modelData.stopIf ?? []
                }
            }
        }
    }

    SecondaryButton {
        width: Math.min(implicitWidth, parent.width)
        visible: page.models.today.hasProgramme
        text: qsTr("I did this away from the phone")
        onClicked: page.models.app.show(AppModel.TellLater)
    }

    CardLinks {
        width: parent.width
        models: page.models
        heading: qsTr("Advice")
        cards: page.models.advice.all
    }
}
