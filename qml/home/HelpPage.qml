// Whom to call comes first; then writing, advice, and what this program is.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    title: qsTr("Help")
    canGoBack: true
    canHelp: false

    Heading {
        width: parent.width
        text: qsTr("Whom to call")
    }

    WhoToCall {
        width: parent.width
        models: page.models
    }

    Column {
        width: parent.width
        visible: page.models.app.paired
        spacing: Theme.space * 1.5

        SecondaryButton {
            width: parent.width
            text: qsTr("After a fall")
            mark: Mark.Triangle
            onClicked: {
                page.models.advice.open("after-a-fall");
                page.models.app.show(AppModel.Advice);
            }
        }

        SecondaryButton {
            width: parent.width
            text: qsTr("Write to your therapist")
            mark: Mark.Letter
            onClicked: page.models.app.show(AppModel.Write)
        }
    }

    CardLinks {
        width: parent.width
        models: page.models
        heading: qsTr("Advice from your clinic")
        cards: page.models.advice.besidesFall
    }

    WhatNewelIs {
        width: parent.width
    }
}
