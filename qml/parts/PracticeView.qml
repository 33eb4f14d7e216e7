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

    readonly property bool stacked: Theme.scale > 1.35 && width < 600 // title below Pause
    // Large text, a small screen and buttons above Stop: the title makes room for the sentence.
    readonly property bool crowded: stacked && height < 700 && lower.shown

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
        anchors.bottom: stop.top
        anchors.bottomMargin: Theme.edge
        posts: view.facts.posts
        at: view.facts.at
        mirrored: view.LayoutMirroring.enabled
        Accessible.role: Accessible.ProgressBar
        Accessible.name: qsTr("Exercise %1 of %2").arg(view.facts.entryNumber).arg(view.facts.entryCount)
    }

    Item {
        id: head

        anchors.left: rail.right
        anchors.leftMargin: Theme.space * 1.5
        anchors.right: parent.right
        anchors.rightMargin: Theme.edge
        anchors.top: parent.top
        anchors.topMargin: Theme.space
        height: view.stacked ? Math.max(pause.height, place.height) + title.room
            : Math.max(pause.height, place.height + title.room)

        Words {
            id: place

            anchors.left: parent.left
            anchors.top: parent.top
            anchors.topMargin: view.stacked ? Math.max(0, (pause.height - height) / 2) : 0
            width: parent.width - pause.width - Theme.space
            text: qsTr("%1 of %2").arg(view.facts.entryNumber).arg(view.facts.entryCount)
            color: Theme.soft
            font.pixelSize: Math.min(Theme.small, 26)
            focus: true
            activeFocusOnTab: true
            Accessible.role: Accessible.Heading
            Accessible.name: text + ", " + view.facts.title
            Accessible.focusable: true
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
            visible: !view.crowded
            Accessible.role: Accessible.Heading
        }

        SecondaryButton {
            id: pause

            anchors.right: parent.right
            visible: !view.facts.paused
            width: visible ? implicitWidth : 0
            height: visible ? implicitHeight : 0
            text: qsTr("Pause")
            mark: Mark.Bars
            words: Theme.rail
            edge: Theme.rail
            onClicked: view.pausePressed()
        }
    }

    Item {
        id: middle

        anchors.left: head.left
        anchors.right: head.right
        anchors.top: head.bottom
        anchors.topMargin: Theme.space
        anchors.bottom: lower.top
        anchors.bottomMargin: Theme.space

        PracticeCue {
            anchors.fill: parent
            facts: view.facts
            visible: !view.facts.paused
        }

        PracticePaused {
            anchors.fill: parent
            facts: view.facts
            visible: view.facts.paused
            onGoOnPressed: view.goOnPressed()
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
        id: lower

        anchors.left: head.left
        anchors.right: head.right
        anchors.bottom: stop.top
        anchors.bottomMargin: height > 0 ? Theme.edge + Theme.space : 0
        height: shown ? (view.facts.waiting ? done.implicitHeight : restRow.implicitHeight) : 0

        readonly property bool shown: !view.facts.paused && (view.facts.waiting || view.facts.canLengthen || view.facts.canGoNow)

        PrimaryButton {
            id: done

            width: parent.width
            visible: lower.shown && view.facts.waiting
            text: qsTr("Done, go on")
            onClicked: view.donePressed()
        }

        Flow {
            id: restRow

            readonly property bool stacked: !view.facts.canLengthen || !view.facts.canGoNow || longer.implicitWidth + now.implicitWidth + spacing > width
            readonly property real part: stacked ? width : (width - spacing) / 2

            width: parent.width
            visible: lower.shown && !view.facts.waiting
            spacing: Theme.space * 1.5

            SecondaryButton {
                id: longer

                width: restRow.part
                visible: view.facts.canLengthen
                text: qsTr("Longer rest")
                onClicked: view.longerPressed()
            }

            SecondaryButton {
                id: now

                width: restRow.part
                visible: view.facts.canGoNow
                text: qsTr("Go on now")
                onClicked: view.nowPressed()
            }
        }
    }

    StopButton {
        id: stop

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Theme.edge
        onStopPressed: view.stopPressed()
    }
}
