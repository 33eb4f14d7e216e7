// The system's way to choose a folder. Apart, so that a desk where it is missing still has the field for a path.
import QtQuick
import QtQuick.Dialogs
import Newel.Desk

FolderDialog {
    required property DocumentsModel documents

    title: qsTr("Where the document goes")
    onAccepted: documents.folder = String(selectedFolder)
    Component.onCompleted: open()
}
