// Everything about the person, as files of their own.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    readonly property TakeAlongModel takeAlong: models.takeAlong

    readonly property bool fresh: takeAlong.savedAs === "" && takeAlong.error === ""

    title: takeAlong.busy ? qsTr("Writing the file …") : takeAlong.savedAs !== "" ? qsTr("Saved") : takeAlong.error !== "" ? qsTr("Nothing was saved") : qsTr("Save everything about me")
    canGoBack: true

    onTitleChanged: {
        focusTitle();
        upper.show();
    }

    Component.onCompleted: takeAlong.begin()

    PageTop {
        id: upper
    }

    Notice {
        width: parent.width
        visible: page.takeAlong.savedAs !== ""
        kind: Notice.Good
        text: page.takeAlong.savedAs
    }

    Notice {
        width: parent.width
        visible: page.takeAlong.error !== ""
        kind: Notice.Attention
        title: page.takeAlong.error
    }

    Words {
        width: parent.width
        visible: page.fresh
        text: qsTr("Newel writes what it keeps about you into a file that is yours: your programme, what you did and felt, messages.")
    }

    Notice {
        width: parent.width
        visible: page.takeAlong.error === ""
        kind: Notice.Attention
        title: qsTr("The file is not locked")
        text: qsTr("Whoever opens it can read it. Keep it where only you can get at it.")
    }

    Column {
        width: parent.width
        spacing: Theme.space

        SecondaryButton {
            width: parent.width
            enabled: !page.takeAlong.busy
            text: qsTr("Save to read and print (PDF)")
            onClicked: page.takeAlong.savePdf()
        }

        SecondaryButton {
            width: parent.width
            enabled: !page.takeAlong.busy
            text: qsTr("Save for other programs (JSON)")
            onClicked: page.takeAlong.saveJson()
        }
    }
}
