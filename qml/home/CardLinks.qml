// The cards of advice as rows to open.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Column {
    id: links

    required property HomeModels models
    required property var cards
    property string heading: ""

    visible: cards.length > 0
    spacing: Theme.space

    Heading {
        width: parent.width
        text: links.heading
    }

    Repeater {
        model: links.cards

        SecondaryButton {
            required property var modelData

            width: links.width
            text: modelData.title
            onClicked: {
                links.models.advice.open(modelData.id);
                links.models.app.show(AppModel.Advice);
            }
        }
    }
}
