// Before the signature: whose programme, which side and level, what changes, what was prescribed against a
// rule's question and why. Only then the button.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property DraftModel draft: desk.draft

    Pane {
        id: sheet

        width: Math.min(parent.width, 860 * Math.min(1.5, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Say {
            width: parent.width
            text: qsTr("Programme %1, before you sign").arg(page.draft.number)
            color: Theme.soft
        }

        Words {
            width: parent.width
            text: page.draft.name
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Words {
            width: parent.width
            text: page.draft.limbs
            font.pixelSize: Theme.heading
            font.bold: true
            color: Theme.brass
        }

        Say {
            width: parent.width
            text: qsTr("From %1 to %2. %3.").arg(page.draft.firstDayWords).arg(page.draft.lastDayWords).arg(page.draft.minutesWords)
        }

        Heading {
            width: parent.width
            text: qsTr("What changes")
        }

        Repeater {
            model: page.draft.changes

            Say {
                required property string modelData

                width: sheet.inner
                text: qsTr("· %1").arg(modelData)
                Accessible.name: modelData
            }
        }

        Heading {
            width: parent.width
            text: qsTr("The exercises")
        }

        Repeater {
            model: page.draft.entries

            Column {
                id: entry

                required property string title
                required property string dose
                required property string details
                required property string minutes
                required property string worstWords
                required property int worst

                width: sheet.inner

                Say {
                    width: parent.width
                    text: qsTr("%1: %2, %3").arg(entry.title).arg(entry.dose).arg(entry.minutes)
                    font.bold: true
                }

                Say {
                    width: parent.width
                    text: entry.details
                    color: Theme.soft
                }

                Row {
                    width: parent.width
                    visible: entry.worst > 0
                    spacing: Theme.space

                    EffectMark {
                        width: Math.round(Theme.small * 1.2)
                        height: width
                        y: 2
                        effect: entry.worst
                    }

                    Say {
                        width: parent.width - Theme.small * 1.2 - Theme.space
                        text: entry.worstWords
                        color: entry.worst === 1 ? Theme.stop : Theme.ink
                    }
                }
            }
        }

        AreaField {
            width: parent.width
            label: qsTr("What is new, for %1 to read").arg(page.draft.givenName)
            name: qsTr("What is new, for the person to read")
            lines: 3
            text: page.draft.changesForPerson
            onEdited: text => page.draft.setChangesForPerson(text)
        }

        MainButton {
            width: Math.min(implicitWidth, parent.width)
            text: page.draft.signing ? qsTr("Signing …") : qsTr("Sign for %1: %2").arg(page.draft.name).arg(page.draft.limbs)
            enabled: page.draft.maySign && !page.draft.signing
            Accessible.name: qsTr("Sign for %1: %2").arg(page.draft.name).arg(page.draft.limbs)
            Accessible.description: page.draft.whyNot
            onClicked: page.draft.sign()
        }

        Problem {
            width: parent.width
            text: page.draft.whyNot === "" ? "" : qsTr("Not to be signed yet. %1").arg(page.draft.whyNot)
        }

        Problem {
            width: parent.width
            text: page.draft.signProblem
        }

        SmallButton {
            text: qsTr("Go on writing")
            onClicked: page.desk.back()
        }
    }
}
