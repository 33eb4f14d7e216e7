pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property bool ends: models.practice.verdictEnds

    title: ends ? qsTr("Stop now") : qsTr("Please note")
    canHelp: !ends // whom to call stands right here

    Repeater {
        model: page.models.practice.verdict

        Notice {
            required property string modelData

            width: parent.width
            kind: page.ends ? Notice.Stop : Notice.Attention
            text: modelData
        }
    }

    WhoToCall {
        width: parent.width
        visible: page.ends
        models: page.models
        emergencyFirst: page.models.practice.emergencyFirst
    }

    PracticeError {
        width: parent.width
        models: page.models
    }

    actions: PrimaryButton {
        width: parent.width
        text: qsTr("I have read this")
        onClicked: page.models.practice.acknowledge()
    }
}
