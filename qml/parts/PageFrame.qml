// One page: a head with the way back and Help at the same place everywhere, a title that takes the focus,
// content that scrolls, and actions that stay at the bottom.
import QtQuick
import Newel.Parts
import QtQuick.Templates as T

FocusScope {
    id: page

    property string title: ""
    property string over: ""         // a line above the title: the day, "2 of 4"
    property bool canGoBack: false
    property bool canHelp: true
    property bool fromBottom: false  // start scrolled to the end
    property string banner: ""       // stays on top, for example "test clock"
    // On a wide window the column keeps a readable width: about 70 letters, wider where letters are larger.
    property real columnWidth: Math.round(560 + 160 * (Theme.scale - 1))
    default property alias content: body.data
    property alias actions: foot.data

    signal backPressed
    signal helpPressed

    // A phone on its side: what to press stands beside what to read, and each scrolls alone where it must.
    readonly property bool low: width > height && height < 500
    readonly property bool acting: foot.visibleChildren.length > 0
    readonly property real besideWidth: Math.round(Math.min(width * 0.38, 320))
    readonly property real footWidth: low && acting ? besideWidth : inner
    readonly property real inner: Math.min(width - 2 * Theme.edge - (low && acting ? besideWidth + Theme.edge : 0), columnWidth)
    readonly property real side: low && acting ? Theme.edge : (width - inner) / 2

    function focusTitle(): void {
        heading.forceActiveFocus(Qt.OtherFocusReason);
    }

    Component.onCompleted: focusTitle()
    // A page that shows its next question is a new page.
    onTitleChanged: shield.raise()

    Shield {
        id: shield

        anchors.fill: parent
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    Banner {
        id: strip

        width: parent.width
        text: page.banner
    }

    Item {
        id: head

        anchors.top: strip.bottom
        anchors.topMargin: Theme.space / 2
        x: page.side
        width: page.low && page.acting ? parent.width - 2 * Theme.edge : page.inner
        height: backButton.visible || helpButton.visible ? Math.max(backButton.height, helpButton.height) : 0

        QuietButton {
            id: backButton

            anchors.left: parent.left
            anchors.leftMargin: -Theme.space
            visible: page.canGoBack
            text: qsTr("Back")
            mark: Mark.Back
            onClicked: page.backPressed()
        }

        QuietButton {
            id: helpButton

            anchors.right: parent.right
            anchors.rightMargin: -Theme.space
            visible: page.canHelp
            text: qsTr("Help")
            onClicked: page.helpPressed()
        }
    }

    Flickable {
        id: flick

        anchors.top: head.bottom
        anchors.bottom: page.acting && !page.low ? pinned.top : parent.bottom
        anchors.bottomMargin: page.acting && !page.low ? Theme.space : 0
        x: page.low && page.acting && page.LayoutMirroring.enabled ? page.footWidth + Theme.edge : 0
        width: page.low && page.acting ? parent.width - page.footWidth - Theme.edge : parent.width
        contentHeight: all.height
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: flick
        }

        function toEnd(): void {
            if (page.fromBottom)
                contentY = Math.max(0, contentHeight - height);
        }

        onHeightChanged: toEnd()
        onContentHeightChanged: toEnd()

        Column {
            id: all

            x: page.low && page.acting && page.LayoutMirroring.enabled ? flick.width - width - page.side : page.side
            width: page.inner
            topPadding: Theme.space / 2
            bottomPadding: Theme.space * 2
            spacing: Theme.space * 2

            Column {
                width: parent.width

                Words {
                    width: parent.width
                    visible: text !== ""
                    text: page.over
                    color: Theme.soft
                    font.pixelSize: Theme.small
                }

                Words {
                    id: heading

                    width: parent.width
                    text: page.title
                    font.pixelSize: Theme.title
                    font.bold: true
                    focus: true
                    activeFocusOnTab: true
                    Accessible.role: Accessible.Heading
                    Accessible.focusable: true
                    Accessible.focused: activeFocus
                }
            }

            Column {
                id: body

                width: parent.width
                spacing: Theme.space * 2
            }
        }
    }

    Flickable {
        id: pinned

        x: !page.low ? page.side : page.LayoutMirroring.enabled ? Theme.edge : parent.width - width - Theme.edge
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.edge
        width: page.footWidth
        height: Math.min(foot.height, page.low ? parent.height - head.y - head.height - Theme.edge : parent.height)
        contentHeight: foot.height
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height
        clip: interactive

        Column {
            id: foot

            width: pinned.width
            spacing: Theme.space * 1.5
        }
    }
}
