// Words at the desk's size: a screen at arm's length, much to read.
import QtQuick
import Newel.Desk
import Newel.Parts

Words {
    font.pixelSize: Theme.small
}
