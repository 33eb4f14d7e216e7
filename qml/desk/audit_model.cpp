#include "qml/desk/audit_model.h"

#include "core/time/local_day.h"
#include "qml/desk/audit_words.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/text_codes.h"

namespace newel::desk {
namespace {

constexpr int kPage = 100;
// One look asks the hub at most so often: a call goes over 5,000 lines of the trail.
constexpr int kMostCalls = 20;

// Asks until a page is full, the trail is at its beginning, or it has looked far enough for once.
std::optional<absl::Status> readOn(DeskClient& client, v1::ListAuditRequest& request,
                                   std::vector<v1::AuditLine>& lines, std::uint64_t& next) {
  for (int call = 0; call < kMostCalls; ++call) {
    request.set_limit(static_cast<std::uint32_t>(kPage - lines.size()));
    auto reply = client.audit(request);
    if (!reply.ok()) return reply.status();
    for (auto& line : *reply->mutable_lines()) lines.push_back(std::move(line));
    next = reply->next_before_n();
    if (next == 0 || lines.size() >= kPage) break;
    request.set_before_n(next);
  }
  return std::nullopt;
}

}  // namespace

AuditModel::AuditModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

QVariantList AuditModel::lines() const {
  QVariantList list;
  for (const auto& line : m_lines) {
    const QString who = line.who_id().empty()     ? tr("somebody unknown")
                        : line.who_name().empty() ? tr("an account or phone that is gone")
                                                  : print::text(line.who_name());
    const QString about = line.person_id().empty()     ? QString()
                          : line.person_name().empty() ? tr("a person who is gone")
                                                       : print::text(line.person_name());
    list << QVariantMap{{QStringLiteral("n"), static_cast<qulonglong>(line.n())},
                        {QStringLiteral("when"), print::momentWords(toTime(line.at()), m_context.zone)},
                        {QStringLiteral("who"), who},
                        {QStringLiteral("what"), auditWords(line)},
                        {QStringLiteral("about"), about}};
  }
  return list;
}

void AuditModel::setWho(const QString& who) {
  m_who = who;
  m_who_problem.clear();
  emit changed();
}

void AuditModel::setFirstDay(const QString& day) {
  m_first_day = day;
  m_first_day_problem.clear();
  emit changed();
}

void AuditModel::setLastDay(const QString& day) {
  m_last_day = day;
  m_last_day_problem.clear();
  emit changed();
}

void AuditModel::begin(const std::string& person_id, const QString& name) {
  leave();
  m_person_id = person_id;
  m_about = name;
  readAccounts();
  look();
}

void AuditModel::leave() {
  ++m_round;
  m_lines.clear();
  m_accounts.clear();
  m_person_id.clear();
  m_about.clear();
  setWho(QString());
  setFirstDay(QString());
  setLastDay(QString());
  m_next = 0;
  m_busy = false;
  m_problem.clear();
  m_chain.clear();
  m_chain_broken = false;
  emit changed();
}

void AuditModel::aboutEverybody() {
  m_person_id.clear();
  m_about.clear();
  look();
}

void AuditModel::readAccounts() {
  m_context.worker->run(
      this, tr("Reading the accounts"),
      [](DeskClient* client) -> absl::StatusOr<std::vector<v1::Account>> {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->accounts();
      },
      [this](absl::StatusOr<std::vector<v1::Account>> accounts) {
        if (accounts.ok()) m_accounts = *std::move(accounts);
      });
}

// The one account whose name has these words in it.
bool AuditModel::findAccount(std::string& id) {
  const QString wanted = m_who.trimmed();
  if (wanted.isEmpty()) return true;
  QStringList fit;
  for (const auto& account : m_accounts) {
    const v1::Therapist& who = account.therapist();
    const QString name = print::text(who.display_name());
    if (!name.contains(wanted, Qt::CaseInsensitive) && print::text(who.user_name()) != wanted) continue;
    fit << name;
    id = who.id();
  }
  if (fit.size() == 1) return true;
  m_who_problem = fit.isEmpty() ? tr("No account has this name.")
                                : tr("More than one account fits: %1").arg(fit.join(QStringLiteral(", ")));
  return false;
}

std::optional<v1::ListAuditRequest> AuditModel::request() {
  v1::ListAuditRequest request;
  request.set_person_id(m_person_id);
  bool fine = findAccount(*request.mutable_account_id());
  const auto dayOf = [this, &fine](const QString& text, QString& problem) -> std::optional<absl::CivilDay> {
    problem.clear();
    if (text.trimmed().isEmpty()) return std::nullopt;
    const auto day = parseLocalDay(text.trimmed().toStdString());
    if (day.ok()) return *day;
    problem = tr("Type a day like 2026-11-25.");
    fine = false;
    return std::nullopt;
  };
  const auto first = dayOf(m_first_day, m_first_day_problem);
  const auto last = dayOf(m_last_day, m_last_day_problem);
  // The days of this desk's zone; the day after the last one begins the rest.
  if (first) *request.mutable_from() = toTimestamp(instantOf(absl::CivilMinute(*first), m_context.zone));
  if (last) *request.mutable_until() = toTimestamp(instantOf(absl::CivilMinute(*last + 1), m_context.zone));
  if (first && last && *last < *first) {
    m_last_day_problem = tr("This day is before the first one.");
    fine = false;
  }
  emit changed();
  if (!fine) return std::nullopt;
  return request;
}

void AuditModel::look() {
  if (m_busy) return;
  auto wanted = request();
  if (!wanted) return;
  m_lines.clear();
  m_next = 0;
  read(*std::move(wanted));
}

void AuditModel::lookFurther() {
  if (m_busy || m_next == 0) return;
  auto wanted = request();
  if (!wanted) return;
  wanted->set_before_n(m_next);
  read(*std::move(wanted));
}

void AuditModel::read(v1::ListAuditRequest request) {
  m_busy = true;
  m_problem.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Reading the audit trail"),
      [request = std::move(request)](DeskClient* client) mutable -> Page {
        Page page;
        if (client == nullptr) return {absl::AbortedError("not signed in"), {}, 0};
        page.status = readOn(*client, request, page.lines, page.next).value_or(absl::OkStatus());
        return page;
      },
      [this, round = m_round](Page page) {
        if (round == m_round) got(std::move(page));
      });
}

