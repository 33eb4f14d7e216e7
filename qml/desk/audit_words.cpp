#include "qml/desk/audit_words.h"

#include <QtCore/QCoreApplication>
#include <map>

#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

// QT_TRANSLATE_NOOP marks the words for the catalogue; they are looked up when shown.
const std::map<std::string, const char*>& table() {
  static const std::map<std::string, const char*> kTable = {
      {"account.add", QT_TRANSLATE_NOOP("AuditWords", "made an account")},
      {"account.change", QT_TRANSLATE_NOOP("AuditWords", "changed an account")},
      {"account.factor_begin", QT_TRANSLATE_NOOP("AuditWords", "began to set up a second factor")},
      {"account.factor_confirm", QT_TRANSLATE_NOOP("AuditWords", "set up a second factor")},
      {"account.factor_reset", QT_TRANSLATE_NOOP("AuditWords", "took a second factor away")},
      {"account.first_password", QT_TRANSLATE_NOOP("AuditWords", "made a new first password")},
      {"account.off", QT_TRANSLATE_NOOP("AuditWords", "switched an account off")},
      {"account.password", QT_TRANSLATE_NOOP("AuditWords", "changed the own password")},
      {"account.refused", QT_TRANSLATE_NOOP("AuditWords", "was refused: wrong password or code")},
      {"account.sign_in", QT_TRANSLATE_NOOP("AuditWords", "signed in")},
      {"account.sign_out", QT_TRANSLATE_NOOP("AuditWords", "signed out or locked the desk")},
      {"account.too_many", QT_TRANSLATE_NOOP("AuditWords", "was refused: too many tries")},
      {"accounts.see", QT_TRANSLATE_NOOP("AuditWords", "looked at the accounts")},
      {"audit.see", QT_TRANSLATE_NOOP("AuditWords", "looked at this trail")},
      {"caseload.see", QT_TRANSLATE_NOOP("AuditWords", "looked at the caseload")},
      {"clinic.init", QT_TRANSLATE_NOOP("AuditWords", "the clinic was set up")},
      {"desk.refused", QT_TRANSLATE_NOOP("AuditWords", "was refused")},
      {"device.revoke", QT_TRANSLATE_NOOP("AuditWords", "took a phone's access away")},
      {"devices.see", QT_TRANSLATE_NOOP("AuditWords", "looked at the phones")},
      {"exercise.write", QT_TRANSLATE_NOOP("AuditWords", "wrote an exercise of the clinic")},
      {"template.write", QT_TRANSLATE_NOOP("AuditWords", "wrote a template of the clinic")},
      {"template.withdraw", QT_TRANSLATE_NOOP("AuditWords", "withdrew a template of the clinic")},
      {"hold.issue", QT_TRANSLATE_NOOP("AuditWords", "sent a hold order")},
      {"hold.lift", QT_TRANSLATE_NOOP("AuditWords", "lifted a hold order")},
      {"holds.see", QT_TRANSLATE_NOOP("AuditWords", "looked at the hold orders")},
      {"message.send", QT_TRANSLATE_NOOP("AuditWords", "sent a message")},
      {"messages.see", QT_TRANSLATE_NOOP("AuditWords", "read the messages")},
      {"offer.refused", QT_TRANSLATE_NOOP("AuditWords", "a phone's record was refused")},
      {"pairing.done", QT_TRANSLATE_NOOP("AuditWords", "a phone was paired")},
      {"pairing.invite", QT_TRANSLATE_NOOP("AuditWords", "made a pairing code")},
      {"pairing.refused", QT_TRANSLATE_NOOP("AuditWords", "a pairing code was refused")},
      {"pairing.too_many", QT_TRANSLATE_NOOP("AuditWords", "pairing was refused: too many tries")},
      {"person.add", QT_TRANSLATE_NOOP("AuditWords", "added a person")},
      {"person.snooze", QT_TRANSLATE_NOOP("AuditWords", "said that the person can wait")},
      {"person.unsnooze", QT_TRANSLATE_NOOP("AuditWords", "ended that the person can wait")},
      {"person.assign", QT_TRANSLATE_NOOP("AuditWords", "assigned the person")},
      {"person.break_glass", QT_TRANSLATE_NOOP("AuditWords", "opened the record by a written reason")},
      {"person.change", QT_TRANSLATE_NOOP("AuditWords", "changed the record")},
      {"person.erase", QT_TRANSLATE_NOOP("AuditWords", "the person was erased")},
      {"person.find", QT_TRANSLATE_NOOP("AuditWords", "looked for a person by name")},
      {"person.see", QT_TRANSLATE_NOOP("AuditWords", "looked at the record")},
      {"person.unassign", QT_TRANSLATE_NOOP("AuditWords", "ended an assignment of the person")},
      {"phone.refused", QT_TRANSLATE_NOOP("AuditWords", "a phone was refused")},
      {"practices.see", QT_TRANSLATE_NOOP("AuditWords", "looked at what was done")},
      {"programme.refused", QT_TRANSLATE_NOOP("AuditWords", "a programme was refused by the rules")},
      {"programme.sign", QT_TRANSLATE_NOOP("AuditWords", "signed a programme")},
      {"programmes.see", QT_TRANSLATE_NOOP("AuditWords", "looked at the programmes")},
      {"receipts.see", QT_TRANSLATE_NOOP("AuditWords", "looked at what has arrived")},
      {"settings.change", QT_TRANSLATE_NOOP("AuditWords", "changed the clinic's settings")},
      {"person.export", QT_TRANSLATE_NOOP("AuditWords", "took a document of the record out of the desk")},
      {"store.backup", QT_TRANSLATE_NOOP("AuditWords", "a backup was made and checked")},
      {"store.restored", QT_TRANSLATE_NOOP("AuditWords", "the store was put back from a copy")},
  };
  return kTable;
}

// Why a call was refused; other fields stand as they are.
QString whyWords(const std::string& field) {
  static const std::map<std::string, const char*> kWhy = {
      {"assigned", QT_TRANSLATE_NOOP("AuditWords", "the person is not theirs")},
      {"role", QT_TRANSLATE_NOOP("AuditWords", "not with this role")},
      {"session", QT_TRANSLATE_NOOP("AuditWords", "not signed in")},
      {"limited", QT_TRANSLATE_NOOP("AuditWords", "password or second factor still to be set")},
      {"code", QT_TRANSLATE_NOOP("AuditWords", "wrong code")},
  };
  const auto found = kWhy.find(field);
  return found == kWhy.end() ? print::text(field) : QCoreApplication::translate("AuditWords", found->second);
}

}  // namespace

QString auditWords(const v1::AuditLine& line) {
  const auto found = table().find(line.action());
  QString words = found == table().end() ? print::text(line.action())
                                         : QCoreApplication::translate("AuditWords", found->second);
  if (!line.record_name().empty() && line.record_id() != line.who_id()) {
    words = QCoreApplication::translate("AuditWords", "%1: %2").arg(words, print::text(line.record_name()));
  }
  if (!line.field().empty()) {
    words = QCoreApplication::translate("AuditWords", "%1 (%2)").arg(words, whyWords(line.field()));
  }
  return words;
}

}  // namespace newel::desk
