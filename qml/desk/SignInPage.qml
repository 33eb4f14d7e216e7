// Where the hub is and who signs in. Passwords may be pasted; nothing is asked that the desk knows.
import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk

    readonly property SignInTry attempt: desk.signIn.attempt

    function enter(): void {
        page.desk.signIn.signIn(password.text, code.text);
        code.text = "";
    }

    // A password that was wrong is typed anew; one that was right waits for its code.
    Connections {
        target: page.attempt

        function onChanged(): void {
            if (page.attempt.busy || page.attempt.needsCode)
                return;
            if (page.attempt.problem !== "")
                password.text = "";
        }
    }

    Component.onCompleted: (page.desk.signIn.address === "" ? address : page.desk.signIn.userName === "" ? user : password).takeFocus()

    Pane {
        width: Math.min(parent.width, 560 * Math.min(1.4, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("Sign in to your clinic's hub")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Problem {
            width: parent.width
            text: page.attempt.problem
        }

        LineField {
            id: address

            width: parent.width
            label: qsTr("Hub address")
            hint: qsTr("for example hub.clinic.example:7443")
            problem: page.desk.signIn.addressProblem
            text: page.desk.signIn.address
            onEdited: text => page.desk.signIn.address = text
            onAccepted: page.enter()
        }

        LineField {
            width: parent.width
            label: qsTr("Hub fingerprint")
            hint: qsTr("64 letters and digits, from whoever runs the hub")
            problem: page.desk.signIn.fingerprintProblem
            text: page.desk.signIn.fingerprint
            onEdited: text => page.desk.signIn.fingerprint = text
            onAccepted: page.enter()
        }

        LineField {
            id: user

            width: parent.width
            label: qsTr("Name")
            name: qsTr("User name")
            text: page.desk.signIn.userName
            onEdited: text => page.desk.signIn.userName = text
            onAccepted: page.enter()
        }

        LineField {
            id: password

            width: parent.width
            label: qsTr("Password")
            secret: true
            onAccepted: page.enter()
        }

        LineField {
            id: code

            width: parent.width
            visible: page.attempt.needsCode
            label: qsTr("Code of the second factor")
            hint: qsTr("six digits, from your code app")
            problem: page.attempt.codeProblem
            inputMethodHints: Qt.ImhDigitsOnly
            maximumLength: 6
            onVisibleChanged: {
                text = "";
                if (visible)
                    takeFocus();
            }
            onAccepted: page.enter()
        }

        Problem {
            width: parent.width
            text: page.attempt.waitWords
        }

        MainButton {
            text: page.attempt.busy ? qsTr("Signing in …") : qsTr("Sign in")
            enabled: page.attempt.mayTry
            onClicked: page.enter()
        }

        Say {
            width: parent.width
            text: qsTr("The fingerprint proves that this is your clinic's hub. It is kept on this desk; your password is not.")
            color: Theme.soft
        }
    }
}