void AuditModel::got(Page page) {
  m_busy = false;
  m_problem = problemWords(page.status, tr("read the audit trail"));
  if (page.status.ok()) {
    m_next = page.next;
    for (auto& line : page.lines) m_lines.push_back(std::move(line));
  }
  emit changed();
  if (absl::IsUnauthenticated(page.status)) emit sessionEnded();
}

void AuditModel::check() {
  if (m_busy) return;
  m_busy = true;
  m_problem.clear();
  m_chain.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Checking the chain"),
      [](DeskClient* client) -> absl::StatusOr<v1::CheckAuditReply> {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->checkAudit();
      },
      [this, round = m_round](const absl::StatusOr<v1::CheckAuditReply>& reply) {
        if (round != m_round) return;
        m_busy = false;
        m_problem = problemWords(reply.status(), tr("check the chain"));
        if (reply.ok()) {
          m_chain_broken = !reply->problem().empty();
          m_chain =
              m_chain_broken
                  ? tr("The chain does not hold: %1. Tell whoever runs the hub, and keep its store as it is.")
                        .arg(print::text(reply->problem()))
                  : tr("The chain of %1 lines holds. Head: %2")
                        .arg(reply->lines())
                        .arg(print::text(toHex(reply->head_sha256())));
        }
        emit changed();
        if (absl::IsUnauthenticated(reply.status())) emit sessionEnded();
      });
}

}  // namespace newel::desk
