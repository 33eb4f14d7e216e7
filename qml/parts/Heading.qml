// A heading within a page.
import QtQuick

Words {
    font.pixelSize: Theme.heading
    font.bold: true
    Accessible.role: Accessible.Heading
}
