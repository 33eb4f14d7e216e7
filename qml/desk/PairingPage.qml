// A one-time code to pair a phone: to scan, or to type with the hub's address.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property PairingModel pairing: desk.pairing
    readonly property bool wide: width >= 900 * Theme.scale
    readonly property bool open: pairing.typedCode !== "" && !pairing.expired

    Flickable {
        id: flick

        anchors.fill: parent
        contentHeight: all.height + 2 * Theme.edge
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: flick
        }

        Column {
            id: all

            x: Theme.edge * 1.5
            y: Theme.edge
            width: parent.width - 3 * Theme.edge
            spacing: Theme.space * 2

            Words {
                width: parent.width
                text: qsTr("Pair a phone with %1").arg(page.desk.person.name)
                font.pixelSize: Theme.title
                font.bold: true
                Accessible.role: Accessible.Heading
            }

            Problem {
                width: parent.width
                text: page.pairing.problem
            }

            Notice {
                width: Math.min(parent.width, 720)
                visible: page.pairing.pairedPhone !== ""
                kind: Notice.Good
                title: qsTr("Paired: %1").arg(page.pairing.pairedPhone)
                text: qsTr("The code is used up. The programme goes to this phone by itself.")
            }

            Flow {
                width: parent.width
                spacing: Theme.edge * 2

                QrCode {
                    width: Math.min(380, all.width)
                    height: width
                    visible: page.open
                    text: page.pairing.qrText
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Pairing code to scan with the phone")
                }

                Column {
                    id: typed

                    width: page.wide ? all.width - 380 - Theme.edge * 2 : all.width
                    spacing: Theme.space * 1.5

                    Say {
                        width: parent.width
                        visible: page.open
                        text: qsTr("On the phone, open Newel and type the address and the code. Or press Use the camera there and hold it before the square.")
                    }

                    Say {
                        visible: page.open
                        text: qsTr("Code to type")
                        font.bold: true
                    }

                    Words {
                        width: parent.width
                        visible: page.open
                        text: page.pairing.typedCode
                        font.pixelSize: Math.round(Theme.title * 1.5)
                        font.bold: true
                        Accessible.name: qsTr("Code to type: %1").arg(text)
                    }

                    Say {
                        width: parent.width
                        visible: page.open
                        text: qsTr("Address to type: %1").arg(page.pairing.address)
                    }

                    Say {
                        width: parent.width
                        // Also after the pairing: that is when the phone asks for the comparison.
                        visible: page.open || page.pairing.pairedPhone !== ""
                        text: qsTr("When typed by hand, compare this on both screens: %1").arg(page.pairing.fingerprint)
                        font.bold: !page.open
                    }

                    Say {
                        width: parent.width
                        visible: text !== ""
                        text: page.pairing.leftWords
                        font.bold: true
                        color: page.pairing.expired ? Theme.stop : Theme.ink
                    }

                    SmallButton {
                        text: qsTr("New code")
                        onClicked: page.pairing.newCode()
                    }

                    Say {
                        width: parent.width
                        text: qsTr("The code works once, for this person only. Show it to nobody else.")
                        color: Theme.soft
                    }
                }
            }
        }
    }
}
