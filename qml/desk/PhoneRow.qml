// One phone of a person: since when, when last heard from, and taking its access away after one more look.
import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: row

    required property var phone
    required property bool mayRevoke
    required property bool sure
    required property bool busy

    signal asked
    signal refused
    signal confirmed

    spacing: Theme.space / 2
    bottomPadding: Theme.space

    Words {
        width: parent.width
        text: row.phone.revoked ? qsTr("%1, access taken away").arg(row.phone.name) : row.phone.name
        font.bold: !row.phone.revoked
        color: row.phone.revoked ? Theme.soft : Theme.ink
    }

    Say {
        width: parent.width
        text: row.phone.contact === "" ? qsTr("Paired %1, never heard from since").arg(row.phone.paired)
            : row.phone.version === "" ? qsTr("Paired %1, last heard from %2").arg(row.phone.paired).arg(row.phone.contact)
                                       : qsTr("Paired %1, last heard from %2, version %3").arg(row.phone.paired).arg(row.phone.contact)
                .arg(row.phone.version)
        color: Theme.soft
    }

    SmallButton {
        visible: row.mayRevoke && !row.phone.revoked && !row.sure
        text: qsTr("Take access away")
        Accessible.name: qsTr("Take access away from %1").arg(row.phone.name)
        enabled: !row.busy
        onClicked: row.asked()
    }

    Notice {
        width: parent.width
        visible: row.sure
        kind: Notice.Attention
        title: qsTr("Take access away from %1?").arg(row.phone.name)
        text: qsTr("From this moment it gets nothing from the clinic, also no hold order and no message, and the clinic gets nothing from it. The programme stays on it. What it has not sent yet stays on it too, and comes when the phone is paired again. To give access back, pair it anew.")

        Flow {
            width: parent.width
            spacing: Theme.space

            SmallButton {
                text: qsTr("Yes, this phone is out")
                words: Theme.stop
                edge: Theme.stop
                enabled: !row.busy
                onClicked: row.confirmed()
            }

            SmallButton {
                text: qsTr("No, leave it")
                onClicked: row.refused()
            }
        }
    }
}
