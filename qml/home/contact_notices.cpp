#include "qml/home/contact_notices.h"

#include <QtCore/QCoreApplication>

#include "core/time/local_day.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

// Translation context of everything here.
struct ContactNotices {
  Q_DECLARE_TR_FUNCTIONS(ContactNotices)
};

// As in Notice.qml.
constexpr int kNote = 0;
constexpr int kAttention = 2;
constexpr int kStop = 3;

QVariantMap notice(int kind, const QString& title, const QString& words, bool new_code = false) {
  return {{"kind", kind},    {"title", title},    {"words", words},
          {"id", QString()}, {"mustRead", false}, {"newCode", new_code}};
}

QVariantMap noNetwork(const HomeState& state, absl::TimeZone zone, absl::CivilDay today) {
  const QString words = ContactNotices::tr(
      "Practise as usual: what you do is kept on this phone and sent later. But news from your therapist "
      "does "
      "not reach you. See that the phone is online. If it is, call the clinic.");
  if (!state.last_contact.has_value())
    return notice(kNote, ContactNotices::tr("No contact with the clinic yet"), words);
  return notice(kNote,
                ContactNotices::tr("No contact with the clinic since %1")
                    .arg(momentWords(*state.last_contact, zone, today)),
                words);
}

}  // namespace

QVariantList contactNotices(const HomeState& state, absl::TimeZone zone, absl::CivilDay today) {
  if (!state.paired) return {};
  if (state.revoked) {
    return {
        notice(kStop, ContactNotices::tr("The clinic ended this phone's access"),
               ContactNotices::tr(
                   "You cannot practise with it now, and nothing new comes from the clinic. What you did is "
                   "kept on this phone. Call the clinic: with a new code the phone works again."),
               true)};
  }
  if (state.last_problem == "sync.wrong-date") {
    return {
        notice(kAttention, ContactNotices::tr("The date on this phone seems wrong"),
               ContactNotices::tr("So the phone cannot tell what is due, nor reach the clinic. Set date and "
                                  "time in the phone's own settings."))};
  }
  if (state.last_problem == "sync.disk-full") {
    return {
        notice(kAttention, ContactNotices::tr("This phone's memory is full"),
               ContactNotices::tr("What you do cannot be kept, so you cannot practise with it now. Remove "
                                  "photos or programs that you do not need."))};
  }
  if (state.last_problem == "sync.hub-refused") {
    return {
        notice(kAttention, ContactNotices::tr("The clinic's computer gave an answer that is not right"),
               ContactNotices::tr("Practise as usual: what you do is kept on this phone. Call the clinic, so "
                                  "that someone looks into it. A new code may help."),
               true)};
  }
  const bool quiet =
      !state.last_contact.has_value() || today - localDayAt(*state.last_contact, zone) >= kQuietDays;
  if (!state.last_problem.empty() && quiet) return {noNetwork(state, zone, today)};
  return {};
}

}  // namespace newel::home
