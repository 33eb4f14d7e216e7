import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: qsTr("Settings")
    canGoBack: true

    NumberStepper {
        anchors.left: parent.left
        label: qsTr("Size of text")
        unit: "%"
        value: page.models.settings.textPercent
        from: 100
        to: 200
        step: 25
        onChanged: value => page.models.settings.textPercent = value
    }

    Column {
        width: parent.width
        spacing: Theme.space

        ChoiceRow {
            width: parent.width
            many: true
            text: qsTr("Say the cues aloud")
            help: qsTr("Tones are heard either way.")
            checked: page.models.settings.voice
            onClicked: page.models.settings.voice = checked
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: page.models.settings.voiceNote
            color: Theme.brass
        }

        SecondaryButton {
            anchors.left: parent.left
            text: qsTr("Let me hear it")
            onClicked: page.models.settings.tryVoice()
        }
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Heading {
            width: parent.width
            text: qsTr("Light or dark")
        }

        ChoiceRow {
            width: parent.width
            text: qsTr("As the phone")
            checked: page.models.settings.look === SettingsModel.AsSystem
            onClicked: page.models.settings.look = SettingsModel.AsSystem
        }

        ChoiceRow {
            width: parent.width
            text: qsTr("Light")
            checked: page.models.settings.look === SettingsModel.Light
            onClicked: page.models.settings.look = SettingsModel.Light
        }

        ChoiceRow {
            width: parent.width
            text: qsTr("Dark")
            checked: page.models.settings.look === SettingsModel.Dark
            onClicked: page.models.settings.look = SettingsModel.Dark
        }
    }

    Column {
        width: parent.width
        spacing: Theme.space

        Heading {
            width: parent.width
            text: qsTr("Pictures of the exercises")
        }

        ChoiceRow {
            width: parent.width
            many: true
            text: qsTr("Still pictures, no movement")
            help: qsTr("The figure goes from pose to pose.")
            checked: page.models.settings.lessMotion
            onClicked: page.models.settings.lessMotion = checked
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("How you are drawn")
            onClicked: page.models.app.show(AppModel.Drawn)
        }
    }

    SettingsMine {
        width: parent.width
        models: page.models
    }
}
