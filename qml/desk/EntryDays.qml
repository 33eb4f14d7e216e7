// When the selected entry is due: days or times a week, parts of the day, and their times to type over.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: days

    required property EntryModel entry
    property bool several: false

    spacing: Theme.space

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        Chip {
            text: qsTr("On these days")
            group: days.entry.title
            chosen: days.entry.onWeekdays
            onClicked: days.entry.setOnWeekdays(true)
        }

        Chip {
            text: qsTr("Times a week, any days")
            group: days.entry.title
            chosen: !days.entry.onWeekdays
            onClicked: days.entry.setOnWeekdays(false)
        }

        SmallButton {
            visible: days.several
            least: 32
            text: qsTr("Same days for all")
            Accessible.name: qsTr("Days and times of %1 for all exercises").arg(days.entry.title)
            onClicked: days.entry.scheduleForAll()
        }
    }

    ChipStrip {
        width: parent.width
        visible: days.entry.onWeekdays
        group: qsTr("Day, %1").arg(days.entry.title)
        many: true
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
        chosen: days.entry.days
        onPicked: value => days.entry.toggleDay(value)
    }

    StepField {
        visible: !days.entry.onWeekdays
        label: qsTr("Times a week")
        name: qsTr("Times a week, %1").arg(days.entry.title)
        from: 1
        to: 7
        value: days.entry.timesPerWeek
        onChanged: value => days.entry.setTimesPerWeek(value)
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 0.75

        Repeater {
            model: days.entry.dayParts

            Chip {
                required property var modelData
                required property int index

                text: modelData.text
                group: qsTr("Time of day, %1").arg(days.entry.title)
                many: true
                chosen: modelData.chosen
                onClicked: days.entry.toggleDayPart(index)
            }
        }
    }

    Repeater {
        model: days.entry.windows

        Flow {
            id: window

            required property var modelData
            required property int index

            width: days.width
            spacing: Theme.space

            LineField {
                id: from

                width: 110 * Theme.scale
                name: qsTr("From, time %1, %2").arg(window.index + 1).arg(days.entry.title)
                text: window.modelData.from
                onAccepted: days.entry.setWindow(window.index, from.text, to.text)
            }

            Say {
                height: from.height
                verticalAlignment: Text.AlignVCenter
                text: qsTr("to")
            }

            LineField {
                id: to

                width: 110 * Theme.scale
                name: qsTr("To, time %1, %2").arg(window.index + 1).arg(days.entry.title)
                text: window.modelData.to
                onAccepted: days.entry.setWindow(window.index, from.text, to.text)
            }

            SmallButton {
                visible: from.text !== window.modelData.from || to.text !== window.modelData.to
                text: qsTr("Set times")
                Accessible.name: qsTr("Set time %1, %2").arg(window.index + 1).arg(days.entry.title)
                onClicked: days.entry.setWindow(window.index, from.text, to.text)
            }
        }
    }

    Problem {
        width: parent.width
        text: days.entry.scheduleProblem
    }
}
