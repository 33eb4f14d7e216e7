// Plain text that wraps. The screen reader and the driver find it by its words.
import QtQuick
import Newel.Parts

Text {
    color: Theme.ink
    font.pixelSize: Theme.body
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    horizontalAlignment: Text.AlignLeft
    Accessible.role: Accessible.StaticText
    Accessible.name: Accessible.ignored ? "" : text
    Accessible.ignored: text === ""
}
