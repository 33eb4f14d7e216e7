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
    title: desk.lock.locked ? qsTr("Newel Desk, locked") : desk.person.name === "" ? qsTr("Newel Desk") : qsTr("%1 - Newel Desk").arg(desk.person.name)
    color: Theme.paper

    Shortcut {
        sequences: ["Alt+Left"]
        enabled: window.desk.canGoBack
        onActivated: window.desk.back()
    }

    Shortcut {
        sequences: ["Ctrl+L"]
        enabled: window.desk.signedIn
        onActivated: window.desk.lockNow()
    }

    // Neither seen nor reached, by key or screen reader, while the desk is locked; it stays as it was.
    FocusScope {
        id: open

        anchors.fill: parent
        focus: true
        visible: !window.desk.lock.locked
        enabled: visible

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
    }

    Loader {
        id: cover

        readonly property bool locked: window.desk.lock.locked

        anchors.fill: parent
        onLockedChanged: {
            if (locked) {
                setSource("LockCover.qml", {
                    "desk": window.desk
                });
            } else {
                source = "";
                open.forceActiveFocus();
            }
        }
    }

    Connections {
        target: window.desk

        function onPageChanged(): void {
            pages.show();
        }
    }
}
