import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: qsTr("Connect this phone to your clinic")
    over: models.firstRun.running ? models.firstRun.place : ""
    // While the code is being spent there is no way back.
    canGoBack: !models.pair.busy && (models.app.paired || models.firstRun.canGoBack)

    Words {
        width: parent.width
        text: qsTr("The clinic shows you a square, and beside it an address and a code. Point the camera at the square, or type both. They work once.")
    }

    Notice {
        width: parent.width
        visible: page.models.pair.error !== ""
        kind: Notice.Attention
        title: page.models.pair.error
    }

    SecondaryButton {
        width: parent.width
        enabled: !page.models.pair.busy
        text: qsTr("Use the camera")
        onClicked: page.models.app.show(AppModel.Scan)
    }

    TextEntry {
        id: address

        width: parent.width
        label: qsTr("Address of the clinic")
        help: qsTr("For example clinic.example:7443")
        error: page.models.pair.addressError
        inputMethodHints: Qt.ImhUrlCharactersOnly | Qt.ImhNoAutoUppercase | Qt.ImhNoPredictiveText
        onTextChanged: page.models.pair.typedAddress = text
        Component.onCompleted: text = page.models.pair.typedAddress
        onAccepted: code.takeFocus()
    }

    TextEntry {
        id: code

        width: parent.width
        label: qsTr("Code")
        help: qsTr("8 letters and numbers")
        error: page.models.pair.codeError
        inputMethodHints: Qt.ImhPreferUppercase | Qt.ImhNoPredictiveText
        onTextChanged: page.models.pair.typedCode = text
        Component.onCompleted: text = page.models.pair.typedCode
        onAccepted: connectButton.clicked()
    }

    Heading {
        width: parent.width
        text: qsTr("Or paste the text of the QR code")
    }

    TextEntry {
        id: pasted

        width: parent.width
        label: qsTr("Text of the QR code")
        help: qsTr("It begins with newel:1")
    }

    SecondaryButton {
        width: parent.width
        enabled: pasted.text !== "" && !page.models.pair.busy
        text: qsTr("Connect with this text")
        onClicked: page.models.pair.pairText(pasted.text)
    }

    Words {
        width: parent.width
        color: Theme.soft
        text: qsTr("Newel is for people whose therapist has examined them and written them a programme. What it is and is not stands under Help.")
    }

    actions: PrimaryButton {
        id: connectButton

        width: parent.width
        enabled: !page.models.pair.busy
        text: page.models.pair.busy ? qsTr("Connecting …") : qsTr("Connect")
        onClicked: page.models.pair.pairTyped(address.text, code.text)
    }
}
