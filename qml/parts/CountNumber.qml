// The number to be read from across the room. At least 10 mm high on a 6-inch screen up to two digits.
import QtQuick
import Newel.Parts

Text {
    objectName: "numeral"
    color: Theme.ink
    font.pixelSize: Theme.numeral
    font.bold: true
    fontSizeMode: Text.HorizontalFit
    minimumPixelSize: 40
    horizontalAlignment: Text.AlignHCenter
    verticalAlignment: Text.AlignVCenter
    Accessible.ignored: true
}
