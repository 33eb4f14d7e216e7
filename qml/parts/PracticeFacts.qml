// What the practice screen shows, and nothing more. The phone fills it from the player; the desk may fill it
// to show what a person will see.
import QtQuick
import Newel.Parts

QtObject {
    property int entryNumber: 1
    property int entryCount: 1
    property string title: ""
    property string cue: ""          // the sentence to do now
    property string next: ""         // what comes after, "Then: rest"
    property string support: ""      // what the hands hold
    property string number: ""       // the one number
    property string numberOf: ""     // what it counts: "of 8 times", "seconds to hold"
    property string countSaid: ""    // number and what it counts for a screen reader; empty: as they are shown
    property bool canSlow: false     // movements can be taken slower
    property string setWords: ""     // "set 1 of 2"
    property string sideWords: ""    // "left leg, prosthesis"
    property real fraction: 0        // of the present beat, 0 to 1
    property bool resting: false     // rest or get-ready: nothing to do yet
    property bool canLengthen: false // a rest, which may be longer
    property bool canGoNow: false    // a rest or get-ready, which may be over
    property bool waiting: false     // goes on when the person taps
    property bool paused: false
    property string pausedWhy: ""    // why, when it was not the person
    property string soundNote: ""    // honest words when cues cannot be heard
    property FigureSource figure: null // the drawn body; null or nothing there: words alone
    property var posts: []           // see Rail
    property int at: 0               // see Rail
    // Words of the buttons by their English, where they are to be in another language than the program's.
    property var labels: ({})
}
