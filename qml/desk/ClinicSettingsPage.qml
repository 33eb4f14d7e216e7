// What the clinic has set for itself: each number with what is published beside it.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property ClinicSettingsModel settings: desk.clinicSettings

    Shortcut {
        sequences: ["Ctrl+S"]
        enabled: page.settings.mayChange && page.settings.dirty
        onActivated: page.settings.save()
    }

    Pane {
        width: Math.min(parent.width, 860 * Math.min(1.6, Theme.scale))
        height: parent.height
        anchors.horizontalCenter: parent.horizontalCenter
        padding: Theme.edge * 1.5

        Words {
            width: parent.width
            text: qsTr("Clinic settings")
            font.pixelSize: Theme.title
            font.bold: true
            Accessible.role: Accessible.Heading
        }

        Heading {
            width: parent.width
            text: qsTr("Backup")
        }

        Say {
            width: parent.width
            visible: !page.settings.backupOld
            text: page.settings.backup
        }

        Problem {
            width: parent.width
            visible: page.settings.backupOld
            text: page.settings.backup
        }

        Heading {
            width: parent.width
            text: qsTr("What the clinic has set")
        }

        Say {
            width: parent.width
            text: page.settings.mayChange ? qsTr("They count for everyone of this clinic. The usual value is the cautious end of what is published.")
                : qsTr("A lead or an administrator of the clinic changes these.")
            color: Theme.soft
        }

        Repeater {
            model: page.settings.rows.length

            Column {
                id: row

                required property int index
                readonly property var modelData: page.settings.rows[index]
                readonly property bool yesNo: modelData.least === 0 && modelData.most === 1

                width: parent.width
                spacing: Theme.space / 2

                ChipStrip {
                    width: parent.width
                    visible: row.yesNo
                    enabled: page.settings.mayChange
                    label: row.modelData.title
                    options: [
                        {
                            "value": 0,
                            "text": qsTr("no")
                        },
                        {
                            "value": 1,
                            "text": qsTr("yes")
                        }
                    ]
                    value: row.modelData.value
                    onPicked: value => page.settings.set(row.modelData.id, value)
                }

                StepField {
                    visible: !row.yesNo
                    enabled: page.settings.mayChange
                    label: qsTr("%1 (%2)").arg(row.modelData.title).arg(row.modelData.unit)
                    name: row.modelData.title
                    unit: row.modelData.unit
                    value: row.modelData.value
                    from: row.modelData.least
                    to: row.modelData.most
                    onChanged: value => page.settings.set(row.modelData.id, value)
                }

                Say {
                    width: parent.width
                    text: row.yesNo ? row.modelData.help
                        : qsTr("From %1 to %2, usually %3. %4").arg(row.modelData.least).arg(row.modelData.most)
                            .arg(row.modelData.usual).arg(row.modelData.help)
                }

                Say {
                    width: parent.width
                    text: qsTr("Source: %1").arg(row.modelData.source)
                    color: Theme.soft
                }
            }
        }

        Problem {
            width: parent.width
            text: page.settings.problem
        }

        Flow {
            width: parent.width
            visible: page.settings.mayChange
            spacing: Theme.space

            MainButton {
                text: page.settings.saving ? qsTr("Saving …") : qsTr("Save for the clinic")
                enabled: page.settings.dirty && !page.settings.saving
                onClicked: page.settings.save()
            }

            SmallButton {
                text: qsTr("Usual values")
                onClicked: page.settings.usual()
            }
        }
    }
}
