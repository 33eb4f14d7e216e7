// What this desk remembers between starts: the hub's address and pin, the last user name, the look.
// Never a password or a session. One small JSON file, written new and renamed.
#pragma once

#include <QtCore/QString>
#include <QtCore/QStringList>

namespace newel::desk {

struct DeskSettings {
  QString address;
  QString fingerprint;
  QStringList pins;  // what the hub of that fingerprint said it may show from then on, in hex
  QString user_name;
  QString language;  // "en", "es"; empty: the system's
  int text_percent = 100;
  bool dark = false;
  bool look_chosen = false;  // false: the look follows the system
};

// Defaults where the file is missing or cannot be read.
DeskSettings loadSettings(const QString& data_folder);
// False when it could not be kept; the desk works on without.
bool saveSettings(const QString& data_folder, const DeskSettings& settings);

}  // namespace newel::desk
