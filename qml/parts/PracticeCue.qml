// The figure, the sentence, the side and the number of the present beat. The figure takes the larger part of the
// room, the sentence is as large as the rest allows. Beside a figure, and where large text meets a small screen,
// the ring is a bar; on a low, wide screen the figure stands beside the words; where room is scarce what has been
// said before (what comes next, that nothing can be heard) goes.
import QtQuick
import Newel.Parts

Item {
    id: cue

    required property PracticeFacts facts
    property bool split: false // the figure stands beside the words, not above them

    readonly property bool drawn: facts.figure !== null && facts.figure.there
    readonly property bool tight: height < 330 * Theme.scale || height < 250
    // So little room that the sentence would not fit beside all the rest: the number and what it counts stay.
    readonly property bool poor: height < smallest.height + (split ? 220 : 150)
    // Words beside the number grow with the person's setting as far as this screen can hold them.
    readonly property real most: poor ? 1 : height < 300 ? 1.15 : height < 600 ? 1.45 : 2
    readonly property real ringSide: Math.min(200, width - 138, Math.max(150, height * 0.46))
    readonly property real figureWidth: !drawn ? 0 : split ? Math.min(width * (Theme.scale > 1.35 ? 0.3 : 0.38), height * 1.2) : width
    readonly property real lowerWidth: !split ? width : drawn ? width - figureWidth - Theme.edge : width

    // What figure and sentence share when the screen is upright.
    readonly property real room: height - lower.height - 2 * Theme.space
    readonly property real figureShare: Theme.scale > 1.35 ? 0.5 : 0.66

    // A tablet is further away: what is read grows with it.
    readonly property real grow: split ? 1 : Math.min(1.7, Math.max(1, Math.min(width / 420, height / 700)))

    function sized(atHundred: int): int {
        return Math.round(atHundred * Math.min(Theme.scale, most) * grow);
    }

    FigurePane {
        id: figure

        source: cue.facts.figure
        visible: there && height >= 72
        width: cue.figureWidth
        // The sentence comes first: where it is long the figure gives way.
        height: !cue.drawn ? 0 : cue.split ? cue.height
            : Math.max(0, Math.min(cue.room * cue.figureShare, cue.room - smallest.height))
        anchors.left: parent.left
    }

    // How high the sentence is at a size that is still easy to read.
    Text {
        id: smallest

        visible: false
        width: cue.lowerWidth
        text: cue.facts.cue
        textFormat: Text.PlainText
        font.pixelSize: 20
        font.bold: true
        wrapMode: Text.Wrap
    }

    Text {
        id: sentence

        anchors.left: cue.split && cue.drawn ? figure.right : parent.left
        anchors.leftMargin: cue.split && cue.drawn ? Theme.edge : 0
        anchors.right: parent.right
        anchors.top: cue.split || !figure.visible ? parent.top : figure.bottom
        anchors.topMargin: cue.split || !figure.visible ? 0 : Theme.space
        anchors.bottom: lower.top
        anchors.bottomMargin: Theme.space
        text: cue.facts.cue
        textFormat: Text.PlainText
        color: Theme.ink
        font.pixelSize: Math.round(Theme.title * cue.grow)
        font.bold: true
        minimumPixelSize: 18
        fontSizeMode: Text.Fit
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignLeft
        verticalAlignment: Text.AlignVCenter
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }

    Column {
        id: lower

        anchors.right: parent.right
        anchors.bottom: parent.bottom
        width: cue.lowerWidth
        spacing: Theme.space / 2

        Words {
            width: parent.width
            visible: text !== "" && !(cue.tight && cue.facts.resting) && !cue.poor
            text: cue.facts.sideWords
            font.pixelSize: cue.sized(18)
            font.bold: true
            color: Theme.brass
        }

        Item {
            id: counting

            readonly property bool barred: cue.tight || cue.drawn
            readonly property Item count: barred ? bar : ring

            width: parent.width
            height: Math.max(count.height, beside.implicitHeight)
            Accessible.role: Accessible.StaticText
            Accessible.name: cue.facts.countSaid !== "" ? cue.facts.countSaid : cue.facts.number + " " + cue.facts.numberOf

            CountRing {
                id: ring

                anchors.left: parent.left
                anchors.verticalCenter: parent.verticalCenter
                visible: !counting.barred
                width: cue.ringSide
                height: cue.ringSide
                number: cue.facts.number
                fraction: cue.facts.fraction
                resting: cue.facts.resting
            }

            CountBar {
                id: bar

                anchors.left: parent.left
                anchors.verticalCenter: parent.verticalCenter
                visible: counting.barred
                grow: cue.grow
                width: implicitWidth
                height: implicitHeight
                number: cue.facts.number
                fraction: cue.facts.fraction
                resting: cue.facts.resting
            }

            Column {
                id: beside

                anchors.left: counting.count.right
                anchors.leftMargin: Theme.space * 1.5
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter

                Words {
                    width: parent.width
                    text: cue.facts.numberOf
                    font.bold: true
                    font.pixelSize: cue.sized(21)
                    Accessible.ignored: true
                }

                Words {
                    width: parent.width
                    visible: text !== "" && !(cue.tight && (cue.facts.waiting || cue.facts.resting)) && !cue.poor
                    text: cue.facts.setWords
                    font.pixelSize: cue.sized(18)
                    color: Theme.soft
                }
            }
        }

        Words {
            width: parent.width
            visible: text !== "" && !cue.tight && cue.height - smallest.height > 300
            text: cue.facts.next
            color: Theme.soft
            font.pixelSize: cue.sized(16)
        }

        Words {
            width: parent.width
            visible: text !== "" && cue.height > 400 * Theme.scale
            text: cue.facts.soundNote
            color: Theme.brass
            font.pixelSize: cue.sized(16)
        }
    }
}
