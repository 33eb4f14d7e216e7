// Where a new person may come from: a FHIR file of another system. What it says goes into the form to be looked at;
// what it asks for waits for their first programme; the rest is listed.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: pane

    required property ImportModel from
    property bool all: false // also what was not taken

    spacing: Theme.space

    LineField {
        id: path

        width: parent.width
        label: qsTr("From a file of another system (FHIR), may be left out")
        name: qsTr("FHIR file of another system")
        hint: qsTr("Path of a file on this computer, or drop it here")
        onAccepted: pane.from.readFile(path.text)

        DropArea {
            anchors.fill: parent
            onDropped: drop => {
                if (drop.hasUrls)
                    pane.from.readFile(String(drop.urls[0]));
            }
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.space

        SmallButton {
            text: pane.from.reading ? qsTr("Reading …") : qsTr("Read this file")
            enabled: !pane.from.reading && path.text.trim() !== ""
            onClicked: pane.from.readFile(path.text)
        }

        SmallButton {
            text: qsTr("Choose a file …")
            Accessible.name: qsTr("Choose a FHIR file")
            enabled: !pane.from.reading
            onClicked: {
                chooser.source = "";
                chooser.setSource("ImportFileDialog.qml", {
                    "from": pane.from
                });
            }
        }
    }

    Loader {
        id: chooser
    }

    Problem {
        width: parent.width
        text: pane.from.problem
    }

    Repeater {
        model: pane.from.warnings

        Problem {
            required property string modelData

            width: pane.width
            text: qsTr("Read this first: %1").arg(modelData)
        }
    }

    Say {
        width: parent.width
        visible: text !== ""
        text: pane.from.taken
        font.bold: true
    }

    Say {
        width: parent.width
        visible: pane.from.requests.length > 0
        text: pane.from.requests.length === 1 ? qsTr("One thing is asked for; it is beside you when you write the first programme, and kept as a note.") : qsTr("%1 things are asked for; they are beside you when you write the first programme, and kept as notes.").arg(pane.from.requests.length)
    }

    Repeater {
        model: pane.from.requests

        Say {
            required property var modelData

            width: pane.width
            text: qsTr("%1: %2").arg(modelData.title).arg(modelData.details)
        }
    }

    SmallButton {
        visible: pane.from.notTaken.length > 0
        text: pane.all ? qsTr("Hide what was not taken") : qsTr("What was not taken (%1)").arg(pane.from.notTaken.length)
        onClicked: pane.all = !pane.all
    }

    Repeater {
        model: pane.all ? pane.from.notTaken : []

        Say {
            required property string modelData

            width: pane.width
            text: modelData
            color: Theme.soft
            wrapMode: Text.Wrap
        }
    }
}
