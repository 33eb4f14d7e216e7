// "Who needs you today": the caseload, most urgent first, each row saying why.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property CaseloadModel model: desk.caseload

    Shortcut {
        sequences: ["Ctrl+F"]
        onActivated: filter.takeFocus()
    }

    Shortcut {
        sequences: ["F5"]
        onActivated: page.model.reload()
    }

    Shortcut {
        sequences: ["Ctrl+A"]
        enabled: page.desk.mayWrite && list.activeFocus
        onActivated: page.model.chooseShown()
    }

    Shortcut {
        sequences: ["Escape"]
        enabled: page.model.choosing
        onActivated: page.model.choosing = false
    }

    Component.onCompleted: filter.takeFocus()

    Column {
        id: upper

        x: Theme.edge
        y: Theme.edge
        width: parent.width - 2 * Theme.edge
        spacing: Theme.space

        Flow {
            width: parent.width
            spacing: Theme.space * 2

            Words {
                text: qsTr("Who needs you today")
                font.pixelSize: Theme.title
                font.bold: true
                Accessible.role: Accessible.Heading
            }

            Say {
                height: Theme.title * 1.4
                verticalAlignment: Text.AlignVCenter
                text: page.model.loading ? (page.model.read > 0 ? qsTr("Reading … %L1 so far").arg(page.model.read)
                                                                : qsTr("Reading …"))
                                         : page.model.summary
                color: Theme.soft
                width: Math.min(implicitWidth, upper.width)
            }
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            LineField {
                id: filter

                width: Math.min(320 * Theme.scale, parent.width)
                name: qsTr("Find a person")
                hint: qsTr("Find by name, side, level or words")
                text: page.model.filter
                onEdited: text => page.model.filter = text
                onAccepted: list.openFirst()
                Keys.onDownPressed: list.takeFocus()
            }

            SmallButton {
                text: qsTr("Read again")
                onClicked: page.model.reload()
            }

            SmallButton {
                visible: page.desk.mayWrite
                text: qsTr("New person")
                words: Theme.rail
                edge: Theme.rail
                onClicked: page.desk.openNewPerson()
            }

            SmallButton {
                visible: page.desk.mayWrite && !page.model.choosing
                text: qsTr("Choose several")
                Accessible.name: qsTr("Choose several people, to write to all of them")
                Accessible.description: qsTr("Space on a row chooses it")
                onClicked: page.model.choosing = true
            }

            SmallButton {
                visible: page.desk.mayWrite
                text: qsTr("Not in this list?")
                Accessible.name: qsTr("Find a person who is not in this list")
                onClicked: page.desk.openFind()
            }

            SmallButton {
                text: qsTr("Our exercises")
                Accessible.name: qsTr("Exercises that this clinic wrote")
                onClicked: page.desk.openOwnExercises()
            }

            SmallButton {
                text: qsTr("Clinic settings")
                onClicked: page.desk.openClinicSettings()
            }

            SmallButton {
                visible: page.desk.mayManage
                text: qsTr("Accounts")
                onClicked: page.desk.openAccounts()
            }

            SmallButton {
                visible: page.desk.maySeeAudit
                text: qsTr("Audit trail")
                onClicked: page.desk.openAudit()
            }
        }

        Flow {
            width: parent.width
            visible: page.model.total > 0
            spacing: Theme.space * 0.75

            Chip {
                visible: page.model.seesOthers && page.desk.mayWrite
                text: qsTr("Everybody's")
                group: qsTr("Whose people")
                chosen: !page.model.mineOnly
                onClicked: page.model.mineOnly = false
            }

            Chip {
                visible: page.model.seesOthers && page.desk.mayWrite
                text: qsTr("Mine")
                group: qsTr("Whose people")
                chosen: page.model.mineOnly
                onClicked: page.model.mineOnly = true
            }

            Item {
                visible: page.model.seesOthers && page.desk.mayWrite
                width: Theme.space
                height: 1
            }

            Repeater {
                model: page.model.urgencies

                Chip {
                    required property var modelData

                    width: Math.min(implicitWidth, upper.width)
                    text: modelData.text
                    group: qsTr("How urgent")
                    chosen: page.model.wantedUrgency === modelData.value
                    onClicked: page.model.wantedUrgency = modelData.value
                }
            }
        }

        Flow {
            width: parent.width
            visible: page.model.total > 0
            spacing: Theme.space * 0.75

            Repeater {
                model: page.model.kinds

                Chip {
                    required property var modelData

                    width: Math.min(implicitWidth, upper.width)
                    text: modelData.text
                    group: qsTr("Why")
                    chosen: page.model.wantedKind === modelData.value
                    onClicked: page.model.wantedKind = modelData.value
                }
            }
        }

        Flow {
            width: parent.width
            visible: page.model.choosing
            spacing: Theme.space

            Say {
                height: Math.max(36, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                text: page.model.chosenCount === 1 ? qsTr("1 chosen") : qsTr("%L1 chosen").arg(page.model.chosenCount)
                font.bold: true
                Accessible.role: Accessible.AlertMessage
            }

            SmallButton {
                text: qsTr("Write to them")
                words: Theme.rail
                edge: Theme.rail
                enabled: page.model.chosenCount > 0
                onClicked: page.desk.openMany(false)
            }

            SmallButton {
                text: qsTr("Hold order for them")
                words: Theme.stop
                edge: Theme.stop
                mark: Mark.Octagon
                markInner: Theme.sheet
                enabled: page.model.chosenCount > 0
                onClicked: page.desk.openMany(true)
            }

            SmallButton {
                text: qsTr("All that are shown (%L1)").arg(page.model.count)
                Accessible.name: qsTr("Choose all that are shown")
                Accessible.description: qsTr("Ctrl and A")
                onClicked: page.model.chooseShown()
            }

            SmallButton {
                text: qsTr("Choose nobody")
                onClicked: page.model.choosing = false
            }
        }

        WaitForm {
            width: parent.width
            visible: page.model.waitFor !== ""
            model: page.model
        }

        Problem {
            width: parent.width
            visible: text !== "" && page.model.waitFor === ""
            text: page.model.waitProblem
        }

        Problem {
            width: parent.width
            text: page.model.problem
        }

        Flow {
            width: parent.width
            visible: page.model.stale
            spacing: Theme.space

            Problem {
                width: Math.min(parent.width, 760)
                text: page.model.news
                grave: false
            }

            SmallButton {
                text: qsTr("Sort again")
                onClicked: page.model.sortAgain()
            }
        }

        Row {
            id: heads

            width: parent.width
            visible: page.width >= 900 * Theme.scale && page.model.count > 0
            layoutDirection: Qt.RightToLeft
            spacing: Theme.space * 2

            Say {
                width: Math.min(180, page.width * 0.3)
                text: qsTr("Done, by week")
                color: Theme.soft
            }

            Say {
                width: 130 * Theme.scale
                text: qsTr("Heard from")
                color: Theme.soft
            }
        }
    }

    ListView {
        id: list

        // Its row too, so that the next key is the row's.
        function takeFocus(): void {
            if (currentIndex < 0)
                currentIndex = 0;
            if (currentItem !== null)
                currentItem.forceActiveFocus(Qt.TabFocusReason);
        }

        function openFirst(): void {
            const first = itemAtIndex(0) as CaseRow;
            if (first !== null)
                page.desk.openPerson(first.personId);
        }

        anchors.top: upper.bottom
        anchors.topMargin: Theme.space
        anchors.bottom: parent.bottom
        width: parent.width
        clip: true
        activeFocusOnTab: true
        keyNavigationEnabled: true
        boundsBehavior: Flickable.StopAtBounds
        model: page.model
        reuseItems: true
        Accessible.role: Accessible.List
        Accessible.name: qsTr("People, most urgent first")
        T.ScrollBar.vertical: ThinBar {}

        delegate: CaseRow {
            width: list.width
            mayWrite: page.desk.mayWrite
            choosing: page.model.choosing
            onClicked: {
                if (page.model.choosing)
                    page.model.toggleChosen(personId);
                else
                    page.desk.openPerson(personId);
            }
            onChooseAsked: page.model.toggleChosen(personId)
            onWaitAsked: page.model.askWait(personId)
            onWaitEnded: page.model.endWait(personId)
        }
    }

    Say {
        anchors.horizontalCenter: parent.horizontalCenter
        y: list.y + Theme.edge
        width: Math.min(parent.width - 2 * Theme.edge, 560)
        visible: page.model.count === 0 && !page.model.loading
        text: page.model.filter !== "" ? qsTr("Nobody fits these words.") : page.model.wantedUrgency >= 0 || page.model.wantedKind >= 0 ? qsTr("Nobody fits this choice.") : page.model.mineOnly ? qsTr("Nobody is assigned to you.") : qsTr("Nobody here yet. Press New person to begin.")
        color: Theme.soft
    }
}
