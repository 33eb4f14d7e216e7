// Whom to call: the emergency number first where it comes first, then the clinic.
import QtQuick
import Newel.Home
import Newel.Parts

Column {
    id: who

    required property HomeModels models
    property bool emergencyFirst: false

    spacing: Theme.space * 1.5

    Notice {
        width: parent.width
        visible: who.models.app.emergencyNumber !== ""
        kind: who.emergencyFirst ? Notice.Stop : Notice.Note
        title: who.emergencyFirst ? qsTr("Call the emergency number now") : qsTr("Emergency number")

        Words {
            width: parent.width
            text: who.models.app.emergencyNumber
            font.pixelSize: who.emergencyFirst ? Math.max(Theme.title, 44) : Theme.title
            font.bold: true
        }
    }

    Notice {
        width: parent.width
        visible: who.models.app.clinicName !== ""
        title: who.models.app.clinicName

        Words {
            width: parent.width
            text: who.models.app.clinicPhone
            font.pixelSize: Theme.title
            font.bold: true
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: who.models.app.clinicHours
            color: Theme.soft
        }
    }

    Words {
        width: parent.width
        visible: who.models.app.clinicName === ""
        text: qsTr("This phone does not know your clinic yet. In danger, call your local emergency number.")
    }
}
