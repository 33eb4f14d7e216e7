// One account being made or changed. What takes something away asks once more and says what it means.
import QtQuick
import Newel.Desk
import Newel.Parts

Pane {
    id: form

    required property AccountsModel accounts
    readonly property bool others: !accounts.isNew && !accounts.isMine
    property string sure: "" // which of the grave actions was pressed once

    readonly property var row: accounts.open
    readonly property string openId: row.id ?? ""
    readonly property string sureWords: sure === "off" ? qsTr("The account is signed out at once and cannot sign in until it is switched on again. What it has written stays.")
        : sure === "password" ? qsTr("The old password is no longer good, and the account is signed out. You get a first password to pass on.")
        : sure === "factor" ? qsTr("The account is signed out and then signs in with its password alone, until it sets up a new second factor. Make sure that it is really them who asks.")
                            : ""

    function act(): void {
        if (sure === "off")
            accounts.setOff(true);
        if (sure === "password")
            accounts.newFirstPassword();
        if (sure === "factor")
            accounts.takeFactor();
        sure = "";
    }

    color: Theme.dark ? "transparent" : Qt.darker(Theme.paper, 1.02)
    onVisibleChanged: sure = ""
    onOpenIdChanged: sure = ""

    Heading {
        width: parent.width
        text: form.accounts.isNew ? qsTr("New account") : qsTr("Account of %1").arg(form.row.name)
    }

    Notice {
        width: parent.width
        visible: form.accounts.firstPassword !== ""
        kind: Notice.New
        title: form.accounts.firstPassword
        text: form.accounts.firstPasswordWords
        Accessible.name: qsTr("First password: %1").arg(form.accounts.firstPassword)
    }

    Say {
        width: parent.width
        visible: form.accounts.isMine
        text: qsTr("This is your own account. Nobody changes their own role here, so that somebody who may is always left; ask a colleague. Password and second factor are under My account.")
    }

    Column {
        width: parent.width
        visible: !form.accounts.isMine
        spacing: Theme.space * 1.5

        LineField {
            width: parent.width
            visible: form.accounts.isNew
            label: qsTr("User name")
            name: qsTr("User name of the account")
            hint: qsTr("small letters, digits, dots: t.sample")
            problem: form.accounts.userNameProblem
            text: form.accounts.userName
            maximumLength: 60
            onEdited: text => form.accounts.userName = text
        }

        LineField {
            width: parent.width
            label: qsTr("Name that colleagues see")
            problem: form.accounts.displayNameProblem
            text: form.accounts.displayName
            maximumLength: 100
            onEdited: text => form.accounts.displayName = text
        }

        ChipStrip {
            width: parent.width
            label: qsTr("Role")
            options: form.accounts.roles
            value: form.accounts.role
            onPicked: value => form.accounts.role = value
        }

        Say {
            width: parent.width
            text: qsTr("Therapist: their own people. Lead: everybody's, and this page. Administrator: accounts, settings and phones, no records. Auditor: looks at everything, changes nothing.")
            color: Theme.soft
        }

        Problem {
            width: parent.width
            text: form.accounts.problem
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            MainButton {
                text: form.accounts.busy ? qsTr("Saving …") : form.accounts.isNew ? qsTr("Make the account") : qsTr("Save the account")
                enabled: !form.accounts.busy
                onClicked: form.accounts.save()
            }

            SmallButton {
                height: Theme.target
                text: qsTr("Close")
                Accessible.name: qsTr("Close the account")
                onClicked: form.accounts.close()
            }
        }
    }

    SmallButton {
        visible: form.accounts.isMine
        text: qsTr("Close")
        Accessible.name: qsTr("Close the account")
        onClicked: form.accounts.close()
    }

    Column {
        width: parent.width
        visible: form.others
        spacing: Theme.space

        Rectangle {
            width: parent.width
            height: 1
            color: Theme.groove
        }

        Flow {
            width: parent.width
            visible: form.sure === ""
            spacing: Theme.space

            SmallButton {
                visible: form.row.off === true
                text: qsTr("Switch on")
                Accessible.name: qsTr("Switch the account on")
                enabled: !form.accounts.busy
                onClicked: form.accounts.setOff(false)
            }

            SmallButton {
                visible: form.row.off === false
                text: qsTr("Switch off")
                Accessible.name: qsTr("Switch the account off")
                words: Theme.stop
                enabled: !form.accounts.busy
                onClicked: form.sure = "off"
            }

            SmallButton {
                text: qsTr("New first password")
                enabled: !form.accounts.busy
                onClicked: form.sure = "password"
            }

            SmallButton {
                visible: form.row.factor === true
                text: qsTr("Take the second factor away")
                enabled: !form.accounts.busy
                onClicked: form.sure = "factor"
            }
        }

        Notice {
            width: parent.width
            visible: form.sure !== ""
            kind: Notice.Attention
            title: form.sure === "off" ? qsTr("Switch this account off?") : form.sure === "password" ? qsTr("Make a new first password?")
                                                                                                    : qsTr("Take the second factor away?")
            text: form.sureWords

            Flow {
                width: parent.width
                spacing: Theme.space

                SmallButton {
                    text: form.sure === "off" ? qsTr("Yes, switch it off") : form.sure === "password" ? qsTr("Yes, make one")
                                                                                                      : qsTr("Yes, take it away")
                    words: Theme.stop
                    edge: Theme.stop
                    onClicked: form.act()
                }

                SmallButton {
                    text: qsTr("No")
                    Accessible.name: qsTr("No, leave the account as it is")
                    onClicked: form.sure = ""
                }
            }
        }
    }
}
