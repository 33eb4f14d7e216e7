// A step of the first run; the same page again later from Settings, where there is no next one.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: step

    readonly property bool first: models.firstRun.running
    property string nextWords: qsTr("Next")

    over: first ? models.firstRun.place : ""
    canGoBack: !first || models.firstRun.canGoBack

    actions: PrimaryButton {
        width: parent.width
        visible: step.first && step.nextWords !== ""
        text: step.nextWords
        onClicked: step.models.firstRun.next()
    }
}
