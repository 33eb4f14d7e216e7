// What a rule says about an entry or a programme, with its source, and the room for the reason it asks for.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Item {
    id: row

    required property var finding   // see findingList()
    required property string about  // the entry's title, or the programme
    property string reason: ""

    signal reasoned(string text)
    signal fixed(int index)

    readonly property var fixes: finding.fixes ?? []

    readonly property bool open: finding.asks && reason === ""

    implicitHeight: column.implicitHeight

    Rectangle {
        width: 4
        height: parent.height
        color: row.finding.effect === 1 ? Theme.stop : row.finding.effect === 2 ? Theme.brass : Theme.soft
    }

    EffectMark {
        id: sign

        x: Theme.space * 1.5
        y: 2
        width: Math.round(Theme.small * 1.25)
        height: width
        effect: row.finding.effect
    }

    Column {
        id: column

        x: sign.x + sign.width + Theme.space
        width: parent.width - x
        spacing: 3

        Say {
            width: parent.width
            text: row.finding.effectWords + ": " + row.finding.words
            color: row.finding.effect === 1 ? Theme.stop : Theme.ink
            font.bold: row.finding.effect <= 2
        }

        Say {
            width: parent.width
            visible: row.finding.source !== ""
            text: qsTr("Source: %1").arg(row.finding.source)
            color: Theme.soft
            font.pixelSize: Math.round(Theme.small * 0.85)
        }

        Flow {
            width: parent.width
            visible: row.fixes.length > 0
            spacing: Theme.space

            Say {
                height: Math.max(32, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                text: qsTr("What would answer it:")
                color: Theme.soft
            }

            Repeater {
                model: row.fixes

                SmallButton {
                    required property var modelData
                    required property int index

                    least: 32
                    width: Math.min(implicitWidth, column.width)
                    text: modelData.text
                    Accessible.name: qsTr("%1, because of: %2").arg(modelData.text).arg(row.finding.words)
                    onClicked: row.fixed(index)
                }
            }
        }

        LineField {
            id: field

            width: parent.width
            visible: row.finding.asks
            name: qsTr("Reason, %1: %2").arg(row.about).arg(row.finding.words)
            hint: qsTr("Your reason")
            problem: row.open && !editing ? qsTr("Needs a written reason, kept under your signature.") : ""
            onEdited: text => row.reasoned(text)
            Component.onCompleted: text = row.reason

            Connections {
                target: row

                function onReasonChanged(): void {
                    if (!field.editing)
                        field.text = row.reason;
                }
            }
        }
    }
}
