// Takes everything about the person off this phone, after a plain question.
import QtQuick
import Newel.Home
import Newel.Parts

HomePage {
    id: page

    property bool asking: false

    title: asking ? qsTr("Erase everything about you here?") : qsTr("Erase this phone")
    canGoBack: true

    onTitleChanged: {
        focusTitle();
        upper.show();
    }

    PageTop {
        id: upper
    }

    Notice {
        width: parent.width
        visible: page.asking || page.models.takeAlong.waiting > 0
        kind: page.models.takeAlong.waiting > 0 ? Notice.Attention : Notice.Note
        title: page.models.takeAlong.waiting > 0 ? page.models.takeAlong.waitingWords : qsTr("Nothing waits to be sent.")
        text: page.asking ? qsTr("This cannot be undone.") : ""
    }

    BulletList {
        width: parent.width
        visible: !page.asking
        heading: qsTr("What goes")
        lines: [qsTr("Your programme, its photos and clips, your practices and messages, your settings and reminders: all that Newel keeps on this phone."), qsTr("What was not sent to the clinic yet. It is lost.")]
    }

    BulletList {
        width: parent.width
        visible: !page.asking
        heading: qsTr("What stays")
        lines: [qsTr("The clinic keeps what has reached it. Ask the clinic if you want that erased, too."), qsTr("Files that you saved from here yourself. You can delete them like any other file.")]
    }

    BulletList {
        width: parent.width
        visible: !page.asking
        heading: qsTr("Afterwards")
        lines: [qsTr("This phone belongs to nobody. To use Newel here again you need a new code from the clinic.")]
    }

    Notice {
        width: parent.width
        visible: page.models.settings.error !== ""
        kind: Notice.Attention
        title: page.models.settings.error
    }

    SecondaryButton {
        width: parent.width
        visible: !page.asking
        text: qsTr("First save everything about me")
        onClicked: page.models.app.show(AppModel.TakeAlong)
    }

    SecondaryButton {
        width: parent.width
        visible: !page.asking
        words: Theme.stop
        edge: Theme.stop
        text: qsTr("Erase this phone …")
        onClicked: page.asking = true
    }

    SecondaryButton {
        width: parent.width
        visible: page.asking
        text: qsTr("No, keep it")
        onClicked: page.asking = false
    }

    SecondaryButton {
        width: parent.width
        visible: page.asking
        words: Theme.stop
        edge: Theme.stop
        mark: Mark.Alarm
        markInner: Theme.sheet
        text: qsTr("Yes, erase everything")
        onClicked: page.models.settings.erase()
    }
}
