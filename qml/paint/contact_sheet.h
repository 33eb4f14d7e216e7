// Every figure of the catalogue on one picture, painted by the adapter that also paints the screen: to look
// at all of them at once. The same as text, without Qt: figureSheet() in core/figure/sheet.h.
#pragma once

#include <absl/status/statusor.h>

#include <QtGui/QImage>
#include <string>

#include "core/figure/figure.h"

namespace newel::paint {

// Three key poses of each exercise and its title in `language`. The body wears its prosthesis save where the
// exercise says OFF. Needs a QGuiApplication.
absl::StatusOr<QImage> contactSheet(const FigureBody& body, const std::string& language, bool dark = false);

}  // namespace newel::paint
