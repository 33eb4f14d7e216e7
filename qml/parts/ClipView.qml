// A clip in its place: what it shows in words, a button that plays or stops it, and what is said in it. A page
// that is left stops the player; a list that is only built anew does not.
import QtQuick
import Newel.Parts

Column {
    id: view

    required property ClipPlayer player
    property ClipContent clip: null
    property string words: ""
    property string captions: ""
    readonly property bool mine: player.clip !== null && player.clip === clip
    readonly property bool playing: mine && player.playing

    spacing: Theme.space / 2

    ClipScreen {
        id: screen

        width: parent.width
        height: shows ? width * 0.75 : 0
        visible: shows
        player: view.player
        clip: view.clip
        Accessible.role: Accessible.Graphic
        Accessible.name: view.words
    }

    SecondaryButton {
        width: parent.width
        enabled: view.player.mayPlay
        text: view.playing ? qsTr("Stop the clip") : qsTr("Play the clip")
        Accessible.name: text + ", " + view.words
        onClicked: view.playing ? view.player.stop() : view.player.play(view.clip)
    }

    Words {
        width: parent.width
        visible: view.mine && view.player.failed
        text: qsTr("This device cannot play the clip. What it shows is written here.")
        color: Theme.brass
        font.bold: true
    }

    Words {
        width: parent.width
        text: qsTr("The clip shows: %1").arg(view.words)
    }

    Words {
        width: parent.width
        visible: view.captions !== ""
        text: qsTr("What is said: %1").arg(view.captions)
    }
}
