// The shape of an urgency: octagon now, triangle today, empty square soon, tick all well.
import QtQuick
import Newel.Desk
import Newel.Parts

Mark {
    property int urgency: 3

    shape: urgency === 0 ? Mark.Alarm : urgency === 1 ? Mark.Triangle : urgency === 2 ? Mark.Square : Mark.Tick
    colour: urgency === 0 ? Theme.stop : urgency === 1 ? Theme.brass : urgency === 2 ? Theme.ink : Theme.rail
    inner: Theme.paper
}
