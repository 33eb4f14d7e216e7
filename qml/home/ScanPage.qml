// The camera, aimed at the square on the clinic's screen.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property ScanModel scan: models.scan

    title: qsTr("Point at the square")
    canGoBack: true
    Component.onCompleted: scan.begin()
    Component.onDestruction: scan.end()

    CameraView {
        width: parent.width
        height: Math.min(width, page.height * 0.4) // whole beside large words
        visible: page.scan.on
        scan: page.scan
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
    }

    Notice {
        width: parent.width
        visible: page.scan.whyNot !== ""
        kind: Notice.Attention
        title: page.scan.whyNot
    }

    Notice {
        width: parent.width
        visible: page.scan.otherSquare
        kind: Notice.Attention
        title: qsTr("This square is not from a clinic. Look for the one under “Pair a phone”.")
    }

    Words {
        width: parent.width
        visible: page.scan.on
        text: qsTr("Hold the phone so that the square on the clinic's screen is inside the frame. It is read by itself.")
    }

    Words {
        width: parent.width
        color: Theme.soft
        text: qsTr("Nothing that the camera sees is kept or sent.")
    }

    actions: SecondaryButton {
        width: parent.width
        text: qsTr("Type the code instead")
        onClicked: page.models.app.back()
    }
}
