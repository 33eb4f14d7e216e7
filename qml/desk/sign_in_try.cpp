#include "qml/desk/sign_in_try.h"

#include <algorithm>

#include "qml/desk/problem_words.h"
#include "sync/desk/desk_client.h"

namespace newel::desk {
namespace {

constexpr int kRepaintMs = 500;
constexpr int kCodeDigits = 6;

bool isCode(const QString& code) {
  return code.size() == kCodeDigits &&
         std::all_of(code.begin(), code.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
}

}  // namespace

SignInTry::SignInTry(const DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {
  m_repaint.setInterval(kRepaintMs);
  connect(&m_repaint, &QTimer::timeout, this, [this] {
    if (secondsToWait() == 0) m_repaint.stop();
    emit changed();
  });
}

int SignInTry::secondsToWait() const {
  const absl::Duration left = m_wait_until - m_context.clock->elapsed();
  return static_cast<int>(std::max<std::int64_t>(0, absl::ToInt64Seconds(left + absl::Milliseconds(999))));
}

QString SignInTry::waitWords() const {
  const int seconds = secondsToWait();
  return seconds == 0 ? QString() : tr("Too many tries. Wait %1 seconds, then try again.").arg(seconds);
}

void SignInTry::reset() {
  m_problem.clear();
  m_code_problem.clear();
  m_needs_code = false;
  m_busy = false;
  emit changed();
}

void SignInTry::say(const QString& problem) {
  m_problem = problem;
  emit changed();
}

bool SignInTry::begin(const QString& password, const QString& code) {
  if (!mayTry()) return false;
  m_problem.clear();
  m_code_problem.clear();
  if (password.isEmpty()) {
    m_problem = tr("Type your password.");
  } else if (m_needs_code && !isCode(code)) {
    m_code_problem = tr("Type the six digits that your code app shows now.");
  } else {
    m_busy = true;
  }
  emit changed();
  return m_busy;
}

void SignInTry::endOtherwise() {
  m_busy = false;
  emit changed();
}

void SignInTry::end(const absl::Status& status, const QString& doing) {
  m_busy = false;
  const absl::Duration wait = waitAsked(status);
  if (status.ok()) {
    m_needs_code = false;
  } else if (wait > absl::ZeroDuration()) {
    m_wait_until = m_context.clock->elapsed() + wait;
    m_repaint.start();
  } else if (newel::needsCode(status)) {
    m_needs_code = true;
  } else if (isWrongCode(status)) {
    m_code_problem =
        tr("This code is wrong, too late, or was used already. Wait for the next one and type that. If it is "
           "wrong "
           "again, the clock of the device with the code app may be off.");
  } else if (absl::IsUnauthenticated(status)) {
    m_needs_code = false;
    m_problem = tr("Name or password is wrong. Type both again.");
  } else if (absl::IsFailedPrecondition(status)) {
    m_needs_code = false;
    m_problem =
        status.message().substr(0, 8) == "account:"
            ? tr("This account is switched off. A lead or an administrator of the clinic can switch it "
                 "on again.")
            : tr("This first password is too old. Ask a lead or an administrator for a new one.");
  } else {
    m_problem = problemWords(status, doing);
  }
  emit changed();
}

}  // namespace newel::desk
