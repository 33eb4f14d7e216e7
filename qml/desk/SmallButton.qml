// A button among others, as tall as a field.
import QtQuick
import Newel.Desk
import Newel.Parts

BaseButton {
    ground: Theme.sheet
    edge: Theme.soft
    least: 36
    textSize: Theme.small
    leftPadding: Theme.space * 1.5
    rightPadding: Theme.space * 1.5
    topPadding: 4
    bottomPadding: 4
}
