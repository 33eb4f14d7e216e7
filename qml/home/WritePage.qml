// A line to the therapist, and what was written before.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    property bool written: false

    title: qsTr("Write to your therapist")
    canGoBack: true

    Notice {
        width: parent.width
        kind: Notice.Attention
        title: qsTr("Nobody reads this at once")
        text: qsTr("With pain, a wound or a fall, call instead.")
    }

    TextEntry {
        id: line

        width: parent.width
        label: qsTr("Your words")
        error: page.models.messages.error
        onTextChanged: {
            if (text !== "")
                page.written = false;
        }
    }

    Notice {
        width: parent.width
        visible: page.written
        kind: Notice.Good
        title: qsTr("Kept. It goes to the clinic as soon as it can be reached.")
    }

    Heading {
        width: parent.width
        visible: page.models.messages.rows.length > 0
        text: qsTr("Written before")
    }

    Repeater {
        model: page.models.messages.rows

        Column {
            id: message

            required property var modelData

            width: parent.width
            spacing: Theme.space

            Notice {
                width: parent.width
                title: message.modelData.title
                text: message.modelData.words
            }

            EntryMedia {
                width: parent.width
                media: message.modelData.media ?? ({})
                player: page.models.clips
            }
        }
    }

    actions: PrimaryButton {
        width: parent.width
        enabled: line.text.trim() !== ""
        text: qsTr("Send")
        onClicked: {
            if (page.models.messages.write(line.text)) {
                line.text = "";
                page.written = true;
            }
        }
    }
}
