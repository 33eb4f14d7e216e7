// Where a draft begins: the last programme, a template, what suits this person, or nothing. Everything here can be
// undone.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: pane

    required property StartModel start
    property bool all: false // also the templates that are for others
    readonly property var offered: start.choices

    signal blankChosen
    signal suggestionsChosen

    function takeFocus(): void {
        const first = start.lastWords !== "" ? last : start.fitting > 0 ? templates.itemAt(0).children[0] : suggest;
        first.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("Start from")
    }

    Say {
        width: parent.width
        text: qsTr("Whatever you choose is put to the safety rules for this person. Pain limits, and wearing time that is planned already, stay as they are.")
        color: Theme.soft
    }

    Problem {
        width: parent.width
        text: pane.start.problem
    }

    StartRow {
        id: last

        width: parent.width
        visible: pane.start.lastWords !== ""
        title: pane.start.lastWords
        about: qsTr("Its exercises, days, advice and cards, to change what has to change.")
        onClicked: pane.start.startLast()
    }

    Heading {
        width: parent.width
        visible: pane.start.asks.length > 0
        text: qsTr("Asked for in the file this person came with")
    }

    Repeater {
        model: pane.start.asks

        Say {
            required property var modelData

            width: pane.width
            text: qsTr("%1: %2").arg(modelData.title).arg(modelData.details)
        }
    }

    StartRow {
        width: parent.width
        visible: pane.start.asksWords !== ""
        title: qsTr("What the file asks for")
        about: pane.start.asksWords
        onClicked: pane.start.startFromAsked()
    }

    Repeater {
        id: templates

        model: pane.all ? pane.offered : pane.offered.slice(0, pane.start.fitting)

        TemplateRow {
            required property var modelData

            width: pane.width
            start: pane.start
            choice: modelData
        }
    }

    Say {
        width: parent.width
        visible: pane.start.fitting === 0
        text: qsTr("No template is made for this level and mobility.")
        color: Theme.soft
    }

    SmallButton {
        visible: pane.start.choices.length > pane.start.fitting
        text: pane.all ? qsTr("Only templates for this person") : qsTr("Templates for others too (%1)").arg(pane.start.choices.length - pane.start.fitting)
        onClicked: pane.all = !pane.all
    }

    StartRow {
        id: suggest

        width: parent.width
        title: qsTr("What suits this person")
        about: qsTr("Exercises that no rule speaks against, by purpose; one click adds one.")
        onClicked: pane.suggestionsChosen()
    }

    StartRow {
        width: parent.width
        title: qsTr("Nothing")
        about: qsTr("An empty programme, and the whole catalogue to pick from.")
        onClicked: {
            pane.start.startBlank();
            pane.blankChosen();
        }
    }

    Heading {
        width: parent.width
        visible: pane.start.mayKeep
        text: qsTr("Keep this draft as a template")
    }

    Say {
        width: parent.width
        visible: pane.start.mayKeep
        text: qsTr("For everybody in the clinic: exercises, doses, days, cards, measures and wearing time. Nothing that you wrote to this person, no reasons, no pictures, no limits.")
        color: Theme.soft
    }

    LineField {
        id: name

        width: parent.width
        visible: pane.start.mayKeep
        label: qsTr("Name of the template")
        hint: qsTr("For example: first weeks, above the knee, at our clinic")
        maximumLength: 100
        onAccepted: pane.start.keepAs(text)
    }

    SmallButton {
        visible: pane.start.mayKeep
        text: qsTr("Keep for the clinic")
        words: Theme.rail
        edge: Theme.rail
        onClicked: pane.start.keepAs(name.text)
    }
}
