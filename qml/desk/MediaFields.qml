// A photo and a clip for one entry: choose, see, say in words, take out again.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: fields

    required property EntryMediaModel media
    property string about: ""

    function named(what: string): string {
        return what + ", " + fields.about;
    }

    function attach(file: string): void {
        fields.media.attach(file);
        if (fields.media.problem === "")
            path.text = "";
    }

    spacing: Theme.space
    onVisibleChanged: {
        if (!visible)
            media.player.stop();
    }

    LineField {
        id: path

        width: parent.width
        label: qsTr("Photo or clip (may be left out)")
        name: fields.named(label)
        hint: qsTr("Path of a file on this computer, or drop it here")
        onAccepted: fields.attach(path.text)

        DropArea {
            anchors.fill: parent
            onDropped: drop => {
                if (drop.hasUrls)
                    fields.attach(drop.urls[0]);
            }
        }
    }

    Say {
        width: parent.width
        text: qsTr("Photos: any size. Clips: MP4, MOV or WebM, 16 MiB at most. Where and when it was taken is taken out. The handout leaves both out.")
        color: Theme.soft
    }

    Flow {
        width: parent.width
        spacing: Theme.space

        SmallButton {
            text: qsTr("Choose a file …")
            enabled: fields.media.sending === ""
            Accessible.name: fields.named(text)
            onClicked: dialog.setSource("MediaFileDialog.qml", {
                "media": fields.media
            })
        }

        SmallButton {
            text: qsTr("Take this file")
            enabled: path.text.trim() !== "" && fields.media.sending === ""
            Accessible.name: fields.named(text)
            onClicked: fields.attach(path.text)
        }
    }

    Loader {
        id: dialog
    }

    Say {
        width: parent.width
        visible: text !== ""
        text: fields.media.sending
        font.bold: true
    }

    Problem {
        width: parent.width
        text: fields.media.problem
    }

    Image {
        width: Math.min(parent.width, 320, implicitWidth)
        visible: fields.media.photo !== ""
        fillMode: Image.PreserveAspectFit
        source: fields.media.photo
        Accessible.role: Accessible.Graphic
        Accessible.name: fields.media.photoWords
    }

    AreaField {
        id: photoWords

        width: parent.width
        visible: fields.media.hasPhoto
        label: qsTr("What the photo shows")
        name: fields.named(label)
        hint: qsTr("One sentence, for who does not see it. Needed.")
        lines: 1
        text: fields.media.photoWords
        onEdited: text => fields.media.setPhotoWords(text)
    }

    SmallButton {
        visible: fields.media.hasPhoto
        text: qsTr("Take the photo out")
        Accessible.name: fields.named(text)
        onClicked: fields.media.removePhoto()
    }

    Loader {
        width: Math.min(parent.width, 320)
        active: fields.media.clip !== null
        visible: active
        sourceComponent: ClipView {
            player: fields.media.player
            clip: fields.media.clip
            words: fields.media.clipWords
            captions: fields.media.captions
        }
    }

    AreaField {
        id: clipWords

        width: parent.width
        visible: fields.media.hasClip
        label: qsTr("What the clip shows")
        name: fields.named(label)
        hint: qsTr("One sentence, for who does not see it. Needed.")
        lines: 1
        text: fields.media.clipWords
        onEdited: text => fields.media.setClipWords(text)
    }

    AreaField {
        id: captions

        width: parent.width
        visible: fields.media.hasClip
        label: qsTr("What is said in the clip")
        name: fields.named(label)
        hint: qsTr("Word for word, for who does not hear it. Empty when nothing is said.")
        text: fields.media.captions
        onEdited: text => fields.media.setCaptions(text)
    }

    SmallButton {
        visible: fields.media.hasClip
        text: qsTr("Take the clip out")
        Accessible.name: fields.named(text)
        onClicked: fields.media.removeClip()
    }

    // What is typed breaks a binding: another entry, or undo, sets it anew.
    Connections {
        target: fields.media

        function onChanged(): void {
            if (!photoWords.editing && photoWords.text !== fields.media.photoWords)
                photoWords.text = fields.media.photoWords;
            if (!clipWords.editing && clipWords.text !== fields.media.clipWords)
                clipWords.text = fields.media.clipWords;
            if (!captions.editing && captions.text !== fields.media.captions)
                captions.text = fields.media.captions;
        }
    }
}
