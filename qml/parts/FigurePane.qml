// A figure on its sheet, and what it shows in words for who does not see it.
import QtQuick
import Newel.Parts

Rectangle {
    id: pane

    property FigureSource source: null
    property int still: -1 // see FigureView
    readonly property bool there: source !== null && source.there

    color: Theme.sheet
    radius: Theme.radius
    visible: there
    Accessible.role: Accessible.Graphic
    Accessible.name: there ? source.words : ""

    FigureView {
        anchors.fill: parent
        anchors.margins: 2
        source: pane.source
        still: pane.still
    }
}
