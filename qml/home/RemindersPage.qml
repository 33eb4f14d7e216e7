// Whether and when this phone reminds. Each change counts at once.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property ReminderModel reminders: models.reminders
    readonly property int halfHour: 30
    readonly property int day: 24 * 60

    // Round the clock, so that no end of the day is in the way.
    function round(minute: int): int {
        return (minute + day) % day;
    }

    title: qsTr("Reminders")
    canGoBack: true

    Words {
        width: parent.width
        text: qsTr("A short note when something is due, so that you need not keep it in mind. The note does not say what Newel is for: others may see your screen.")
    }

    ChoiceRow {
        width: parent.width
        many: true
        text: qsTr("Remind me")
        help: page.reminders.reach
        checked: page.reminders.on
        onClicked: page.reminders.on = checked
    }

    Notice {
        width: parent.width
        visible: page.reminders.problem !== ""
        kind: Notice.Attention
        title: qsTr("No reminder can be shown")
        text: page.reminders.problem
    }

    Notice {
        width: parent.width
        visible: page.reminders.error !== ""
        kind: Notice.Attention
        title: page.reminders.error
    }

    Words {
        width: parent.width
        visible: text !== ""
        text: page.reminders.next
        font.bold: true
    }

    Column {
        width: parent.width
        visible: page.reminders.on && page.reminders.windows.length > 0
        spacing: Theme.space * 2

        Heading {
            width: parent.width
            text: qsTr("At what time")
        }

        Repeater {
            model: page.reminders.windows

            Column {
                id: row

                required property int index
                required property var modelData

                width: parent.width
                spacing: Theme.space / 2

                NumberStepper {
                    anchors.left: parent.left
                    labelWidth: row.width
                    label: qsTr("For what is due %1").arg(row.modelData.words)
                    shown: row.modelData.time
                    value: row.modelData.minute
                    from: row.modelData.from
                    to: row.modelData.to
                    step: 2 * page.halfHour
                    onChanged: value => page.reminders.setTime(row.index, value)
                }

                Words {
                    width: parent.width
                    visible: text !== ""
                    text: row.modelData.note
                    color: Theme.brass
                }
            }
        }
    }

    Column {
        width: parent.width
        visible: page.reminders.on
        spacing: Theme.space * 2

        Heading {
            width: parent.width
            text: qsTr("Quiet hours")
        }

        Words {
            width: parent.width
            text: page.reminders.quietFrom === page.reminders.quietTo ? qsTr("There are none: a reminder may come at any hour.") : qsTr("No reminder comes from %1 to %2.").arg(page.reminders.clockWords(page.reminders.quietFrom)).arg(page.reminders.clockWords(page.reminders.quietTo))
            color: Theme.soft
        }

        NumberStepper {
            anchors.left: parent.left
            labelWidth: parent.width
            label: qsTr("Quiet from")
            shown: page.reminders.clockWords(page.reminders.quietFrom)
            value: page.reminders.quietFrom
            from: -page.halfHour
            to: page.day
            step: page.halfHour
            onChanged: value => page.reminders.quietFrom = page.round(value)
        }

        NumberStepper {
            anchors.left: parent.left
            labelWidth: parent.width
            label: qsTr("Quiet until")
            shown: page.reminders.clockWords(page.reminders.quietTo)
            value: page.reminders.quietTo
            from: -page.halfHour
            to: page.day
            step: page.halfHour
            onChanged: value => page.reminders.quietTo = page.round(value)
        }
    }

    Column {
        width: parent.width
        visible: page.reminders.on
        spacing: Theme.space

        Heading {
            width: parent.width
            text: qsTr("If you press Later")
        }

        NumberStepper {
            anchors.left: parent.left
            labelWidth: parent.width
            label: qsTr("Remind me again in")
            unit: qsTr("min")
            value: page.reminders.snooze
            from: 10
            to: 120
            step: 10
            onChanged: value => page.reminders.snooze = value
        }

        Words {
            width: parent.width
            text: qsTr("After three reminders in a row without an answer, only one a day comes, until you press one or open Newel.")
            color: Theme.soft
        }
    }
}
