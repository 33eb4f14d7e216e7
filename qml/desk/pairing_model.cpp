#include "qml/desk/pairing_model.h"

#include <algorithm>

#include "core/time/local_day.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/pairing_ticket.h"

namespace newel::desk {

PairingModel::PairingModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {
  m_repaint.setInterval(500);
  connect(&m_repaint, &QTimer::timeout, this, [this] {
    if (secondsLeft() == 0) m_repaint.stop();
    emit ticked();
  });
}

int PairingModel::secondsLeft() const {
  const absl::Duration left = m_deadline - m_context.clock->elapsed();
  return static_cast<int>(std::max<std::int64_t>(0, absl::ToInt64Seconds(left)));
}

QString PairingModel::leftWords() const {
  if (m_qr_text.isEmpty()) return {};
  const int left = secondsLeft();
  if (left == 0) return tr("This code is no longer good. Make a new one.");
  return tr("Good for %1:%2 more").arg(left / 60).arg(left % 60, 2, 10, QLatin1Char('0'));
}

void PairingModel::begin(const PersonFile& file) {
  m_person_id = file.person.id();
  m_known.clear();
  for (const auto& device : file.devices) m_known.insert(device.id());
  m_paired_phone.clear();
  newCode();
}

void PairingModel::follow(const PersonFile& file) {
  if (m_person_id.empty() || file.person.id() != m_person_id) return;
  for (const auto& device : file.devices) {
    if (m_known.contains(device.id())) continue;
    m_known.insert(device.id());
    m_paired_phone = device.name().empty() ? tr("a phone") : print::text(device.name());
    // The code is used up: nothing of it stays on the screen.
    m_qr_text.clear();
    m_typed_code.clear();
    m_repaint.stop();
  }
  emit changed();
  emit ticked();
}

void PairingModel::end() {
  m_person_id.clear();
  m_qr_text.clear();
  m_typed_code.clear();
  m_repaint.stop();
  emit changed();
  emit ticked();
}

void PairingModel::newCode() {
  if (m_person_id.empty()) return;
  m_qr_text.clear();
  m_typed_code.clear();
  m_problem.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Making a pairing code"),
      [id = m_person_id](DeskClient* client) -> absl::StatusOr<v1::CreatePairingReply> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->createPairing(id);
      },
      [this, id = m_person_id](const absl::StatusOr<v1::CreatePairingReply>& reply) {
        if (id != m_person_id) return;
        m_problem = problemWords(reply.status(), tr("make a pairing code"));
        if (reply.ok()) {
          m_qr_text = print::text(reply->qr_text());
          const QString code = print::text(reply->typed_code());
          m_typed_code =
              code.contains(QLatin1Char('-')) ? code : code.left(4) + QLatin1Char('-') + code.mid(4);
          m_address = print::text(reply->typed_address());
          const auto ticket = parseTicket(reply->qr_text());
          if (ticket.ok()) m_fingerprint = print::text(shortFingerprint(ticket->certificate_sha256));
          const absl::Time hub_now = m_context.now() + m_context.hub_ahead;
          m_deadline = m_context.clock->elapsed() + (toTime(reply->expires_at()) - hub_now);
          m_repaint.start();
        }
        emit changed();
        emit ticked();
      });
}

}  // namespace newel::desk
