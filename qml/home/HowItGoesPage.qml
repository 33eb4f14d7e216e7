// Weeks, pain and effort: each a picture, with words beside it that say the same.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property HistoryModel history: models.history

    title: qsTr("How it goes")
    over: history.span
    canGoBack: true

    Component.onCompleted: history.shown()

    Notice {
        width: parent.width
        visible: page.history.error !== ""
        kind: Notice.Attention
        title: page.history.error
    }

    Words {
        width: parent.width
        visible: page.history.empty && !page.history.hasEarlier && !page.history.hasLater
        text: qsTr("Nothing to show yet. After your first practice you see here what you did and how it felt.")
    }

    Words {
        width: parent.width
        visible: !page.history.empty
        text: page.history.summary
        font.bold: true
    }

    WeekGrid {
        width: parent.width
        visible: page.history.weeks.length > 0
        history: page.history
    }

    RatingPane {
        width: parent.width
        visible: !page.history.empty
        title: qsTr("Pain after practice")
        ends: qsTr("0 is no pain, 10 the worst you can think of.")
        words: page.history.painWords
        points: page.history.pain
    }

    RatingPane {
        width: parent.width
        visible: !page.history.empty
        title: qsTr("Effort")
        ends: qsTr("0 is no effort at all, 10 all you had.")
        words: page.history.effortWords
        points: page.history.effort
        square: true
    }

    RatingPane {
        width: parent.width
        visible: page.history.wear.length > 0
        title: qsTr("Prosthesis on")
        ends: qsTr("Hours in a day.")
        words: page.history.wearWords
        points: page.history.wear
        most: page.history.wearMost
    }

    Words {
        width: parent.width
        visible: !page.history.empty
        text: qsTr("What these numbers mean for you, your therapist can say.")
        color: Theme.soft
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 1.5

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            visible: page.history.hasEarlier
            text: qsTr("Earlier weeks")
            onClicked: page.history.earlier()
        }

        SecondaryButton {
            width: Math.min(implicitWidth, parent.width)
            visible: page.history.hasLater
            text: qsTr("Later weeks")
            onClicked: page.history.later()
        }
    }

    Heading {
        width: parent.width
        visible: page.history.measures.length > 0
        topPadding: Theme.space
        text: qsTr("What your clinic measures")
    }

    Repeater {
        model: page.history.measures

        RatingPane {
            required property var modelData

            width: parent.width
            title: modelData.title
            ends: modelData.ends
            words: modelData.words
            points: modelData.points
            least: modelData.least
            most: modelData.most
            square: true
            several: true
        }
    }
}
