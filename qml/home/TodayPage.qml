pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: models.today.heading
    over: models.today.day

    Component.onCompleted: models.today.shown()

    Connections {
        target: page.models.today

        function onChanged(): void {
            page.models.today.shown();
        }
    }

    Notice {
        width: parent.width
        visible: page.models.today.error !== ""
        kind: Notice.Attention
        title: page.models.today.error
    }

    Repeater {
        model: page.models.today.notices

        Notice {
            id: notice

            required property var modelData

            width: parent.width
            kind: modelData.kind
            title: modelData.title
            text: modelData.words

            Words {
                width: parent.width
                visible: notice.kind === Notice.Stop && page.models.app.clinicPhone !== ""
                font.bold: true
                text: qsTr("Questions? Call %1: %2").arg(page.models.app.clinicName).arg(page.models.app.clinicPhone)
            }

            SecondaryButton {
                anchors.left: parent.left
                width: Math.min(implicitWidth, parent.width)
                visible: notice.modelData.newCode ?? false
                text: qsTr("I have a new code")
                onClicked: page.models.app.show(AppModel.Pair)
            }

            SecondaryButton {
                anchors.left: parent.left
                width: Math.min(implicitWidth, parent.width)
                visible: notice.modelData.id !== ""
                text: qsTr("I have read this")
                onClicked: page.models.today.markRead(notice.modelData.id)
            }
        }
    }

    Notice {
        width: parent.width
        visible: page.models.programme.fresh
        kind: Notice.New
        title: qsTr("New: %1").arg(page.models.programme.title)
        text: page.models.programme.changes

        SecondaryButton {
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            text: qsTr("See what is new")
            onClicked: page.models.app.show(AppModel.Programme)
        }
    }

    RailList {
        width: parent.width
        visible: page.models.today.rows.length > 0
        rows: page.models.today.rows
        at: page.models.today.at
    }

    WearCard {
        width: parent.width
        visible: page.models.wear.planned
        models: page.models
    }

    BulletList {
        width: parent.width
        heading: qsTr("Have ready")
        lines: page.models.today.things
    }

    CardLinks {
        width: parent.width
        models: page.models
        heading: qsTr("To read today")
        cards: page.models.advice.today
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.models.today.whyNot
        font.bold: true
    }

    Words {
        width: parent.width
        text: page.models.today.contact
        color: Theme.soft
        font.pixelSize: Theme.small
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.models.reminders.problem
        color: Theme.soft
        font.pixelSize: Theme.small
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 1.5

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            visible: page.models.today.hasProgramme
            text: qsTr("My programme")
            onClicked: page.models.app.show(AppModel.Programme)
        }

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            visible: page.models.app.paired
            text: qsTr("How it goes")
            onClicked: page.models.app.show(AppModel.HowItGoes)
        }

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            visible: page.models.today.hasProgramme
            text: qsTr("I did this away from the phone")
            onClicked: page.models.app.show(AppModel.TellLater)
        }

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            text: qsTr("Settings")
            onClicked: page.models.app.show(AppModel.Settings)
        }
    }

    actions: PrimaryButton {
        width: parent.width
        visible: page.models.today.dueCount > 0
        enabled: page.models.today.mayStart
        text: qsTr("Start")
        onClicked: page.models.today.start()
    }
}
