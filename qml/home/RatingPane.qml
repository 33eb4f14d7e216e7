// One kind of rating over time, on its sheet, with the words that say what the picture shows.
import QtQuick
import Newel.Parts

Rectangle {
    id: pane

    required property string title
    required property string ends
    required property string words
    property var points: []
    property bool square: false

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
            text: pane.title
        }

        Words {
            width: parent.width
            text: pane.words
        }

        RatingChart {
            width: parent.width
            height: 110 + 50 * Theme.scale
            visible: pane.points.length > 0
            mirrored: pane.LayoutMirroring.enabled
            points: pane.points
            square: pane.square
            Accessible.role: Accessible.Graphic
            Accessible.name: pane.title + ". " + pane.words
        }

        Words {
            width: parent.width
            text: pane.ends
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
}
