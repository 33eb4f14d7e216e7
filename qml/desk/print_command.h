// newel-desk --print: sheets without a screen. Signs in, fetches one person, writes one PDF.
#pragma once

#include <QtCore/QString>

#include "qml/desk/desk_context.h"
#include "qml/desk/sheets.h"

namespace newel::desk {

struct PrintCommand {
  QString kind;  // "handout", "report" or "card"
  QString person_id;
  QString address;
  QString fingerprint;
  QString user_name;
  QString password;  // from the environment, never from the command line
  QString code;      // of the second factor; empty: the account has none
  QString out;
  QString first_day;  // of a report; empty: four weeks back
  QString last_day;   // empty: today
  SheetChoice choice;
};

// 0 done; 1 refused or failed; 2 the command is wrong. One line on stdout or stderr says which.
int runPrint(const PrintCommand& command, DeskContext& context);

}  // namespace newel::desk
