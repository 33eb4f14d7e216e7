// "I did this away from the phone": which, how much, pain, effort, whether anything happened; then what follows.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

// Not a HomePage: its way back goes one question back first.
PageFrame {
    id: page

    required property HomeModels models
    readonly property TellLaterModel tell: models.tellLater
    readonly property int step: tell.step
    property int pain: -1
    property int effort: -1

    over: step === TellLaterModel.Which || step === TellLaterModel.Told ? "" : tell.title + "\n" + tell.when
    title: step === TellLaterModel.Which ? qsTr("What did you do away from the phone?")
        : step === TellLaterModel.HowMuch ? qsTr("How much of it did you do?")
        : step === TellLaterModel.Pain ? qsTr("How much pain did you have afterwards?")
        : step === TellLaterModel.Effort ? qsTr("How hard was it?")
        : step === TellLaterModel.Happened ? qsTr("Did anything happen?")
        : tell.ends ? qsTr("Please read this now") : qsTr("Written down")
    canGoBack: step !== TellLaterModel.Told
    canHelp: !(step === TellLaterModel.Told && tell.ends) // whom to call stands right here

    banner: models.app.banner

    onTitleChanged: {
        focusTitle();
        upper.show();
    }
    onHelpPressed: models.app.show(AppModel.Help)
    onBackPressed: {
        if (!tell.back())
            models.app.back();
    }

    Component.onCompleted: tell.begin()

    PageTop {
        id: upper
    }

    Notice {
        width: parent.width
        visible: page.tell.error !== ""
        kind: Notice.Attention
        title: page.tell.error
    }

    Words {
        width: parent.width
        visible: page.step === TellLaterModel.Which
        text: page.tell.rows.length > 0 ? qsTr("From the last seven days. The clinic sees that you told it later and that the phone did not time it.") : qsTr("All that was due in the last seven days is written down already.")
        color: Theme.soft
    }

    Column {
        width: parent.width
        visible: page.step === TellLaterModel.Which
        spacing: Theme.space

        Repeater {
            model: page.tell.rows

            Column {
                id: row

                required property int index
                required property var modelData

                width: parent.width
                spacing: Theme.space

                Heading {
                    width: parent.width
                    visible: text !== ""
                    topPadding: row.index > 0 ? Theme.space : 0
                    text: row.modelData.day
                }

                SecondaryButton {
                    width: parent.width
                    text: row.modelData.title
                    Accessible.description: row.modelData.dayWords + ", " + row.modelData.words
                    onClicked: page.tell.choose(row.index)
                }

                Words {
                    width: parent.width
                    text: row.modelData.words
                    color: Theme.soft
                    font.pixelSize: Theme.small
                }
            }
        }
    }

    Column {
        width: parent.width
        visible: page.step === TellLaterModel.HowMuch
        spacing: Theme.space * 1.5

        Repeater {
            model: [
                {
                    "words": qsTr("All of it"),
                    "percent": 100
                },
                {
                    "words": qsTr("Most of it"),
                    "percent": 75
                },
                {
                    "words": qsTr("About half"),
                    "percent": 50
                },
                {
                    "words": qsTr("A little of it"),
                    "percent": 25
                }
            ]

            SecondaryButton {
                required property var modelData

                width: parent.width
                text: modelData.words
                onClicked: page.tell.howMuch(modelData.percent)
            }
        }
    }

    ScalePicker {
        width: parent.width
        visible: page.step === TellLaterModel.Pain
        lowWords: qsTr("no pain")
        highWords: qsTr("the worst you can think of")
        value: page.pain
        onPicked: value => page.pain = value
    }

    ScalePicker {
        width: parent.width
        visible: page.step === TellLaterModel.Effort
        lowWords: qsTr("no effort at all")
        highWords: qsTr("all you had")
        value: page.effort
        onPicked: value => page.effort = value
    }

    ReasonGrid {
        width: parent.width
        visible: page.step === TellLaterModel.Happened
        reasons: page.tell.reasons
        onPicked: reason => page.tell.happened(reason)
    }

    Repeater {
        model: page.step === TellLaterModel.Told ? page.tell.findings : []

        Notice {
            required property string modelData

            width: parent.width
            kind: page.tell.ends ? Notice.Stop : Notice.Attention
            text: modelData
        }
    }

    WhoToCall {
        width: parent.width
        visible: page.step === TellLaterModel.Told && page.tell.ends
        models: page.models
        emergencyFirst: page.tell.emergencyFirst
    }

    Notice {
        width: parent.width
        visible: page.step === TellLaterModel.Told
        kind: Notice.Good
        title: page.tell.title
        text: qsTr("%1. Written down as told later, not timed.").arg(page.tell.when) + "\n" + page.models.app.contact
    }

    SecondaryButton {
        width: parent.width
        visible: page.step === TellLaterModel.Told && !page.tell.ends
        text: qsTr("Tell of another one")
        onClicked: {
            page.pain = -1;
            page.effort = -1;
            page.tell.begin();
        }
    }

    actions: PrimaryButton {
        width: parent.width
        visible: page.step >= TellLaterModel.Pain
        enabled: page.step === TellLaterModel.Pain ? page.pain >= 0 : page.step === TellLaterModel.Effort ? page.effort >= 0 : true
        text: page.step === TellLaterModel.Happened ? qsTr("No, nothing") : page.step === TellLaterModel.Told ? page.tell.ends ? qsTr("I have read this") : qsTr("Back to today") : qsTr("Next")
        onClicked: {
            if (page.step === TellLaterModel.Pain)
                page.tell.givePain(page.pain);
            else if (page.step === TellLaterModel.Effort)
                page.tell.giveEffort(page.effort);
            else if (page.step === TellLaterModel.Happened)
                page.tell.happened(0);
            else
                page.models.app.back();
        }
    }
}
