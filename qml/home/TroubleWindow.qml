// Before anything else can be shown: no place for the key, or a store that cannot be opened. One thing is said,
// one thing is asked.
import QtQuick
import Newel.Home
import Newel.Parts

Window {
    id: window

    required property string heading
    required property string words
    property string accept: ""
    property string refuse: ""
    property bool rightToLeft: false

    signal accepted
    signal refused

    width: 412
    height: 700
    minimumWidth: 320
    minimumHeight: 320
    visible: true
    title: qsTr("Newel")
    color: Theme.paper
    onClosing: refused()

    PageFrame {
        LayoutMirroring.enabled: window.rightToLeft
        LayoutMirroring.childrenInherit: true
        anchors.fill: parent
        focus: true
        title: window.heading
        canHelp: false

        Words {
            width: parent.width
            text: window.words
        }

        actions: [
            PrimaryButton {
                width: parent.width
                visible: window.accept !== ""
                text: window.accept
                onClicked: window.accepted()
            },
            SecondaryButton {
                width: parent.width
                text: window.refuse
                onClicked: window.refused()
            }
        ]
    }
}
