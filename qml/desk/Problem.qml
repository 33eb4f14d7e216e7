// What is wrong, in words, with its shape; takes no room while nothing is.
import QtQuick
import Newel.Desk
import Newel.Parts

Row {
    id: problem

    property string text: ""
    property bool grave: true

    visible: text !== ""
    spacing: Theme.space

    Mark {
        width: Theme.small
        height: Theme.small
        y: 3
        shape: Mark.Triangle
        colour: problem.grave ? Theme.stop : Theme.brass
        inner: Theme.paper
    }

    Say {
        width: problem.width - Theme.small - Theme.space
        text: problem.text
        color: problem.grave ? Theme.stop : Theme.brass
        Accessible.role: Accessible.AlertMessage
    }
}
