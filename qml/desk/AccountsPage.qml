// The clinic's accounts: who there is on one side, the one that is being written on the other.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property AccountsModel accounts: desk.accounts
    readonly property var openRow: accounts.open
    readonly property bool wide: width >= 900 * Theme.scale
    readonly property bool listShown: wide || !accounts.writing

    Shortcut {
        sequences: ["Ctrl+S"]
        enabled: page.accounts.writing && !page.accounts.isMine && !page.accounts.busy
        onActivated: page.accounts.save()
    }

    Pane {
        id: list

        width: page.wide ? Math.round(page.width * 0.5) : page.width
        height: page.height
        visible: page.listShown

        Words {
            width: parent.width
            text: qsTr("Accounts of this clinic")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            SmallButton {
                text: qsTr("New account")
                words: Theme.rail
                edge: Theme.rail
                onClicked: page.accounts.write("")
            }

            SmallButton {
                visible: !page.desk.maySeeRecords
                text: qsTr("Find a person")
                onClicked: page.desk.openFind()
            }

            SmallButton {
                visible: !page.desk.maySeeRecords
                text: qsTr("Clinic settings")
                onClicked: page.desk.openClinicSettings()
            }
        }

        Problem {
            width: parent.width
            visible: text !== "" && !page.accounts.writing
            text: page.accounts.problem
        }

        Repeater {
            model: page.accounts.accounts

            AccountRow {
                required property var modelData

                width: list.inner
                account: modelData
                chosen: page.accounts.writing && page.openRow.id === modelData.id
                onClicked: page.accounts.write(modelData.id)
            }
        }
    }

    AccountForm {
        x: page.wide ? list.width : 0
        width: page.wide ? page.width - list.width : page.width
        height: page.height
        visible: page.accounts.writing
        accounts: page.accounts
    }
}
