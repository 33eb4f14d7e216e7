// Stop: wide, alone, with its own shape. Acts on press, not on release: what it does can be taken back.
import QtQuick
import Newel.Parts

BaseButton {
    id: control

    signal stopPressed

    text: qsTr("Stop")
    ground: Theme.stop
    words: Theme.paper
    edge: Theme.stop
    least: Theme.big + Theme.space
    textSize: Theme.title
    mark: Mark.Octagon
    onPressed: control.stopPressed()
    Accessible.onPressAction: control.stopPressed()
    Keys.onReturnPressed: control.stopPressed()
    Keys.onEnterPressed: control.stopPressed()
}
