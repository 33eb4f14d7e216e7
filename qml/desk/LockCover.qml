// What covers a locked desk: whose it is, and the way back for them. Nothing of anybody's record shows.
import QtQuick
import Newel.Desk
import Newel.Parts

Rectangle {
    id: cover

    required property DeskModel desk
    readonly property DeskLock lock: desk.lock
    readonly property SignInTry attempt: lock.attempt
    property bool sure: false

    function enter(): void {
        cover.lock.unlock(password.text, code.text);
        code.text = "";
    }

    color: Theme.paper
    Component.onCompleted: password.takeFocus()

    // A press on the cover reaches nothing under it.
    MouseArea {
        anchors.fill: parent
    }

    Connections {
        target: cover.attempt

        function onChanged(): void {
            if (!cover.attempt.busy && !cover.attempt.needsCode && cover.attempt.problem !== "")
                password.text = "";
        }
    }

    Pane {
        width: Math.min(parent.width, 560 * Math.min(1.4, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("This desk is locked")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Words {
            width: parent.width
            text: qsTr("%1 is at work here. %2 Nothing that was written is lost.").arg(cover.lock.who).arg(cover.lock.reason)
        }

        LineField {
            id: password

            width: parent.width
            label: qsTr("Password of %1").arg(cover.lock.who)
            name: qsTr("Password")
            secret: true
            onAccepted: cover.enter()
        }

        LineField {
            id: code

            width: parent.width
            visible: cover.attempt.needsCode
            label: qsTr("Code of the second factor")
            hint: qsTr("six digits, from your code app")
            problem: cover.attempt.codeProblem
            inputMethodHints: Qt.ImhDigitsOnly
            maximumLength: 6
            onVisibleChanged: {
                text = "";
                if (visible)
                    takeFocus();
            }
            onAccepted: cover.enter()
        }

        Problem {
            width: parent.width
            text: cover.attempt.problem
        }

        Problem {
            width: parent.width
            text: cover.attempt.waitWords
        }

        MainButton {
            text: cover.attempt.busy ? qsTr("Signing in …") : qsTr("Unlock")
            enabled: cover.attempt.mayTry
            onClicked: cover.enter()
        }

        Rectangle {
            width: parent.width
            height: 1
            color: Theme.groove
        }

        Say {
            width: parent.width
            visible: cover.sure
            text: qsTr("What is on the screens of %1 is closed. Programmes being written are kept on this desk; a message, a record or a reason that was not saved is lost.").arg(cover.lock.who)
            font.bold: true
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            SmallButton {
                text: cover.sure ? qsTr("Yes, close it") : qsTr("Somebody else signs in")
                words: cover.sure ? Theme.stop : Theme.ink
                edge: cover.sure ? Theme.stop : Theme.soft
                onClicked: {
                    if (cover.sure)
                        cover.lock.giveUp();
                    cover.sure = !cover.sure;
                }
            }

            SmallButton {
                visible: cover.sure
                text: qsTr("No, leave it")
                onClicked: cover.sure = false
            }
        }
    }
}
