// The strip above every page: the way back, what is under way, who is signed in, the look.
import QtQuick
import Newel.Desk
import Newel.Parts

Rectangle {
    id: head

    required property DeskModel desk

    implicitHeight: column.implicitHeight
    color: Theme.sheet

    Column {
        id: column

        width: parent.width

        Banner {
            width: parent.width
            text: head.desk.banner
        }

        Flow {
            id: row

            width: parent.width
            padding: Theme.space * 0.75
            leftPadding: Theme.edge
            rightPadding: Theme.edge
            spacing: Theme.space

            SmallButton {
                id: backButton

                visible: head.desk.canGoBack
                text: head.desk.backWords
                mark: Mark.Back
                words: Theme.rail
                Accessible.name: qsTr("Back to %1").arg(head.desk.backWords)
                onClicked: head.desk.back()
            }

            Say {
                id: who

                height: Math.max(36, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                width: Math.min(implicitWidth, row.width - 2 * Theme.edge)
                text: head.desk.signedIn ? qsTr("%1 · %2").arg(head.desk.therapistName).arg(head.desk.clinicName)
                                         : qsTr("Newel Desk")
                color: Theme.soft
            }

            Say {
                height: Math.max(36, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                visible: text !== ""
                text: head.desk.busyWords === "" ? "" : qsTr("%1 …").arg(head.desk.busyWords)
                font.bold: true
                color: Theme.rail
                Accessible.role: Accessible.AlertMessage
            }

            SmallButton {
                id: giveUp

                visible: head.desk.signedIn && head.desk.documents.making && head.desk.pageName !== "DocumentsPage"
                text: qsTr("Give it up")
                Accessible.name: qsTr("Give up: %1").arg(head.desk.documents.makingWords)
                onClicked: head.desk.documents.cancel()
            }

            Item {
                id: gap

                readonly property real taken: (backButton.visible ? backButton.width + row.spacing : 0) + who.width
                    + looks.width + 4 * row.spacing + 2 * Theme.edge + (head.desk.busyWords === "" ? 0 : 260)
                    + (giveUp.visible ? giveUp.width + row.spacing : 0)

                width: Math.max(0, row.width - taken)
                height: 1
                visible: width > 0
            }

            Flow {
                id: looks

                readonly property real wanted: {
                    let all = 0;
                    for (let i = 0; i < children.length; ++i)
                        all += children[i].visible ? children[i].width + spacing : 0;
                    return all;
                }

                width: Math.min(wanted, row.width - 2 * Theme.edge)
                spacing: Theme.space

                SmallButton {
                    visible: !head.desk.signedIn
                    text: head.desk.otherLanguage
                    onClicked: head.desk.changeLanguage()
                }

                SmallButton {
                    text: qsTr("Text %1 %").arg(Theme.textPercent)
                    Accessible.name: qsTr("Text size, now %1 percent").arg(Theme.textPercent)
                    onClicked: {
                        const next = Theme.textPercent < 125 ? 125 : Theme.textPercent < 150 ? 150
                            : Theme.textPercent < 200 ? 200 : 100;
                        Theme.textPercent = next;
                        head.desk.keepLook(next, Theme.dark);
                    }
                }

                SmallButton {
                    text: Theme.dark ? qsTr("Light") : qsTr("Dark")
                    Accessible.name: Theme.dark ? qsTr("Light colours") : qsTr("Dark colours")
                    onClicked: {
                        Theme.dark = !Theme.dark;
                        head.desk.keepLook(Theme.textPercent, Theme.dark);
                    }
                }

                SmallButton {
                    visible: head.desk.signedIn
                    text: qsTr("My account")
                    onClicked: head.desk.openOwnAccount()
                }

                SmallButton {
                    visible: head.desk.signedIn
                    text: qsTr("Lock")
                    Accessible.name: qsTr("Lock this desk")
                    Accessible.description: qsTr("Ctrl and L")
                    onClicked: head.desk.lockNow()
                }

                SmallButton {
                    visible: head.desk.signedIn
                    text: qsTr("Sign out")
                    onClicked: head.desk.signOut()
                }
            }
        }

        Problem {
            x: Theme.edge
            width: parent.width - 2 * Theme.edge
            text: head.desk.sessionWords
            bottomPadding: Theme.space
        }

        Problem {
            x: Theme.edge
            width: parent.width - 2 * Theme.edge
            text: head.desk.lock.warning
            bottomPadding: Theme.space
        }

        // Stays as long as somebody else's record is open by a written reason.
        Banner {
            width: parent.width
            text: head.desk.openedWords
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }

        Rectangle {
            width: parent.width
            height: 1
            color: Theme.groove
        }

        Rectangle {
            width: parent.width
            height: newsWords.implicitHeight + Theme.space
            visible: head.desk.news !== ""
            color: Theme.good

            Say {
                id: newsWords

                anchors.verticalCenter: parent.verticalCenter
                x: Theme.edge
                width: parent.width - 2 * Theme.edge
                text: head.desk.news
                color: Theme.paper
                font.bold: true
                Accessible.role: Accessible.AlertMessage
            }
        }
    }
}
