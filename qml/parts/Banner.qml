// A strip across the top that stays, for what must never be overlooked, such as a test clock.
import QtQuick
import Newel.Parts

Rectangle {
    property alias text: words.text

    height: visible ? words.implicitHeight + Theme.space : 0
    visible: text !== ""
    color: Theme.brass

    Words {
        id: words

        anchors.centerIn: parent
        width: parent.width - 2 * Theme.edge
        color: Theme.paper
        font.pixelSize: Theme.small
    }
}
