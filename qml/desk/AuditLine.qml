// One line of the audit trail: when, who, what, about whom.
import QtQuick
import Newel.Desk
import Newel.Parts

Item {
    id: row

    required property var line
    readonly property bool narrow: width < 900 * Theme.scale
    readonly property string words: line.about === "" ? line.what : qsTr("%1 · %2").arg(line.what).arg(line.about)

    height: (narrow ? what.y + what.height : Math.max(when.height, who.height, what.height)) + Theme.space
    Accessible.role: Accessible.ListItem
    Accessible.name: qsTr("%1, %2: %3").arg(line.when).arg(line.who).arg(words)

    Say {
        id: when

        width: 160 * Theme.scale
        text: row.line.when
        color: Theme.soft
        Accessible.ignored: true
    }

    Say {
        id: who

        x: when.width + Theme.space
        width: row.narrow ? row.width - x : Math.min(280 * Theme.scale, row.width * 0.28)
        text: row.line.who
        font.bold: true
        Accessible.ignored: true
    }

    Say {
        id: what

        x: row.narrow ? 0 : who.x + who.width + Theme.space
        y: row.narrow ? Math.max(when.height, who.height) : 0
        width: row.width - x
        text: row.words
        Accessible.ignored: true
    }

    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.groove
    }
}
