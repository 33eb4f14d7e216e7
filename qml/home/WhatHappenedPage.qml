import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    over: qsTr("Stopped")
    title: qsTr("What happened?")

    PracticeError {
        width: parent.width
        models: page.models
    }

    ReasonGrid {
        width: parent.width
        reasons: page.models.practice.reasons
        onPicked: reason => page.models.practice.stopReason(reason)
    }

    Words {
        width: parent.width
        visible: page.models.app.emergencyNumber !== ""
        text: qsTr("In danger? Call %1 first.").arg(page.models.app.emergencyNumber)
        color: Theme.stop
        font.bold: true
    }
}
