// A choice of the person form, by its key.
import QtQuick
import Newel.Desk

ChipStrip {
    required property PersonFormModel form
    required property string key

    options: form.options[key] ?? []
    value: form.values[key]
    problem: form.problems[key] ?? ""
    onPicked: value => form.set(key, value)
}
