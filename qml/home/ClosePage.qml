pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: models.practice.endWords

    Repeater {
        model: page.models.practice.doneRows

        Item {
            id: row

            required property var modelData

            width: parent.width
            implicitHeight: words.implicitHeight

            Mark {
                id: sign

                x: row.LayoutMirroring.enabled ? parent.width - width : 0
                y: 2
                width: Math.round(Theme.body * 1.3)
                height: width
                shape: row.modelData.done ? Mark.Tick : Mark.Minus
                colour: row.modelData.done ? Theme.good : Theme.soft
                inner: Theme.paper
            }

            Column {
                id: words

                anchors.right: parent.right
                width: parent.width - sign.width - Theme.space * 1.5

                Words {
                    width: parent.width
                    text: row.modelData.title
                    font.bold: true
                }

                Words {
                    width: parent.width
                    text: row.modelData.words
                    color: Theme.soft
                }
            }
        }
    }

    PracticeError {
        width: parent.width
        models: page.models
    }

    Notice {
        id: sent

        readonly property bool arrived: page.models.app.delivery === 1

        width: parent.width
        kind: arrived ? Notice.Good : page.models.app.delivery === 2 ? Notice.Attention : Notice.Note
        title: arrived ? qsTr("The clinic has it") : qsTr("What the clinic gets")
        text: page.models.app.deliveryWords

        Words {
            width: parent.width
            visible: !sent.arrived
            text: qsTr("That is what you did of each exercise, your answers before it, and your numbers for pain and effort.")
            color: Theme.soft
        }
    }

    actions: PrimaryButton {
        width: parent.width
        text: qsTr("Back to today")
        onClicked: page.models.app.leavePractice()
    }
}
