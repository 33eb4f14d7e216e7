// A column of a page. Scrolls by itself when it has a height of its own, and lies in the page's scroll otherwise.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Rectangle {
    id: pane

    property bool scrolls: true
    property real padding: Theme.edge
    property real gap: Theme.space * 1.5
    default property alias content: column.data
    readonly property real inner: width - 2 * padding
    readonly property real wanted: column.implicitHeight + 2 * padding

    function toTop(): void {
        flick.contentY = 0;
    }
    function toEnd(): void {
        flick.contentY = Math.max(0, flick.contentHeight - flick.height);
    }

    color: "transparent"
    implicitHeight: wanted
    clip: true

    Flickable {
        id: flick

        anchors.fill: parent
        contentHeight: pane.wanted
        interactive: pane.scrolls && contentHeight > height
        boundsBehavior: Flickable.StopAtBounds
        T.ScrollBar.vertical: ThinBar {
            parent: flick
        }

        Column {
            id: column

            x: pane.padding
            y: pane.padding
            width: pane.inner
            spacing: pane.gap
        }
    }
}
