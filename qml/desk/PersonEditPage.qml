// A new person, or a change of record. Every question is open to see; nothing asked is ever taken as "no".
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

FocusScope {
    id: page

    required property DeskModel desk
    readonly property PersonFormModel form: desk.form
    readonly property var values: form.values
    readonly property var problems: form.problems
    readonly property var options: form.options
    readonly property bool wide: width >= 1000 * Theme.scale

    Shortcut {
        sequences: ["Ctrl+S"]
        onActivated: page.form.save()
    }

    Component.onCompleted: given.takeFocus()

    Flickable {
        id: outer

        anchors.top: parent.top
        anchors.bottom: foot.top
        width: parent.width
        contentHeight: page.wide ? Math.max(first.wanted, second.wanted) : first.wanted + second.wanted
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        T.ScrollBar.vertical: ThinBar {
            parent: outer
        }

        Pane {
            id: first

            width: page.wide ? Math.round(page.width / 2) : page.width
            height: wanted
            scrolls: false

            Words {
                width: parent.width
                text: page.form.title
                font.pixelSize: Theme.title
                font.bold: true
                Accessible.role: Accessible.Heading
            }

            ImportPane {
                width: parent.width
                visible: page.form.isNew
                from: page.desk.importing
            }

            Grid {
                id: names

                readonly property real cell: columns === 2 ? (width - spacing) / 2 : width

                width: parent.width
                columns: width > 480 * Theme.scale ? 2 : 1
                spacing: Theme.space * 1.5

                FormLine {
                    id: given

                    width: names.cell
                    form: page.form
                    key: "given_name"
                    label: qsTr("Given name")
                }

                FormLine {
                    width: names.cell
                    form: page.form
                    key: "family_name"
                    label: qsTr("Family name")
                }

                FormLine {
                    width: names.cell
                    form: page.form
                    key: "birth_date"
                    label: qsTr("Birth date")
                    hint: qsTr("1961-05-04, may be empty")
                }

                FormLine {
                    width: names.cell
                    form: page.form
                    key: "phone"
                    label: qsTr("Phone number")
                    hint: qsTr("may be empty")
                    inputMethodHints: Qt.ImhDialableCharactersOnly
                }
            }

            FormStrip {
                width: parent.width
                form: page.form
                key: "lost"
                label: qsTr("Leg lost")
            }

            LimbForm {
                width: parent.width
                visible: ((page.values["lost"] ?? 0) & 1) !== 0
                form: page.form
                side: "left"
                sideWords: qsTr("left")
            }

            LimbForm {
                width: parent.width
                visible: ((page.values["lost"] ?? 0) & 2) !== 0
                form: page.form
                side: "right"
                sideWords: qsTr("right")
            }

            FormStrip {
                width: parent.width
                visible: page.values["lost"] === 3
                form: page.form
                key: "strong_side"
                label: qsTr("Leg that goes first on stairs (yours to choose, there is no default)")
                group: qsTr("Leg that goes first on stairs")
            }

            FormStrip {
                width: parent.width
                form: page.form
                key: "mobility"
                label: qsTr("Mobility level")
            }

            FormStrip {
                width: parent.width
                form: page.form
                key: "walking_aid"
                label: qsTr("Walking aid")
            }

            ChipStrip {
                width: parent.width
                label: qsTr("Conditions that change what is safe")
                group: qsTr("Condition")
                many: true
                options: page.options["conditions"]
                chosen: page.form.conditions
                onPicked: value => page.form.toggleCondition(value)
            }

            Chip {
                text: qsTr("Asked: none of these")
                many: true
                chosen: page.values["no_conditions"] === true
                onClicked: page.form.set("no_conditions", !chosen)
            }

            Problem {
                width: parent.width
                text: page.problems["conditions"] ?? ""
            }
        }

        Pane {
            id: second

            x: page.wide ? first.width : 0
            y: page.wide ? 0 : first.height
            width: page.width - x
            height: wanted
            scrolls: false

            Heading {
                width: parent.width
                text: qsTr("At home")
            }

            FormStrip {
                width: parent.width
                form: page.form
                key: "home.rails"
                label: qsTr("Stairs and rails")
            }

            StepField {
                label: qsTr("Sturdy chairs without wheels")
                value: page.values["home.sturdy_chairs"] ?? 0
                to: 20
                problem: page.problems["home.sturdy_chairs"] ?? ""
                onChanged: value => page.form.set("home.sturdy_chairs", value)
            }

            Grid {
                id: answers

                readonly property real cell: columns === 2 ? (width - spacing) / 2 : width

                width: parent.width
                columns: width > 560 * Theme.scale ? 2 : 1
                spacing: Theme.space * 1.5

                Repeater {
                    model: [
                        {
                            "key": "home.ramp",
                            "label": qsTr("Ramp")
                        },
                        {
                            "key": "home.rolling_chair",
                            "label": qsTr("Chair on wheels")
                        },
                        {
                            "key": "home.counter",
                            "label": qsTr("Worktop or heavy table")
                        },
                        {
                            "key": "home.floor_space",
                            "label": qsTr("Room to lie on the floor or a firm bed")
                        },
                        {
                            "key": "home.someone_near",
                            "label": qsTr("Someone within call")
                        },
                        {
                            "key": "can_get_up_from_floor",
                            "label": qsTr("Can get up from the floor")
                        },
                        {
                            "key": "senses.low_vision",
                            "label": qsTr("Low vision")
                        },
                        {
                            "key": "senses.hard_of_hearing",
                            "label": qsTr("Hard of hearing")
                        }
                    ]

                    FormStrip {
                        required property var modelData

                        width: answers.cell
                        form: page.form
                        key: modelData.key
                        label: modelData.label
                    }
                }
            }

            SmallButton {
                text: qsTr("What I have not asked is not known")
                width: Math.min(implicitWidth, parent.width)
                onClicked: page.form.restNotKnown()
            }

            Heading {
                width: parent.width
                text: qsTr("For the program")
            }

            StepField {
                label: qsTr("Height")
                unit: qsTr("cm")
                from: 80
                to: 230
                value: page.values["height_cm"] ?? 0
                problem: page.problems["height_cm"] ?? ""
                onChanged: value => page.form.set("height_cm", value)
            }

            FormStrip {
                width: parent.width
                form: page.form
                key: "language"
                label: qsTr("Language")
            }

            FormLine {
                width: Math.min(parent.width, 340 * Theme.scale)
                form: page.form
                key: "zone"
                label: qsTr("Time zone")
                hint: qsTr("for example Europe/Berlin")
            }
        }
    }

    Rectangle {
        id: foot

        anchors.bottom: parent.bottom
        width: parent.width
        height: footRow.height + Theme.space * 1.5
        color: Theme.sheet

        Rectangle {
            width: parent.width
            height: 1
            color: Theme.groove
        }

        Flow {
            id: footRow

            x: Theme.edge
            y: Theme.space * 0.75
            width: parent.width - 2 * Theme.edge
            spacing: Theme.space * 2

            MainButton {
                text: page.form.saving ? qsTr("Saving …") : qsTr("Save record")
                enabled: !page.form.saving
                onClicked: page.form.save()
            }

            SmallButton {
                text: qsTr("Do not save")
                onClicked: page.desk.back()
            }

            Problem {
                width: Math.min(parent.width, 620)
                text: page.form.problem
            }
        }
    }
}
