// How far something got: sent, arrived on the phone, seen by the person, each with its time or "not yet".
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Flow {
    id: row

    required property var item // with sent, arrived, seen: words, empty for not yet
    required property string about

    spacing: Theme.space

    Repeater {
        model: [
            {
                "what": qsTr("Sent"),
                "when": row.item.sent
            },
            {
                "what": qsTr("Arrived"),
                "when": row.item.arrived
            },
            {
                "what": qsTr("Seen"),
                "when": row.item.seen
            }
        ]

        Row {
            id: step

            required property var modelData

            spacing: 4

            Mark {
                width: Theme.small
                height: Theme.small
                y: 3
                shape: step.modelData.when !== "" ? Mark.Tick : Mark.Square
                colour: step.modelData.when !== "" ? Theme.good : Theme.soft
                inner: Theme.paper
            }

            Say {
                text: step.modelData.when !== "" ? step.modelData.what + " " + step.modelData.when
                                                 : qsTr("%1: not yet").arg(step.modelData.what)
                color: step.modelData.when !== "" ? Theme.ink : Theme.soft
                wrapMode: Text.NoWrap
                Accessible.name: qsTr("%1, %2").arg(row.about).arg(text)
            }
        }
    }
}
