import QtQuick
import Newel.Home
import Newel.Parts

FocusScope {
    id: page

    required property HomeModels models

    Component.onCompleted: view.focusTitle()

    PracticeView {
        id: view

        anchors.fill: parent
        anchors.topMargin: strip.height
        focus: true
        facts: PracticeFacts {
            entryNumber: page.models.player.entryNumber
            entryCount: page.models.player.entryCount
            title: page.models.player.title
            cue: page.models.player.cue
            next: page.models.player.next
            support: page.models.player.support
            number: page.models.player.number
            numberOf: page.models.player.numberOf
            countSaid: page.models.player.countSaid
            canSlow: page.models.player.canSlow
            setWords: page.models.player.setWords
            sideWords: page.models.player.sideWords
            fraction: page.models.player.fraction
            resting: page.models.player.resting
            canLengthen: page.models.player.canLengthen
            canGoNow: page.models.player.canSkipBeat
            waiting: page.models.player.waiting
            paused: page.models.player.paused
            pausedWhy: page.models.player.pausedWhy
            soundNote: page.models.player.soundNote
            figure: page.models.player.figure
            posts: page.models.player.posts
            at: page.models.player.at
        }
        onStopPressed: page.models.player.stop()
        onPausePressed: page.models.player.pause()
        onGoOnPressed: page.models.player.goOn()
        onDonePressed: page.models.player.done()
        onRepeatPressed: page.models.player.sayAgain()
        onLongerPressed: page.models.player.longer()
        onSlowerPressed: page.models.player.slower()
        onNowPressed: page.models.player.now()
        onSkipPressed: page.models.app.show(AppModel.LeaveOut)
    }

    Shield {
        anchors.fill: parent
    }

    Banner {
        id: strip

        width: parent.width
        text: page.models.app.banner
    }
}
