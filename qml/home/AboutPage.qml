import QtQuick
import Newel.Home
import Newel.Parts

FirstRunPage {
    id: page

    title: qsTr("What Newel is, and is not")
    nextWords: qsTr("I have read this")

    WhatNewelIs {
        width: parent.width
    }
}
