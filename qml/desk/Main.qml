// The desk's window: the head, and the page that the desk is on.

import QtQuick
import Newel.Desk
import Newel.Parts

Window {
    id: window

    required property DeskModel desk

    width: 1280
    height: 800
    minimumWidth: 640
    minimumHeight: 480
    visible: true
    title: desk.person.name === "" ? qsTr("Newel Desk") : qsTr("%1 - Newel Desk").arg(desk.person.name)
    color: Theme.paper

    Shortcut {
        sequences: ["Alt+Left"]
        enabled: window.desk.canGoBack
        onActivated: window.desk.back()
    }

    DeskHead {
        id: head

        width: parent.width
        desk: window.desk
    }

    Loader {
        id: pages

        function show(): void {
            setSource(window.desk.pageName + ".qml", {
                "desk": window.desk
            });
        }

        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        focus: true
        Component.onCompleted: show()
    }

    Connections {
        target: window.desk

        function onPageChanged(): void {
            pages.show();
        }
    }
}
