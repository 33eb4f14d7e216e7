// Takes the presses that were meant for the page before: a second tap of a trembling hand must not confirm, answer
// or stop anything on a page that nobody has seen yet. Gone after 400 ms (common practice, no source).
import QtQuick

MouseArea {
    id: shield

    function raise(): void {
        timer.restart();
    }

    objectName: "shield"
    visible: timer.running
    z: 10
    preventStealing: true
    Component.onCompleted: raise()

    Timer {
        id: timer

        interval: 400
    }
}
