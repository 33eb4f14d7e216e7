// One lost limb: level, prosthesis, and the knee and foot that it has.
import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: limb

    required property PersonFormModel form
    required property string side // "left" or "right"
    required property string sideWords

    readonly property int level: form.values[side + ".level"] ?? 0
    readonly property bool owns: (form.values[side + ".prosthesis"] ?? 0) === 1
    readonly property bool kneeLost: level >= 4

    spacing: Theme.space * 1.5

    FormStrip {
        width: parent.width
        form: limb.form
        key: limb.side + ".level"
        label: qsTr("Level, %1").arg(limb.sideWords)
    }

    FormStrip {
        width: parent.width
        form: limb.form
        key: limb.side + ".prosthesis"
        label: qsTr("Has a prosthesis, %1").arg(limb.sideWords)
    }

    FormStrip {
        width: parent.width
        visible: limb.owns && limb.kneeLost
        form: limb.form
        key: limb.side + ".knee"
        label: qsTr("Prosthetic knee, %1").arg(limb.sideWords)
    }

    FormStrip {
        width: parent.width
        visible: limb.owns
        form: limb.form
        key: limb.side + ".foot"
        label: qsTr("Prosthetic foot, %1").arg(limb.sideWords)
    }
}
