#include "qml/desk/desk_lock.h"

#include <QtCore/QCoreApplication>
#include <QtGui/QMouseEvent>

#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr int kTickMs = 500;
// The hub ends a session after half an hour without a call (desk_service.proto).
constexpr absl::Duration kTellEvery = absl::Minutes(5);
// No warning while somebody types, however short the limit is.
constexpr absl::Duration kQuiet = absl::Seconds(5);

}  // namespace

DeskLock::DeskLock(DeskContext& context, QObject* parent)
    : QObject(parent), m_context(context), m_try(context) {
  m_tick.setInterval(kTickMs);
  connect(&m_tick, &QTimer::timeout, this, &DeskLock::tick);
  QCoreApplication::instance()->installEventFilter(this);
}

DeskLock::~DeskLock() {
  if (QCoreApplication::instance() != nullptr) QCoreApplication::instance()->removeEventFilter(this);
}

absl::Duration DeskLock::limit() const {
  const absl::Duration clinic = absl::Minutes(m_context.settings.at("desk-lock-minutes"));
  return m_sooner > absl::ZeroDuration() ? std::min(m_sooner, clinic) : clinic;
}

void DeskLock::watch(const DeskClient::Options& hub) {
  m_hub = hub;
  m_watching = true;
  m_locked = false;
  m_who = print::text(m_context.therapist.display_name());
  m_reason.clear();
  m_warning.clear();
  m_try.reset();
  m_told = m_context.clock->elapsed();
  m_idle.begin(m_told, limit());
  m_tick.start();
  emit changed();
}

void DeskLock::takeSettings() {
  if (m_watching) m_idle.setLimit(limit());
}

void DeskLock::cover(const QString& reason) {
  m_locked = true;
  m_reason = reason;
  m_warning.clear();
  m_tick.stop();
  emit changed();
}

void DeskLock::end() {
  m_watching = false;
  m_locked = false;
  m_who.clear();
  m_reason.clear();
  m_warning.clear();
  m_tick.stop();
  m_try.reset();
  emit changed();
}

void DeskLock::tick() {
  if (!m_watching || m_locked) return;
  const absl::Duration now = m_context.clock->elapsed();
  if (m_idle.due(now)) {
    emit due();
    return;
  }
  if (m_idle.lastUse() > m_told && now - m_told >= kTellEvery) {
    m_told = now;
    emit stillUsed();
  }
  const QString words = m_idle.warns(now) && now - m_idle.lastUse() >= kQuiet
                            ? tr("This desk locks in %1 s. Press a key or move the pointer to stay.")
                                  .arg(absl::ToInt64Seconds(m_idle.left(now) + absl::Milliseconds(999)))
                            : QString();
  if (words == m_warning) return;
  m_warning = words;
  emit changed();
}

// A pointer that lies still can be reported again; only one that moved is somebody's.
bool DeskLock::isTouch(QEvent* event) {
  switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::Wheel:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TabletPress:
    case QEvent::InputMethod:
      return true;
    case QEvent::MouseMove: {
      const QPointF at = static_cast<QMouseEvent*>(event)->globalPosition();
      const bool moved = at != m_pointer;
      m_pointer = at;
      return moved;
    }
    default:
      return false;
  }
}

bool DeskLock::eventFilter(QObject* object, QEvent* event) {
  if (m_locked) {
    if (event->type() != QEvent::ShortcutOverride) return QObject::eventFilter(object, event);
    // Whatever has the focus says that it wants this key itself: so no shortcut gets it.
    event->accept();
    return true;
  }
  if (m_watching && isTouch(event)) {
    if (!m_idle.used(m_context.clock->elapsed())) {
      // The machine slept, or the timer is late: this touch is whose we do not know.
      emit due();
      return true;
    }
    if (!m_warning.isEmpty()) {
      m_warning.clear();
      emit changed();
    }
  }
  return QObject::eventFilter(object, event);
}

void DeskLock::unlock(const QString& password, const QString& code) {
  if (!m_locked || !m_try.begin(password, code)) return;
  m_context.worker->run(
      this, tr("Signing in"),
      [worker = m_context.worker, hub = m_hub, name = m_context.therapist.user_name(),
       secret = password.toStdString(),
       digits = code.toStdString()](DeskClient* client) -> absl::StatusOr<v1::SignInReply> {
        if (client != nullptr) return client->signIn(name, secret, digits);
        auto fresh = DeskClient::connect(hub);
        // Another certificate is no wrong password.
        if (!fresh.ok()) return absl::UnavailableError(fresh.status().message());
        auto reply = (*fresh)->signIn(name, secret, digits);
        if (reply.ok()) worker->useClient(*std::move(fresh));
        return reply;
      },
      [this](const absl::StatusOr<v1::SignInReply>& reply) {
        if (!m_locked) return;
        m_try.end(reply.status(), tr("unlock this desk"));
        // The name stands above the field; it cannot be the wrong part.
        if (absl::IsUnauthenticated(reply.status()) && !isWrongCode(reply.status()))
          m_try.say(tr("This is not the password. Type it again."));
        if (reply.ok()) emit unlocked(*reply);
      });
}

void DeskLock::giveUp() {
  if (m_locked) emit givenUp();
}

}  // namespace newel::desk
