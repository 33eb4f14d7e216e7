// The phone's own practice screen, filled with what the preview shows. See phone_screen.h.
import QtQuick
import Newel.Parts

PracticeView {
    id: view

    property var now: ({})     // PreviewModel.facts
    property var words: ({})   // PreviewModel.labels
    property bool rightToLeft: false
    property FigureSource figure: null

    LayoutMirroring.enabled: rightToLeft
    LayoutMirroring.childrenInherit: true
    Accessible.ignored: true

    facts: PracticeFacts {
        entryNumber: view.now.entryNumber ?? 1
        entryCount: view.now.entryCount ?? 1
        title: view.now.title ?? ""
        cue: view.now.cue ?? ""
        next: view.now.next ?? ""
        support: view.now.support ?? ""
        number: view.now.number ?? ""
        numberOf: view.now.numberOf ?? ""
        setWords: view.now.setWords ?? ""
        sideWords: view.now.sideWords ?? ""
        fraction: view.now.fraction ?? 0
        resting: view.now.resting ?? false
        canLengthen: view.now.canLengthen ?? false
        canGoNow: view.now.canGoNow ?? false
        waiting: view.now.waiting ?? false
        labels: view.words
        figure: view.figure
        posts: view.now.posts ?? []
        at: view.now.at ?? 0
    }
}
