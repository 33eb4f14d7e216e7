// The form of an own exercise. Every question is open to see; what is still wrong is said at the end.
pragma ComponentBehavior: Bound

import QtQuick
import Newel.Desk
import Newel.Parts

Column {
    id: form

    required property OwnExerciseModel own
    readonly property var values: own.values
    readonly property var options: own.options
    readonly property var chosen: own.chosen

    function take(): void {
        startField.text = form.values["start"] ?? "";
        goodField.text = form.values["good"] ?? "";
        stop_ifField.text = form.values["stop_if"] ?? "";
        cautionsField.text = form.values["cautions"] ?? "";
    }

    spacing: Theme.space * 1.5
    onVisibleChanged: {
        if (visible)
            take();
    }

    Say {
        width: parent.width
        text: form.own.movement
        color: Theme.brass
        font.bold: true
    }

    LineField {
        width: parent.width
        label: qsTr("Title")
        hint: qsTr("Up to 80 letters")
        text: form.values["title"] ?? ""
        onEdited: text => form.own.set("title", text)
    }

    LineField {
        width: parent.width
        label: qsTr("Why")
        hint: qsTr("One plain sentence to the person")
        text: form.values["purpose"] ?? ""
        onEdited: text => form.own.set("purpose", text)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Group")
        options: form.options["purpose_group"] ?? []
        value: form.values["purpose_group"] ?? 0
        onPicked: value => form.own.choose("purpose_group", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Position")
        options: form.options["position"] ?? []
        value: form.values["position"] ?? 0
        onPicked: value => form.own.choose("position", value)
    }

    AreaField {
        id: startField

        width: parent.width
        label: qsTr("How to take up the position")
        hint: qsTr("Plain words: what to fetch, where to stand, sit or lie")
        lines: 3
        onEdited: text => form.own.set("start", text)
    }

    // By number, so that a line stays the same line while it is typed in.
    Repeater {
        model: form.own.phases.length

        LineField {
            required property int index
            readonly property var phase: form.own.phases[index] ?? ({})

            width: form.width
            label: phase.label ?? ""
            hint: qsTr("A few words: they are shown and said in the time of this part")
            text: phase.text ?? ""
            onEdited: text => form.own.setPhase(phase.key, text)
        }
    }

    Say {
        width: parent.width
        text: qsTr("{working} stands for the working leg: the phone says left or right.")
        color: Theme.soft
    }

    Flow {
        width: parent.width
        spacing: Theme.space * 1.5

        Repeater {
            model: form.own.doseFields.length

            StepField {
                required property int index
                readonly property var modelData: form.own.doseFields[index] ?? ({})

                label: modelData.label ?? ""
                unit: modelData.unit ?? ""
                value: form.own.dose[modelData.key] ?? 0
                from: modelData.from ?? 0
                to: modelData.to ?? 0
                step: modelData.step ?? 1
                onChanged: value => form.own.setDose(modelData.key, value)
            }
        }
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Sides it may be done on")
        options: form.options["sides"] ?? []
        many: true
        chosen: form.chosen["sides"] ?? []
        onPicked: value => form.own.toggle("sides", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Support it may be done with")
        options: form.options["supports"] ?? []
        many: true
        chosen: form.chosen["supports"] ?? []
        onPicked: value => form.own.toggle("supports", value)
    }

    LineField {
        width: parent.width
        label: qsTr("What the hands hold")
        hint: qsTr("{support} stands for the support that is chosen")
        text: form.values["support"] ?? ""
        onEdited: text => form.own.set("support", text)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Prosthesis")
        options: form.options["prosthesis"] ?? []
        value: form.values["prosthesis"] ?? 0
        onPicked: value => form.own.choose("prosthesis", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Least mobility level")
        options: form.options["mobility"] ?? []
        value: form.values["mobility"] ?? 0
        onPicked: value => form.own.choose("mobility", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Both limbs lost")
        options: form.options["both"] ?? []
        value: form.values["both"] ?? 0
        onPicked: value => form.own.choose("both", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("Muscles")
        options: form.options["muscles"] ?? []
        many: true
        chosen: form.chosen["muscles"] ?? []
        onPicked: value => form.own.toggle("muscles", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("What is needed")
        options: form.options["equipment"] ?? []
        many: true
        chosen: form.chosen["equipment"] ?? []
        onPicked: value => form.own.toggle("equipment", value)
    }

    ChipStrip {
        width: parent.width
        label: qsTr("What the safety rules look at")
        options: form.options["tags"] ?? []
        many: true
        chosen: form.chosen["tags"] ?? []
        onPicked: value => form.own.toggle("tags", value)
    }

    AreaField {
        id: goodField

        width: parent.width
        label: qsTr("Done well")
        hint: qsTr("Two to four lines")
        lines: 3
        onEdited: text => form.own.set("good", text)
    }

    LineField {
        width: parent.width
        label: qsTr("A common fault")
        hint: qsTr("What you would see")
        text: form.values["fault"] ?? ""
        onEdited: text => form.own.set("fault", text)
    }

    LineField {
        width: parent.width
        label: qsTr("Its correction")
        hint: qsTr("What to say to it")
        text: form.values["mend"] ?? ""
        onEdited: text => form.own.set("mend", text)
    }

    LineField {
        width: parent.width
        label: qsTr("Breathing")
        text: form.values["breathing"] ?? ""
        onEdited: text => form.own.set("breathing", text)
    }

    AreaField {
        id: stop_ifField

        width: parent.width
        label: qsTr("Stop if")
        hint: qsTr("One line each")
        lines: 3
        onEdited: text => form.own.set("stop_if", text)
    }

    AreaField {
        id: cautionsField

        width: parent.width
        label: qsTr("Take care")
        hint: qsTr("One line each: what can go wrong here")
        lines: 2
        onEdited: text => form.own.set("cautions", text)
    }

    LineField {
        id: photo

        width: parent.width
        label: qsTr("Photo (may be left out)")
        hint: qsTr("Path of a picture on this computer; place and time in it are left behind")
        onAccepted: form.own.setPicture(photo.text)
    }

    Flow {
        width: parent.width
        spacing: Theme.space

        SmallButton {
            text: qsTr("Take this photo")
            enabled: photo.text.trim() !== ""
            onClicked: form.own.setPicture(photo.text)
        }

        SmallButton {
            visible: form.own.picture !== ""
            text: qsTr("No photo")
            onClicked: form.own.setPicture("")
        }
    }

    Image {
        width: Math.min(parent.width, 320)
        visible: form.own.picture !== ""
        fillMode: Image.PreserveAspectFit
        source: form.own.picture
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Photo of the exercise")
    }

    Say {
        width: parent.width
        visible: form.own.missing !== ""
        text: form.own.missing
        color: Theme.brass
        font.bold: true
        Accessible.name: qsTr("Before it can be saved: %1").arg(text)
    }

    Problem {
        width: parent.width
        text: form.own.problem
    }

    MainButton {
        text: form.own.saving ? qsTr("Saving …") : qsTr("Save for the clinic")
        enabled: form.own.missing === "" && !form.own.saving
        onClicked: form.own.save()
    }
}
