// Today's exercises along the rail: the first to do at the bottom, the hand where the next one begins.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Item {
    id: list

    required property var rows // from the bottom up
    required property int at

    implicitHeight: column.implicitHeight

    function place(): void {
        const found = [];
        for (let i = 0; i < lines.count; ++i) {
            const line = lines.itemAt(lines.count - 1 - i);
            if (line)
                found.push(line.y + Theme.body * 0.75 + 4);
        }
        rail.positions = found;
    }

    Rail {
        id: rail

        height: parent.height
        x: list.LayoutMirroring.enabled ? parent.width - width : 0
        mirrored: list.LayoutMirroring.enabled
        posts: list.rows
        at: list.at
        Accessible.ignored: true
    }

    Column {
        id: column

        anchors.right: parent.right
        width: parent.width - rail.width - Theme.space * 1.5
        topPadding: 28
        spacing: Theme.space * 1.5
        onPositioningComplete: list.place()

        Repeater {
            id: lines

            model: list.rows.length

            Item {
                id: line

                required property int index
                readonly property var row: list.rows[list.rows.length - 1 - index]

                width: column.width
                implicitHeight: texts.implicitHeight
                Accessible.role: Accessible.ListItem
                Accessible.name: row.title + ", " + minutes.text + ", " + row.words

                Column {
                    id: texts

                    width: parent.width

                    Item {
                        width: parent.width
                        implicitHeight: Math.max(title.implicitHeight, minutes.implicitHeight)

                        Words {
                            id: title

                            anchors.left: parent.left
                            width: parent.width - minutes.implicitWidth - Theme.space
                            text: line.row.title
                            font.bold: true
                            color: line.row.done || line.row.held ? Theme.soft : Theme.ink
                        }

                        Words {
                            id: minutes

                            anchors.right: parent.right
                            width: implicitWidth
                            wrapMode: Text.NoWrap
                            color: Theme.soft
                            text: line.row.done ? qsTr("done") : line.row.held ? qsTr("on hold") : qsTr("%L1 min").arg(line.row.minutes)
                        }
                    }

                    Words {
                        width: parent.width
                        text: line.row.words
                        color: Theme.soft
                        font.pixelSize: Theme.small
                    }
                }
            }
        }
    }
}
