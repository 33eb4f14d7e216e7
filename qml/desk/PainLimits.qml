// When pain stops an exercise: over a number, or a rise from the start.
import QtQuick
import Newel.Desk
import Newel.Parts

Flow {
    id: limits

    property string about: ""
    property int stopValue: 5
    property int riseValue: 2

    signal stopChanged(int value)
    signal riseChanged(int value)

    spacing: Theme.space * 1.5

    StepField {
        label: qsTr("Stop over pain of")
        name: qsTr("Stop over pain of, %1").arg(limits.about)
        unit: qsTr("of 10")
        from: 1
        to: 10
        value: limits.stopValue
        onChanged: value => limits.stopChanged(value)
    }

    StepField {
        label: qsTr("Or when it rises by")
        name: qsTr("Or when it rises by, %1").arg(limits.about)
        from: 1
        to: 10
        value: limits.riseValue
        onChanged: value => limits.riseChanged(value)
    }
}
