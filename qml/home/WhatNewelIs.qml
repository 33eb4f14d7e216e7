// What this program is for, what it is not, and what to keep in mind: on the first run and under Help.
import QtQuick
import Newel.Home
import Newel.Parts

Column {
    spacing: Theme.space * 2

    Heading {
        width: parent.width
        text: qsTr("What Newel is")
    }

    Words {
        width: parent.width
        text: qsTr("Newel is for adults who use a leg prosthesis and whose therapist has examined them, taught them the exercises and signed the programme. It shows the programme, leads and times practice at home, keeps what you did and felt, and sends that to the clinic.")
    }

    Heading {
        width: parent.width
        text: qsTr("What Newel is not")
    }

    Words {
        width: parent.width
        text: qsTr("It does not examine you, name an illness, choose exercises or make them harder. Nobody watches while you practise, and it does not call for help. It is not for first steps with a new prosthesis without someone beside you, nor for people who were told not to exercise alone.")
    }

    BulletList {
        width: parent.width
        heading: qsTr("Please remember")
        lines: [
            qsTr("This is not an emergency service. In danger, call the emergency number."),
            qsTr("Nobody reads messages at once."),
            qsTr("Stop if something feels wrong."),
            qsTr("What your therapist or doctor says counts more than this phone."),
            qsTr("With no network, what you see may be old."),
            qsTr("Local law and your clinic's rules decide."),
            qsTr("This is free software and comes with no warranty.")
        ]
    }
}
