import QtQuick
import Newel.Home
import Newel.Parts

FirstRunPage {
    id: page

    readonly property string sample: qsTr("Stand up slowly, and hold on with both hands.")

    title: qsTr("How large should words be?")

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

    Notice {
        width: parent.width
        title: qsTr("This is how it looks:")
        text: page.sample
    }

    SecondaryButton {
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        text: qsTr("Read it to me")
        onClicked: page.models.settings.saySample(page.sample)
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.models.settings.voiceNote
        color: Theme.brass
    }

    ChoiceRow {
        width: parent.width
        many: true
        text: qsTr("More contrast")
        help: qsTr("Stronger colours, for eyes that need them.")
        checked: page.models.settings.moreContrast
        onClicked: page.models.settings.moreContrast = checked
    }
}
