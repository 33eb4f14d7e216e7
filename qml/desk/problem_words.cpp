#include "qml/desk/problem_words.h"

#include <absl/strings/match.h>

#include <QtCore/QCoreApplication>

namespace newel::desk {
namespace {

QString whatToDo(absl::StatusCode code) {
  switch (code) {
    case absl::StatusCode::kUnavailable:
    case absl::StatusCode::kDeadlineExceeded:
      return QCoreApplication::translate(
          "ProblemWords",
          "The hub does not answer. Nothing was changed there as far as this desk knows. Check the network, "
          "then try again.");
    case absl::StatusCode::kUnauthenticated:
      return QCoreApplication::translate(
          "ProblemWords", "The hub does not know this sign-in any more. Sign in again; drafts are kept.");
    case absl::StatusCode::kPermissionDenied:
      return QCoreApplication::translate("ProblemWords",
                                         "Your role may not do this. Ask whoever runs the clinic's hub.");
    case absl::StatusCode::kAborted:
      return QCoreApplication::translate(
          "ProblemWords",
          "Somebody changed it meanwhile. Look at the newest one and do it again; what you wrote is kept.");
    case absl::StatusCode::kResourceExhausted:
      return QCoreApplication::translate(
          "ProblemWords", "Too many tries or too much at once. Wait a minute, then try again.");
    case absl::StatusCode::kNotFound:
      return QCoreApplication::translate("ProblemWords",
                                         "The hub does not know it. Go back to the list and open it again.");
    default:
      return {};
  }
}

}  // namespace

QString problemWords(const absl::Status& status, const QString& doing) {
  if (status.ok()) return {};
  QString words = QCoreApplication::translate("ProblemWords", "Could not %1.").arg(doing);
  const bool full = absl::IsResourceExhausted(status) && absl::StartsWith(status.message(), "disk full");
  const QString todo =
      full ? QCoreApplication::translate("ProblemWords",
                                         "The hub's disk is full. Nothing was kept; tell whoever runs it.")
           : whatToDo(status.code());
  if (!todo.isEmpty()) words += QLatin1Char(' ') + todo;
  const std::string message(status.message());
  if (todo.isEmpty() && !message.empty())
    words +=
        QCoreApplication::translate("ProblemWords", " The hub says: %1").arg(QString::fromStdString(message));
  return words;
}

}  // namespace newel::desk
