// A picture that came as bytes, as an address that an image item can show.
#pragma once

#include <QtCore/QString>
#include <string>

namespace newel::parts {

// JPEG or PNG; empty for no picture.
QString pictureAddress(const std::string& bytes);

}  // namespace newel::parts
