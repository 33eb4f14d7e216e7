// One's own account: the second factor and the password. What the clinic asks for first is asked for here.
import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property OwnAccountModel own: desk.ownAccount
    readonly property bool wide: width >= 900 * Theme.scale

    function change(): void {
        page.own.changePassword(oldPassword.text, newPassword.text, again.text);
    }

    function confirm(): void {
        page.own.confirmFactor(code.text);
        code.text = "";
    }

    function begin(): void {
        page.own.beginFactor(factorPassword.text);
        factorPassword.text = "";
    }

    Component.onCompleted: {
        if (page.own.mustChangePassword)
            oldPassword.takeFocus();
        else if (!page.own.hasFactor)
            factorPassword.takeFocus();
    }

    Connections {
        target: page.own

        function onPasswordSet(): void {
            oldPassword.text = "";
            newPassword.text = "";
            again.text = "";
        }
    }

    Pane {
        width: Math.min(parent.width, 960 * Math.min(1.5, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("My account")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Say {
            width: parent.width
            text: qsTr("%1 · user name %2 · %3").arg(page.desk.therapistName).arg(page.own.userName).arg(page.own.roleWords)
            color: Theme.soft
        }

        Notice {
            width: parent.width
            visible: page.own.mustChangePassword || page.own.mustEnrol
            kind: Notice.Attention
            title: page.own.mustChangePassword ? qsTr("First choose a password of your own") : qsTr("First set up a second factor")
            text: page.own.mustChangePassword
                ? qsTr("The first password was made for you and somebody else has seen it. Nothing else opens before it is changed.")
                : qsTr("This clinic asks everybody for one. Nothing else opens before it is set up.")
        }

        Problem {
            width: parent.width
            text: page.own.waitWords
        }

        Column {
            id: passwordPart

            width: parent.width
            spacing: Theme.space

            Heading {
                width: parent.width
                text: qsTr("Password")
            }

            Say {
                width: parent.width
                text: qsTr("At least 8 characters, better 15 or more: some words in a row are easy to keep in mind. Your other sign-ins end when it is changed.")
            }

            LineField {
                id: oldPassword

                width: Math.min(parent.width, 460 * Theme.scale)
                label: page.own.mustChangePassword ? qsTr("First password") : qsTr("Old password")
                name: qsTr("Old password")
                secret: true
                onAccepted: newPassword.takeFocus()
            }

            LineField {
                id: newPassword

                width: Math.min(parent.width, 460 * Theme.scale)
                label: qsTr("New password")
                secret: true
                onAccepted: again.takeFocus()
            }

            LineField {
                id: again

                width: Math.min(parent.width, 460 * Theme.scale)
                label: qsTr("New password once more")
                secret: true
                problem: page.own.passwordProblem
                onAccepted: page.change()
            }

            SmallButton {
                text: qsTr("Change the password")
                words: Theme.rail
                edge: Theme.rail
                enabled: !page.own.busy
                onClicked: page.change()
            }
        }

        Column {
            width: parent.width
            visible: !page.own.mustChangePassword
            spacing: Theme.space

            Heading {
                width: parent.width
                topPadding: Theme.space
                text: qsTr("Second factor")
            }

            Row {
                width: parent.width
                spacing: Theme.space

                Mark {
                    y: 3
                    width: Theme.small
                    height: width
                    shape: page.own.hasFactor ? Mark.Tick : Mark.Square
                    colour: page.own.hasFactor ? Theme.good : Theme.soft
                    inner: Theme.paper
                }

                Say {
                    width: parent.width - Theme.small - Theme.space
                    text: page.own.hasFactor
                        ? qsTr("In use. Each sign-in asks for a code of your code app. If you lose the device, a lead or an administrator takes the second factor away, or whoever runs the hub; then you set up a new one.")
                        : qsTr("Not in use. With it, who learns your password still cannot sign in: each sign-in also asks for six digits that an app on your phone shows. Any app for time-based codes will do.")
                }
            }

            Column {
                width: parent.width
                visible: !page.own.hasFactor && page.own.uri === ""
                spacing: Theme.space

                LineField {
                    id: factorPassword

                    width: Math.min(parent.width, 460 * Theme.scale)
                    label: qsTr("Your password, once more")
                    name: qsTr("Password for the second factor")
                    secret: true
                    problem: page.own.factorProblem
                    onAccepted: page.begin()
                }

                SmallButton {
                    text: qsTr("Set up a second factor")
                    words: Theme.rail
                    edge: Theme.rail
                    enabled: !page.own.busy
                    onClicked: page.begin()
                }
            }

            Flow {
                id: enrol

                width: parent.width
                visible: page.own.uri !== ""
                spacing: Theme.edge * 1.5

                QrCode {
                    width: Math.min(300, enrol.width)
                    height: width
                    text: page.own.uri
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Square code to scan with your code app")
                }

                Column {
                    width: page.wide ? enrol.width - 300 - Theme.edge * 1.5 : enrol.width
                    spacing: Theme.space

                    Say {
                        width: parent.width
                        text: qsTr("1. In the code app, add an account and scan the square, or type this key:")
                    }

                    Words {
                        width: parent.width
                        text: page.own.secretText
                        font.bold: true
                        Accessible.name: qsTr("Key to type: %1").arg(text)
                    }

                    Say {
                        width: parent.width
                        text: qsTr("It is shown only now, and belongs to you alone.")
                        color: Theme.soft
                    }

                    Say {
                        width: parent.width
                        text: qsTr("2. Type the six digits that the app then shows:")
                    }

                    LineField {
                        id: code

                        width: Math.min(parent.width, 260 * Theme.scale)
                        label: qsTr("Code")
                        name: qsTr("First code")
                        hint: qsTr("six digits")
                        problem: page.own.codeProblem
                        inputMethodHints: Qt.ImhDigitsOnly
                        maximumLength: 6
                        onVisibleChanged: {
                            if (visible)
                                takeFocus();
                        }
                        onAccepted: page.confirm()
                    }

                    SmallButton {
                        text: qsTr("Use this second factor")
                        words: Theme.rail
                        edge: Theme.rail
                        enabled: !page.own.busy
                        onClicked: page.confirm()
                    }
                }
            }
        }
    }
}
