// The cards of advice: which go along with the programme, and on which days they show.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: cards

    required property DraftModel draft

    spacing: Theme.space * 1.5

    Heading {
        width: parent.width
        text: qsTr("Cards of advice")
    }

    Say {
        width: parent.width
        text: qsTr("Shown on the phone on the days chosen, and printed with the handout.")
        color: Theme.soft
    }

    // By number, so that a note stays the same line while it is typed in.
    Repeater {
        model: cards.draft.cards.length

        Column {
            id: card

            required property int index
            readonly property var modelData: cards.draft.cards[index]

            width: cards.width
            spacing: Theme.space / 2

            Chip {
                width: Math.min(implicitWidth, parent.width)
                text: card.modelData.title
                group: qsTr("Card of advice")
                many: true
                chosen: card.modelData.sent
                onClicked: cards.draft.toggleCard(card.modelData.id)
            }

            Say {
                width: parent.width
                text: card.modelData.why
                color: Theme.soft
            }

            ChipStrip {
                width: parent.width
                visible: card.modelData.sent
                group: qsTr("Day, %1").arg(card.modelData.title)
                many: true
                chosen: card.modelData.days
                options: [
                    {
                        "value": 1,
                        "text": qsTr("Mon")
                    },
                    {
                        "value": 2,
                        "text": qsTr("Tue")
                    },
                    {
                        "value": 3,
                        "text": qsTr("Wed")
                    },
                    {
                        "value": 4,
                        "text": qsTr("Thu")
                    },
                    {
                        "value": 5,
                        "text": qsTr("Fri")
                    },
                    {
                        "value": 6,
                        "text": qsTr("Sat")
                    },
                    {
                        "value": 7,
                        "text": qsTr("Sun")
                    }
                ]
                onPicked: value => cards.draft.toggleCardDay(card.modelData.id, value)
            }

            LineField {
                width: parent.width
                visible: card.modelData.sent
                name: qsTr("Your note on the card %1").arg(card.modelData.title)
                hint: qsTr("Your note to this person, may be empty")
                text: card.modelData.note
                onEdited: text => cards.draft.setCardNote(card.modelData.id, text)
            }
        }
    }
}
