// The practice screen: one sentence, one number, one way to stop. Shown on the phone while practising and on
// the desk as what the person will see. It decides nothing: facts come in, presses go out.
import QtQuick
import Newel.Parts

FocusScope {
    id: view

    required property PracticeFacts facts

    signal stopPressed
    signal pausePressed
    signal goOnPressed
    signal donePressed
    signal repeatPressed
    signal longerPressed
    signal nowPressed
    signal skipPressed
    signal slowerPressed

    // A phone on its side: Stop stands alone at the trailing edge, as high as the screen; everything else to press
    // is in the first line, and grows less with the size of text, since the number and the sentence come first.
    readonly property bool low: width > height && height < 500
    readonly property int pressSize: Math.min(Theme.body, low ? 22 : height < 700 ? 28 : 36)
    readonly property bool stacked: !low && Theme.scale > 1.35 && width < 600 // title below Pause
    // Large text, a small screen and buttons above Stop: the title makes room for the sentence.
    readonly property bool crowded: stacked && height < 700 && lower.shown

    // A screen reader begins here on a page that has just come.
    function focusTitle(): void {
        place.forceActiveFocus(Qt.OtherFocusReason);
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    Rail {
        id: rail

        anchors.left: parent.left
        anchors.leftMargin: Theme.space * 1.5
        anchors.top: parent.top
        anchors.topMargin: Theme.edge
        anchors.bottom: view.low ? parent.bottom : stop.top
        anchors.bottomMargin: Theme.edge
        posts: view.facts.posts
        at: view.facts.at
        mirrored: view.LayoutMirroring.enabled
        Accessible.role: Accessible.ProgressBar
        Accessible.name: qsTr("Exercise %L1 of %L2").arg(view.facts.entryNumber).arg(view.facts.entryCount)
    }

    Item {
        id: head

        anchors.left: rail.right
        anchors.leftMargin: Theme.space * 1.5
        anchors.right: view.low ? stop.left : parent.right
        anchors.rightMargin: view.low ? 2 * Theme.edge : Theme.edge
        anchors.top: parent.top
        anchors.topMargin: Theme.space

        readonly property real firstLine: Math.max(pause.height, lower.height) + Theme.space / 2

        height: view.low ? firstLine + place.height : view.stacked ? Math.max(pause.height, place.height) + title.room
            : Math.max(pause.height, place.height + title.room)

        Words {
            id: place

            anchors.left: parent.left
            anchors.top: parent.top
            anchors.topMargin: view.low ? head.firstLine : view.stacked ? Math.max(0, (pause.height - height) / 2) : 0
            width: view.low ? parent.width : parent.width - pause.width - Theme.space * 1.5
            text: (view.facts.labels["%L1 of %L2"] ?? qsTr("%L1 of %L2")).arg(view.facts.entryNumber).arg(view.facts.entryCount)
                + (view.low && Theme.scale < 1.2 ? " · " + view.facts.title : "")
            color: Theme.soft
            font.pixelSize: Math.min(Theme.small, view.low ? 20 : 26)
            focus: true
            activeFocusOnTab: true
            Accessible.role: Accessible.Heading
            Accessible.name: qsTr("%L1 of %L2").arg(view.facts.entryNumber).arg(view.facts.entryCount) + ", " + view.facts.title
            Accessible.focusable: true
            Accessible.focused: activeFocus
        }

        Words {
            id: title

            readonly property real room: visible ? height : 0

            anchors.left: parent.left
            y: view.stacked ? Math.max(pause.height, place.height) : place.height
            width: view.stacked ? parent.width : parent.width - pause.width - Theme.space
            text: view.facts.title
            font.bold: true
            font.pixelSize: view.stacked ? Math.min(Theme.body, 26) : Theme.body
            visible: !view.crowded && !view.low
            Accessible.ignored: true // the line above says it as well
        }

        SecondaryButton {
            id: pause

            x: view.low !== view.LayoutMirroring.enabled ? 0 : parent.width - width
            visible: !view.facts.paused
            width: visible ? implicitWidth : 0
            height: visible ? implicitHeight : 0
            text: view.facts.labels["Pause"] ?? qsTr("Pause")
            textSize: view.pressSize
            mark: Mark.Bars
            words: Theme.rail
            edge: Theme.rail
            onClicked: view.pausePressed()
        }
    }

    // What is read in between lies between these two: the buttons stand before it on a low screen, else behind.
    Item {
        id: before

        anchors.fill: parent
    }

    Item {
        id: middle

        anchors.left: head.left
        anchors.right: head.right
        anchors.top: head.bottom
        anchors.topMargin: view.low ? Theme.space / 2 : Theme.space
        anchors.bottom: parent.bottom
        anchors.bottomMargin: view.low ? Theme.edge : parent.height - lower.y + Theme.space

        PracticeCue {
            anchors.fill: parent
            facts: view.facts
            split: view.width > view.height
            visible: !view.facts.paused
        }

        PracticePaused {
            anchors.fill: parent
            facts: view.facts
            visible: view.facts.paused
            onGoOnPressed: view.goOnPressed()
            onSlowerPressed: view.slowerPressed()
            onRepeatPressed: view.repeatPressed()
            onSkipPressed: view.skipPressed()
        }

        // By-person entries go on with a tap anywhere here, as the button below says; otherwise a tap says
        // the cue again, as does the button while paused.
        TapHandler {
            enabled: !view.facts.paused
            onTapped: view.facts.waiting ? view.donePressed() : view.repeatPressed()
        }
    }

    Item {
        id: after

        anchors.fill: parent
    }

    Item {
        id: lower

        parent: view.low ? before : after
        x: !view.low || view.LayoutMirroring.enabled ? head.x : head.x + pause.width + Theme.space * 1.5
        y: view.low ? head.y : stop.y - height - (height > 0 ? Theme.edge + Theme.space : 0)
        width: view.low ? head.width - pause.width - Theme.space * 1.5 : head.width
        height: shown ? (view.facts.waiting ? done.implicitHeight : restRow.implicitHeight) : 0

        readonly property bool shown: !view.facts.paused && (view.facts.waiting || view.facts.canLengthen || view.facts.canGoNow)

        PrimaryButton {
            id: done

            width: parent.width
            visible: lower.shown && view.facts.waiting
            text: view.facts.labels["Done, go on"] ?? qsTr("Done, go on")
            textSize: view.pressSize
            onClicked: view.donePressed()
        }

        Flow {
            id: restRow

            readonly property bool stacked: !view.facts.canLengthen || !view.facts.canGoNow || !view.low && longer.implicitWidth + now.implicitWidth + spacing > width
            readonly property real part: stacked ? width : (width - spacing) / 2

            width: parent.width
            visible: lower.shown && !view.facts.waiting
            spacing: Theme.space * 1.5

            SecondaryButton {
                id: longer

                width: restRow.part
                visible: view.facts.canLengthen
                text: view.facts.labels["Longer rest"] ?? qsTr("Longer rest")
                textSize: view.pressSize
                onClicked: view.longerPressed()
            }

            SecondaryButton {
                id: now

                width: restRow.part
                visible: view.facts.canGoNow
                text: view.facts.labels["Go on now"] ?? qsTr("Go on now")
                textSize: view.pressSize
                onClicked: view.nowPressed()
            }
        }
    }

    StopButton {
        id: stop

        text: view.facts.labels["Stop"] ?? stop.said
        tall: view.low
        x: !view.low ? Theme.edge : view.LayoutMirroring.enabled ? Theme.edge : parent.width - width - Theme.edge
        width: view.low ? implicitWidth : parent.width - 2 * Theme.edge
        height: view.low ? parent.height - 2 * Theme.edge : implicitHeight
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.edge
        onStopPressed: view.stopPressed()
    }
}
