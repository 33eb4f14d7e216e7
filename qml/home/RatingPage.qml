import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    property int pain: -1
    property int effort: -1
    property bool atEffort: false

    over: models.practice.entryTitle
    title: atEffort ? qsTr("How hard was it?") : qsTr("How much pain do you have now?")

    onTitleChanged: focusTitle()

    PracticeError {
        width: parent.width
        models: page.models
    }

    ScalePicker {
        width: parent.width
        visible: !page.atEffort
        lowWords: qsTr("no pain")
        highWords: qsTr("the worst you can think of")
        value: page.pain
        onPicked: value => page.pain = value
    }

    ScalePicker {
        width: parent.width
        visible: page.atEffort
        lowWords: qsTr("no effort at all")
        highWords: qsTr("all you had")
        value: page.effort
        onPicked: value => page.effort = value
    }

    SecondaryButton {
        width: parent.width
        visible: page.atEffort
        text: qsTr("Back to pain")
        onClicked: page.atEffort = false
    }

    actions: PrimaryButton {
        width: parent.width
        enabled: page.atEffort ? page.effort >= 0 : page.pain >= 0
        text: qsTr("Next")
        onClicked: {
            if (page.atEffort)
                page.models.practice.rate(page.pain, page.effort);
            else
                page.atEffort = true;
        }
    }
}
