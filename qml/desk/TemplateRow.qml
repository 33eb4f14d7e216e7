// A template to begin from, with its sources, and, when it is the clinic's own, what can be done with it.
import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: item

    required property StartModel start
    required property var choice // see StartModel.choices
    property bool telling: false
    property bool renaming: false
    readonly property bool asked: start.asked === choice.id
    readonly property var facts: [choice.minutes, choice.written]

    spacing: Theme.space / 2

    StartRow {
        width: parent.width
        title: item.choice.name
        about: item.choice.forWhom
        brings: item.choice.titles
        facts: item.facts.filter(w => w !== "").join(". ")
        leftOut: item.choice.leftOut
        onClicked: item.start.startFrom(item.choice.id)
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        SmallButton {
            least: 32
            visible: item.choice.sources !== ""
            text: item.telling ? qsTr("Hide sources") : qsTr("Sources")
            Accessible.name: qsTr("%1: %2").arg(text).arg(item.choice.name)
            onClicked: item.telling = !item.telling
        }

        SmallButton {
            least: 32
            visible: item.choice.own
            text: qsTr("Rename")
            Accessible.name: qsTr("Rename the template %1").arg(item.choice.name)
            onClicked: {
                item.renaming = !item.renaming;
                if (item.renaming) {
                    name.text = item.choice.name;
                    name.takeFocus();
                }
            }
        }

        SmallButton {
            least: 32
            visible: item.choice.own && !item.asked
            text: qsTr("Withdraw")
            Accessible.name: qsTr("Withdraw the template %1").arg(item.choice.name)
            onClicked: item.start.ask(item.choice.id)
        }
    }

    Say {
        width: parent.width
        visible: item.telling
        text: item.choice.sources
        color: Theme.soft
    }

    LineField {
        id: name

        width: parent.width
        visible: item.renaming
        label: qsTr("New name")
        name: qsTr("New name of the template %1").arg(item.choice.name)
        maximumLength: 100
        onAccepted: item.start.rename(item.choice.id, text)
    }

    SmallButton {
        least: 32
        visible: item.renaming
        text: qsTr("Keep the name")
        onClicked: item.start.rename(item.choice.id, name.text)
    }

    Say {
        width: parent.width
        visible: item.asked
        text: qsTr("Withdraw it for everybody in the clinic? Programmes that were begun from it stay as they are.")
        font.bold: true
    }

    Flow {
        width: parent.width
        visible: item.asked
        spacing: Theme.space * 0.75

        SmallButton {
            least: 32
            text: qsTr("Yes, withdraw it")
            words: Theme.stop
            edge: Theme.stop
            onClicked: item.start.withdraw(item.choice.id)
        }

        SmallButton {
            least: 32
            text: qsTr("No, keep it")
            onClicked: item.start.ask("")
        }
    }
}
