// Whom to call: the emergency number first where it comes first, then the clinic. Each number is shown, and
// pressing it dials where this device can.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Column {
    id: who

    required property HomeModels models
    property bool emergencyFirst: false
    property bool cannotDial: false

    function dial(number: string): void {
        cannotDial = !Qt.openUrlExternally("tel:" + number.replace(/[^0-9+]/g, ""));
    }

    spacing: Theme.space * 1.5

    component Emergency: Notice {
        kind: who.emergencyFirst ? Notice.Stop : Notice.Note
        title: who.emergencyFirst ? qsTr("Call the emergency number now") : qsTr("Emergency number")

        Words {
            width: parent.width
            text: who.models.app.emergencyNumber
            font.pixelSize: who.emergencyFirst ? Math.max(Theme.title, 44) : Theme.title
            font.bold: true
        }

        SecondaryButton {
            width: parent.width
            ground: who.emergencyFirst ? Theme.stop : Theme.sheet
            words: who.emergencyFirst ? Theme.paper : Theme.stop
            edge: Theme.stop
            text: qsTr("Call %1").arg(who.models.app.emergencyNumber)
            onClicked: who.dial(who.models.app.emergencyNumber)
        }
    }

    Emergency {
        width: parent.width
        visible: who.emergencyFirst && who.models.app.emergencyNumber !== ""
    }

    Notice {
        width: parent.width
        visible: who.models.app.clinicName !== ""
        title: who.models.app.clinicName

        Words {
            width: parent.width
            visible: text !== ""
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

        SecondaryButton {
            width: parent.width
            visible: who.models.app.clinicPhone !== ""
            text: qsTr("Call the clinic")
            onClicked: who.dial(who.models.app.clinicPhone)
        }
    }

    Emergency {
        width: parent.width
        visible: !who.emergencyFirst && who.models.app.emergencyNumber !== ""
    }

    Words {
        width: parent.width
        visible: who.cannotDial
        text: qsTr("This device cannot dial. Take a phone and dial the number above.")
        color: Theme.stop
        font.bold: true
    }

    Words {
        width: parent.width
        visible: who.models.app.clinicName === ""
        text: qsTr("This phone does not know your clinic yet. In danger, call your local emergency number.")
    }
}
