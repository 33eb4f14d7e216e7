// How the person is drawn in the pictures of the exercises. Kept on this phone alone.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property SettingsModel settings: models.settings

    title: qsTr("How you are drawn")
    canGoBack: true

    Component.onCompleted: settings.showFigure()

    Connections {
        target: page.settings

        function onChanged(): void {
            page.settings.showFigure();
        }
    }

    Words {
        width: parent.width
        text: qsTr("Choose what feels right. Only this phone knows it.")
        color: Theme.soft
    }

    FigurePane {
        width: parent.width
        height: Math.min(340, width * 1.1)
        source: page.settings.figure
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Heading {
            width: parent.width
            text: qsTr("Build")
        }

        Repeater {
            model: [qsTr("Light"), qsTr("Medium"), qsTr("Heavy")]

            RadioRow {
                required property int index
                required property string modelData

                width: parent.width
                text: modelData
                checked: page.settings.build === index
                onClicked: page.settings.build = index
            }
        }
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Heading {
            width: parent.width
            text: qsTr("Skin")
        }

        Flow {
            width: parent.width
            spacing: Theme.space * 1.5

            Repeater {
                model: page.settings.skins

                T.RadioButton {
                    id: skin

                    required property int index
                    required property color modelData

                    checked: page.settings.skin === index
                    implicitWidth: Theme.big
                    implicitHeight: Theme.big
                    focusPolicy: Qt.StrongFocus
                    onClicked: page.settings.skin = index
                    Accessible.role: Accessible.RadioButton
                    Accessible.name: qsTr("Skin %L1 of %L2, from light to dark").arg(index + 1).arg(4)
                    Accessible.checkable: true
                    Accessible.checked: checked
                    Accessible.onPressAction: skin.clicked()

                    background: Rectangle {
                        radius: Theme.radius
                        color: skin.modelData
                        border.width: skin.checked ? 4 : 1
                        border.color: skin.checked ? Theme.rail : Theme.soft

                        FocusRing {
                            target: skin
                            visible: skin.visualFocus
                        }

                        Mark {
                            anchors.centerIn: parent
                            width: 28
                            height: 28
                            visible: skin.checked
                            shape: Mark.Tick
                            colour: Theme.rail
                            inner: Theme.paper
                        }
                    }
                }
            }
        }
    }

    Column {
        width: parent.width
        spacing: Theme.space / 2

        Heading {
            width: parent.width
            text: qsTr("Head")
        }

        Repeater {
            model: [qsTr("With hair"), qsTr("Without hair"), qsTr("With a head scarf")]

            RadioRow {
                required property int index
                required property string modelData

                width: parent.width
                text: modelData
                checked: page.settings.head === index
                onClicked: page.settings.head = index
            }
        }
    }
}
