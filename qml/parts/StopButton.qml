// Stop: wide, alone, with its own shape. Acts on press, not on release: what it does can be taken back.
import QtQuick
import Newel.Parts

BaseButton {
    id: control

    signal stopPressed

    property bool tall: false // at the side of a low screen: the word keeps to its width

    readonly property string said: qsTr("Stop")

    objectName: "stop"
    text: said
    ground: Theme.stop
    words: Theme.paper
    edge: Theme.stop
    least: Theme.big + Theme.space
    textSize: tall ? Math.min(Theme.title, 28) : Theme.title
    leftPadding: tall ? Theme.space : Theme.edge
    rightPadding: leftPadding
    mark: Mark.Octagon
    onPressed: control.stopPressed()
    Accessible.onPressAction: control.stopPressed()
    Keys.onReturnPressed: control.stopPressed()
    Keys.onEnterPressed: control.stopPressed()
}
