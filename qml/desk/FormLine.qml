// A line of the person form, by its key.
import QtQuick
import Newel.Desk

LineField {
    id: line

    required property PersonFormModel form
    required property string key

    text: form.values[key] ?? ""
    problem: form.problems[key] ?? ""
    onEdited: text => form.set(key, text)
}
