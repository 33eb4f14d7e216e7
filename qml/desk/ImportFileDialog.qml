// The system's way to choose a file. Apart, so that a desk where it is missing still has the field for a path.
import QtQuick
import QtQuick.Dialogs
import Newel.Desk

FileDialog {
    required property ImportModel from

    title: qsTr("A FHIR file")
    nameFilters: [qsTr("FHIR (*.json)"), qsTr("All files (*)")]
    onAccepted: from.readFile(String(selectedFile))
    Component.onCompleted: open()
}
