// A heading within a page.
import QtQuick
import Newel.Parts

Words {
    font.pixelSize: Theme.heading
    font.bold: true
    Accessible.role: Accessible.Heading
}
