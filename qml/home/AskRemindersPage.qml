// Whether to remind, with the reason; asked once, and changed in Settings whenever the person likes.
import QtQuick
import Newel.Home
import Newel.Parts

FirstRunPage {
    id: page

    title: qsTr("May the phone remind you?")
    nextWords: models.reminders.asked ? qsTr("Next") : ""

    Words {
        width: parent.width
        text: qsTr("Practice is easily forgotten. The phone can show a short note when something is due. The note says nothing about your body or your exercises.")
    }

    Words {
        width: parent.width
        text: qsTr("You can put a note off, or turn them all off in Settings.")
        color: Theme.soft
    }

    Column {
        width: parent.width
        spacing: 2

        RadioRow {
            width: parent.width
            text: qsTr("Yes, remind me")
            checked: page.models.reminders.asked && page.models.reminders.on
            onClicked: page.models.reminders.on = true
        }

        RadioRow {
            width: parent.width
            text: qsTr("No reminders")
            checked: page.models.reminders.asked && !page.models.reminders.on
            onClicked: page.models.reminders.on = false
        }
    }
}
