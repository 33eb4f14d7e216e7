// Why the last press changed nothing.
import QtQuick
import Newel.Home
import Newel.Parts

Notice {
    required property HomeModels models

    visible: models.practice.error !== ""
    kind: Notice.Attention
    title: models.practice.error
}
