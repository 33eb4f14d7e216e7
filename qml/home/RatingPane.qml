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
    property bool several: false // one dot alone says no more than its words
    property real least: 0
    property real most: 10

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
            visible: pane.points.length > 1 || pane.points.length > 0 && !pane.several
            mirrored: pane.LayoutMirroring.enabled
            points: pane.points
            square: pane.square
            least: pane.least
            most: pane.most
            Accessible.role: Accessible.Graphic
            Accessible.name: pane.title + ". " + pane.words
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: pane.ends
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
}
