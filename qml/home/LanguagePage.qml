// Which language; each by its own name, so that it is found in whatever language the page is.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

FirstRunPage {
    id: page

    title: qsTr("Your language")

    Column {
        width: parent.width
        spacing: 2

        Repeater {
            model: page.models.firstRun.languages

            RadioRow {
                required property var modelData

                width: parent.width
                text: modelData.name
                checked: page.models.firstRun.language === modelData.id
                onClicked: page.models.settings.language = modelData.id
            }
        }
    }

    Words {
        width: parent.width
        text: qsTr("Screens, voice and exercises use this language. An exercise that is not in it yet is shown in English.")
        color: Theme.soft
    }
}
