// The window: one page at a time, as the app model says. Pages keep no state of their own that matters.
import QtQuick
import Newel.Home
import Newel.Parts

Window {
    id: window

    required property HomeModels models

    width: 412
    height: 800
    minimumWidth: 320
    minimumHeight: 320
    visible: true
    title: qsTr("Newel")
    color: Theme.paper

    function load(): void {
        loader.setSource(models.app.pageName + "Page.qml", {
            "models": models
        });
    }

    Component.onCompleted: load()

    Binding {
        target: Theme
        property: "textPercent"
        value: window.models.settings.textPercent
    }

    Binding {
        target: window.models.settings
        property: "shownPercent"
        value: Math.round(Theme.scale * 100)
    }

    Binding {
        target: Theme
        property: "dark"
        value: window.models.settings.look === SettingsModel.AsSystem ? Theme.systemDark : window.models.settings.look === SettingsModel.Dark
    }

    Binding {
        target: Theme
        property: "strong"
        value: window.models.settings.moreContrast || window.models.settings.systemMoreContrast
    }

    Binding {
        target: Theme
        property: "lessMotion"
        value: window.models.settings.lessMotion || window.models.settings.systemLessMotion
    }

    Connections {
        target: window.models.app

        function onPageChanged(): void {
            window.load();
        }
    }

    Loader {
        id: loader

        anchors.fill: parent
        focus: true
        LayoutMirroring.enabled: window.models.app.rightToLeft
        LayoutMirroring.childrenInherit: true
    }
}
