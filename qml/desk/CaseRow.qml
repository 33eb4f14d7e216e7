// One person in the attention list: urgency as a shape, who, why in words, how old the figures are, the weeks.
import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

T.AbstractButton {
    id: row

    required property int index
    required property string personId
    required property string name
    required property string limbs
    required property int urgency
    required property string urgencyWords
    required property string reason
    required property var moreReasons
    required property string age
    required property bool fresh
    required property var weeks
    required property string weeksWords
    required property bool waiting
    required property string waitingWords
    required property bool mayWait
    required property bool chosen
    property bool mayWrite: false
    property bool choosing: false // a press chooses in place of opening

    signal chooseAsked
    signal waitAsked
    signal waitEnded

    readonly property bool narrow: width < 900 * Theme.scale
    readonly property real reasonX: narrow ? whoColumn.x : whoColumn.x + whoColumn.width + Theme.space * 2
    readonly property real weeksWidth: Math.min(180, width * 0.3)

    implicitHeight: Math.max(56, narrow ? reasons.y + reasons.height + tail.height + 2 * Theme.space
                                        : Math.max(whoColumn.height, reasons.height, tail.height) + 2 * Theme.space)
    focusPolicy: Qt.StrongFocus

    Accessible.role: choosing ? Accessible.CheckBox : Accessible.ListItem
    Accessible.checkable: choosing
    Accessible.checked: chosen
    Accessible.name: choosing ? qsTr("Choose %1").arg(name) : qsTr("Open %1").arg(name)
    Accessible.description: qsTr("%1. %2: %3 %4. %5 Phone heard from: %6. %7").arg(limbs).arg(urgencyWords).arg(reason)
        .arg(moreReasons.join(". ")).arg(waitingWords).arg(age).arg(weeksWords)
    Accessible.onPressAction: row.clicked()
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()
    Keys.onSpacePressed: {
        if (row.mayWrite)
            row.chooseAsked();
        else
            row.clicked();
    }

    background: Rectangle {
        color: row.hovered || row.visualFocus || row.down ? Theme.sheet : "transparent"

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.groove
        }

        FocusRing {
            target: row
            anchors.margins: 1
            visible: row.visualFocus
        }
    }

    Mark {
        id: box

        x: Theme.edge
        y: Theme.space * 1.5
        visible: row.choosing
        width: visible ? Math.round(Theme.body * 1.35) : 0
        height: width
        shape: row.chosen ? Mark.Tick : Mark.Square
        colour: row.chosen ? Theme.rail : Theme.soft
        inner: Theme.paper
    }

    UrgencyMark {
        id: sign

        x: Theme.edge
        visible: !row.choosing // two squares side by side are one too many; the words say how urgent it is
        y: Theme.space * 1.5
        width: Math.round(Theme.body * 1.35)
        height: width
        urgency: row.urgency
        Accessible.ignored: true
    }

    Column {
        id: whoColumn

        x: sign.x + sign.width + Theme.space * 1.5
        y: Theme.space
        width: row.narrow ? row.width - x - Theme.edge : Math.min(row.width * 0.27, 300 * Theme.scale)

        Words {
            width: parent.width
            text: row.name
            font.bold: true
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            text: row.limbs
            color: Theme.soft
            Accessible.ignored: true
        }
    }

    Column {
        id: reasons

        x: row.reasonX
        y: row.narrow ? whoColumn.y + whoColumn.height : Theme.space
        width: row.narrow ? row.width - x - Theme.edge : tail.x - x - Theme.space

        Say {
            width: parent.width
            text: row.urgency === 3 ? row.reason : qsTr("%1: %2").arg(row.urgencyWords).arg(row.reason)
            font.bold: row.urgency <= 1 && !row.waiting
            color: row.waiting ? Theme.soft : row.urgency === 0 ? Theme.stop : row.urgency === 1 ? Theme.brass : Theme.ink
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            visible: text !== ""
            text: row.moreReasons.join(" · ")
            Accessible.ignored: true
        }

        Say {
            width: parent.width
            visible: row.waiting
            text: row.waitingWords
            font.italic: true
            Accessible.ignored: true
        }
    }

    Row {
        id: tail

        x: row.narrow ? row.reasonX : row.width - width - Theme.edge
        y: row.narrow ? reasons.y + reasons.height : Theme.space
        spacing: Theme.space * 2

        SmallButton {
            visible: row.mayWrite && (row.waiting || row.mayWait)
            text: row.waiting ? qsTr("No longer") : qsTr("Can wait")
            Accessible.name: row.waiting ? qsTr("%1: end the waiting").arg(row.name)
                                         : qsTr("%1: this can wait").arg(row.name)
            onClicked: {
                if (row.waiting)
                    row.waitEnded();
                else
                    row.waitAsked();
            }
        }

        Say {
            id: ageWords

            width: 130 * Theme.scale
            text: row.age
            color: row.fresh ? Theme.soft : Theme.ink
            font.bold: !row.fresh
            Accessible.ignored: true
        }

        WeekBars {
            width: row.weeksWidth
            height: 40
            weeks: row.weeks
            Accessible.ignored: true
        }
    }
}
