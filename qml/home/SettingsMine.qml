// In the settings: reminders, and what this phone keeps about the person.
import QtQuick
import Newel.Home
import Newel.Parts

Column {
    id: mine

    required property HomeModels models

    spacing: Theme.space * 2

    Column {
        width: parent.width
        visible: mine.models.app.paired
        spacing: Theme.space

        Heading {
            width: parent.width
            text: qsTr("Reminders")
        }

        Words {
            width: parent.width
            text: mine.models.reminders.state
            color: Theme.soft
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("When to remind me")
            onClicked: mine.models.app.show(AppModel.Reminders)
        }
    }

    Column {
        width: parent.width
        visible: mine.models.app.paired
        spacing: Theme.space

        Heading {
            width: parent.width
            text: qsTr("What this phone keeps about you")
        }

        Words {
            width: parent.width
            text: mine.models.app.contact
            color: Theme.soft
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("Save everything about me")
            onClicked: mine.models.app.show(AppModel.TakeAlong)
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("Erase this phone …")
            onClicked: mine.models.app.show(AppModel.Erase)
        }
    }
}
