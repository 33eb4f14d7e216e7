// Who has access to one person's record, and which phones; and how either loses it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property AccessModel access: desk.access
    readonly property var asked: access.asked

    Pane {
        id: sheet

        width: Math.min(parent.width, 860 * Math.min(1.6, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("Who has access to %1").arg(page.access.name)
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Problem {
            width: parent.width
            text: page.access.problem
        }

        Column {
            width: parent.width
            visible: page.access.mayAssign
            spacing: Theme.space

            Heading {
                width: parent.width
                text: qsTr("Therapists")
            }

            Say {
                width: parent.width
                text: qsTr("A therapist sees the people assigned to them. Leads see everybody; auditors look at everybody. A change counts at once.")
                color: Theme.soft
            }

            Flow {
                width: parent.width
                spacing: Theme.space * 0.75

                Repeater {
                    model: page.access.therapists

                    Chip {
                        required property var modelData

                        width: Math.min(implicitWidth, sheet.inner)
                        text: modelData.name
                        group: qsTr("Looks after %1").arg(page.access.name)
                        many: true
                        chosen: modelData.assigned
                        enabled: !page.access.busy
                        onClicked: page.access.assign(modelData.id, !modelData.assigned)
                    }
                }
            }

            Problem {
                width: parent.width
                grave: false
                text: page.access.therapists.length > 0 && page.access.assignedCount === 0
                    ? qsTr("Nobody is assigned: only leads see what this person sends.") : ""
            }
        }

        Heading {
            width: parent.width
            topPadding: Theme.space
            text: qsTr("Phones")
        }

        Say {
            width: parent.width
            visible: page.access.phones.length === 0
            text: qsTr("None paired.")
            color: Theme.soft
        }

        Repeater {
            model: page.access.phones

            PhoneRow {
                required property var modelData

                width: sheet.inner
                phone: modelData
                mayRevoke: page.access.mayRevoke
                sure: page.asked.id === modelData.id
                busy: page.access.busy
                onAsked: page.access.ask(modelData.id)
                onRefused: page.access.ask("")
                onConfirmed: page.access.revoke()
            }
        }
    }
}
