// The real newel-desk as its own process against a test's hub, driven through its window letter by letter.
// Commands and answers as in qml/parts/driver.h.
#pragma once

#include <QtCore/QJsonObject>
#include <QtCore/QProcess>
#include <string>
#include <vector>

#include "tests/sync/common/test_clinic.h"

namespace newel::test {

class DrivenDesk {
 public:
  // `folder` keeps what the desk remembers; `options` are added to its command line.
  DrivenDesk(TestClinic& clinic, const std::string& folder, const QStringList& options = {});
  ~DrivenDesk();
  DrivenDesk(const DrivenDesk&) = delete;
  DrivenDesk& operator=(const DrivenDesk&) = delete;

  std::string run(const std::string& command, int wait_ms = 60000);
  // Each has to answer "ok"; what was on the screen is in the failure. After the first that does not, none is
  // run.
  void mustRun(const std::vector<std::string>& commands);
  QJsonObject state();
  // From the sign-in page; `page` is where it leads.
  void signIn(const std::string& user, const std::string& password, const std::string& page = "CaseloadPage");
  // A picture where NEWEL_SHOTS names a folder.
  void shot(const std::string& name);

 private:
  QProcess m_process;
  bool m_lost = false;
};

}  // namespace newel::test
