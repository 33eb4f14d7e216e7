// The one action of a desk page that stands out.
import QtQuick
import Newel.Desk
import Newel.Parts

BaseButton {
    ground: Theme.rail
    words: Theme.paper
    edge: Theme.rail
    least: Theme.target
    textSize: Theme.body
}
