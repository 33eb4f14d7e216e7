// The catalogue to pick from, each exercise with what the rules would say of it for this person.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Desk
import Newel.Parts

Column {
    id: picker

    required property DraftModel draft
    readonly property CatalogueListModel catalogue: draft.catalogue

    signal picked

    function takeFocus(): void {
        filter.takeFocus();
    }

    spacing: Theme.space

    Heading {
        width: parent.width
        text: qsTr("Pick an exercise")
    }

    LineField {
        id: filter

        width: parent.width
        name: qsTr("Find an exercise")
        hint: qsTr("Find by words: stairs, lying, strength, chair …")
        text: picker.catalogue.filter
        onEdited: text => picker.catalogue.filter = text
    }

    Say {
        width: parent.width
        visible: picker.catalogue.count === 0
        text: qsTr("No exercise fits these words.")
        color: Theme.soft
    }

    Repeater {
        model: picker.catalogue

        T.AbstractButton {
            id: row

            required property string exerciseId
            required property string title
            required property string purpose
            required property string facts
            required property int worst
            required property string worstWords

            width: picker.width
            implicitHeight: column.implicitHeight + Theme.space * 1.5
            focusPolicy: Qt.StrongFocus
            onClicked: {
                picker.draft.add(exerciseId);
                picker.picked();
            }

            Accessible.role: Accessible.Button
            Accessible.name: qsTr("Add %1").arg(title)
            Accessible.description: purpose + ". " + facts + ". " + worstWords
            Accessible.onPressAction: row.clicked()
            Keys.onReturnPressed: row.clicked()
            Keys.onEnterPressed: row.clicked()

            background: Rectangle {
                color: row.hovered || row.visualFocus ? Theme.sheet : "transparent"
                radius: Theme.radius
                border.width: 1
                border.color: Theme.groove

                FocusRing {
                    target: row
                    visible: row.visualFocus
                }
            }

            Column {
                id: column

                x: Theme.space
                y: Theme.space * 0.75
                width: parent.width - 2 * Theme.space

                Say {
                    width: parent.width
                    text: row.title
                    font.bold: true
                    Accessible.ignored: true
                }

                Say {
                    width: parent.width
                    text: row.purpose
                    Accessible.ignored: true
                }

                Say {
                    width: parent.width
                    text: row.facts
                    color: Theme.soft
                    Accessible.ignored: true
                }

                Row {
                    width: parent.width
                    visible: row.worst > 0
                    spacing: Theme.space

                    EffectMark {
                        width: Math.round(Theme.small * 1.2)
                        height: width
                        y: 2
                        effect: row.worst
                    }

                    Say {
                        width: parent.width - Theme.small * 1.2 - Theme.space
                        text: row.worstWords
                        color: row.worst === 1 ? Theme.stop : Theme.ink
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
