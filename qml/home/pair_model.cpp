#include "qml/home/pair_model.h"

#include <QtCore/QThread>

#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

QString wordsFor(const absl::Status& status) {
  switch (status.code()) {
    case absl::StatusCode::kOk:
      return QString();
    case absl::StatusCode::kNotFound:
      return PairModel::tr(
          "The clinic does not know this code: it was used already, or it is too old. Ask for a new one.");
    case absl::StatusCode::kResourceExhausted:
      return PairModel::tr("Too many wrong codes. Wait a while, then ask the clinic for a new one.");
    case absl::StatusCode::kUnavailable:
    case absl::StatusCode::kDeadlineExceeded:
      return PairModel::tr(
          "The clinic cannot be reached. Check that this phone is online and that the address is right.");
    case absl::StatusCode::kUnauthenticated:
      return PairModel::tr(
          "Another computer answered than the one on your code. Do not go on; call the clinic.");
    case absl::StatusCode::kFailedPrecondition:
      return PairModel::tr("This phone is already set up. Erase it in Settings first.");
    default:
      return errorWords(status);
  }
}

}  // namespace

PairModel::PairModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_bridge(bridge), m_parts(parts) {}

PairModel::~PairModel() {
  if (m_thread == nullptr) return;
  m_thread->wait();
  delete m_thread;
}

void PairModel::clear() {
  m_error.clear();
  m_code_error.clear();
  m_address_error.clear();
  emit changed();
}

void PairModel::pairTyped(const QString& address, const QString& code) {
  clear();
  const absl::StatusOr<PairingTicket> ticket =
      typedTicket(address.trimmed().toStdString(), code.trimmed().toStdString());
  if (ticket.ok()) return pair(*ticket);
  const std::string reason(ticket.status().message());
  if (reason.find("address") != std::string::npos) {
    m_address_error = tr("This is not an address. It looks like clinic.example:7443.");
  } else {
    m_code_error = tr("The code has 8 letters and numbers. Please check it.");
  }
  emit changed();
}

void PairModel::pairText(const QString& words) {
  clear();
  const absl::StatusOr<PairingTicket> ticket = parseTicket(words.trimmed().toStdString());
  if (ticket.ok()) return pair(*ticket);
  m_error = tr("This is not a code from the clinic. It begins with newel:1. Copy all of it.");
  emit changed();
}

void PairModel::pair(const PairingTicket& ticket) {
  if (busy()) return;
  m_must_compare = ticket.certificate_sha256.empty();
  m_bridge.holdBack(true);
  // Spending a code takes up to 20 s; the page must stay alive meanwhile.
  auto result = std::make_shared<absl::Status>();
  m_thread = QThread::create([engine = m_parts.engine, ticket, result] { *result = engine->pair(ticket); });
  connect(m_thread, &QThread::finished, this, [this, result] { finish(*result); });
  m_thread->start();
  emit changed();
}

void PairModel::finish(const absl::Status& status) {
  m_thread->deleteLater();
  m_thread = nullptr;
  m_error = wordsFor(status);
  m_bridge.holdBack(false);
  if (status.ok()) {
    m_parts.engine->syncSoon();
    emit paired();
  }
  emit changed();
}

}  // namespace newel::home
