// The shape of what a rule says: octagon block, triangle ask, empty square caution, lines of text note.
import QtQuick
import Newel.Desk
import Newel.Parts

Mark {
    property int effect: 0 // newel.v1.Effect: 1 block, 2 ask, 3 caution, 4 note

    visible: effect > 0
    shape: effect === 1 ? Mark.Octagon : effect === 2 ? Mark.Triangle : effect === 3 ? Mark.Square : Mark.Lines
    colour: effect === 1 ? Theme.stop : effect === 2 ? Theme.brass : effect === 3 ? Theme.ink : Theme.soft
    inner: Theme.paper
}
