// The system's way to choose a file. Apart, so that a desk where it is missing still has the field for a path.
import QtQuick
import QtQuick.Dialogs
import Newel.Desk

FileDialog {
    required property ManyModel many

    title: qsTr("A photo or a clip")
    nameFilters: [qsTr("Photos and clips (*.jpg *.jpeg *.png *.webp *.bmp *.mp4 *.m4v *.mov *.webm)"), qsTr("All files (*)")]
    onAccepted: many.attach(String(selectedFile))
    Component.onCompleted: open()
}
