import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    over: models.practice.entryPlace
    title: models.practice.entryTitle

    onTitleChanged: focusTitle()
    Component.onDestruction: models.clips.stop()

    PracticeError {
        width: parent.width
        models: page.models
    }

    Words {
        width: parent.width
        text: qsTr("%1, %2").arg(page.models.practice.entryDose).arg(page.models.practice.prosthesis)
        color: Theme.soft
    }

    Words {
        width: parent.width
        visible: page.models.practice.entryOtherLanguage
        text: qsTr("These words are not in your language yet.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }

    FigurePane {
        width: Math.min(parent.width, 400)
        height: width * 0.72
        source: page.models.practice.entryFigure
    }

    Image {
        width: Math.min(parent.width, 400)
        visible: page.models.practice.entryPicture !== ""
        fillMode: Image.PreserveAspectFit
        source: page.models.practice.entryPicture
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Photo of the exercise, from your clinic")
    }

    EntryMedia {
        width: parent.width
        media: page.models.practice.entryMedia
        player: page.models.clips
    }

    Notice {
        width: parent.width
        title: qsTr("Support")
        text: page.models.practice.support
    }

    Notice {
        width: parent.width
        visible: page.models.practice.entryCaution !== ""
        kind: Notice.Attention
        title: qsTr("Take care")
        text: page.models.practice.entryCaution
    }

    Notice {
        width: parent.width
        visible: page.models.player.soundNote !== ""
        kind: Notice.Attention
        title: page.models.player.soundNote
    }

    BulletList {
        width: parent.width
        heading: qsTr("Have ready")
        lines: page.models.practice.things
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Words {
            width: parent.width
            text: qsTr("How you begin")
            font.bold: true
        }

        Words {
            width: parent.width
            text: page.models.practice.entryStart
        }
    }

    Notice {
        width: parent.width
        visible: page.models.practice.entryNote !== ""
        title: qsTr("From your therapist")
        text: page.models.practice.entryNote
    }

    Words {
        width: parent.width
        text: qsTr("Then put the phone where you hear it. You need not look at it or touch it.")
        color: Theme.soft
    }

    SecondaryButton {
        width: parent.width
        text: qsTr("Leave this exercise out")
        onClicked: page.models.app.show(AppModel.LeaveOut)
    }

    SecondaryButton {
        width: parent.width
        text: qsTr("Finish for today")
        onClicked: page.models.practice.finishNow()
    }

    actions: PrimaryButton {
        width: parent.width
        text: qsTr("Support is there: start")
        onClicked: page.models.practice.confirmSupportAndStart()
    }
}
