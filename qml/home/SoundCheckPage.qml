// A tone and a sentence, and what to do where one of them was not heard. Practice works without either.
import QtQuick
import Newel.Home
import Newel.Parts

FirstRunPage {
    id: page

    property bool played: false
    property int heard: -1 // 0 both, 1 the tone alone, 2 nothing

    title: qsTr("Can you hear the phone?")
    fromBottom: heard >= 0 // what follows from the answer comes into sight

    Words {
        width: parent.width
        text: qsTr("While you practise you look at the floor, not at the phone. A tone and a voice tell you what comes next.")
    }

    SecondaryButton {
        width: parent.width
        text: page.played ? qsTr("Play it again") : qsTr("Play a tone and the voice")
        mark: Mark.Play
        onClicked: {
            page.played = true;
            page.models.settings.tryVoice();
        }
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.models.settings.voiceNote
        color: Theme.brass
    }

    Column {
        width: parent.width
        visible: page.played
        spacing: 2

        Heading {
            width: parent.width
            text: qsTr("Did you hear it?")
        }

        RadioRow {
            width: parent.width
            text: qsTr("Yes, tone and voice")
            checked: page.heard === 0
            onClicked: page.heard = 0
        }

        RadioRow {
            width: parent.width
            text: qsTr("Only the tone")
            checked: page.heard === 1
            onClicked: page.heard = 1
        }

        RadioRow {
            width: parent.width
            text: qsTr("No, nothing")
            checked: page.heard === 2
            onClicked: page.heard = 2
        }
    }

    Notice {
        width: parent.width
        visible: page.heard === 0
        kind: Notice.Good
        title: qsTr("Good. You can put the phone down while you practise.")
    }

    Notice {
        width: parent.width
        visible: page.heard > 0
        kind: Notice.Attention
        title: page.heard === 1 ? qsTr("The voice cannot be heard") : qsTr("Nothing can be heard")
        text: page.heard === 1 ? qsTr("Every word is on the screen as well, and the tones tell when to change. Put the phone where you can read it.")
            : qsTr("Turn the sound up with the keys at the side, and take the phone off silent. If you use headphones or a hearing aid, see that it is connected. Then play it again. Every word is on the screen as well.")
    }
}
