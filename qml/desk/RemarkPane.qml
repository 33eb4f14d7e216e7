// Notes for colleagues about one practice, or about days, and a line for a new one.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: pane

    required property RemarksModel remarks
    property string practiceId: "" // empty: of days
    property string day: remarks.today
    property string about: ""      // of which practice or that it is about days, for the screen reader
    property bool mayWrite: true
    property bool writing: false
    readonly property bool ofDays: practiceId === ""
    // Asked anew whenever the notes are others.
    readonly property var rows: remarks.version < 0 ? [] : ofDays ? remarks.ofDays() : remarks.about(practiceId)

    spacing: Theme.space / 2

    Repeater {
        model: pane.rows

        Column {
            id: row

            required property var modelData

            width: pane.width
            spacing: 3

            Say {
                width: parent.width
                text: pane.ofDays ? qsTr("%1: \"%2\"").arg(row.modelData.day).arg(row.modelData.text) : qsTr("Note: \"%1\"").arg(row.modelData.text)
            }

            Flow {
                width: parent.width
                spacing: Theme.space

                Say {
                    width: Math.min(implicitWidth, parent.width)
                    height: Math.max(32, implicitHeight)
                    verticalAlignment: Text.AlignVCenter
                    text: row.modelData.words
                    color: Theme.soft
                }

                SmallButton {
                    least: 32
                    visible: row.modelData.mine && pane.mayWrite
                    enabled: !pane.remarks.saving
                    text: qsTr("Take back")
                    Accessible.name: qsTr("Take the note back: %1").arg(row.modelData.text)
                    onClicked: pane.remarks.takeBack(row.modelData.id)
                }
            }
        }
    }

    SmallButton {
        least: 32
        visible: pane.mayWrite && !pane.writing
        text: pane.ofDays ? qsTr("Write a note about a day") : qsTr("Write a note")
        Accessible.name: pane.about === "" ? text : qsTr("%1: %2").arg(text).arg(pane.about)
        onClicked: {
            pane.writing = true;
            words.takeFocus();
        }
    }

    LineField {
        id: day

        width: Math.min(260 * Theme.scale, parent.width)
        visible: pane.writing && pane.ofDays
        label: qsTr("Day, YYYY-MM-DD")
        text: pane.day
        maximumLength: 10
    }

    LineField {
        id: words

        width: parent.width
        visible: pane.writing
        label: qsTr("Note for colleagues; the person does not get it")
        name: pane.about === "" ? label : qsTr("%1: %2").arg(label).arg(pane.about)
        maximumLength: 1000
        onAccepted: keep.clicked()
    }

    Flow {
        width: parent.width
        visible: pane.writing
        spacing: Theme.space

        SmallButton {
            id: keep

            least: 32
            enabled: !pane.remarks.saving && words.text.trim() !== ""
            text: qsTr("Keep the note")
            words: Theme.rail
            edge: Theme.rail
            onClicked: {
                pane.remarks.write(pane.practiceId, pane.ofDays ? day.text : pane.day, words.text);
                pane.writing = false;
                words.text = "";
            }
        }

        SmallButton {
            least: 32
            text: qsTr("Not now")
            onClicked: pane.writing = false
        }
    }
}
