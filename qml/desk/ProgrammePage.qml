// The draft of a programme: its entries on the left, what is being written in the middle, the phone beside it.
// With large text or a small window the columns lie one below the other.

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    property string shown: desk.draft.entries.count === 0 ? "start" : "entry"
    readonly property int columns: width >= 1120 * Theme.scale ? 3 : width >= 760 * Theme.scale ? 2 : 1
    readonly property bool own: columns > 1

    function show(what: string): void {
        shown = what;
        middle.toTop();
        // Where the columns lie one below the other, what was asked for comes into view.
        if (!own)
            laidOut.start();
    }

    function showStart(): void {
        show("start");
        start.takeFocus();
    }

    function showSuggestions(): void {
        show("suggestions");
        suggestions.takeFocus();
    }

    Shortcut {
        sequences: ["Ctrl+Z"]
        enabled: page.desk.draft.canUndo
        onActivated: page.desk.draft.undo()
    }

    Shortcut {
        sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]
        enabled: page.desk.draft.canRedo
        onActivated: page.desk.draft.redo()
    }

    Shortcut {
        sequences: ["Ctrl+F"]
        onActivated: {
            page.show("catalogue");
            catalogue.takeFocus();
        }
    }

    Shortcut {
        sequences: ["Ctrl+B"]
        onActivated: page.showStart()
    }

    Shortcut {
        sequences: ["Ctrl+G"]
        onActivated: page.showSuggestions()
    }

    // Once the columns have their heights.
    Timer {
        id: laidOut

        interval: 0
        onTriggered: outer.contentY = Math.max(0, Math.min(middle.y, outer.contentHeight - outer.height))
    }

    Component.onCompleted: {
        if (shown === "start")
            start.takeFocus();
    }

    Connections {
        target: page.desk.start

        function onStarted(): void {
            page.show(page.desk.draft.entries.count === 0 ? "catalogue" : "entry");
        }
    }

    Connections {
        target: page.desk.draft

        function onSelectedChanged(): void {
            if (page.desk.draft.selected < 0 && page.shown === "entry")
                page.show("catalogue");
        }
    }

    Flickable {
        id: outer

        anchors.fill: parent
        contentHeight: page.own ? height : first.wanted + middle.wanted + phone.wanted
        interactive: !page.own
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: outer
        }

        Pane {
            id: first

            width: page.columns === 3 ? Math.round(page.width * 0.29) : page.columns === 2 ? Math.round(page.width * 0.4) : page.width
            height: page.own ? outer.height : wanted
            scrolls: page.own
            color: Theme.dark ? "transparent" : Qt.darker(Theme.paper, 1.02)

            DraftList {
                width: parent.width
                desk: page.desk
                shown: page.shown
                onEntryChosen: row => {
                    page.desk.draft.selected = row;
                    page.show("entry");
                }
                onCatalogueChosen: {
                    page.show("catalogue");
                    catalogue.takeFocus();
                }
                onWholeChosen: page.show("whole")
                onWearChosen: page.show("wear")
                onStartChosen: page.showStart()
                onSuggestionsChosen: page.showSuggestions()
            }
        }

        Pane {
            id: middle

            x: page.own ? first.width : 0
            y: page.own ? 0 : first.height
            width: page.columns === 3 ? Math.round(page.width * 0.46) : page.width - x
            height: page.columns === 3 ? outer.height : page.columns === 2 ? Math.round(outer.height * 0.62) : wanted
            scrolls: page.own

            StartPane {
                id: start

                width: parent.width
                visible: page.shown === "start"
                start: page.desk.start
                onBlankChosen: {
                    page.show("catalogue");
                    catalogue.takeFocus();
                }
                onSuggestionsChosen: page.showSuggestions()
            }

            SuggestionList {
                id: suggestions

                width: parent.width
                visible: page.shown === "suggestions"
                start: page.desk.start
                draft: page.desk.draft
            }

            EntryEditor {
                width: parent.width
                visible: page.shown === "entry" && page.desk.draft.selected >= 0
                entry: page.desk.entry
                media: page.desk.media
                draft: page.desk.draft
                step: page.desk.nextStep
            }

            CataloguePicker {
                id: catalogue

                width: parent.width
                visible: page.shown === "catalogue"
                draft: page.desk.draft
                onPicked: page.show("entry")
            }

            WholeEditor {
                width: parent.width
                visible: page.shown === "whole"
                draft: page.desk.draft
                onEntryChosen: row => {
                    page.desk.draft.selected = row;
                    page.show("entry");
                }
            }

            WearPlanForm {
                width: parent.width
                visible: page.shown === "wear"
                wear: page.desk.wear
            }
        }

        Pane {
            id: phone

            x: page.columns === 3 ? middle.x + middle.width : middle.x
            y: page.columns === 3 ? 0 : middle.y + middle.height
            width: page.width - x
            height: page.columns === 3 ? outer.height : page.columns === 2 ? outer.height - y : wanted
            scrolls: page.own
            gap: Theme.space

            PhonePane {
                width: parent.width
                draft: page.desk.draft
                preview: page.desk.preview
                listHeight: Math.max(180, page.columns === 3 ? phone.height - 620 : 240)
            }
        }
    }
}
