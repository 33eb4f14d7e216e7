import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: qsTr("Go on where you stopped?")

    Words {
        width: parent.width
        text: page.models.today.unfinishedWords
    }

    Words {
        width: parent.width
        text: qsTr("All you did is kept. If you go on, the step you were in is done again from its start.")
    }

    Notice {
        width: parent.width
        visible: page.models.today.error !== ""
        kind: Notice.Attention
        title: page.models.today.error
    }

    actions: [
        PrimaryButton {
            width: parent.width
            text: qsTr("Go on")
            onClicked: page.models.today.goOn()
        },
        SecondaryButton {
            width: parent.width
            text: qsTr("Close it")
            onClicked: page.models.today.closeIt()
        }
    ]
}
