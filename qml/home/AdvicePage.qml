// One card of advice: why, what to do, whom to phone and when, and a line to write down where the card asks.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: models.advice.title
    canGoBack: true

    Notice {
        width: parent.width
        visible: page.models.advice.error !== ""
        kind: Notice.Attention
        title: page.models.advice.error
    }

    Words {
        width: parent.width
        visible: page.models.advice.otherLanguage
        text: qsTr("This card is not in your language yet.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }

    Words {
        width: parent.width
        text: page.models.advice.why
    }

    Words {
        width: parent.width
        visible: page.models.advice.note !== ""
        text: qsTr("From your therapist: %1").arg(page.models.advice.note)
        color: Theme.brass
        font.bold: true
    }

    BulletList {
        width: parent.width
        heading: qsTr("What to do")
        lines: page.models.advice.steps
    }

    Notice {
        width: parent.width
        kind: Notice.Attention
        title: qsTr("Whom to phone")

        BulletList {
            width: parent.width
            lines: page.models.advice.callIf
        }
    }

    WhoToCall {
        width: parent.width
        models: page.models
    }

    TextEntry {
        id: log

        width: parent.width
        visible: page.models.advice.question !== ""
        label: page.models.advice.question
    }

    SecondaryButton {
        width: Math.min(implicitWidth, parent.width)
        visible: page.models.advice.question !== ""
        enabled: log.text.trim() !== ""
        text: qsTr("Write it down for the clinic")
        onClicked: {
            page.models.advice.write(log.text);
            if (page.models.advice.error === "")
                log.text = "";
        }
    }

    Notice {
        width: parent.width
        visible: page.models.advice.sent !== ""
        kind: Notice.Good
        title: page.models.advice.sent
    }
}
