// The therapist's photo and clip for one entry, and what is still to come of them. A practice waits for neither.
import QtQuick
import Newel.Parts

Column {
    id: pane

    // "photo": an address; "photoWords", "clipWords", "captions"; "clip": a ClipContent; "photoComing" and
    // "clipComing": named by the programme and not here yet.
    property var media: ({})
    property ClipPlayer player: null
    readonly property string photo: media.photo ?? ""
    readonly property string coming: (media.photoComing ?? false) && (media.clipComing ?? false) ? qsTr("The photo and the clip are still coming. You can practise without them.") : (media.photoComing ?? false) ? qsTr("The photo is still coming. You can practise without it.") : (media.clipComing ?? false) ? qsTr("The clip is still coming. You can practise without it.") : ""

    visible: photo !== "" || coming !== "" || (media.clip ?? null) !== null
    spacing: Theme.space

    Image {
        // No wider than it is, so that a small one stands where reading begins.
        width: Math.min(parent.width, 400, implicitWidth)
        visible: pane.photo !== ""
        fillMode: Image.PreserveAspectFit
        source: pane.photo
        Accessible.role: Accessible.Graphic
        Accessible.name: pane.media.photoWords ?? ""
    }

    Words {
        width: parent.width
        visible: pane.photo !== ""
        text: qsTr("The photo shows: %1").arg(pane.media.photoWords ?? "")
    }

    Loader {
        id: place

        // Set rather than bound: this page is itself a part of components that are bound.
        function fill() {
            if ((pane.media.clip ?? null) === null || pane.player === null) {
                place.source = "";
                return;
            }
            place.setSource(Qt.resolvedUrl("ClipView.qml"), {
                "player": pane.player,
                "clip": pane.media.clip,
                "words": pane.media.clipWords ?? "",
                "captions": pane.media.captions ?? ""
            });
        }

        width: parent.width
        visible: status === Loader.Ready
        Component.onCompleted: fill()

        Connections {
            target: pane
            function onMediaChanged() {
                place.fill();
            }
            function onPlayerChanged() {
                place.fill();
            }
        }
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: pane.coming
        color: Theme.soft
    }
}
