// The window: one page at a time, as the app model says. Pages keep no state of their own that matters.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Home
import Newel.Parts

Window {
    id: window

    required property HomeModels models

    width: 412
    height: 800
    minimumWidth: 320
    minimumHeight: 480
    visible: true
    title: qsTr("Newel")
    color: Theme.paper

    function sourceOf(page: int): Component {
        switch (page) {
        case AppModel.Pair:
            return pairPage;
        case AppModel.Paired:
            return pairedPage;
        case AppModel.Unfinished:
            return unfinishedPage;
        case AppModel.Question:
            return questionPage;
        case AppModel.Pain:
            return painPage;
        case AppModel.GetReady:
            return getReadyPage;
        case AppModel.Practice:
            return practicePage;
        case AppModel.WhatHappened:
            return whatHappenedPage;
        case AppModel.Rating:
            return ratingPage;
        case AppModel.Verdict:
            return verdictPage;
        case AppModel.Close:
            return closePage;
        case AppModel.LeaveOut:
            return leaveOutPage;
        case AppModel.Programme:
            return programmePage;
        case AppModel.Help:
            return helpPage;
        case AppModel.Settings:
            return settingsPage;
        default:
            return todayPage;
        }
    }

    Binding {
        target: Theme
        property: "textPercent"
        value: window.models.settings.textPercent
    }

    Binding {
        target: Theme
        property: "dark"
        value: window.models.settings.look === SettingsModel.AsSystem ? Theme.systemDark
            : window.models.settings.look === SettingsModel.Dark
    }

    Loader {
        id: loader

        anchors.fill: parent
        LayoutMirroring.enabled: window.models.app.rightToLeft
        LayoutMirroring.childrenInherit: true
        focus: true
        sourceComponent: window.sourceOf(window.models.app.page)
    }

    Component { id: pairPage; PairPage { models: window.models } }
    Component { id: pairedPage; PairedPage { models: window.models } }
    Component { id: todayPage; TodayPage { models: window.models } }
    Component { id: unfinishedPage; UnfinishedPage { models: window.models } }
    Component { id: questionPage; QuestionPage { models: window.models } }
    Component { id: painPage; PainPage { models: window.models } }
    Component { id: getReadyPage; GetReadyPage { models: window.models } }
    Component { id: practicePage; PracticePage { models: window.models } }
    Component { id: whatHappenedPage; WhatHappenedPage { models: window.models } }
    Component { id: ratingPage; RatingPage { models: window.models } }
    Component { id: verdictPage; VerdictPage { models: window.models } }
    Component { id: closePage; ClosePage { models: window.models } }
    Component { id: leaveOutPage; LeaveOutPage { models: window.models } }
    Component { id: programmePage; ProgrammePage { models: window.models } }
    Component { id: helpPage; HelpPage { models: window.models } }
    Component { id: settingsPage; SettingsPage { models: window.models } }
}
