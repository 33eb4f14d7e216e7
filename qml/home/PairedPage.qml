import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property bool compare: models.pair.mustCompare

    title: qsTr("Hello %1").arg(models.app.greetingName)

    Words {
        width: parent.width
        text: qsTr("This phone is now connected to %1.").arg(page.models.app.clinicName)
    }

    Column {
        width: parent.width
        visible: page.compare
        spacing: Theme.space

        Words {
            width: parent.width
            text: qsTr("Look at the clinic's screen. Does it show the same signs?")
            font.bold: true
        }

        Words {
            width: parent.width
            text: page.models.app.fingerprint
            font.pixelSize: Theme.title
            font.bold: true
        }
    }

    actions: [
        PrimaryButton {
            width: parent.width
            text: page.compare ? qsTr("Yes, the same") : qsTr("Go on")
            onClicked: page.models.app.back()
        },
        SecondaryButton {
            width: parent.width
            visible: page.compare
            text: qsTr("No, they differ")
            onClicked: page.models.settings.forgetClinic()
        }
    ]
}
