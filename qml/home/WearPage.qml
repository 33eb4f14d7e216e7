// Wearing time: one thing to do at a time. Put on, taken off, the skin, the red skin watched.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property WearModel wear: models.wear
    readonly property int state: wear.state
    // Then there is one question, and nothing beside it.
    readonly property bool asks: state === WearModel.Look || state === WearModel.Watch
    // How many steps back it was; the skin signs that are chosen.
    property int ago: 0
    property var seen: []

    title: wear.headline
    over: qsTr("Wearing time")
    canGoBack: true

    onStateChanged: {
        ago = 0;
        seen = [];
        focusTitle();
        upper.show();
    }

    Component.onCompleted: wear.refresh()

    // Nothing seen and something seen do not go together.
    function press(id: int, on: bool): void {
        const clear = wear.signs[0].id;
        seen = on ? (id === clear ? [clear] : seen.filter(sign => sign !== clear).concat([id])) : seen.filter(sign => sign !== id);
    }

    PageTop {
        id: upper
    }

    Notice {
        width: parent.width
        visible: page.wear.error !== ""
        kind: Notice.Attention
        title: page.wear.error
    }

    Notice {
        width: parent.width
        visible: page.wear.stop !== ""
        kind: page.state === WearModel.StayOff ? Notice.Stop : Notice.Attention
        text: page.wear.stop
    }

    WhoToCall {
        width: parent.width
        visible: page.wear.stop !== ""
        models: page.models
        emergencyFirst: false
    }

    Notice {
        width: parent.width
        visible: page.wear.over
        kind: Notice.Attention
        title: qsTr("Take it off now")
        text: qsTr("Longer than planned can hurt the skin.")
    }

    Item {
        width: parent.width
        height: ring.height
        visible: page.wear.timed && !page.wear.over
        Accessible.role: Accessible.StaticText
        Accessible.name: minutes.text

        CountRing {
            id: ring

            anchors.horizontalCenter: parent.horizontalCenter
            number: "%L1".arg(page.wear.minutesLeft)
            fraction: page.wear.share
        }
    }

    Words {
        id: minutes

        width: parent.width
        visible: page.wear.timed && !page.wear.over
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("%Ln minute(s) left", "", page.wear.minutesLeft)
        font.bold: true
        Accessible.ignored: true
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.wear.advice
        font.bold: true
    }

    Words {
        width: parent.width
        visible: text !== "" && !page.asks
        text: page.wear.plan
    }

    Words {
        width: parent.width
        visible: text !== "" && !page.asks
        text: page.wear.worn
    }

    Words {
        width: parent.width
        visible: text !== "" && !page.asks && page.state !== WearModel.StayOff
        text: page.wear.note
        color: Theme.soft
    }

    // When it was, where it was not just now; less is earlier.
    NumberStepper {
        width: parent.width
        visible: (page.state === WearModel.Off || page.state === WearModel.Rest || page.state === WearModel.On || page.state === WearModel.DoneToday) && page.wear.agoSteps > 1
        labelWidth: parent.width
        label: page.state === WearModel.On ? qsTr("Taken off") : qsTr("Put on")
        from: 1 - page.wear.agoSteps
        to: 0
        value: -page.ago
        shown: page.wear.agoWords(page.ago)
        onChanged: value => page.ago = -value
    }

    // It happened against the plan: still better told than not.
    SecondaryButton {
        width: Math.min(implicitWidth, parent.width)
        visible: page.state === WearModel.Rest || page.state === WearModel.DoneToday
        text: qsTr("I have put it on all the same")
        onClicked: page.wear.putOn(page.ago)
    }

    Column {
        width: parent.width
        visible: page.state === WearModel.Look
        spacing: Theme.space

        Repeater {
            model: page.wear.signs

            ChoiceRow {
                required property var modelData

                width: parent.width
                many: true
                text: modelData.words
                checked: page.seen.indexOf(modelData.id) >= 0
                onToggled: page.press(modelData.id, checked)
            }
        }
    }

    Words {
        width: parent.width
        visible: page.state === WearModel.Watch
        text: page.wear.watchWords
        font.bold: true
    }

    Flow {
        width: parent.width
        visible: page.state === WearModel.Watch
        spacing: Theme.space * 1.5

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            text: page.wear.watchOver ? qsTr("Yes, it was gone") : qsTr("Yes, it is gone")
            onClicked: page.wear.redGone(true)
        }

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            visible: page.wear.watchOver
            text: qsTr("No, still red")
            onClicked: page.wear.redGone(false)
        }
    }

    Heading {
        width: parent.width
        visible: page.wear.past.length > 0
        topPadding: Theme.space
        text: qsTr("The last two weeks")
    }

    Repeater {
        model: page.wear.past

        Column {
            id: row

            required property var modelData

            width: parent.width
            spacing: Theme.space / 2

            Words {
                width: parent.width
                text: row.modelData.when
                font.bold: true
            }

            Words {
                width: parent.width
                text: row.modelData.words
            }
        }
    }

    actions: PrimaryButton {
        width: parent.width
        visible: page.state === WearModel.Off || page.state === WearModel.On || page.state === WearModel.Look
        enabled: page.state !== WearModel.Look || page.seen.length > 0
        text: page.state === WearModel.On ? qsTr("I have taken it off") : page.state === WearModel.Look ? qsTr("That is what I see") : qsTr("I have put it on")
        onClicked: {
            if (page.state === WearModel.On)
                page.wear.takeOff(page.ago);
            else if (page.state === WearModel.Look)
                page.wear.look(page.seen);
            else
                page.wear.putOn(page.ago);
        }
    }
}
