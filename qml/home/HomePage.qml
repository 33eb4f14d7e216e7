// What all pages of the phone share: the test clock's banner and the way to Help.
import QtQuick
import Newel.Home
import Newel.Parts

PageFrame {
    id: page

    required property HomeModels models

    banner: models.app.banner
    onHelpPressed: models.app.show(AppModel.Help)
    onBackPressed: models.app.back()
}
