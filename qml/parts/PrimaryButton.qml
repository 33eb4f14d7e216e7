// The one action of a screen that stands out.
import QtQuick
import Newel.Parts

BaseButton {
    ground: Theme.rail
    words: Theme.paper
    edge: Theme.rail
    least: Theme.big
    textSize: Theme.heading
}
