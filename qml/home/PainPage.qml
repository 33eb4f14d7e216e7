import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    property int chosen: -1

    over: qsTr("Before you start")
    title: qsTr("How much pain do you have right now?")

    PracticeError {
        width: parent.width
        models: page.models
    }

    ScalePicker {
        width: parent.width
        lowWords: qsTr("no pain")
        highWords: qsTr("the worst you can think of")
        value: page.chosen
        onPicked: value => page.chosen = value
    }

    actions: PrimaryButton {
        width: parent.width
        enabled: page.chosen >= 0
        text: qsTr("Next")
        onClicked: page.models.practice.painBefore(page.chosen)
    }
}
