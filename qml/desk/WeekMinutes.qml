// Minutes a day over a week, one bar a day on the rail lying flat.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Item {
    id: chart

    property var minutes: [0, 0, 0, 0, 0, 0, 0] // Monday first
    readonly property real most: Math.max(10, ...minutes)
    readonly property var names: [qsTr("Mo"), qsTr("Tu"), qsTr("We"), qsTr("Th"), qsTr("Fr"), qsTr("Sa"), qsTr("Su")]

    implicitHeight: 56 + Theme.small * 2.6
    Accessible.role: Accessible.Chart
    Accessible.name: {
        const parts = [];
        for (let i = 0; i < 7; ++i)
            parts.push(names[i] + " " + Math.ceil(minutes[i]));
        return qsTr("Minutes a day: %1").arg(parts.join(", "));
    }

    Row {
        id: bars

        width: parent.width

        Repeater {
            model: 7

            Column {
                id: day

                required property int index
                readonly property real value: chart.minutes[index] ?? 0

                width: bars.width / 7

                Text {
                    width: parent.width
                    horizontalAlignment: Text.AlignHCenter
                    text: day.value > 0 ? Math.ceil(day.value) : ""
                    color: Theme.ink
                    font.pixelSize: Math.round(Theme.small * 0.85)
                    Accessible.ignored: true
                }

                Item {
                    width: parent.width
                    height: 50

                    Rectangle {
                        anchors.bottom: parent.bottom
                        anchors.horizontalCenter: parent.horizontalCenter
                        width: Math.min(18, parent.width * 0.5)
                        height: day.value > 0 ? Math.max(3, 50 * day.value / chart.most) : 0
                        radius: 2
                        color: Theme.rail
                    }
                }

                Rectangle {
                    width: parent.width
                    height: 3
                    color: Theme.groove
                }

                Text {
                    width: parent.width
                    horizontalAlignment: Text.AlignHCenter
                    text: chart.names[day.index]
                    color: Theme.soft
                    font.pixelSize: Math.round(Theme.small * 0.85)
                    Accessible.ignored: true
                }
            }
        }
    }
}
