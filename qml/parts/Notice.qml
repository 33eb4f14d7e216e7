// Something the person must notice: its urgency has a shape and words, never colour alone.
import QtQuick
import Newel.Parts

Rectangle {
    id: notice

    enum Kind { Note, New, Attention, Stop, Good }

    property int kind: Notice.Note
    property string title: ""
    property string text: ""
    default property alias extra: column.data

    readonly property color tint: kind === Notice.Stop ? Theme.stop : kind === Notice.Good ? Theme.good
        : kind === Notice.Note ? Theme.soft : Theme.brass

    implicitWidth: 280
    implicitHeight: column.implicitHeight + 2 * Theme.space * 1.5
    color: Theme.sheet
    radius: Theme.radius

    Accessible.role: kind === Notice.Stop || kind === Notice.Attention ? Accessible.AlertMessage : Accessible.Grouping
    Accessible.name: title !== "" ? title : text

    Rectangle {
        x: notice.LayoutMirroring.enabled ? parent.width - width : 0
        width: 5
        height: parent.height
        color: notice.tint
    }

    Mark {
        id: sign

        x: notice.LayoutMirroring.enabled ? parent.width - width - Theme.edge : Theme.edge
        y: Theme.space * 1.5
        width: Math.round(Theme.body * 1.4)
        height: width
        visible: notice.kind !== Notice.Note
        shape: notice.kind === Notice.Stop ? Mark.Alarm : notice.kind === Notice.Attention ? Mark.Triangle
            : notice.kind === Notice.Good ? Mark.Tick : Mark.Letter
        colour: notice.tint
        inner: Theme.sheet
    }

    Column {
        id: column

        readonly property real signRoom: sign.visible ? sign.width + Theme.space * 1.5 : 0

        x: notice.LayoutMirroring.enabled ? Theme.edge : Theme.edge + signRoom
        y: Theme.space * 1.5
        width: parent.width - 2 * Theme.edge - signRoom
        spacing: Theme.space / 2

        Words {
            width: parent.width
            visible: text !== ""
            text: notice.title
            font.bold: true
            color: notice.kind === Notice.Note || notice.kind === Notice.New ? Theme.ink : notice.tint
        }

        Words {
            width: parent.width
            visible: text !== ""
            text: notice.text
        }
    }
}
