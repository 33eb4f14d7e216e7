import QtQuick
import Newel.Home
import Newel.Parts

FirstRunPage {
    id: page

    title: qsTr("Whom to call")

    WhoToCall {
        width: parent.width
        models: page.models
    }

    Words {
        width: parent.width
        text: qsTr("These numbers stand under Help. Newel itself calls nobody.")
        color: Theme.soft
    }
}
