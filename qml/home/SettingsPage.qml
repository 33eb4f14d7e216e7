import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: qsTr("Settings")
    canGoBack: true

    SecondaryButton {
        width: parent.width
        text: qsTr("Language")
        onClicked: page.models.app.show(AppModel.Language)
    }

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

        ChoiceRow {
            width: parent.width
            visible: page.models.settings.canVibrate
            many: true
            text: qsTr("Vibrate with every tone")
            help: qsTr("For a phone you can feel, in a pocket or in your hand.")
            checked: page.models.settings.vibrates
            onClicked: page.models.settings.vibrates = checked
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: page.models.settings.voiceNote
            color: Theme.brass
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("Check the sound")
            onClicked: page.models.app.show(AppModel.SoundCheck)
        }
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Heading {
            width: parent.width
            text: qsTr("Light or dark")
        }

        RadioRow {
            width: parent.width
            text: qsTr("As the phone")
            checked: page.models.settings.look === SettingsModel.AsSystem
            onClicked: page.models.settings.look = SettingsModel.AsSystem
        }

        RadioRow {
            width: parent.width
            text: qsTr("Light")
            checked: page.models.settings.look === SettingsModel.Light
            onClicked: page.models.settings.look = SettingsModel.Light
        }

        RadioRow {
            width: parent.width
            text: qsTr("Dark")
            checked: page.models.settings.look === SettingsModel.Dark
            onClicked: page.models.settings.look = SettingsModel.Dark
        }

        ChoiceRow {
            width: parent.width
            many: true
            text: qsTr("More contrast")
            help: qsTr("Stronger colours, for eyes that need them.")
            checked: page.models.settings.moreContrast
            onClicked: page.models.settings.moreContrast = checked
        }

        Words {
            width: parent.width
            visible: page.models.settings.systemMoreContrast && !page.models.settings.moreContrast
            text: qsTr("On now, because the phone asks for it everywhere.")
            color: Theme.soft
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

        Words {
            width: parent.width
            visible: page.models.settings.systemLessMotion && !page.models.settings.lessMotion
            text: qsTr("On now, because the phone asks for it everywhere.")
            color: Theme.soft
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("How you are drawn")
            onClicked: page.models.app.show(AppModel.Drawn)
        }
    }

    Column {
        width: parent.width
        spacing: Theme.space * 1.5

        Heading {
            width: parent.width
            text: qsTr("From the first start")
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("How large should words be?")
            onClicked: page.models.app.show(AppModel.TextSize)
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("May the phone remind you?")
            onClicked: page.models.app.show(AppModel.AskReminders)
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("Whom to call")
            onClicked: page.models.app.show(AppModel.Calls)
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("What Newel is, and is not")
            onClicked: page.models.app.show(AppModel.About)
        }
    }

    SettingsMine {
        width: parent.width
        models: page.models
    }
}
