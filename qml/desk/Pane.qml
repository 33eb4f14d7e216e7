// A column of a page. Scrolls by itself when it has a height of its own, and lies in the page's scroll otherwise.
// With the keyboard alone: what gets the focus comes into view, and the page keys scroll.
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

    // What was pressed lies under the pointer and stays there.
    function bringIntoView(item: var): void {
        let at = item;
        while (at !== null && at !== column)
            at = at.parent;
        if (at === null || item.focusReason === Qt.MouseFocusReason)
            return;
        const top = item.mapToItem(column, 0, 0).y + padding - gap;
        const bottom = top + item.height + 2 * gap;
        if (top < flick.contentY)
            flick.contentY = Math.max(0, top);
        else if (bottom > flick.contentY + flick.height)
            flick.contentY = Math.min(bottom, flick.contentHeight) - flick.height;
    }

    function turnPage(by: real): void {
        flick.contentY = Math.max(0, Math.min(flick.contentHeight - flick.height, flick.contentY + by * flick.height * 0.9));
    }

    color: "transparent"
    implicitHeight: wanted
    clip: true
    Keys.onPressed: event => {
        if (!flick.interactive || event.key !== Qt.Key_PageDown && event.key !== Qt.Key_PageUp)
            return;
        turnPage(event.key === Qt.Key_PageDown ? 1 : -1);
        event.accepted = true;
    }

    Connections {
        target: pane.Window.window

        function onActiveFocusItemChanged(): void {
            const item = pane.Window.activeFocusItem;
            if (item !== null && flick.interactive)
                pane.bringIntoView(item);
        }
    }

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
