// Wearing time on the first page: where things are, and the way to tell.
import QtQuick
import Newel.Home
import Newel.Parts

Rectangle {
    id: card

    required property HomeModels models
    readonly property WearModel wear: models.wear

    implicitHeight: column.implicitHeight + 2 * Theme.edge
    color: Theme.sheet
    radius: Theme.radius

    Column {
        id: column

        x: Theme.edge
        y: Theme.edge
        width: parent.width - 2 * Theme.edge
        spacing: Theme.space

        Heading {
            width: parent.width
            text: card.wear.headline
        }

        Rectangle {
            width: parent.width
            height: 10
            visible: card.wear.timed
            radius: 5
            color: Theme.groove

            Rectangle {
                x: card.LayoutMirroring.enabled ? parent.width - width : 0
                width: Math.max(height, parent.width * card.wear.share)
                height: parent.height
                radius: 5
                color: card.wear.over ? Theme.stop : Theme.rail
            }
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: card.wear.advice
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: card.wear.worn
            color: Theme.soft
        }

        SecondaryButton {
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            text: qsTr("Wearing time")
            onClicked: card.models.app.show(AppModel.Wear)
        }
    }
}
