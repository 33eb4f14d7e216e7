pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    property string chosen: ""

    over: models.practice.questionPlace
    title: models.practice.question

    // The next question comes on the same page.
    onTitleChanged: {
        chosen = "";
        focusTitle();
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.models.practice.questionHelp
        color: Theme.soft
    }

    PracticeError {
        width: parent.width
        models: page.models
    }

    Column {
        width: parent.width
        spacing: 2

        Repeater {
            model: page.models.practice.choices

            RadioRow {
                required property var modelData

                width: parent.width
                text: modelData.words
                checked: page.chosen === modelData.id
                onClicked: page.chosen = modelData.id
            }
        }
    }

    actions: PrimaryButton {
        width: parent.width
        enabled: page.chosen !== ""
        text: qsTr("Next")
        onClicked: page.models.practice.answer(page.chosen)
    }
}
