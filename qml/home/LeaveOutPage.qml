import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    over: models.practice.entryTitle
    title: qsTr("Why leave it out?")
    canGoBack: true

    PracticeError {
        width: parent.width
        models: page.models
    }

    ReasonGrid {
        width: parent.width
        reasons: page.models.practice.skipReasons
        onPicked: reason => {
            page.models.app.back();
            page.models.practice.skip(reason);
        }
    }
}
